package org.flexwright.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PropertyKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PropertiesAndReadingsTest {
    private final List<PropertyDef> properties = new TestingProperties().properties();

    @Test
    void everyPropertyIsOursOnceAndExplained() {
        assertEquals(properties.size(), properties.stream().map(PropertyDef::id).distinct().count());
        for (PropertyDef property : properties) {
            assertTrue(property.id().startsWith("testing."), property.id());
            assertFalse(property.help().isBlank(), property.id());
            assertFalse(property.source().display().isBlank(), property.id());
        }
    }

    @Test
    void conditionsThatMustAgree() {
        assertEquals(Set.of(Condition.PIECE, Condition.SPOT, Condition.SUPPORT, Condition.DWELL), find(TestingProperties.SHORE_A).comparedBy());
        assertEquals(Set.of(Condition.SPOT, Condition.SUPPORT), find(TestingProperties.PEAK_FORCE).comparedBy());
        assertTrue(find(TestingProperties.RESTS_INVERTED).yesNo());
    }

    @ParameterizedTest
    @CsvSource({"A,6,false,testing.shore-a", "A,5.9,false,testing.apparent-hardness", "A,20,true,testing.apparent-hardness", "D,6,false,testing.shore-d",
            "D,3,false,testing.apparent-hardness-d", "SHORE_00,6,false,testing.shore-00", "SHORE_00,2,false,testing.apparent-hardness-00"})
    void theReadingGoesToItsProperty(GaugeScale scale, double thickness, boolean curved, String property) {
        Readings.Chosen chosen = Readings.propertyFor(scale, thickness, curved);
        assertEquals(property, chosen.property());
        assertNotNull(find(chosen.property()));
        assertEquals(property.contains("apparent"), chosen.note() != null);
        assertEquals(scale, Readings.gaugeOf(property));
        assertEquals(property.contains("apparent") ? null : scale, Readings.scaleOf(property));
    }

    @Test
    void unknownThicknessIsKeptAndSaysWhatIsMissing() {
        Readings.Chosen chosen = Readings.propertyFor(GaugeScale.A, null, false);
        assertEquals(TestingProperties.SHORE_A, chosen.property());
        assertEquals(HardnessReading.Kind.UNKNOWN, chosen.kind());
        assertTrue(chosen.note().text().contains("6 mm"), chosen.note().text());
    }

    @Test
    void readingEntryIsSentToTheApparentHardness() {
        TestingProperties set = new TestingProperties();
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(TestingProperties.SHORE_A);
        assertEquals(TestingProperties.APPARENT_HARDNESS, set.redirect(key, 1.5).orElseThrow().property());
        assertTrue(set.redirect(key, 1.5).orElseThrow().note().text().contains("apparent hardness"));
        assertEquals(TestingProperties.SHORE_A, set.redirect(key, null).orElseThrow().property(), "kept, with a note that the thickness is missing");
        assertTrue(set.redirect(key, 6.5).isEmpty());
        key.setSpot("crown, curved");
        assertEquals(TestingProperties.APPARENT_HARDNESS, set.redirect(key, 6.5).orElseThrow().property());
        key.setProperty(TestingProperties.PEAK_FORCE);
        assertTrue(set.redirect(key, 1.5).isEmpty());
    }

    /** A reading of any scale of the table can be kept, and a thin piece goes to its own property. */
    @ParameterizedTest
    @EnumSource(GaugeScale.class)
    void everyScaleHasItsTwoProperties(GaugeScale scale) {
        assertEquals(scale, Readings.scaleOf(scale.materialProperty()));
        assertEquals(scale, Readings.gaugeOf(scale.apparentProperty()));
        assertNull(Readings.scaleOf(scale.apparentProperty()));
        assertEquals(scale.kind(), find(scale.materialProperty()).kind());
        assertEquals(scale.kind(), find(scale.apparentProperty()).kind());
        assertEquals(scale.apparentProperty(), Readings.propertyFor(scale, 1.0, false).property());
        assertEquals(scale.materialProperty(), Readings.propertyFor(scale, 6.0, false).property());
    }

    @Test
    void otherPropertiesHaveNoScale() {
        assertNull(Readings.scaleOf(TestingProperties.MASS));
        assertNull(Readings.scaleOf(null));
    }

    @Test
    void aSpotSaysItIsCurved() {
        assertTrue(Readings.curvedSpot("Crown, curved"));
        assertFalse(Readings.curvedSpot("flange"));
        assertFalse(Readings.curvedSpot(null));
    }

    @Test
    void theButtonHasRoomForItsReadings() {
        WitnessButton five = WitnessButton.proposed(GaugeScale.A, 5);
        // Five places on a ring, 6 mm apart and 12 mm from the edge.
        double ring = five.diameter() / 2 - 12;
        assertTrue(2 * ring * Math.sin(Math.PI / 5) >= 6);
        assertTrue(five.thickness() >= 6);
        assertTrue(WitnessButton.proposed(GaugeScale.A, 1).diameter() < five.diameter());
        assertEquals(6.735, five.volume(), 0.001);
    }

    private PropertyDef find(String id) {
        return properties.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }
}
