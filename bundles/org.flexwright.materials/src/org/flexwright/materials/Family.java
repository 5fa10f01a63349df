package org.flexwright.materials;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;

/**
 * A family of materials with what is usual in it. Typical ranges, not data of any product.
 *
 * @param id     stable id, as a grade names it
 * @param title  a few words
 * @param ranges by id of the property, in its canonical unit
 */
public record Family(String id, String title, Map<String, Range> ranges) {

    /**
     * A usual range.
     *
     * @param low    lower end
     * @param high   upper end
     * @param source what it rests on
     */
    public record Range(double low, double high, Source source) {
        public Range {
            if (!(low <= high)) {
                throw new IllegalArgumentException("A range needs low <= high, got " + low + " and " + high + ".");
            }
        }

        /** The range as an estimate; likely is its middle, geometric when it spans more than a factor of three. */
        public Estimate estimate() {
            double likely = low > 0 && high / low > 3 ? Math.sqrt(low * high) : (low + high) / 2;
            return new Estimate(low, likely, high, source);
        }
    }

    public Family {
        ranges = Collections.unmodifiableMap(new LinkedHashMap<>(ranges));
    }

    /** The usual range of a property; empty when nothing is known of it. */
    public Optional<Range> range(String property) {
        return Optional.ofNullable(ranges.get(property));
    }
}
