package org.flexwright.example;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Watch;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.calc.CalculatedReadings;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.gauge.GaugeAnalysis;
import org.flexwright.core.gauge.GaugeResult;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.core.recording.ImportSettings;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.TableGuess;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.RankList;
import org.flexwright.model.RankPlace;
import org.flexwright.model.Ranking;
import org.flexwright.model.Reading;
import org.flexwright.model.Recording;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.model.Trial;

/** What else was measured: curves of the domes, a bounce, how well the gauge repeats, where a part is hard, how people rank, what age does. */
final class Measuring {
    private static final String INVENTED = " (invented, made by code)";
    private static final String PRESS = "testing.press";
    private static final String BOUNCE = "testing.bounce";
    private static final double PEAK_AT = 3.21;
    private static final double LEAST_AT = 8.97;

    private final Bench bench;
    private final Story story;

    Measuring(Bench bench, Story story) {
        this.bench = bench;
        this.story = story;
    }

    private Session session(String code) {
        return bench.session().project().getSessions().stream().filter(s -> code.equals(s.getCode())).findFirst().orElseThrow();
    }

    private Trial trial(String code) {
        return bench.session().project().getTrials().stream().filter(t -> code.equals(t.getCode())).findFirst().orElseThrow();
    }

    private Part part(String trial, String code) {
        return trial(trial).getParts().stream().filter(p -> code.equals(p.getCode())).findFirst().orElseThrow();
    }

    /** Three persons read six buttons three times each, before anybody agreed to 51 ± 1. */
    void gaugeStudy() {
        bench.at("2026-02-19T19:00");
        GaugeStudy study = ModelFactory.eINSTANCE.createGaugeStudy();
        study.setCode("G1");
        study.setTitle("Can the durometer tell 51 ± 1?");
        study.setAt(Bench.moment("2026-02-19T18:30"));
        study.setKey(Story.shore(PieceKind.TEST_PIECE));
        study.setInstrument(story.durometer);
        study.setTolerance(2.0);
        cells(study, "maker (invented)", "38 38.5 38", "43 42.5 43.5", "47.5 47 47", "52 51.5 52", "57 57.5 56.5", "61 60.5 61");
        cells(study, "second reader (invented)", "38.5 38.5 38", "43.5 43 43.5", "47.5 48 47.5", "52 52.5 52.5", "57.5 57.5 57", "61.5 61 61");
        cells(study, "third reader (invented)", "38 37.5 38", "42.5 43 42.5", "47 47 46.5", "51.5 51.5 52", "56.5 57 56.5", "60.5 61 60.5");
        bench.edit("Gauge study of the durometer", e -> GaugeStudies.add(e, study));
        if (GaugeAnalysis.of(study, bench.registries().findProperty(Story.SHORE).orElseThrow()) instanceof GaugeResult result) {
            bench.edit("Keep the spread of G1", e -> GaugeStudies.keepWithGauge(e, result));
        } else {
            throw new IllegalStateException("The example's gauge study says nothing.");
        }
    }

    private static void cells(GaugeStudy study, String who, String... byPiece) {
        for (int piece = 0; piece < byPiece.length; piece++) {
            GaugeCell cell = ModelFactory.eINSTANCE.createGaugeCell();
            cell.setWho(who);
            cell.setPiece(piece == byPiece.length - 1 ? "K1" : "button " + (piece + 1));
            for (String value : byPiece[piece].split(" ")) {
                Reading reading = ModelFactory.eINSTANCE.createReading();
                reading.setValue(Double.valueOf(value));
                reading.setTypedAs(value);
                reading.setAt(study.getAt());
                cell.getReadings().add(reading);
            }
            study.getCells().add(cell);
        }
    }

