package org.flexwright.testing.hardness;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.reading.HardnessText;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.Intervals;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.HardnessReading;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Durometer readings on one piece: their centre, their band, how to print them, and what the protocol has to say. */
@Component(service = Calculation.class)
public final class DurometerCheck implements Calculation<DurometerCheck.Inputs, DurometerCheck.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.durometer-check";

    private static final Source ORDER_STATISTICS = Source.derived("smallest and largest of n readings enclose the median with 1 - 2^(1-n)");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Durometer readings and their protocol", 1,
            "Median or mean of the readings on one piece, as the chosen standard wants it, with the smallest and largest reading as its band "
                    + "(they enclose the median with the probability 1 - 2^(1-n)), both ways to print it, and remarks where the piece, the number of "
                    + "readings, dwell, rest after cure or the scale differ from the standard.",
            Source.published("ISO 48-4:2018, ISO 868:2003, ASTM D2240; each figure carries its own mark"),
            "One piece, one spot, one gauge. Readings on one piece are never several parts. It does not make a test conform to a standard.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Scale", def = "A", help = "Scale of the gauge.") GaugeScale scale,
            @Field(label = "Standard", def = "iso-48-4", help = "Whose protocol is compared: ISO 48-4 rubber, ISO 868 plastics, ASTM D2240.") DurometerStandard standard,
            @Field(label = "Material", def = "unknown", help = "Vulcanised: cast or printed and cured. Thermoplastic: soft filament. Unknown counts as vulcanised and is read more often.") RubberKind material,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "6.5 mm", help = "Rubber under the spot, plies together.") double thickness,
            @Field(label = "Plies", min = 1, max = 20, def = "1", help = "Pieces laid on each other to make up the thickness.") int plies,
            @Field(label = "Curved", def = "no", help = "Yes when no flat disc of 6 mm radius lies around the spot.") boolean curved,
            @Field(label = "Distance to the edge", kind = QuantityKind.LENGTH, unit = "mm", min = 0, max = 500, optional = true, help = "Least distance of a reading to any edge.") Double edge,
            @Field(label = "Distance between readings", kind = QuantityKind.LENGTH, unit = "mm", min = 0, max = 500, optional = true, help = "Least distance of two readings.") Double spacing,
            @Field(label = "Dwell", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 3600, def = "3 s", help = "From firm contact to reading.") double dwell,
            @Field(label = "Rest since cure", kind = QuantityKind.DURATION, unit = "h", min = 0, max = 1000000, optional = true, help = "From the end of cure to the test.") Double rest,
            @Field(label = "Piece temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 150, optional = true, help = "Of the piece, after an hour in the room.") Double temperature,
            @Field(label = "Readings", min = 1, max = 200, def = "61; 60.5; 62; 61; 60", help = "All readings on this piece, semicolons between them.") List<Double> readings) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Hardness", help = "Median or mean as the standard wants it; the band runs from the smallest to the largest reading.") Estimate hardness,
            @Field(label = "Probability of the band", kind = QuantityKind.FRACTION, unit = "%", help = "That smallest and largest reading enclose the median of this spot.") double coverage,
            @Field(label = "Spread", help = "Largest less smallest reading, points.") double spread,
            @Field(label = "Number of readings", help = "On this one piece.") int count,
            @Field(label = "Median or mean", help = "What the standard makes of the readings.") Centre centre,
            @Field(label = "Stands for", help = "Material: a hardness of the material. Apparent: thin or curved, compares only with the same spot and support.") HardnessReading.Kind standsFor,
            @Field(label = "In print, ISO order", help = "Type, seconds, value.") String iso,
            @Field(label = "In print, ASTM order", help = "Type, value, seconds.") String astm) {
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
        if (!in.standard().covers(in.scale())) {
            return Outcome.refused("standard", Say.message("not-covered", in.standard(), in.scale()), Say.message("not-covered.remedy"));
        }
        for (double reading : in.readings()) {
            if (!(reading >= 0 && reading <= 100)) {
                return Outcome.refused("readings", Say.message("no-reading", Rounded.text(reading, "")), Say.message("no-reading.remedy"));
            }
        }
        double[] readings = in.readings().stream().mapToDouble(Double::doubleValue).toArray();
        double centre = in.standard().centre() == Centre.MEDIAN ? Descriptive.median(readings) : Descriptive.mean(readings);
        HardnessText.Read print = new HardnessText.Read(in.scale().kind(), Double.parseDouble(Rounded.text(centre, "")), in.dwell());
        Results results = new Results(new Estimate(Descriptive.min(readings), centre, Descriptive.max(readings), ORDER_STATISTICS),
                100 * Intervals.medianMinMaxCoverage(readings.length), Descriptive.range(readings), readings.length, in.standard().centre(),
                HardnessReading.kindOf(in.scale(), in.thickness(), in.curved()), print.iso(), print.astm());
        Facts facts = new Facts(in.standard(), true, in.scale(), in.material(), in.thickness(), in.plies(), null, in.curved(), in.edge(), in.spacing(), in.dwell(), in.rest(),
                in.temperature(), in.readings());
        return Outcome.done(results, Protocol.check(facts).stream().map(Deviation::remark).toList());
    }
}
