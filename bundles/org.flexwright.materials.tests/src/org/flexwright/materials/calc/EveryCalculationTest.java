package org.flexwright.materials.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Stream;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every calculation of this bundle. */
class EveryCalculationTest {

    static List<Calculation<?, ?>> calculations() {
        return MaterialCalculations.all();
    }

    static Stream<Calculation<?, ?>> all() {
        return calculations().stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void opensWithAnExampleThatComputes(Calculation<?, ?> calculation) {
        CalculationResult result = CalculationRunner.run(calculation, Map.of());
        assertTrue(result.done(), () -> calculation.info().id() + ": " + result.refused() + " " + result.problems());
        result.results().forEach((name, value) -> assertTrue(value.likely() == null || Double.isFinite(value.likely()), name));
        result.findings().forEach(f -> assertFalse(f.message().text().isBlank()));
    }

    @ParameterizedTest
    @MethodSource("all")
    void explainsEveryInputAndResult(Calculation<?, ?> calculation) {
        for (FieldDescriptor field : Stream.concat(CalculationRunner.inputs(calculation).stream(), CalculationRunner.results(calculation).stream()).toList()) {
            assertTrue(field.help().length() > 5 && field.help().endsWith("."), () -> calculation.info().id() + "." + field.name());
        }
        assertTrue(calculation.info().summary().length() > 40 && calculation.info().validity().length() > 20);
    }

    /** Every input at the ends of its range: a result or a refusal, never a defect or a number that is none. */
    @ParameterizedTest
    @MethodSource("all")
    void staysHonestAtTheEndsOfItsRanges(Calculation<?, ?> calculation) {
        for (FieldDescriptor field : CalculationRunner.inputs(calculation)) {
            for (double end : new double[] { field.min(), field.max() }) {
                if (Double.isFinite(end)) {
                    CalculationResult result = CalculationRunner.run(calculation, Map.of(field.name(), text(end, field)));
                    if (result.done()) {
                        result.results().forEach((name, value) -> assertTrue(value.likely() == null || Double.isFinite(value.likely()),
                                () -> calculation.info().id() + " with " + field.name() + " = " + end + ": " + name));
                    } else {
                        assertFalse(result.refused().input().isEmpty(), () -> calculation.info().id() + " with " + field.name() + " = " + end + ": " + result.refused());
                    }
                }
            }
        }
    }

    private static String text(double end, FieldDescriptor field) {
        return end == Math.rint(end) ? String.valueOf((long) end) : String.valueOf(end);
    }

    @Test
    void idsAreUnique() {
        assertEquals(calculations().size(), new HashSet<>(calculations().stream().map(c -> c.info().id()).toList()).size());
    }

    @ParameterizedTest
    @EnumSource(Say.class)
    void everySentenceHasWords(Say sentence) {
        String text = sentence.with("1", "2", "3", "4", "5", "6").text();
        assertFalse(text.isBlank() || text.contains("{") || text.contains("''"), text);
    }

    @Test
    void noWordsAreLeftOver() {
        var words = ResourceBundle.getBundle(Say.class.getPackageName() + ".messages").keySet();
        assertEquals(new HashSet<>(Stream.of(Say.values()).map(Say::key).toList()), words);
    }
}
