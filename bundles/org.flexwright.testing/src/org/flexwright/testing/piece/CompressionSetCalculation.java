package org.flexwright.testing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.osgi.service.component.annotations.Component;

/** Compression set. */
@Component(service = Calculation.class)
public final class CompressionSetCalculation implements Calculation<CompressionSetCalculation.Inputs, CompressionSetCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.compression-set";

    /** Points of per cent by which the squeeze may miss the usual one before it is mentioned. */
    private static final double SQUEEZE_TOLERANCE = 2;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Compression set", 2,
            "CS = 100 (t0 - ti) / (t0 - tn): height before, height 30 min after release, height of the spacer. 0 came back "
                    + "wholly, 100 stayed as squeezed.",
            Source.published("ISO 815-1, ASTM D395 method B (parts seen)"),
            "Constant deflection. ASTM D395 method A divides by the height before instead: the two never mix.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Height before", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 200, def = "12.5 mm", help = "Before squeezing.") double before,
            @Field(label = "Height after", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 200, def = "10.9 mm", help = "30 min after release.") double after,
            @Field(label = "Height of the spacer", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 200, def = "9.38 mm", help = "The piece was squeezed to it.") double spacer,
            @Field(label = "Hardness", min = 0, max = 100, def = "50", help = "Of the material, IRHD or about the same Shore A: decides the usual squeeze.") double hardness,
            @Field(label = "Heights good to", kind = QuantityKind.LENGTH, unit = "mm", min = 0, max = 5, def = "0.02 mm", help = "Either way, each of the three; a light touch, callipers squash soft pieces.") double good) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Compression set", kind = QuantityKind.FRACTION, unit = "%", help = "Share of the squeeze that stayed.") Estimate set,
            @Field(label = "Squeeze", kind = QuantityKind.FRACTION, unit = "%", help = "Share of the height before.") double squeeze,
            @Field(label = "Usual squeeze", kind = QuantityKind.FRACTION, unit = "%", help = "At that hardness.") double usual) {
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
        if (in.spacer() >= in.before()) {
            return Outcome.refused("spacer", Say.message("set.spacer", Rounded.text(in.spacer(), "mm"), Rounded.text(in.before(), "mm")), Say.message("set.spacer.remedy"));
        }
        double squeeze = 100 * (in.before() - in.spacer()) / in.before();
        double usual = in.hardness() < 80 ? 25 : in.hardness() < 90 ? 15 : 10;
        double set = Strength.compressionSet(in.before(), in.after(), in.spacer());
        List<Remark> remarks = new ArrayList<>();
        if (Math.abs(squeeze - usual) > SQUEEZE_TOLERANCE) {
            remarks.add(Say.caution(INFO.source(), "set.squeeze", Rounded.text(squeeze, "%"), Rounded.text(usual, "%")));
        }
        if (set < 0 || set > 100) {
            remarks.add(Say.caution(INFO.source(), "set.outside", Rounded.text(set, "%")));
        }
        remarks.add(Say.note(INFO.source(), "set.state"));
        double depth = in.before() - in.spacer();
        Estimate band = Bands.band(set, INFO.source(), Bands.within(in.good(), 100 * (in.after() - in.spacer()) / (depth * depth)), Bands.within(in.good(), -100 / depth), Bands
                .within(in.good(), set / depth));
        return Outcome.done(new Results(band, squeeze, usual), remarks);
    }

    @Override
    public Map<String, String> readings() {
        return Map.of("set", TestingProperties.COMPRESSION_SET);
    }
}
