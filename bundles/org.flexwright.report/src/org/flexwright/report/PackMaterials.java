package org.flexwright.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Moulds;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Measurement;
import org.flexwright.model.Mould;
import org.flexwright.model.Premix;
import org.flexwright.model.Weighing;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** What to have ready: materials with their lots and values, blends, mould, balance and gauges. */
final class PackMaterials {
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;

    PackMaterials(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        blocks.heading(2, Say.it("ready")).heading(3, Say.it("ready.materials"));
        List<List<String>> rows = uses(source).flatMap(this::rows).toList();
        if (!rows.isEmpty()) {
            blocks.table(List.of(Say.it("col.material"), Say.it("col.role"), "#" + Say.it("col.grams"), Say.it("col.lot"), Say.it("col.opened"), Say.it("col.expires"), Say.it(
                    "col.sheet")), rows);
        }
        source.project().getPremixes().stream().filter(p -> uses(source).anyMatch(u -> u.getPremix() == p)).forEach(this::premix);
        mould();
        Set<Instrument> gauges = gauges(source);
        if (!gauges.isEmpty()) {
            blocks.heading(3, Say.it("ready.gauges"));
            new RecordSections(source.project(), registries, blocks).instruments(List.copyOf(gauges));
        }
        values();
    }

    /** Everything that goes in, in the order of the steps; the ingredients of a blend stand with the blend. */
    static Stream<MaterialUse> uses(PackSource source) {
        return source.plan().getSteps().stream().flatMap(s -> s.getUses().stream());
    }

    /** Materials that go in, those of blends too, each once. */
    static Set<MaterialGrade> used(PackSource source) {
        Set<MaterialGrade> grades = new LinkedHashSet<>();
        uses(source).forEach(use -> used(use, grades));
        return grades;
    }

    private static void used(MaterialUse use, Set<MaterialGrade> grades) {
        if (use.getGrade() != null) {
            grades.add(use.getGrade());
        }
        if (use.getPremix() != null) {
            use.getPremix().getIngredients().forEach(i -> used(i, grades));
        }
    }

    /** True when one of its steps fills a mould. */
    static boolean castInMould(PackSource source, Registries registries) {
        return source.plan().getSteps().stream().anyMatch(s -> registries.findStepKind(s.getKind()).filter(StepKind::fillsMould).isPresent());
    }

    /** What it was weighed and read with. */
    static Set<Instrument> gauges(PackSource source) {
        Set<Instrument> gauges = new LinkedHashSet<>();
        source.made().getSteps().stream().flatMap(s -> s.getUses().stream()).flatMap(u -> u.getWeighings().stream()).map(Weighing::getInstrument).filter(
                Objects::nonNull).forEach(gauges::add);
        source.made().getParts().stream().flatMap(p -> p.getMeasurements().stream()).map(Measurement::getInstrument).filter(Objects::nonNull).forEach(gauges::add);
        return gauges;
    }

    /** What is weighed; under a blend what is in it, with the grams of it in what is weighed of the blend. */
    private Stream<List<String>> rows(MaterialUse use) {
        if (use.getPremix() == null) {
            return Stream.of(row(use, true, use.getPlanned()));
        }
        return Stream.concat(Stream.of(row(use, true, use.getPlanned())), use.getPremix().getIngredients().stream().map(i -> row(i, false, inside(use, i))));
    }

    private static Double inside(MaterialUse blend, MaterialUse ingredient) {
        return blend.getPlanned() == null ? null : Mixtures.shares(blend).stream().filter(s -> s.of() == ingredient).findFirst().map(s -> s.share() * blend.getPlanned()).orElse(null);
    }

    private List<String> row(MaterialUse use, boolean weighed, Double planned) {
        Lot lot = use.getLot();
        String name = use.getPremix() != null ? use.getPremix().getCode() + words(use.getPremix().getTitle()) : use.getGrade() == null ? "" : RecordSections.name(use.getGrade());
        String grams = planned == null ? "" : FieldText.digits(planned);
        return List.of(name, weighed ? role(use) : Say.it("use.inside", role(use)), grams, lot == null ? "" : words(lot.getCode(), ""), lot == null ? "" : Objects.toString(lot.getOpened(), ""),
                lot == null ? "" : Objects.toString(lot.getExpires(), ""), lot == null ? "" : sheet(lot));
    }

