package org.flexwright.report.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Which way the camera was held, from the part of a JPEG file that says so (Exif, tag 0x0112). */
final class Exif {
    private static final int ORIENTATION = 0x0112;

    private Exif() {
    }

    /** 1 to 8; 1 (upright) when nothing says otherwise. */
    static int orientation(byte[] b) {
        for (int i = 2; i + 4 <= b.length && (b[i] & 0xFF) == 0xFF;) {
            int marker = b[i + 1] & 0xFF;
            int length = (b[i + 2] & 0xFF) << 8 | b[i + 3] & 0xFF;
            if (marker == 0xDA || length < 2 || i + 2 + length > b.length) {
                return 1;
            }
            if (marker == 0xE1 && length > 16 && new String(b, i + 4, 4, StandardCharsets.ISO_8859_1).equals("Exif")) {
                return in(ByteBuffer.wrap(b, i + 10, length - 8).slice());
            }
            i += 2 + length;
        }
        return 1;
    }

    private static int in(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int at = tiff.getInt(4);
        if (at < 8 || at > tiff.limit() - 2) {
            return 1;
        }
        int entries = tiff.getShort(at) & 0xFFFF;
        for (int n = 0; n < entries && at + 14 + 12 * n <= tiff.limit(); n++) {
            int entry = at + 2 + 12 * n;
            if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION) {
                int value = tiff.getShort(entry + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : 1;
            }
        }
        return 1;
    }
}
