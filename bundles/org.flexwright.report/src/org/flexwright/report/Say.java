package org.flexwright.report;

import org.flexwright.core.Message;

/** Sentences of packs and label sheets. */
final class Say {
    private Say() {
    }

    static String it(String key, Object... args) {
        return Message.of(Say.class, key, args).text();
    }
}
