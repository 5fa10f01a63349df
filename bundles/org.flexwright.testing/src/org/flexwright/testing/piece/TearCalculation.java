package org.flexwright.testing.piece;

import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.osgi.service.component.annotations.Component;

/** Tear strength. */
@Component(service = Calculation.class)
public final class TearCalculation implements Calculation<TearCalculation.Inputs, TearCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.tear";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Tear strength", 2,
            "Ts = F / d: force over thickness, N/mm, the same as kN/m. Trouser pieces take the mean or median force of the tear, "
                    + "the others the peak.",
            Source.published("ISO 34-1, ASTM D624 (parts seen)"),
            "Pieces of different shape do not compare; state which.");

    /** Shapes of tear test pieces. */
    public enum TearPiece {
        /** Two legs pulled apart. */
        TROUSER(100, "tear.trouser"),
        /** An angle without nick. */
        ANGLE(500, "tear.angle"),
        /** An angle with a nick of 1.0 mm. */
        NICKED_ANGLE(500, "tear.nicked"),
        /** A crescent with a nick of 1.0 mm. */
        CRESCENT(500, "tear.nicked");

        private final double speed;
        private final String sentence;

        TearPiece(double speed, String sentence) {
            this.speed = speed;
            this.sentence = sentence;
        }

        double speed() {
            return speed;
        }

        String sentence() {
            return sentence;
        }
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Test piece", def = "trouser", help = "Its shape decides which force counts and how fast it is pulled.") TearPiece piece,
            @Field(label = "Force", kind = QuantityKind.FORCE, unit = "N", min = 0, minOpen = true, max = 100000, def = "38 N", help = "Trouser: mean or median of the tear. Others: the peak.") double force,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 20, def = "1.98 mm", help = "Where it tears.") double thickness,
            @Field(label = "Force good to", kind = QuantityKind.FORCE, unit = "N", min = 0, max = 1000, def = "0.5 N", help = "Either way.") double forceGood,
            @Field(label = "Thickness good to", kind = QuantityKind.LENGTH, unit = "mm", min = 0, max = 2, def = "0.02 mm", help = "Either way.") double thicknessGood) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Tear strength", kind = QuantityKind.TEAR_STRENGTH, unit = "kN/m", help = "Force over thickness.") Estimate strength,
            @Field(label = "Speed of the grip", kind = QuantityKind.SPEED, unit = "mm/min", help = "As the standard has it.") double speed) {
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
        double strength = Strength.tear(in.force(), in.thickness());
        Estimate band = Bands.band(strength, INFO.source(), Bands.within(in.forceGood(), 1 / in.thickness()), Bands.within(in.thicknessGood(), -strength / in.thickness()));
        return Outcome.done(new Results(band, in.piece().speed()), List.of(Say.note(INFO.source(), in.piece().sentence())));
    }

    @Override
    public Map<String, String> readings() {
        return Map.of("strength", TestingProperties.TEAR_STRENGTH);
    }
}
