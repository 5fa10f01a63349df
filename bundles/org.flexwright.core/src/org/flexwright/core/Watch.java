package org.flexwright.core;

/** Looks on while something long is done, and may end it. Called from the thread that does it. */
public interface Watch {
    /** Looks on at nothing. */
    Watch NONE = new Watch() {
        @Override
        public void done(long part, long whole) {
            // nobody looks
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** That much is done; {@code whole} is 0 when it is not known. */
    void done(long part, long whole);

    /** True when it is to end; then nothing is written. */
    boolean cancelled();

    /** Ends with {@link java.util.concurrent.CancellationException} when it was cancelled. */
    default void check() {
        if (cancelled()) {
            throw new java.util.concurrent.CancellationException();
        }
    }
}
