package org.flexwright.core.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;

import org.flexwright.core.field.OpenProject;
import org.flexwright.core.gauge.GaugeResult.Kind;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.verdict.Bench;
import org.flexwright.core.view.Bars;
import org.flexwright.model.Censoring;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Reading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GaugeStudiesTest {
    @TempDir
    Path temp;
    private ProjectSession session;
    private GaugeStudy study;
    private Instrument gauge;

    @BeforeEach
    void open() {
        session = OpenProject.in(temp);
        study = ModelFactory.eINSTANCE.createGaugeStudy();
        study.setKey(Bench.key(Bench.HARDNESS));
        gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("hand gauge");
        gauge.setResolution(0.5);
        study.setInstrument(gauge);
        edit(edit -> {
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__INSTRUMENTS, gauge);
            GaugeStudies.add(edit, study);
        });
    }

    @Test
    void aStudyGrowsByPersonsPiecesAndReadings() {
        assertEquals("G1", study.getCode());
        edit(edit -> GaugeStudies.addPiece(edit, study, "P1"));
        edit(edit -> GaugeStudies.addPerson(edit, study, "Ana"));
        assertEquals(List.of("Ana"), GaugeTable.of(study).persons(), "the piece without a person is Ana's now");
        edit(edit -> GaugeStudies.addPerson(edit, study, "Ben"));
        edit(edit -> GaugeStudies.addPiece(edit, study, "P2"));
        assertEquals(4, study.getCells().size());
        read("p1", "ana", 40, 41);
        assertEquals(2, GaugeTable.of(study).count());
        assertEquals(4, study.getCells().size(), "upper and lower case are alike");
        edit(edit -> GaugeStudies.takeBack(edit, GaugeTable.of(study).cell("P1", "Ana").orElseThrow()));
        assertEquals(1, GaugeTable.of(study).count());
        session.undo();
        assertEquals(2, GaugeTable.of(study).count());
        assertRefused("has a piece p1 already", edit -> GaugeStudies.addPiece(edit, study, " p1 "));
        assertRefused("needs a name or initials", edit -> GaugeStudies.addPerson(edit, study, " "));
        edit(edit -> GaugeStudies.removePerson(edit, study, "Ben"));
        assertEquals(List.of("Ana"), GaugeTable.of(study).persons());
    }

    @Test
    void personsMayComeBeforePieces() {
        edit(edit -> GaugeStudies.addPerson(edit, study, "Ana"));
        edit(edit -> GaugeStudies.addPerson(edit, study, "Ben"));
        edit(edit -> GaugeStudies.addPiece(edit, study, "P1"));
        edit(edit -> GaugeStudies.addPiece(edit, study, "P2"));
        assertEquals(List.of("P1", "P2"), GaugeTable.of(study).pieces());
        assertEquals(4, study.getCells().size());
    }

    @Test
    void twoPersonsMakeAResultThatTheGaugeKeeps() {
        fill(2, 3, 1.0, 0.5);
        GaugeResult result = result();
        assertFalse(result.onePerson());
        assertTrue(result.component(Kind.PERSONS).isPresent());
        double sd = result.component(Kind.REPEATABILITY).orElseThrow().sd();
        assertTrue(result.component(Kind.REPEATABILITY).orElseThrow().interval().contains(sd));
        assertFalse(GaugeStudies.keptWithGauge(result));
        edit(edit -> GaugeStudies.keepWithGauge(edit, result));
        assertEquals(sd, gauge.getSpread(), 0.06 * sd);
        assertTrue(gauge.getStudy() == study && gauge.getSpreadFrom().contains("G1"), gauge.getSpreadFrom());
        assertTrue(GaugeStudies.keptWithGauge(result()));
        read("P1", "W1", 60);
        read("P1", "W2", 60);
        assertInstanceOf(GaugeOutcome.Refused.class, GaugeAnalysis.of(study, Bench.HARDNESS), "uneven now");
        Bars bars = GaugeViews.components(result);
        assertEquals(result.components().size(), bars.bars().size());
        assertEquals(bars.bars().size(), bars.text(20).size());
        assertTrue(GaugeViews.readings(result.table(), Bench.HARDNESS).orElseThrow().series().size() == 2);
        assertTrue(GaugeViews.sentences(result).stream().anyMatch(s -> s.contains("2 persons say little of other hands")));
    }

    @Test
    void onePersonIsRepeatabilityAloneAndMayReadUnequallyOften() {
        read("P1", "", 40, 41);
        read("P2", "", 50, 51, 52);
        read("P3", "", 60, 61);
        GaugeResult result = result();
        assertTrue(result.onePerson());
        assertTrue(result.component(Kind.PERSONS).isEmpty());
        assertEquals(Math.sqrt((0.5 + 2 + 0.5) / 4), result.component(Kind.REPEATABILITY).orElseThrow().sd(), 1e-12);
        assertEquals(4, result.errorDf());
        assertTrue(GaugeViews.sentences(result).stream().anyMatch(s -> s.contains("not known, and not zero")));
    }

    /** Four degrees of freedom, s 4.33, t 2.776: 19 of 20 within 12.0, where 2 s would be 8.7. */
    @Test
    void fewRepeatsReachFurtherThanTwoStandardDeviations() {
        read("P1", "", 20, 25);
        read("P2", "", 40, 45, 50);
        read("P3", "", 70, 75);
        assertTrue(GaugeViews.sentences(result()).get(0).contains("± 12 "), GaugeViews.sentences(result()).get(0));
    }

    @Test
    void whatIsMissingIsNamed() {
        assertSays("has no readings yet");
        read("P1", "Ana", 40, 41);
        assertSays("has one piece");
        read("P2", "Ana", 44);
        read("P1", "Ben", 40, 41);
        read("P2", "Ben", 42, 43);
        assertSays("P2 by Ana has 1, most have 2");
        read("P2", "Ana", 43);
        assertInstanceOf(GaugeResult.class, GaugeAnalysis.of(study, Bench.HARDNESS));
        Reading bound = reading(100);
        bound.setCensoring(Censoring.MORE_THAN);
        edit(edit -> {
            GaugeStudies.takeBack(edit, GaugeTable.of(study).cell("P2", "Ana").orElseThrow());
            GaugeStudies.read(edit, study, "P2", "Ana", List.of(bound));
        });
        assertSays("P2 by Ana");
        assertTrue(((GaugeOutcome.Refused) GaugeAnalysis.of(study, Bench.INVERTED)).sentence().text().contains("yes or no"));
    }

    @Test
    void readingsThatAreAllTheSameSayNothing() {
        for (String piece : List.of("P1", "P2")) {
            read(piece, "Ana", 40, 40);
        }
        assertSays("one step of the gauge (0.5 Shore A) hides what there is");
    }

    /** A gauge that repeats to the digit is not known to be exact: a step of 0.5 may hide 0.14. */
    @Test
    void theOwnSpreadIsNeverLessThanAStepHides() {
        read("P1", "Ana", 40, 40);
        read("P2", "Ana", 50, 50);
        GaugeResult result = result();
        assertEquals(0, result.component(Kind.REPEATABILITY).orElseThrow().sd());
        assertEquals(0.5 / Math.sqrt(12), result.ownSpread(), 1e-12);
        edit(edit -> GaugeStudies.keepWithGauge(edit, result));
        assertEquals(0.144, gauge.getSpread(), 1e-9);
    }

    @Test
    void withoutAGaugeThereIsNobodyToKeepIt() {
        fill(1, 2, 1, 0);
        edit(edit -> edit.set(study, ModelPackage.Literals.GAUGE_STUDY__INSTRUMENT, null));
        assertRefused("names no gauge", edit -> GaugeStudies.keepWithGauge(edit, result()));
        edit(edit -> {
            edit.set(study, ModelPackage.Literals.GAUGE_STUDY__INSTRUMENT, gauge);
            edit.set(gauge, ModelPackage.Literals.INSTRUMENT__UNIT, "kg");
        });
        assertRefused("is in kg", edit -> GaugeStudies.keepWithGauge(edit, result()));
    }

    private void fill(int persons, int repeats, double reading, double person) {
        Random random = new Random(12);
        for (int w = 1; w <= persons; w++) {
            double own = person * random.nextGaussian();
            for (int p = 1; p <= 6; p++) {
                double piece = 40 + 3 * p + own;
                read("P" + p, "W" + w, DoubleStream.generate(() -> Math.rint(2 * (piece + reading * random.nextGaussian())) / 2).limit(repeats).toArray());
            }
        }
    }

    private GaugeResult result() {
        return assertInstanceOf(GaugeResult.class, GaugeAnalysis.of(study, Bench.HARDNESS));
    }

    private void assertSays(String words) {
        String sentence = assertInstanceOf(GaugeOutcome.Refused.class, GaugeAnalysis.of(study, Bench.HARDNESS)).sentence().text();
        assertTrue(sentence.contains(words), sentence);
    }

    private void assertRefused(String words, Consumer<Edit> work) {
        String sentence = assertThrows(RefusedException.class, () -> edit(work)).getMessage();
        assertTrue(sentence.contains(words), sentence);
    }

    private void read(String piece, String who, double... values) {
        edit(edit -> GaugeStudies.read(edit, study, piece, who, DoubleStream.of(values).mapToObj(GaugeStudiesTest::reading).toList()));
    }

    private static Reading reading(double value) {
        return Bench.reading(value, Censoring.NONE);
    }

    private void edit(Consumer<Edit> work) {
        session.execute("test", work);
    }
}
