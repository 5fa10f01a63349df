package org.flexwright.core.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Random;

import org.flexwright.core.balance.BalanceLine.Reading;
import org.flexwright.core.balance.BalanceLine.Refused;
import org.flexwright.core.balance.BalanceLine.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines as balances write them, and as they must not be taken. */
class BalanceLineTest {
    private static BalanceLine read(String line) {
        return BalanceLine.parse(line, "g", false);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "12.34 g|12.34", "+ 12.34 g|12.34", "- 0.05 g|-0.05", "\u22120.05 g|-0.05", "12,34g|12.34", "0012.34 g|12.34", "'   7 g  '|7", ".5 g|0.5",
            "ST,GS,+  24.88 g|24.88", "S S     21.57 g|21.57", "N +   1.89 g ST|1.89", "net 0.00 g|0", "12.34 g *|12.34" })
    void aReading(String line, double grams) {
        assertEquals(grams, assertInstanceOf(Reading.class, read(line)).grams(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "''|EMPTY", "'  \t '|EMPTY", "NaN g|NO_NUMBER", "inf g|NO_NUMBER", "ready|NO_NUMBER", "12.34 g 12.36 g|TWO_READINGS", "12.3 4.5 g|TWO_READINGS",
            "1,234.5 g|GARBLED", "1.2.3 g|GARBLED", "12.34|NO_UNIT", "12.34 kg|WRONG_UNIT", "0.44 oz|WRONG_UNIT", "12.34 N|NO_UNIT", "12.34 pcs|WRONG_UNIT", "12.34 %|WRONG_UNIT",
            "US,GS,+ 24.8 g|UNSTABLE", "S D 24.8 g|UNSTABLE", "? 24.8 g|UNSTABLE", "24.8 g ?|UNSTABLE", "OL|OVERLOAD", "ST,OL,+9999 g|OVERLOAD", "------|OVERLOAD", "1e3 g|TWO_READINGS",
            "nan 3 g|NO_NUMBER", "printer 3 g|GARBLED" })
    void noReading(String line, Why why) {
        Refused refused = assertInstanceOf(Refused.class, read(line), line);
        assertEquals(why, refused.why(), line);
        assertFalse(refused.sentence().text().isBlank());
        assertFalse(refused.sentence().text().contains("{"), refused.sentence().text());
    }

    @Test
    void aValueThatMovesIsShownAndNotTaken() {
        assertEquals(24.8, ((Refused) read("US 24.8 g")).grams());
    }

    @Test
    void whatTheSettingsSayCounts() {
        assertEquals(12.34, ((Reading) BalanceLine.parse("12.34", "g", true)).grams());
        assertEquals(1500, ((Reading) BalanceLine.parse("1.5 kg", "kg", false)).grams(), 1e-9);
        assertEquals(Why.WRONG_UNIT, ((Refused) BalanceLine.parse("12.34 kg", "g", true)).why());
        assertThrows(IllegalArgumentException.class, () -> BalanceLine.parse("12.34 g", "ml", false));
        assertThrows(IllegalArgumentException.class, () -> new BalanceSettings("serial", "COM1", 0, "g", false));
        assertThrows(IllegalArgumentException.class, () -> new BalanceSettings("serial", "COM1", 9600, "ml", false));
    }

    @Test
    void stabilityIsKept() {
        assertEquals(true, ((Reading) read("ST 1 g")).stable());
        assertEquals(null, ((Reading) read("1 g")).stable());
    }

    @Test
    void everyNumberComesBackAndNoiseNeverThrows() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            double value = Math.round((random.nextDouble() * 400 - 100) * 100) / 100.0;
            String number = String.format(Locale.ROOT, "%.2f", Math.abs(value)).replace('.', random.nextBoolean() ? ',' : '.');
            String line = (random.nextBoolean() ? "ST," : "") + (value < 0 ? "-" : random.nextBoolean() ? "+" : "") + " ".repeat(random.nextInt(4)) + number + " ".repeat(random.nextInt(3)) + "g";
            assertEquals(value, assertInstanceOf(Reading.class, read(line), line).grams(), 1e-9, line);
            StringBuilder noise = new StringBuilder();
            for (int c = random.nextInt(200); c > 0; c--) {
                noise.append((char) (random.nextInt(20) == 0 ? random.nextInt(0xFFFF) : random.nextInt(128)));
            }
            assertNotNull(read(noise.toString()));
        }
    }
}
