package org.flexwright.core.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.field.OpenProject;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Results kept on a piece carry value, band, source and what went in, and go away with one undo. */
class CalculatedReadingsTest {
    private static final Source SOURCE = Source.derived("mass over volume");
    private static final PropertyDef DENSITY = new PropertyDef("t.density", "Density", QuantityKind.DENSITY, false, Set.of(), "", SOURCE);

    @TempDir
    Path folder;

    /** Inputs. */
    public record In(@Field(label = "Mass", kind = QuantityKind.MASS, unit = "g", def = "2 g", help = "") double mass) {
    }

    /** Results. */
    public record Out(@Field(label = "Density", kind = QuantityKind.DENSITY, unit = "kg/m3", help = "") Estimate density) {
    }

    private record Twice() implements Calculation<In, Out> {
        @Override
        public CalculationInfo info() {
            return new CalculationInfo("t.twice", "Twice", 1, "", SOURCE, "");
        }

        @Override
        public Class<In> inputType() {
            return In.class;
        }

        @Override
        public Class<Out> resultType() {
            return Out.class;
        }

        @Override
        public Outcome<Out> run(In in) {
            return Outcome.done(new Out(Estimate.plusMinus(1000 * in.mass(), 10, SOURCE)));
        }

        @Override
        public Map<String, String> readings() {
            return Map.of("density", DENSITY.id());
        }
    }

    private static PropertyCatalogue knowing(PropertyDef... defs) {
        return new PropertyCatalogue() {
            @Override
            public List<PropertyDef> all() {
                return List.of(defs);
            }

            @Override
            public Optional<PropertyDef> find(String id) {
                return all().stream().filter(d -> d.id().equals(id)).findFirst();
            }
        };
    }

    @Test
    void theResultBecomesAReadingOfThePiece() {
        try (ProjectSession project = OpenProject.in(folder)) {
            Part part = ModelFactory.eINSTANCE.createPart();
            part.setCode("B1");
            part.setPieceKind(PieceKind.WITNESS_BUTTON);
            project.execute("part", e -> e.add(project.project().getTrials().getFirst(), ModelPackage.Literals.TRIAL__PARTS, part));
            CalculationResult result = CalculationRunner.run(new Twice(), Map.of());
            project.execute("keep", e -> CalculatedReadings.keep(e, part, new Twice(), result, knowing(DENSITY), null, null, null, OpenProject.NOW));
            Measurement kept = part.getMeasurements().getFirst();
            double factor = QuantityKind.DENSITY.unit().symbol().equals("kg/m3") ? 1 : 1000;
            assertEquals(2000 / factor, kept.getReadings().getFirst().getValue(), 1e-9);
            assertEquals(PieceKind.WITNESS_BUTTON, kept.getKey().getPieceKind());
            assertEquals("Mass 2 g", kept.getNote());
            var from = Provenances.of(kept.getReadings().getFirst(), ModelPackage.Literals.READING__VALUE).orElseThrow();
            assertEquals(Origin.CALCULATED, from.getOrigin());
            assertEquals(10 / factor, from.getUncertainty(), 1e-9);
            assertTrue(from.getSource().contains("t.twice") && from.getSource().contains("mass over volume"), from.getSource());
            project.undo();
            assertTrue(part.getMeasurements().isEmpty());
            assertThrows(RefusedException.class, () -> project.execute("keep", e -> CalculatedReadings.keep(e, part, new Twice(), result, knowing(), null, null, null, OpenProject.NOW)));
            assertTrue(part.getMeasurements().isEmpty());
        }
    }
}
