package org.flexwright.report.doc;

import java.util.Map;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code (ISO/IEC 18004), drawn in lines of squares with the quiet zone of four modules that the standard asks for. */
public final class QrDrawing {
    private static final int QUIET = 4;
    /** Neighbours overlap by a hair, so that no white line shows between them. */
    private static final double OVERLAP = 1.03;

    private QrDrawing() {
    }

    /** The code as a square drawing of that side in CSS pixels. Throws IllegalArgumentException when the text does not fit a QR code. */
    public static Drawing of(String text, double side) {
        ByteMatrix modules;
        try {
            modules = Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8")).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("This text does not fit a QR code: " + text.length() + " signs.", e);
        }
        double module = side / (modules.getWidth() + 2 * QUIET);
        Drawing.Pen pen = new Drawing.Pen();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                int end = x;
                while (end < modules.getWidth() && modules.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    pen.rectangle((x + QUIET) * module, (y + QUIET) * module, (end - x) * module * OVERLAP, module * OVERLAP, Drawing.Style.INK);
                    x = end;
                }
            }
        }
        return pen.done(side, side, text);
    }
}
