package org.flexwright.core.session;

import java.nio.file.Path;
import java.time.Instant;

/**
 * An earlier saved state of a project.
 *
 * @param number grows with every save
 * @param at     when it was put aside
 * @param bytes  its size
 * @param file   where it is
 */
public record KeptVersion(int number, Instant at, long bytes, Path file) {
}
