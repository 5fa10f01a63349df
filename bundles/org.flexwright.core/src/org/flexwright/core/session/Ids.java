package org.flexwright.core.session;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.UUID;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Identifiers: a random UUID in 22 characters behind an underscore, so that they are names in XML. */
final class Ids {
    private Ids() {
    }

    /** Gives an object that needs an id and has none a fresh one. */
    static void give(EObject object) {
        EAttribute a = object.eClass().getEIDAttribute();
        if (a != null && a.getEAttributeType().getInstanceClass() == String.class && object.eGet(a) == null) {
            object.eSet(a, fresh());
        }
    }

    static String fresh() {
        UUID u = UUID.randomUUID();
        byte[] b = ByteBuffer.allocate(16).putLong(u.getMostSignificantBits()).putLong(u.getLeastSignificantBits()).array();
        return "_" + Base64.getUrlEncoder().withoutPadding().encodeToString(b);
    }
}
