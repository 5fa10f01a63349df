package org.flexwright.balance;

import java.io.IOException;

/** Bytes of a device. All its methods may fail or be slow; they are called on the connection's own thread, but for {@link #close}. */
interface LineInput extends AutoCloseable {
    /** Reads what is there into the buffer: 0 when nothing came for a while, -1 at the end. */
    int read(byte[] buffer) throws IOException;

    /** Ends a read that waits, when the device allows it. */
    @Override
    void close() throws IOException;

    /** Makes the connection to a device. */
    @FunctionalInterface
    interface Opener {
        LineInput open() throws IOException;
    }
}
