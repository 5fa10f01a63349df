package org.flexwright.workbench.pages.trial;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.find.Severity;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** Title of the step, where it stands, and what can be done with it now. */
final class StepHead implements StepPart {

    private final StepPlace place;
    private final Consumer<Step> choose;
    private final Kit kit;
    private final Composite pane;
    private final Label number;
    private final Label state;
    private final Composite actions;
    private final Composite copied;
    private final Composite against;
    private Text reason;
    private String made = "";

    StepHead(Composite parent, StepPlace place, Consumer<Step> choose) {
        this.place = place;
        this.choose = choose;
        this.kit = place.kit();
        pane = kit.pane(parent, 2, new Spacing(0, 0, 4, 2));
        pane.setLayoutData(Grid.wide());
        Composite words = kit.pane(pane, 1, Spacing.NONE);
        words.setLayoutData(Grid.wide());
        Label title = kit.heading(words, StepWords.title(place.step()));
        title.setLayoutData(Grid.wide());
        place.kind().ifPresent(kind -> title.setToolTipText(kind.summary()));
        Composite line = kit.pane(words, 2, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        number = kit.quiet(line, "");
        state = kit.label(line, "", Ink.QUIET, Role.BODY);
        state.setLayoutData(Grid.wide());
        actions = kit.pane(pane, 1, Spacing.FIELDS);
        actions.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        if (place.step().getUses().isEmpty()) { // where there is something to weigh, that comes first
            place.kind().ifPresent(kind -> Prose.quiet(pane, kit, kind.summary()).setLayoutData(Grid.wide(2)));
        }
        copied = kit.pane(pane, 2, new Spacing(3, 2, 4, 0), Ink.PANEL);
        copied.setLayoutData(Grid.wide(2));
        against = kit.pane(pane, 2, new Spacing(3, 2, 2, 2), Ink.PANEL);
        against.setLayoutData(Grid.wide(2));
        Prose.text(copied, kit, "The planned values were copied and nobody confirmed them yet.").setLayoutData(Grid.wide());
        kit.action(copied, "&Confirm as planned", this::confirm);
        Grid.shown(against, false);
        refresh();
    }

    @Override
    public void refresh() {
        Step step = place.step();
        number.setText("step " + (place.trial().getSteps().indexOf(step) + 1) + " of " + place.trial().getSteps().size());
        Mark mark = StepWords.mark(step);
        String words = StepWords.line(step, StepWords.of(step, TimeLine.of(place.trial(), Instant.now())));
        state.setText(mark.shape() + " " + words);
        kit.ink(state, mark.ink());
        Kit.name(state, "state: " + words);
        Grid.shown(copied, step.isUnconfirmed() && place.writable());
        String wanted = StepWords.state(step) + " " + place.writable();
        if (!wanted.equals(made)) {
            made = wanted;
            for (var old : actions.getChildren()) {
                old.dispose();
            }
            if (place.writable()) {
                makeActions(StepWords.state(step));
            }
            ((org.eclipse.swt.layout.GridLayout) actions.getLayout()).numColumns = Math.max(1, actions.getChildren().length);
            if (StepWords.state(step) != StepState.PLANNED) {
                Grid.shown(against, false);
            }
        }
        pane.layout(true, true);
    }

    private void makeActions(StepState now) {
        switch (now) {
            case PLANNED -> {
                action("&Start", this::start);
                action("&Done", () -> finish());
                action("S&kip", () -> set("leave out", StepState.SKIPPED));
            }
            case RUNNING -> {
                action("&Done", () -> finish());
                action("S&kip", () -> set("leave out", StepState.SKIPPED));
            }
            case DONE, SKIPPED -> {
                action("&Open again", this::reopen);
                next().ifPresent(step -> action("&Next step", () -> choose.accept(step)));
            }
        }
    }

    private Button action(String words, Runnable doIt) {
        return kit.action(actions, words, doIt);
    }

    private Optional<Step> next() {
        int at = place.trial().getSteps().indexOf(place.step()) + 1;
        return at < place.trial().getSteps().size() ? Optional.of(place.trial().getSteps().get(at)) : Optional.empty();
    }

    private void confirm() {
        place.doing().edit("confirm " + name() + " as planned", edit -> Trials.confirmAsPlanned(edit, place.step()));
    }

    private String name() {
        return StepWords.title(place.step()).toLowerCase(java.util.Locale.ROOT);
    }

    /** Starting waits for the cautions to be read; against a stop finding it asks for a reason in words. */
    private void start() {
        long open = PromptBlock.open(place).size();
        if (open > 0) {
            place.doing().say("Read the " + (open == 1 ? "caution" : open + " cautions") + " below and say that you did; then the step can start.");
            return;
        }
        List<Finding> stops = stops();
        if (stops.isEmpty()) {
            place.doing().edit("start " + name(), edit -> Trials.start(edit, place.step()));
        } else {
            ask(stops);
        }
    }

    private List<Finding> stops() {
        return place.page().projects().findings(place.trial()).stream().filter(finding -> finding.severity() == Severity.STOP)
                .filter(finding -> FindingService.overridden(finding, place.page().session().project()).isEmpty()).toList();
    }

    private void ask(List<Finding> stops) {
        for (var old : against.getChildren()) {
            old.dispose();
        }
        for (Finding stop : stops) {
            new Prose(against, kit, Mark.of(Severity.STOP).text() + "  " + stop.message().text(), Ink.STOP, Role.BODY).setLayoutData(Grid.wide(2));
        }
        Prose.text(against, kit, "To start against it, give the reason in words; it is kept with your name.").setLayoutData(Grid.wide(2));
        reason = kit.field(against, "Reason for starting against the finding", SWT.SINGLE);
        reason.setLayoutData(Grid.wide());
        kit.action(against, "Start &against it", () -> startAgainst(stops));
        Grid.shown(against, true);
        ScrollPane.reflowAround(against);
        reason.setFocus();
    }

    private void startAgainst(List<Finding> stops) {
        String words = reason.getText().strip();
        if (words.isEmpty()) {
            place.doing().say("Going against a stop needs a reason in words; write one into the field.");
            reason.setFocus();
            return;
        }
        place.doing().edit("start " + name() + " against a finding", edit -> {
            stops.forEach(stop -> FindingService.override(edit, stop, words, edit.who()));
            Trials.start(edit, place.step());
        });
    }

    private void finish() {
        place.doing().edit("finish " + name(), edit -> Trials.finish(edit, place.step()));
    }

    private void set(String what, StepState state) {
        place.doing().edit(what + " " + name(), edit -> edit.set(place.step(), ModelPackage.Literals.STEP__STATE, state));
    }

    private void reopen() {
        place.doing().edit("open " + name() + " again", edit -> open(edit, place.step()));
    }

    private static void open(Edit edit, Step step) {
        edit.set(step, ModelPackage.Literals.STEP__STATE, step.getStartedAt() == null ? StepState.PLANNED : StepState.RUNNING);
        edit.set(step, ModelPackage.Literals.STEP__ENDED_AT, null);
    }
}
