package org.flexwright.core.registry;

import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/**
 * The plugin a class came from.
 *
 * @param plugin  symbolic name; outside OSGi the class's package
 * @param version version; empty outside OSGi
 */
record Owner(String plugin, String version) {

    static Owner of(Class<?> type) {
        Bundle bundle = FrameworkUtil.getBundle(type);
        return bundle == null ? new Owner(type.getPackageName(), "") : new Owner(bundle.getSymbolicName(), bundle.getVersion().toString());
    }
}
