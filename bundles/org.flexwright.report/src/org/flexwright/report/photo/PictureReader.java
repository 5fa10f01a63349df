package org.flexwright.report.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

import org.flexwright.report.photo.Photos.NotShown;
import org.flexwright.report.doc.Picture;

/** Reads photos: as they are when small, else made smaller; upright, whichever way the camera was held. */
public final class PictureReader {
    /** Longest side in points: 300 to the inch over half a page. */
    private static final int LONGEST = 1400;
    private static final int LIGHT = 700_000;
    private static final float QUALITY = 0.86f;
    /** More points than any camera has are an attack on memory. */
    private static final long MOST = 400_000_000L;

    private PictureReader() {
    }

    /** The picture to embed. */
    static Picture read(byte[] bytes) throws NotShown {
        boolean png = bytes.length > 0 && bytes[0] == (byte) 0x89;
        int turn = png ? 1 : Exif.orientation(bytes);
        BufferedImage small = decoded(bytes, LONGEST);
        int[] size = size(bytes);
        if (turn == 1 && bytes.length <= LIGHT && Math.max(size[0], size[1]) <= LONGEST) {
            return new Picture(bytes, png, size[0], size[1]);
        }
        BufferedImage upright = turned(fitted(small), turn);
        return new Picture(jpeg(upright), false, upright.getWidth(), upright.getHeight());
    }

    private static int[] size(byte[] bytes) throws NotShown {
        return with(bytes, reader -> new int[] { reader.getWidth(0), reader.getHeight(0) });
    }

    /** The picture with every n-th point, so that its longer side is at least {@code enough} where it has so many. */
    public static BufferedImage decoded(byte[] bytes, int enough) throws NotShown {
        return with(bytes, reader -> {
            long points = (long) reader.getWidth(0) * reader.getHeight(0);
            if (points > MOST) {
                throw new IOException("too many points");
            }
            ImageReadParam every = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / enough);
            every.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, every);
        });
    }

    private interface Work<T> {
        T with(ImageReader reader) throws IOException;
    }

    private static <T> T with(byte[] bytes, Work<T> work) throws NotShown {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new NotShown("the file is no picture that can be read here.");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                return work.with(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            throw new NotShown("the picture in the file is damaged or of a kind that cannot be read here.");
        }
    }

    private static BufferedImage fitted(BufferedImage image) {
        double scale = Math.min(1, LONGEST / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = to.createGraphics();
        g.setColor(java.awt.Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, width, height, null);
        g.dispose();
        return to;
    }

    /** Turned as the camera says (Exif orientation 1 to 8). */
    private static BufferedImage turned(BufferedImage image, int orientation) {
        if (orientation == 1) {
            return image;
        }
        int w = image.getWidth();
        int h = image.getHeight();
        AffineTransform turn = switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        boolean swapped = orientation >= 5;
        BufferedImage to = new BufferedImage(swapped ? h : w, swapped ? w : h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = to.createGraphics();
        g.drawImage(image, turn, null);
        g.dispose();
        return to;
    }

    private static byte[] jpeg(BufferedImage image) throws NotShown {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new NotShown("the picture could not be made smaller.");
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
