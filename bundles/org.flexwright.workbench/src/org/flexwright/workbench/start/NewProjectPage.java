package org.flexwright.workbench.start;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** The one page of the new project. */
final class NewProjectPage extends WizardPage {

    private final Kit kit;
    private Text title;
    private Text job;
    private Text needs;
    private Text place;
    private Label result;

    NewProjectPage(Kit kit) {
        super("project");
        this.kit = kit;
        setTitle("What is to be made?");
        setDescription("Everything here can be changed later.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = kit.pane(parent, 3, Spacing.PANEL, Ink.PANEL);
        title = line(page, "&Title", SWT.SINGLE, 1);
        job = line(page, "The &job, in your words", SWT.MULTI | SWT.WRAP | SWT.V_SCROLL, 3);
        needs = line(page, "What it &must do, one need a line", SWT.MULTI | SWT.V_SCROLL, 4);
        label(page, "&Kept in", 1);
        place = kit.field(page, "Kept in", SWT.SINGLE);
        place.setText(System.getProperty("user.home", ""));
        place.setLayoutData(Grid.wide());
        kit.action(page, "&Choose…", this::choose);
        kit.text(page, "");
        result = kit.quiet(page, " ");
        result.setLayoutData(Grid.wide(2));
        for (Text text : List.of(title, place)) {
            text.addListener(SWT.Modify, event -> check());
        }
        setControl(page);
        setPageComplete(false);
        title.setFocus();
    }

    private void label(Composite parent, String words, int lines) {
        Label label = kit.label(parent, "", Ink.INK, Role.BODY);
        label.setText(words);
        label.setLayoutData(new GridData(SWT.BEGINNING, lines > 1 ? SWT.BEGINNING : SWT.CENTER, false, false));
    }

    private Text line(Composite page, String words, int style, int lines) {
        label(page, words, lines);
        Text text = kit.field(page, words.replace("&", ""), style);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, lines > 1, 2, 1);
        text.setLayoutData(data);
        kit.chars(text, 52);
        if (lines > 1) {
            data.heightHint = kit.type().lineHeight(Role.BODY) * lines;
            text.addListener(SWT.Traverse, NewProjectPage::leave);
        }
        return text;
    }

    private static void leave(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true; // the tab goes on, as everywhere
        }
    }

    private void choose() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setFilterPath(place.getText());
        String chosen = dialog.open();
        if (chosen != null) {
            place.setText(chosen);
        }
    }

    private void check() {
        String trouble = trouble();
        setErrorMessage(title().isEmpty() ? null : trouble);
        setPageComplete(trouble == null);
        result.setText(trouble == null ? Kit.plain("It becomes " + folder()) : " ");
    }

    private String trouble() {
        if (title().isEmpty()) {
            return "The project needs a title.";
        }
        try {
            Path folder = folder();
            if (!Files.isDirectory(folder.getParent())) {
                return "There is no folder " + folder.getParent() + "; choose one that is there.";
            }
            return Files.exists(folder) ? folder.getFileName() + " is there already; take another title or place." : null;
        } catch (InvalidPathException e) {
            return "\"" + place.getText() + "\" cannot be a folder.";
        }
    }

    String title() {
        return title.getText().strip();
    }

    String job() {
        return job.getText().strip();
    }

    List<String> needs() {
        return needs.getText().lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    /** The project's folder: made of the title in plain letters. */
    Path folder() {
        String plain = Normalizer.normalize(title(), Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return Path.of(place.getText().strip()).resolve((plain.isEmpty() ? "project" : plain) + ProjectStore.SUFFIX).toAbsolutePath();
    }
}
