package org.flexwright.workbench.settings;

import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type;

/** Size of text and theme; both show at once and go back on Cancel. */
public final class LookPage extends PreferencePage implements IWorkbenchPreferencePage {

    private static final int STEP = 10;

    private IWorkbench workbench;
    private Kit kit;
    private Settings settings;
    private Scale size;
    private Label sizeWords;
    private Settings.Theme theme;

    @Override
    public void init(IWorkbench bench) {
        this.workbench = bench;
        this.kit = bench.getService(Kit.class);
        this.settings = bench.getService(Settings.class);
        this.theme = settings.theme();
    }

    @Override
    protected Control createContents(Composite parent) {
        Composite page = kit.pane(parent, 3, Spacing.FIELDS, Ink.PANEL);
        kit.text(page, "Size of text").setLayoutData(Grid.natural());
        size = new Scale(page, SWT.HORIZONTAL);
        kit.dress(size, Ink.INK, Ink.PANEL, Type.Role.BODY);
        Kit.name(size, "Size of text, per cent");
        size.setMinimum(Type.SMALLEST / STEP);
        size.setMaximum(Type.LARGEST / STEP);
        size.setPageIncrement(2);
        size.setSelection(kit.type().percent() / STEP);
        size.setLayoutData(Grid.wide());
        sizeWords = kit.text(page, "200 %");
        size.addListener(SWT.Selection, event -> resize(size.getSelection() * STEP));
        sizeWords.setText(kit.type().percent() + " %");
        kit.text(page, "Theme").setLayoutData(Grid.natural());
        Composite choices = kit.pane(page, 3, Spacing.GROUPS, Ink.PANEL);
        choices.setLayoutData(Grid.wide(2));
        choice(choices, Settings.Theme.SYSTEM, "As the system");
        choice(choices, Settings.Theme.LIGHT, "Light");
        choice(choices, Settings.Theme.DARK, "Dark");
        return page;
    }

    private void choice(Composite parent, Settings.Theme offered, String words) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        kit.dress(button, Ink.INK, Ink.PANEL, Type.Role.BODY);
        Kit.name(button, "Theme: " + words);
        button.setSelection(theme == offered);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                theme = offered;
                Themes.apply(workbench, offered);
            }
        });
    }

    private void resize(int percent) {
        sizeWords.setText(percent + " %");
        kit.type().setPercent(percent);
    }

    @Override
    protected void performDefaults() {
        size.setSelection(100 / STEP);
        resize(100);
        super.performDefaults();
    }

    @Override
    public boolean performOk() {
        if (size != null) {
            settings.setTextPercent(size.getSelection() * STEP);
            settings.setTheme(theme);
        }
        return true;
    }

    @Override
    public boolean performCancel() {
        kit.type().setPercent(settings.textPercent());
        Themes.apply(workbench, settings.theme());
        return true;
    }
}
