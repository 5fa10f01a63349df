package org.flexwright.mixing.formula;

import java.util.Objects;

/**
 * What was weighed against what was meant. Deviation is that of the grams of B to one of A: negative when B is short.
 *
 * @param planned ratio meant
 * @param gramsA  weighed, positive
 * @param gramsB  weighed, positive
 */
public record Weighed(WeightRatio planned, double gramsA, double gramsB) {

    /** The component of which there is too little. */
    public enum Short {
        NONE, A, B
    }

    public Weighed {
        Objects.requireNonNull(planned, "planned");
        if (!(gramsA > 0) || !(gramsB > 0)) {
            throw new IllegalArgumentException("Both components need a weighed amount above zero, got " + gramsA + " g and " + gramsB + " g.");
        }
    }

    /** The ratio in the cup. */
    public WeightRatio actual() {
        return WeightRatio.ofWeight(gramsA, gramsB);
    }

    /** Relative deviation of the ratio in the cup from the planned one; -0.08 is 8 % too little B. */
    public double deviation() {
        return actual().bPerA() / planned.bPerA() - 1;
    }

    /** Which component is short. */
    public Short shortOf() {
        double deviation = deviation();
        return deviation < 0 ? Short.B : deviation > 0 ? Short.A : Short.NONE;
    }

    /** Grams of the short component that mend the ratio; never negative, zero when none is short. */
    public double addition() {
        return switch (shortOf()) {
            case A -> planned.aFor(gramsB) - gramsA;
            case B -> planned.bFor(gramsA) - gramsB;
            case NONE -> 0;
        };
    }
}
