package org.flexwright.curing;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.data.CureStage;
import org.flexwright.curing.formula.Schedule;

/** The schedules of a cure step, planned and actual, and how much one cures against the other. */
public final class CureSchedules {

    /** Usual band of activation energy of urethanes, kJ/mol. */
    private static final double[] USUAL = { 35, 50, 75 };
    private static final Source BAND = Source.commonPractice("Activation energy 35 to 75 kJ/mol for urethanes, 50 as likely");
    private static final Source OWN = Source.ownRecord("Activation energy of the step");

    private CureSchedules() {
    }

    /** The planned schedule; empty when neither stretches nor time and temperature are given. */
    public static Optional<Schedule> planned(CureDetails details) {
        return of(details.getPlannedStages(), details.getPlannedHours(), details.getPlannedC());
    }

    /** The schedule as it happened; empty when nothing of it is known. A missing temperature is taken as planned when one was planned. */
    public static Optional<Schedule> actual(CureDetails details) {
        return of(details.getStages(), details.getHours(), details.getCelsius() == null ? details.getPlannedC() : details.getCelsius());
    }

    private static Optional<Schedule> of(List<CureStage> stages, Double hours, Double celsius) {
        List<Schedule.Stage> full = stages.stream().filter(s -> s.getMinutes() != null && s.getCelsius() != null)
                .map(s -> new Schedule.Stage(s.getMinutes(), s.getCelsius(), s.isRamp())).toList();
        if (!full.isEmpty()) {
            return Optional.of(Schedule.of(full, ROOM));
        }
        return hours == null || celsius == null ? Optional.empty() : Optional.of(Schedule.hold(60 * hours, celsius));
    }

    /** Where a first ramp starts, degC. */
    private static final double ROOM = 23;

    /** Hours at a reference temperature in degC that cure as much, over the activation energy of the step or the usual band. */
    public static Estimate hours(Schedule schedule, CureDetails details, double referenceC) {
        return band(details, ea -> schedule.equivalentMinutes(ea, referenceC) / 60);
    }

    /** What the actual schedule cures as a share of the planned one, 1 is equal. The reference falls out. */
    public static Estimate share(Schedule actual, Schedule planned, CureDetails details) {
        return band(details, ea -> actual.equivalentMinutes(ea, ROOM) / planned.equivalentMinutes(ea, ROOM));
    }

    private static Estimate band(CureDetails details, java.util.function.DoubleUnaryOperator value) {
        if (details.getActivationEnergy() != null) {
            return Estimate.exact(value.applyAsDouble(details.getActivationEnergy()), OWN);
        }
        double[] values = java.util.Arrays.stream(USUAL).map(value).toArray();
        double likely = values[1];
        return new Estimate(Math.min(likely, Math.min(values[0], values[2])), likely, Math.max(likely, Math.max(values[0], values[2])), BAND);
    }
}
