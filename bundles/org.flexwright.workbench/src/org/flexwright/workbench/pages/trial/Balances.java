package org.flexwright.workbench.pages.trial;

import java.util.List;

import org.flexwright.model.Instrument;
import org.flexwright.model.Session;

/** The balance of a session. */
final class Balances {

    private Balances() {
    }

    /** The session's balance when it has exactly one; else null: nobody said which one it was. */
    static Instrument of(Session session) {
        if (session == null) {
            return null;
        }
        List<Instrument> balances = session.getInstruments().stream().filter(i -> i.getKind() != null && i.getKind().toLowerCase(java.util.Locale.ROOT)
                .contains("balance")).toList();
        return balances.size() == 1 ? balances.getFirst() : null;
    }
}
