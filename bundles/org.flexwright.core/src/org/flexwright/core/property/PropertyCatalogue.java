package org.flexwright.core.property;

import java.util.List;
import java.util.Optional;

/** All known properties. */
public interface PropertyCatalogue {
    /** All, in order of title. */
    List<PropertyDef> all();

    /** The property with that id; empty when its plugin is absent. */
    Optional<PropertyDef> find(String id);
}
