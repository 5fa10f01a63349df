package org.flexwright.core.registry;

import java.util.List;

/** Plugins or components that could not start. Implemented by what installs and runs them; absent in plain tests. */
@FunctionalInterface
public interface ActivationFailures {
    /** Those known now. */
    List<Failure> now();
}
