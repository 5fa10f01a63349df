package org.flexwright.testing.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.flexwright.core.Watch;
import org.flexwright.testing.motion.ImpactFinder.Impact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ImpactFinderTest {
    private static final double MILLISECOND = 0.001;

    @ParameterizedTest
    @ValueSource(doubles = {8000, 11025, 44100, 48000, 192000})
    void aStillRoom(double rate) {
        double[] times = MadeSound.times(0.2113, 0.4, 0.7, 6);
        MadeSound sound = new MadeSound(rate, 2.2, 1);
        for (int i = 0; i < times.length; i++) {
            sound.blow(times[i], 0.8 * Math.pow(0.7, i));
        }
        List<Impact> found = find(sound).impacts();
        assertEquals(times.length, found.size());
        for (int i = 0; i < times.length; i++) {
            assertEquals(times[i], found.get(i).time(), MILLISECOND, "impact " + i);
        }
    }

    /** Hiss, hum as loud as the blows, rumble, double hits and clicks: each impact is found within a millisecond and the drop among them. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aNoisyRoom(long seed) {
        Random random = new Random(seed);
        double height = 0.3 + 0.5 * random.nextDouble();
        double e = 0.62 + 0.18 * random.nextDouble();
        double[] times = MadeSound.times(0.4 + random.nextDouble(), height, e, 5);
        MadeSound sound = new MadeSound(44_100, 4.5, seed).room(0.004, 0.1, 0.05);
        for (int i = 0; i < times.length; i++) {
            sound.blow(times[i], 0.8 * Math.pow(e, i));
        }
        sound.blow(times[1] + 0.012, 0.8 * e); // it lands on an edge first
        sound.blow(times[0] - 0.23, 0.1).blow(times[4] + 0.9, 0.3); // letting go, and something on the bench
        ImpactFinder.Found found = find(sound);
        List<BounceSeries> drops = BounceSeries.among(found.impacts(), ImpactFinder.QUIET);
        assertEquals(1, drops.size(), found.toString());
        List<Impact> impacts = drops.get(0).impacts();
        for (int i = 0; i < times.length; i++) {
            assertEquals(times[i], impacts.get(i).time(), MILLISECOND, "impact " + i);
            assertTrue(Math.abs(times[i] - impacts.get(i).time()) < 3 * impacts.get(i).uncertainty());
        }
        assertEquals(times.length, impacts.size());
        assertEquals(0.012, impacts.get(1).again(), 2 * MILLISECOND);
        assertEquals(0, impacts.get(0).again());
    }

    /** A soft part hardly clicks: a dull thump, one that swells over milliseconds, and one with echoes of the room. */
    @ParameterizedTest
    @ValueSource(strings = {"dull", "swelling", "echoing"})
    void aSoftPart(String how) {
        for (long seed = 1; seed <= 5; seed++) {
            double[] times = MadeSound.times(0.5 + 0.0137 * seed, 0.3, 0.66, 4);
            MadeSound sound = new MadeSound(44_100, 2.6, seed).room(0.002, 0.02, 0.02);
            for (int i = 0; i < times.length; i++) {
                double strength = 0.6 * Math.pow(0.66, i);
                switch (how) {
                    case "dull" -> sound.ring(times[i], strength, 120, 0.02);
                    case "swelling" -> sound.swell(times[i], strength, 300, 0.002, 0.02);
                    default -> sound.ring(times[i], strength, 700, 0.006).ring(times[i] + 0.009, 0.3 * strength, 500, 0.01).ring(times[i] + 0.017, 0.25 * strength, 600, 0.02);
                }
            }
            List<Impact> found = find(sound).impacts();
            assertEquals(times.length, found.size(), found.toString());
            for (int i = 0; i < times.length; i++) {
                assertEquals(times[i], found.get(i).time(), MILLISECOND, "impact " + i);
                assertTrue(Math.abs(times[i] - found.get(i).time()) < 2 * found.get(i).uncertainty());
            }
        }
    }

    @Test
    void threeDropsInOneRecording() {
        MadeSound sound = new MadeSound(48_000, 9, 5).room(0.002, 0.01, 0.02);
        for (double begin : new double[] {0.7, 3.4, 6.1}) {
            double[] times = MadeSound.times(begin, 0.3, 0.6, 4);
            for (int i = 0; i < times.length; i++) {
                sound.blow(times[i], 0.5 * Math.pow(0.6, i));
            }
        }
        List<BounceSeries> drops = BounceSeries.among(find(sound).impacts(), ImpactFinder.QUIET);
        assertEquals(3, drops.size());
        assertEquals(3.4, drops.get(1).impacts().get(0).time(), MILLISECOND);
        drops.forEach(d -> assertEquals(0.6, d.flights()[1] / d.flights()[0], 0.005));
    }

    @Test
    void noiseAloneHoldsNoImpact() {
        for (long seed = 1; seed <= 5; seed++) {
            assertEquals(List.of(), find(new MadeSound(48_000, 5, seed).room(0.01, 0.05, 0.1)).impacts());
        }
        assertEquals(List.of(), find(new MadeSound(2_000, 60, 3).room(0.01, 0.0, 0.0)).impacts());
        assertEquals(List.of(), find(new MadeSound(8_000, 1, 1)).impacts());
        assertEquals(List.of(), ImpactFinder.find(new double[0], 8000, 5, 0.03, Watch.NONE).impacts());
    }

    @Test
    void manySoundsAreCutToTheLoudest() {
        MadeSound sound = new MadeSound(4_000, 220, 5);
        for (int i = 0; i < 2_100; i++) {
            sound.blow(0.1 + i * 0.1, i < 100 ? 0.2 : 0.5);
        }
        ImpactFinder.Found found = find(sound);
        assertEquals(ImpactFinder.MOST, found.impacts().size());
        assertEquals(100, found.more());
    }

    @Test
    void itCanBeEnded() {
        assertThrows(CancellationException.class, () -> ImpactFinder.find(new double[100_000], 8000, 5, 0.03, new Watch() {
            @Override
            public void done(long part, long whole) {
                // nobody looks
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        }));
    }

    private static ImpactFinder.Found find(MadeSound sound) {
        return ImpactFinder.find(sound.samples, sound.rate, ImpactFinder.THRESHOLD, ImpactFinder.QUIET, Watch.NONE);
    }
}
