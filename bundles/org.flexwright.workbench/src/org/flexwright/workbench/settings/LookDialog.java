package org.flexwright.workbench.settings;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbench;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type;
import org.flexwright.workbench.kit.Type.Role;

/** Size of text and theme; both show at once and go back on Cancel. */
public final class LookDialog extends Dialog {

    private static final int STEP = 10;

    private final IWorkbench workbench;
    private final Kit kit;
    private final Settings settings;
    private Settings.Theme theme;
    private Scale size;
    private Label percent;

    /** A dialog over that window. */
    public LookDialog(Shell parent, IWorkbench workbench) {
        super(parent);
        this.workbench = workbench;
        this.kit = workbench.getService(Kit.class);
        this.settings = workbench.getService(Settings.class);
        this.theme = settings.theme();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Preferences");
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = kit.pane(parent, 2, Spacing.PAGE, Ink.PANEL);
        area.setLayoutData(Grid.fill());
        kit.text(area, "Size of text").setLayoutData(Grid.natural());
        Composite line = kit.pane(area, 2, Spacing.FIELDS, Ink.PANEL);
        line.setLayoutData(Grid.wide());
        size = new Scale(line, SWT.HORIZONTAL);
        kit.dress(size, Ink.INK, Ink.PANEL, Role.BODY);
        Kit.name(size, "Size of text, per cent");
        size.setMinimum(Type.SMALLEST / STEP);
        size.setMaximum(Type.LARGEST / STEP);
        size.setPageIncrement(2);
        size.setSelection(kit.type().percent() / STEP);
        size.setLayoutData(Grid.wide());
        kit.chars(size, 36);
        percent = kit.text(line, kit.type().percent() + " %");
        percent.setLayoutData(Grid.natural());
        kit.chars(percent, 6);
        size.addListener(SWT.Selection, event -> resize(size.getSelection() * STEP));
        kit.text(area, "Theme").setLayoutData(Grid.natural());
        Composite choices = kit.pane(area, 3, Spacing.GROUPS, Ink.PANEL);
        choices.setLayoutData(Grid.wide());
        choice(choices, Settings.Theme.SYSTEM, "As the system");
        choice(choices, Settings.Theme.LIGHT, "Light");
        choice(choices, Settings.Theme.DARK, "Dark");
        return area;
    }

    private void choice(Composite parent, Settings.Theme offered, String words) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        kit.dress(button, Ink.INK, Ink.PANEL, Role.BODY);
        Kit.name(button, "Theme: " + words);
        button.setSelection(theme == offered);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                theme = offered;
                Themes.apply(workbench, offered);
            }
        });
    }

    private void resize(int wanted) {
        percent.setText(wanted + " %");
        kit.type().setPercent(wanted);
        getShell().pack();
    }

    @Override
    protected void okPressed() {
        settings.setTextPercent(kit.type().percent());
        settings.setTheme(theme);
        super.okPressed();
    }

    @Override
    protected void cancelPressed() {
        kit.type().setPercent(settings.textPercent());
        Themes.apply(workbench, settings.theme());
        super.cancelPressed();
    }

    /** Closing the window means Cancel. */
    @Override
    protected void handleShellCloseEvent() {
        cancelPressed();
    }
}
