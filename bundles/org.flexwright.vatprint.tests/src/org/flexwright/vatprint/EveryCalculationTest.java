package org.flexwright.vatprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every calculation of this bundle; they are found by their sources, so that none is forgotten. */
class EveryCalculationTest {
    private static final String BUNDLE = "org.flexwright.vatprint";

    static List<Calculation<?, ?>> all() throws IOException, ReflectiveOperationException {
        Path sources = Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolveSibling(BUNDLE).resolve("src")
                .resolve(BUNDLE.replace('.', '/'));
        List<Calculation<?, ?>> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(sources)) {
            for (Path file : files.filter(f -> f.toString().endsWith("Calculation.java")).sorted().toList()) {
                String name = BUNDLE + "." + file.getFileName().toString().replace(".java", "");
                found.add((Calculation<?, ?>) Class.forName(name).getConstructor().newInstance());
            }
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource("all")
    void opensWithAnExampleThatComputes(Calculation<?, ?> calculation) {
        CalculationResult result = CalculationRunner.run(calculation, Map.of());
        assertTrue(result.done(), () -> calculation.info().id() + ": " + result.refused() + " " + result.problems());
        result.results().forEach((name, value) -> assertTrue(value.likely() == null || Double.isFinite(value.likely()), name));
    }

    @ParameterizedTest
    @MethodSource("all")
    void explainsEveryInputAndResult(Calculation<?, ?> calculation) {
        for (FieldDescriptor field : Stream.concat(CalculationRunner.inputs(calculation).stream(), CalculationRunner.results(calculation).stream())
                .toList()) {
            assertTrue(field.help().length() > 5 && field.help().endsWith("."), () -> calculation.info().id() + "." + field.name());
        }
        assertTrue(calculation.info().summary().length() > 40 && calculation.info().validity().length() > 20, calculation.info().id());
    }

    /** Every input at the ends of its range: a result or a refusal that names an input, never a defect or a number that is none. */
    @ParameterizedTest
    @MethodSource("all")
    void staysHonestAtTheEndsOfItsRanges(Calculation<?, ?> calculation) {
        for (FieldDescriptor field : CalculationRunner.inputs(calculation)) {
            for (double end : new double[] { field.min(), field.max() }) {
                if (Double.isFinite(end)) {
                    String typed = end == Math.rint(end) ? String.valueOf((long) end) : String.valueOf(end);
                    CalculationResult result = CalculationRunner.run(calculation, Map.of(field.name(), typed + " " + field.unit()));
                    String where = calculation.info().id() + " with " + field.name() + " = " + end;
                    if (result.done()) {
                        result.results().forEach(
                                (name, value) -> assertTrue(value.likely() == null || Double.isFinite(value.likely()), where + ": " + name));
                        result.findings().forEach(remark -> assertFalse(remark.message().text().contains("{"), where));
                    } else {
                        assertFalse(result.refused().input().isEmpty(), where + ": " + result.refused());
                    }
                }
            }
        }
    }

    @Test
    void idsAreUnique() throws Exception {
        assertEquals(all().size(), new HashSet<>(all().stream().map(c -> c.info().id()).toList()).size());
    }
}
