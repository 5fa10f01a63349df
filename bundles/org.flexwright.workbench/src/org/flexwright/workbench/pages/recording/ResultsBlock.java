package org.flexwright.workbench.pages.recording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.core.recording.Recordings;
import org.flexwright.model.Reading;
import org.flexwright.model.Recording;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;

/** Figures taken from a recording, each with its band and what it rests on; those that are readings of a property can be kept as such. */
final class ResultsBlock {

    private final PageContext context;
    private final Doing doing;
    private final Block block;
    private final Composite lines;
    private final Composite work;
    private final Button keep;
    private final Button keepAll;
    private final Map<String, Button> ticks = new LinkedHashMap<>();
    private Recording recording;
    private Look look;
    private List<Found> others = List.of();
    private List<Object> shown = List.of();

    /** A recording with what was found on it. */
    record Found(Recording recording, Look look) {
    }

    ResultsBlock(Composite parent, PageContext context, Doing doing) {
        this.context = context;
        this.doing = doing;
        block = new Block(parent, context.kit(), "Results", 1, new Spacing(0, 0, 0, 2));
        lines = context.kit().pane(block.body(), 1, new Spacing(0, 0, 0, 1));
        lines.setLayoutData(Grid.wide());
        work = Flow.pane(block.body(), context.kit(), Ink.PAPER);
        work.setLayoutData(Grid.wide());
        keep = context.kit().action(work, "&Keep as readings", () -> keep(false));
        keep.setToolTipText("Makes readings of the piece out of the ticked figures; they refer to this recording");
        keepAll = context.kit().action(work, "Keep of &all shown", () -> keep(true));
        keepAll.setToolTipText("The same for every recording that is drawn");
        block.setShown(false);
    }

    void show(Recording shownRecording, Look shownLook, List<Found> alsoShown) {
        recording = shownRecording;
        look = shownLook;
        others = alsoShown;
        block.setShown(look != null);
        if (look == null) {
            return;
        }
        List<Object> now = new ArrayList<>(look.results());
        now.add(recording);
        look.results().forEach(result -> now.add(state(recording, result)));
        now.add(others.size());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Map<String, Boolean> before = new LinkedHashMap<>();
        ticks.forEach((id, tick) -> before.put(id, tick.getSelection()));
        ticks.clear();
        Kit kit = context.kit();
        for (Control old : lines.getChildren()) {
            old.dispose();
        }
        block.setTitle("Results of " + Objects.toString(recording.getCode(), "the recording"));
        for (int i = 0; i < look.results().size(); i++) {
            RecordingResult result = look.results().get(i);
            line(kit, result, before);
            boolean last = i + 1 == look.results().size() || !look.results().get(i + 1).source().equals(result.source());
            if (last) { // what several figures rest on stands once below them
                Prose.quiet(lines, kit, result.source().display()).setLayoutData(Grid.wide());
            }
        }
        if (look.results().isEmpty()) {
            Prose.quiet(lines, kit, "No figure can be taken from it yet.").setLayoutData(Grid.wide());
        }
        Grid.shown(work, !context.session().readOnly() && !ticks.isEmpty());
        keepAll.setVisible(!others.isEmpty());
    }

    private void line(Kit kit, RecordingResult result, Map<String, Boolean> before) {
        String kept = state(recording, result);
        String words = result.title() + "   " + result.words() + (result.halfWidth() == null ? "  (band not known)" : "") + (kept.isEmpty() ? "" : "   · " + kept);
        if (result.property() != null && !context.session().readOnly()) {
            Button tick = new Button(lines, SWT.CHECK | SWT.WRAP);
            tick.setText(Kit.plain(words));
            kit.dress(tick, Ink.INK, Ink.PAPER, Role.STRONG);
            Kit.name(tick, "Keep " + words);
            tick.setSelection(before.getOrDefault(result.id(), true));
            tick.setLayoutData(Grid.wide());
            ticks.put(result.id(), tick);
        } else {
            new Prose(lines, kit, words, Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        }
    }

    /** What was kept of a figure, in words; empty when nothing was. */
    private String state(Recording recording, RecordingResult result) {
        List<Reading> kept = Recordings.kept(recording, result);
        Optional<PropertyDef> property = kept.isEmpty() ? Optional.empty() : context.registries().findProperty(result.property());
        return property.map(def -> Recordings.stands(result, def, kept) ? "kept" : "kept with another value before: keep it again").orElse("");
    }

    private void keep(boolean all) {
        List<String> wanted = ticks.entrySet().stream().filter(tick -> tick.getValue().getSelection()).map(Map.Entry::getKey).toList();
        if (wanted.isEmpty()) {
            doing.say("Tick at least one figure that is to be kept as a reading.");
            return;
        }
        List<Found> from = new ArrayList<>();
        from.add(new Found(recording, look));
        if (all) {
            others.stream().filter(other -> Objects.equals(other.recording().getKind(), recording.getKind())).forEach(from::add);
        }
        boolean done = doing.edit("keep results as readings", edit -> from.forEach(found -> {
            List<RecordingResult> kept = found.look().results().stream().filter(result -> result.property() != null && wanted.contains(result.id())).toList();
            if (!kept.isEmpty()) {
                Recordings.keep(edit, found.recording(), kept, context.registries().properties(), null);
            }
        }));
        if (done) {
            context.status("Kept as readings of " + from.size() + (from.size() == 1 ? " recording" : " recordings"));
        }
    }
}
