package org.flexwright.report.pdf;

import java.awt.Color;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Picture;

/** Puts ink on the pages of a PDF. */
final class Press {
    /** Where four Bezier curves come closest to a circle (plain geometry: 4/3 (sqrt 2 - 1)). */
    private static final double ROUND = 4.0 / 3 * (Math.sqrt(2) - 1);
    /** Bold letters are the plain ones with a line around them, this wide for their size. */
    private static final double BOLD = 0.032;
    private final PDDocument pdf;
    private final PDType0Font font;
    private final Map<Picture, PDImageXObject> pictures = new IdentityHashMap<>();
    private PDPageContentStream out;
    private double top;

    Press(PDDocument pdf, PDType0Font font) {
        this.pdf = pdf;
        this.font = font;
    }

    void print(PDPage page, double height, List<Ink> inks) throws IOException {
        top = height;
        try (PDPageContentStream stream = new PDPageContentStream(pdf, page)) {
            out = stream;
            for (Ink ink : inks) {
                put(ink);
            }
        }
    }

    private void put(Ink ink) throws IOException {
        switch (ink) {
            case Ink.Words w -> words(w);
            case Ink.Box b -> {
                out.addRect(f(b.x()), f(top - b.y() - b.height()), f(b.width()), f(b.height()));
                paint(b.fill(), b.line(), b.thick());
            }
            case Ink.Line l -> {
                out.setLineDashPattern(l.dash() > 0 ? new float[] { f(l.dash()), f(l.dash() * 0.7) } : new float[0], 0);
                out.moveTo(f(l.x1()), f(top - l.y1()));
                out.lineTo(f(l.x2()), f(top - l.y2()));
                paint(Look.NONE, l.colour(), l.thick());
                out.setLineDashPattern(new float[0], 0);
            }
            case Ink.Path p -> path(p);
            case Ink.Disc d -> disc(d);
            case Ink.Diamond d -> {
                float y = f(top - d.y());
                out.moveTo(f(d.x() - d.r()), y);
                out.lineTo(f(d.x()), y + f(d.r()));
                out.lineTo(f(d.x() + d.r()), y);
                out.lineTo(f(d.x()), y - f(d.r()));
                out.closePath();
                paint(d.fill(), Look.NONE, 0);
            }
            case Ink.Photo p -> photo(p);
        }
    }

    private void path(Ink.Path path) throws IOException {
        if (path.spots().size() < 2) {
            return;
        }
        float[] dashes = new float[path.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = path.dashes().get(i);
        }
        out.setLineDashPattern(dashes, 0);
        out.moveTo(f(path.spots().get(0).x()), f(top - path.spots().get(0).y()));
        for (Drawing.Spot spot : path.spots()) {
            out.lineTo(f(spot.x()), f(top - spot.y()));
        }
        paint(Look.NONE, path.colour(), path.thick());
        out.setLineDashPattern(new float[0], 0);
    }

    private void words(Ink.Words words) throws IOException {
        if (words.text().isBlank()) {
            return;
        }
        Color colour = new Color(words.colour());
        out.beginText();
        out.setFont(font, f(words.size()));
        out.setNonStrokingColor(colour);
        if (words.bold()) {
            out.setRenderingMode(RenderingMode.FILL_STROKE);
            out.setStrokingColor(colour);
            out.setLineWidth(f(words.size() * BOLD));
        } else {
            out.setRenderingMode(RenderingMode.FILL);
        }
        out.newLineAtOffset(f(words.x()), f(top - words.y()));
        out.showText(words.text());
        out.endText();
    }

    private void disc(Ink.Disc d) throws IOException {
        float x = f(d.x());
        float y = f(top - d.y());
        float r = f(d.r());
        float k = f(d.r() * ROUND);
        out.moveTo(x + r, y);
        out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
        out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
        out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
        out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
        out.closePath();
        paint(d.fill(), d.line(), d.thick());
    }

    private void photo(Ink.Photo photo) throws IOException {
        PDImageXObject image = pictures.get(photo.picture());
        if (image == null) {
            image = PDImageXObject.createFromByteArray(pdf, photo.picture().bytes(), "photo");
            pictures.put(photo.picture(), image);
        }
        out.drawImage(image, f(photo.x()), f(top - photo.y() - photo.height()), f(photo.width()), f(photo.height()));
    }

    private void paint(int fill, int line, double thick) throws IOException {
        if (fill >= 0) {
            out.setNonStrokingColor(new Color(fill));
        }
        if (line >= 0) {
            out.setStrokingColor(new Color(line));
            out.setLineWidth(f(thick));
        }
        if (fill >= 0 && line >= 0) {
            out.fillAndStroke();
        } else if (fill >= 0) {
            out.fill();
        } else {
            out.stroke();
        }
    }

    private static float f(double value) {
        return (float) value;
    }
}
