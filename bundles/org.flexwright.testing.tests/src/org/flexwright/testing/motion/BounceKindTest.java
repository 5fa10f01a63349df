package org.flexwright.testing.motion;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.BounceDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.Test;

class BounceKindTest {
    private final BounceDetails details = TestingDataFactory.eINSTANCE.createBounceDetails();
    private final Recording recording = ModelFactory.eINSTANCE.createRecording();

    BounceKindTest() {
        recording.setKind(BounceKind.ID);
        recording.setDetails(details);
    }

    @Test
    void theDropOfTheSheet() {
        Look look = look(blows(0.5, 0.5 + 0.6, 0.5 + 1.08));
        assertEquals(0.8, result(look, "restitution").value(), 2e-4);
        assertEquals(64, result(look, "rebound-bounce").value(), 0.05);
        assertEquals(TestingProperties.REBOUND_BOUNCE, result(look, "rebound-bounce").property());
        assertEquals(689.5, result(look, "height").value(), 1);
        assertTrue(look.results().stream().noneMatch(r -> r.id().startsWith("rebound-drop")));
        expect("testing/5.bounce.ue", BouncingBall.restitutionUncertainty(0.6, 0.8, 0.001, 0.001, 0.001), BouncingBall.SOURCE.display());
    }

    @Test
    void withItsHeightTheFirstImpactIsReadAndTheHeightsCompared() {
        details.setDrop(400.0);
        Look look = look(bounces(0.4, 0.7, 5));
        RecordingResult first = result(look, "rebound-drop");
        assertEquals(49, first.value(), first.halfWidth());
        assertEquals(TestingProperties.REBOUND_DROP, first.property());
        assertEquals(0.7, result(look, "restitution-drop").value(), result(look, "restitution-drop").halfWidth());
        assertEquals(0.7, result(look, "restitution-fit").value(), 0.001);
        assertTrue(result(look, "restitution-fit").halfWidth() > 1e-4, "no narrower than the moments are known");
        assertTrue(said(look, "agrees with the 400 mm"));
        details.setDrop(430.0);
        assertTrue(said(look(bounces(0.4, 0.7, 5)), "is lower than the 430 mm"));
        details.setDrop(370.0);
        assertTrue(said(look(bounces(0.4, 0.7, 5)), "is higher than the 370 mm"));
        details.setDrop(900.0);
        Look other = look(bounces(0.4, 0.7, 5));
        assertTrue(said(other, "quite another than the 900 mm"));
        assertTrue(other.results().stream().noneMatch(r -> r.id().endsWith("-drop")), "a first impact that was missed is no reading");
        details.setDrop(150.0);
        assertTrue(said(look(bounces(0.4, 0.7, 5)), "rise to 196 mm after a fall of 150 mm"));
        // two impacts need the height
        details.setDrop(400.0);
        Look two = look(bounces(0.4, 0.7, 2));
        assertEquals(49, result(two, "rebound-drop").value(), 0.6);
        assertEquals(List.of("rebound-drop", "restitution-drop"), two.results().stream().map(RecordingResult::id).toList());
        details.setDrop(null);
        assertTrue(look(bounces(0.4, 0.7, 2)).results().isEmpty());
    }

    @Test
    void marksMoveAndAreLeftOut() {
        RecordingData data = blows(0.5, 0.8, 1.1, 1.58);
        // 0.3, 0.3, 0.48: the knock at 0.8 is no bounce, or the one at 0.5 is none
        Look look = look(data);
        assertEquals(List.of("impact-500", "impact-800", "impact-1100", "impact-1580"), look.marks().stream().map(FoundMark::name).toList());
        RecordingMark knock = mark("impact-800");
        knock.setLeftOut("a knock");
        look = look(data);
        assertEquals(0.8, result(look, "restitution").value(), 2e-4);
        assertEquals("Sound", look.marks().get(1).title());
        double narrow = result(look, "restitution").halfWidth();
        RecordingMark last = mark("impact-1580");
        last.setPosition(1.55);
        last.setByHand(true);
        look = look(data);
        assertEquals(0.75, result(look, "restitution").value(), 2e-4);
        assertTrue(look.marks().get(3).byHand());
        assertTrue(result(look, "restitution").halfWidth() > narrow, "a hand is not so exact");
        // a mark nobody found
        RecordingMark added = mark("impact-1888");
        added.setPosition(1.8875);
        added.setByHand(true);
        assertEquals(0.75, result(look(data), "restitution-fit").value(), 2e-3);
    }

    @Test
    void severalDropsAreReadOneByOne() {
        MadeSound sound = new MadeSound(16_000, 6, 3).room(0.001, 0.002, 0);
        for (double begin : new double[] {0.5, 3}) {
            for (double t : MadeSound.times(begin, 0.3, 0.6, 4)) {
                sound.blow(t, 0.5);
            }
        }
        Look look = look(data(sound));
        assertEquals(0.6, result(look, "restitution-1").value(), 0.002);
        assertEquals(0.6, result(look, "restitution-2").value(), 0.002);
        assertTrue(look.marks().get(4).title().startsWith("Drop 2, impact 1"));
        assertEquals(2, look.plots().size());
        assertEquals(2, look.plots().get(1).whole(100).series().size());
    }