    /** Where the reference part was read, on a drawn outline. */
    void spots() {
        Session first = session("S1");
        bench.read(story.reference, Bench.key(Story.HARD, PieceKind.PART, "hinge", Story.TABLE, 3.0), "50;49.5;50;50.5;50", first, story.durometer);
        SpotMap map = ModelFactory.eINSTANCE.createSpotMap();
        map.setTitle("dome from above");
        map.setSketch("dome-top");
        spot(map, "crown", 0.5, 0.5);
        spot(map, "hinge", 0.76, 0.5);
        spot(map, "flange", 0.91, 0.5);
        bench.edit("Spot map of the dome", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__SPOT_MAPS, map));
    }

    private static void spot(SpotMap map, String name, double across, double down) {
        SpotPlace place = ModelFactory.eINSTANCE.createSpotPlace();
        place.setSpot(name);
        place.setAcross(across);
        place.setDown(down);
        map.getPlaces().add(place);
    }

    /** A press of the reference part and of each dome of T08, and a ball dropped on a button of T02 and of T08. */
    void curves() {
        bench.at("2026-04-22T19:30");
        press(story.reference, session("S1"), "reference part", MadeRecordings.press(0.803, 3.18, 0.193, 9.04, 1));
        Session read = session("S15");
        press(part("T08", "P1"), read, "T08 P1, 3 days old", MadeRecordings.press(0.803, PEAK_AT, 0.273, LEAST_AT, 2));
        press(part("T08", "P2"), read, "T08 P2, 3 days old", MadeRecordings.press(0.810, PEAK_AT, 0.267, LEAST_AT, 3));
        press(part("T08", "P3"), read, "T08 P3, 3 days old", MadeRecordings.press(0.818, PEAK_AT, 0.262, LEAST_AT, 4));
        bounce(part("T08", "B1"), read, "T08 B1, steel ball from 300 mm", MadeRecordings.bounces(0.300, 0.68, 6, 5));
    }

    private Recording press(Specimen piece, Session in, String title, byte[] csv) {
        return recording(piece, PRESS, in, story.forceGauge, title, csv, title.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + ".csv", "slack", "", "speed", "30 mm/min",
                "tip", "pad, 8 mm across");
    }

    private void bounce(Specimen piece, Session in, String title, byte[] wav) {
        Recording recording = recording(piece, BOUNCE, in, null, title, wav, "t08-b1-bounce.wav", "drop", "300 mm", "what", "steel ball, 10 mm across");
        keep(recording, Bench.key(Story.SHORE, PieceKind.WITNESS_BUTTON, "middle", Story.TABLE, null), List.of());
    }

    /** A made file taken in as a person would: written beside, guessed, kept with its checksum. */
    private Recording recording(Specimen piece, String kindId, Session in, Instrument gauge, String title, byte[] bytes, String fileName, String... namesAndTexts) {
        RecordingKind kind = bench.registries().findRecordingKind(kindId).orElseThrow(() -> new IllegalStateException(
                "The example needs " + kindId));
        try {
            Path folder = Files.createTempDirectory("example");
            Path file = folder.resolve(fileName);
            try {
                Files.write(file, bytes);
                TableGuess guess = kind.format() == RecordingFormat.TABLE ? TableGuess.of(file, kind) : null;
                ImportSettings settings = Recordings.defaults(bench.session().project(), kind, guess).withRecord(title + INVENTED, in.getAt(), in, gauge, 1);
                set(settings.details(), namesAndTexts);
                return Recordings.add(bench.session(), piece, kind, file, settings, Watch.NONE);
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void set(EObject details, String... namesAndTexts) {
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            EStructuralFeature feature = details.eClass().getEStructuralFeature(namesAndTexts[i]);
            if (!namesAndTexts[i + 1].isEmpty() && feature instanceof EAttribute attribute && FieldDescriptors.of(attribute).read(namesAndTexts[i + 1]) instanceof FieldInput.Read read) {
                details.eSet(feature, read.value());
            }
        }
    }

    /** Keeps the results that are readings of these properties, or of any when none is named. */
    private void keep(Recording recording, org.flexwright.model.PropertyKey conditions, List<String> properties) {
        RecordingKind kind = bench.registries().findRecordingKind(recording.getKind()).orElseThrow();
        Look look = Recordings.look(bench.session(), recording, kind, Watch.NONE);
        bench.edit("Keep readings of " + recording.getCode(), e -> Recordings.keep(e, recording, look.results().stream().filter(r -> r.property() != null && (properties.isEmpty()
                || properties.contains(r.property()))).toList(), bench.registries().properties(), conditions));
    }

    /** Density of the button of T08 by weighing it in air and in water: the powder is in it, the bubbles of T07 are not. */
    void density() {
        density("T08", "S15", "inAir", "5.42 g", "inWater", "0.62 g");
        density("T07", "S13", "inAir", "5.31 g", "inWater", "0.42 g");
    }

    private void density(String trial, String code, String... typed) {
        Session in = session(code);
        Calculation<?, ?> calculation = bench.registries().findCalculation("testing.density").orElseThrow();
        var result = CalculationRunner.run(calculation, java.util.Map.of(typed[0], typed[1], typed[2], typed[3], "water", "21 degC"));
        bench.edit("Keep density of " + trial, e -> CalculatedReadings.keep(e, part(trial, "B1"), calculation, result, bench.registries().properties(), null, in, story.balance, in
                .getAt()));
    }

    /** Four people ranked five domes without seeing which was which. */
    void ranking() {
        bench.at("2026-05-02T18:00");
        Ranking ranking = ModelFactory.eINSTANCE.createRanking();
        ranking.setCode("B1");
        ranking.setTitle("how it clicks");
        ranking.setQuestion("Which clicks most clearly?");
        ranking.setAt(Bench.moment("2026-05-02T17:30"));
        ranking.setBlind(true);
        List<Specimen> domes = List.of(story.reference, part("T02", "P1"), part("T04", "P1"), part("T05", "P1"), part("T08", "P1"));
        list(ranking, "person 1 (invented)", domes, 1, 5, 3, 4, 2);
        list(ranking, "person 2 (invented)", domes, 1, 5, 2, 4, 2);
        list(ranking, "person 3 (invented)", domes, 2, 5, 3, 4, 1);
        list(ranking, "person 4 (invented)", domes, 1, 4, 3, 5, 2);
        bench.edit("Ranking by feel", e -> Rankings.add(e, ranking));
    }

    private static void list(Ranking ranking, String who, List<Specimen> pieces, int... ranks) {
        RankList list = ModelFactory.eINSTANCE.createRankList();
        list.setWho(who);
        for (int i = 0; i < ranks.length; i++) {
            RankPlace place = ModelFactory.eINSTANCE.createRankPlace();
            place.setSpecimen(pieces.get(i));
            place.setRank(ranks[i]);
            list.getPlaces().add(place);
        }
        ranking.getLists().add(list);
    }

    /** The domes of T08 are read again at 7 and at 30 days, the last time from curves; a year is still to come. */
    void ageing() {
        bench.at("2026-05-03T13:00");
        List<Part> domes = Arrays.asList(part("T08", "P1"), part("T08", "P2"), part("T08", "P3"));
        AgeingPlan[] plan = new AgeingPlan[1];
        bench.edit("Plan ageing readings", e -> {
            plan[0] = AgeingPlans.add(e, "peak force of T08 over a year", Story.dome(Story.PEAK), domes, AgeingPlans.USUAL_DAYS, null);
            AgeingPlans.skip(e, plan[0].getPoints().getFirst(), "the workshop was closed the day after");
        });
        Session week = session("S17");
        String[] peak = { "0.80;0.81;0.81", "0.81;0.81;0.82", "0.82;0.82;0.82" };
        for (int i = 0; i < domes.size(); i++) {
            bench.read(domes.get(i), Story.dome(Story.PEAK), peak[i], week, story.forceGauge);
        }
        Session month = story.session("S19", "2026-05-18T18:00", 22.5, 46, "61;60.5;61;61;60.5");
        double[] force = { 0.817, 0.824, 0.830 };
        for (int i = 0; i < domes.size(); i++) {
            Recording recording = press(domes.get(i), month, "T08 P" + (i + 1) + ", 30 days old", MadeRecordings.press(force[i], PEAK_AT, 0.270 + 0.003 * i, LEAST_AT, 10 + i));
            keep(recording, Story.dome(Story.PEAK), List.of(Story.PEAK, Story.LEAST, Story.RATIO));
        }
    }
}
