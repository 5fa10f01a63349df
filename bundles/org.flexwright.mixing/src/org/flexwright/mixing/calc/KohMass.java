package org.flexwright.mixing.calc;

import org.flexwright.core.Source;
import org.flexwright.mixing.formula.Polyurethane;

/** What a mole of potassium hydroxide is taken to weigh where a hydroxyl value is turned into equivalents. */
public enum KohMass {
    /** 56100 mg, as most guides count. */
    ROUNDED,
    /** From atomic weights. */
    EXACT;

    /** What the exact one rests on. */
    public static final Source WEIGHTS = Source.fromMemory("Atomic weights K 39.0983, O 15.9994, H 1.00794, as tabulated until about 2009");

    /** Milligrams to a mole. */
    public double milligrams() {
        return this == EXACT ? Polyurethane.KOH_EXACT : Polyurethane.KOH;
    }
}
