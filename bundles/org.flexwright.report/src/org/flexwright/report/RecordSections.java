package org.flexwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Moulds;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.view.ControlDrift;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** What stands behind the trials: recipes, materials and lots, sessions, instruments. */
final class RecordSections {
    private final Project project;
    private final Registries registries;
    private final Blocks blocks;

    RecordSections(Project project, Registries registries, Blocks blocks) {
        this.project = project;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        project.getRecipes().forEach(this::recipe);
        batches();
        moulds();
        if (!project.getPremixes().isEmpty()) {
            blocks.heading(2, "Blends").items(project.getPremixes().stream().map(RecordSections::premix).toList());
        }
        blocks.heading(2, "Materials and lots");
        materials(project.getGrades());
        blocks.heading(2, "Sessions").table(List.of("Session", "When", "#Room °C", "#Room %RH", "#Conditioned, h", "Room", "Who", "Instruments", "Control piece"), project.getSessions().stream().map(
                s -> List.of(text(s.getCode()), Report.moment(s.getAt()), number(s.getRoomC()), number(s.getRoomRh()), number(s.getConditioningHours()), text(s.getRoom()), text(s.getWho()), String.join(", ", s
                        .getInstruments().stream().map(i -> i.getName()).toList()), control(s))).toList());
        blocks.heading(2, "Instruments");
        instruments(project.getInstruments());
        project.getControlPieces().forEach(piece -> {
            blocks.heading(2, "Control piece " + text(piece.getCode()));
            if (piece.getUsual() != null || piece.getUsualFrom() != null) {
                blocks.say(Say.it("control.usual", number(piece.getUsual()), number(piece.getUsualSpread()), text(piece.getUsualFrom())));
            }
            ControlDrift.of(project, piece, registries.properties()).ifPresent(drift -> blocks.add(Drawings.plot(drift.plot())));
            JobSection.readings(piece, registries, blocks);
        });
    }

    /** The control piece of a session, and how it was off. */
    private String control(Session session) {
        return session.getControlPiece() == null ? "" : text(session.getControlPiece().getCode())
                + Doubts.of(session, registries.properties()).map(c -> "\n" + Doubts.word() + ": " + c.sentence()).orElse("");
    }

    /** Gauges, balances and what else was read with. */
    void instruments(List<Instrument> instruments) {
        blocks.table(List.of("Instrument", "Kind", "Scale", "Unit", "#Resolution", "#Accuracy ±", "#Own spread", "Spread from", "Last checked", "Check"), instruments.stream().map(i -> List.of(text(i.getName()), text(i.getKind()),
                text(i.getScale()), text(i.getUnit()), number(i.getResolution()), number(i.getAccuracy()), number(i.getSpread()), text(i.getSpreadFrom()), text(i.getCheckedOn()), text(i.getCheckNote()))).toList());
    }

    private void recipe(Recipe recipe) {
        blocks.heading(2, "Recipe " + recipe.getCode() + " v" + recipe.getVersion());
        blocks.say("Frozen " + Report.moment(recipe.getFrozenAt()) + " by " + recipe.getFrozenBy() + " from " + recipe.getPlan().getCode() + ". " + text(recipe
                .getLimits()));
        blocks.say(String.join(" ", java.util.stream.Stream.of(recipe.getTitle(), recipe.getJob()).filter(Objects::nonNull).toList()), Tone.QUIET);
        blocks.say(recipe.getChanges());
        List<String> steps = new ArrayList<>();
        for (Step step : recipe.getPlan().getSteps()) {
            List<CardLine> lines = StepCard.lines(step, registries.findStepKind(step.getKind()).orElse(null)).stream().filter(l -> !l.planned().isEmpty()).toList();
            String values = lines.isEmpty() ? "" : ": " + String.join("; ", lines.stream().map(l -> l.label() + " " + l.planned()).toList());
            steps.add((steps.size() + 1) + ". " + step.getTitle() + values);
        }
        blocks.items(steps);
    }

    private void batches() {
        if (!project.getBatches().isEmpty()) {
            blocks.heading(2, "Batches").table(List.of("Batch", "What", "Recipe", "#Wanted", "#Spares", "#Reject limit", "Needed by", "Pots"), project.getBatches().stream().map(b -> List.of(
                    text(b.getCode()), text(b.getTitle()), b.getRecipe() == null ? "" : Names.of(b.getRecipe()), text(b.getWanted()), text(b.getSpares()), text(b
                            .getRejectLimit()), text(b.getNeededBy()), String.join(", ", b.getPots().stream().map(Trial::getCode).toList()))).toList());
        }
    }

