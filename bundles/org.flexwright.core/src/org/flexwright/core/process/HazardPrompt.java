package org.flexwright.core.process;

import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * A usual caution shown before a step. It never says that something is harmless; the product's own data sheet wins.
 *
 * @param id       stable id
 * @param hazard   what can hurt, one sentence
 * @param controls what is usually done about it, one sentence
 * @param source   what it rests on
 * @param needsSheet true when the person must confirm having read the data sheet (date and revision), once a session and lot
 */
public record HazardPrompt(String id, Message hazard, Message controls, Source source, boolean needsSheet) {
    public HazardPrompt {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(hazard, "hazard");
        Objects.requireNonNull(controls, "controls");
        Objects.requireNonNull(source, "source");
    }
}
