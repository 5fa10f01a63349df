package org.flexwright.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;

import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.Tone;

/**
 * A document as PDF on A4: font inside, bookmarks, page numbers, tables that go on over pages. The same document gives the same bytes: no
 * moment of printing and nothing random gets in.
 */
public final class PdfFile {
    private final Document document;
    private final Type type = new Type();
    private final double width;
    private final double height;

    private PdfFile(Document document) {
        this.document = document;
        this.width = document.wide() ? Look.LONG : Look.SHORT;
        this.height = document.wide() ? Look.SHORT : Look.LONG;
    }

    /** The file's bytes. */
    public static byte[] write(Document document) {
        try {
            return new PdfFile(document).bytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] bytes() throws IOException {
        double room = width - Look.LEFT - Look.RIGHT;
        Layout layout = new Layout(type);
        List<Slab> slabs = new ArrayList<>(layout.slabs(document.blocks(), room));
        String lacking = Layout.lacking(type);
        if (!lacking.isEmpty()) {
            slabs.addAll(layout.slabs(List.of(new Block.Paragraph(lacking, Tone.QUIET)), room));
        }
        Pages pages = Pages.of(slabs, height - Look.TOP - Look.BOTTOM);
        try (PDDocument pdf = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            pdf.setDocumentId(document.at().toEpochMilli());
            about(pdf);
            PDType0Font font = PDType0Font.load(pdf, Type.open(), true);
            Press press = new Press(pdf, font);
            List<PDPage> printed = new ArrayList<>();
            for (int i = 0; i < pages.inks().size(); i++) {
                PDPage page = new PDPage(new PDRectangle((float) width, (float) height));
                pdf.addPage(page);
                printed.add(page);
                press.print(page, height, inks(pages, i));
            }
            bookmarks(pdf, pages, printed);
            pdf.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }

    private List<Ink> inks(Pages pages, int page) {
        List<Ink> inks = new ArrayList<>();
        pages.inks().get(page).forEach(ink -> inks.add(ink.moved(Look.LEFT, Look.TOP)));
        double y = height - 28;
        String number = "page " + (page + 1) + " of " + pages.inks().size();
        double right = width - Look.RIGHT;
        double numberWidth = type.width(number, Look.FOOT);
        String foot = type.lines(document.foot(), right - Look.LEFT - numberWidth - 20, Look.FOOT).get(0);
        inks.add(new Ink.Line(Look.LEFT, y - 11, right, y - 11, Look.LINE, 0.6, 0));
        inks.add(new Ink.Words(Look.LEFT, y, foot, Look.FOOT, false, Look.QUIET));
        inks.add(new Ink.Words(right - numberWidth, y, number, Look.FOOT, false, Look.QUIET));
        return inks;
    }

    private void about(PDDocument pdf) {
        PDDocumentInformation about = pdf.getDocumentInformation();
        GregorianCalendar at = GregorianCalendar.from(ZonedDateTime.ofInstant(document.at(), ZoneOffset.UTC));
        about.setTitle(document.title());
        about.setSubject(document.foot());
        about.setAuthor(document.author());
        about.setCreator("Flexwright");
        about.setCreationDate(at);
        about.setModificationDate(at);
        pdf.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        pdf.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private void bookmarks(PDDocument pdf, Pages pages, List<PDPage> printed) {
        PDDocumentOutline outline = new PDDocumentOutline();
        PDOutlineItem chapter = null;
        for (Pages.Mark mark : pages.marks()) {
            if (mark.level() == 1) {
                continue;
            }
            PDPageXYZDestination to = new PDPageXYZDestination();
            to.setPage(printed.get(mark.page()));
            to.setTop((int) (height - Look.TOP - mark.y() + 4));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(mark.words());
            item.setDestination(to);
            PDOutlineNode above = mark.level() == 2 || chapter == null ? outline : chapter;
            above.addLast(item);
            chapter = mark.level() == 2 ? item : chapter;
        }
        if (outline.hasChildren()) {
            pdf.getDocumentCatalog().setDocumentOutline(outline);
            pdf.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
        }
    }
}
