package org.flexwright.materials;

import java.util.Locale;

import org.flexwright.core.Message;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    TABLE_INSIDE, TABLE_PARTLY, TABLE_BELOW, TABLE_ABOVE, TABLE_SILENT, TABLE_YES_NO, TABLE_NO_LIMIT, FAMILY_CANNOT, FAMILY_CANNOT_REMEDY;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    Message with(Object... args) {
        return Message.of(Say.class, key(), args);
    }
}
