package org.flexwright.core.registry;

import java.util.List;

/** Components that could not start. Implemented by what runs the components; absent in plain tests. */
@FunctionalInterface
public interface ActivationFailures {
    /** Those known now. */
    List<Failure> now();
}
