package org.flexwright.core.search;

import org.flexwright.core.Message;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.SavedSearch;

/** Searches kept in the project under a name; whoever opens one asks again. */
public final class SavedSearches {
    private SavedSearches() {
    }

    /** Keeps a search. Throws RefusedException when the name is empty or taken, or there are no words. */
    public static SavedSearch save(Edit edit, String name, String query) {
        if (name == null || name.isBlank()) {
            throw new RefusedException(Message.of(SavedSearches.class, "search.name"));
        }
        if (query == null || query.isBlank()) {
            throw new RefusedException(Message.of(SavedSearches.class, "search.empty"));
        }
        if (edit.project().getSearches().stream().anyMatch(s -> name.strip().equalsIgnoreCase(s.getName()))) {
            throw new RefusedException(Message.of(SavedSearches.class, "search.taken", name.strip()));
        }
        SavedSearch search = ModelFactory.eINSTANCE.createSavedSearch();
        search.setName(name.strip());
        search.setQuery(query.strip());
        search.setSavedAt(edit.now());
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__SEARCHES, search);
        return search;
    }
}
