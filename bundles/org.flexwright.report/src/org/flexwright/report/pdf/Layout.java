package org.flexwright.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.QrDrawing;
import org.flexwright.report.doc.Tone;

/** Blocks as slabs, from top to bottom. */
final class Layout {
    private static final double CODE_HEIGHT = 76;
    private static final double CODE_SIDE = 70;
    private static final double GAP = 10;
    /** Photos stand two in a row, and no higher than that. */
    private static final double PHOTO_HIGH = 190;
    /** A step up to that height stands on one page. */
    private static final double WHOLE = 420;
    private final Type type;
    private final Tables tables;

    Layout(Type type) {
        this.type = type;
        this.tables = new Tables(type);
    }

    List<Slab> slabs(List<Block> blocks, double room) {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            int from = i;
            while (i + 1 < blocks.size() && beside(blocks.get(from), blocks.get(i + 1))) {
                i++;
            }
            slabs.addAll(block(blocks.subList(from, i + 1), room));
        }
        return slabs;
    }

    /** Labels and photos that follow each other stand side by side. */
    private static boolean beside(Block first, Block next) {
        return first instanceof Block.Code && next instanceof Block.Code || first instanceof Block.Figure && next instanceof Block.Figure;
    }

    private List<Slab> block(List<Block> same, double room) {
        return switch (same.get(0)) {
            case Block.Heading h -> heading(h, room);
            case Block.Paragraph p -> paragraph(p, room);
            case Block.Items i -> items(i, room);
            case Block.NumberedStep s -> step(s, room);
            case Block.Table t -> tables.slabs(t, room);
            case Block.Figure f -> figures(same.stream().map(Block.Figure.class::cast).toList(), room);
            case Block.Code c -> labels(same.stream().map(Block.Code.class::cast).toList(), room);
            case Drawing d -> List.of(Slab.of(d.height() * Math.min(Look.PIXEL, room / d.width()), Drawn.inks(d, 0, 0, room, type)), Slab.space(8));
        };
    }

    private List<Slab> heading(Block.Heading heading, double room) {
        double size = Look.heading(heading.level());
        List<Slab> slabs = new ArrayList<>();
        if (heading.level() > 1) {
            slabs.add(Slab.space(heading.level() == 2 ? 14 : 7).kept());
        }
        List<String> lines = type.lines(heading.text(), room / 1.03, size);
        double height = lines.size() * size * 1.2 + 4;
        List<Ink> inks = new ArrayList<>(words(lines, 0, size, size, 1.2, true, Look.INK));
        if (heading.level() == 2) {
            inks.add(new Ink.Line(0, height, room, height, Look.LINE, 0.8, 0));
        }
        slabs.add(Slab.of(height, inks).kept().marked(String.join(" ", lines), heading.level()));
        slabs.add(Slab.space(heading.level() == 2 ? 6 : 2).kept());
        return slabs;
    }

    private static List<Ink> words(List<String> lines, double x, double first, double size, double leading, boolean bold, int colour) {
        List<Ink> inks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            inks.add(new Ink.Words(x, first + i * size * leading, lines.get(i), size, bold, colour));
        }
        return inks;
    }

    private List<Slab> paragraph(Block.Paragraph paragraph, double room) {
        boolean bold = Look.bold(paragraph.tone());
        int colour = Look.colour(paragraph.tone());
        if (paragraph.tone() == Tone.BANNER) {
            List<String> lines = type.lines(paragraph.text(), (room - 16) / 1.03, Look.TEXT);
            double height = lines.size() * Look.TEXT * Look.LEADING + 10;
            List<Ink> inks = new ArrayList<>(words(lines, 8, 5 + Look.TEXT, Look.TEXT, Look.LEADING, true, colour));
            inks.add(new Ink.Box(0, 0, room, height, Look.NONE, Look.CAUTION, 1.2));
            return List.of(Slab.of(height, inks), Slab.space(7));
        }
        return flowing(type.lines(paragraph.text(), Math.min(room, 470) / (bold ? 1.03 : 1), Look.TEXT), 0, bold, colour, 5);
    }

    /** One slab a line; the first two and the last two stay together. */
    private static List<Slab> flowing(List<String> lines, double x, boolean bold, int colour, double after) {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Slab slab = Slab.of(Look.TEXT * Look.LEADING, words(List.of(lines.get(i)), x, Look.TEXT, Look.TEXT, Look.LEADING, bold, colour));
            slabs.add(lines.size() > 1 && (i == 0 || i == lines.size() - 2) ? slab.kept() : slab);
        }
        slabs.add(Slab.space(after));
        return slabs;
    }

    private List<Slab> items(Block.Items items, double room) {
        List<Slab> slabs = new ArrayList<>();
        for (Block.Cell item : items.items()) {
            boolean bold = Look.bold(item.tone());
            List<String> lines = type.lines(item.text(), (Math.min(room, 470) - 12) / (bold ? 1.03 : 1), Look.TEXT);
            List<Slab> one = new ArrayList<>(flowing(lines, 12, bold, Look.colour(item.tone()), 2));
            List<Ink> first = new ArrayList<>(List.of(new Ink.Disc(4, Look.TEXT * 0.68, 1.5, Look.colour(item.tone()), Look.NONE, 0)));
            first.addAll(one.get(0).inks());
            one.set(0, new Slab(one.get(0).height(), first, one.get(0).withNext(), null, null, 0));
            slabs.addAll(one);
        }
        slabs.add(Slab.space(4));
        return slabs;
    }

    private List<Slab> step(Block.NumberedStep step, double room) {
        double size = 11.5;
        double clockWidth = type.width(type.showable(step.clock()), size) * 1.03;
        List<String> lines = type.lines(step.title(), (room - Look.INDENT - clockWidth - 12) / 1.03, size);
        double height = Math.max(18, lines.size() * size * 1.2 + 4);
        List<Ink> inks = new ArrayList<>();
        String number = Integer.toString(step.number());
        inks.add(new Ink.Disc(8, 8.5, 8, Look.ACCENT, Look.NONE, 0));
        inks.add(new Ink.Words(8 - type.width(number, 9.5) / 2, 12, number, 9.5, true, 0xFFFFFF));
        inks.addAll(words(lines, Look.INDENT, 12.5, size, 1.2, true, Look.INK));
        if (!step.clock().isEmpty()) {
            inks.add(new Ink.Words(room - clockWidth, 12.5, type.showable(step.clock()), size, true, Look.ACCENT));
        }
        List<Slab> slabs = new ArrayList<>();
        slabs.add(Slab.space(6).kept());
        slabs.add(Slab.of(height, inks).kept().marked(number + ". " + String.join(" ", lines), 3));
        slabs(step.content(), room - Look.INDENT).forEach(s -> slabs.add(s.indented(Look.INDENT)));
        if (slabs.stream().mapToDouble(Slab::height).sum() <= WHOLE) {
            for (int i = 0; i + 1 < slabs.size(); i++) {
                slabs.set(i, slabs.get(i).kept());
            }
        }
        slabs.add(Slab.space(5));
        return slabs;
    }

    private List<Slab> figures(List<Block.Figure> figures, double room) {
        int across = room > 600 ? 3 : 2;
        double width = (room - (across - 1) * GAP) / across;
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < figures.size(); i += across) {
            List<Ink> inks = new ArrayList<>();
            double height = 0;
            for (int j = i; j < Math.min(i + across, figures.size()); j++) {
                double x = (j - i) * (width + GAP);
                height = Math.max(height, figure(figures.get(j), x, width, inks));
            }
            slabs.add(Slab.of(height, inks));
            slabs.add(Slab.space(8));
        }
        return slabs;
    }

    private double figure(Block.Figure figure, double x, double width, List<Ink> inks) {
        double y = 0;
        if (figure.picture() != null) {
            double scale = Math.min(width / figure.picture().width(), PHOTO_HIGH / figure.picture().height());
            y = figure.picture().height() * scale;
            inks.add(new Ink.Photo(x, 0, figure.picture().width() * scale, y, figure.picture()));
            y += 2;
        }
        List<String> lines = type.lines(figure.caption(), width, Look.TABLE);
        List<String> some = lines.size() > 30 ? lines.subList(0, 30) : lines;
        inks.addAll(words(some, x, y + Look.TABLE + 1, Look.TABLE, Look.LEADING, false, Look.QUIET));
        return y + some.size() * Look.TABLE * Look.LEADING + 3;
    }

    private List<Slab> labels(List<Block.Code> labels, double room) {
        int across = labels.size() == 1 ? 1 : room > 600 ? 4 : 3;
        double width = (room - (across - 1) * 4) / Math.max(across, 2);
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < labels.size(); i += across) {
            List<Ink> inks = new ArrayList<>();
            for (int j = i; j < Math.min(i + across, labels.size()); j++) {
                label(labels.get(j), (j - i) * (width + 4), width, inks);
            }
            slabs.add(Slab.of(CODE_HEIGHT + 4, inks));
        }
        slabs.add(Slab.space(6));
        return slabs;
    }

    private void label(Block.Code label, double x, double width, List<Ink> inks) {
        inks.add(new Ink.Box(x, 0, width, CODE_HEIGHT, Look.NONE, Look.LINE, 0.6));
        inks.addAll(Drawn.inks(QrDrawing.of(label.code(), CODE_SIDE / Look.PIXEL), x + 2, (CODE_HEIGHT - CODE_SIDE) / 2, CODE_SIDE, type));
        double inside = width - CODE_SIDE - 8;
        double y = 13;
        for (int i = 0; i <= label.words().size(); i++) {
            boolean code = i == label.words().size();
            double size = i == 0 ? 10 : 7.5;
            for (String line : type.lines(code ? label.code() : label.words().get(i), inside / (i == 0 ? 1.03 : 1), size)) {
                if (y < CODE_HEIGHT - 2) {
                    inks.add(new Ink.Words(x + CODE_SIDE + 4, y, line, size, i == 0, code ? Look.QUIET : Look.INK));
                }
                y += size * 1.2;
            }
        }
    }

    /** What the font could not show, in words; empty when it showed all. */
    static String lacking(Type type) {
        if (type.lacking().isEmpty()) {
            return "";
        }
        List<String> names = type.lacking().stream().limit(12).map(c -> String.format(Locale.ROOT, "U+%04X", c) + (Character.getName(c) == null ? "" : " " + Character.getName(c)
                .toLowerCase(Locale.ROOT))).toList();
        int more = type.lacking().size() - names.size();
        return "A box (\u25a1) stands for a sign that the printed letters lack: " + String.join("; ", names) + (more > 0 ? "; and " + more + " more" : "")
                + ". The HTML file has them as they were written.";
    }
}
