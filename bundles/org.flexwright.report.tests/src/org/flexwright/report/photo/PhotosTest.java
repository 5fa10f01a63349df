package org.flexwright.report.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

import org.flexwright.core.label.LabelCode;
import org.flexwright.core.trial.Attachments;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Entry;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.QrDrawing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos get in small and upright, or it is said why not; and a label in a photo leads to its trial. */
class PhotosTest {
    @TempDir
    Path folder;
    private final Project project = project("p1");
    private final Trial trial = trial(project, "T08");

    private static Project project(String id) {
        Project project = ModelFactory.eINSTANCE.createProject();
        project.setId(id);
        return project;
    }

    private static Trial trial(Project project, String code) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode(code);
        project.getTrials().add(trial);
        return trial;
    }

    private static byte[] jpeg(BufferedImage image, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        }
        writer.dispose();
        return bytes.toByteArray();
    }

    private Block.Figure figure(byte[] bytes) throws IOException {
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/a.jpg"), bytes);
        Attachment attachment = ModelFactory.eINSTANCE.createAttachment();
        attachment.setKind(AttachmentKind.PHOTO);
        attachment.setFileName("a.jpg");
        attachment.setCaption("rim, bar 10 mm");
        attachment.setPath("photos/a.jpg");
        attachment.setSha256(Attachments.sha256(bytes));
        return new Photos(folder).figure(attachment);
    }

    @Test
    void aPhotoOfThirtyMegabytesIsMadeSmaller() throws IOException {
        BufferedImage noise = new BufferedImage(4800, 3600, BufferedImage.TYPE_INT_RGB);
        int[] points = ((java.awt.image.DataBufferInt) noise.getRaster().getDataBuffer()).getData();
        Random random = new Random(3);
        for (int i = 0; i < points.length; i++) {
            points[i] = i < 100_000 ? random.nextInt() : points[i - 99_991] ^ points[i - 61_717];
        }
        byte[] large = jpeg(noise, 1f);
        assertTrue(large.length > 25_000_000, String.valueOf(large.length));
        Block.Figure figure = figure(large);
        assertEquals(1400, Math.max(figure.picture().width(), figure.picture().height()));
        assertEquals(1050, figure.picture().height());
        assertTrue(figure.picture().bytes().length < 2_500_000, String.valueOf(figure.picture().bytes().length));
    }

    @Test
    void aSmallPhotoStaysAsItIs() throws IOException {
        byte[] small = jpeg(new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB), 0.8f);
        Block.Figure figure = figure(small);
        assertTrue(Arrays.equals(small, figure.picture().bytes()));
        assertEquals("rim, bar 10 mm", figure.caption());
    }

    @Test
    void theCameraMayHaveBeenHeldAnyWay() throws IOException {
        BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 16, 16);
        g.dispose();
        // where the corner that the camera saw upper left comes to stand (Exif 2.3, orientation)
        int[][] corner = { { 0, 0 }, { 1, 0 }, { 1, 1 }, { 0, 1 }, { 0, 0 }, { 1, 0 }, { 1, 1 }, { 0, 1 } };
        for (int orientation = 1; orientation <= 8; orientation++) {
            Block.Figure figure = figure(withOrientation(jpeg(image, 0.95f), orientation));
            boolean swapped = orientation >= 5;
            assertEquals(swapped ? 32 : 64, figure.picture().width(), "orientation " + orientation);
            BufferedImage got = ImageIO.read(new java.io.ByteArrayInputStream(figure.picture().bytes()));
            int x = corner[orientation - 1][0] == 0 ? 5 : got.getWidth() - 6;
            int y = corner[orientation - 1][1] == 0 ? 5 : got.getHeight() - 6;
            assertTrue((got.getRGB(x, y) & 0xFF) > 200, "orientation " + orientation);
        }
    }

    @Test
    void aPlaceFarOutsideTheFileSaysNothing() throws IOException {
        byte[] jpeg = withOrientation(jpeg(new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB), 0.9f), 6);
        for (int place : new int[] { Integer.MAX_VALUE, Integer.MAX_VALUE - 1, -1, 25 }) {
            ByteBuffer.wrap(jpeg).putInt(16, place);
            assertEquals(64, figure(jpeg).picture().width(), "place " + place);
        }
    }

    private static byte[] withOrientation(byte[] jpeg, int orientation) {
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + 36);
        out.put(jpeg, 0, 2);
        out.putShort((short) 0xFFE1).putShort((short) 34).put("Exif\0\0".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        out.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8).putShort((short) 1);
        out.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0).putInt(0);
        out.put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    @Test
    void whatIsNoPictureIsNamedInItsPlace() throws IOException {
        byte[] whole = jpeg(new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB), 0.8f);
        for (byte[] broken : new byte[][] { { 1, 2, 3 }, {}, Arrays.copyOf(whole, 40), "\u0089PNG\r\n".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1) }) {
            Block.Figure figure = figure(broken);
            assertNull(figure.picture());
            assertTrue(figure.caption().startsWith("rim, bar 10 mm (file a.jpg") && figure.caption().contains("Not shown: "), figure.caption());
        }
    }

    /** A bench, with labels lying on it. */
    private Path photo(double turn, int side, Entry... things) throws IOException {
        BufferedImage image = new BufferedImage(2400, 1600, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setPaint(new java.awt.GradientPaint(0, 0, new Color(0x706050), 2400, 1600, new Color(0xC0B0A0)));
        g.fillRect(0, 0, 2400, 1600);
        for (int i = 0; i < things.length; i++) {
            g.setTransform(java.awt.geom.AffineTransform.getRotateInstance(turn, 600 + 900 * i, 800));
            g.translate(500 + 900 * i, 700);
            g.setColor(new Color(0xE8E4DC));
            g.fillRect(0, 0, side, side);
            g.setColor(new Color(0x202020));
            QrDrawing.of(LabelCode.of((Project) root(things[i]), things[i]).text(), side).marks().forEach(m -> {
                Drawing.Mark.Rectangle r = (Drawing.Mark.Rectangle) m;
                g.fill(new java.awt.geom.Rectangle2D.Double(r.x(), r.y(), r.width(), r.height()));
            });
        }
        g.dispose();
        return Files.write(folder.resolve("bench.jpg"), jpeg(image, 0.7f));
    }

    private static Object root(Entry thing) {
        org.eclipse.emf.ecore.EObject at = thing;
        while (at.eContainer() != null) {
            at = at.eContainer();
        }
        return at;
    }

    @Test
    void aLabelInAPhotoLeadsToItsTrial() throws IOException {
        Part part = ModelFactory.eINSTANCE.createPart();
        part.setCode("P1");
        trial.getParts().add(part);
        assertSame(trial, CodeReader.propose(photo(0.2, 200, trial), project).trial().orElseThrow());
        assertSame(trial, CodeReader.propose(photo(-1.1, 260, part), project).trial().orElseThrow());
        assertSame(trial, CodeReader.propose(photo(0, 300, part, trial), project).trial().orElseThrow(), "both labels are of one trial");
    }

    @Test
    void withoutOneLabelOfThisProjectThereIsAReason() throws IOException {
        assertTrue(CodeReader.propose(photo(0, 10), project).refusal().startsWith("No label was found in bench.jpg"));
        assertTrue(CodeReader.propose(photo(0, 300, trial, trial(project, "T09")), project).refusal().contains("labels of T08 and T09"));
        Project other = project("p2");
        String refusal = CodeReader.propose(photo(0, 300, trial(other, "T08")), project).refusal();
        assertTrue(refusal.contains("another project"), refusal);
        Path words = Files.writeString(folder.resolve("words.txt"), "no picture");
        assertNotNull(CodeReader.propose(words, project).refusal());
        assertTrue(CodeReader.texts(folder.resolve("gone.jpg")).isEmpty());
    }
}
