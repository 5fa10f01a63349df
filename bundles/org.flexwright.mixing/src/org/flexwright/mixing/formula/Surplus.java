package org.flexwright.mixing.formula;

/** The two ways of allowing for what never reaches the mould. The same percentage gives different amounts. */
public enum Surplus {
    /** A share of the net amount put on top: net(1 + w). */
    ALLOWANCE {
        @Override
        public double factor(double share) {
            return 1 + share;
        }
    },
    /** The share of what is mixed that stays in cup and stirrer: net/(1 - w). */
    LOSS {
        @Override
        public double factor(double share) {
            return 1 / (1 - share);
        }
    };

    /** What the net amount is multiplied by; {@code share} 0 to below 1. */
    public abstract double factor(double share);

    /** The other way. */
    public Surplus other() {
        return this == ALLOWANCE ? LOSS : ALLOWANCE;
    }
}
