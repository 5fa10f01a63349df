package org.flexwright.core.trial;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Looks whether bytes are a whole PNG or JPEG picture, by walking through their parts. The Java runtime may come without its picture
 * readers, and the parts say enough: format, size in pixels, and that nothing is cut off.
 */
final class PhotoCheck {
    private static final byte[] PNG = { (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n' };
    private static final int IHDR = 0x49484452;
    private static final int IEND = 0x49454E44;
    /** Length, name and checksum around the data of a PNG part. */
    private static final int PNG_FRAME = 12;
    private static final int PNG_HEADER = 13;
    private static final int MOST_PIXELS = 100_000;

    private PhotoCheck() {
    }

    static boolean isPhoto(byte[] bytes) {
        return isPng(bytes) || isJpeg(bytes);
    }

    private static boolean isPng(byte[] bytes) {
        if (bytes.length < PNG.length || !Arrays.equals(bytes, 0, PNG.length, PNG, 0, PNG.length)) {
            return false;
        }
        ByteBuffer b = ByteBuffer.wrap(bytes);
        b.position(PNG.length);
        boolean first = true;
        while (b.remaining() >= PNG_FRAME) {
            int length = b.getInt();
            if (length < 0 || length > b.remaining() - 8) {
                return false;
            }
            CRC32 crc = new CRC32();
            crc.update(bytes, b.position(), length + 4);
            int name = b.getInt();
            if (first && !(name == IHDR && length == PNG_HEADER && size(b.getInt(b.position())) && size(b.getInt(b.position() + 4)))) {
                return false;
            }
            first = false;
            b.position(b.position() + length);
            if (b.getInt() != (int) crc.getValue()) {
                return false;
            }
            if (name == IEND) {
                return true;
            }
        }
        return false;
    }

    private static boolean isJpeg(byte[] b) {
        if (b.length < 4 || at(b, 0) != 0xFF || at(b, 1) != 0xD8) {
            return false;
        }
        boolean frame = false;
        int i = 2;
        while (i + 4 <= b.length && at(b, i) == 0xFF) {
            int marker = at(b, i + 1);
            if (marker == 0xFF) {
                i++;
                continue;
            }
            int length = at(b, i + 2) << 8 | at(b, i + 3);
            if (length < 2 || i + 2 + length > b.length) {
                return false;
            }
            if (isFrame(marker)) {
                frame = length >= 8 && size(at(b, i + 5) << 8 | at(b, i + 6)) && size(at(b, i + 7) << 8 | at(b, i + 8));
            }
            i += 2 + length;
            if (marker == 0xDA) {
                return frame && endsAfter(b, i);
            }
        }
        return false;
    }

    /** Start of frame, the part that holds the size; three markers in between mean something else. */
    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private static boolean endsAfter(byte[] b, int from) {
        for (int i = from; i + 1 < b.length; i++) {
            if (at(b, i) == 0xFF && at(b, i + 1) == 0xD9) {
                return true;
            }
        }
        return false;
    }

    private static boolean size(int pixels) {
        return pixels > 0 && pixels <= MOST_PIXELS;
    }

    private static int at(byte[] b, int i) {
        return b[i] & 0xFF;
    }
}
