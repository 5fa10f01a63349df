package org.flexwright.workbench.settings;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;

/** Switches the platform's style engine to our light or dark theme. The only place that touches it. */
public final class Themes {

    private static final String LIGHT = "org.flexwright.workbench.theme.light";
    private static final String DARK = "org.flexwright.workbench.theme.dark";

    private Themes() {
    }

    /** Makes the window look as set; does nothing when it does already. */
    public static void apply(IWorkbench workbench, Settings.Theme theme) {
        IThemeEngine engine = workbench.getService(IThemeEngine.class);
        if (engine == null) {
            return; // started without styles
        }
        boolean dark = theme == Settings.Theme.DARK || theme == Settings.Theme.SYSTEM && Display.isSystemDarkTheme();
        String wanted = dark ? DARK : LIGHT;
        if (engine.getActiveTheme() == null || !wanted.equals(engine.getActiveTheme().getId())) {
            engine.setTheme(wanted, true);
        }
    }
}
