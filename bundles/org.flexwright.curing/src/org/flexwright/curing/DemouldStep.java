package org.flexwright.curing;

import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.curing.data.CuringDataPackage;
import org.flexwright.curing.data.DemouldDetails;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Taking a part out of its mould. */
@Component(service = StepKind.class)
public final class DemouldStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "curing.demould";

    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Demould";
    }

    @Override
    public String summary() {
        return "Open the mould once the leftover in the cup is firm to the nail and the planned time has passed.";
    }

    @Override
    public EClass details() {
        return CuringDataPackage.Literals.DEMOULD_DETAILS;
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double age = step.getDetails() instanceof DemouldDetails details ? details.getPlannedAge() : null;
        StepTime hands = StepTime.hands(step.getPlannedDuration(), StepTime.usual(5, 10, 30));
        return Optional.of(new StepTime(hands.hands(), 0, age == null ? null : Double.valueOf(MINUTES_AN_HOUR * age)));
    }
}
