package org.flexwright.core.ageing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.PlanException;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;

/** Ageing plans: made, looked through for what is due, and thinned out with a reason. Ages are counted in days. */
public final class AgeingPlans {
    /** The usual ages in days, about a decade of time apart; common practice, no source. */
    public static final List<Double> USUAL_DAYS = List.of(1.0, 7.0, 30.0, 365.0);
    private static final double SECONDS_PER_DAY = 86_400;
    private static final double HOURS_PER_DAY = 24;
    private static final double MOST_DAYS = 36_500;
    /** Share of the age by which a reading may come early or late when nothing is said; common practice, no source. */
    private static final double GIVE = 0.15;

    private AgeingPlans() {
    }

    /**
     * Adds a plan.
     *
     * @param title  a few words; may be empty
     * @param key    what is read and how; must not be contained anywhere yet
     * @param pieces the pieces, one at least, none twice
     * @param days   the ages in days, above 0 and each once; in any order
     * @param from   from when age counts; null for each piece from when it was made
     * @throws PlanException when there are no pieces or no ages, or an age is not above 0
     */
    public static AgeingPlan add(Edit edit, String title, PropertyKey key, List<? extends Specimen> pieces, List<Double> days, Instant from) {
        if (key == null || key.getProperty() == null || key.getProperty().isBlank()) {
            throw refused("plan.key");
        }
        if (pieces.isEmpty()) {
            throw refused("plan.pieces");
        }
        if (days.isEmpty()) {
            throw refused("plan.days");
        }
        for (Double day : days) {
            if (day == null || !(day > 0) || day > MOST_DAYS) {
                throw refused("plan.day", day == null || day.isNaN() ? "?" : FieldText.digits(day) + " d");
            }
        }
        AgeingPlan plan = ModelFactory.eINSTANCE.createAgeingPlan();
        plan.setTitle(title == null || title.isBlank() ? null : title.strip());
        plan.setKey(key);
        plan.setFrom(from);
        plan.setRemind(true);
        plan.getSpecimens().addAll(pieces.stream().distinct().toList());
        days.stream().distinct().sorted().forEach(day -> plan.getPoints().add(point(day)));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__AGEING_PLANS, plan);
        return plan;
    }

    /** Begins a plan with the usual ages, to be filled in: it asks for nothing until it knows what is read and on which pieces. */
    public static AgeingPlan begin(Edit edit) {
        AgeingPlan plan = ModelFactory.eINSTANCE.createAgeingPlan();
        plan.setTitle(Message.of(AgeingPlans.class, "plan.title", edit.project().getAgeingPlans().size() + 1).text());
        plan.setRemind(true);
        USUAL_DAYS.forEach(day -> plan.getPoints().add(point(day)));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__AGEING_PLANS, plan);
        return plan;
    }

    private static AgeingPoint point(double days) {
        AgeingPoint point = ModelFactory.eINSTANCE.createAgeingPoint();
        point.setDays(days);
        return point;
    }

    /** Sets what is read and how; the key is copied. */
    public static void read(Edit edit, AgeingPlan plan, PropertyKey key) {
        if (key == null || key.getProperty() == null || key.getProperty().isBlank()) {
            throw refused("plan.key");
        }
        edit.set(plan, ModelPackage.Literals.AGEING_PLAN__KEY, EcoreUtil.copy(key));
    }

    /** Puts these pieces in the place of the ones there were; one at least. */
    public static void pieces(Edit edit, AgeingPlan plan, List<? extends Specimen> pieces) {
        if (pieces.isEmpty()) {
            throw refused("plan.pieces");
        }
        List.copyOf(plan.getSpecimens()).forEach(old -> edit.remove(plan, ModelPackage.Literals.AGEING_PLAN__SPECIMENS, old));
        pieces.stream().distinct().forEach(piece -> edit.add(plan, ModelPackage.Literals.AGEING_PLAN__SPECIMENS, piece));
    }

    /** Adds an age: the next decade after the oldest one, to be changed. */
    public static AgeingPoint addAge(Edit edit, AgeingPlan plan) {
        double oldest = points(plan).stream().mapToDouble(AgeingPoint::getDays).max().orElse(0);
        AgeingPoint point = point(oldest == 0 ? 1 : Math.min(MOST_DAYS, oldest < 100 ? Math.round(3 * oldest) : 2 * oldest));
        edit.add(plan, ModelPackage.Literals.AGEING_PLAN__POINTS, point);
        return point;
    }

    /** What could be followed: what the newest target sheet asks for, then what was read on parts, each once. */
    public static List<PropertyKey> offers(Project project, PropertyCatalogue properties) {
        List<PropertyKey> keys = new ArrayList<>();
        if (!project.getTargetSheets().isEmpty()) {
            project.getTargetSheets().getLast().getTargets().forEach(t -> offer(keys, t.getKey(), properties));
        }
        project.getTrials().reversed().stream().flatMap(t -> t.getParts().stream()).flatMap(p -> p.getMeasurements().stream()).forEach(m -> offer(keys, m.getKey(), properties));
        return keys;
    }

    private static void offer(List<PropertyKey> keys, PropertyKey key, PropertyCatalogue properties) {
        if (key != null && key.getProperty() != null) {
            properties.find(key.getProperty()).filter(def -> keys.stream().noneMatch(k -> def.id().equals(k.getProperty()) && PartValues.differences(k, key, def).isEmpty()))
                    .ifPresent(def -> keys.add(key));
        }
    }

    /** Says why the readings at an age are not taken; an empty reason takes it back. */
    public static void skip(Edit edit, AgeingPoint point, String reason) {
        edit.set(point, ModelPackage.Literals.AGEING_POINT__SKIPPED, reason == null || reason.isBlank() ? null : reason.strip());
    }

    /** How many days early or late a reading still counts for that age: as entered, else 15 % of the age. */
    public static double give(AgeingPoint point) {
        return point.getWindow() != null ? point.getWindow() : GIVE * point.getDays();
    }

    /** From when the age of that piece counts; null when that is not known. */
    public static Instant from(AgeingPlan plan, Specimen piece) {
        return plan.getFrom() != null ? plan.getFrom() : piece.getMadeAt();
    }

    /** Age of a piece at a reading as the plan counts it, in days; null when it is not known. */
    public static Double days(AgeingPlan plan, Specimen piece, Measurement measurement) {
        if (plan.getFrom() == null) {
            Double hours = Measurements.ageHours(measurement);
            return hours == null ? null : hours / HOURS_PER_DAY;
        }
        return measurement.getAt() == null ? null : Duration.between(plan.getFrom(), measurement.getAt()).toSeconds() / SECONDS_PER_DAY;
    }

    /** Every reading the plan asks for, by age and then by piece, with how it stands at that moment. */
    public static List<AgeingCheck> checks(AgeingPlan plan, PropertyDef property, Instant now) {
        List<AgeingCheck> checks = new ArrayList<>();
        for (AgeingPoint point : points(plan)) {
            plan.getSpecimens().forEach(piece -> checks.add(check(plan, point, piece, property, now)));
        }
        return checks;
    }

    /** The plan's ages that say a number of days, the youngest first. */
    public static List<AgeingPoint> points(AgeingPlan plan) {
        return plan.getPoints().stream().filter(p -> p.getDays() != null && p.getDays() > 0).sorted(Comparator.comparing(AgeingPoint::getDays)).toList();
    }

    private static AgeingCheck check(AgeingPlan plan, AgeingPoint point, Specimen piece, PropertyDef property, Instant now) {
        Instant from = from(plan, piece);
        double give = give(point);
        Optional<Measurement> read = readings(plan, piece, property).stream().filter(m -> {
            Double days = days(plan, piece, m);
            return days != null && Math.abs(days - point.getDays()) <= give;
        }).findFirst();
        Instant due = from == null ? null : after(from, point.getDays());
        AgeingState state;
        if (read.isPresent()) {
            state = AgeingState.READ;
        } else if (point.getSkipped() != null && !point.getSkipped().isBlank()) {
            state = AgeingState.SKIPPED;
        } else if (piece.isFailed()) {
            state = AgeingState.FAILED;
        } else if (due == null) {
            state = AgeingState.UNDATED;
        } else if (now.isBefore(after(from, point.getDays() - give))) {
            state = AgeingState.COMING;
        } else {
            state = now.isAfter(after(from, point.getDays() + give)) ? AgeingState.MISSED : AgeingState.DUE;
        }
        return new AgeingCheck(plan, point, piece, due, state, read.orElse(null));
    }

    private static Instant after(Instant from, double days) {
        return from.plusSeconds(Math.round(days * SECONDS_PER_DAY));
    }

    /** Measurements of a piece that are what the plan asks for, under the same conditions, with a reading that counts. */
    static List<Measurement> readings(AgeingPlan plan, Specimen piece, PropertyDef property) {
        if (plan.getKey() == null || property == null) {
            return List.of();
        }
        return piece.getMeasurements().stream().filter(m -> m.getKey() != null && property.id().equals(m.getKey().getProperty()) && m.getKnowledge() == Knowledge.MEASURED)
                .filter(m -> PartValues.differences(plan.getKey(), m.getKey(), property).isEmpty())
                .filter(m -> m.getReadings().stream().anyMatch(r -> Measurements.counts(r) && (property.yesNo() ? r.getYes() != null : r
                        .getValue() != null))).toList();
    }

    /** What is to be read now, and what comes next, over all plans that remind; the earliest first. */
    public static List<AgeingCheck> open(Project project, PropertyCatalogue properties, Instant now) {
        return project.getAgeingPlans().stream().filter(p -> !Boolean.FALSE.equals(p.getRemind()) && p.getKey() != null && p.getKey().getProperty() != null)
                .flatMap(p -> properties.find(p.getKey().getProperty()).stream().flatMap(def -> checks(p, def, now).stream()))
                .filter(c -> c.state() == AgeingState.DUE || c.state() == AgeingState.COMING).sorted(Comparator.comparing(AgeingCheck::due)).toList();
    }

    private static PlanException refused(String key, Object... args) {
        return new PlanException(Message.of(AgeingPlans.class, key, args));
    }
}
