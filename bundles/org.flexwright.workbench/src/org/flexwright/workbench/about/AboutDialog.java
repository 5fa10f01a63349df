package org.flexwright.workbench.about;

import java.util.List;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.core.registry.Failure;
import org.flexwright.core.registry.Registries;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.project.Trouble;
import org.osgi.framework.FrameworkUtil;

/** Name, version, what the plugins bring and what did not start, where the log is. */
public final class AboutDialog extends Dialog {

    private final Kit kit;
    private final Registries registries;

    /** A dialog that says what these registries hold. */
    public AboutDialog(Shell parent, Kit kit, Registries registries) {
        super(parent);
        this.kit = kit;
        this.registries = registries;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("About Flexwright");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = kit.pane(parent, 1, Spacing.PAGE, Ink.PANEL);
        area.setLayoutData(Grid.fill());
        kit.figure(area, "Flexwright");
        line(area, "Version " + FrameworkUtil.getBundle(AboutDialog.class).getVersion() + ", Eclipse Public License 2.0", Ink.QUIET);
        line(area, "A workbench for planning, making, measuring and comparing small soft parts. Its numbers say where they come from; the"
                + " product's safety data sheet, local codes and licensed practice stand above anything it says.", Ink.INK);
        line(area, "Plugins bring " + registries.processKinds().size() + " routes, " + registries.stepKinds().size() + " kinds of steps, "
                + registries.calculations().size() + " calculations, " + registries.rules().size() + " rules and "
                + registries.properties().all().size() + " properties.", Ink.INK);
        List<Failure> failures = registries.failures();
        for (Failure failure : failures) {
            line(area, "Not started: " + failure.plugin() + ", " + failure.what() + ": " + failure.why(), Ink.CAUTION);
        }
        line(area, "Log: " + Trouble.log(), Ink.QUIET);
        return area;
    }

    private void line(Composite area, String words, Ink ink) {
        GridData wide = Grid.wide();
        wide.widthHint = kit.type().chars(Role.BODY, 64);
        new Prose(area, kit, words, ink, Role.BODY).setLayoutData(wide);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
    }
}
