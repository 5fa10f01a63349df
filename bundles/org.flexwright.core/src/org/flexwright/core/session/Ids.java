package org.flexwright.core.session;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.UUID;

/** Identifiers: a random UUID in 22 characters behind an underscore, so that they are names in XML. */
final class Ids {
    private Ids() {
    }

    static String fresh() {
        UUID u = UUID.randomUUID();
        byte[] b = ByteBuffer.allocate(16).putLong(u.getMostSignificantBits()).putLong(u.getLeastSignificantBits()).array();
        return "_" + Base64.getUrlEncoder().withoutPadding().encodeToString(b);
    }
}
