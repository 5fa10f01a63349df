package org.flexwright.workbench.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TypedTest {

    private final Typed typed = new Typed();

    private void type(String text) {
        text.chars().forEach(c -> typed.add((char) c));
    }

    @Test
    void everyCharacterIsKeptInItsOrder() {
        type("  24,88 g ");
        assertEquals("24,88 g", typed.text());
        assertTrue(typed.hasPoint());
        typed.back();
        typed.back();
        assertEquals("24,88", typed.text());
        typed.clear();
        assertTrue(typed.isEmpty());
        type("\t\r\n");
        assertTrue(typed.isEmpty(), "control characters are no part of a number");
    }

    @Test
    void whatDoesNotStopIsNotTrusted() {
        type("1".repeat(Typed.MOST));
        assertFalse(typed.tooMuch());
        type("1");
        assertTrue(typed.tooMuch());
        typed.clear();
        assertFalse(typed.tooMuch());
    }

    @Test
    void aDataSheetIsTypedWithDigitsAlone() {
        assertEquals("2026-01-15 4", SheetText.of("202601154"));
        assertEquals("2026-01-15 12", SheetText.of("2026 01 15 12"));
        assertEquals("2026-01-15 4", SheetText.of("2026-01-15 4"));
        assertEquals("20260115", SheetText.of("20260115"), "without a revision it stays as it is and is refused");
    }
}
