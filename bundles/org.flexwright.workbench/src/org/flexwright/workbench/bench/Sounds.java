package org.flexwright.workbench.bench;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.BooleanSupplier;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

import org.eclipse.swt.widgets.Display;

/** Signals told apart by rhythm and pitch, so that they are heard over a fan and without looking. Never waits for a loudspeaker. */
final class Sounds implements AutoCloseable {

    /** What there is to say. */
    enum Signal {
        /** Something was kept: one short high tone. */
        KEPT(1320, 1, 60),
        /** A moment comes up: two tones. */
        SOON(880, 2, 140),
        /** It is time: three tones. */
        NOW(990, 3, 180),
        /** Time is over: four low, long tones. */
        OVER(392, 4, 320),
        /** Not taken: two low short tones. */
        REFUSED(294, 2, 110);

        private final int hertz;
        private final int times;
        private final int milliseconds;

        Signal(int hertz, int times, int milliseconds) {
            this.hertz = hertz;
            this.times = times;
            this.milliseconds = milliseconds;
        }

        /** Samples of 8 bits: tones with soft ends, pauses as long as half a tone. */
        byte[] samples() {
            int tone = RATE * milliseconds / 1000;
            int step = tone + tone / 2;
            byte[] samples = new byte[step * times];
            for (int n = 0; n < times; n++) {
                for (int i = 0; i < tone; i++) {
                    double soft = Math.min(1, Math.min(i, tone - i) / (RATE * 0.008));
                    samples[n * step + i] = (byte) Math.round(LOUDNESS * soft * Math.sin(2 * Math.PI * hertz * i / RATE));
                }
            }
            return samples;
        }
    }

    private static final int RATE = 22_050;
    private static final int LOUDNESS = 100;

    private final Display display;
    private final BooleanSupplier on;
    private final ExecutorService player = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "bench sounds");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean mute;

    /**
     * Signals for a display.
     *
     * @param on asked before each: false for none
     */
    Sounds(Display display, BooleanSupplier on) {
        this.display = display;
        this.on = on;
    }

    /** Plays a signal soon, or not at all when sound is off. */
    void play(Signal signal) {
        if (on.getAsBoolean()) {
            try {
                player.execute(() -> sound(signal));
            } catch (RejectedExecutionException e) {
                mute = true; // the view is being closed
            }
        }
    }

    private void sound(Signal signal) {
        if (mute || !line(signal)) {
            beep(signal.times);
        }
    }

    private boolean line(Signal signal) {
        AudioFormat format = new AudioFormat(RATE, 8, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            byte[] samples = signal.samples();
            line.open(format);
            line.start();
            line.write(samples, 0, samples.length);
            line.drain();
            return true;
        } catch (LineUnavailableException | IllegalArgumentException | LinkageError e) {
            mute = true; // no loudspeaker: the system's own bell is what is left
            return false;
        }
    }

    private void beep(int times) {
        for (int i = 0; i < times && !display.isDisposed(); i++) {
            display.asyncExec(display::beep);
            try {
                Thread.sleep(200);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    @Override
    public void close() {
        player.shutdownNow();
    }
}
