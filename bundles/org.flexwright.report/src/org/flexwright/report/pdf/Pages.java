package org.flexwright.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Slabs put on pages. */
final class Pages {
    /**
     * A bookmark.
     *
     * @param words what it says
     * @param level its level
     * @param page  number of its page, from 0
     * @param y     from the top of the page
     */
    record Mark(String words, int level, int page, double y) {
    }

    private final double height;
    private final List<List<Ink>> pages = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private double y;

    private Pages(double height) {
        this.height = height;
        turn();
    }

    static Pages of(List<Slab> slabs, double height) {
        Pages pages = new Pages(height);
        pages.fill(slabs);
        return pages;
    }

    List<List<Ink>> inks() {
        return pages;
    }

    List<Mark> marks() {
        return marks;
    }

    private void turn() {
        pages.add(new ArrayList<>());
        y = 0;
    }

    private void fill(List<Slab> slabs) {
        for (int i = 0; i < slabs.size();) {
            int end = i;
            double chain = slabs.get(i).height();
            while (slabs.get(end).withNext() && end + 1 < slabs.size()) {
                end++;
                chain += slabs.get(end).height();
            }
            double together = chain <= height ? chain : beginning(slabs, i, end);
            if (y > 0 && y + together > height) {
                turn();
            }
            for (; i <= end; i++) {
                put(slabs.get(i));
            }
        }
    }

    /** Height of the first pieces of a chain that is too long for a page: enough that no heading stands alone. */
    private double beginning(List<Slab> slabs, int from, int end) {
        double sum = 0;
        for (int i = from; i <= end && sum < height / 4; i++) {
            sum += slabs.get(i).height();
        }
        return Math.min(sum, height);
    }

    private void put(Slab slab) {
        if (y > 0 && y + slab.height() > height + 0.01) {
            if (slab.isSpace()) {
                return;
            }
            turn();
        }
        if (y == 0 && slab.isSpace()) {
            return;
        }
        if (y == 0 && slab.again() != null) {
            draw(slab.again());
        }
        draw(slab);
    }

    private void draw(Slab slab) {
        if (slab.mark() != null) {
            marks.add(new Mark(slab.mark(), slab.level(), pages.size() - 1, y));
        }
        double at = y;
        slab.inks().forEach(ink -> pages.get(pages.size() - 1).add(ink.moved(0, at)));
        y += slab.height();
    }
}
