package org.flexwright.core.search;

import java.util.List;

/**
 * What was asked for: all terms must be met.
 *
 * @param typed as it was typed
 * @param terms what was understood
 * @param left  one sentence for each thing that was not understood or was left out
 */
record Query(String typed, List<Term> terms, List<String> left) {
    Query {
        terms = List.copyOf(terms);
        left = List.copyOf(left);
    }

    /** True when a thing meets all terms. A query without terms meets nothing. */
    boolean matches(Card card) {
        if (terms.isEmpty()) {
            return false;
        }
        for (Term term : terms) {
            if (!term.matches(card)) {
                return false;
            }
        }
        return true;
    }
}
