package org.flexwright.report.doc;

import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * What is to be printed. The same document gives the same bytes.
 *
 * @param title  title, of the window and in the metadata
 * @param foot   words at the foot of every page
 * @param author who signs it
 * @param at     the moment it speaks of; the only date that gets into the files
 * @param wide   true to print on paper laid crosswise
 * @param blocks from top to bottom
 */
public record Document(String title, String foot, String author, Instant at, boolean wide, List<Block> blocks) {
    public Document {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(foot, "foot");
        Objects.requireNonNull(author, "author");
        Objects.requireNonNull(at, "at");
        blocks = List.copyOf(blocks);
    }
}
