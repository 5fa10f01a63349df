package org.flexwright.workbench.pages.trial;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.BenchNote;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Moments;

/** What was put aside at the bench with one touch: said in words now that the hands are clean. */
final class SortBlock {

    private final Block block;
    private final Kit kit;
    private final PageContext context;
    private final Trial trial;
    private final Doing doing;
    private List<String> shown = List.of();

    SortBlock(Composite parent, PageContext context, Trial trial, Doing doing) {
        this.kit = context.kit();
        this.context = context;
        this.trial = trial;
        this.doing = doing;
        block = new Block(parent, kit, "Put aside at the bench", 1, Spacing.FIELDS);
    }

    void show() {
        block.setShown(!trial.getNotes().isEmpty());
        List<String> now = trial.getNotes().stream().map(n -> n.getId() + n.getSortedAt() + n.getNote() + (n.getAttachment() != null)).toList();
        if (now.equals(shown)) {
            return; // what is being typed stays
        }
        shown = now;
        Composite body = block.emptied();
        long waiting = trial.getNotes().stream().filter(n -> n.getSortedAt() == null).count();
        block.setTitle(waiting == 0 ? "Put aside at the bench" : "Put aside at the bench: " + waiting + " to sort out");
        trial.getNotes().stream().filter(n -> n.getSortedAt() == null).forEach(n -> waits(body, n));
        trial.getNotes().stream().filter(n -> n.getSortedAt() != null).forEach(n -> Prose.quiet(body, kit, "\u2713 " + words(n) + ": "
                + n.getSortedAs()).setLayoutData(Grid.wide()));
    }

    private void waits(Composite body, BenchNote note) {
        boolean writable = !context.session().readOnly();
        boolean picture = note.getKind() == NoteKind.PHOTO && note.getAttachment() == null;
        Composite line = kit.pane(body, writable ? picture ? 4 : 3 : 1, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        Prose.text(line, kit, words(note)).setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        if (!writable) {
            return;
        }
        Text as = kit.field(line, "What it turned out to be: " + words(note), SWT.SINGLE);
        as.setMessage("what it turned out to be");
        as.setLayoutData(Grid.wide());
        Runnable sort = () -> doing.edit("sort out a note of " + trial.getCode(), edit -> BenchTaps.sort(edit, note, as.getText()));
        as.addListener(SWT.DefaultSelection, event -> sort.run());
        Kit.name(kit.action(line, "Sorted out", sort), "Sorted out: " + words(note));
        if (picture) {
            Kit.name(kit.action(line, "Its picture\u2026", () -> attach(note)), "Choose the picture of: " + words(note));
        }
    }

    private void attach(BenchNote note) {
        FileDialog dialog = new FileDialog(block.getShell(), SWT.OPEN);
        dialog.setText("The picture taken then");
        dialog.setFilterNames(new String[] {"Photos"});
        dialog.setFilterExtensions(new String[] {"*.png;*.jpg;*.jpeg"});
        String chosen = dialog.open();
        if (chosen != null) {
            doing.run(() -> BenchTaps.attach(context.session(), trial, note, Path.of(chosen)));
        }
    }

    /** {@code Something odd, 4:12 after contact, Pull vacuum}. */
    private String words(BenchNote note) {
        String kind = switch (note.getKind()) {
            case NOTE -> note.getNote() == null ? "A note without words" : "Note: " + note.getNote();
            case PHOTO -> note.getAttachment() == null ? "A picture was taken" : "Picture " + note.getAttachment().getFileName();
            case ODD -> "Something odd" + (note.getNote() == null ? "" : ": " + note.getNote());
        };
        Instant contact = TimeLine.contactOf(trial);
        String when = note.getAt() == null ? "" : contact == null || note.getAt().isBefore(contact) ? ", " + Moments.minute(note.getAt())
                : ", " + TimeLine.clock(Duration.between(contact, note.getAt()).toMillis() / 60_000.0) + " after contact";
        String step = note.getStep() == null || note.getStep().getTitle() == null ? "" : ", " + note.getStep().getTitle();
        return kind + when + step;
    }
}
