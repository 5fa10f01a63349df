package org.flexwright.report.doc;

import java.util.List;
import java.util.Objects;

/** One piece of a document, from top to bottom. */
public sealed interface Block permits Block.Heading, Block.Paragraph, Block.Items, Block.NumberedStep, Block.Table, Block.Figure, Block.Code, Drawing {

    /**
     * A heading; it stays with what follows.
     *
     * @param level 1 for the title, 2 for a chapter, 3 for what is in it
     * @param text  words
     */
    record Heading(int level, String text) implements Block {
        public Heading {
            Objects.requireNonNull(text, "text");
            if (level < 1 || level > 3) {
                throw new IllegalArgumentException("Headings have levels 1 to 3, not " + level + ".");
            }
        }
    }

    /**
     * Words that flow.
     *
     * @param text words; a line feed begins a new line
     * @param tone how they are said
     */
    record Paragraph(String text, Tone tone) implements Block {
        public Paragraph {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(tone, "tone");
        }
    }

    /**
     * Points without order.
     *
     * @param items one sentence or more each
     */
    record Items(List<Cell> items) implements Block {
        public Items {
            items = List.copyOf(items);
        }
    }

    /**
     * One step of a procedure.
     *
     * @param number  its number
     * @param title   what is done
     * @param clock   when it is done, on the clock of the procedure; may be empty
     * @param content what to know about it
     */
    record NumberedStep(int number, String title, String clock, List<Block> content) implements Block {
        public NumberedStep {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(clock, "clock");
            content = List.copyOf(content);
        }
    }

    /**
     * A table; its heading comes again on every page.
     *
     * @param columns the columns
     * @param rows    cells, each row as long as {@code columns}
     */
    record Table(List<Column> columns, List<List<Cell>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            int width = columns.size();
            if (width == 0 || rows.stream().anyMatch(r -> r.size() != width)) {
                throw new IllegalArgumentException("Every row needs " + width + " cells.");
            }
        }
    }

    /**
     * A column of a table.
     *
     * @param title  words above it, with the unit
     * @param number true when its cells are numbers: right-aligned and never broken
     */
    record Column(String title, boolean number) {
        public Column {
            Objects.requireNonNull(title, "title");
        }

        /** A column of words. */
        public static Column text(String title) {
            return new Column(title, false);
        }

        /** A column of numbers. */
        public static Column number(String title) {
            return new Column(title, true);
        }
    }

    /**
     * Words in a table or a point of a list.
     *
     * @param text    words; a line feed begins a new line
     * @param tone    how they are said
     * @param drawing a small drawing above them, or null
     */
    record Cell(String text, Tone tone, Drawing drawing) {
        public Cell {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(tone, "tone");
        }

        /** Plain words. */
        public static Cell of(String text) {
            return new Cell(text == null ? "" : text, Tone.PLAIN, null);
        }

        /** Words in a tone. */
        public static Cell of(String text, Tone tone) {
            return new Cell(text == null ? "" : text, tone, null);
        }
    }

    /**
     * A picture with words under it.
     *
     * @param caption words under it, with what is not shown and why
     * @param picture the picture; null when it is not shown
     */
    record Figure(String caption, Picture picture) implements Block {
        public Figure {
            Objects.requireNonNull(caption, "caption");
        }
    }

    /**
     * A label: a QR code with the same words for people beside it. Labels that follow each other stand side by side.
     *
     * @param code  what the QR code says, printed under it as text
     * @param words lines beside it
     */
    record Code(String code, List<String> words) implements Block {
        public Code {
            Objects.requireNonNull(code, "code");
            words = List.copyOf(words);
        }
    }
}
