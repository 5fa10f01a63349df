package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Estimate;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Bench;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.model.Censoring;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();

    private static final PropertyCatalogue CATALOGUE = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.FORCE, Bench.HARDNESS, Bench.INVERTED);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };

    /** A route whose factor is the room temperature in a session kept as details: any class will do. */
    private record Route(String id) implements ProcessKind {
        @Override
        public String title() {
            return "Casting";
        }

        @Override
        public String summary() {
            return "";
        }

        @Override
        public List<PlannedStep> steps() {
            return List.of();
        }

        @Override
        public List<Factor> factors() {
            return List.of(new Factor("room", "room", "t.step", "roomC"), new Factor("humidity", "humidity", "t.step", "roomRh"), new Factor("none", "none", "t.other", "x"));
        }

        @Override
        public List<EstimateLine> estimate(Trial plan) {
            return List.of(new EstimateLine("x", Estimate.exact(1, org.flexwright.core.Source.commonPractice()), ""));
        }
    }

    @BeforeEach
    void targets() {
        project.getTargetSheets().add(ModelFactory.eINSTANCE.createTargetSheet());
        sheet.setVersion(2);
        project.getTargetSheets().add(sheet);
        Target force = Bench.target(Bench.FORCE, TargetRule.BETWEEN);
        force.setLow(0.7);
        force.setHigh(0.9);
        Target inverted = Bench.target(Bench.INVERTED, TargetRule.NEVER);
        Target unknown = ModelFactory.eINSTANCE.createTarget();
        unknown.setKey(Bench.key(new PropertyDef("gone.x", "", Bench.FORCE.kind(), false, Set.of(), "", Bench.FORCE.source())));
        sheet.getTargets().addAll(List.of(force, inverted, unknown));
        ReferencePart reference = ModelFactory.eINSTANCE.createReferencePart();
        reference.setId("ref");
        reference.getMeasurements().add(Bench.read(Bench.part(Bench.trial(), "x"), Bench.FORCE, 0.79, 0.8, 0.81));
        project.getReferenceParts().add(reference);
    }

    private Trial trial(String code, String route, Double room, double... forces) {
        Trial trial = Bench.parts(Bench.FORCE, forces);
        trial.setId(code);
        trial.setCode(code);
        trial.setRoute(route);
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setKind("t.step");
        Session details = ModelFactory.eINSTANCE.createSession();
        details.setRoomC(room);
        details.setRoomRh(40.0);
        step.setDetails(details);
        trial.getSteps().add(step);
        trial.getParts().forEach(p -> Bench.yes(p, false));
        project.getTrials().add(trial);
        return trial;
    }

    private Comparison compare() {
        return Comparison.of(project, CATALOGUE, id -> Map.of("cast", (ProcessKind) new Route("cast")).entrySet().stream().filter(e -> e.getKey().equals(id))
                .map(Map.Entry::getValue).findFirst(), false);
    }

    @Test
    void rowsAreTargetsOfTheNewestSheetAndTheReferenceComesFirst() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81);
        Comparison comparison = compare();
        assertEquals(2, comparison.sheetVersion());
        assertEquals(List.of("Force", "Rests inverted", "gone.x"), comparison.rows().stream().map(Comparison.Row::title).toList());
        assertEquals("0.7 … 0.9 N", comparison.rows().get(0).limits());
        assertTrue(comparison.columns().get(0).reference());
        assertEquals("0.8 N", comparison.cell(0, 0).value());
        assertEquals("measured", comparison.cell(0, 0).word());
        assertNull(comparison.rows().get(2).property());
        assertEquals("", comparison.cell(2, 1).value());
    }

    @Test
    void aCellShowsValueRoundedToItsIntervalVerdictAndStrip() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81);
        Comparison.Cell cell = compare().cell(0, 1);
        // 4.302653 * 0.01 / sqrt(3) = 0.0248
        assertEquals("0.80 ± 0.02 N", cell.value());
        assertEquals("● in", cell.word());
        Strip strip = cell.strip();
        assertEquals(0.7, strip.bandLow());
        assertEquals(0.9, strip.bandHigh());
        assertEquals(0.8, strip.reference());
        assertEquals(3, strip.dots().size());
        assertEquals(0.8 - 0.0248414, strip.low(), 1e-6);
        assertEquals(0.5, strip.scale().at(0.8), 1e-9);
        assertEquals("0 of 3, 0 … 71 %", compare().cell(1, 1).value());
        assertEquals("in 2 of 3", compare().columns().get(1).summary());
    }

    @Test
    void oneScaleServesTheWholeRowAndWildIntervalsAreCut() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81);
        trial("T2", "cast", 20.0, 0.5, 0.9);
        Comparison comparison = compare();
        assertEquals(comparison.cell(0, 1).strip().scale(), comparison.cell(0, 2).strip().scale());
        Strip wild = comparison.cell(0, 2).strip();
        assertTrue(wild.lowCut() && wild.highCut());
        assertEquals(wild.scale().low(), wild.low());
        assertEquals("0.7 N", comparison.cell(0, 2).value(), "two parts say nothing about the rounding");
        assertEquals("? cannot tell", comparison.cell(0, 2).word());
    }

    @Test
    void differingFactorsStandAboveTheirColumnAndTheRestIsFolded() {
        trial("T1", "cast", 20.0, 0.8);
        trial("T2", "cast", 25.0, 0.8);
        trial("T3", "print", 25.0, 0.8);
        Comparison comparison = compare();
        assertEquals(List.of("Casting", "print"), comparison.groups().stream().map(Comparison.Group::title).toList());
        assertEquals(List.of(new Comparison.FactorValue("room", "room", "20 °C")), comparison.columns().get(1).differing());
        assertEquals(List.of(new Comparison.FactorValue("humidity", "humidity", "40 %RH")), comparison.groups().get(0).unchanged());
        assertEquals(List.of(), comparison.columns().get(3).differing());
    }

    @Test
    void columnsAreSortedWithinTheirRouteAndHiddenAtWill() {
        trial("T1", "cast", 20.0, 0.9);
        trial("T2", "print", 20.0, 0.1);
        trial("T3", "cast", 20.0, 0.7);
        trial("T4", "cast", 20.0);
        Comparison sorted = compare().sorted(0, true);
        assertEquals(List.of("reference", "T3", "T1", "T4", "T2"), sorted.columns().stream().map(Comparison.Column::code).toList());
        assertEquals("0.7 N", sorted.cell(0, 1).value());
        assertEquals(List.of("reference", "T1", "T3", "T4", "T2"), compare().sorted(0, false).columns().stream().map(Comparison.Column::code).toList());
        Comparison left = sorted.hiding(Set.of("T2"));
        assertEquals(1, left.groups().size());
        assertEquals(4, left.columns().size());
    }

    @Test
    void whatWasNotReadFailedOrIsABoundIsSaid() {
        trial("T1", "cast", 20.0);
        Trial failed = trial("T2", "cast", 20.0);
        Bench.part(failed, "1").setFailed(true);
        Trial bound = trial("T3", "cast", 20.0, 2, 3, 4);
        bound.getParts().forEach(p -> p.getMeasurements().get(0).getReadings().get(0).setCensoring(Censoring.MORE_THAN));
        Comparison comparison = compare();
        assertEquals("– not measured", comparison.cell(0, 1).word());
        assertNull(comparison.cell(0, 1).strip());
        assertEquals("✕ failed part", comparison.cell(0, 2).word());
        assertEquals("> 2 N", comparison.cell(0, 3).value());
        assertEquals(Verdict.ABOVE, comparison.cell(0, 3).judgement().verdict());
        assertEquals(Strip.Mark.MORE_THAN, comparison.cell(0, 3).strip().dots().get(0).mark());
    }

    @Test
    void anEstimatedReferenceSaysSo() {
        ReferencePart reference = project.getReferenceParts().get(0);
        reference.getMeasurements().get(0).setKnowledge(Knowledge.ESTIMATED);
        trial("T1", "cast", 20.0, 0.8);
        assertEquals("estimated", compare().cell(0, 0).word());
        Measurement none = reference.getMeasurements().get(0);
        EcoreUtil.delete(none);
        assertEquals("", compare().cell(0, 0).value());
    }

    @Test
    void aPooledSpreadIsUsedAndNamedWhenAskedFor() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81, 0.8);
        trial("T2", "cast", 20.0, 0.8);
        assertEquals(Verdict.CANNOT_TELL, compare().cell(0, 2).judgement().verdict());
        Comparison pooled = Comparison.of(project, CATALOGUE, id -> Optional.empty(), true);
        assertEquals(Verdict.IN, pooled.cell(0, 2).judgement().verdict());
        assertTrue(pooled.cell(0, 2).judgement().notes().get(0).text().contains("the parts of T1"), pooled.cell(0, 2).judgement().notes().toString());
    }

    @Test
    void aRowIsAPlotWithBandReferenceAndRoundTicks() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81);
        trial("T2", "print", 20.0, 0.6);
        PlotModel plot = compare().plot(0).orElseThrow();
        assertEquals("Force, N", plot.y().title());
        assertEquals(List.of("T1", "T2"), plot.x().ticks().stream().map(Tick::label).toList());
        assertEquals(2, plot.series().size());
        assertEquals(0.7, plot.bands().get(0).low());
        assertEquals(0.8, plot.lines().get(0).y());
        PlotModel.Point point = plot.series().get(0).points().get(0);
        assertTrue(point.low() < point.y() && point.y() < point.high());
        PlotModel.Point alone = plot.series().get(1).points().get(0);
        assertEquals(1, alone.x());
        assertEquals(alone.low(), alone.high());
        assertTrue(plot.table().csv().startsWith("series,trial,\"Force, N\",low,high,label\n"), plot.table().csv());
        assertTrue(compare().plot(2).isEmpty());
    }

    @Test
    void whatNeverWasBelowZeroGetsNoRoomThere() {
        trial("T1", "cast", 20.0, 0.01, 0.02, 0.03);
        Comparison comparison = compare();
        assertEquals(0, comparison.cell(0, 1).strip().scale().low(), 0);
        assertEquals(0, comparison.plot(0).orElseThrow().y().min(), 0.2, "the interval itself may reach below");
        trial("T2", "cast", 20.0, -0.4, -0.4, -0.4);
        assertTrue(compare().cell(0, 1).strip().scale().low() < -0.4);
    }

    @Test
    void anEmptyProjectMakesAnEmptyComparison() {
        Comparison empty = Comparison.of(ModelFactory.eINSTANCE.createProject(), CATALOGUE, id -> Optional.empty(), false);
        assertEquals(0, empty.sheetVersion());
        assertEquals(List.of(), empty.rows());
        assertEquals(List.of(), empty.columns());
        sheet.getTargets().clear();
        trial("T1", "cast", 20.0, 0.8);
        assertEquals("", compare().columns().get(1).summary());
    }

    @Test
    void theTableReadsAloud() {
        trial("T1", "cast", 20.0, 0.79, 0.8, 0.81);
        TableModel table = compare().table();
        assertEquals(List.of("Force", "0.7 … 0.9 N", "0.8 N measured", "0.80 ± 0.02 N ● in"), table.rows().get(0));
    }
}
