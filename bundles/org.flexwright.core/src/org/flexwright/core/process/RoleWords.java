package org.flexwright.core.process;

import org.flexwright.core.Message;
import org.flexwright.model.PartRole;

/** What a material does, in words. */
public final class RoleWords {

    private RoleWords() {
    }

    /** The words for a role: "part A", "filler". */
    public static String of(PartRole role) {
        return Message.of(RoleWords.class, "role." + role.getLiteral()).text();
    }
}
