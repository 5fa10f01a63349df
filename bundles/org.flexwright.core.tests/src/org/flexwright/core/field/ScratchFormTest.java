package org.flexwright.core.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class ScratchFormTest {
    private final FormModel form = FormModel.scratch(List.of(
            FieldDescriptor.quantity("wall", "Wall", QuantityKind.LENGTH, "mm").withBounds(0.1, 10, false).withDefault("1.5 mm"),
            FieldDescriptor.quantity("mass", "Mass", QuantityKind.MASS, "g").withOptional(false)));

    @Test
    void defaultsStandAndWhatIsMissingIsAProblem() {
        assertEquals("1.5 mm", form.text("wall"));
        assertEquals(1.5, form.value("wall"));
        assertEquals(Map.of("mass", "Mass must be entered."), form.problems());
        assertFalse(form.isBound("wall"));
        assertEquals("", form.origin("wall"));
    }

    @Test
    void aTextThatIsNotAcceptedStaysAndTheValueToo() {
        List<String> heard = new ArrayList<>();
        form.addListener(heard::add);
        form.type("wall", "99");
        assertEquals("99", form.text("wall"));
        assertEquals("Wall must be from 0.1 mm to 10 mm; got 99 mm.", form.problem("wall"));
        assertEquals(1.5, form.value("wall"));
        form.revert("wall");
        assertEquals("1.5 mm", form.text("wall"));
        assertEquals("", form.problem("wall"));
        form.type("wall", "1.5 mm");
        assertEquals(List.of("wall", "wall"), heard, "the same text again changes nothing");
    }

    @Test
    void leavingAFieldReadsBackWhatWasUnderstood() {
        form.type("wall", "1/16 in");
        assertEquals("1.5875 mm", form.understood("wall"));
        assertEquals("1/16 in", form.text("wall"));
        form.settle("wall");
        assertEquals("1.5875 mm", form.text("wall"));
        form.type("wall", "");
        assertNull(form.value("wall"));
    }

    @Test
    void anUnknownFieldIsADefect() {
        assertThrows(IllegalArgumentException.class, () -> form.text("colour"));
    }

    private static PropertyCatalogue catalogue(QuantityKind kind) {
        PropertyDef property = new PropertyDef("t.p", "P", kind, false, Set.of(), "", Source.commonPractice());
        return new PropertyCatalogue() {
            @Override
            public List<PropertyDef> all() {
                return List.of(property);
            }

            @Override
            public Optional<PropertyDef> find(String id) {
                return Optional.of(property).filter(p -> p.id().equals(id));
            }
        };
    }

    @Test
    void aTargetsNumbersAreInItsPropertysUnit() {
        Target target = ModelFactory.eINSTANCE.createTarget();
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty("t.p");
        target.setKey(key);
        target.setRule(TargetRule.NOMINAL);
        List<FieldDescriptor> fields = ModelFields.of(target, catalogue(QuantityKind.TEMPERATURE));
        assertEquals(List.of("rule", "nominal", "tolerance", "weight", "rejectBelow", "rejectAbove"), fields.stream().map(FieldDescriptor::name).toList());
        assertEquals(QuantityKind.TEMPERATURE, fields.get(1).kind());
        assertEquals(QuantityKind.TEMPERATURE_DIFFERENCE, fields.get(2).kind());
        target.setRule(TargetRule.AT_LEAST);
        assertEquals("low", ModelFields.of(target, catalogue(QuantityKind.FORCE)).get(1).name());
    }

    @Test
    void aMaterialsValuesAreInTheUnitOfTheSheet() {
        MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
        value.setProperty("t.p");
        value.setUnit("min");
        FieldDescriptor own = ModelFields.of(value, catalogue(QuantityKind.DURATION)).stream().filter(f -> f.name().equals("ownValue")).findFirst().orElseThrow();
        assertEquals(new FieldInput.Read(2.0, "2 min"), own.read("120 s"));
    }

    @Test
    void aFitTakesOnlyWordsThatMeanALaw() {
        List<FieldDescriptor> fields = ModelFields.of(ModelFactory.eINSTANCE.createLawFit(), catalogue(QuantityKind.NUMBER));
        FieldDescriptor law = fields.stream().filter(f -> f.name().equals("law")).findFirst().orElseThrow();
        assertEquals(new FieldInput.Read("ogden-3", "Ogden, 3 terms"), law.read("Ogden-3"));
        assertTrue(law.read("hooke") instanceof FieldInput.Rejected no && no.sentence().contains("neo-hooke"));
        FieldDescriptor weighting = fields.stream().filter(f -> f.name().equals("weighting")).findFirst().orElseThrow();
        assertEquals("per-loading", ((FieldInput.Read) weighting.read("per loading")).value());
        assertTrue(weighting.read("heavy") instanceof FieldInput.Rejected);
    }
}
