package org.flexwright.testing.hardness;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.testing.Say;

/**
 * One place where readings differ from their protocol.
 *
 * @param matter    what it is about
 * @param severity  how much it matters
 * @param key       of the sentence; {@code key.remedy} says what helps
 * @param source    where the figure comes from
 * @param arguments of the sentence
 */
public record Deviation(Matter matter, Severity severity, String key, Source source, List<Object> arguments) {

    /** What a protocol is about. */
    public enum Matter {
        THICKNESS, PLIES, CURVATURE, EDGE, SPACING, NUMBER, DWELL, REST, TEMPERATURE, WINDOW, SPREAD
    }

    static Deviation caution(Matter matter, Source source, String key, Object... arguments) {
        return new Deviation(matter, Severity.CAUTION, key, source, List.of(arguments));
    }

    static Deviation note(Matter matter, Source source, String key, Object... arguments) {
        return new Deviation(matter, Severity.NOTE, key, source, List.of(arguments));
    }

    /** The sentence beside a result. */
    public Remark remark() {
        return new Remark(severity, Say.message(key, arguments.toArray()), source);
    }
}
