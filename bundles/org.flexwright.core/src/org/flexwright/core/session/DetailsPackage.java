package org.flexwright.core.session;

import java.util.Objects;

import org.eclipse.emf.ecore.EPackage;

/**
 * A package of step or measurement details that is here, and whose it is.
 *
 * @param ePackage the package
 * @param plugin   name of the plugin that brings it
 * @param version  version of that plugin
 */
public record DetailsPackage(EPackage ePackage, String plugin, String version) {
    public DetailsPackage {
        Objects.requireNonNull(ePackage, "ePackage");
        Objects.requireNonNull(plugin, "plugin");
        Objects.requireNonNull(version, "version");
    }
}
