package org.flexwright.testing.curve;

import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Watch;
import org.flexwright.core.recording.ChannelWish;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.TestingDataPackage;
import org.osgi.service.component.annotations.Component;

/** A part pressed in, force over travel: peak, snap, least force, strokes. */
@Component(service = RecordingKind.class)
public final class PressKind implements RecordingKind {
    /** Stable id. */
    public static final String ID = "testing.press";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Press with force";
    }

    @Override
    public String summary() {
        return "A part is pressed in slowly under a force gauge, and let out again. Peak force, least force after it, snap ratio and strokes.";
    }

    @Override
    public EClass details() {
        return TestingDataPackage.Literals.PRESS_DETAILS;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.TABLE;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of(new ChannelWish(ChannelRole.TRAVEL, "travel", QuantityKind.LENGTH, "mm", true), new ChannelWish(ChannelRole.FORCE, "force", QuantityKind.FORCE, "N",
                true), new ChannelWish(ChannelRole.TIME, "time", QuantityKind.DURATION, "s", false));
    }

    /** What the gauge showed at rest is read anew each time. */
    @Override
    public Set<String> asksAnew() {
        return Set.of(TestingDataPackage.Literals.PRESS_DETAILS__ZERO_FORCE.getName());
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        PressDetails details = recording.getDetails() instanceof PressDetails d ? d : null;
        return new PressLook(recording, details, data).look(watch);
    }
}
