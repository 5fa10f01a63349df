package org.flexwright.materials;

import org.flexwright.core.find.Sentence;

/** Every sentence of this package; the words stand in {@code messages.properties}. */
enum Say implements Sentence {
    TABLE_INSIDE, TABLE_PARTLY, TABLE_BELOW, TABLE_ABOVE, TABLE_SILENT, TABLE_YES_NO, TABLE_NO_LIMIT, FAMILY_CANNOT, FAMILY_CANNOT_REMEDY
}
