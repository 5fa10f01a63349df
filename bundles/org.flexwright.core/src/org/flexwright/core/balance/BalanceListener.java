package org.flexwright.core.balance;

/** Hears what a balance says. Called on a thread of the balance, never on the model thread; what it throws is let go. */
public interface BalanceListener {
    /** A line was read. When lines come faster than this returns, the oldest are left out. */
    void line(BalanceLine line);

    /** The connection changed. */
    void state(BalanceConnection.State state, String sentence);
}