    @Test
    void channelsAreMixedOrChosen() {
        MadeSound bounces = new MadeSound(8_000, 2, 1);
        for (double t : MadeSound.times(0.3, 0.3, 0.7, 4)) {
            bounces.blow(t, 0.5);
        }
        double[] silence = new double[bounces.samples.length];
        RecordingData two = new RecordingData(List.of(channel(silence), channel(bounces.samples)), 8_000);
        assertEquals(0.7, result(look(two), "restitution").value(), 0.002);
        details.setChannel(2);
        assertEquals(0.7, result(look(two), "restitution").value(), 0.002);
        details.setChannel(1);
        assertTrue(said(look(two), "Nothing stands out"));
        details.setChannel(3);
        assertTrue(said(look(two), "Channel 3 is asked for, and the sound has 2"));
        assertTrue(said(look(new RecordingData(List.of(), 8_000)), "no sound"));
    }

    @Test
    void soundsWithoutBouncesAndSilenceAreSaidSo() {
        assertTrue(said(look(blows(0.5, 0.6, 1.2, 2.4)), "no three of them"));
        assertTrue(said(look(data(new MadeSound(8_000, 1, 1))), "Nothing stands out 4 times"));
        assertTrue(said(look(new RecordingData(List.of(channel(new double[1])), 8_000)), "Nothing stands out"));
    }

    /** The bands hold in at least nine of ten noisy drops of parts that touch for a time nobody knows; what the moments alone are said to be known to holds by itself. */
    @Test
    void theBandHoldsWhatItClaims() {
        int alone = 0;
        int over = 0;
        int inside = 0;
        int many = 40;
        Random random = new Random(11);
        for (int n = 0; n < many; n++) {
            double e = 0.6 + 0.2 * random.nextDouble();
            MadeSound sound = new MadeSound(22_050, 2.6, n).room(0.004, 0.05, 0.05);
            double[] times = MadeSound.times(0.3 + 0.2 * random.nextDouble(), 0.4, e, 4);
            double contact = 0.005 * random.nextDouble();
            for (int i = 0; i < times.length; i++) {
                times[i] += i * contact;
                sound.blow(times[i], 0.6 * Math.pow(e, i));
            }
            Look look = look(data(sound));
            RecordingResult got = result(look, "restitution");
            inside += Math.abs(got.value() - e) <= got.halfWidth() ? 1 : 0;
            RecordingResult all = result(look, "restitution-fit");
            over += Math.abs(all.value() - e) <= all.halfWidth() ? 1 : 0;
            List<ImpactFinder.Impact> heard = BounceSeries.among(ImpactFinder.find(sound.samples, sound.rate, ImpactFinder.THRESHOLD, ImpactFinder.QUIET, Watch.NONE).impacts(),
                    ImpactFinder.QUIET).get(0).impacts();
            double apart = (times[2] - times[1]) / (times[1] - times[0]);
            double u = BouncingBall.restitutionUncertainty(times[1] - times[0], apart, heard.get(0).uncertainty(), heard.get(1).uncertainty(), heard.get(2).uncertainty());
            alone += Math.abs(got.value() - apart) <= 2 * u ? 1 : 0;
        }
        assertTrue(inside >= 0.9 * many, inside + " of " + many);
        assertTrue(over >= 0.9 * many, over + " of " + many + " over all flights");
        assertTrue(alone >= 0.9 * many, alone + " of " + many + " by the moments alone");
    }

    @Test
    void theWaveIsDrawnThinnedWithoutLosingAPeak() {
        double[] sound = new double[100_000];
        sound[77_777] = -0.9;
        SoundPlot plot = new SoundPlot(sound, 10_000);
        assertEquals(-0.9, plot.whole(400).series().get(0).points().stream().mapToDouble(p -> p.y()).min().orElseThrow());
        assertTrue(plot.whole(400).series().get(0).points().size() < 500);
        assertEquals(7.7777, plot.part(7.7, 7.8, 2000).series().get(0).points().stream().filter(p -> p.y() < 0).findFirst().orElseThrow().x(), 1e-9);
        assertTrue(plot.part(20, 30, 100).series().get(0).points().isEmpty());
        assertFalse(plot.whole(2).series().get(0).points().isEmpty());
        assertNull(new BounceKind().look(recording, new RecordingData(List.of(channel(sound)), 10_000), Watch.NONE).results().stream().findFirst().orElse(null));
    }

    private RecordingMark mark(String name) {
        RecordingMark mark = ModelFactory.eINSTANCE.createRecordingMark();
        mark.setName(name);
        recording.getMarks().add(mark);
        return mark;
    }

    private Look look(RecordingData data) {
        return new BounceKind().look(recording, data, Watch.NONE);
    }

    private static RecordingResult result(Look look, String id) {
        return look.results().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id + " is not in " + look.results() + " " + look.remarks()));
    }

    private static boolean said(Look look, String words) {
        return look.remarks().stream().anyMatch(r -> r.message().text().contains(words));
    }

    private static RecordingData bounces(double height, double e, int impacts) {
        return blows(MadeSound.times(0.5, height, e, impacts));
    }

    private static RecordingData blows(double... times) {
        MadeSound sound = new MadeSound(44_100, 2.8, 1).room(0.0005, 0.001, 0);
        for (double t : times) {
            sound.blow(t, 0.5);
        }
        return data(sound);
    }

    private static RecordingData data(MadeSound sound) {
        return new RecordingData(List.of(channel(sound.samples)), sound.rate);
    }

    private static RecordingData.Channel channel(double[] values) {
        return new RecordingData.Channel(ChannelRole.SOUND, "", "", values);
    }
}
