package org.flexwright.testing.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.model.Censoring;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.StretchLoading;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.Test;

class CurvesTest {
    private static final RecordingKind STRETCH = new StretchKind();
    private static final RecordingKind PRESS = new PressKind();

    private static RecordingData data(double[] x, ChannelRole role, String unit, double[] y, ChannelRole force, String forceUnit) {
        return new RecordingData(List.of(new RecordingData.Channel(role, "x", unit, x), new RecordingData.Channel(force, "y", forceUnit, y)), 0);
    }

    private static RecordingData travelAndForce(double[] x, double[] y) {
        return data(x, ChannelRole.TRAVEL, "mm", y, ChannelRole.FORCE, "N");
    }

    private static StretchDetails strip(double gauge, double width, double thickness) {
        StretchDetails d = TestingDataFactory.eINSTANCE.createStretchDetails();
        d.setGaugeLength(gauge);
        d.setWidth(width);
        d.setThickness(thickness);
        d.setLoading(StretchLoading.UNIAXIAL);
        return d;
    }

    private static Look look(RecordingKind kind, org.eclipse.emf.ecore.EObject details, RecordingData data) {
        return kind.look(recording(details), data, Watch.NONE);
    }

    private static Recording recording(org.eclipse.emf.ecore.EObject details) {
        Recording r = ModelFactory.eINSTANCE.createRecording();
        r.setDetails(details);
        return r;
    }

    private static RecordingResult result(Look look, String id) {
        return look.results().stream().filter(r -> r.id().equals(id)).findFirst().orElse(null);
    }

    private static double value(Look look, String id) {
        RecordingResult r = result(look, id);
        assertNotNull(r, id + " of " + look.results());
        return r.value();
    }

    private static double at(Look look, String mark) {
        return look.marks().stream().filter(m -> m.name().equals(mark)).findFirst().orElseThrow().position();
    }

    private static boolean remarks(Look look, String key) {
        return look.remarks().stream().anyMatch(r -> r.message().key().equals(key));
    }

    private static double[] steps(double from, double to, int n) {
        return IntStream.range(0, n).mapToDouble(i -> from + (to - from) * i / (n - 1)).toArray();
    }

    private static double[] map(double[] x, DoubleUnaryOperator f) {
        return Arrays.stream(x).map(f).toArray();
    }

    /** A neo-Hookean strip of 6 x 2 mm, 25 mm between marks, with 3 mm of slack and 0.4 N at rest: what comes out is what went in. */
    @Test
    void slackAndRestAreTakenOff() {
        double c10 = 0.2;
        DoubleUnaryOperator force = travel -> {
            double stretch = 1 + Math.max(0, travel - 3) / 25;
            return 12 * 2 * c10 * (stretch - 1 / (stretch * stretch)) + 0.4;
        };
        double[] x = steps(0, 3 + 25 * 4, 20_001);
        Random random = new Random(9);
        double[] y = map(map(x, force), f -> f + random.nextGaussian() * 0.01);
        StretchDetails d = strip(25, 6, 2);
        d.setZeroForce(0.4);
        d.setSlack(Slack.TANGENT);
        d.setBroke(true);
        Look look = look(STRETCH, d, travelAndForce(x, y));
        assertEquals(3, at(look, "begin"), 0.12);
        assertEquals(0.7, value(look, "stress-100"), 0.006);
        assertEquals(2 * c10 * (4 - 1 / 16.0), value(look, "stress-300"), 0.01);
        assertEquals(2 * c10 * (5 - 1 / 25.0), value(look, "strength"), 0.01);
        assertEquals(400, value(look, "break-elongation"), 1.2);
        // between 0 and 10 % the neo-Hookean slope falls from 1.2 to 1.0 MPa
        assertEquals(1.1, value(look, "tangent-modulus"), 0.1);
        assertEquals(2 * c10 * (1.2 - 1 / 1.44) / 0.2, value(look, "secant-modulus"), 0.02);
        assertTrue(result(look, "stress-100").halfWidth() >= 0.02 * value(look, "stress-100"), "no narrower than the section is known");
        StretchCurve curve = STRETCH.curve(recording(d), travelAndForce(x, y), Watch.NONE).orElseThrow();
        int last = curve.stretch().length - 1;
        assertEquals(5, curve.stretch()[last], 0.012);
        assertEquals(value(look, "strength"), curve.stress()[last], 0.01);
        assertEquals(1, curve.stretch()[0], 0.001);
    }

