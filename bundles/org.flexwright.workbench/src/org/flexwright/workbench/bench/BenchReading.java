package org.flexwright.workbench.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.bench.BenchRooms;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.view.ReadingEntry;
import org.flexwright.model.Instrument;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.bench.Story.Block;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.pages.session.ReadingPlan;

/** Reading the pieces of a trial at the bench view: what was read stands very large, the control piece comes first. */
final class BenchReading {
    private static final int EACH = 5;

    private final ReadingEntry entry;
    private final PropertyDef property;

    private BenchReading(ReadingEntry entry, PropertyDef property) {
        this.entry = entry;
        this.property = property;
    }

    /** What can be read on the pieces of a trial, what the target sheet asks for and what was read before first; empty when it has no piece that did not fail. */
    static List<ReadingPlan.What> whats(ProjectSession session, Registries registries, Trial trial) {
        return sound(trial).isEmpty() ? List.of() : ReadingPlan.whats(session.project(), registries.properties());
    }

    private static List<Part> sound(Trial trial) {
        return trial.getParts().stream().filter(p -> !p.isFailed()).toList();
    }

    /** Begins to read, in the step's session or one that begins now. */
    static BenchReading begin(ProjectSession session, Registries registries, Trial trial, Step step, Instant now, ReadingPlan.What what) {
        Session[] at = {BenchRooms.session(trial, step, now)};
        if (at[0] == null || step != null && step.getSession() == null) {
            session.execute("Begin to read", edit -> at[0] = BenchRooms.use(edit, trial, step));
        }
        Project project = session.project();
        PieceKind kind = what.key().getPieceKind();
        List<Part> suiting = sound(trial).stream().filter(p -> p.getPieceKind() == kind).toList();
        Instrument gauge = ReadingPlan.likelyGauge(project, at[0], what.property());
        return new BenchReading(new ReadingEntry(session, at[0], what.property(), EcoreUtil.copy(what.key()), gauge, suiting.isEmpty() ? sound(trial) : suiting, EACH,
                registries.properties()), what.property());
    }

    /** What is to be read next. */
    String prompt() {
        return entry.prompt();
    }

    /** Unit of the number; empty for yes and no. */
    String unit() {
        return property.yesNo() ? "" : property.kind().unit().display();
    }

    boolean yesNo() {
        return property.yesNo();
    }

    boolean complete() {
        return entry.complete();
    }

    /** Writes a reading down; a sentence when it was not accepted. */
    String take(String text) {
        return entry.type(text);
    }

    /** Takes the last reading back; a sentence when there is none. */
    String undo() {
        return entry.undo();
    }

    /** Goes to the next piece. */
    void next() {
        entry.goTo((entry.place() + 1) % entry.pieces().size());
    }

    /** What stands in the story: the last reading very large, what to look at twice, median and spread, and the readings before. */
    List<Block> told() {
        List<Block> blocks = new ArrayList<>();
        List<ReadingEntry.Read> recent = entry.recent().reversed();
        if (recent.isEmpty()) {
            blocks.add(Block.text("Type what the gauge shows, then touch or press Enter. Each reading is kept at once."));
            return blocks;
        }
        blocks.add(new Block(recent.getFirst().text(), Size.ENTRY, Ink.INK, recent.getFirst().piece() + ", read last", ""));
        entry.hints().forEach(hint -> blocks.add(Block.strong("\u25b2 " + hint, Ink.CAUTION)));
        if (!entry.controlShort().isEmpty()) {
            blocks.add(Block.strong(entry.controlShort(), Ink.CAUTION));
        }
        blocks.add(Block.text(entry.summary().isEmpty() ? entry.before() : entry.summary()));
        if (recent.size() > 1) {
            blocks.add(Block.quiet("Before: " + String.join(",  ", recent.stream().skip(1).map(r -> r.piece() + " " + r.text()).toList())));
        }
        blocks.add(Block.quiet(property.title()));
        return blocks;
    }
}
