package org.flexwright.core.recording;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.model.Instrument;
import org.flexwright.model.Session;

/**
 * How a file is taken in. {@link Recordings#defaults} gives a first one: what the file says, and what was said the last time.
 *
 * @param table      how lines are cut; null for a sound
 * @param columns    what the columns mean; empty for a sound
 * @param details    what the kind asks, a free object of its details class; null when the kind asks nothing
 * @param remembered names of details that were taken over from the last recording of the kind and that nobody typed now
 * @param title      a few words; may be null
 * @param at         when it was recorded; null for now
 * @param session    the session; may be null
 * @param instrument the instrument; may be null
 * @param cycle      which loading of the piece it is, from 1; null when not said
 */
public record ImportSettings(TableFormat table, List<ColumnUse> columns, EObject details, Set<String> remembered, String title, Instant at,
        Session session, Instrument instrument, Integer cycle) {
    public ImportSettings {
        columns = List.copyOf(columns);
        remembered = Set.copyOf(remembered);
    }

    /** With another way of cutting lines. */
    public ImportSettings withTable(TableFormat other) {
        return new ImportSettings(other, columns, details, remembered, title, at, session, instrument, cycle);
    }

    /** With other meanings of the columns. */
    public ImportSettings withColumns(List<ColumnUse> other) {
        return new ImportSettings(table, other, details, remembered, title, at, session, instrument, cycle);
    }

    /** With other details. The object is copied when the recording is made; changing its features beforehand does as well. */
    public ImportSettings withDetails(EObject other, Set<String> stillRemembered) {
        return new ImportSettings(table, columns, other, stillRemembered, title, at, session, instrument, cycle);
    }

    /** With what belongs to the recording as a whole. */
    public ImportSettings withRecord(String newTitle, Instant newAt, Session newSession, Instrument newInstrument, Integer newCycle) {
        return new ImportSettings(table, columns, details, remembered, newTitle, newAt, newSession, newInstrument, newCycle);
    }
}
