package org.flexwright.core.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PropertyKey;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HardnessTextTest {
    private static final PropertyDef SHORE = new PropertyDef("testing.shore-a", "Hardness, Shore A", QuantityKind.SHORE_A, false, Set.of(), "", Source.commonPractice());

    @ParameterizedTest
    @CsvSource(delimiter = ' ', value = {"A/15:45 SHORE_A 45 15", "A/45/15 SHORE_A 45 15", "a/3:61.5 SHORE_A 61.5 3", "00/1:60 SHORE_00 60 1", "OO/60/3s SHORE_00 60 3",
            "M/62/1 SHORE_AM 62 1", "AM/3:62 SHORE_AM 62 3", "A/15s/30 SHORE_A 30 15", "000/41/1 SHORE_000 41 1", "DO/44/1 SHORE_DO 44 1", "ShoreA/2:45 SHORE_A 45 2"})
    void bothOrdersBecomeTheSameThreeFields(String text, QuantityKind scale, double value, double seconds) {
        assertEquals(new HardnessText.Read(scale, value, seconds), HardnessText.read(text).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A/30/15", "A/15/45", "A/45/52", "A/3/1"})
    void whatMayMeanTwoThingsIsAsked(String text) {
        String sentence = assertInstanceOf(HardnessText.Unclear.class, HardnessText.read(text).orElseThrow()).sentence().text();
        String[] n = text.split("/");
        assertTrue(sentence.contains("A/" + n[2] + ":" + n[1]) && sentence.contains("A/" + n[1] + ":" + n[2]), sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A/15:145", "A/0:45", "A/4000:45", "A/15s:45s", "A/45:15s"})
    void whatCannotBeIsRefusedInOneSentence(String text) {
        assertInstanceOf(HardnessText.Unclear.class, HardnessText.read(text).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"45", "45 A", "> 45", "A", "A/45", "45/15", "F/15:45"})
    void plainNumbersAreNoPrint(String text) {
        assertTrue(HardnessText.read(text).isEmpty());
    }

    /** Whatever the ISO print, it reads back as it was meant; the ASTM print reads back the same or is asked, never another way round. */
    @Test
    void noPrintIsEverReadTheWrongWayRound() {
        Random random = new Random(48);
        for (int i = 0; i < 3000; i++) {
            int value = random.nextInt(101);
            int seconds = 1 + random.nextInt(60);
            HardnessText meant = new HardnessText.Read(QuantityKind.SHORE_A, value, seconds);
            assertEquals(meant, HardnessText.read(String.format(Locale.ROOT, "A/%d:%d", seconds, value)).orElseThrow());
            HardnessText astm = HardnessText.read(String.format(Locale.ROOT, "A/%d/%d", value, seconds)).orElseThrow();
            assertTrue(astm.equals(meant) || astm instanceof HardnessText.Unclear, value + "/" + seconds);
        }
    }

    @Test
    void theDwellMustBeThatOfTheEntry() {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        ReadingInput.Understood read = assertInstanceOf(ReadingInput.Understood.class, ReadingParser.parse(SHORE, key, "A/15:45; A/46/15; 47"));
        assertEquals(15.0, read.dwell());
        assertEquals(46.0, read.readings().get(1).value());
        assertNull(assertInstanceOf(ReadingInput.Understood.class, ReadingParser.parse(SHORE, key, "45")).dwell());
        key.setDwell(3.0);
        assertTrue(rejected(key, "A/15:45").contains("after 15 s"));
        key.setDwell(15.0);
        assertInstanceOf(ReadingInput.Understood.class, ReadingParser.parse(SHORE, key, "A/15:45"));
        assertTrue(rejected(key, "D/15:45").contains("Shore D"));
        assertTrue(rejected(key, "A/15:45;A/3:45").contains("after 15 s and after 3 s"));
        assertTrue(rejected(key, "A/30/15").contains("A/15:30"));
    }

    private static String rejected(PropertyKey key, String text) {
        return assertInstanceOf(ReadingInput.Rejected.class, ReadingParser.parse(SHORE, key, text)).sentence().text();
    }
}
