package org.flexwright.testing.piece;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Tensile test on a dumbbell. */
@Component(service = Calculation.class)
public final class TensileCalculation implements Calculation<TensileCalculation.Inputs, TensileCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.tensile";

    /** A thickness within a tenth of the piece's own counts as the same. */
    private static final double THICKNESS_SHARE = 0.1;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Tensile strength and elongation", 1,
            "TS = F / (W t) with the width W and test length L0 of the chosen dumbbell; elongation at break Eb = 100 (Lb - L0) / "
                    + "L0; stress at a given elongation S = F / (W t), which the trade calls its modulus though it is a stress.",
            Source.published("ISO 37, ASTM D412 (sizes of die C and thickness rule seen, the rest from memory, unconfirmed)"),
            "Results of different dumbbells do not compare. A break in the grip is no valid strength. Printed pieces: state "
                    + "raster and build direction.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Test piece", def = "iso-37-type-2", help = "Its width and test length are used.") Dumbbell piece,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 20, def = "1.95 mm", help = "Median of three in the test length.") double thickness,
            @Field(label = "Highest force", kind = QuantityKind.FORCE, unit = "N", min = 0, minOpen = true, max = 100000, def = "62.4 N", help = "At break or before.") double force,
            @Field(label = "Test length at break", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 5000, optional = true, help = "Distance of the marks when it breaks; empty when not followed.") Double lengthAtBreak,
            @Field(label = "Elongation of interest", kind = QuantityKind.FRACTION, unit = "%", min = 0, minOpen = true, max = 2000, def = "100 %", help = "Where a stress is wanted, in per cent of the test length.") double elongation,
            @Field(label = "Force at that elongation", kind = QuantityKind.FORCE, unit = "N", min = 0, max = 100000, optional = true, help = "Empty when not read.") Double forceThere) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Tensile strength", kind = QuantityKind.STRESS, unit = "MPa", help = "Highest force over the undeformed section.") double strength,
            @Field(label = "Elongation at break", kind = QuantityKind.FRACTION, unit = "%", help = "In per cent of the test length; empty without the length.") Double atBreak,
            @Field(label = "Stress at the elongation", kind = QuantityKind.STRESS, unit = "MPa", help = "Empty without the force.") Double stressThere,
            @Field(label = "Distance of the marks there", kind = QuantityKind.LENGTH, unit = "mm", help = "Where that force is read.") double readAt,
            @Field(label = "Speed of the grip", kind = QuantityKind.SPEED, unit = "mm/min", help = "Of that test piece.") double speed) {
    }

    @Override
    public CalculationInfo info() {
        return INFO;
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
        if (in.lengthAtBreak() != null && in.lengthAtBreak() < in.piece().testLength()) {
            return Outcome.refused("lengthAtBreak", Say.message("tensile.short", Rounded.text(in.lengthAtBreak(), "mm"), in.piece(), Rounded.text(in.piece().testLength(), "mm")),
                    Say.message("tensile.short.remedy"));
        }
        List<Remark> remarks = new ArrayList<>();
        if (Math.abs(in.thickness() - in.piece().thickness()) > THICKNESS_SHARE * in.piece().thickness()) {
            remarks.add(Say.caution(in.piece().source(), "tensile.thickness", Rounded.text(in.thickness(), "mm"), in.piece(), Rounded.text(in.piece().thickness(), "mm")));
        }
        if (in.forceThere() != null && in.forceThere() > in.force()) {
            remarks.add(Say.caution(INFO.source(), "tensile.higher", Rounded.text(in.forceThere(), "N"), Rounded.text(in.force(), "N")));
        }
        remarks.add(Say.note(in.piece().source(), "tensile.number", in.piece()));
        Double atBreak = in.lengthAtBreak() == null ? null : Strength.elongation(in.lengthAtBreak(), in.piece().testLength());
        Double there = in.forceThere() == null ? null : Strength.stress(in.forceThere(), in.piece().width(), in.thickness());
        return Outcome.done(new Results(Strength.stress(in.force(), in.piece().width(), in.thickness()), atBreak, there,
                Strength.lengthAt(in.elongation(), in.piece().testLength()), in.piece().speed()), remarks);
    }
}