    private static String role(MaterialUse use) {
        String role = RoleWords.of(use.getRole());
        if (use.getDried() != null) {
            role = Say.it(use.getDried() ? "use.dried" : "use.undried", role);
        }
        return use.getMoisture() == null ? role : Say.it("use.moisture", role, QuantityFormat.plain(use.getMoisture()));
    }

    private static String words(String text) {
        return text == null ? "" : ", " + text;
    }

    private static String words(String text, String otherwise) {
        return text == null ? otherwise : text;
    }

    /** The data sheet of a lot; when none is written down with it, the one that was read before the work. */
    private String sheet(Lot lot) {
        String own = sheet(lot.getSheetDate(), lot.getSheetRevision());
        return own.isEmpty() ? source.project().getAcknowledgements().stream().filter(a -> a.getLot() == lot && a.getSheetDate() != null).findFirst().map(a -> Say.it("sheet.read",
                sheet(a.getSheetDate(), a.getSheetRevision()), words(a.getWho(), ""))).orElse("") : own;
    }

    private static String sheet(LocalDate date, String revision) {
        if (date == null) {
            return words(revision, "");
        }
        return revision == null ? Say.it("sheet.date", date) : Say.it("sheet", date, revision);
    }

    private void premix(Premix premix) {
        blocks.say(RecordSections.premix(premix)).say(premix.getNote());
    }

    private void mould() {
        Mould mould = source.mould();
        if (mould == null && !castInMould(source, registries)) {
            return;
        }
        blocks.heading(3, Say.it("mould"));
        if (mould == null) {
            blocks.say(Say.it("mould.none"), Tone.QUIET);
            return;
        }
        List<String> said = new ArrayList<>();
        said.add(Say.it("mould.about", words(mould.getCode(), ""), words(mould.getName(), "")));
        add(said, "mould.material", mould.getMaterial());
        add(said, "mould.made", mould.getMadeOn());
        add(said, "mould.cavities", mould.getCavities());
        add(said, "mould.casts", Moulds.casts(mould));
        add(said, "mould.limit", mould.getCastsLimit());
        add(said, "mould.turn", mould.getTurnMinutes() == null ? null : QuantityFormat.plain(mould.getTurnMinutes()));
        blocks.say(String.join(" ", said)).say(mould.getNote());
    }

    private static void add(List<String> said, String key, Object value) {
        if (value != null) {
            said.add(Say.it(key, value));
        }
    }

    private void values() {
        List<List<String>> rows = new ArrayList<>();
        for (MaterialGrade grade : used(source)) {
            grade.getValues().forEach(v -> rows.add(value(RecordSections.name(grade), v)));
            for (Lot lot : grade.getLots()) {
                lot.getValues().forEach(v -> rows.add(value(RecordSections.name(grade) + "/" + lot.getCode(), v)));
            }
        }
        if (!rows.isEmpty()) {
            blocks.heading(3, Say.it("values")).say(Say.it("values.lead"), Tone.QUIET);
            blocks.table(List.of(Say.it("col.material"), Say.it("col.property"), Say.it("col.own"), Say.it("col.ownSource"), Say.it("col.onSheet"), Say.it(
                    "col.sheetSource")), rows);
        }
    }

    private List<String> value(String name, MaterialValue value) {
        String title = registries.findProperty(value.getProperty()).map(p -> p.title()).orElse(value.getProperty());
        String unit = value.getUnit() == null ? "" : " " + value.getUnit();
        String band = value.getOwnUncertainty() == null ? "" : " \u00b1 " + QuantityFormat.plain(value.getOwnUncertainty());
        return List.of(name, words(title, ""), value.getOwnValue() == null ? "" : QuantityFormat.plain(value.getOwnValue()) + band + unit, words(value.getOwnSource(), ""), value
                .getSheetValue() == null ? "" : QuantityFormat.plain(value.getSheetValue()) + unit, words(value.getSheetSource(), ""));
    }
}
