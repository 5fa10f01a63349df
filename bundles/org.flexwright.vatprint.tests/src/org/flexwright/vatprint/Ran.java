package org.flexwright.vatprint;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;

/** Runs a calculation in a test. */
final class Ran {
    private Ran() {
    }

    static <I extends Record, R extends Record> R done(Calculation<I, R> calculation, I inputs) {
        return ok(calculation, inputs).results();
    }

    static <I extends Record, R extends Record> List<Remark> remarks(Calculation<I, R> calculation, I inputs) {
        return ok(calculation, inputs).remarks();
    }

    static <I extends Record, R extends Record> Outcome.Refused<R> refused(Calculation<I, R> calculation, I inputs) {
        Outcome<R> outcome = calculation.run(inputs);
        assertInstanceOf(Outcome.Refused.class, outcome);
        return (Outcome.Refused<R>) outcome;
    }

    private static <I extends Record, R extends Record> Outcome.Done<R> ok(Calculation<I, R> calculation, I inputs) {
        Outcome<R> outcome = calculation.run(inputs);
        assertInstanceOf(Outcome.Done.class, outcome);
        return (Outcome.Done<R>) outcome;
    }
}
