package org.flexwright.dropins;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A plugin taken in from a folder.
 *
 * @param file    the jar
 * @param plugin  symbolic name
 * @param version version of the plugin
 */
public record DropIn(Path file, String plugin, String version) {
    public DropIn {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(plugin, "plugin");
        Objects.requireNonNull(version, "version");
    }
}
