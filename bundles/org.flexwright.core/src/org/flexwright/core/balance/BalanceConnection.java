package org.flexwright.core.balance;

/** A balance being listened to. */
public interface BalanceConnection extends AutoCloseable {

    /** How a connection stands. */
    enum State {
        /** Trying to reach it. */
        CONNECTING,
        /** Reached. */
        OPEN,
        /** Lost, or it could not be reached; it is tried again. */
        LOST,
        /** Closed. */
        CLOSED
    }

    /** How it stands now. */
    State state();

    /** Lines left out because they came faster than they were heard. */
    long leftOut();

    /** Ends it; returns within two seconds whatever the device does. Nothing is heard afterwards. */
    @Override
    void close();
}
