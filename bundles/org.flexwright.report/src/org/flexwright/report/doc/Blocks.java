package org.flexwright.report.doc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers the blocks of a document. */
public final class Blocks {
    private final List<Block> all = new ArrayList<>();

    /** All so far. */
    public List<Block> all() {
        return List.copyOf(all);
    }

    /** Any block. */
    public Blocks add(Block block) {
        all.add(block);
        return this;
    }

    /** A heading. */
    public Blocks heading(int level, String text) {
        return add(new Block.Heading(level, text));
    }

    /** Words; nothing when they are empty. */
    public Blocks say(String text) {
        return say(text, Tone.PLAIN);
    }

    /** Words in a tone; nothing when they are empty. */
    public Blocks say(String text, Tone tone) {
        return text == null || text.isBlank() ? this : add(new Block.Paragraph(text, tone));
    }

    /** Points; nothing when there are none. */
    public Blocks items(List<String> items) {
        return cells(items.stream().map(Block.Cell::of).toList());
    }

    /** Points in their tones; nothing when there are none. */
    public Blocks cells(List<Block.Cell> items) {
        return items.isEmpty() ? this : add(new Block.Items(items));
    }

    /** A table of words alone; a title that begins with # is a column of numbers. */
    public Blocks table(List<String> titles, List<List<String>> rows) {
        return add(new Block.Table(columns(titles), rows.stream().map(r -> r.stream().map(Block.Cell::of).toList()).toList()));
    }

    /** Columns from titles; one that begins with # is of numbers. */
    public static List<Block.Column> columns(List<String> titles) {
        return titles.stream().map(t -> t.startsWith("#") ? Block.Column.number(t.substring(1)) : Block.Column.text(t)).toList();
    }

    /** A row of words. */
    public static List<Block.Cell> row(String... cells) {
        return Arrays.stream(cells).map(Block.Cell::of).toList();
    }
}
