package org.flexwright.workbench.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;

/** All page providers, those built in and those plugins bring. */
public final class EditorPages {

    private final List<EditorPageProvider> providers;

    /** Takes them in; a second one of the same id is left out and logged. */
    public EditorPages(List<EditorPageProvider> offered) {
        Map<String, EditorPageProvider> byId = new LinkedHashMap<>();
        for (EditorPageProvider provider : offered) {
            EditorPageProvider before = byId.putIfAbsent(provider.id(), provider);
            if (before != null) {
                ILog.get().warn("Page " + provider.id() + " of " + provider.getClass().getName() + " is left out: " + before.getClass().getName()
                        + " has that id.");
            }
        }
        this.providers = byId.values().stream().sorted(Comparator.comparingInt(EditorPageProvider::order)).toList();
    }

    /** The providers that accept a subject, in the order of their tabs; one that fails is left out and logged. */
    public List<EditorPageProvider> pagesFor(EObject subject) {
        List<EditorPageProvider> accepting = new ArrayList<>();
        for (EditorPageProvider provider : providers) {
            try {
                if (provider.accepts(subject)) {
                    accepting.add(provider);
                }
            } catch (RuntimeException e) {
                ILog.get().error("Page " + provider.id() + " failed to look at its subject.", e);
            }
        }
        return accepting;
    }
}
