package org.flexwright.core.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class PropertyServiceTest {
    private static final PropertyDef TIME = new PropertyDef("x.time", "Time", QuantityKind.DURATION, false, Set.of(), "", Source.commonPractice());

    private record Fixed(Rank rank, double value) implements PropertyEstimator {
        @Override
        public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
            return Optional.of(Estimate.plusMinus(value, 1, Source.commonPractice()));
        }
    }

    private final MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
    private final Lot lot = ModelFactory.eINSTANCE.createLot();
    private final PropertyService service = new PropertyService(List.of(new Fixed(PropertyEstimator.Rank.FAMILY_RANGE, 1), new Fixed(PropertyEstimator.Rank.MODEL, 2)));

    private static MaterialValue value(Double sheet, Double own, Double spread, String unit) {
        MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
        value.setProperty("x.time");
        value.setUnit(unit);
        value.setSheetValue(sheet);
        value.setOwnValue(own);
        value.setOwnUncertainty(spread);
        return value;
    }

    private Evidence best() {
        return service.estimate(TIME, grade, lot).orElseThrow();
    }

    @Test
    void theBestEvidenceWinsAndSaysWhichItIs() {
        assertEquals(Evidence.Rank.MODEL, best().rank());
        grade.getValues().add(value(5.0, null, null, "min"));
        assertEquals(Evidence.Rank.SHEET, best().rank());
        assertEquals(300, best().estimate().likely());
        assertFalse(best().bandKnown());
        assertTrue(best().estimate().source().display().contains("no uncertainty given"));
        grade.getValues().add(value(null, 4.0, 0.5, "min"));
        assertEquals(Evidence.Rank.OWN, best().rank());
        assertEquals(210, best().estimate().low());
        assertEquals(270, best().estimate().high());
        lot.getValues().add(value(null, 3.0, null, "min"));
        assertEquals(180, best().estimate().likely());
        assertEquals(List.of(Evidence.Rank.OWN, Evidence.Rank.OWN, Evidence.Rank.SHEET, Evidence.Rank.MODEL, Evidence.Rank.FAMILY),
                service.all(TIME, grade, lot).stream().map(Evidence::rank).toList());
    }

    @Test
    void aValueInAWrongUnitIsNoEvidence() {
        grade.getValues().add(value(5.0, null, null, "mm"));
        assertEquals(Evidence.Rank.MODEL, best().rank());
    }

    @Test
    void withoutAnythingThereIsNothing() {
        assertTrue(new PropertyService(List.of()).estimate(TIME, grade, null).isEmpty());
    }
}
