package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * What the screen says: blocks below one another, the most important first. What has no room goes to a next page; a touch anywhere on it turns the page, so
 * nothing scrolls and nothing is cut off.
 */
final class Story extends BenchPart {

    /**
     * Words that stay together.
     *
     * @param words what it says
     * @param size  how large
     * @param ink   in which colour
     * @param above what stands above it in small quiet words; empty for none
     * @param with  what goes with it in small quiet words, beside it where there is room, else below; empty for none
     */
    record Block(String words, Size size, Ink ink, String above, String with) {
        static Block text(String words) {
            return new Block(words, Size.TEXT, Ink.INK, "", "");
        }

        static Block quiet(String words) {
            return new Block(words, Size.TEXT, Ink.QUIET, "", "");
        }

        static Block strong(String words, Ink ink) {
            return new Block(words, Size.STRONG, ink, "", "");
        }
    }

    private final Runnable turned;
    private String title = "";
    private List<Block> blocks = List.of();
    private int page;

    /**
     * An empty story.
     *
     * @param turned called after a page was turned
     */
    Story(Composite parent, BenchLook look, Runnable turned) {
        super(parent, look, Ink.PAPER, Size.TEXT, "What to do", SWT.NO_FOCUS);
        this.turned = turned;
        addListener(SWT.MouseUp, event -> turn());
        addListener(SWT.Resize, event -> page = Math.min(page, pages().size() - 1));
    }

    /** Shows another story; the page stays when the title does. */
    void show(String head, List<Block> told) {
        if (!head.equals(title)) {
            page = 0;
        }
        title = head;
        blocks = told.stream().filter(b -> !b.words.isEmpty()).toList();
        page = Math.min(page, Math.max(0, pages().size() - 1));
        Kit.name(this, head + ". " + blocks.stream().map(b -> (b.above.isEmpty() ? "" : b.above + " ") + b.words + (b.with.isEmpty() ? "" : ", " + b.with)).collect(Collectors.joining(" ")));
        redraw();
    }

    /** From the first page again. */
    void rewind() {
        page = 0;
        redraw();
    }

    /** The next page; after the last the first. */
    void turn() {
        int count = pages().size();
        if (count > 1) {
            page = (page + 1) % count;
            redraw();
            turned.run();
        }
    }

    /** True when nothing comes after this page. */
    boolean last() {
        return page >= pages().size() - 1;
    }

    /** Number of this page, from 1. */
    int page() {
        return page + 1;
    }

    /** How many there are. */
    int count() {
        return pages().size();
    }

    private int gap() {
        return look().px(6);
    }

    private int headHeight() {
        return title.isEmpty() ? 0 : extent(title, Size.TITLE, width()).y + gap();
    }

    private int width() {
        return Math.max(1, getSize().x);
    }

    private boolean beside(Block block) {
        return !block.with.isEmpty() && extent(block.words, block.size, 0).x + look().px(14) + extent(block.with, Size.TEXT, 0).x <= width();
    }

    private int height(Block block) {
        int own = extent(block.words, block.size, width()).y;
        return own + extent(block.above, Size.TEXT, width()).y + (block.with.isEmpty() || beside(block) ? 0 : extent(block.with, Size.TEXT, width()).y);
    }

    private List<List<Block>> pages() {
        int room = getSize().y - headHeight();
        int all = blocks.stream().mapToInt(b -> height(b) + gap()).sum() - gap();
        if (all <= room || blocks.isEmpty()) {
            return List.of(blocks);
        }
        int less = room - look().line(Size.TEXT);
        List<List<Block>> pages = new ArrayList<>();
        List<Block> current = new ArrayList<>();
        int used = 0;
        for (Block block : blocks) {
            int height = height(block);
            if (!current.isEmpty() && used + height > less) {
                pages.add(current);
                current = new ArrayList<>();
                used = 0;
            }
            current.add(block);
            used += height + gap();
        }
        pages.add(current);
        return pages;
    }

    private String foot() {
        int count = pages().size();
        return count < 2 ? "" : "\u25b8 " + (page + 1) + " of " + count + (page + 1 < count ? ", touch for more" : ", touch for the first again");
    }

    @Override
    List<Shown> shown() {
        List<Shown> shown = new ArrayList<>();
        if (!title.isEmpty()) {
            shown.add(new Shown(title, Size.TITLE, Ink.INK, Ink.PAPER));
        }
        for (Block b : pages().get(page)) {
            shown.add(new Shown(b.words, b.size, b.ink, Ink.PAPER));
            if (!b.above.isEmpty()) {
                shown.add(new Shown(b.above, Size.TEXT, Ink.QUIET, Ink.PAPER));
            }
            if (!b.with.isEmpty()) {
                shown.add(new Shown(b.with, Size.TEXT, Ink.QUIET, Ink.PAPER));
            }
        }
        if (!foot().isEmpty()) {
            shown.add(new Shown(foot(), Size.TEXT, Ink.ACCENT, Ink.PAPER));
        }
        return shown;
    }

    @Override
    boolean whole() {
        int used = headHeight() + pages().get(page).stream().mapToInt(b -> height(b) + gap()).sum() - gap() + (foot().isEmpty() ? 0 : look().line(Size.TEXT));
        return used <= getSize().y + 1 && pages().get(page).stream().allMatch(b -> fits(b.words, b.size, width(), Integer.MAX_VALUE)
                && fits(b.with, Size.TEXT, width(), Integer.MAX_VALUE) && fits(b.above, Size.TEXT, width(), Integer.MAX_VALUE)) && fits(title, Size.TITLE, width(), Integer.MAX_VALUE);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? look().px(300) : wHint, hHint == SWT.DEFAULT ? look().px(200) : hHint);
    }

    @Override
    void paint(GC gc) {
        int y = 0;
        if (!title.isEmpty()) {
            y = draw(gc, title, Size.TITLE, Ink.INK, 0) + gap();
        }
        for (Block block : pages().get(page)) {
            boolean beside = beside(block);
            if (!block.above.isEmpty()) {
                y = draw(gc, block.above, Size.TEXT, Ink.QUIET, y);
            }
            int next = draw(gc, block.words, block.size, block.ink, y);
            if (!block.with.isEmpty()) {
                if (beside) {
                    gc.setFont(look().font(Size.TEXT));
                    gc.setForeground(look().color(Ink.QUIET));
                    int down = block.size == Size.FIGURE ? next - look().line(Size.TEXT) - look().px(12) : y;
                    gc.drawText(block.with, extent(block.words, block.size, 0).x + look().px(14), down, true);
                } else {
                    next = draw(gc, block.with, Size.TEXT, Ink.QUIET, next);
                }
            }
            y = next + gap();
        }
        if (!foot().isEmpty()) {
            draw(gc, foot(), Size.TEXT, Ink.ACCENT, getSize().y - look().line(Size.TEXT));
        }
    }

    private int draw(GC gc, String words, Size size, Ink ink, int y) {
        TextLayout layout = lines(words, size, width(), SWT.LEFT);
        gc.setForeground(look().color(ink));
        layout.draw(gc, 0, y);
        int end = y + layout.getBounds().height;
        layout.dispose();
        return end;
    }
}
