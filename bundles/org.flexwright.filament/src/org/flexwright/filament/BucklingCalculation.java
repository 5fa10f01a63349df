package org.flexwright.filament;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Push that a free strand carries. */
@Component(service = Calculation.class)
public final class BucklingCalculation implements Calculation<BucklingCalculation.Inputs, BucklingCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.buckling";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Buckling of a free strand", 2,
            "Push at which a straight strand between drive wheel and guide buckles, F = pi^2 E I / (K L)^2 with I = pi d^4 / 64, for ends between held "
                    + "fast (K 0.5) and free to turn (K 1).",
            Source.derived("Euler's column, textbook"),
            "Slender strands only, K L / (d / 4) above about pi sqrt(E / stress limit): short soft strands are crushed first. Bent or worn strands "
                    + "buckle earlier.");

    /** What the modulus is known by. */
    public enum KnownBy {
        MODULUS, HARDNESS
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Strand diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "1.75 mm", help = "Mean of several places.") double diameter,
            @Field(label = "Modulus", kind = QuantityKind.STRESS, unit = "MPa", min = 0, minOpen = true, max = 10000, def = "12 MPa", help = "At small strain, cold; not used when the hardness is chosen below.") double modulus,
            @Field(label = "Free length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 2000, def = "10 mm", help = "Between drive wheel and guide.") double freeLength,
            @Field(label = "How the ends are held, K", min = 0.5, max = 2, def = "0.7", help = "0.5 both fast, 0.7 one fast and one free to turn, 1 both free to turn, 2 one end wholly free.") double lengthFactor,
            @Field(label = "Push needed", kind = QuantityKind.FORCE, unit = "N", min = 0, optional = true, help = "From the nozzle calculation or measured.") Double push,
            @Field(label = "Modulus known by", def = "modulus", help = "A measured or stated modulus goes before; from the hardness it is a wide band.") KnownBy known,
            @Field(label = "Hardness, Shore A", min = ModulusBand.LOWEST, max = ModulusBand.HIGHEST, def = "85", help = "Used only when it is chosen above; a sheet in Shore D does not convert.") double hardness) {
    }

    /** Results. */
    public record Results(@Field(label = "Modulus used", kind = QuantityKind.STRESS, unit = "MPa", help = "As entered, or from the hardness as a band; its source says which.") Estimate modulus,
            @Field(label = "Buckles at", kind = QuantityKind.FORCE, unit = "N", help = "With ends as chosen; as wide as the modulus.") Estimate force,
            @Field(label = "Between, by the ends", kind = QuantityKind.FORCE, unit = "N", help = "From both ends free to turn to both held fast, over the whole band of the modulus.") Estimate band,
            @Field(label = "Pressure it stands for", kind = QuantityKind.STRESS, unit = "MPa", help = "That push over the cross-section.") Estimate pressure,
            @Field(label = "Slenderness", help = "K L over a quarter of the diameter.") double slenderness,
            @Field(label = "Second moment of area (mm4)", help = "Of the cross-section.") double inertia) {
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
        Estimate modulus = in.known() == KnownBy.HARDNESS ? ModulusBand.of(in.hardness()) : Estimate.exact(in.modulus(), Source.ownRecord("as entered"));
        Strand strand = new Strand(in.diameter());
        Estimate force = new Estimate(strand.bucklingForce(modulus.low(), in.freeLength(), in.lengthFactor()), strand.bucklingForce(modulus.likely(), in.freeLength(), in
                .lengthFactor()), strand.bucklingForce(modulus.high(), in.freeLength(), in.lengthFactor()), INFO.source());
        double fixed = strand.bucklingForce(modulus.high(), in.freeLength(), Strand.BOTH_ENDS_FIXED);
        double pinned = strand.bucklingForce(modulus.low(), in.freeLength(), Strand.BOTH_ENDS_PINNED);
        Estimate band = new Estimate(pinned, Math.min(fixed, Math.max(pinned, force.likely())), fixed, INFO.source());
        return Outcome.done(new Results(modulus, force, band, force.times(1 / strand.area()), strand.slenderness(in.freeLength(), in.lengthFactor()), strand.inertia()),
                remarks(in.push(), band));
    }

    private static List<Remark> remarks(Double push, Estimate band) {
        if (push == null || push <= band.low()) {
            return List.of();
        }
        boolean surely = push > band.high();
        return List.of(new Remark(surely ? Severity.STOP : Severity.CAUTION, Message.of(BucklingCalculation.class,
                surely ? "buckling.surely" : "buckling.perhaps", Rounded.text(push, "N"), Rounded.text(surely ? band.high() : band.low(), "N")),
                INFO.source()));
    }
}
