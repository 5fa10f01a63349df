package org.flexwright.report.pdf;

import java.util.List;

/**
 * A piece of the document that is not cut: it stands on one page.
 *
 * @param height   in points
 * @param inks     what is on it, from its upper left corner
 * @param withNext true when it must not be the last on a page
 * @param again    what comes again above it when it is the first on a page, such as the heading of its table; or null
 * @param mark     words of the bookmark, or null
 * @param level    level of the bookmark
 */
record Slab(double height, List<Ink> inks, boolean withNext, Slab again, String mark, int level) {
    Slab {
        inks = List.copyOf(inks);
    }

    static Slab of(double height, List<Ink> inks) {
        return new Slab(height, inks, false, null, null, 0);
    }

    static Slab space(double height) {
        return of(height, List.of());
    }

    Slab kept() {
        return new Slab(height, inks, true, again, mark, level);
    }

    Slab repeating(Slab heading) {
        return new Slab(height, inks, withNext, heading, mark, level);
    }

    Slab marked(String words, int at) {
        return new Slab(height, inks, withNext, again, words, at);
    }

    /** Moved to the right, with the heading that comes again. */
    Slab indented(double dx) {
        return new Slab(height, inks.stream().map(i -> i.moved(dx, 0)).toList(), withNext, again == null ? null : again.indented(dx), mark, level);
    }

    boolean isSpace() {
        return inks.isEmpty();
    }
}
