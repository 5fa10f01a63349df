package org.flexwright.example;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;

import org.flexwright.core.recording.SoundWriter;

/** Files as instruments would write them, made by code and invented: presses of a dome, a ball that bounces. */
final class MadeRecordings {
    private static final double STEP = 0.05;
    private static final double SPEED = 0.5;
    private static final double CONTACT = 0.60;
    private static final double GAUGE = 0.005;
    private static final double NOISE = 0.0015;
    /** What the dome keeps back when it is let out again. */
    private static final double LOSS = 0.12;
    private static final double BEYOND = 1.2;
    private static final double G = 9.80665;
    private static final int RATE = 8000;

    private MadeRecordings() {
    }

    /**
     * A dome pressed in slowly and let out, as a table with semicolons: time, travel, force. The force rises from contact to the peak, falls to
     * its least and rises again; peak and least stand where the force scale of the example has them for its wall.
     *
     * @param seed of the last digits
     */
    static byte[] press(double peak, double peakAt, double least, double leastAt, long seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("# force gauge 10 N, invented, made by code\r\nTime (s);Travel (mm);Force (N)\r\n");
        int in = (int) Math.round((CONTACT + leastAt + BEYOND) / STEP);
        for (int i = 0; i <= 2 * in; i++) {
            double travel = STEP * (i <= in ? i : 2 * in - i);
            double force = shape(travel - CONTACT, peak, peakAt, least, leastAt) * (i <= in ? 1 : 1 - LOSS) + NOISE * random.nextGaussian();
            text.append(String.format(Locale.ROOT, "%.2f;%.2f;%.3f\r\n", i * STEP / SPEED, travel, Math.rint(force / GAUGE) * GAUGE));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static double shape(double travel, double peak, double peakAt, double least, double leastAt) {
        if (travel <= 0) {
            return 0;
        }
        if (travel <= peakAt) {
            double s = travel / peakAt;
            return peak * s * (2 - s);
        }
        if (travel <= leastAt) {
            double s = (travel - peakAt) / (leastAt - peakAt);
            return peak + (least - peak) * s * s * (3 - 2 * s);
        }
        double on = travel - leastAt;
        return least + 0.5 * on * on;
    }

    /** A ball dropped on a button: impacts by free fall with the same share of speed each time, a quiet room behind them; WAV, 16 bit, 8 kHz. */
    static byte[] bounces(double height, double restitution, int impacts, long seed) {
        Random random = new Random(seed);
        double at = 0.5;
        double speed = Math.sqrt(2 * G * height);
        double[] sound = new double[(int) (RATE * 2.2)];
        for (int i = 0; i < sound.length; i++) {
            sound[i] = 0.002 * random.nextGaussian() + 0.001 * Math.sin(2 * Math.PI * 50 * i / RATE);
        }
        for (int n = 0; n < impacts; n++) {
            blow(sound, at, 0.25 * speed);
            speed *= restitution;
            at += 2 * speed / G;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            SoundWriter.write(out, SoundWriter.Sample.WHOLE_16, RATE, sound);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void blow(double[] sound, double at, double strength) {
        for (int i = (int) Math.ceil(at * RATE); i < sound.length && i < at * RATE + RATE / 5; i++) {
            double t = i / (double) RATE - at;
            sound[i] += strength * (0.6 * Math.exp(-t / 0.003) * Math.sin(2 * Math.PI * 1400 * t) + 0.4 * Math.exp(-t / 0.014) * Math.sin(2 * Math.PI * 220 * t));
        }
    }
}
