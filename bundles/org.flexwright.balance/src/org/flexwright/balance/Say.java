package org.flexwright.balance;

import org.flexwright.core.find.Sentence;

/** Every sentence of this package; the words stand in {@code messages.properties}. */
enum Say implements Sentence {
    OPEN, ENDED, LOST, NO_PORT, BUSY_PORT, GONE_PORT, NO_FILE, SERIAL_TITLE, FILE_TITLE
}
