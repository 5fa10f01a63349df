package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.PickBox;

/** What came out of a trial, and what was learned. */
final class OutcomePage extends BlockPage {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.TRIAL__CONCLUSION, ModelPackage.Literals.TRIAL__COST,
            ModelPackage.Literals.TRIAL__HOURS).map(FieldDescriptors::of).toList();

    private final Trial trial;
    private final VerdictBlock verdicts;
    private final CausesBlock causes;
    private final PickBox<TrialState> state;
    private final Text reason;
    private final FormPane form;
    private final SortBlock sort;
    private final RunsBlock runs;
    private final FreezeBlock freeze;

    OutcomePage(Composite parent, PageContext context) {
        super(parent, context);
        trial = (Trial) context.subject();
        verdicts = new VerdictBlock(body(), context, trial);
        causes = new CausesBlock(body(), context, trial);
        Block learned = new Block(body(), kit(), "What was learned", 1, Spacing.FIELDS);
        Composite line = kit().pane(learned.body(), 4, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        kit().text(line, "The trial is");
        state = new PickBox<>(line, kit(), "State of the trial", null, OutcomePage::words);
        state.control().setEnabled(writable());
        state.control().setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        reason = kit().field(line, "Why it failed or was discarded", SWT.SINGLE);
        reason.setMessage("why, when it failed or was discarded");
        reason.setEditable(writable());
        reason.setLayoutData(Grid.wide());
        if (writable()) {
            kit().action(line, "&Set", this::setState);
        } else {
            kit().text(line, "");
        }
        FormModel model = FormModel.bound(context.session(), trial, FIELDS);
        form = new FormPane(learned.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        sort = new SortBlock(body(), context, trial, doing());
        runs = new RunsBlock(body(), context, trial, doing());
        freeze = new FreezeBlock(body(), context, trial, doing());
        show();
        settle();
    }

    private static String words(TrialState state) {
        return switch (state) {
            case PLANNED -> "○ planned";
            case MAKING -> "◔ being made";
            case MADE -> "● made";
            case FAILED -> "✕ failed";
            case DISCARDED -> "✕ discarded";
        };
    }

    private void setState() {
        TrialState wanted = state.chosen();
        doing().edit("set " + trial.getCode() + " to " + wanted.getLiteral(), edit -> Trials.status(edit, trial, wanted, reason.getText()));
    }

    private void show() {
        verdicts.show();
        causes.show();
        state.show(TrialState.VALUES, trial.getState());
        String why = trial.getStateReason() == null ? "" : trial.getStateReason();
        if (!reason.isFocusControl() && !reason.getText().equals(why)) {
            reason.setText(why);
        }
        sort.show();
        runs.show();
        freeze.show();
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }
}
