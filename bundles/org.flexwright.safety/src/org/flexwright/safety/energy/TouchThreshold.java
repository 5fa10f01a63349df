package org.flexwright.safety.energy;

import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;

/** Burn thresholds by surface and contact time; the standard itself was not opened. */
public final class TouchThreshold {
    /** Where the figures come from. */
    public static final Source SOURCE = Source.fromMemory("ISO 13732-1:2006; an independent scald-type list agrees for metal");

    /** Surfaces with figures. */
    public enum Surface {
        METAL, GLASS, PLASTIC
    }

    /** Contact times with figures. */
    public enum Contact {
        ONE_SECOND, FOUR_SECONDS, TEN_SECONDS, ONE_MINUTE, TEN_MINUTES, EIGHT_HOURS
    }

    private TouchThreshold() {
    }

    /** The threshold in degrees Celsius; empty where no figure is at hand. */
    public static Optional<Estimate> of(Surface surface, Contact contact) {
        return switch (contact) {
            case EIGHT_HOURS -> at(43, 43);
            case TEN_MINUTES -> at(48, 48);
            case ONE_MINUTE -> switch (surface) {
                case METAL -> at(51, 51);
                case GLASS -> at(56, 56);
                case PLASTIC -> at(60, 60);
            };
            case TEN_SECONDS -> switch (surface) {
                case METAL -> at(55, 55);
                case PLASTIC -> at(71, 71);
                case GLASS -> Optional.empty();
            };
            case FOUR_SECONDS -> surface == Surface.METAL ? at(58, 64) : Optional.empty();
            case ONE_SECOND -> switch (surface) {
                case METAL -> at(65, 70);
                case PLASTIC -> at(85, 93);
                case GLASS -> Optional.empty();
            };
        };
    }

    private static Optional<Estimate> at(double low, double high) {
        return Optional.of(new Estimate(low, (low + high) / 2, high, SOURCE));
    }
}
