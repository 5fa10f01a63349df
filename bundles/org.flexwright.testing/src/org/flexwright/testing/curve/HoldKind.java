package org.flexwright.testing.curve;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.recording.ChannelWish;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.HoldDetails;
import org.flexwright.testing.data.TestingDataPackage;
import org.osgi.service.component.annotations.Component;

/** A piece held at one deformation while its force falls: relaxation and the exponentials that describe it. */
@Component(service = RecordingKind.class)
public final class HoldKind implements RecordingKind {
    /** Stable id. */
    public static final String ID = "testing.hold";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Held force";
    }

    @Override
    public String summary() {
        return "A piece is squeezed or stretched quickly and held while its force falls. Relaxation after given times, and a Prony series.";
    }

    @Override
    public EClass details() {
        return TestingDataPackage.Literals.HOLD_DETAILS;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.TABLE;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of(new ChannelWish(ChannelRole.TIME, "time", QuantityKind.DURATION, "s", true), new ChannelWish(ChannelRole.FORCE, "force", QuantityKind.FORCE, "N", false),
                new ChannelWish(ChannelRole.STRESS, "stress", QuantityKind.STRESS, "MPa", false));
    }

    /** Time, and one of force and stress. */
    @Override
    public Optional<Message> missing(Set<ChannelRole> roles) {
        if (!roles.contains(ChannelRole.TIME)) {
            return Optional.of(Say.message("hold.noTime"));
        }
        return roles.contains(ChannelRole.FORCE) || roles.contains(ChannelRole.STRESS) ? Optional.empty() : Optional.of(Say.message("hold.noForce"));
    }

    /** What the gauge showed at rest is read anew each time. */
    @Override
    public Set<String> asksAnew() {
        return Set.of(TestingDataPackage.Literals.HOLD_DETAILS__ZERO_FORCE.getName());
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        return new HoldLook(recording, recording.getDetails() instanceof HoldDetails d ? d : null, data).look(watch);
    }
}
