package org.flexwright.core.registry;

import java.util.Objects;

/**
 * Something a plugin offered that could not be taken.
 *
 * @param what   its id or class
 * @param why    one sentence
 * @param plugin symbolic name of the plugin, or empty when unknown
 */
public record Failure(String what, String why, String plugin) {
    public Failure {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(plugin, "plugin");
    }
}