    private void moulds() {
        if (project.getMoulds().isEmpty()) {
            return;
        }
        blocks.heading(2, "Moulds").table(List.of("Mould", "What", "Material", "Made on", "#Parts a cast", "#Casts", "#Limit"), project.getMoulds().stream().map(m -> List.of(text(m
                .getCode()), text(m.getName()), text(m.getMaterial()), text(m.getMadeOn()), text(m.getCavities()), text(Moulds.casts(m)), text(m.getCastsLimit()))).toList());
        List<List<String>> casts = project.getMoulds().stream().flatMap(m -> m.getCasts().stream().map(c -> List.of(text(m.getCode()), Report.moment(c.getAt()), c
                .getTrial() == null ? "" : text(c.getTrial().getCode()), text(c.getRelease()), c.getReleasedWell() == null ? "" : c.getReleasedWell() ? "well" : "with force or damage",
                text(c.getParts())))).toList();
        if (!casts.isEmpty()) {
            blocks.table(List.of("Mould", "Cast", "Trial", "Release", "Came out", "#Parts"), casts);
        }
    }

    /** A blend with what went in. */
    static String premix(Premix premix) {
        List<String> said = new ArrayList<>();
        List<Mixtures.Share> shares = Mixtures.shares(premix);
        said.add(Say.it("premix", text(premix.getCode()) + (premix.getTitle() == null ? "" : ", " + premix.getTitle()), String.join("; ", premix.getIngredients().stream().map(
                i -> TrialSection.material(i) + grams(i) + share(i, shares)).toList())) + ".");
        String hours = premix.getDriedHours() == null ? "" : " " + QuantityFormat.plain(premix.getDriedHours()) + " h";
        String at = premix.getDriedC() == null ? "" : Say.it("premix.at", QuantityFormat.plain(premix.getDriedC()));
        if (!hours.isEmpty() || !at.isEmpty()) {
            said.add(Say.it("premix.dried", hours + at));
        }
        if (premix.getRestedHours() != null) {
            said.add(Say.it("premix.rest", QuantityFormat.plain(premix.getRestedHours())));
        }
        return String.join(" ", said);
    }

    /** What was weighed into a blend, else what was planned. */
    private static String grams(MaterialUse ingredient) {
        Double weighed = Mixtures.grams(ingredient);
        if (weighed == null && ingredient.getPlanned() == null) {
            return "";
        }
        String grams = " " + FieldText.show(FieldDescriptors.of(ModelPackage.Literals.MATERIAL_USE__PLANNED), weighed == null ? ingredient.getPlanned() : weighed);
        return weighed == null ? Say.it("premix.planned", grams) : grams;
    }

    private static String share(MaterialUse ingredient, List<Mixtures.Share> shares) {
        return shares.stream().filter(s -> s.of() == ingredient).findFirst().map(s -> " " + Say.it("premix.share", FieldText.digits(100 * s.share()))).orElse("");
    }

    /** Materials with what is known of them and their lots. */
    void materials(List<MaterialGrade> grades) {
        blocks.table(List.of("Material", "Role", "Family", "Statements on its sheet", "Lot", "Opened", "Expires", "Its data sheet", "Values: own beside sheet"), grades
                .stream().flatMap(g -> grade(g).stream()).toList());
    }

    private List<List<String>> grade(MaterialGrade grade) {
        String values = String.join("; ", grade.getValues().stream().map(this::value).toList());
        String hazards = String.join(" ", grade.getHazards());
        if (grade.getLots().isEmpty()) {
            return List.of(List.of(name(grade), role(grade), text(grade.getFamily()), hazards, "", "", "", "", values));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Lot lot : grade.getLots()) {
            String lotValues = String.join("; ", lot.getValues().stream().map(this::value).toList());
            String both = values + (values.isEmpty() || lotValues.isEmpty() ? "" : "; ") + (lotValues.isEmpty() ? "" : "this lot: " + lotValues);
            rows.add(List.of(name(grade), role(grade), text(grade.getFamily()), hazards, text(lot.getCode()), text(lot.getOpened()), text(lot.getExpires()), sheet(lot),
                    both));
        }
        return rows;
    }

    private static String role(MaterialGrade grade) {
        return RoleWords.of(grade.getRole());
    }

    private static String sheet(Lot lot) {
        return text(lot.getSheetDate()) + (lot.getSheetRevision() == null ? "" : " revision " + lot.getSheetRevision());
    }

    static String name(MaterialGrade grade) {
        return text(grade.getCode()) + (grade.getName() == null ? "" : ", " + grade.getName());
    }

    private String value(MaterialValue value) {
        String title = registries.findProperty(value.getProperty()).map(p -> p.title()).orElse(value.getProperty());
        String own = value.getOwnValue() == null ? "" : "own " + number(value.getOwnValue()) + " " + text(value.getUnit()) + " (" + text(value
                .getOwnSource()) + ")";
        String sheet = value.getSheetValue() == null ? "" : "sheet " + number(value.getSheetValue()) + " " + text(value.getUnit()) + " (" + text(value
                .getSheetSource()) + ")";
        return title + ": " + own + (own.isEmpty() || sheet.isEmpty() ? "" : ", ") + sheet;
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }

    private static String number(Double value) {
        return value == null ? "" : QuantityFormat.plain(value);
    }
}
