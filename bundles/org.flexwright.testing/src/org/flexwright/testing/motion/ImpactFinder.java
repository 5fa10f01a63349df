package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.Watch;

/**
 * Impacts in a sound. Rumble is taken off, the background is what three quarters of the second before and after are louder than, and an
 * impact stands out of it and of the sound just before. The moment is where the sound changes its strength: the least of Akaike's
 * criterion for one variance before and another one after.
 */
public final class ImpactFinder {
    /** Where the way comes from. */
    public static final Source SOURCE = Source.fromMemory("onset by Akaike's criterion, N. Maeda 1985, Zisin 38, 365");
    /** How many times the background an impact is at least, when nothing else was said; our own choice, tried on made sounds. */
    public static final double THRESHOLD = 4;
    /** s within which a second sound belongs to the same impact, when nothing else was said; our own choice. */
    public static final double QUIET = 0.030;
    /** More sounds than this are no bounces; the loudest stay. */
    public static final int MOST = 2000;

    /** Hz below which a room rumbles. */
    private static final double RUMBLE = 250;
    private static final double WINDOW = 0.0005;
    /** Fewer samples than this would stand out by chance. */
    private static final int LEAST_WINDOW = 4;
    private static final double BLOCK = 0.010;
    private static final double SECTION = 0.25;
    private static final double AROUND = 1.0;
    private static final double QUANTILE = 0.25;
    /** Quieter than this share of the loudest moment is background even where nothing sounds. */
    private static final double FLOOR = 3e-4;
    /** An impact is so many times as loud as what rings on from before. */
    private static final double RISE = 2;
    /** Windows in which it gets there. */
    private static final int RISING = 3;
    /** s in which the energy of what rings on falls to 1/e. */
    private static final double RINGING = 0.005;
    private static final double BEFORE = 0.010;
    private static final double AFTER = 0.006;
    private static final double SETTLING = 0.030;
    /** s after its beginning in which an impact is still rising and no second one. */
    private static final double STILL_THE_SAME = 0.004;
    private static final int LEAST_SIDE = 3;
    /** Half width, s: the sound's way to the microphone changes by 0.1 m or less, at 343 m/s. */
    private static final double PATH = 0.1 / 343;

    /**
     * A sound that stands out.
     *
     * @param time        where it begins, s
     * @param uncertainty standard uncertainty of that, s
     * @param above       its strength, in times of the background
     * @param again       s until it was heard a second time, when that belongs to it; 0 when it was not
     */
    public record Impact(double time, double uncertainty, double above, double again) {
    }

    /**
     * What was found.
     *
     * @param impacts by time
     * @param more    how many further ones were left away because there are too many
     */
    public record Found(List<Impact> impacts, int more) {
        public Found {
            impacts = List.copyOf(impacts);
        }
    }

    private final double[] sound;
    private final double rate;
    private final double threshold;
    private final double quiet;
    private final double pole;
    private final int window;
    private final float[] energy;
    private final float[] background;

    private ImpactFinder(double[] sound, double rate, double threshold, double quiet, Watch watch) {
        this.sound = sound;
        this.rate = rate;
        this.threshold = threshold;
        this.quiet = quiet;
        this.pole = 1 / (1 + 2 * Math.PI * RUMBLE / rate);
        this.window = (int) Math.max(LEAST_WINDOW, Math.round(rate * WINDOW));
        this.energy = energies(watch);
        this.background = backgrounds();
    }

    /**
     * Looks for impacts.
     *
     * @param sound     full scale being 1
     * @param rate      samples a second
     * @param threshold how many times the background an impact is at least, from 1
     * @param quiet     s within which a second sound belongs to the same impact
     * @throws java.util.concurrent.CancellationException when the watch was cancelled
     */
    public static Found find(double[] sound, double rate, double threshold, double quiet, Watch watch) {
        return new ImpactFinder(sound, rate, threshold, quiet, watch).find(watch);
    }

