package org.flexwright.core.process;

import java.util.Objects;
import java.util.Optional;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** The working time of a trial: the one place that says it. */
public final class WorkingTimes {

    private WorkingTimes() {
    }

    /** As it comes to in the room the trial is made in and with what is in its cup; empty when no step says one. */
    public static Optional<WorkingTime> of(Trial trial, StepKinds kinds) {
        return stated(trial, kinds).map(time -> time.at(gramsInCup(trial), roomC(trial)));
    }

    /** As stated by the first step that says one, for the amount and the temperature it was stated for; a skipped step says nothing. */
    public static Optional<WorkingTime> stated(Trial trial, StepKinds kinds) {
        return trial.getSteps().stream().filter(step -> step.getState() != StepState.SKIPPED)
                .flatMap(step -> kinds.findStepKind(step.getKind()).flatMap(kind -> kind.workingTime(step, trial)).stream()).findFirst();
    }

    /** Temperature of the room in degC, from the first step that was made in a session with one; null when none was. */
    public static Double roomC(Trial trial) {
        return trial.getSteps().stream().map(Step::getSession).filter(Objects::nonNull).map(Session::getRoomC).filter(Objects::nonNull).findFirst().orElse(null);
    }

    /** Grams in the cup, of each material what was weighed, else what is planned; null when nothing says. */
    public static Double gramsInCup(Trial trial) {
        double grams = trial.getSteps().stream().filter(step -> step.getState() != StepState.SKIPPED).flatMap(step -> step.getUses().stream())
                .filter(use -> isInCup(use.getRole())).map(WorkingTimes::grams).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum();
        return grams > 0 ? grams : null;
    }

    private static Double grams(MaterialUse use) {
        Double weighed = Mixtures.grams(use);
        return weighed == null ? use.getPlanned() : weighed;
    }

    private static boolean isInCup(PartRole role) {
        return role != PartRole.MOULD && role != PartRole.RELEASE && role != PartRole.WASH && role != PartRole.OTHER;
    }
}
