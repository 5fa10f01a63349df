package org.flexwright.curing.calc;

import org.flexwright.core.Source;

/** Words and limits several calculations share. */
final class Examples {

    static final Source TEST_RESIN = Source.derived("Constants of a made-up test resin");
    static final Source HEAT = Source.derived("Heat balance");
    static final Source EA_BAND = Source.commonPractice("Activation energy 35 to 75 kJ/mol for urethanes, 50 as likely");

    /** Activation energies of urethanes, kJ/mol. */
    static final double LOW_EA = 35;
    static final double USUAL_EA = 50;
    static final double HIGH_EA = 75;

    private Examples() {
    }
}
