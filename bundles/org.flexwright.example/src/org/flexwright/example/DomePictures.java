package org.flexwright.example;

/** Drawn sections of the dome, to one scale, with a scale bar of 10 mm. */
final class DomePictures {
    private static final int SCALE = 16;
    private static final int WIDTH = 560;
    private static final int HEIGHT = 260;
    private static final int PAPER = 0xF4F5F6;
    private static final int INK = 0x1B2126;
    private static final int BASE = 0xC9CED3;
    private static final double RADIUS = 14;
    private static final double RISE = 6;

    private DomePictures() {
    }

    /** The dome as made, its wall in mm; {@code inverted}: resting inside out; {@code bubbles}: with fine bubbles; {@code split}: layers apart. */
    static byte[] section(double wall, int rubber, boolean inverted, boolean bubbles, boolean split) {
        Picture picture = new Picture(WIDTH, HEIGHT, PAPER);
        int ground = 190;
        picture.rectangle(30, ground + 4, WIDTH - 60, 10, BASE);
        for (double x = -RADIUS; x <= RADIUS; x += 0.02) {
            double y = RISE * Math.cos(Math.PI * x / (2 * RADIUS));
            double shown = inverted ? -y * 0.35 + RISE * 0.4 * Math.abs(x) / RADIUS : y;
            picture.dot(WIDTH / 2.0 + x * SCALE, ground - wall * SCALE / 2 - shown * SCALE, wall * SCALE / 2, rubber);
        }
        picture.line(WIDTH / 2.0 - (RADIUS + 2) * SCALE, ground - 6, WIDTH / 2.0 - RADIUS * SCALE, ground - 6, 12, rubber);
        picture.line(WIDTH / 2.0 + RADIUS * SCALE, ground - 6, WIDTH / 2.0 + (RADIUS + 2) * SCALE, ground - 6, 12, rubber);
        if (bubbles) {
            for (int i = 0; i < 60; i++) {
                double x = -RADIUS + 2 * RADIUS * ((i * 37) % 60) / 60.0;
                double y = RISE * Math.cos(Math.PI * x / (2 * RADIUS));
                picture.dot(WIDTH / 2.0 + x * SCALE, ground - wall * SCALE / 2 - y * SCALE + (i * 7) % 11 - 5, 1.5, PAPER);
            }
        }
        if (split) {
            for (int i = 0; i < 5; i++) {
                picture.line(60 + i * 9, ground - 25 - i * 18, WIDTH - 70 - i * 12, ground - 22 - i * 18, 2, PAPER);
            }
        }
        picture.line(40, HEIGHT - 25, 40 + 10 * SCALE, HEIGHT - 25, 3, INK);
        picture.line(40, HEIGHT - 31, 40, HEIGHT - 19, 2, INK);
        picture.line(40 + 10 * SCALE, HEIGHT - 31, 40 + 10 * SCALE, HEIGHT - 19, 2, INK);
        return picture.png();
    }
}
