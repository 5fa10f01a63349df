package org.flexwright.testing.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.FilmDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.Test;

class FilmKindTest {
    private static final double FPS = 240;
    private static final double SCALE = 1.6;
    private static final double FLOOR = 40;

    private final FilmDetails details = TestingDataFactory.eINSTANCE.createFilmDetails();
    private final Recording recording = ModelFactory.eINSTANCE.createRecording();

    FilmKindTest() {
        recording.setKind(FilmKind.ID);
        recording.setDetails(details);
        details.setFrameRate(FPS);
        details.setPixelsPerMm(SCALE);
    }

    @Test
    void aDropFromFourHundredMillimetres() {
        Look look = look(film(400, 0.7, 0, 1));
        RecordingResult rebound = result(look, "rebound-1");
        assertEquals(49, rebound.value(), 0.05);
        assertEquals(TestingProperties.REBOUND_DROP, rebound.property());
        assertEquals(TestingProperties.REBOUND_BOUNCE, result(look, "rebound-2").property());
        assertEquals(0.7, result(look, "restitution-2").value(), 0.001);
        assertEquals(400, result(look, "drop").value(), 0.5);
        assertEquals(196, result(look, "height-1").value(), 0.5);
        assertEquals(9.80665, result(look, "fall").value(), 1e-6);
        assertEquals(2, look.plots().size());
        assertTrue(look.plots().get(1).whole(100).series().size() >= 2);
    }

    /** Pictures read off to a pixel or so: the bands hold the truth nine times in ten at least. */
    @Test
    void theBandsHold() {
        int rebound = 0;
        int height = 0;
        int fall = 0;
        int many = 60;
        for (int n = 0; n < many; n++) {
            Look look = look(film(400, 0.7, 1, n));
            rebound += inside(result(look, "rebound-1"), 49);
            height += inside(result(look, "drop"), 400);
            fall += inside(result(look, "fall"), BouncingBall.G);
        }
        assertTrue(rebound >= 0.9 * many && height >= 0.9 * many && fall >= 0.9 * many, rebound + " " + height + " " + fall);
    }

    @Test
    void aWrongRateOrScaleIsNoticed() {
        assertTrue(said(look(film(400, 0.7, 0.3, 2)), "agree with the fall"));
        details.setFrameRate(120.0);
        Look look = look(film(400, 0.7, 0.3, 2));
        assertTrue(said(look, "the true rate is 240 pictures a second") || said(look, "the true rate is 239 pictures a second") || said(look, "the true rate is 241 pictures a second"));
        assertEquals(49, result(look, "rebound-1").value(), 1, "the ratio holds");
        details.setFrameRate(null);
        assertEquals(FPS, result(look(film(400, 0.7, 0.3, 2)), "rate").value(), 2);
        details.setPixelsPerMm(null);
        assertTrue(said(look(film(400, 0.7, 0.3, 2)), "only ratios"));
        details.setFrameRate(FPS);
        look = look(film(400, 0.7, 0.3, 2));
        assertEquals(SCALE, result(look, "scale").value(), 0.02);
        assertEquals(400, result(look, "drop").value(), 6);
    }

    @Test
    void heldStillBeforeItIsLetGo() {
        double[] heights = film(400, 0.7, 0.3, 3);
        double[] longer = new double[heights.length + 50];
        Arrays.fill(longer, 0, 50, FLOOR + 400 * SCALE);
        System.arraycopy(heights, 0, longer, 50, heights.length);
        assertEquals(400, result(look(longer), "drop").value(), 6);
        assertEquals(49, result(look(longer), "rebound-1").value(), 1);
    }

    @Test
    void pixelsFromTheTopAreTurnedRound() {
        double[] heights = film(400, 0.7, 0, 1);
        for (int i = 0; i < heights.length; i++) {
            heights[i] = 1080 - heights[i];
        }
        assertTrue(said(look(heights), "counted from the top"));
        details.setHeightDown(true);
        assertEquals(49, result(look(heights), "rebound-1").value(), 0.05);
    }

    @Test
    void aSingleFlightTellsItsRise() {
        double[] y = IntStream.rangeClosed(0, 60).mapToDouble(i -> SCALE * 1000 * (2 * (i / FPS) - BouncingBall.G / 2 * (i / FPS) * (i / FPS))).toArray();
        assertEquals(1000 * 4 / (2 * BouncingBall.G), result(look(y), "rise").value(), 0.1);
    }

