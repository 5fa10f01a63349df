package org.flexwright.example;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/** A small drawn picture, written as PNG (W3C PNG specification, 2003): invented photos that can be told from real ones at a glance. */
final class Picture {
    private final int width;
    private final int height;
    private final int[] pixels;

    Picture(int width, int height, int ground) {
        this.width = width;
        this.height = height;
        pixels = new int[width * height];
        Arrays.fill(pixels, ground);
    }

    void dot(double x, double y, double radius, int colour) {
        for (int py = (int) Math.max(0, y - radius); py <= Math.min(height - 1, y + radius); py++) {
            for (int px = (int) Math.max(0, x - radius); px <= Math.min(width - 1, x + radius); px++) {
                if (Math.hypot(px - x, py - y) <= radius) {
                    pixels[py * width + px] = colour;
                }
            }
        }
    }

    void line(double x1, double y1, double x2, double y2, double thickness, int colour) {
        int steps = (int) (2 * Math.hypot(x2 - x1, y2 - y1)) + 1;
        for (int i = 0; i <= steps; i++) {
            double t = (double) i / steps;
            dot(x1 + t * (x2 - x1), y1 + t * (y2 - y1), thickness / 2, colour);
        }
    }

    void rectangle(int x, int y, int w, int h, int colour) {
        for (int py = Math.max(0, y); py < Math.min(height, y + h); py++) {
            Arrays.fill(pixels, py * width + Math.max(0, x), py * width + Math.min(width, x + w), colour);
        }
    }

    byte[] png() {
        try {
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            try (DeflaterOutputStream deflated = new DeflaterOutputStream(raw)) {
                for (int y = 0; y < height; y++) {
                    deflated.write(0);
                    for (int x = 0; x < width; x++) {
                        int p = pixels[y * width + x];
                        deflated.write(p >> 16);
                        deflated.write(p >> 8);
                        deflated.write(p);
                    }
                }
            }
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            DataOutputStream out = new DataOutputStream(file);
            out.write(new byte[] { (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n' });
            ByteArrayOutputStream header = new ByteArrayOutputStream();
            DataOutputStream head = new DataOutputStream(header);
            head.writeInt(width);
            head.writeInt(height);
            head.write(new byte[] { 8, 2, 0, 0, 0 });
            chunk(out, "IHDR", header.toByteArray());
            chunk(out, "IDAT", raw.toByteArray());
            chunk(out, "IEND", new byte[0]);
            return file.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) crc.getValue());
    }
}
