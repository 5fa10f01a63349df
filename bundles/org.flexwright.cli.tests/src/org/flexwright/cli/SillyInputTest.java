package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.calc.ResultValue;
import org.flexwright.core.field.FieldDescriptor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Every input of every calculation with what a tired person or a broken script may put there: an answer in numbers, or one sentence. */
class SillyInputTest {
    private static final List<String> WORDS = List.of("", " ", "abc", "NaN", "Infinity", "5 furlong", "3 mm g", "1,000.5", "1;;2", ";", "1;2;3|4", "0x10",
            "\u0661\u0662", "1/0", "\"", "<b>", "a=b");
    /** These may be meant, so a calculation runs with them: fewer of them, as some take long. */
    private static final List<String> NUMBERS = List.of("-1", "0", "1e300", "1e-300", "12,5");
    @TempDir
    Path folder;

    @Test
    void everyInput() throws Exception {
        Bench bench = new Bench(folder);
        int refused = 0;
        int asked = 0;
        for (Calculation<?, ?> calculation : bench.registries().calculations()) {
            for (FieldDescriptor input : CalculationRunner.inputs(calculation)) {
                for (String silly : WORDS) {
                    refused += tried(calculation, input.name(), silly) ? 1 : 0;
                }
                tried(calculation, input.name(), NUMBERS.get(asked++ % NUMBERS.size()));
            }
        }
        assertTrue(refused > 5 * asked, "most words are refused, so the test tells something: " + refused + " of " + asked * WORDS.size());
    }

    /** True when refused. */
    private static boolean tried(Calculation<?, ?> calculation, String input, String silly) {
        String what = calculation.info().id() + " " + input + "=" + silly;
        CalculationResult result = CalculationRunner.run(calculation, Map.of(input, silly));
        for (ResultValue value : result.results().values()) {
            for (Double number : new Double[] { value.low(), value.likely(), value.high() }) {
                assertTrue(number == null || Double.isFinite(number), () -> what + " gives " + value);
            }
        }
        if (result.done()) {
            return false;
        }
        assertEquals(Map.of(), result.results(), () -> what + " is refused and answered");
        for (String sentence : new String[] { result.refused().why(), result.refused().remedy() }) {
            assertFalse(sentence.isBlank(), () -> what + " says nothing");
            assertFalse(sentence.contains("Exception") || sentence.contains("java."), () -> what + ": " + sentence);
        }
        return true;
    }

    /** The same through the whole command line, one input of each calculation. */
    @Test
    void throughTheCommandLine() throws Exception {
        Bench bench = new Bench(folder);
        for (Calculation<?, ?> calculation : bench.registries().calculations()) {
            String id = calculation.info().id();
            FieldDescriptor field = CalculationRunner.inputs(calculation).get(0);
            String input = field.name();
            Bench.Run run = bench.run("calc", "run", id, "--set", input + "=5 furlong", "--json");
            assertEquals(1, run.status(), () -> id + ": " + run.out() + run.err());
            JsonObject refused = run.json().getAsJsonObject("refused");
            assertEquals(input, refused.get("input").getAsString());
            assertTrue(refused.get("why").getAsString().contains(field.label()), refused::toString);
            assertEquals(3, bench.run("calc", "run", id, "--set", input + "=@nowhere.csv").status(), id);
            assertEquals(2, bench.run("calc", "run", id, "--set", input + "x=1").status(), id);
        }
        assertEquals(List.of(), bench.logged);
    }
}
