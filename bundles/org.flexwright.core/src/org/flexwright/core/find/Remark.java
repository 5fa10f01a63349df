package org.flexwright.core.find;

import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * Something to know about a calculation's result.
 *
 * @param severity how much it matters
 * @param message  one sentence
 * @param source   what it rests on
 */
public record Remark(Severity severity, Message message, Source source) {
    public Remark {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(source, "source");
    }
}
