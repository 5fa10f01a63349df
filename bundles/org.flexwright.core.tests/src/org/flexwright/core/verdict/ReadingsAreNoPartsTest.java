package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** However often a part is read: it stays one part, in part values, verdicts, spreads, side by side and for a recipe. */
class ReadingsAreNoPartsTest {
    private static final int ROUNDS = 200;
    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.FORCE, Bench.INVERTED);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };

    private static Project project(Random random) {
        Project project = ModelFactory.eINSTANCE.createProject();
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.setVersion(1);
        Target force = Bench.target(Bench.FORCE, TargetRule.BETWEEN);
        force.setLow(10.0);
        force.setHigh(14.0);
        sheet.getTargets().add(force);
        sheet.getTargets().add(Bench.target(Bench.INVERTED, TargetRule.NEVER));
        project.getTargetSheets().add(sheet);
        for (int t = 0; t < 2; t++) {
            Trial trial = Bench.trial();
            trial.setId("t" + t);
            trial.setCode("T" + t);
            int parts = 1 + random.nextInt(5);
            for (int p = 0; p < parts; p++) {
                Part part = Bench.part(trial, "P" + p);
                double middle = 12 + random.nextGaussian();
                Bench.read(part, Bench.FORCE, IntStream.range(0, 1 + random.nextInt(5)).mapToDouble(i -> middle + 0.1 * random.nextInt(9)).toArray());
                Bench.yes(part, random.nextInt(4) == 0);
            }
            project.getTrials().add(trial);
        }
        return project;
    }

    /** Reads every part again, the same numbers: in the same measurement, or in others. */
    private static void again(Project project, Random random) {
        project.getTrials().forEach(trial -> trial.getParts().forEach(part -> {
            int times = 1 + 2 * random.nextInt(3);
            for (Measurement m : List.copyOf(part.getMeasurements())) {
                List<Reading> more = new ArrayList<>();
                IntStream.range(0, times).forEach(i -> more.addAll(EcoreUtil.copyAll(m.getReadings())));
                if (random.nextBoolean()) {
                    m.getReadings().addAll(more);
                } else {
                    Measurement other = EcoreUtil.copy(m);
                    other.getReadings().clear();
                    other.getReadings().addAll(more);
                    part.getMeasurements().add(other);
                }
            }
        }));
    }

    private static List<Object> said(Project project) {
        List<Object> said = new ArrayList<>();
        Comparison comparison = Comparison.of(project, PROPERTIES, route -> Optional.empty(), true);
        comparison.cells().forEach(row -> row.forEach(cell -> said.add(List.of(cell.value(), cell.word(), String.valueOf(cell.strip()), cell.judgement().n(),
                String.valueOf(cell.judgement().interval()), cell.judgement().reason().text(), cell.judgement().moreParts(), withoutAdvice(cell.judgement().notes())))));
        for (Trial trial : project.getTrials()) {
            List<PartValue> force = PartValues.of(trial, Bench.key(Bench.FORCE), Bench.FORCE);
            said.add(force.stream().map(v -> List.of(v.part(), v.low(), v.high())).toList());
            said.add(String.valueOf(PartValues.pooledSpread(List.of(force), "own")));
            said.add(RecipeGate.missing(project, trial, PROPERTIES).toString());
        }
        return said;
    }

    @Test
    void readingAPartAgainMakesNoMoreParts() {
        for (int seed = 0; seed < ROUNDS; seed++) {
            Random random = new Random(seed);
            Project project = project(random);
            List<Object> once = said(project);
            again(project, random);
            assertEquals(once, said(project), "seed " + seed);
        }
    }

    /** What would settle a verdict may well rest on how the readings scatter; the verdict may not. */
    private static List<org.flexwright.core.Message> withoutAdvice(List<org.flexwright.core.Message> notes) {
        return notes.stream().filter(note -> !note.key().startsWith("helps.")).toList();
    }
}
