package org.flexwright.materials.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.materials.formula.RubberBlock;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Stiffness of a rubber disc bonded to plates. */
@Component(service = Calculation.class)
public final class BondedBlockCalculation implements Calculation<BondedBlockCalculation.Inputs, BondedBlockCalculation.Results> {

    private static final Source LINDLEY = Source.published("Lindley 1978, Engineering Design with Natural Rubber, 4th ed., table 3");
    private static final double HELD = 3;

    /** The disc. */
    public record Inputs(
            @Field(label = "Hardness", min = 30, max = 75, def = "40", help = "IRHD; Shore A is about the same from 30 to 80.") double hardness,
            @Field(kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, def = "25 mm",
                    help = "Of the disc.")
            double diameter,
            @Field(kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, def = "10 mm",
                    help = "Of the rubber between the plates.")
            double thickness) {
    }

    /** Stiffness. */
    public record Results(
            @Field(label = "Shape factor", help = "Loaded area to area free to bulge, d/4t.") double shape,
            @Field(label = "Compression modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "Apparent, E0 (1 + 2 k S^2).") double compression,
            @Field(label = "Stiffness in compression", help = "N to a mm, small strains.") double stiffness,
            @Field(label = "Stiffness in shear", help = "N to a mm: G times area over thickness.") double shear) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("materials.bonded-block", "Rubber disc between plates", 1,
                "Ec = E0 (1 + 2 k S^2) with S = d/4t; E0, G and k from the table by hardness.", LINDLEY,
                "Natural rubber of 30 to 75 IRHD, bonded on both faces, small strains; black-filled above 48.");
    }

    @Override
    public Class<Inputs> inputType() {
        return Inputs.class;
    }

    @Override
    public Class<Results> resultType() {
        return Results.class;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        Optional<RubberBlock.Row> row = RubberBlock.at(in.hardness());
        if (row.isEmpty()) {
            return Outcome.refused("hardness", Say.BLOCK_TABLE.with(Figures.of(in.hardness(), "")), Say.BLOCK_TABLE_REMEDY.with());
        }
        double shape = RubberBlock.discShape(in.diameter(), in.thickness());
        double area = Math.PI / 4 * in.diameter() * in.diameter();
        double compression = RubberBlock.compression(row.get(), shape);
        List<Remark> remarks = new ArrayList<>(List.of(Say.BLOCK_FILLED.note(LINDLEY)));
        if (shape > HELD) {
            remarks.add(Say.BLOCK_THIN.caution(LINDLEY, Figures.of(shape, "", 3), Figures.of(row.get().bulk(), "MPa")));
        }
        return Outcome.done(new Results(shape, compression, compression * area / in.thickness(), row.get().g() * area / in.thickness()), remarks);
    }
}
