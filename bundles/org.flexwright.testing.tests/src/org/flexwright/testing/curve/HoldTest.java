package org.flexwright.testing.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.flexwright.core.Watch;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.testing.data.HoldDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.flexwright.testing.law.PronyFit;
import org.flexwright.testing.law.PronyFitCalculation;
import org.flexwright.testing.law.Relaxation;
import org.junit.jupiter.api.Test;

class HoldTest {
    private static final HoldKind KIND = new HoldKind();
    /** The series of the sheet, section 6: E0 2, shares 0.2 and 0.15, times 1 and 30 s. */
    private static final List<Relaxation.Term> SHEET = List.of(new Relaxation.Term(0.2, 1), new Relaxation.Term(0.15, 30));

    /** Loaded from 2 s to 3 s, then held; scatter as given. */
    private static RecordingData data(int rows, double step, double scatter, long seed) {
        Random random = new Random(seed);
        double[] time = new double[rows];
        double[] force = new double[rows];
        for (int i = 0; i < rows; i++) {
            time[i] = i * step;
            double whole = time[i] < 2 ? 0 : time[i] < 3 ? 2 * (time[i] - 2) : Relaxation.prony(2, SHEET, time[i] - 3);
            force[i] = whole + 0.4 + scatter * random.nextGaussian();
        }
        return new RecordingData(List.of(new RecordingData.Channel(ChannelRole.TIME, "t", "s", time), new RecordingData.Channel(ChannelRole.FORCE, "F", "N", force)), 0);
    }

    private static Recording recording(Integer terms) {
        Recording recording = ModelFactory.eINSTANCE.createRecording();
        HoldDetails details = TestingDataFactory.eINSTANCE.createHoldDetails();
        details.setZeroForce(0.4);
        details.setTerms(terms);
        recording.setDetails(details);
        return recording;
    }

