package org.flexwright.workbench.pages.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.Recordings;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.workbench.kit.ChartWindow;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;

/** The marks of a recording; the chosen one is set to a typed place, put back to where it was found, or left out with a reason. */
final class MarksBlock {

    private static final int MOST = 6;

    private final Kit kit;
    private final Doing doing;
    private final Block block;
    private final Listing<FoundMark> list;
    private final Composite work;
    private final Text place;
    private final Text reason;
    private final Button back;
    private final Button leave;
    private Recording recording;
    private List<FoundMark> marks = List.of();
    private List<Object> shown = List.of();
    private String axis = "";
    private String chosen = "";

    MarksBlock(Composite parent, PageContext context, Doing doing, Consumer<String> choosing) {
        this.kit = context.kit();
        this.doing = doing;
        block = new Block(parent, kit, "Marks", 1, Spacing.FIELDS);
        list = new Listing<>(block.body(), kit, "Marks", MOST, List.of(Column.text("Mark", 16, FoundMark::title), Column.number("At", 9, FoundMark::place), new Column<>("", 14, false, this::state, mark -> Ink.QUIET)));
        list.control().setLayoutData(Grid.wide());
        work = Flow.pane(block.body(), kit, Ink.PAPER);
        work.setLayoutData(Grid.wide());
        kit.text(work, "At");
        place = Flow.grow(kit.field(work, "Place of the mark", SWT.SINGLE), 8);
        place.addListener(SWT.DefaultSelection, event -> set());
        kit.action(work, "&Set", this::set);
        back = kit.action(work, "Put &back", this::putBack);
        back.setToolTipText("Lets it lie again where it is found");
        reason = Flow.grow(kit.field(work, "Reason to leave the mark out", SWT.SINGLE), 14);
        reason.setMessage("why it does not count");
        leave = kit.action(work, "Leave it &out", this::leaveOut);
        list.whenChosen(mark -> {
            choose(mark.name());
            choosing.accept(mark.name());
        });
        if (context.session().readOnly()) {
            Grid.shown(work, false);
        }
        block.setShown(false);
    }

    private Optional<RecordingMark> own(FoundMark mark) {
        return Recordings.mark(recording, mark.name());
    }

    private String state(FoundMark mark) {
        String why = own(mark).map(RecordingMark::getLeftOut).orElse(null);
        return why != null ? "left out: " + why : mark.byHand() ? "by hand" : mark.movable() ? "found" : "fixed";
    }

    void show(Recording shownRecording, Look look, RecordingPlot plot) {
        boolean other = recording != shownRecording;
        recording = shownRecording;
        marks = look == null ? List.of() : look.marks();
        block.setShown(!marks.isEmpty());
        if (marks.isEmpty()) {
            shown = List.of();
            return;
        }
        if (plot != null && plot.marksAcross()) {
            axis = plot.whole(2).x().title();
            block.setTitle("Marks along " + axis);
        }
        List<Object> now = new ArrayList<>(marks);
        marks.forEach(mark -> now.add(state(mark)));
        if (!now.equals(shown) || other) {
            shown = now;
            list.show(marks);
            choose(marks.stream().anyMatch(mark -> mark.name().equals(chosen)) ? chosen : marks.getFirst().name());
        }
    }

    /** Speaks of the mark with that name from now on. */
    void choose(String name) {
        FoundMark mark = marks.stream().filter(m -> m.name().equals(name)).findFirst().orElse(null);
        if (mark == null) {
            return;
        }
        chosen = name;
        list.choose(mark);
        place.setText(mark.place());
        place.setEnabled(mark.movable());
        String why = own(mark).map(RecordingMark::getLeftOut).orElse(null);
        reason.setText(Objects.toString(why, ""));
        leave.setText(why == null ? "Leave it &out" : "Let it c&ount");
        Kit.name(leave, why == null ? "Leave it out" : "Let it count");
        reason.setEnabled(mark.leavable() || why != null);
        leave.setEnabled(mark.leavable() || why != null);
        back.setEnabled(own(mark).isPresent());
        work.layout();
        ScrollPane.reflowAround(work);
    }

    private void set() {
        String typed = place.getText().strip().replace(',', '.');
        double value;
        try {
            value = Double.parseDouble(typed);
        } catch (NumberFormatException e) {
            value = Double.NaN;
        }
        if (!Double.isFinite(value)) {
            doing.say("\"" + place.getText().strip() + "\" is no place on " + (axis.isEmpty() ? "the axis" : "the axis " + axis) + ": type a number.");
            return;
        }
        double at = value;
        doing.edit("set a mark", edit -> Recordings.mark(edit, recording, chosen, at));
    }

    private void putBack() {
        doing.edit("put a mark back", edit -> Recordings.unmark(edit, recording, chosen));
    }

    private void leaveOut() {
        boolean out = Recordings.mark(recording, chosen).map(RecordingMark::getLeftOut).isPresent();
        String why = reason.getText().strip();
        if (!out && why.isEmpty()) {
            doing.say("A mark is left out for a reason; write it into the field beside. It stays in the record.");
            return;
        }
        doing.edit(out ? "let a mark count again" : "leave out a mark", edit -> Recordings.leaveOut(edit, recording, chosen, out ? null : why));
    }

    /** A place as fine as the hand could set it on the screen, and no finer. */
    static double rounded(double place, ChartWindow window, int points) {
        double step = (window.right() - window.left()) / points;
        return Double.parseDouble(FieldText.rounded(place, step / 10));
    }
}
