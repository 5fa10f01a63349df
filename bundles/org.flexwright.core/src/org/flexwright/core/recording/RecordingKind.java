package org.flexwright.core.recording;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;

/**
 * One sort of recording: a stretched strip, a press with its force, bounces by their sound. Register it as an OSGi service; import,
 * settings, plot with marks, results and the way into readings come for free.
 */
public interface RecordingKind {
    /** Stable id, {@code capability.name}, e.g. {@code testing.stretch}. */
    String id();

    /** A noun: what was recorded. */
    String title();

    /** One or two sentences: what it is good for and how it is taken. */
    String summary();

    /** What is asked about it, or null; described as the details of a step are. */
    EClass details();

    /** What sort of file it reads. */
    RecordingFormat format();

    /** The columns it can use; empty for a sound. */
    List<ChannelWish> channels();

    /**
     * What is still missing when a file has columns of these meanings only, one sentence; empty when it is enough. The usual answer is the
     * first required column that is not there; a kind that can do with one of several says so itself.
     */
    default Optional<Message> missing(Set<ChannelRole> roles) {
        return channels().stream().filter(wish -> wish.required() && !roles.contains(wish.role())).findFirst()
                .map(wish -> Message.of(RecordingKind.class, "column.missing", wish.title()));
    }

    /** Names of details that belong to one recording alone and are not offered again with the next one, such as whether the piece broke. */
    default Set<String> asksAnew() {
        return Set.of();
    }

    /**
     * Reads what the recording says, with its settings and the marks set by hand. A pure function of its arguments; never throws for bad
     * figures: what cannot be had is left out and a remark says why. Ends with {@link java.util.concurrent.CancellationException} when
     * the watch was cancelled.
     */
    Look look(Recording recording, RecordingData data, Watch watch);

    /**
     * The loading branch with slack and zero taken off, for fits of rubber laws; empty for kinds that stretch nothing and where the record
     * does not say enough, such as the section. A pure function of its arguments, as {@link #look}.
     */
    default Optional<StretchCurve> curve(Recording recording, RecordingData data, Watch watch) {
        return Optional.empty();
    }

    /** Whether {@link #curve} may give one at all. */
    default boolean givesCurve() {
        return false;
    }
}
