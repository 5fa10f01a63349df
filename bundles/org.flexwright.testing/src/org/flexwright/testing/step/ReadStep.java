package org.flexwright.testing.step;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Reading the pieces of a trial at the bench; the readings themselves are kept with the pieces. */
@Component(service = StepKind.class)
public final class ReadStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "testing.read";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Measure";
    }

    @Override
    public String summary() {
        return "Parts and test pieces are read after their rest: the control piece first, the same spots, support and dwell on every piece, every reading kept.";
    }

    @Override
    public boolean reads() {
        return true;
    }

    /** The core step says it all: session, times, and the measurements on the pieces. */
    @Override
    public EClass details() {
        return null;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("testing.snap-back", Say.message("prompt.snap-back"), Say.message("prompt.snap-back.controls"), Source.commonPractice(), false));
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        return Optional.of(StepTime.hands(step.getPlannedDuration(), StepTime.usual(10, 20, 40)));
    }
}