    private Found find(Watch watch) {
        List<Impact> found = new ArrayList<>();
        double step = window / rate;
        float fading = (float) Math.exp(-step / RINGING);
        float[] rings = new float[RISING];
        double last = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < energy.length; j++) {
            if (energy[j] > threshold * threshold * background[j] && energy[j] > RISE * RISE * rings[j % RISING]) {
                double at = j * step;
                if (at - last >= quiet) {
                    watch.check();
                    Impact impact = impact(j, last);
                    if (impact.time() - last >= quiet) {
                        found.add(impact);
                        last = impact.time();
                    }
                } else if (at - last >= STILL_THE_SAME && found.get(found.size() - 1).again() == 0) {
                    Impact twice = found.remove(found.size() - 1);
                    double again = at - twice.time();
                    found.add(new Impact(twice.time(), Math.hypot(twice.uncertainty(), again / Math.sqrt(12)), twice.above(), again));
                }
            }
            rings[j % RISING] = Math.max(energy[j], fading * (j == 0 ? 0 : rings[(j - 1) % RISING]));
        }
        if (found.size() <= MOST) {
            return new Found(found, 0);
        }
        List<Impact> loudest = found.stream().sorted(Comparator.comparingDouble(Impact::above).reversed()).limit(MOST).sorted(Comparator.comparingDouble(Impact::time)).toList();
        return new Found(loudest, found.size() - MOST);
    }

    /** Mean square of each window, rumble taken off. */
    private float[] energies(Watch watch) {
        float[] mean = new float[sound.length / window];
        double a = pole;
        double before = sound.length == 0 ? 0 : sound[0];
        double once = 0;
        double twice = 0;
        double thrice = 0;
        int i = 0;
        for (int j = 0; j < mean.length; j++) {
            if ((j & 0xFFFF) == 0) {
                watch.check();
            }
            double sum = 0;
            for (int k = 0; k < window; k++) {
                double now = sound[i++];
                double first = a * (once + now - before);
                double second = a * (twice + first - once);
                thrice = a * (thrice + second - twice);
                twice = second;
                once = first;
                before = now;
                sum += thrice * thrice;
            }
            mean[j] = (float) (sum / window);
        }
        return mean;
    }

    /** The background at each window. */
    private float[] backgrounds() {
        int block = (int) Math.max(1, Math.round(BLOCK * rate / window));
        int blocks = (energy.length + block - 1) / block;
        double[] mean = new double[blocks];
        double loudest = 0;
        for (int b = 0; b < blocks; b++) {
            int end = Math.min(energy.length, (b + 1) * block);
            for (int j = b * block; j < end; j++) {
                mean[b] += energy[j];
                loudest = Math.max(loudest, energy[j]);
            }
            mean[b] /= end - b * block;
        }
        double floor = Math.max(FLOOR * FLOOR * loudest, Float.MIN_NORMAL);
        int around = (int) Math.round(AROUND / BLOCK);
        int section = (int) Math.round(SECTION / BLOCK);
        float[] all = new float[energy.length];
        for (int s = 0; s < blocks; s += section) {
            double[] near = Arrays.copyOfRange(mean, Math.max(0, s - around), Math.min(blocks, s + section + around));
            Arrays.sort(near);
            float level = (float) Math.max(floor, near[(int) (QUANTILE * (near.length - 1))]);
            Arrays.fill(all, s * block, Math.min(energy.length, (s + section) * block), level);
        }
        return all;
    }

    /** The impact that stands out at window {@code j}. */
    private Impact impact(int j, double last) {
        int loud = j;
        int end = Math.min(energy.length, j + 1 + (int) Math.round(AFTER * rate / window));
        for (int k = j; k < end; k++) {
            loud = energy[k] > energy[loud] ? k : loud;
        }
        int from = (int) Math.max(0, Math.max(Math.round(j * (double) window - BEFORE * rate), Math.ceil((last + STILL_THE_SAME) * rate)));
        int to = Math.min(sound.length, (loud + 1) * window);
        int onset = onset(from, to, background[j]);
        double rise = Math.max(0, (loud + 0.5) * window - onset) / rate;
        double u = Math.sqrt(rise * rise / 12 + PATH * PATH / 3 + 1 / (12 * rate * rate));
        return new Impact(onset / rate, u, Math.sqrt(energy[loud] / background[j]), 0);
    }

    /** The first sample of what is another sound than before. */
    private int onset(int from, int to, double level) {
        int n = to - from;
        if (n <= 2 * LEAST_SIDE) {
            return from;
        }
        double[] sum = squares(from, to);
        double tiny = level * 1e-2;
        int best = from;
        double least = Double.POSITIVE_INFINITY;
        for (int k = LEAST_SIDE; k <= n - LEAST_SIDE; k++) {
            double before = sum[k] / k + tiny;
            double after = (sum[n] - sum[k]) / (n - k) + tiny;
            double criterion = k * Math.log(before) + (n - k - 1) * Math.log(after);
            if (criterion < least) {
                least = criterion;
                best = from + k;
            }
        }
        return best;
    }

    /** Running sums of the squares, rumble taken off; the filter begins a little earlier. */
    private double[] squares(int from, int to) {
        int start = Math.max(0, from - (int) Math.round(SETTLING * rate));
        double[] sum = new double[to - from + 1];
        double before = sound[start];
        double once = 0;
        double twice = 0;
        double thrice = 0;
        for (int i = start; i < to; i++) {
            double first = pole * (once + sound[i] - before);
            double second = pole * (twice + first - once);
            thrice = pole * (thrice + second - twice);
            twice = second;
            once = first;
            before = sound[i];
            if (i >= from) {
                sum[i - from + 1] = sum[i - from] + thrice * thrice;
            }
        }
        return sum;
    }
}
