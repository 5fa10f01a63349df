package org.flexwright.dropins;

import java.util.List;

import org.flexwright.core.registry.ActivationFailures;
import org.flexwright.core.registry.Failure;

/** What came of the jars in the plugin folders at this start; registered as an OSGi service, also with the registries. */
public interface DropIns extends ActivationFailures {

    /** The plugins that were taken in, by file name. */
    List<DropIn> loaded();

    /** What was left out: the file, why, and the plugin it holds, where that is known. */
    @Override
    List<Failure> now();
}
