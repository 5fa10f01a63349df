package org.flexwright.core.verdict;

import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;

/**
 * What one part says about a property: the median of its readings. Numbers are in the property's canonical unit.
 *
 * @param part        code of the part
 * @param partId      id of the part
 * @param readings    how many readings count; readings left out with a reason do not
 * @param low         lower bound of the median; equal to {@code high} unless readings are bounds; NaN when nothing was read
 * @param high        upper bound of the median; may be infinite
 * @param yes         of a yes/no property: how many readings say yes
 * @param no          of a yes/no property: how many readings say no
 * @param failed      true when the part failed: absent from means, counts as no
 * @param differs     conditions in which what was read differs from what is asked for; then it does not count
 * @param instruments the gauges it was read with
 * @param sessions    the sessions it was read in
 * @param age         how old the part was at the readings that count; null when it is not known
 * @param otherAges   ages of readings that were left aside because the part was much younger or older then, the youngest first
 * @param measurements what it was made of; empty when it comes from elsewhere
 */
public record PartValue(String part, String partId, int readings, double low, double high, int yes, int no, boolean failed,
        Set<Condition> differs, List<Instrument> instruments, List<Session> sessions, AgeSpan age, List<AgeSpan> otherAges, List<Measurement> measurements) {
    public PartValue {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(partId, "partId");
        differs = Set.copyOf(differs);
        instruments = List.copyOf(instruments);
        sessions = List.copyOf(sessions);
        otherAges = List.copyOf(otherAges);
        measurements = List.copyOf(measurements);
        if (low > high) {
            throw new IllegalArgumentException("The bounds of a part's value are the wrong way round: " + low + ", " + high + ".");
        }
    }

    /** A value of which neither session nor age is known. */
    public PartValue(String part, String partId, int readings, double low, double high, int yes, int no, boolean failed, Set<Condition> differs,
            List<Instrument> instruments) {
        this(part, partId, readings, low, high, yes, no, failed, differs, instruments, List.of(), null, List.of(), List.of());
    }

    /** A part whose value is known exactly as read; for tests and for values that come from elsewhere. */
    public static PartValue of(String part, double value) {
        return new PartValue(part, part, 1, value, value, 0, 0, false, Set.of(), List.of());
    }

    /** True when there is a number or a bound. */
    public boolean hasNumber() {
        return !Double.isNaN(low);
    }

    /** True when only a bound is known. */
    public boolean censored() {
        return hasNumber() && low < high;
    }

    /** The value; NaN when there is none or only a bound. */
    public double value() {
        return low == high ? low : Double.NaN;
    }

    /** The plain numbers read on it, those left out and bounds aside. */
    public double[] numbers() {
        return measurements.stream().flatMap(m -> m.getReadings().stream()).filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE)
                .filter(Measurements::counts).mapToDouble(Reading::getValue).toArray();
    }

    /** Half width at about 95 % of the widest band that came with one of its readings, from a recording or a calculation; 0 without any. */
    public double bandFromResult() {
        return measurements.stream().flatMap(m -> m.getReadings().stream()).filter(r -> r.getLeftOut() == null || r.getLeftOut().isBlank())
                .flatMap(r -> Provenances.of(r, ModelPackage.Literals.READING__VALUE).stream()).map(Provenance::getUncertainty).filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** True when it was read under other conditions than asked for. */
    public boolean notComparable() {
        return !differs.isEmpty();
    }
}
