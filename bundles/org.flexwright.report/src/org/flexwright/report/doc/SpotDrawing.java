package org.flexwright.report.doc;

import java.util.List;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.report.doc.Drawing.Anchor;
import org.flexwright.report.doc.Drawing.Style;

/** Draws a property over the spots of a part. */
public final class SpotDrawing {
    private static final double WIDTH = 420;
    private static final double TALLEST = 420;
    private static final double EDGE = 8;
    private static final double DOT = 17;
    private static final double LEGEND = 46;
    private static final double SWATCH = 64;
    /** Letters about this wide, in CSS pixels, for names beside dots. */
    private static final double LETTER = 6;
    /** From this step on words are light. */
    private static final int DARK = 3;
    private static final List<Style> SHADES = List.of(Style.SHADE_1, Style.SHADE_2, Style.SHADE_3, Style.SHADE_4, Style.SHADE_5);

    private SpotDrawing() {
    }

    /**
     * The drawing with its legend.
     *
     * @param sketch  the outline, for when there is no picture
     * @param picture the photo under the spots, or null
     */
    public static Drawing of(SpotView view, SpotSketch sketch, Picture picture) {
        double aspect = picture == null ? sketch.aspect() : (double) picture.width() / picture.height();
        double width = Math.min(WIDTH, TALLEST * aspect);
        double height = width / aspect;
        double x = EDGE + (WIDTH - width) / 2;
        Drawing.Pen pen = new Drawing.Pen();
        if (picture == null) {
            sketch.lines().forEach(line -> pen.path(line.stream().map(at -> new Drawing.Spot(x + at[0] * width, EDGE + at[1] * height)).toList(), Style.AXIS));
        } else {
            pen.image(x, EDGE, width, height, picture);
        }
        view.dots().forEach(dot -> name(pen, dot, x + share(dot.place().getAcross()) * width, EDGE + share(dot.place().getDown()) * height));
        view.dots().forEach(dot -> dot(pen, dot, x + share(dot.place().getAcross()) * width, EDGE + share(dot.place().getDown()) * height));
        legend(pen, view, EDGE + height + DOT);
        return pen.done(WIDTH + 2 * EDGE, EDGE + height + DOT + LEGEND, view.title() + ". " + String.join("; ", view.dots().stream().map(SpotView.Dot::words).toList()) + ".");
    }

    private static double share(Double value) {
        return value == null ? 0.5 : value;
    }

    /** The name stands on paper of its own, under all dots, so that none hides a value. */
    private static void name(Drawing.Pen pen, SpotView.Dot dot, double x, double y) {
        String name = dot.place().getSpot() == null ? "" : dot.place().getSpot();
        double middle = Math.clamp(x, EDGE + name.length() * LETTER / 2, Math.max(EDGE + name.length() * LETTER / 2, WIDTH + EDGE - name.length() * LETTER / 2));
        pen.rectangle(middle - name.length() * LETTER / 2 - 2, y + DOT + 2, name.length() * LETTER + 4, 14, Style.PAPER);
        pen.text(middle, y + DOT + 13, name, Anchor.MIDDLE, Style.LABEL);
    }

    private static void dot(Drawing.Pen pen, SpotView.Dot dot, double x, double y) {
        pen.circle(x, y, DOT, dot.read() ? SHADES.get(dot.step()) : Style.UNREAD);
        pen.text(x, y + 4.5, dot.figure(), Anchor.MIDDLE, dot.step() >= DARK ? Style.VALUE_LIGHT : Style.VALUE);
    }

    private static void legend(Drawing.Pen pen, SpotView view, double top) {
        if (Double.isNaN(view.low())) {
            return;
        }
        double left = EDGE + (WIDTH - SpotView.STEPS * SWATCH) / 2;
        for (int step = 0; step < SpotView.STEPS; step++) {
            pen.rectangle(left + step * SWATCH, top + 8, SWATCH, 12, SHADES.get(step));
        }
        for (int step = 0; step <= SpotView.STEPS; step++) {
            pen.text(left + step * SWATCH, top + 34, FieldText.rounded(view.from(step), (view.high() - view.low()) / SpotView.STEPS), Anchor.MIDDLE, Style.LABEL);
        }
        pen.text(left + SpotView.STEPS * SWATCH + 10, top + 18, view.property().kind().unit().display(), Anchor.START, Style.LABEL);
    }
}
