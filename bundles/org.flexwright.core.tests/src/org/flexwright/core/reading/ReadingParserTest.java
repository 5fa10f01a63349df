package org.flexwright.core.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Censoring;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingParserTest {
    private static final PropertyDef FORCE = property("a.force", "Peak force", QuantityKind.FORCE, false);
    private static final PropertyDef SHORE = property("a.shore", "Hardness", QuantityKind.SHORE_A, false);
    private static final PropertyDef STAYS = property("a.stays", "Stays in", QuantityKind.NUMBER, true);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "0.82|0.82|NONE", "0,82 N|0.82|NONE", "820 mN|0.82|NONE", ">12 N|12|MORE_THAN", "> 12|12|MORE_THAN", "≥12 N|12|MORE_THAN",
            "more than 1 kgf|9.80665|MORE_THAN", "no snap up to 12 N|12|MORE_THAN", "None seen up to 12|12|MORE_THAN", "<0.05 N|0.05|LESS_THAN",
            "less than 50 mN|0.05|LESS_THAN", "-0.02|-0.02|NONE"})
    void numbersAndBounds(String typed, double value, Censoring censoring) {
        ParsedReading reading = one(FORCE, typed);
        assertEquals(value, reading.value(), 1e-12);
        assertEquals(censoring, reading.censoring());
        assertEquals(typed.strip(), reading.typedAs());
        assertNull(reading.yes());
    }

    @Test
    void semicolonSeparatesReadingsInTheirOrder() {
        List<ParsedReading> readings = assertInstanceOf(ReadingInput.Understood.class, ReadingParser.parse(SHORE, "61; 60,5 ;62 A;")).readings();
        assertEquals(List.of(61.0, 60.5, 62.0), readings.stream().map(ParsedReading::value).toList());
    }

    @Test
    void whatCannotBeReadAtAllIsRefusedInOneSentence() {
        PropertyDef mass = property("a.mass", "Mass", QuantityKind.MASS, false);
        assertEquals("\"-1.2 g\" is no reading of \"Mass\": 0 g or more is possible.", sentence(mass, "-1.2 g"));
        assertEquals("\"104\" is no reading of \"Hardness\": a durometer reads from 0 to 100.", sentence(SHORE, "61; 104"));
        PropertyDef share = property("a.rebound", "Rebound", QuantityKind.FRACTION, false).within(0, 100);
        assertEquals("\"120\" is no reading of \"Rebound\": from 0 to 100 % is possible.", sentence(share, "120"));
        assertEquals(-0.02, one(FORCE, "-0.02").value(), "a part that stays in pulls");
    }

    @ParameterizedTest
    @CsvSource({"yes,true", "Y,true", "TRUE,true", "no,false", "n,false"})
    void yesAndNo(String typed, boolean yes) {
        assertEquals(yes, one(STAYS, typed).yes());
        assertNull(one(STAYS, typed).value());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"4 of 5|each piece", "4 out of 5|each piece", "sometimes|yes or no", "1|yes or no"})
    void whatIsNoYesOrNo(String typed, String allowed) {
        assertTrue(sentence(STAYS, typed).contains(allowed), sentence(STAYS, typed));
        assertTrue(sentence(STAYS, typed).contains(typed), sentence(STAYS, typed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"yes|type a number", "4 of 5|each piece", "soft|does not start with a number", "12 mm|is not a force", ">|Nothing is typed"})
    void whatIsNoForce(String typed, String says) {
        assertTrue(sentence(FORCE, typed).contains(says), sentence(FORCE, typed));
    }

    @Test
    void hardnessStaysOnItsScale() {
        assertTrue(sentence(SHORE, "101").contains("0 to 100"));
        assertTrue(sentence(SHORE, "-1").contains("0 to 100"));
        assertTrue(sentence(SHORE, "40 D").contains("never converted"));
        assertEquals(100, one(SHORE, "100").value());
    }

    @Test
    void oneBadReadingRejectsTheWholeLine() {
        assertInstanceOf(ReadingInput.Rejected.class, ReadingParser.parse(SHORE, "61; x; 62"));
        assertInstanceOf(ReadingInput.Rejected.class, ReadingParser.parse(SHORE, " ; "));
    }

    @ParameterizedTest
    @CsvSource({"0.82", "> 12 N", "< 0.05 N"})
    void whatIsPrintedReadsTheSame(String typed) {
        ParsedReading first = one(FORCE, typed);
        ParsedReading again = one(FORCE, ReadingPrinter.print(FORCE, first.toReading(Instant.EPOCH)));
        assertEquals(first.value(), again.value());
        assertEquals(first.censoring(), again.censoring());
    }

    @Test
    void printsYesAndNo() {
        assertEquals("no", ReadingPrinter.print(STAYS, one(STAYS, "n").toReading(Instant.EPOCH)));
    }

    private static ParsedReading one(PropertyDef property, String typed) {
        List<ParsedReading> readings = assertInstanceOf(ReadingInput.Understood.class, ReadingParser.parse(property, typed)).readings();
        assertEquals(1, readings.size());
        return readings.get(0);
    }

    private static String sentence(PropertyDef property, String typed) {
        return assertInstanceOf(ReadingInput.Rejected.class, ReadingParser.parse(property, typed)).sentence().text();
    }

    private static PropertyDef property(String id, String title, QuantityKind kind, boolean yesNo) {
        return new PropertyDef(id, title, kind, yesNo, Set.of(), "help", Source.commonPractice());
    }
}
