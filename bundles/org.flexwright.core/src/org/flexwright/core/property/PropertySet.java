package org.flexwright.core.property;

import java.util.List;

/** Properties a plugin adds. Register it as an OSGi service. */
public interface PropertySet {
    /** The properties; ids unique over all plugins. */
    List<PropertyDef> properties();
}
