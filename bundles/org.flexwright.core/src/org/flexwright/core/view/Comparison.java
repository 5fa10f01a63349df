package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.flexwright.core.Message;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.model.Project;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.TrialState;

/**
 * Reference and trials side by side: one row a target of the newest sheet, one column a trial, the reference first, trials grouped by
 * route. Made anew whenever something changed; it keeps nothing of the model but ids.
 *
 * @param sheetVersion version of the target sheet; 0 when there is none
 * @param rows         one a target
 * @param groups       routes in the order of their columns
 * @param columns      reference and trials
 * @param cells        cells by row, then by column
 */
public record Comparison(int sheetVersion, List<Row> rows, List<Group> groups, List<Column> columns, List<List<Cell>> cells) {

    /**
     * A target.
     *
     * @param targetId id of the target
     * @param property what is measured; null when the plugin that defines it is absent
     * @param title    property and spot
     * @param limits   the target in words
     * @param unit     unit of the numbers
     * @param weight   weight of the target, or null
     * @param scale    scale of its strips; null when there is no number in the row
     */
    public record Row(String targetId, PropertyDef property, String title, String limits, String unit, Double weight, Strip.Scale scale) {
    }

    /**
     * A route.
     *
     * @param route     id of the process kind, or empty
     * @param title     its title, or its id when its plugin is absent
     * @param unchanged planned factors all its trials here share
     */
    public record Group(String route, String title, List<FactorValue> unchanged) {
        public Group {
            unchanged = List.copyOf(unchanged);
        }
    }

    /**
     * A planned factor as it was in a trial.
     *
     * @param id    id of the factor
     * @param label words above the column
     * @param value planned value with unit, or a dash
     */
    public record FactorValue(String id, String label, String value) {
    }

    /**
     * A column.
     *
     * @param id        id of the trial, or of the reference part
     * @param code      its code
     * @param title     its title
     * @param reference true for the reference
     * @param route     route of its group; empty for the reference
     * @param state     where the trial stands; null for the reference
     * @param differing planned factors that differ within its group
     * @param summary   "in 3 of 4"; empty for the reference
     */
    public record Column(String id, String code, String title, boolean reference, String route, TrialState state, List<FactorValue> differing,
            String summary) {
        public Column {
            differing = List.copyOf(differing);
        }
    }

    /**
     * A cell.
     *
     * @param judgement the verdict and what it rests on; null for the reference and for an unknown property
     * @param value     value with its interval, rounded to it; empty when there is none
     * @param word      verdict with its shape; for the reference where its value came from
     * @param strip     what the strip shows; null when there is nothing to show
     */
    public record Cell(Judgement judgement, String value, String word, Strip strip) {
        public Cell {
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(word, "word");
        }
    }

    public Comparison {
        rows = List.copyOf(rows);
        groups = List.copyOf(groups);
        columns = List.copyOf(columns);
        cells = cells.stream().map(List::copyOf).toList();
    }

    /** The comparison of all trials of a project with the newest target sheet. */
    public static Comparison of(Project project, Registries registries) {
        return of(project, registries.properties(), registries::findProcessKind, false);
    }

    /**
     * The same.
     *
     * @param pooled true to judge by the spread of parts pooled over the route's other trials, which is then named
     */
    public static Comparison of(Project project, PropertyCatalogue properties, Function<String, Optional<ProcessKind>> routes, boolean pooled) {
        TargetSheet sheet = project.getTargetSheets().isEmpty() ? null : project.getTargetSheets().get(project.getTargetSheets().size() - 1);
        return new ComparisonMaker(project, sheet, properties, routes, pooled).make();
    }

    /** One cell. */
    public Cell cell(int row, int column) {
        return cells.get(row).get(column);
    }

    /** Without some columns. */
    public Comparison hiding(Set<String> ids) {
        return arranged(indices().stream().filter(i -> !ids.contains(columns.get(i).id())).toList());
    }

    /** Trials sorted by the mean of a row within their routes; the reference stays first, trials without a mean come last. */
    public Comparison sorted(int row, boolean ascending) {
        Comparator<Double> direction = ascending ? Comparator.naturalOrder() : Comparator.reverseOrder();
        Comparator<Integer> byMean = Comparator.comparing(i -> mean(row, i), Comparator.nullsLast(direction));
        List<String> routes = groups.stream().map(Group::route).toList();
        return arranged(indices().stream()
                .sorted(Comparator.<Integer>comparingInt(i -> columns.get(i).reference() ? -1 : routes.indexOf(columns.get(i).route())).thenComparing(byMean)).toList());
    }

    private Double mean(int row, int column) {
        Judgement judgement = cell(row, column).judgement();
        return judgement == null ? null : judgement.mean();
    }

    private List<Integer> indices() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            all.add(i);
        }
        return all;
    }

    private Comparison arranged(List<Integer> order) {
        List<Column> arranged = order.stream().map(columns::get).toList();
        List<Group> left = groups.stream().filter(g -> arranged.stream().anyMatch(c -> !c.reference() && c.route().equals(g.route()))).toList();
        return new Comparison(sheetVersion, rows, left, arranged, cells.stream().map(row -> order.stream().map(row::get).toList()).toList());
    }

    /** How many targets a trial is in for. */
    public int inCount(int column) {
        return (int) cells.stream().map(row -> row.get(column).judgement()).filter(j -> j != null && j.verdict() == Verdict.IN).count();
    }

    /** One row as a plot: value and interval of each trial against the target band; empty when there is no number in the row. */
    public Optional<PlotModel> plot(int row) {
        return ComparisonPlot.of(this, row);
    }

    /** The comparison as a table of words. */
    public TableModel table() {
        List<TableModel.Column> titles = new ArrayList<>(List.of(TableModel.Column.text(words("table.target")), TableModel.Column.text(words("table.limits"))));
        columns.forEach(c -> titles.add(TableModel.Column.text(c.code())));
        List<List<String>> lines = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            List<String> line = new ArrayList<>(List.of(rows.get(r).title(), rows.get(r).limits()));
            cells.get(r).forEach(cell -> line.add((cell.value() + " " + cell.word()).strip()));
            lines.add(line);
        }
        return new TableModel(titles, lines);
    }

    static String words(String key, Object... args) {
        return Message.of(Comparison.class, key, args).text();
    }
}
