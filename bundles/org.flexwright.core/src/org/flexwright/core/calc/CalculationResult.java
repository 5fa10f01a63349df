package org.flexwright.core.calc;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.find.Remark;

/**
 * What a run gave, for forms, the command line, trials and reports alike.
 *
 * @param id       id of the calculation
 * @param version  its version
 * @param inputs   every input by name, in order
 * @param results  every result by name, in order; empty when refused
 * @param findings what to know about the results
 * @param refused  why there is no result; null when there is one
 * @param problems sentences by input name for every input that was not accepted
 */
public record CalculationResult(String id, int version, Map<String, ResultInput> inputs, Map<String, ResultValue> results,
        List<Remark> findings, Refusal refused, Map<String, String> problems) {
    public CalculationResult {
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
        findings = List.copyOf(findings);
        problems = Collections.unmodifiableMap(new LinkedHashMap<>(problems));
    }

    /** True when there are results. */
    public boolean done() {
        return refused == null;
    }
}
