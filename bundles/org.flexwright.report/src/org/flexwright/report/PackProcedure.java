package org.flexwright.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Decision;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.NoteKind;
import org.flexwright.model.PartRole;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** The procedure: one numbered step a step kind, what is meant beside what was done, gates, cautions, what was noted. */
final class PackProcedure {
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;
    private final Map<String, Integer> cautioned = new HashMap<>();

    PackProcedure(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        blocks.heading(2, Say.it("procedure")).say(Say.it("procedure.lead"), Tone.STRONG).say(Say.it("procedure.made", code()), Tone.QUIET);
        String room = room();
        blocks.say(room.isEmpty() ? "" : Say.it("procedure.room", room));
        WorkingTimes.of(source.made(), registries).ifPresent(time -> blocks.say(working(time)));
        Instant contact = TimeLine.contactOf(source.made());
        List<Step> steps = source.plan().getSteps();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            blocks.add(new Block.NumberedStep(i + 1, Objects.toString(step.getTitle(), ""), clock(step, contact), content(step, i + 1)));
        }
        Blocks weighed = new Blocks();
        TrialSection.weighings(source.made().getSteps(), weighed);
        if (!weighed.all().isEmpty()) {
            blocks.heading(3, Say.it("weighed", code()));
            weighed.all().forEach(blocks::add);
        }
    }

    private String code() {
        return String.valueOf(source.made().getCode());
    }

    private String room() {
        return String.join("; ", source.made().getSteps().stream().map(Step::getSession).filter(Objects::nonNull).distinct().filter(s -> s.getRoomC() != null || s
                .getRoomRh() != null).map(PackProcedure::room).toList());
    }

    static String room(Session session) {
        String c = session.getRoomC() == null ? "" : FieldText.digits(session.getRoomC()) + " \u00b0C";
        String rh = session.getRoomRh() == null ? "" : FieldText.digits(session.getRoomRh()) + " %RH";
        return (c + (c.isEmpty() || rh.isEmpty() ? "" : ", ") + rh).strip();
    }

    private static String working(WorkingTime time) {
        String said = Say.it("working", time.text(), time.conditions(), ends(time), time.source().display());
        return time.isCarried() ? said + " " + Say.it("working.stated", time.stated().text(), time.stated().conditions(), ends(time.stated())) : said;
    }

    private static String ends(WorkingTime time) {
        return time.ends().isEmpty() ? "" : Say.it("working.ends", time.ends());
    }

    /** When, and how long: as planned; without a plan as it was made, where the record tells the steps apart. */
    private String clock(Step step, Instant contact) {
        List<String> said = new ArrayList<>();
        if (step.getPlannedStart() != null) {
            said.add(Say.it("step.clock", TimeLine.clock(step.getPlannedStart())));
        } else if (contact != null && source.made().getSteps().stream().map(Step::getStartedAt).filter(Objects::nonNull).distinct().count() > 1) {
            source.made(step).map(Step::getStartedAt).ifPresent(at -> said.add(Say.it("step.made", TimeLine.clock(Duration.between(contact, at).toMillis() / 60_000.0))));
        }
        registries.findStepKind(step.getKind()).flatMap(kind -> kind.time(step, source.plan())).ifPresent(time -> {
            if (time.hands().low() == time.hands().high() && time.hands().likely() > 0) {
                said.add(Say.it("step.takes", TimeLine.clock(time.hands().likely())));
            }
            if (time.alone() > 0) {
                said.add(Say.it("step.alone", TimeLine.clock(time.alone())));
            }
        });
        return String.join(", ", said);
    }

    private List<Block> content(Step step, int number) {
        Blocks content = new Blocks();
        Optional<StepKind> kind = registries.findStepKind(step.getKind());
        kind.ifPresent(k -> content.say(k.summary(), Tone.QUIET));
        cautions(step, number, content);
        gate(step, GatePoint.When.BEFORE, "step.gate", content);
        lines(step, kind, content);
        if (kind.isEmpty()) {
            content.say(Say.it("step.absent", Objects.toString(step.getKind(), "")), Tone.CAUTION);
        }
        if (step.isUnconfirmed()) {
            content.say(Say.it("step.unconfirmed"), Tone.CAUTION);
        }
        mend(step, content);
        gate(step, GatePoint.When.AFTER, "step.after", content);
        content.say(step.getNote());
        noted(step, content);
        return content.all();
    }

    private void lines(Step step, Optional<StepKind> kind, Blocks content) {
        List<CardLine> lines = StepCard.lines(source.made(step).orElse(step), kind.orElse(null));
        Map<String, CardLine> made = new HashMap<>();
        lines.forEach(line -> made.putIfAbsent(line.name(), line));
        List<List<Block.Cell>> rows = new ArrayList<>();
        boolean limits = false;
        List<CardLine> planned = StepCard.lines(step, kind.orElse(null));
        for (CardLine line : planned) {
            CardLine was = made.remove(line.name());
            limits |= add(line, was == null ? line : was, rows);
        }
        for (CardLine line : lines) {
            if (made.containsKey(line.name())) {
                limits |= add(line, line, rows);
            }
        }
        if (rows.isEmpty()) {
            content.say(kind.isEmpty() ? "" : Say.it("step.empty"), Tone.QUIET);
            return;
        }
        content.add(new Block.Table(Blocks.columns(List.of(Say.it("col.what"), Say.it("col.planned"), Say.it("col.own-limit"), Say.it("col.made", code()), Say.it(
                "col.difference"), Say.it("col.yours"))), rows));
        if (limits) {
            content.say(Say.it("step.off"), Tone.QUIET);
        }
    }

    private static boolean add(CardLine planned, CardLine was, List<List<Block.Cell>> rows) {
        if (planned.planned().isEmpty() && was.actual().isEmpty()) {
            return false;
        }
        boolean limit = !planned.limit().isEmpty() && !planned.planned().isEmpty();
        rows.add(List.of(Block.Cell.of(planned.label()), Block.Cell.of(planned.planned(), Tone.STRONG), Block.Cell.of(limit ? "\u00b1 " + planned.limit() : ""), Block.Cell.of(
                was.actual()), Block.Cell.of(was.difference(), was.outside() ? Tone.CAUTION : Tone.PLAIN), Block.Cell.of("")));
        return limit;
    }

    private void mend(Step step, Blocks content) {
        Double ratio = Mixtures.of(step).plannedRatio();
        Optional<MaterialUse> a = Mixtures.brings(step, PartRole.COMPONENT_A);
        Optional<MaterialUse> b = Mixtures.brings(step, PartRole.COMPONENT_B);
        if (ratio != null && ratio > 0 && a.isPresent() && b.isPresent()) {
            double each = ratio / 100 * Mixtures.share(a.get(), PartRole.COMPONENT_A) / Mixtures.share(b.get(), PartRole.COMPONENT_B);
            content.say(Say.it("step.mend", added(a.get()), FieldText.digits(each), added(b.get()), FieldText.digits(1 / each)));
        }
    }

    private static String added(MaterialUse use) {
        return use.getPremix() == null ? RoleWords.of(use.getRole()) : Say.it("step.mend.blend", Objects.toString(use.getPremix().getCode(), ""));
    }

    private void cautions(Step step, int number, Blocks content) {
        List<String> fresh = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (HazardPrompt prompt : registries.prompts(step, source.plan())) {
            Integer first = cautioned.putIfAbsent(prompt.id(), number);
            if (first == null) {
                if (!fresh.contains(prompt.controls().text())) {
                    fresh.add(prompt.controls().text());
                }
            } else if (!before.contains(first.toString())) {
                before.add(first.toString());
            }
        }
        content.say(fresh.isEmpty() ? "" : Say.it("step.caution", String.join(" ", fresh)), Tone.CAUTION);
        if (!before.isEmpty()) {
            content.say(Say.it("step.cautions", String.join(", ", before)), Tone.CAUTION);
        }
    }

    private void gate(Step step, GatePoint.When when, String key, Blocks content) {
        List<GatePoint> points = registries.findStepKind(step.getKind()).map(k -> k.gate(step, source.plan(), source.at())).orElse(List.of()).stream().filter(p -> p
                .when() == when).toList();
        if (!points.isEmpty()) {
            content.say(Say.it(key), Tone.STRONG);
            content.items(points.stream().map(p -> p.title() + " [" + p.source().display() + "]").toList());
        }
    }

    private void noted(Step step, Blocks content) {
        Optional<Step> made = source.made(step);
        if (made.isEmpty()) {
            return;
        }
        Trial trial = source.made();
        trial.getDecisions().stream().filter(d -> d.getStep() == made.get()).forEach(d -> decided(d, content));
        trial.getNotes().stream().filter(n -> n.getStep() == made.get() && n.getNote() != null && !n.getNote().isBlank()).forEach(n -> {
            String words = n.getSortedAs() == null ? n.getNote() : Say.it("step.sorted", n.getNote(), n.getSortedAs());
            content.say(Say.it(n.getKind() == NoteKind.ODD ? "step.odd" : "step.note", code(), words));
        });
        String note = made.get().getNote();
        if (made.get() != step && note != null && !note.equals(step.getNote())) {
            content.say(note.isBlank() ? "" : Say.it("step.note", code(), note));
        }
    }

    private void decided(Decision decision, Blocks content) {
        String who = decision.getWho() == null ? "" : Say.it("step.decided.by", decision.getWho());
        String why = decision.getReason() == null ? "" : Say.it("step.decided.why", decision.getReason());
        content.say(Say.it("step.decided", code(), Names.word(decision.getWord()), who, why));
        if (!decision.getOpen().isEmpty()) {
            content.say(Say.it("step.open", String.join("; ", decision.getOpen())));
        }
    }
}
