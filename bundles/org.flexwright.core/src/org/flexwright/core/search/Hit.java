package org.flexwright.core.search;

import java.time.LocalDate;
import java.util.List;

/**
 * A thing that was found.
 *
 * @param kind    what it is
 * @param address its address in the project
 * @param code    its short code, may be empty
 * @param name    what people call it
 * @param line    a short line beside it, may be empty
 * @param day     its day, null when it has none
 * @param dayWord what happened that day: made, planned, held ...
 * @param why     for each word looked for where it was found; what is found everywhere or by absence has no entry
 * @param opens   address of the best place to open: where the most telling word was found, else the thing itself
 */
public record Hit(ThingKind kind, String address, String code, String name, String line, LocalDate day, String dayWord, List<Why> why, String opens) {
    public Hit {
        why = List.copyOf(why);
    }
}
