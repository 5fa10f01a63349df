package org.flexwright.core.balance;

import java.util.List;

/** A way to reach balances: serial port, file. Register it as an OSGi service. */
public interface BalanceSource {

    /**
     * A balance that may be there.
     *
     * @param address what {@link BalanceSettings#place()} takes
     * @param title   words for a person
     */
    record Place(String address, String title) {
    }

    /** Stable id. */
    String id();

    /** A few words. */
    String title();

    /** Where a balance may be; empty when a person has to say. May take a moment: not to be called on the screen's thread. */
    List<Place> places();

    /** Begins to listen; returns at once. What cannot be reached is tried again until the connection is closed. */
    BalanceConnection open(BalanceSettings settings, BalanceListener listener);
}
