package org.flexwright.report.photo;

import java.awt.image.BufferedImage;

import com.google.zxing.LuminanceSource;

/** How light each point of a picture is, for the reader of QR codes. */
final class Light extends LuminanceSource {
    private final byte[] points;

    Light(BufferedImage image) {
        super(image.getWidth(), image.getHeight());
        points = new byte[getWidth() * getHeight()];
        int[] row = new int[getWidth()];
        for (int y = 0; y < getHeight(); y++) {
            image.getRGB(0, y, getWidth(), 1, row, 0, getWidth());
            for (int x = 0; x < getWidth(); x++) {
                points[y * getWidth() + x] = (byte) light(row[x]);
            }
        }
    }

    /** Weights of red, green and blue as in television (ITU-R BT.601, from memory, unconfirmed); what can be seen through counts as white. */
    private static int light(int argb) {
        int alpha = argb >>> 24;
        int grey = (299 * (argb >> 16 & 0xFF) + 587 * (argb >> 8 & 0xFF) + 114 * (argb & 0xFF)) / 1000;
        return (grey * alpha + 255 * (255 - alpha)) / 255;
    }

    @Override
    public byte[] getRow(int y, byte[] row) {
        byte[] to = row == null || row.length < getWidth() ? new byte[getWidth()] : row;
        System.arraycopy(points, y * getWidth(), to, 0, getWidth());
        return to;
    }

    @Override
    public byte[] getMatrix() {
        return points.clone();
    }
}