    private static RecordingResult result(Look look, String id) {
        return look.results().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id + " of " + look.results() + look.remarks()));
    }

    private static boolean says(Look look, String key) {
        return look.remarks().stream().anyMatch(r -> r.message().key().equals(key));
    }

    @Test
    void theSheetsSeriesIsFoundAgain() {
        Look look = KIND.look(recording(2), data(30_000, 0.01, 0, 1), Watch.NONE);
        assertEquals(2, result(look, "prony-f0").value(), 1e-3);
        assertEquals(20, result(look, "prony-g1").value(), 0.05);
        assertEquals(1, result(look, "prony-tau1").value(), 5e-3);
        assertEquals(15, result(look, "prony-g2").value(), 0.05);
        assertEquals(30, result(look, "prony-tau2").value(), 0.1);
        assertEquals(65, result(look, "prony-left").value(), 0.05);
        double one = Relaxation.prony(2, SHEET, 1);
        assertEquals(100 * (one - Relaxation.prony(2, SHEET, 60)) / one, result(look, "relaxation-60").value(), 0.1);
        assertEquals(CurveProperties.RELAXATION_60, result(look, "relaxation-60").property());
        assertEquals(List.of("hold-begin", "hold-end"), look.marks().stream().map(FoundMark::name).toList());
        assertEquals(3, look.marks().get(0).position(), 0.02);
        look.plots().forEach(p -> assertFalse(p.whole(100).series().isEmpty()));
        List<String> decades = look.plots().get(1).whole(500).x().ticks().stream().map(t -> t.label()).toList();
        assertTrue(decades.containsAll(List.of("0.1", "1", "10", "100")), decades.toString());
        assertEquals(2, look.plots().get(1).whole(500).series().size(), "recorded and fitted");
        look.remarks().forEach(r -> assertFalse(r.message().text().isBlank()));
    }

    /** With chance on the forces the intervals of F0 and of the shares hold the true ones about as often as they say. */
    @Test
    void intervalsHoldWhatTheyPromise() {
        Random random = new Random(3);
        double[] time = new double[60];
        Arrays.setAll(time, i -> 0.1 * Math.pow(3000, i / 59.0));
        int inside = 0;
        int runs = 120;
        for (int run = 0; run < runs; run++) {
            double[] force = Arrays.stream(time).map(t -> Relaxation.prony(2, SHEET, t) + 0.004 * random.nextGaussian()).toArray();
            PronyFit fit = PronyFit.of(time, force, 2, Watch.NONE).orElseThrow();
            inside += Math.abs(fit.terms().get(1).share() - 0.15) <= fit.terms().get(1).shareBand().orElseThrow() ? 1 : 0;
        }
        // 114 expected, standard deviation 2.4
        assertTrue(inside >= 105, inside + " of " + runs);
    }

    @Test
    void aMovedBeginningAndAShortHold() {
        Recording moved = recording(1);
        RecordingMark mark = ModelFactory.eINSTANCE.createRecordingMark();
        mark.setName("hold-begin");
        mark.setPosition(10.0);
        mark.setByHand(true);
        moved.getMarks().add(mark);
        Look look = KIND.look(moved, data(8_000, 0.01, 0.01, 2), Watch.NONE);
        assertTrue(look.marks().get(0).byHand());
        assertEquals(Relaxation.prony(2, SHEET, 8), result(look, "force-1s").value(), 0.01);
        assertNull(result(look, "force-1s").halfWidth(), "no band without a gauge");
        assertTrue(says(look, "curve.noBand"));
        moved.setInstrument(ModelFactory.eINSTANCE.createInstrument());
        moved.getInstrument().setUnit("N");
        moved.getInstrument().setSpread(0.002);
        assertTrue(says(KIND.look(moved, data(8_000, 0.01, 0.01, 2), Watch.NONE), "curve.noAccuracy"));
        moved.getInstrument().setAccuracy(0.01);
        look = KIND.look(moved, data(8_000, 0.01, 0.01, 2), Watch.NONE);
        assertTrue(result(look, "force-1s").halfWidth() > 2 * 0.01 / Math.sqrt(3) && result(look, "force-1s").halfWidth() < 0.02, "the gauge counts");
        assertTrue(look.results().stream().noneMatch(r -> r.id().equals("relaxation-1800")), "no half hour was recorded");
        assertTrue(says(KIND.look(recording(3), data(330, 0.01, 0, 1), Watch.NONE), "hold.short"));
        assertTrue(says(KIND.look(recording(3), data(5, 0.01, 0, 1), Watch.NONE), "hold.few"));
    }

    @Test
    void whatDoesNotFallGetsNoExponentials() {
        double[] time = new double[100];
        Arrays.setAll(time, i -> 0.1 * i);
        double[] rising = Arrays.stream(time).map(t -> 1 + t).toArray();
        assertTrue(PronyFit.of(time, rising, 1, Watch.NONE).isEmpty());
        double[] flat = new double[100];
        assertTrue(says(KIND.look(recording(2), new RecordingData(List.of(new RecordingData.Channel(ChannelRole.TIME, "t", "s", time), new RecordingData.Channel(ChannelRole.FORCE, "F", "N",
                flat)), 0), Watch.NONE), "hold.noHold"));
        assertEquals("hold.noForce", KIND.missing(Set.of(ChannelRole.TIME)).orElseThrow().key());
        assertEquals("hold.noTime", KIND.missing(Set.of(ChannelRole.FORCE)).orElseThrow().key());
        assertTrue(KIND.missing(Set.of(ChannelRole.TIME, ChannelRole.STRESS)).isEmpty());
    }

    @Test
    void theCalculationRefusesInOneSentence() {
        CalculationResult back = CalculationRunner.run(new PronyFitCalculation(), Map.of("points", "0; 10 | 2; 9 | 1; 8 | 3; 7 | 4; 7"));
        assertEquals("points", back.refused().input());
        assertTrue(back.refused().why().startsWith("Point 3 lies at 1 s, not after the one before at 2 s"), back.refused().why());
        assertEquals("terms", CalculationRunner.run(new PronyFitCalculation(), Map.of("terms", "4", "points", "0; 10 | 1; 9 | 2; 8.5 | 3; 8.2 | 4; 8")).refused().input());
        CalculationResult good = CalculationRunner.run(new PronyFitCalculation(), Map.of());
        assertTrue(good.done() && !good.results().get("intervals").text().isBlank(), String.valueOf(good.refused()));
    }
}
