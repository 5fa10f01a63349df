package org.flexwright.testing.motion;

import java.util.Random;

/** Sounds made by code: thumps at known moments, hum, hiss, rumble and clicks of a room. */
final class MadeSound {
    final double rate;
    final double[] samples;
    private final Random random;

    MadeSound(double rate, double seconds, long seed) {
        this.rate = rate;
        this.samples = new double[(int) Math.round(rate * seconds)];
        this.random = new Random(seed);
    }

    /** A blow on a hard plate: a click of 1.4 kHz over a dull thump of 220 Hz. */
    MadeSound blow(double time, double strength) {
        return ring(time, strength * 0.6, 1400, 0.003).ring(time, strength * 0.4, 220, 0.014);
    }

    /** A sound that begins at once and fades. */
    MadeSound ring(double time, double strength, double hertz, double fading) {
        for (int i = (int) Math.ceil(time * rate); i < samples.length && i / rate - time < 10 * fading; i++) {
            double t = i / rate - time;
            samples[i] += strength * Math.exp(-t / fading) * Math.sin(2 * Math.PI * hertz * t);
        }
        return this;
    }

    /** A sound that swells before it fades. */
    MadeSound swell(double time, double strength, double hertz, double rising, double fading) {
        return ring(time, strength, hertz, fading).ring(time, -strength, hertz, fading * rising / (fading + rising));
    }

    /** Hiss, hum of the mains and slow rumble, each with its own strength. */
    MadeSound room(double hiss, double hum, double rumble) {
        double slow = 0;
        for (int i = 0; i < samples.length; i++) {
            slow += (random.nextGaussian() - slow) * 2 * Math.PI * 30 / rate;
            double t = i / rate;
            samples[i] += hiss * random.nextGaussian() + hum * (Math.sin(2 * Math.PI * 50 * t) + 0.4 * Math.sin(2 * Math.PI * 150 * t + 1)) + rumble * 10 * slow;
        }
        return this;
    }

    /** Times of the impacts of a drop. */
    static double[] times(double first, double height, double restitution, int impacts) {
        double[] t = new double[impacts];
        t[0] = first;
        for (int i = 1; i < impacts; i++) {
            t[i] = t[i - 1] + BouncingBall.flightTime(height, restitution, i - 1);
        }
        return t;
    }
}
