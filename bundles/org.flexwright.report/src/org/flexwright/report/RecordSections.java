package org.flexwright.report;

import java.util.List;

import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.quantity.QuantityFormat;

/** What stands behind the trials: recipes, materials and lots, sessions, instruments. */
final class RecordSections {
    private final Project project;
    private final Registries registries;
    private final Html html;

    RecordSections(Project project, Registries registries, Html html) {
        this.project = project;
        this.registries = registries;
        this.html = html;
    }

    void write() {
        project.getRecipes().forEach(this::recipe);
        html.element("h2", "Materials and lots").open("table").row("th", List.of("Material", "Role", "Family", "Statements on its sheet", "Lot", "Opened",
                "Expires", "Its data sheet", "Values: own beside sheet"));
        project.getGrades().forEach(this::grade);
        html.close("table").element("h2", "Sessions").open("table").row("th", List.of("Session", "When", "Room °C", "Room %RH", "Who", "Instruments", "Control piece"));
        project.getSessions().forEach(s -> html.row("td", List.of(text(s.getCode()), Report.moment(s.getAt()), number(s.getRoomC()), number(s.getRoomRh()),
                text(s.getWho()), String.join(", ", s.getInstruments().stream().map(i -> i.getName()).toList()), s.getControlPiece() == null ? "" : text(s.getControlPiece()
                        .getCode()))));
        html.close("table").element("h2", "Instruments").open("table").row("th", List.of("Instrument", "Kind", "Unit", "Resolution", "Accuracy ±"));
        project.getInstruments().forEach(i -> html.row("td", List.of(text(i.getName()), text(i.getKind()), text(i.getUnit()), number(i.getResolution()),
                number(i.getAccuracy()))));
        html.close("table");
        project.getControlPieces().forEach(piece -> {
            html.element("h2", "Control piece " + text(piece.getCode()));
            JobSection.readings(piece, registries, html);
        });
    }

    private void recipe(Recipe recipe) {
        html.element("h2", "Recipe " + recipe.getCode() + " v" + recipe.getVersion());
        html.element("p", "Frozen " + Report.moment(recipe.getFrozenAt()) + " by " + recipe.getFrozenBy() + " from " + recipe.getPlan().getCode() + ". "
                + text(recipe.getLimits()));
        html.open("ol");
        for (Step step : recipe.getPlan().getSteps()) {
            html.open("li").text(step.getTitle());
            List<CardLine> lines = StepCard.lines(step, registries.findStepKind(step.getKind()).orElse(null)).stream().filter(l -> !l.planned().isEmpty())
                    .toList();
            if (!lines.isEmpty()) {
                html.text(": " + String.join("; ", lines.stream().map(l -> l.label() + " " + l.planned()).toList()));
            }
            html.close("li");
        }
        html.close("ol");
    }

    private void grade(MaterialGrade grade) {
        String values = String.join("; ", grade.getValues().stream().map(this::value).toList());
        String hazards = String.join(" ", grade.getHazards());
        if (grade.getLots().isEmpty()) {
            html.row("td", List.of(name(grade), role(grade), text(grade.getFamily()), hazards, "", "", "", "", values));
        }
        for (Lot lot : grade.getLots()) {
            String lotValues = String.join("; ", lot.getValues().stream().map(this::value).toList());
            String both = values + (values.isEmpty() || lotValues.isEmpty() ? "" : "; ") + (lotValues.isEmpty() ? "" : "this lot: " + lotValues);
            html.row("td", List.of(name(grade), role(grade), text(grade.getFamily()), hazards, text(lot.getCode()), text(lot.getOpened()), text(lot.getExpires()), sheet(lot),
                    both));
        }
    }

    private static String role(MaterialGrade grade) {
        return RoleWords.of(grade.getRole());
    }

    private static String sheet(Lot lot) {
        return text(lot.getSheetDate()) + (lot.getSheetRevision() == null ? "" : " revision " + lot.getSheetRevision());
    }

    private static String name(MaterialGrade grade) {
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