    @Test
    void marksSayWhatCountsAndWhereTheContactsAre() {
        double[] heights = film(400, 0.7, 0, 1);
        Look look = look(heights);
        long contacts = look.marks().stream().filter(m -> m.name().startsWith("contact-")).count();
        assertTrue(contacts >= 3);
        RecordingMark to = ModelFactory.eINSTANCE.createRecordingMark();
        to.setName("to");
        to.setPosition(110.0);
        to.setByHand(true);
        recording.getMarks().add(to);
        assertEquals(1, look(heights).marks().stream().filter(m -> m.name().startsWith("contact-")).count());
        RecordingMark contact = ModelFactory.eINSTANCE.createRecordingMark();
        contact.setName(look.marks().stream().filter(m -> m.name().startsWith("contact-")).findFirst().orElseThrow().name());
        contact.setLeftOut("a shadow");
        recording.getMarks().add(contact);
        assertTrue(look(heights).results().stream().noneMatch(r -> r.id().startsWith("rebound")));
    }

    @Test
    void whatCannotBeReadIsSaid() {
        assertTrue(said(look(new double[] {1, 2, 3}), "No flight has 4 pictures"));
        assertTrue(said(look(new double[] {5, 5, 5, 5, 5, 5}), "stays the same"));
        RecordingData twice = new RecordingData(List.of(channel(ChannelRole.FRAME, 1, 2, 2, 3), channel(ChannelRole.HEIGHT, 1, 2, 3, 4)), 0);
        assertTrue(said(new FilmKind().look(recording, twice, Watch.NONE), "Row 3"));
        assertTrue(said(new FilmKind().look(recording, new RecordingData(List.of(), 0), Watch.NONE), "number of the picture or the time"));
        assertTrue(new FilmKind().missing(Set.of(ChannelRole.TIME)).orElseThrow().text().contains("height"));
        assertTrue(new FilmKind().missing(Set.of(ChannelRole.HEIGHT)).orElseThrow().text().contains("picture"));
        assertTrue(new FilmKind().missing(Set.of(ChannelRole.FRAME, ChannelRole.HEIGHT)).isEmpty());
    }

    /** Heights in pixels of a drop and its bounces, one a picture, until little is left. */
    private static double[] film(double mm, double e, double pixelNoise, long seed) {
        Random random = new Random(seed);
        List<Double> heights = new ArrayList<>();
        double top = mm / 1000;
        double contact = Math.sqrt(2 * top / BouncingBall.G);
        double begin = -contact;
        double v = 0;
        double level = top;
        double t = 0;
        while (heights.size() < 260) {
            double now = t / FPS;
            double since = begin < 0 ? now : now - begin;
            double y = begin < 0 ? level - BouncingBall.G / 2 * since * since : v * since - BouncingBall.G / 2 * since * since;
            if (y < 0) {
                v = begin < 0 ? e * Math.sqrt(2 * BouncingBall.G * top) : e * v;
                begin = begin < 0 ? contact : begin + 2 * v / e / BouncingBall.G;
                continue;
            }
            heights.add(FLOOR + SCALE * 1000 * y + pixelNoise * random.nextGaussian());
            t++;
        }
        return heights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static int inside(RecordingResult result, double truth) {
        return Math.abs(result.value() - truth) <= result.halfWidth() ? 1 : 0;
    }

    private Look look(double[] heights) {
        double[] frames = IntStream.range(0, heights.length).mapToDouble(i -> i).toArray();
        return new FilmKind().look(recording, new RecordingData(List.of(channel(ChannelRole.FRAME, frames), channel(ChannelRole.HEIGHT, heights)), 0), Watch.NONE);
    }

    private static RecordingData.Channel channel(ChannelRole role, double... values) {
        return new RecordingData.Channel(role, "", "", values);
    }

    private static RecordingResult result(Look look, String id) {
        return look.results().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id + " is not in " + look.results() + " " + look.remarks()));
    }

    private static boolean said(Look look, String words) {
        return look.remarks().stream().anyMatch(r -> r.message().text().contains(words));
    }
}
