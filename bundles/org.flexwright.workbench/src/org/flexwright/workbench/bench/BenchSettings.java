package org.flexwright.workbench.bench;

/** What a maker set for the bench, kept from run to run. */
interface BenchSettings {
    /** True when sounds are made. */
    boolean sound();

    /** Turns sounds on or off. */
    void setSound(boolean on);
}
