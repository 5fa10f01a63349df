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
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.TestingDataPackage;
import org.osgi.service.component.annotations.Component;

/** A strip, dumbbell or sheet that is stretched, once or in loops: stresses, moduli, break, loss, softening. */
@Component(service = RecordingKind.class)
public final class StretchKind implements RecordingKind {
    /** Stable id. */
    public static final String ID = "testing.stretch";
    private static final Set<ChannelRole> LENGTHS = Set.of(ChannelRole.TRAVEL, ChannelRole.STRAIN, ChannelRole.STRETCH);
    private static final Set<ChannelRole> FORCES = Set.of(ChannelRole.FORCE, ChannelRole.STRESS);

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Stretch curve";
    }

    @Override
    public String summary() {
        return "A strip or dumbbell is stretched, to the break or in loops. Stress at 100 and 300 %, strength, moduli, loss, softening.";
    }

    @Override
    public EClass details() {
        return TestingDataPackage.Literals.STRETCH_DETAILS;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.TABLE;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of(new ChannelWish(ChannelRole.TRAVEL, "travel", QuantityKind.LENGTH, "mm", false), new ChannelWish(ChannelRole.FORCE, "force", QuantityKind.FORCE,
                "N", false), new ChannelWish(ChannelRole.STRAIN, "strain", QuantityKind.FRACTION, "%", false), new ChannelWish(ChannelRole.STRETCH, "stretch",
                        QuantityKind.NUMBER, "", false), new ChannelWish(ChannelRole.STRESS, "stress", QuantityKind.STRESS, "MPa", false), new ChannelWish(
                                ChannelRole.TIME, "time", QuantityKind.DURATION, "s", false));
    }

    /** One of travel, strain and stretch, and one of force and stress. */
    @Override
    public Optional<Message> missing(Set<ChannelRole> roles) {
        if (LENGTHS.stream().noneMatch(roles::contains)) {
            return Optional.of(Say.message("curve.stretch.noLength"));
        }
        return FORCES.stream().anyMatch(roles::contains) ? Optional.empty() : Optional.of(Say.message("curve.stretch.noForce"));
    }

    /** What happened to one piece alone. */
    @Override
    public Set<String> asksAnew() {
        return Set.of(TestingDataPackage.Literals.STRETCH_DETAILS__ZERO_FORCE.getName(), TestingDataPackage.Literals.STRETCH_DETAILS__BROKE.getName(),
                TestingDataPackage.Literals.STRETCH_DETAILS__BROKE_IN_GRIP.getName());
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        return new StretchLook(recording, details(recording), data).look(watch);
    }

    @Override
    public Optional<StretchCurve> curve(Recording recording, RecordingData data, Watch watch) {
        return new StretchLook(recording, details(recording), data).curve(watch);
    }

    @Override
    public boolean givesCurve() {
        return true;
    }

    private static StretchDetails details(Recording recording) {
        return recording.getDetails() instanceof StretchDetails d ? d : null;
    }
}
