package org.flexwright.core.ageing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.TableModel;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.numerics.MedianSpread;
import org.flexwright.numerics.StudentT;
import org.flexwright.numerics.Uncertainty;

/**
 * What age did to the pieces of a plan. The band of a single value rests on the scatter of readings on one piece, pooled over the plan,
 * and on the step of the gauge. The change of the pieces together is the 95 % t interval of their own changes from the first to the last
 * common age: each piece is compared with itself.
 *
 * @param plan     the plan
 * @param property what is read
 * @param series   one for each piece that was read
 */
public record Drift(AgeingPlan plan, PropertyDef property, List<AgeingSeries> series) {
    private static final double LEVEL = 0.95;
    /** Two standard uncertainties of a step are about 95 %, and rather more. */
    private static final double STEPS = 2;
    private static final double HOURS_PER_DAY = 24;
    private static final double PER_CENT = 100;
    /** Pieces read at the same age stand beside each other, not over each other. */
    private static final double BESIDE = 0.05;

    public Drift {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(property, "property");
        series = List.copyOf(series);
    }

    /** Of all pieces of the plan that were read with a known age. */
    public static Drift of(AgeingPlan plan, PropertyDef property) {
        double squares = 0;
        int df = 0;
        Map<Specimen, List<List<Measurement>>> read = new LinkedHashMap<>();
        for (Specimen piece : plan.getSpecimens()) {
            List<List<Measurement>> sessions = sessions(plan, piece, property);
            read.put(piece, sessions);
            for (List<Measurement> one : sessions) {
                double[] values = counting(one).stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE).mapToDouble(Reading::getValue).toArray();
                if (!property.yesNo() && values.length > 1) {
                    double sd = Descriptive.standardDeviation(values).orElseThrow();
                    squares += sd * sd * (values.length - 1);
                    df += values.length - 1;
                }
            }
        }
        double sd = df == 0 ? Double.NaN : Math.sqrt(squares / df);
        double times = df == 0 ? Double.NaN : StudentT.quantile((1 + LEVEL) / 2, df);
        List<AgeingSeries> series = new ArrayList<>();
        read.forEach((piece, sessions) -> {
            List<AgedValue> values = sessions.stream().map(one -> value(plan, piece, one, property, sd, times)).toList();
            if (!values.isEmpty()) {
                series.add(new AgeingSeries(piece, Names.piece(piece), values));
            }
        });
        return new Drift(plan, property, series);
    }

    /** Measurements of a known age, those of one session together. */
    private static List<List<Measurement>> sessions(AgeingPlan plan, Specimen piece, PropertyDef property) {
        Map<Object, List<Measurement>> bySession = new LinkedHashMap<>();
        for (Measurement measurement : AgeingPlans.readings(plan, piece, property)) {
            if (AgeingPlans.days(plan, piece, measurement) != null) {
                Object when = measurement.getSession() != null ? measurement.getSession() : measurement.getAt() != null ? measurement.getAt() : measurement;
                bySession.computeIfAbsent(when, w -> new ArrayList<>()).add(measurement);
            }
        }
        return List.copyOf(bySession.values());
    }

    private static List<Reading> counting(List<Measurement> measurements) {
        return measurements.stream().flatMap(m -> m.getReadings().stream()).filter(Measurements::counts).toList();
    }

    private static AgedValue value(AgeingPlan plan, Specimen piece, List<Measurement> one, PropertyDef property, double sd, double times) {
        List<Reading> readings = counting(one);
        Measurement first = one.getFirst();
        double days = AgeingPlans.days(plan, piece, first);
        Instrument gauge = one.stream().map(Measurement::getInstrument).filter(Objects::nonNull).findFirst().orElse(null);
        if (property.yesNo()) {
            double[] answers = readings.stream().filter(r -> r.getYes() != null).mapToDouble(r -> r.getYes() ? PER_CENT : 0).toArray();
            double share = Descriptive.mean(answers);
            return new AgedValue(days, first.getAt(), answers.length, share, share, null, first.getSession(), gauge);
        }
        List<Reading> numbers = readings.stream().filter(r -> r.getValue() != null).toList();
        double low = PartValues.low(numbers);
        double high = PartValues.high(numbers);
        Double half = low == high ? half(numbers.size(), sd, times, step(gauge, property)) : null;
        // What came with a reading, from a curve or a calculation, is no smaller for other readings beside it.
        double own = low < high ? 0 : numbers.stream().flatMap(r -> Provenances.of(r, ModelPackage.Literals.READING__VALUE).stream()).map(Provenance::getUncertainty).filter(
                Objects::nonNull).mapToDouble(Double::doubleValue).max().orElse(0);
        return new AgedValue(days, first.getAt(), numbers.size(), low, high, own > 0 && (half == null || own > half) ? Double.valueOf(own) : half, first.getSession(), gauge);
    }

    /** Half width of a median's band; null when neither scatter nor step is known. */
    private static Double half(int n, double sd, double times, double step) {
        double scatter = Double.isNaN(sd) ? 0 : times * sd * MedianSpread.factor(n) / Math.sqrt(n);
        double half = Math.hypot(scatter, STEPS * Uncertainty.resolution(step));
        return half > 0 ? Double.valueOf(half) : null;
    }

    private static double step(Instrument gauge, PropertyDef property) {
        return gauge == null ? 0 : GaugeAmounts.canonical(gauge, gauge.getResolution(), property);
    }

    /** The change of the pieces together in one sentence; says what is missing when there is none to tell. */
    public Message sentence() {
        List<double[]> changes = changes();
        if (changes.isEmpty()) {
            return Message.of(Drift.class, "drift.none");
        }
        double[] differences = changes.stream().mapToDouble(c -> c[2]).toArray();
        String from = AgeSpan.text(HOURS_PER_DAY * changes.stream().mapToDouble(c -> c[0]).min().orElseThrow());
        String to = AgeSpan.text(HOURS_PER_DAY * changes.stream().mapToDouble(c -> c[1]).max().orElseThrow());
        double mean = Descriptive.mean(differences);
        if (differences.length < 3) {
            return Message.of(Drift.class, "drift.few", signed(mean, 0), from, to, String.valueOf(differences.length));
        }
        Interval interval = interval(differences);
        String range = (FieldText.range(interval.low(), interval.high()) + " " + unit()).strip();
        String key = interval.low() > 0 ? "drift.up" : interval.high() < 0 ? "drift.down" : "drift.open";
        double half = (interval.high() - interval.low()) / 2;
        String amount = "drift.open".equals(key) ? signed(mean, half) : (FieldText.rounded(Math.abs(mean), half) + " " + unit()).strip();
        return Message.of(Drift.class, key, amount, range, String.valueOf(differences.length), from, to);
    }

    /** Changes that read alike hide what a step of the gauge can hide, as everywhere. */
    private Interval interval(double[] differences) {
        double own = Descriptive.standardDeviation(differences).orElseThrow();
        double step = series.stream().flatMap(s -> s.values().stream()).mapToDouble(v -> step(v.instrument(), property)).max().orElse(0);
        double sd = Math.max(own, step / Math.sqrt(6));
        return Intervals.meanKnownSpread(Descriptive.mean(differences), differences.length, sd, differences.length - 1.0, LEVEL);
    }

    /** First age, last age and change of each piece with two plain numbers; only pieces that were read at the common last age. */
    private List<double[]> changes() {
        List<List<AgedValue>> plain = series.stream().map(s -> s.values().stream().filter(AgedValue::known).toList()).filter(v -> v.size() > 1).toList();
        double last = plain.stream().mapToDouble(v -> v.getLast().days()).max().orElse(0);
        double first = plain.stream().mapToDouble(v -> v.getFirst().days()).min().orElse(0);
        return plain.stream().filter(v -> near(v.getLast().days(), last) && near(v.getFirst().days(), first)).map(v -> new double[] { v.getFirst().days(), v.getLast().days(),
            v.getLast().low() - v.getFirst().low() }).toList();
    }

    /** What the control piece says of the sessions at both ends, the largest change of all pairs. */
    private Message controls() {
        Double most = null;
        String name = "";
        for (AgeingSeries one : series) {
            List<AgedValue> known = one.values().stream().filter(AgedValue::known).toList();
            if (known.size() > 1 && known.getFirst().session() != null && known.getLast().session() != null) {
                Double shift = ControlReading.change(known.getFirst().session(), known.getLast().session(), property).orElse(null);
                if (shift != null && (most == null || Math.abs(shift) > Math.abs(most))) {
                    most = shift;
                    name = Objects.toString(known.getLast().session().getControlPiece().getCode(), "");
                }
            }
        }
        return most == null ? Message.of(Drift.class, "remark.noControl") : Message.of(Drift.class, "remark.control", name, signed(most, 0));
    }

    private static boolean near(double one, double other) {
        AgeSpan a = new AgeSpan(one * HOURS_PER_DAY, one * HOURS_PER_DAY, 0);
        return a.near(new AgeSpan(other * HOURS_PER_DAY, other * HOURS_PER_DAY, 0));
    }

    /** What else to know: that a shift of the gauge looks the same as ageing, and where more than one gauge was used. */
    public List<Message> remarks() {
        List<Message> remarks = new ArrayList<>();
        if (!changes().isEmpty()) {
            remarks.add(Message.of(Drift.class, "remark.session"));
            remarks.add(controls());
        }
        if (series.stream().anyMatch(s -> s.values().stream().anyMatch(v -> v.half() != null))) {
            remarks.add(Message.of(Drift.class, "remark.bands"));
        }
        List<Instrument> gauges = series.stream().flatMap(s -> s.values().stream()).map(AgedValue::instrument).filter(Objects::nonNull).distinct().toList();
        if (gauges.size() > 1) {
            remarks.add(Message.of(Drift.class, "remark.gauges", String.valueOf(gauges.size())));
        }
        if (series.stream().anyMatch(s -> s.values().stream().anyMatch(v -> !v.known()))) {
            remarks.add(Message.of(Drift.class, "remark.bounds"));
        }
        return remarks;
    }

    private String signed(double value, double half) {
        String number = half > 0 ? FieldText.rounded(value, half) : FieldText.digits(value);
        return ((value > 0 ? "+" : "") + number + " " + unit()).strip();
    }

    /** Unit of the values. */
    public String unit() {
        return property.yesNo() ? "%" : property.kind().unit().display();
    }

    /** A value in words, rounded to its band. */
    public String text(AgedValue value) {
        if (value.known()) {
            return value.half() == null ? (FieldText.digits(value.low()) + " " + unit()).strip() : FieldText.band(value.low() - value.half(), value.low(), value.low() + value
                    .half(), property.kind(), property.kind().unit().symbol());
        }
        boolean more = Double.isInfinite(value.high());
        return more ? words("moreThan", FieldText.digits(value.low()), unit()) : Double.isInfinite(value.low()) ? words("lessThan", FieldText.digits(value.high()), unit())
                : (FieldText.range(value.low(), value.high()) + " " + unit()).strip();
    }

    /**
     * Values over age, one series a piece. The ages of the plan stand at even distances and true ages in between by their logarithm, so that a
     * day and a year can be read on one axis; pieces of one age stand a little beside each other; bounds are drawn at their end and said in words.
     */
    public PlotModel plot() {
        List<Double> ages = AgeingPlans.points(plan).stream().map(AgeingPoint::getDays).toList();
        List<String> names = ages.stream().map(d -> AgeSpan.text(d * HOURS_PER_DAY)).toList();
        Axis x = Axis.of(words("axis.age"), names.isEmpty() ? List.of("") : names);
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        double left = x.min();
        double right = x.max();
        List<PlotModel.Series> drawn = new ArrayList<>();
        for (AgeingSeries one : series) {
            List<PlotModel.Point> points = new ArrayList<>();
            for (AgedValue value : one.values()) {
                double middle = value.known() ? value.low() : Double.isInfinite(value.high()) ? value.low() : Double.isInfinite(value.low()) ? value.high()
                        : (value.low() + value.high()) / 2;
                double half = value.half() == null ? 0 : value.half();
                double from = value.known() ? middle - half : Double.isInfinite(value.low()) ? middle : value.low();
                double to = value.known() ? middle + half : Double.isInfinite(value.high()) ? middle : value.high();
                double place = place(ages, value.days()) + (drawn.size() - (series.size() - 1) / 2.0) * BESIDE;
                points.add(new PlotModel.Point(place, middle, from, to, AgeSpan.text(value.days() * HOURS_PER_DAY) + ", " + text(value)));
                low = Math.min(low, from);
                high = Math.max(high, to);
                left = Math.min(left, place - 0.5);
                right = Math.max(right, place + 0.5);
            }
            drawn.add(new PlotModel.Series(one.name(), PlotModel.Style.POINTS, points));
        }
        Axis y = low <= high ? Axis.over(property.title(), unit(), low, high) : Axis.over(property.title(), unit(), 0, 1);
        return new PlotModel(title(plan, property), new Axis(x.title(), left, right, x.ticks()), y, drawn, List.of(), List.of());
    }

    /** Where an age stands on the axis: at 0, 1, 2… for the ages of the plan. */
    static double place(List<Double> ages, double days) {
        if (ages.isEmpty()) {
            return 0;
        }
        double log = Math.log(Math.max(days, 1 / HOURS_PER_DAY));
        if (ages.size() == 1) {
            return log - Math.log(ages.getFirst());
        }
        int i = 1;
        while (i < ages.size() - 1 && days > ages.get(i)) {
            i++;
        }
        double before = Math.log(ages.get(i - 1));
        return i - 1 + (log - before) / (Math.log(ages.get(i)) - before);
    }

    /** What a plan is called. */
    public static String title(AgeingPlan plan, PropertyDef property) {
        return plan.getTitle() == null || plan.getTitle().isBlank() ? words("title", property.title()) : plan.getTitle();
    }

    /** Every value as a table: for reading, for files. */
    public TableModel table() {
        List<List<String>> rows = new ArrayList<>();
        for (AgeingSeries one : series) {
            for (AgedValue value : one.values()) {
                rows.add(List.of(one.name(), FieldText.fixed(value.days(), value.days() < 10 ? 1 : 0), text(value), String.valueOf(value.readings()), value
                        .session() == null || value.session().getCode() == null ? "" : value.session().getCode()));
            }
        }
        return new TableModel(List.of(TableModel.Column.text(words("column.piece")), TableModel.Column.number(words("column.age")), TableModel.Column.text(property.title()),
                TableModel.Column.number(words("column.readings")), TableModel.Column.text(words("column.session"))), rows);
    }

    private static String words(String key, Object... args) {
        return Message.of(Drift.class, key, args).text();
    }
}
