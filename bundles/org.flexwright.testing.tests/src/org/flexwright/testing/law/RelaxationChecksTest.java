package org.flexwright.testing.law;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.DoubleStream;

import org.flexwright.testing.law.Relaxation.Term;
import org.junit.jupiter.api.Test;

class RelaxationChecksTest {

    @Test
    void maxwell() {
        expect("testing/6.maxwell", Relaxation.maxwell(5, 10), "textbook, derived");
        assertEquals(1 - Relaxation.maxwell(5, 10), Relaxation.kelvinVoigt(5, 10), 1e-15);
    }

    @Test
    void prony() {
        List<Term> terms = List.of(new Term(0.2, 1), new Term(0.15, 30));
        double[] moduli = DoubleStream.of(1, 3, 15, 60, Double.POSITIVE_INFINITY).map(t -> Relaxation.prony(2, terms, t)).toArray();
        expectSeries("testing/6.prony", "textbook, derived", moduli);
    }
}
