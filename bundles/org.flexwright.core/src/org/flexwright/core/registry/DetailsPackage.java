package org.flexwright.core.registry;

import java.util.Objects;

import org.eclipse.emf.ecore.EPackage;

/**
 * A package of details classes and who owns it.
 *
 * @param ePackage the package
 * @param plugin   symbolic name of the plugin that writes it
 * @param version  its version, or empty outside OSGi
 */
public record DetailsPackage(EPackage ePackage, String plugin, String version) {
    public DetailsPackage {
        Objects.requireNonNull(ePackage, "ePackage");
        Objects.requireNonNull(plugin, "plugin");
        Objects.requireNonNull(version, "version");
    }
}
