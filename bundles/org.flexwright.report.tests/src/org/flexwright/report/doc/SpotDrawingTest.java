package org.flexwright.report.doc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Set;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.SpotPlace;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.report.doc.Drawing.Style;
import org.flexwright.report.pdf.PdfFile;
import org.junit.jupiter.api.Test;

class SpotDrawingTest {
    private static final PropertyDef SHORE = new PropertyDef("t.shore", "Hardness", QuantityKind.SHORE_A, false, Set.of(), "", Source.commonPractice());

    private static SpotView.Dot dot(String spot, double across, double value, int step) {
        SpotPlace place = ModelFactory.eINSTANCE.createSpotPlace();
        place.setSpot(spot);
        place.setAcross(across);
        place.setDown(0.5);
        return new SpotView.Dot(place, step < 0 ? "–" : String.valueOf((int) value), spot + ": " + value, value, step);
    }

    private static SpotView view() {
        return new SpotView("Hardness · T07 <P1>", SHORE, List.of(dot("crown", 0.5, 45, 0), dot("rim & flange", 1, 58, 4), dot("gate", 0, Double.NaN, -1)), 42, 58, List.of());
    }

    @Test
    void everyValueAndNameIsWrittenAndTheFileIsWhole() throws Exception {
        String svg = Svg.file(SpotDrawing.of(view(), SpotSketch.all().getFirst(), null));
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new org.xml.sax.InputSource(new java.io.StringReader(svg)));
        for (String words : List.of(">45<", ">58<", ">–<", ">crown<", ">rim &amp; flange<", "T07 &lt;P1&gt;", "shade1", "shade5", "unread")) {
            assertTrue(svg.contains(words), words);
        }
        assertFalse(svg.contains("http://") && svg.replace("http://www.w3.org/2000/svg", "").contains("http"), "nothing is loaded from elsewhere");
    }

    /** What is printed in grey still tells the steps apart: each is darker than the one before. */
    @Test
    void theStepsGetDarkerInGrey() {
        double before = 1;
        for (Style style : List.of(Style.SHADE_1, Style.SHADE_2, Style.SHADE_3, Style.SHADE_4, Style.SHADE_5)) {
            int rgb = Integer.parseInt(style.fill().substring(1), 16);
            double grey = (0.299 * (rgb >> 16) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255)) / 255;
            assertTrue(grey < before - 0.05, style + " is not darker");
            before = grey;
        }
    }

    @Test
    void aPhotoLiesUnderTheSpotsOnPaperToo() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 20, BufferedImage.TYPE_INT_RGB), "png", png);
        Drawing drawing = SpotDrawing.of(view(), SpotSketch.all().getFirst(), new Picture(png.toByteArray(), true, 40, 20));
        assertTrue(Svg.file(drawing).contains("data:image/png;base64,"));
        Blocks blocks = new Blocks();
        blocks.add(drawing);
        byte[] pdf = PdfFile.write(new Document("Map", "map", "maker", Instant.EPOCH, false, blocks.all()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("45") && text.contains("58") && text.contains("crown"), text);
            int pictures = 0;
            for (var name : document.getPage(0).getResources().getXObjectNames()) {
                pictures += document.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
            }
            assertEquals(1, pictures);
        }
    }
}
