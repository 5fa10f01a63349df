package org.flexwright.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.Strip;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Picture;
import org.flexwright.report.doc.Tone;
import org.flexwright.report.photo.CodeReader;
import org.junit.jupiter.api.Test;

/** A printed document keeps every word, inside its margins, with its font inside, and comes out the same each time. */
class PdfFileTest {
    private static final Instant AT = Instant.parse("2026-05-02T12:00:00Z");

    private static byte[] pdf(Blocks blocks) {
        return PdfFile.write(new Document("Recipe R1 v1", "recipe R1 v1, frozen", "maker", AT, false, blocks.all()));
    }

    private static PDDocument open(byte[] pdf) throws IOException {
        return Loader.loadPDF(pdf);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = open(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }

    /** Fails when a letter stands outside the margins of its page. */
    private static void inside(byte[] pdf) throws IOException {
        List<String> outside = new ArrayList<>();
        try (PDDocument document = open(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    positions.forEach(p -> {
                        boolean foot = p.getYDirAdj() > p.getPageHeight() - 40;
                        boolean low = !foot && p.getYDirAdj() > p.getPageHeight() - Look.BOTTOM + 1;
                        if (p.getXDirAdj() < Look.LEFT - 1 || p.getXDirAdj() + p.getWidthDirAdj() > p.getPageWidth() - Look.RIGHT + 1 || p.getYDirAdj() < Look.TOP || low) {
                            outside.add(text + " at " + p.getXDirAdj() + ", " + p.getYDirAdj());
                        }
                    });
                }
            }.getText(document);
        }
        assertEquals(List.of(), outside);
    }

