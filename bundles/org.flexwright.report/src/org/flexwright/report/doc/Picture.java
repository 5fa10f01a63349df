package org.flexwright.report.doc;

import java.util.Objects;

/**
 * A picture made of points, as it will be embedded.
 *
 * @param bytes  a whole PNG or JPEG file
 * @param png    true for PNG
 * @param width  in points
 * @param height in points
 */
public record Picture(byte[] bytes, boolean png, int width, int height) {
    public Picture {
        Objects.requireNonNull(bytes, "bytes");
    }

    /** Its media type. */
    public String type() {
        return png ? "image/png" : "image/jpeg";
    }
}