    @Test
    void whatIsMissingIsLeftOutAndSaid() {
        double[] x = steps(0, 20, 200);
        double[] y = map(x, v -> v / 10);
        Look bare = look(STRETCH, null, travelAndForce(x, y));
        assertTrue(bare.results().isEmpty() && remarks(bare, "curve.stretch.noGauge") && remarks(bare, "curve.stretch.noSection"), bare.toString());
        assertTrue(STRETCH.curve(recording(null), travelAndForce(x, y), Watch.NONE).isEmpty());
        StretchDetails d = strip(10, 6, 2);
        d.setBrokeInGrip(true);
        Look grip = look(STRETCH, d, travelAndForce(x, y));
        assertTrue(remarks(grip, "curve.stretch.inGrip") && result(grip, "strength") == null && result(grip, "break-elongation") == null);
        assertNotNull(result(grip, "stress-100"));
        assertTrue(remarks(grip, "curve.stretch.notReached"));
        d.setBrokeInGrip(null);
        d.setBroke(false);
        assertEquals(Censoring.MORE_THAN, result(look(STRETCH, d, travelAndForce(x, y)), "strength").censoring());
        assertTrue(STRETCH.missing(java.util.Set.of(ChannelRole.TRAVEL)).isPresent() && STRETCH.missing(java.util.Set.of(ChannelRole.STRAIN, ChannelRole.STRESS)).isEmpty());
    }

    /** The loop of the reference sheet: 33.0 and 27.1 N mm, 17.879 % lost; the second one half as strong. */
    @Test
    void loopsLoseEnergyAndSoften() {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        double[] load = { 0, 2, 4.4, 7.4, 11.2, 16 };
        double[] unload = { 0, 1.2, 3, 5.5, 9.4, 16 };
        for (int cycle = 0; cycle < 3; cycle++) {
            double share = cycle == 0 ? 1 : 0.5;
            for (int i = cycle == 0 ? 0 : 1; i <= 5; i++) {
                x.add((double) i);
                y.add(load[i] * share);
            }
            for (int i = 4; i >= 0; i--) {
                x.add((double) i);
                y.add(unload[i] * share);
            }
        }
        // steps of one at the turn belong to the strong loop first
        Look look = look(STRETCH, strip(5, 6, 2), travelAndForce(x.stream().mapToDouble(v -> v).toArray(), y.stream().mapToDouble(v -> v).toArray()));
        assertEquals(17.879, value(look, "first-loop-loss"), 0.0005);
        assertEquals(17.879, value(look, "loop-loss"), 0.0005);
        assertEquals(50, value(look, "softening"), 1e-9);
        assertTrue(remarks(look, "curve.stretch.cycle"));
    }

    /** A dome: rises to 0.81 N at 1.8 mm after contact at 0.6 mm, falls to 0.30 N at 3 mm, rises again. */
    private static double dome(double travel) {
        double s = travel - 0.6;
        if (s <= 0) {
            return 0;
        }
        if (s <= 1.8) {
            return 0.81 * Math.sin(Math.PI / 2 * s / 1.8);
        }
        return s <= 3 ? 0.30 + 0.51 * (1 + Math.cos(Math.PI * (s - 1.8) / 1.2)) / 2 : 0.30 + 2 * (s - 3) * (s - 3);
    }

