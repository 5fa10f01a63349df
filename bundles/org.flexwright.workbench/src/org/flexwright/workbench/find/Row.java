package org.flexwright.workbench.find;

import java.util.List;

import org.flexwright.core.search.Hit;
import org.flexwright.model.SavedSearch;
import org.flexwright.workbench.settings.RecentThing;

/** A line of the results. */
sealed interface Row {
    /** Things stand to the right of the words above them. */
    String INDENT = "         ";

    /** Cells, from the left. */
    List<String> cells();

    /** Heads a group; it cannot be chosen. */
    record Head(String words) implements Row {
        @Override
        public List<String> cells() {
            return List.of("   " + words, "", "");
        }
    }

    /** A thing that was found. */
    record Found(Hit hit) implements Row {
        @Override
        public List<String> cells() {
            String why = String.join("   ·   ", hit.why().stream().filter(w -> !w.label().equals("Date") && !hit.name().contains(w.text())).map(w -> w.line()).toList());
            return List.of(INDENT + hit.name(), why.isEmpty() ? hit.line() : why, hit.day() == null ? "" : hit.dayWord() + " " + hit.day());
        }
    }

    /** A saved search. */
    record Saved(SavedSearch search) implements Row {
        @Override
        public List<String> cells() {
            return List.of(INDENT + search.getName(), search.getQuery().equals(search.getName()) ? "" : search.getQuery(), "");
        }
    }

    /** Something that was asked before. */
    record Asked(String query) implements Row {
        @Override
        public List<String> cells() {
            return List.of(INDENT + query, "", "");
        }
    }

    /** A thing that was opened before. */
    record Opened(RecentThing thing, String name) implements Row {
        @Override
        public List<String> cells() {
            return List.of(INDENT + name, "", "");
        }
    }
}
