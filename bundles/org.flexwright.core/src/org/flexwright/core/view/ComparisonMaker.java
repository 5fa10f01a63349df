package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.KnownSpread;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.model.Project;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** Makes a comparison. */
final class ComparisonMaker {
    private final Project project;
    private final PropertyCatalogue properties;
    private final Function<String, Optional<ProcessKind>> routes;
    private final boolean pooled;
    private final int version;
    private final Doubts doubts;
    private final List<Target> targets;
    private final Map<String, List<Trial>> byRoute = new LinkedHashMap<>();

    ComparisonMaker(Project project, TargetSheet sheet, PropertyCatalogue properties, Function<String, Optional<ProcessKind>> routes, boolean pooled) {
        this.project = project;
        this.properties = properties;
        this.routes = routes;
        this.pooled = pooled;
        this.doubts = Doubts.of(project, properties);
        this.version = sheet == null ? 0 : sheet.getVersion();
        this.targets = sheet == null ? List.of() : sheet.getTargets();
        Set<Trial> unmade = new HashSet<>();
        project.getBatches().forEach(batch -> batch.getPots().stream().filter(pot -> pot.getParts().isEmpty()).forEach(unmade::add));
        // a pot of a batch repeats a recipe: until it has parts there is nothing to compare
        project.getTrials().stream().filter(t -> !unmade.contains(t)).forEach(t -> byRoute.computeIfAbsent(text(t.getRoute()), r -> new ArrayList<>()).add(t));
    }

    Comparison make() {
        List<Comparison.Row> rows = new ArrayList<>();
        List<List<Comparison.Cell>> cells = new ArrayList<>();
        for (Target target : targets) {
            RowMaker row = new RowMaker(target);
            rows.add(row.row());
            cells.add(row.cells());
        }
        List<Comparison.Group> groups = new ArrayList<>();
        List<Comparison.Column> columns = new ArrayList<>();
        project.getReferenceParts().stream().limit(1).forEach(r -> columns.add(reference(r)));
        byRoute.forEach((route, trials) -> {
            FactorTable factors = FactorTable.of(routes.apply(route), trials);
            groups.add(new Comparison.Group(route, routes.apply(route).map(ProcessKind::title).orElse(route), factors.unchanged()));
            for (Trial trial : trials) {
                int at = columns.size();
                List<Comparison.Cell> own = cells.stream().map(row -> row.get(at)).toList();
                columns.add(new Comparison.Column(text(trial.getId()), text(trial.getCode()), text(trial.getTitle()), false, route, trial.getState(),
                        factors.differing(trial), summary(own)));
            }
        });
        return new Comparison(version, rows, groups, columns, cells);
    }

    private static String summary(List<Comparison.Cell> cells) {
        long in = cells.stream().filter(c -> c.judgement() != null && c.judgement().verdict() == Verdict.IN).count();
        return cells.isEmpty() ? "" : Comparison.words("summary", String.valueOf(in), String.valueOf(cells.size()));
    }

    private static Comparison.Column reference(ReferencePart part) {
        String code = part.getCode() == null ? Comparison.words("reference") : part.getCode();
        return new Comparison.Column(text(part.getId()), code, part.getName() == null ? Comparison.words("reference") : part.getName(), true, "", null, List.of(), "");
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    /** One row. */
    private final class RowMaker {
        private final Target target;
        private final PropertyDef property;
        private final List<PartValue> reference;
        private final boolean estimated;
        private final Map<Trial, List<PartValue>> parts = new LinkedHashMap<>();
        private final Map<Trial, Judgement> judgements = new LinkedHashMap<>();
        private final StripMaker strips;

        RowMaker(Target target) {
            this.target = target;
            String id = target.getKey() == null ? null : target.getKey().getProperty();
            this.property = id == null ? null : properties.find(id).orElse(null);
            if (property == null) {
                this.reference = List.of();
                this.estimated = false;
                this.strips = null;
                return;
            }
            List<ReferencePart> pieces = project.getReferenceParts().stream().limit(1).toList();
            List<PartValue> measured = PartValues.ofReference(project, target.getKey(), property);
            this.estimated = measured.isEmpty();
            this.reference = estimated ? PartValues.estimated(pieces, target.getKey(), property) : measured;
            byRoute.values().forEach(trials -> trials.forEach(t -> parts.put(t, PartValues.of(t, target.getKey(), property))));
            List<PartValue> read = estimated ? List.of() : reference;
            parts.forEach((trial, values) -> judgements.put(trial, doubts.on(Verdicts.judge(target, property, values, pooled ? spread(trial) : null, read), values)));
            this.strips = StripMaker.of(target, property, parts.values(), judgements.values(), reference);
        }

        private KnownSpread spread(Trial trial) {
            List<Trial> others = byRoute.get(text(trial.getRoute())).stream().filter(t -> t != trial && PartValues.of(t, target.getKey(), property).size() > 1).toList();
            String name = Comparison.words("pooled", String.join(", ", others.stream().map(t -> text(t.getCode())).toList()));
            return PartValues.pooledSpread(others.stream().map(parts::get).toList(), name);
        }

        Comparison.Row row() {
            if (property == null) {
                String id = target.getKey() == null ? "" : text(target.getKey().getProperty());
                return new Comparison.Row(text(target.getId()), null, id, Comparison.words("unknownProperty"), "", target.getWeight(), null);
            }
            String spot = text(target.getKey().getSpot());
            String title = spot.isBlank() ? property.title() : Comparison.words("titleSpot", property.title(), spot);
            String unit = property.yesNo() ? "%" : property.kind().unit().display();
            return new Comparison.Row(text(target.getId()), property, title, Limits.text(target, property), unit, target.getWeight(), strips.scale());
        }

        List<Comparison.Cell> cells() {
            List<Comparison.Cell> cells = new ArrayList<>();
            project.getReferenceParts().stream().limit(1).forEach(r -> cells.add(referenceCell()));
            byRoute.values().forEach(trials -> trials.forEach(t -> cells.add(cell(t))));
            return cells;
        }

        private Comparison.Cell referenceCell() {
            if (property == null || reference.isEmpty()) {
                return new Comparison.Cell(null, "", "", null);
            }
            PartValue value = reference.get(0);
            String origin = value.notComparable() ? Verdict.NOT_COMPARABLE.text() : Comparison.words(estimated ? "estimated" : "measured");
            return new Comparison.Cell(null, CellText.single(property, value), doubted(origin, reference.subList(0, 1)), strips.ofReference());
        }

        private Comparison.Cell cell(Trial trial) {
            if (property == null) {
                return new Comparison.Cell(null, "", "", null);
            }
            Judgement judgement = judgements.get(trial);
            return new Comparison.Cell(judgement, CellText.of(property, judgement, parts.get(trial)), doubted(judgement.verdict().text(), parts.get(trial)),
                    strips.of(judgement, parts.get(trial)));
        }

        /** The word, with a mark when some of the parts were read in a session whose control piece was off. */
        private String doubted(String word, List<PartValue> values) {
            return values.stream().anyMatch(v -> doubts.any(v.sessions())) ? word + "  " + Doubts.word() : word;
        }
    }
}