    @Test
    void aSnapIsFoundThroughNoiseAndItsMarksMayBeMoved() {
        double[] in = steps(0, 4.3, 3000);
        Random random = new Random(4);
        double[] x = IntStream.range(0, 6000).mapToDouble(i -> i < 3000 ? in[i] : in[5999 - i]).toArray();
        double[] y = IntStream.range(0, 6000).mapToDouble(i -> (i < 3000 ? 1 : 0.8) * dome(x[i]) + random.nextGaussian() * 0.003).toArray();
        Look look = look(PRESS, null, travelAndForce(x, y));
        assertEquals(0.81, value(look, "peak-force"), 0.012);
        assertEquals(0.30, value(look, "least-force"), 0.012);
        assertEquals(0.51 / 0.81, value(look, "snap-ratio"), 0.02);
        assertEquals(0.6, at(look, "contact"), 0.05);
        assertEquals(1.8, value(look, "peak-travel"), 0.15);
        assertEquals(3, value(look, "least-travel"), 0.15);
        assertEquals(Math.PI / 2 * 0.81 / 1.8, value(look, "stiffness"), 0.04);
        assertNull(result(look, "peak-force").halfWidth());
        assertTrue(remarks(look, "curve.noBand"));

        Recording r = recording(TestingDataFactory.eINSTANCE.createPressDetails());
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setUnit("mN");
        gauge.setAccuracy(30.0);
        gauge.setResolution(1.0);
        r.setInstrument(gauge);
        RecordingMark mark = ModelFactory.eINSTANCE.createRecordingMark();
        mark.setName("peak");
        mark.setPosition(2.0);
        mark.setByHand(true);
        r.getMarks().add(mark);
        Look moved = PRESS.look(r, travelAndForce(x, y), Watch.NONE);
        assertEquals(dome(2), value(moved, "peak-force"), 0.012);
        assertTrue(moved.marks().stream().filter(m -> m.name().equals("peak")).allMatch(FoundMark::byHand));
        // 30 mN over the root of 3, twice, and a little scatter
        assertEquals(2 * Math.sqrt(0.03 * 0.03 / 3 + 0.003 * 0.003), result(moved, "peak-force").halfWidth(), 0.001);
    }

    /** Fine steps bend less from row to row than a load cell scatters: the turnings are found all the same, and no snap where there is none. */
    @Test
    void scatterIsNoSnap() {
        for (int seed = 0; seed < 10; seed++) {
            Random random = new Random(seed);
            double scatter = seed % 2 == 0 ? 0.004 : 0.012;
            double[] x = steps(0, 3.6, 3600);
            double[] y = map(x, v -> dome(v) + scatter * random.nextGaussian());
            Look look = look(PRESS, null, travelAndForce(x, y));
            assertEquals(dome(1.8 + 0.6), value(look, "peak-force"), scatter, "seed " + seed);
            assertEquals(2.4, at(look, "peak"), 0.2, "seed " + seed);
            assertEquals(3.6, at(look, "least"), 0.2, "seed " + seed);
            double off = Math.abs(value(look, "least-travel") - 3);
            assertTrue(off < 2 * result(look, "least-travel").halfWidth(), "seed " + seed + ": off by " + off + ", said " + result(look, "least-travel").halfWidth());

            double[] rising = map(x, v -> 0.2 * v + scatter * random.nextGaussian());
            Look none = look(PRESS, null, travelAndForce(x, rising));
            assertEquals(Censoring.MORE_THAN, result(none, "peak-force").censoring(), "seed " + seed);
            // a display with steps of 10 mN that goes up and down by one
            double[] steps = map(x, v -> Math.rint((0.2 * v + 0.004 * random.nextGaussian()) / 0.01) * 0.01);
            assertEquals(Censoring.MORE_THAN, result(look(PRESS, null, travelAndForce(x, steps)), "peak-force").censoring(), "seed " + seed);
        }
    }

    @Test
    void withoutASnapThePeakIsABound() {
        double[] x = steps(0, 5, 500);
        Look look = look(PRESS, null, travelAndForce(x, map(x, v -> 0.2 * v * v)));
        assertEquals(Censoring.MORE_THAN, result(look, "peak-force").censoring());
        assertEquals(5, value(look, "peak-force"), 1e-9);
        assertTrue(result(look, "snap-ratio") == null && remarks(look, "curve.press.noSnap"));
    }

