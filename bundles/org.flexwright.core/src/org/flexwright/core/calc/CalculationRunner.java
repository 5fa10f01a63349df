package org.flexwright.core.calc;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.Rows;

/** Runs calculations from typed text or values. Never throws for bad input: it refuses. */
public final class CalculationRunner {

    private CalculationRunner() {
    }

    /** Descriptors of the inputs, in order. */
    public static List<FieldDescriptor> inputs(Calculation<?, ?> calculation) {
        return FieldDescriptors.ofRecord(calculation.inputType());
    }

    /** Descriptors of the results, in order. */
    public static List<FieldDescriptor> results(Calculation<?, ?> calculation) {
        return FieldDescriptors.ofRecord(calculation.resultType());
    }

    /**
     * Runs with what a person typed.
     *
     * @param typed text by input name; an absent or empty one takes the default
     */
    public static CalculationResult run(Calculation<?, ?> calculation, Map<String, String> typed) {
        Map<String, ResultInput> inputs = new LinkedHashMap<>();
        Map<String, String> problems = new LinkedHashMap<>();
        for (FieldDescriptor field : inputs(calculation)) {
            String own = typed.getOrDefault(field.name(), "");
            boolean byDefault = own.isBlank();
            String text = byDefault ? field.def() : own;
            switch (field.read(text)) {
                case FieldInput.Read read -> inputs.put(field.name(), new ResultInput(field, read.value(), text, read.understood(), byDefault));
                case FieldInput.Rejected rejected -> {
                    inputs.put(field.name(), new ResultInput(field, null, text, "", byDefault));
                    problems.put(field.name(), rejected.sentence());
                }
            }
        }
        for (String name : typed.keySet()) {
            if (!inputs.containsKey(name)) {
                problems.put(name, words("unknownInput", calculation.info().id(), name, String.join(", ", inputs.keySet())));
            }
        }
        return finish(calculation, inputs, problems);
    }

    private static CalculationResult finish(Calculation<?, ?> calculation, Map<String, ResultInput> inputs, Map<String, String> problems) {
        if (problems.isEmpty()) {
            return compute(calculation, inputs);
        }
        String first = problems.keySet().iterator().next();
        ResultInput input = inputs.get(first);
        String allowed = input == null ? "" : input.field().allowed();
        String remedy = input == null ? words("remedyName", calculation.info().id())
                : allowed.isEmpty() ? words("remedyEnter", input.field().label()) : words("remedyRange", input.field().label(), allowed);
        return refused(calculation, inputs, new Refusal(first, problems.get(first), remedy), problems);
    }

    private static <I extends Record, R extends Record> CalculationResult compute(Calculation<I, R> calculation, Map<String, ResultInput> inputs) {
        Map<String, Object> values = new LinkedHashMap<>();
        inputs.forEach((name, input) -> values.put(name, input.value()));
        Outcome<R> outcome;
        try {
            outcome = calculation.run(RecordMaker.make(calculation.inputType(), values));
        } catch (RuntimeException e) {
            // A plugin's defect must not take the form or the command line down with it; it is shown as what it is.
            return refused(calculation, inputs, new Refusal("", words("broke", calculation.info().title(), String.valueOf(e.getMessage())),
                    words("remedyDefect", calculation.info().id())), Map.of());
        }
        return switch (outcome) {
            case Outcome.Refused<R> r -> refused(calculation, inputs, new Refusal(r.input(), r.why().text(), r.remedy().text()), Map.of());
            case Outcome.Done<R> d -> done(calculation, inputs, d);
        };
    }

    private static <R extends Record> CalculationResult done(Calculation<?, R> calculation, Map<String, ResultInput> inputs, Outcome.Done<R> outcome) {
        Map<String, ResultValue> results = new LinkedHashMap<>();
        Source source = calculation.info().source();
        for (FieldDescriptor field : results(calculation)) {
            Object value = Rows.component(outcome.results(), field.name());
            if (!ResultValues.finite(value)) {
                return refused(calculation, inputs, new Refusal("", words("noNumber", calculation.info().title(), field.label()),
                        words("remedyDefect", calculation.info().id())), Map.of());
            }
            results.put(field.name(), ResultValues.of(field, value, source));
        }
        return new CalculationResult(calculation.info().id(), calculation.info().version(), inputs, results, outcome.remarks(), null, Map.of());
    }

    private static CalculationResult refused(Calculation<?, ?> calculation, Map<String, ResultInput> inputs, Refusal why, Map<String, String> problems) {
        return new CalculationResult(calculation.info().id(), calculation.info().version(), inputs, Map.of(), List.of(), why, problems);
    }

    private static String words(String key, Object... args) {
        return Message.of(CalculationRunner.class, key, args).text();
    }

    /** The inputs as text by name, as they would be typed again. */
    public static Map<String, String> typed(CalculationResult result) {
        return result.inputs().values().stream()
                .collect(Collectors.toMap(i -> i.field().name(), ResultInput::typed, (a, b) -> a, LinkedHashMap::new));
    }
}
