package org.flexwright.report.doc;

/** How words are said; each reads in greyscale too. */
public enum Tone {
    /** As it is. */
    PLAIN,
    /** Beside the matter. */
    QUIET,
    /** What has to be seen first. */
    STRONG,
    /** In a frame across the page. */
    BANNER,
    /** What makes people stop. */
    STOP,
    /** What makes people careful. */
    CAUTION
}