    @Test
    void curvesThatSayNothingAreAnsweredNotThrown() {
        PressDetails d = TestingDataFactory.eINSTANCE.createPressDetails();
        d.setSlack(Slack.TANGENT);
        Random random = new Random(8);
        List<double[][]> odd = new ArrayList<>(List.of(new double[][] { { 1 }, { 1 } }, new double[][] { { 1, 1, 1 }, { 1, 2, 3 } }, new double[][] { { 0, 1, 2 }, { 0, 0, 0 } },
                new double[][] { { 0, 1, 2 }, { 0, -1, -5 } }, new double[][] { { 2, 1, 0 }, { 0, 1, 2 } }, new double[][] { { 0, 1 }, { 0, 1 } }, new double[][] { { 0, 1, 2, 3 }, {
                        3, 2, 1, 0 } }));
        for (int i = 0; i < 200; i++) {
            int n = 1 + random.nextInt(300);
            odd.add(new double[][] { random.doubles(n, -1, 5).toArray(), random.doubles(n, -1, 1).toArray() });
        }
        for (double[][] xy : odd) {
            for (Slack slack : Slack.values()) {
                d.setSlack(slack);
                StretchDetails s = strip(10, 6, 2);
                s.setSlack(slack);
                s.setBroke(random.nextBoolean());
                for (Look look : List.of(look(PRESS, d, travelAndForce(xy[0], xy[1])), look(STRETCH, s, travelAndForce(xy[0], xy[1])), look(STRETCH, s, data(xy[0],
                        ChannelRole.STRAIN, "%", xy[1], ChannelRole.STRESS, "MPa")))) {
                    assertTrue(!look.plots().isEmpty() && look.plots().stream().allMatch(p -> p.whole(100) != null && p.part(0, 1, 100) != null));
                    look.remarks().forEach(r -> assertTrue(!r.message().text().isBlank()));
                }
            }
        }
    }

    @Test
    void theSheetsTensilePieces() {
        // 45 N on 6 x 2 mm and a break at 118 mm from 25 mm
        double[] x = steps(0, 93, 1000);
        StretchDetails d = strip(25, 6, 2);
        d.setBroke(true);
        d.setSlack(Slack.NONE);
        Look look = look(STRETCH, d, travelAndForce(x, map(x, v -> 45 * v / 93)));
        assertEquals(3.750, value(look, "strength"), 1e-9);
        assertEquals(372, value(look, "break-elongation"), 1e-9);
        assertEquals(3.75 / 3.72, value(look, "tangent-modulus"), 1e-9);
    }

    /** A file that gives stretch is taken as it stands, even when the last strip had slack; pure shear is no reading of a tensile property. */
    @Test
    void aStretchOfTheFileIsNotShifted() {
        double[] stretch = steps(1.05, 5, 24);
        double[] stress = map(stretch, v -> 0.4 * (v - 1 / (v * v * v)));
        StretchDetails d = strip(25, 6, 2);
        d.setSlack(Slack.TANGENT);
        d.setLoading(StretchLoading.PLANAR);
        RecordingData data = data(stretch, ChannelRole.STRETCH, "", stress, ChannelRole.STRESS, "MPa");
        Look look = look(STRETCH, d, data);
        assertEquals(1, at(look, "begin"), 0);
        assertTrue(remarks(look, "curve.stretch.counted") && look.results().stream().noneMatch(r -> r.property() != null), look.toString());
        StretchCurve curve = STRETCH.curve(recording(d), data, Watch.NONE).orElseThrow();
        assertEquals(org.flexwright.core.rubber.Loading.PLANAR, curve.loading());
        org.junit.jupiter.api.Assertions.assertArrayEquals(stretch, curve.stretch(), 1e-15);
        org.junit.jupiter.api.Assertions.assertArrayEquals(stress, curve.stress(), 0);
    }
}
