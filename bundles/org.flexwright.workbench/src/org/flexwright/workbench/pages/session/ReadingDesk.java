package org.flexwright.workbench.pages.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.view.ReadingEntry;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.kit.WordRow;

/** One big field; beside it the last five readings of all pieces, and median and spread of the piece at hand. */
final class ReadingDesk extends Composite {

    private static final int SHOWN = 5;
    private static final int NARROW = 124;
    private static final int LEFT = 64;
    private static final int RIGHT = 48;

    private final Kit kit;
    private final WordRow row;
    private final Label prompt;
    private final Text field;
    private final Label unit;
    private final Composite yesNo;
    private final Prose said;
    private final Prose hints;
    private final Prose keys;
    private final Composite left;
    private final Composite right;
    private final List<Label> last = new ArrayList<>();
    private final Label summary;
    private final Label before;
    private boolean folded;
    private ReadingEntry entry;
    private boolean taking;
    private boolean refused;
    private PropertyDef property;
    private List<String> rowWords = List.of();

    ReadingDesk(Composite parent, Kit kit) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 2, new Spacing(0, 0, 6, 4));
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        row = new WordRow(this, kit, "Pieces", Ink.PAPER);
        row.setLayoutData(Grid.wide(2));
        row.whenChosen(this::goTo);
        left = kit.pane(this, 2, new Spacing(0, 0, 2, 3));
        left.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        prompt = kit.label(left, "", Ink.INK, Role.HEADING);
        prompt.setLayoutData(Grid.wide(2));
        field = kit.field(left, "Reading", SWT.SINGLE);
        kit.dress(field, Ink.INK, Ink.FIELD, Role.BENCH);
        field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        kit.chars(field, 8);
        field.addListener(SWT.Traverse, this::traverse);
        field.addListener(SWT.KeyDown, this::key);
        field.addListener(SWT.Modify, event -> typed());
        unit = kit.figure(left, "");
        unit.setLayoutData(Grid.natural());
        yesNo = kit.pane(left, 2, Spacing.FIELDS);
        yesNo.setLayoutData(Grid.wide(2));
        answer("&Yes", "yes");
        answer("&No", "no");
        said = new Prose(left, kit, " ", Ink.STOP, Role.BODY);
        said.setLayoutData(Grid.wide(2));
        hints = new Prose(left, kit, " ", Ink.CAUTION, Role.BODY);
        hints.setLayoutData(Grid.wide(2));
        keys = Prose.quiet(left, kit, " ");
        keys.setLayoutData(Grid.wide(2));
        right = kit.pane(this, 1, new Spacing(4, 3, 0, 1), Ink.PANEL);
        right.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.quiet(right, "last readings, the newest above");
        for (int i = 0; i < SHOWN; i++) {
            Label one = kit.label(right, " ", i == 0 ? Ink.INK : Ink.QUIET, i == 0 ? Role.BENCH : Role.FIGURE);
            one.setLayoutData(Grid.wide());
            last.add(one);
        }
        kit.hairline(right);
        summary = kit.label(right, " ", Ink.INK, Role.HEADING);
        summary.setLayoutData(Grid.wide());
        kit.chars(summary, 26);
        before = kit.quiet(right, " ");
        before.setLayoutData(Grid.wide());
        addListener(SWT.Resize, event -> fold());
    }

    private void goTo(String place) {
        entry.goTo(Integer.parseInt(place));
        refresh();
        field.setFocus();
    }

    private void answer(String words, String reading) {
        Button button = kit.action(yesNo, words, () -> {
            take(reading);
            field.setFocus();
        });
        kit.dress(button, null, null, Role.FIGURE);
    }

    private void fold() {
        boolean narrow = getClientArea().width < kit.type().chars(Role.BODY, NARROW);
        GridLayout layout = (GridLayout) getLayout();
        int columns = narrow ? 1 : 2;
        if (layout.numColumns != columns || !folded) {
            folded = true;
            layout.numColumns = columns;
            ((GridData) row.getLayoutData()).horizontalSpan = columns;
            GridData data = (GridData) left.getLayoutData();
            data.grabExcessHorizontalSpace = narrow;
            data.widthHint = narrow ? SWT.DEFAULT : kit.type().chars(Role.BODY, LEFT);
            GridData beside = (GridData) right.getLayoutData();
            beside.grabExcessHorizontalSpace = narrow;
            beside.widthHint = narrow ? SWT.DEFAULT : kit.type().chars(Role.BODY, RIGHT);
            layout();
            ScrollPane.reflowAround(this);
        }
    }

    /** Goes on with an entry. */
    void show(ReadingEntry next, PropertyDef read) {
        entry = next;
        property = read;
        ((GridData) yesNo.getLayoutData()).exclude = !read.yesNo();
        yesNo.setVisible(read.yesNo());
        unit.setText(read.yesNo() ? "" : Kit.plain(read.kind().unit().display()));
        field.setText("");
        Kit.name(field, "Reading of " + read.title() + (read.yesNo() ? ", yes or no" : ", " + read.kind().unit().display()));
        keys.setWords((read.yesNo() ? "Y or N writes down at once. " : "Enter writes down. >12 for more than 12, <3 for less than 3, 48; 49 for several. ")
                + "Enter in the empty field: next piece. Backspace in the empty field takes the last one back.");
        say("");
        refresh();
    }

    /** Shows what stands in the project now. */
    void refresh() {
        if (entry == null || taking) {
            return;
        }
        showRow();
        prompt.setText(Kit.plain((entry.isControl() ? "" : property.title() + ": ") + entry.prompt()));
        List<ReadingEntry.Read> five = entry.recent().reversed();
        for (int i = 0; i < SHOWN; i++) {
            String words = i < five.size() ? five.get(i).piece() + "   " + five.get(i).text() : i == 0 ? "–" : " ";
            last.get(i).setText(Kit.plain(words));
            Kit.name(last.get(i), i < five.size() ? "reading " + (i + 1) + " from the last: " + words : "no reading");
        }
        summary.setText(Kit.plain(entry.summary().isEmpty() ? " " : entry.summary()));
        Kit.name(summary, entry.summary().isEmpty() ? "no median yet" : entry.summary());
        before.setText(Kit.plain(entry.before().isEmpty() ? " " : entry.before()));
        Kit.name(before, entry.before().isEmpty() ? "no piece before" : entry.before());
        hints.setWords(entry.hints().isEmpty() ? " " : "▲ " + String.join("\n▲ ", entry.hints()));
        layout(true, true);
        ScrollPane.reflowAround(this);
        if (!entry.hints().isEmpty() || refused) { // in a low window they would stand below its edge
            ScrollPane.revealAround(left);
        }
    }

    private void showRow() {
        List<String> words = new ArrayList<>();
        for (Specimen piece : entry.pieces()) {
            words.add((piece.getCode() == null ? "piece" : piece.getCode()) + (piece.isFailed() ? " ✕" : "  " + entry.progress(piece)));
        }
        if (!words.equals(rowWords)) {
            rowWords = words;
            row.clear();
            for (int i = 0; i < words.size(); i++) {
                row.add(String.valueOf(i), words.get(i), "Go to " + words.get(i));
            }
        }
        row.select(String.valueOf(entry.place()));
    }

    private void typed() {
        String words = field.getText().strip().toLowerCase(Locale.ROOT);
        if (refused && words.isEmpty()) {
            say(""); // what was refused is gone
        }
        if (property != null && property.yesNo() && (words.equals("y") || words.equals("n"))) {
            take(words);
        }
    }

    private void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_RETURN) {
            event.doit = false;
            if (field.getText().isBlank()) {
                entry.goTo((entry.place() + 1) % entry.pieces().size());
                say("");
                refresh();
            } else {
                take(field.getText());
            }
        }
    }

    private void key(Event event) {
        boolean undo = event.keyCode == SWT.BS || event.keyCode == 'z' && (event.stateMask & SWT.MOD1) != 0;
        if (undo && field.getText().isEmpty()) {
            event.doit = false;
            say(entry.undo());
            refresh();
        }
    }

    private void take(String words) {
        taking = true;
        String trouble = entry.type(words);
        taking = false;
        say(trouble);
        if (trouble.isEmpty()) {
            field.setText("");
        } else {
            field.selectAll();
        }
        refresh();
    }

    private void say(String sentence) {
        refused = !sentence.isEmpty();
        said.setWords(sentence.isEmpty() ? " " : "■ " + sentence);
        Kit.describe(field, sentence);
    }

    @Override
    public boolean setFocus() {
        return !field.isDisposed() && field.setFocus();
    }
}
