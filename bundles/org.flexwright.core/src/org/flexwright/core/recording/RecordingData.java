package org.flexwright.core.recording;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.model.ChannelRole;

/**
 * The figures of a recording, in the units the kind asked for. All channels have the same number of rows.
 *
 * @param channels by column, or the sound
 * @param rate     samples a second of a sound; 0 for a table
 */
public record RecordingData(List<Channel> channels, double rate) {
    public RecordingData {
        channels = List.copyOf(channels);
        if (channels.stream().mapToInt(c -> c.values().length).distinct().count() > 1) {
            throw new IllegalArgumentException("Channels of different length.");
        }
    }

    /**
     * One column.
     *
     * @param role   what it means
     * @param name   its heading in the file; may be empty
     * @param unit   symbol of the unit of the values
     * @param values one a row; not copied, not to be changed
     */
    public record Channel(ChannelRole role, String name, String unit, double[] values) {
        public Channel {
            Objects.requireNonNull(role, "role");
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(values, "values");
        }
    }

    /** How many rows there are. */
    public int rows() {
        return channels.isEmpty() ? 0 : channels.get(0).values().length;
    }

    /** The first channel of that meaning. */
    public Optional<Channel> find(ChannelRole role) {
        return channels.stream().filter(c -> c.role() == role).findFirst();
    }
}
