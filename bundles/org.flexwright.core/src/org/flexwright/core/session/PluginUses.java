package org.flexwright.core.session;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PluginUse;

/** Keeps in the project which plugins wrote details into it, so that an absent one can be named. */
final class PluginUses {
    private PluginUses() {
    }

    /** Notes the plugins of all details that an edit brings. */
    static void note(Recorder edit, Packages packages) {
        Set<DetailsPackage> used = new LinkedHashSet<>();
        edit.change("", null).arriving().forEach(root -> ModelIndex.each(root, o -> {
            DetailsPackage p = packages.details(o.eClass().getEPackage().getNsURI());
            if (p != null) {
                used.add(p);
            }
        }));
        for (DetailsPackage p : used) {
            String nsURI = p.ePackage().getNsURI();
            Optional<PluginUse> known = edit.project().getPlugins().stream().filter(u -> nsURI.equals(u.getNsURI())).findFirst();
            if (known.isEmpty()) {
                PluginUse u = ModelFactory.eINSTANCE.createPluginUse();
                u.setNsURI(nsURI);
                u.setPlugin(p.plugin());
                u.setVersion(p.version());
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__PLUGINS, u);
            } else {
                edit.set(known.get(), ModelPackage.Literals.PLUGIN_USE__PLUGIN, p.plugin());
                edit.set(known.get(), ModelPackage.Literals.PLUGIN_USE__VERSION, p.version());
            }
        }
    }
}
