package org.flexwright.workbench.settings;

import java.util.List;

import org.eclipse.jface.resource.FontRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.flexwright.workbench.kit.Type;
import org.flexwright.workbench.kit.Type.Role;

/** Lets the platform's own dialogs follow the size of text. */
public final class PlatformFonts {

    private PlatformFonts() {
    }

    /** Sets the fonts now and after each change. */
    public static void follow(Type type) {
        set(type);
        type.addListener(() -> set(type));
    }

    private static void set(Type type) {
        FontRegistry fonts = JFaceResources.getFontRegistry();
        for (String id : List.of(JFaceResources.DEFAULT_FONT, JFaceResources.DIALOG_FONT)) {
            fonts.put(id, type.data(Role.BODY));
        }
        for (String id : List.of(JFaceResources.BANNER_FONT, JFaceResources.HEADER_FONT)) {
            fonts.put(id, type.data(Role.HEADING));
        }
    }
}
