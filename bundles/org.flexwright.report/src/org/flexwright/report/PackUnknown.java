package org.flexwright.report;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** What is not known, found by looking at what is not in the record. */
final class PackUnknown {
    private static final double LEVEL = 0.95;
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;
    private final List<String> points = new ArrayList<>();

    PackUnknown(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    /** True when the words under a photo name a scale: a bar, or a length. */
    static boolean saysScale(Attachment photo) {
        String caption = Objects.toString(photo.getCaption(), "").toLowerCase(Locale.ROOT);
        return caption.contains("scale") || caption.matches("(?s).*\\d\\s*(mm|cm|in)\\b.*");
    }

    /** Age of a piece when it was read, in hours; empty when nothing tells. */
    static OptionalDouble ageHours(Specimen piece, Measurement measurement) {
        if (measurement.getDelayHours() != null) {
            return OptionalDouble.of(measurement.getDelayHours());
        }
        java.time.Instant at = measurement.getAt() != null ? measurement.getAt() : measurement.getSession() == null ? null : measurement.getSession().getAt();
        if (piece.getMadeAt() == null || at == null || at.isBefore(piece.getMadeAt())) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Duration.between(piece.getMadeAt(), at).toMinutes() / 60.0);
    }

    void write() {
        parts();
        verdicts();
        lots();
        steps();
        rest();
        points.add(Say.it("unknown.outside"));
        blocks.heading(2, Say.it("unknown")).say(Say.it("unknown.lead"), Tone.QUIET).items(points);
    }

    private void parts() {
        List<Part> parts = source.made().getParts().stream().filter(p -> p.getPieceKind() == PieceKind.PART).toList();
        if (source.recipe() != null && source.recipe().getAsMade() == null) {
            points.add(Say.it("unknown.asMade"));
        }
        if (parts.isEmpty()) {
            points.add(Say.it("unknown.noParts"));
            return;
        }
        int failed = (int) parts.stream().filter(Part::isFailed).count();
        Interval share = Intervals.clopperPearson(failed, parts.size(), LEVEL);
        String most = FieldText.fixed(100 * share.high(), 0);
        points.add(failed == 0 ? Say.it("unknown.parts", parts.size(), parts.size(), most) : Say.it("unknown.partsFailed", failed, parts.size(), FieldText.fixed(100 * share
                .low(), 0), most));
        List<Measurement> readings = parts.stream().flatMap(p -> p.getMeasurements().stream()).toList();
        Set<Session> sessions = new LinkedHashSet<>();
        readings.stream().map(Measurement::getSession).filter(Objects::nonNull).forEach(sessions::add);
        if (sessions.size() == 1) {
            points.add(Say.it("unknown.sessions"));
        }
        OptionalDouble oldest = parts.stream().flatMapToDouble(p -> p.getMeasurements().stream().flatMapToDouble(m -> ageHours(p, m).stream())).max();
        if (!readings.isEmpty()) {
            points.add(oldest.isPresent() ? Say.it("unknown.age", TimeLine.clock(oldest.getAsDouble() * 60)) : Say.it("unknown.ageNever"));
        }
        sessions.stream().filter(s -> s.getRoomC() == null || s.getRoomRh() == null).forEach(s -> points.add(Say.it("unknown.room", Objects.toString(s.getCode(), ""))));
    }

    private void verdicts() {
        Comparison all = Comparison.of(source.project(), registries);
        for (int c = 0; c < all.columns().size(); c++) {
            if (all.columns().get(c).reference() || !Objects.equals(all.columns().get(c).code(), source.made().getCode())) {
                continue;
            }
            for (int r = 0; r < all.rows().size(); r++) {
                var judgement = all.cell(r, c).judgement();
                if (judgement != null && judgement.verdict() != Verdict.IN) {
                    points.add(Say.it("unknown.verdict", all.rows().get(r).title(), judgement.verdict().word()));
                }
            }
        }
    }

    private void lots() {
        for (MaterialGrade grade : PackMaterials.used(source)) {
            Set<Lot> lots = new LinkedHashSet<>();
            PackMaterials.uses(source).filter(u -> u.getGrade() == grade && u.getLot() != null).map(MaterialUse::getLot).forEach(lots::add);
            if (lots.size() == 1) {
                points.add(Say.it("unknown.lots", RecordSections.name(grade)));
            }
            lots.forEach(lot -> lot(grade, lot));
        }
    }

    private void lot(MaterialGrade grade, Lot lot) {
        String name = grade.getCode() + "/" + lot.getCode();
        if (lot.getExpires() == null) {
            points.add(Say.it("unknown.expiry", name));
        }
        if (lot.getOpened() == null) {
            points.add(Say.it("unknown.opened", name));
        }
        boolean sheetRead = source.project().getAcknowledgements().stream().anyMatch(a -> a.getLot() == lot && a.getSheetDate() != null);
        if ((lot.getSheetDate() == null || lot.getSheetRevision() == null) && !sheetRead) {
            points.add(Say.it("unknown.sheet", name));
        }
    }

    private void steps() {
        int number = 0;
        List<String> timeless = new ArrayList<>();
        for (Step step : source.plan().getSteps()) {
            number++;
            for (MaterialUse use : step.getUses()) {
                if (use.getLot() == null && use.getPremix() == null && use.getRole() != PartRole.MOULD) {
                    points.add(Say.it("unknown.noLot", TrialSection.material(use), number));
                }
            }
            if (step.getPlannedStart() == null) {
                timeless.add(Integer.toString(number));
            }
            for (CardLine line : StepCard.lines(source.made(step).orElse(step), registries.findStepKind(step.getKind()).orElse(null))) {
                if (!line.planned().isEmpty() && line.actual().isEmpty() && !line.limit().isEmpty()) {
                    points.add(Say.it("unknown.actual", number, line.label()));
                }
            }
        }
        if (!timeless.isEmpty()) {
            points.add(Say.it("unknown.start", String.join(", ", timeless)));
        }
    }

    private void rest() {
        if (source.mould() == null && PackMaterials.castInMould(source, registries)) {
            points.add(Say.it("unknown.mould"));
        }
        for (Instrument gauge : PackMaterials.gauges(source)) {
            if (gauge.getAccuracy() == null) {
                points.add(Say.it("unknown.gauge", Objects.toString(gauge.getName(), "")));
            }
        }
        if (source.attachments().stream().noneMatch(a -> a.getKind() == AttachmentKind.SETTINGS || a.getKind() == AttachmentKind.OTHER)) {
            points.add(Say.it("unknown.shape"));
        }
        List<Attachment> photos = source.attachments().stream().filter(a -> a.getKind() == AttachmentKind.PHOTO).toList();
        if (photos.isEmpty()) {
            points.add(Say.it("unknown.photo"));
        }
        photos.stream().filter(p -> !saysScale(p)).forEach(p -> points.add(Say.it("unknown.scale", Objects.toString(p.getCaption(), Objects.toString(p.getFileName(), "")))));
    }
}
