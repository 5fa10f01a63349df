package org.flexwright.workbench.kit;

import java.util.List;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * One field: label, what is typed or chosen, unit, what was understood or where the value came from, and below it what is wrong. Enter
 * moves on, Escape brings back what stood there before.
 */
public final class FieldControl extends Composite {

    /** A problem is told when typing rests this long, milliseconds, or when the field is left. */
    private static final int REST = 700;
    /** Features whose words usually take more than a line. */
    private static final Set<String> LONG = Set.of("job", "text", "idea", "note", "conclusion", "reason", "limits", "condition", "summary");
    private static final int LABEL_CHARS = 22;

    private final Kit kit;
    private final FieldBinding binding;
    private final FieldDescriptor field;
    private final Label label;
    private final Control input;
    private final Label unit;
    private final Label note;
    private final Label problem;
    private final Runnable watcher = this::show;
    private final Runnable tellProblem = this::showProblem;
    private String before = "";
    private boolean showing;
    private int labelChars = LABEL_CHARS;
    private boolean stacked;

    /** A field bound to what stands behind it. */
    public FieldControl(Composite parent, Kit kit, FieldBinding binding) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.binding = binding;
        this.field = binding.field();
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.dress(this, Ink.INK, null, Role.BODY);
        kit.columns(this, 4, new Spacing(0, 0, 2, 1));
        label = kit.text(this, field.label());
        input = makeInput();
        unit = kit.quiet(this, unitWords());
        note = kit.quiet(this, "");
        problem = kit.label(this, "", Ink.STOP, Role.BODY);
        lay();
        input().addListener(SWT.FocusIn, event -> before = binding.text());
        input().addListener(SWT.FocusOut, event -> left());
        binding.addListener(watcher);
        addListener(SWT.Dispose, event -> binding.removeListener(watcher));
        Kit.name(input(), field.label() + (field.unit().isEmpty() ? "" : ", " + unitWords()));
        input().setToolTipText(help());
        show();
        showProblem();
    }

    /** F1: what the field means and what is allowed, beside it. */
    public void explain() {
        Explanation.show(input(), kit, field.label(), help().isEmpty() ? "There is nothing more to say of this field." : help());
    }

    private void left() {
        if (!isDisposed()) {
            binding.settle();
            showProblem();
        }
    }

    private String unitWords() {
        return field.type() == FieldType.QUANTITY && !field.unit().isEmpty() ? FieldTexts.unit(field) : "";
    }

    private Control makeInput() {
        return switch (field.type()) {
            case CHOICE -> combo();
            case FLAG -> flag();
            case FILE -> file();
            case LIST, TABLE -> text(SWT.MULTI | SWT.V_SCROLL);
            default -> text(tall() ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE);
        };
    }

    private boolean tall() {
        return field.type() == FieldType.TEXT && LONG.contains(field.name());
    }

    private Text text(int style) {
        Text text = kit.field(this, field.label(), style);
        text.setEditable(!binding.readOnly());
        text.addListener(SWT.Modify, event -> typed(text.getText()));
        text.addListener(SWT.Traverse, event -> traverse(event, text));
        return text;
    }

    private Combo combo() {
        Combo combo = new Combo(this, SWT.READ_ONLY | SWT.DROP_DOWN);
        kit.dress(combo, null, null, Role.BODY);
        List<String> labels = field.choices().stream().map(Choice::label).toList();
        if (field.optional()) {
            combo.add("");
        }
        labels.forEach(combo::add);
        combo.setEnabled(!binding.readOnly());
        combo.addListener(SWT.Selection, event -> typed(combo.getText()));
        return combo;
    }

    private Button flag() {
        Button button = new Button(this, SWT.CHECK);
        kit.dress(button, Ink.INK, null, Role.BODY);
        button.setEnabled(!binding.readOnly());
        button.addListener(SWT.Selection, event -> typed(button.getSelection() ? "yes" : "no"));
        return button;
    }

    private Composite file() {
        Composite pair = kit.pane(this, 2, Spacing.FIELDS);
        pair.setBackgroundMode(SWT.INHERIT_DEFAULT);
        Text text = kit.field(pair, field.label(), SWT.SINGLE);
        text.setEditable(!binding.readOnly());
        text.setLayoutData(Grid.wide());
        text.addListener(SWT.Modify, event -> typed(text.getText()));
        text.addListener(SWT.Traverse, event -> traverse(event, text));
        Button choose = kit.action(pair, "Choose…", () -> {
            String chosen = new FileDialog(getShell(), SWT.OPEN).open();
            if (chosen != null) {
                text.setText(chosen);
            }
        });
        choose.setEnabled(!binding.readOnly());
        return pair;
    }

    private void traverse(Event event, Text text) {
        if (event.detail == SWT.TRAVERSE_RETURN && (event.stateMask & SWT.MODIFIER_MASK) == 0 && field.type() != FieldType.TABLE) {
            event.doit = false;
            event.detail = SWT.TRAVERSE_NONE;
            text.traverse(SWT.TRAVERSE_TAB_NEXT);
        } else if (event.detail == SWT.TRAVERSE_ESCAPE && !binding.text().equals(before)) {
            event.doit = false;
            event.detail = SWT.TRAVERSE_NONE;
            text.setText(before);
            text.selectAll();
        } else if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true; // a field of several lines would keep the tab
        }
    }

    private void typed(String words) {
        if (showing || binding.readOnly()) {
            return;
        }
        binding.type(words);
        getDisplay().timerExec(REST, tellProblem);
    }

    private Text textInput() {
        return input instanceof Text text ? text : input instanceof Composite pair && field.type() == FieldType.FILE ? (Text) pair.getChildren()[0] : null;
    }

    private void show() {
        if (isDisposed()) {
            return;
        }
        showing = true;
        try {
            String words = binding.text();
            if (textInput() != null && !textInput().getText().equals(words)) {
                textInput().setText(words);
            } else if (input instanceof Combo combo) {
                int at = combo.indexOf(FieldTexts.choiceLabel(field, words));
                if (at < 0) {
                    combo.deselectAll();
                } else {
                    combo.select(at);
                }
            } else if (input instanceof Button button) {
                button.setSelection("yes".equals(words) || "true".equals(words));
            }
        } finally {
            showing = false;
        }
        showNote();
        if (binding.problem().isEmpty() && !problem.getText().isEmpty()) {
            showProblem();
        }
    }

    private void showNote() {
        String words = FieldTexts.echo(field, binding.text(), binding.understood());
        boolean number = field.type() == FieldType.QUANTITY || field.type() == FieldType.INTEGER;
        if (number && words.isEmpty() && !binding.text().isEmpty()) {
            words = binding.origin();
        }
        if (!words.equals(note.getText())) {
            note.setText(Kit.plain(words));
            layout();
        }
    }

    private void showProblem() {
        if (isDisposed()) {
            return;
        }
        String words = binding.problem();
        if (!words.equals(problem.getText())) {
            problem.setText(words.isEmpty() ? "" : Kit.plain("■ " + words));
            ((GridData) problem.getLayoutData()).exclude = words.isEmpty();
            problem.setVisible(!words.isEmpty());
            ScrollPane.reflowAround(this);
        }
        Kit.describe(input(), words.isEmpty() ? help() : words);
    }

    /** Help, what is allowed and the unit's alternatives, as F1 and the foot of the form show it. */
    public String help() {
        String allowed = field.allowed();
        return (field.help() + (allowed.isEmpty() ? "" : (field.help().isEmpty() ? "" : " ") + "Allowed: " + allowed + ".")).strip();
    }

    /** The field's descriptor. */
    public FieldDescriptor field() {
        return field;
    }

    /** The control a person types in. */
    public Control input() {
        return textInput() == null ? input : textInput();
    }

    /** Width of the label when it stands left, in characters, so that fields of a form stand in line. */
    public void setLabelChars(int chars) {
        if (labelChars != chars) {
            labelChars = chars;
            lay();
        }
    }

    /** True: label above the field; false: left of it. */
    public void setStacked(boolean above) {
        if (stacked != above) {
            stacked = above;
            lay();
        }
    }

    private void lay() {
        GridLayout layout = (GridLayout) getLayout();
        boolean unlabelled = field.label().isEmpty();
        layout.numColumns = stacked || unlabelled ? 3 : 4;
        boolean multi = (input.getStyle() & SWT.MULTI) != 0;
        GridData labelData = new GridData(SWT.FILL, multi && !stacked ? SWT.BEGINNING : SWT.CENTER, stacked, false, stacked ? 3 : 1, 1);
        if (multi && !stacked) {
            labelData.verticalIndent = kit.grid().steps(1);
        }
        label.setLayoutData(labelData);
        labelData.exclude = unlabelled;
        label.setVisible(!unlabelled);
        if (!stacked) {
            kit.chars(label, labelChars);
        }
        boolean words = field.type() == FieldType.TEXT || field.type() == FieldType.FILE || field.type() == FieldType.TABLE || field.type() == FieldType.LIST;
        GridData inputData = new GridData(words ? SWT.FILL : SWT.BEGINNING, SWT.CENTER, words, false);
        input.setLayoutData(inputData);
        if (field.type() == FieldType.CHOICE) {
            inputData.minimumWidth = kit.type().chars(Role.BODY, 14);
        } else if (field.type() != FieldType.FLAG) {
            kit.chars(input, words ? 28 : field.type() == FieldType.INSTANT ? 24 : 14);
        }
        if (multi) {
            inputData.heightHint = kit.type().lineHeight(Role.BODY) * (field.type() == FieldType.TABLE ? 5 : 3);
        }
        unit.setLayoutData(Grid.natural());
        note.setLayoutData(words ? Grid.natural() : Grid.wide());
        GridData problemData = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 3, 1);
        problemData.exclude = problem.getText().isEmpty();
        if (!stacked && !unlabelled) {
            problemData.horizontalIndent = kit.type().chars(Role.BODY, labelChars) + kit.grid().gap();
            problemData.horizontalSpan = 4;
        }
        problem.setLayoutData(problemData);
        requestLayout();
    }

    @Override
    public boolean setFocus() {
        return !input().isDisposed() && input().setFocus(); // also asked while the form is being disposed of
    }
}
