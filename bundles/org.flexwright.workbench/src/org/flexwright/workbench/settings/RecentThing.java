package org.flexwright.workbench.settings;

import java.util.Objects;

/**
 * A thing of a project that was opened before on this machine.
 *
 * @param project id of its project
 * @param address its address in it
 */
public record RecentThing(String project, String address) {
    public RecentThing {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(address, "address");
    }
}
