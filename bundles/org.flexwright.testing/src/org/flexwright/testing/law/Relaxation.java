package org.flexwright.testing.law;

import java.util.List;

/** Linear viscoelastic textbook models: how stress, strain and stiffness change with time. Times in s. */
public final class Relaxation {

    /**
     * A term of a Prony series.
     *
     * @param share share of the instant modulus that relaxes, above 0
     * @param time  relaxation time in s, above 0
     */
    public record Term(double share, double time) {
    }

    private Relaxation() {
    }

    /** Share of the stress left in a Maxwell element after {@code time}. */
    public static double maxwell(double time, double relaxationTime) {
        return Math.exp(-time / relaxationTime);
    }

    /** Share of the final strain a Kelvin-Voigt element has reached after {@code time}. */
    public static double kelvinVoigt(double time, double retardationTime) {
        return -Math.expm1(-time / retardationTime);
    }

    /** Modulus after {@code time} of a Prony series; the shares sum to less than 1. The unit is that of the instant modulus. */
    public static double prony(double instantModulus, List<Term> terms, double time) {
        double lost = 0;
        for (Term term : terms) {
            lost -= term.share() * Math.expm1(-time / term.time());
        }
        return instantModulus * (1 - lost);
    }
}
