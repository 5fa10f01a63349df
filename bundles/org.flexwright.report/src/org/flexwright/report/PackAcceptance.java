package org.flexwright.report;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** Targets with what was reached; and the limits by which the next parts are taken or not, with how they are read. */
final class PackAcceptance {
    /** Days after making at which a kept part is read again, common practice. */
    private static final List<Integer> RECHECK = List.of(1, 7, 30, 365);
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;

    PackAcceptance(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    void targets() {
        blocks.heading(2, Say.it("targets"));
        TargetSheet sheet = source.sheet().orElse(null);
        if (sheet == null || sheet.getTargets().isEmpty()) {
            blocks.say(Say.it("targets.none"), Tone.QUIET);
            return;
        }
        blocks.say(sheet.getFrozenAt() == null ? Say.it("targets.open", sheet.getVersion(), Report.STRIP) : Say.it("targets.sheet", sheet.getVersion(), Report.moment(sheet
                .getFrozenAt()), Report.STRIP), Tone.QUIET);
        Comparison all = Comparison.of(source.project(), registries);
        int trial = column(all, false);
        int reference = column(all, true);
        List<List<Block.Cell>> rows = new ArrayList<>();
        for (int r = 0; r < all.rows().size(); r++) {
            Comparison.Row row = all.rows().get(r);
            Comparison.Cell cell = trial < 0 ? null : all.cell(r, trial);
            Comparison.Cell beside = reference < 0 ? null : all.cell(r, reference);
            String why = cell == null || cell.judgement() == null ? "" : String.join(" ", reasons(cell));
            rows.add(List.of(Block.Cell.of(row.title(), Tone.STRONG), Block.Cell.of(row.limits()), Block.Cell.of(row.weight() == null ? "" : QuantityFormat.plain(row
                    .weight())), Block.Cell.of(beside == null ? "" : (beside.value() + "\n" + beside.word()).strip()), reached(cell), Block.Cell.of(cell == null ? "" : cell
                            .word(), Tone.STRONG), Block.Cell.of(why, Tone.QUIET)));
        }
        blocks.add(new Block.Table(Blocks.columns(List.of(Say.it("col.property"), Say.it("col.limits"), "#" + Say.it("col.weight"), Say.it("col.reference"), Say.it(
                "col.reached"), Say.it("col.verdict"), Say.it("col.why"))), rows));
    }

    private static List<String> reasons(Comparison.Cell cell) {
        List<String> all = new ArrayList<>(List.of(cell.judgement().reason().text()));
        cell.judgement().notes().forEach(n -> all.add(n.text()));
        return all;
    }

    private static Block.Cell reached(Comparison.Cell cell) {
        if (cell == null) {
            return Block.Cell.of("");
        }
        Drawing strip = cell.strip() == null ? null : Drawings.strip(cell.strip(), cell.value() + ", " + cell.word());
        return new Block.Cell(cell.value(), Tone.PLAIN, strip);
    }

    private int column(Comparison all, boolean reference) {
        for (int c = 0; c < all.columns().size(); c++) {
            Comparison.Column column = all.columns().get(c);
            if (column.reference() == reference && (reference || Objects.equals(column.code(), source.made().getCode()))) {
                return c;
            }
        }
        return -1;
    }

    void acceptance() {
        blocks.heading(2, Say.it("acceptance")).say(Say.it("acceptance.lead"), Tone.STRONG);
        if (source.recipe() != null && source.recipe().getLimits() != null) {
            blocks.say(Say.it("acceptance.recipe", source.recipe().getLimits()));
        }
        recheck();
        TargetSheet sheet = source.sheet().orElse(null);
        if (sheet == null || sheet.getTargets().isEmpty()) {
            return;
        }
        List<List<Block.Cell>> rows = new ArrayList<>();
        List<String> help = new ArrayList<>();
        for (Target target : sheet.getTargets()) {
            PropertyDef def = registries.findProperty(target.getKey().getProperty()).orElse(null);
            rows.add(row(target, def));
            if (def != null && !def.help().isBlank()) {
                String line = def.title() + ": " + def.help();
                if (!help.contains(line)) {
                    help.add(line);
                }
            }
        }
        blocks.add(new Block.Table(Blocks.columns(List.of(Say.it("col.property"), Say.it("col.limits"), Say.it("col.reject"), Say.it("col.how"), Say.it("col.gauge"), Say.it(
                "col.age"), Say.it("col.condition"), Say.it("col.count"))), rows));
        blocks.items(help);
    }

    /** When a kept part is read again, as days for the parts of this trial. */
    private void recheck() {
        source.made().getParts().stream().filter(p -> !p.isFailed() && p.getMadeAt() != null).map(Part::getMadeAt).min(Comparator.naturalOrder()).ifPresent(made -> blocks.say(Say
                .it("acceptance.recheck", String.valueOf(source.made().getCode()), String.join(", ", RECHECK.stream().map(days -> LocalDate.ofInstant(made, ZoneOffset.UTC)
                        .plusDays(days).toString()).toList()))));
    }

    private List<Block.Cell> row(Target target, PropertyDef def) {
        String id = target.getKey().getProperty();
        String unit = def == null || def.yesNo() ? "" : " " + def.kind().unit().display();
        List<String> reject = new ArrayList<>();
        if (target.getRejectBelow() != null) {
            reject.add(Say.it("reject.below", QuantityFormat.plain(target.getRejectBelow()) + unit));
        }
        if (target.getRejectAbove() != null) {
            reject.add(Say.it("reject.above", QuantityFormat.plain(target.getRejectAbove()) + unit));
        }
        Read read = new Read(id);
        return List.of(Block.Cell.of(def == null ? id : def.title(), Tone.STRONG), Block.Cell.of(def == null ? "" : Limits.text(target, def), Tone.STRONG), Block.Cell.of(String
                .join(", ", reject)), Block.Cell.of(JobSection.conditions(target.getKey())), Block.Cell.of(String.join(", ", read.gauges)), Block.Cell.of(read.age()), Block.Cell
                        .of(String.join("; ", read.rooms)), Block.Cell.of(read.count()));
    }

    /** How a property was read on the trial's parts. */
    private final class Read {
        private final Set<String> gauges = new LinkedHashSet<>();
        private final Set<String> rooms = new LinkedHashSet<>();
        private double youngest = Double.POSITIVE_INFINITY;
        private double oldest = Double.NEGATIVE_INFINITY;
        private int parts;
        private int readings;

        Read(String property) {
            for (Part part : source.made().getParts()) {
                List<Measurement> of = part.getMeasurements().stream().filter(m -> m.getKey() != null && property.equals(m.getKey().getProperty())).toList();
                parts += of.isEmpty() ? 0 : 1;
                of.forEach(m -> take(part, m));
            }
        }

        private void take(Part part, Measurement m) {
            readings += m.getReadings().size();
            if (m.getInstrument() != null && m.getInstrument().getName() != null) {
                gauges.add(m.getInstrument().getName());
            }
            String piece = m.getPieceC() == null ? "" : Say.it("piece", QuantityFormat.plain(m.getPieceC()));
            String said = m.getSession() == null ? "" : PackProcedure.room(m.getSession());
            String room = said.isEmpty() ? "" : Say.it("room", said);
            if (!piece.isEmpty() || !room.isEmpty()) {
                rooms.add(piece + (piece.isEmpty() || room.isEmpty() ? "" : ", ") + room);
            }
            PackUnknown.ageHours(part, m).ifPresent(h -> {
                youngest = Math.min(youngest, h);
                oldest = Math.max(oldest, h);
            });
        }

        String age() {
            if (oldest < youngest) {
                return "";
            }
            String from = TimeLine.clock(youngest * 60);
            String to = TimeLine.clock(oldest * 60);
            return from.equals(to) ? from : Say.it("age.range", from, to);
        }

        String count() {
            return readings == 0 ? Say.it("count.none") : Say.it("count", parts, readings);
        }
    }
}