    private static List<PDFont> fonts(byte[] pdf) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        try (PDDocument document = open(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    fonts.add(font);
                }
            }
        }
        return fonts;
    }

    @Test
    void theSignsOfTheTradeAreInTheFontThatIsInside() throws IOException {
        String signs = "23 \u00b0C, 12 \u00b5m, \u2265 0.60, \u2264 0.3 s, 4 \u2013 6, 3 \u00d7 12 ml, 42 \u00b1 3, \u25cf in \u25b2 above \u25bc below, cm\u00b2 cm\u00b3, \u2212 2 K, \u2026";
        byte[] pdf = pdf(new Blocks().heading(2, signs).say(signs, Tone.STOP));
        assertEquals(2, text(pdf).split(java.util.regex.Pattern.quote("\u2265 0.60"), -1).length - 1);
        assertTrue(squeezed(text(pdf)).contains(squeezed(signs)), text(pdf));
        assertFalse(fonts(pdf).isEmpty());
        assertFalse(text(pdf).contains("letters lack"));
    }

    @Test
    void lookAlikesStandForSignsThatAreMissing() throws IOException {
        assertTrue(text(pdf(new Blocks().say("base \u2300 28.0 mm, \u2715 failed part, \u2713 done"))).contains("base \u00d8 28.0 mm, \u00d7 failed part, \u221a done"));
    }

    @Test
    void emojiAndOtherWritingDoNotStopItAndAreNamed() throws IOException {
        String note = "mold \ud83d\ude00 \u05e9\u05dc\u05d5\u05dd 42 \u0645\u0631\u062d\u0628\u0627 \u4f60\u597d \ud83c\udff4\u200d\u2620\ufe0f \ud800 end";
        byte[] pdf = pdf(new Blocks().say(note).table(List.of("a"), List.of(List.of(note))));
        String text = text(pdf);
        assertTrue(text.contains("mold \u25a1"), text);
        assertTrue(text.contains("U+1F600 grinning face"), text);
        assertTrue(text.contains("letters lack"), text);
        assertTrue(text.contains("42"), text);
        fonts(pdf);
        inside(pdf);
    }

    @Test
    void aTableGoesOnOverPagesUnderItsHeading() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 250; i++) {
            rows.add(List.of("P" + i, "word".repeat(1 + i % 60), "0." + i));
        }
        byte[] pdf = pdf(new Blocks().heading(1, "Long").heading(2, "Table").table(List.of("Piece-heading", "What-heading", "#Value-heading"), rows));
        inside(pdf);
        try (PDDocument document = open(pdf)) {
            int pages = document.getNumberOfPages();
            assertTrue(pages > 5, String.valueOf(pages));
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                String text = squeezed(one.getText(document));
                assertTrue(text.contains("Piece-heading") && text.contains("Value-heading"), "page " + page);
                assertTrue(text.contains("page" + page + "of" + pages), "page " + page);
            }
        }
        String all = squeezed(text(pdf));
        for (List<String> row : rows) {
            assertTrue(all.contains(row.get(0)) && all.contains(row.get(2)), row.toString());
        }
    }

    @Test
    void bookmarksTitleAndDatesAreThose() throws IOException {
        byte[] pdf = pdf(new Blocks().heading(1, "Title").heading(2, "Need").say("x").heading(3, "In short").heading(2, "Procedure").add(new Block.NumberedStep(1, "Weigh",
                "at 0:00", List.of())));
        try (PDDocument document = open(pdf)) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
                item.children().forEach(child -> titles.add("- " + child.getTitle()));
            }
            assertEquals(List.of("Need", "- In short", "Procedure", "- 1. Weigh"), titles);
            assertEquals("Recipe R1 v1", document.getDocumentInformation().getTitle());
            assertEquals(AT, document.getDocumentInformation().getCreationDate().toInstant());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
        }
    }

    private static Block block(Random random, int depth, List<String> words) {
        return switch (depth == 0 ? random.nextInt(7) : 1 + random.nextInt(depth > 1 ? 3 : 6)) {
            case 0 -> new Block.Heading(2 + random.nextInt(2), words(random, 8, words));
            case 1 -> new Block.Paragraph(words(random, 200, words), Tone.values()[random.nextInt(Tone.values().length)]);
            case 2 -> new Block.Items(List.of(Block.Cell.of(words(random, 40, words)), Block.Cell.of(words(random, 3, words), Tone.STOP)));
            case 3 -> table(random, words);
            case 4 -> {
                List<Block> inner = new ArrayList<>();
                for (int i = random.nextInt(4); i >= 0; i--) {
                    inner.add(block(random, depth + 1, words));
                }
                yield new Block.NumberedStep(1 + random.nextInt(30), words(random, 20, words), "at 0:00", inner);
            }
            case 5 -> Drawings.plot(new PlotModel("read aloud only", Axis.over("Force", "N", 0, 1), Axis.over("Wall", "mm", 1, 2), List.of(), List.of(), List.of()));
            default -> new Block.Code("K7QM4-T-T08-X", List.of("part P1"));
        };
    }

    private static Block table(Random random, List<String> words) {
        int columns = 1 + random.nextInt(8);
        List<List<Block.Cell>> rows = new ArrayList<>();
        for (int r = random.nextInt(12); r >= 0; r--) {
            List<Block.Cell> row = new ArrayList<>();
            for (int c = 0; c < columns; c++) {
                boolean strip = random.nextInt(9) == 0 && columns < 4;
                row.add(new Block.Cell(words(random, random.nextInt(20) == 0 ? 400 : 5, words), Tone.values()[random.nextInt(6)], strip ? Drawings.strip(new Strip(
                        new Strip.Scale(0, 1), 0.2, 0.8, 0.1, 0.3, false, false, 0.2, List.of(), 0.5), "strip") : null));
            }
            rows.add(row);
        }
        List<Block.Column> heads = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            heads.add(Block.Column.text(words(random, 2, words)));
        }
        return new Block.Table(heads, rows);
    }

    private static String words(Random random, int most, List<String> all) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(most + 1); i >= 0; i--) {
            StringBuilder word = new StringBuilder("w" + all.size());
            while (random.nextInt(4) > 0 && word.length() < 90) {
                word.append((char) ('a' + random.nextInt(26)));
            }
            all.add(word.append('z').toString());
            text.append(word).append(' ');
        }
        return text.toString().strip();
    }

    /** Random documents: no word is lost, none stands outside, no heading is the last thing on a page, and twice the same is the same. */
    @Test
    void noWordIsLostAndNoHeadingIsLeftAlone() throws IOException {
        for (int seed = 0; seed < 4; seed++) {
            Random random = new Random(seed);
            List<String> words = new ArrayList<>();
            Blocks blocks = new Blocks();
            for (int i = 0; i < 12; i++) {
                blocks.add(block(random, 0, words));
            }
            blocks.say("the end");
            byte[] pdf = pdf(blocks);
            assertArrayEquals(pdf, pdf(blocks), "seed " + seed);
            inside(pdf);
            String all = squeezed(text(pdf));
            // a long word in a narrow cell may be cut where the row goes on on the next page; its beginning is there, and every letter
            List<String> lost = words.stream().filter(w -> !all.contains(w) && !all.contains(w.substring(0, Math.min(5, w.length())))).toList();
            assertEquals(List.of(), lost, "seed " + seed);
            assertTrue(words.stream().filter(w -> !all.contains(w)).count() * 50 < words.size(), "seed " + seed);
            assertTrue(all.length() >= words.stream().mapToInt(String::length).sum(), "seed " + seed);
            Type type = new Type();
            List<Slab> slabs = new Layout(type).slabs(blocks.all(), 500);
            Pages pages = Pages.of(slabs, 700);
            for (int page = 0; page + 1 < pages.inks().size(); page++) {
                double lowest = lowest(pages.inks().get(page));
                int at = page;
                assertTrue(pages.marks().stream().noneMatch(m -> m.page() == at && m.level() <= 2 && m.y() > lowest - 22), "a heading alone at the foot, seed " + seed);
            }
        }
    }

    private static double lowest(List<Ink> inks) {
        return inks.stream().mapToDouble(ink -> switch (ink) {
            case Ink.Words w -> w.y();
            case Ink.Box b -> b.y() + b.height();
            case Ink.Path p -> p.spots().stream().mapToDouble(Drawing.Spot::y).max().orElse(0);
            case Ink.Line l -> Math.max(l.y1(), l.y2());
            case Ink.Disc d -> d.y() + d.r();
            case Ink.Diamond d -> d.y() + d.r();
            case Ink.Photo p -> p.y() + p.height();
        }).max().orElse(0);
    }

    @Test
    void aPrintedCodeIsReadFromThePage() throws IOException {
        Blocks blocks = new Blocks();
        for (int i = 0; i < 7; i++) {
            blocks.add(new Block.Code("K7QM4-P-T08/P" + i + "-X", List.of("part P" + i + " of T08", "a rather long title of what was tried there, to fill the label", "2026-04-19")));
        }
        byte[] pdf = pdf(blocks);
        inside(pdf);
        try (PDDocument document = open(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 200);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(page, "png", png);
            List<String> read = CodeReader.texts(png.toByteArray());
            assertEquals(7, read.size(), read.toString());
            for (int i = 0; i < 7; i++) {
                assertTrue(read.contains("K7QM4-P-T08/P" + i + "-X"), read.toString());
            }
        }
    }

    @Test
    void photosStandInTheirPlaceAndOnceInTheFile() throws IOException {
        BufferedImage image = new BufferedImage(600, 2000, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image, "png", png);
        Picture picture = new Picture(png.toByteArray(), true, 600, 2000);
        byte[] pdf = pdf(new Blocks().add(new Block.Figure("one", picture)).add(new Block.Figure("two", picture)).add(new Block.Figure("none. Not shown: it is gone.", null)));
        inside(pdf);
        assertTrue(text(pdf).contains("Not shown: it is gone."));
        try (PDDocument document = open(pdf)) {
            long images = java.util.stream.StreamSupport.stream(document.getPage(0).getResources().getXObjectNames().spliterator(), false).count();
            assertEquals(1, images);
        }
    }
}
