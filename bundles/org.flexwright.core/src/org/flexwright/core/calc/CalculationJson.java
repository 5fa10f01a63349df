package org.flexwright.core.calc;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.Rows;
import org.flexwright.core.find.Remark;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

/** Results and descriptions of calculations as JSON with a stable order of keys. */
public final class CalculationJson {
    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

    private CalculationJson() {
    }

    /** {@code {id, version, inputs, results: {name: {low, likely, high, unit, source}}, findings, refused}}. */
    public static String toJson(CalculationResult result) {
        return GSON.toJson(view(result));
    }

    /** The same as plain maps, to be put into something larger. */
    public static Map<String, Object> view(CalculationResult result) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", result.id());
        view.put("version", result.version());
        Map<String, Object> inputs = new LinkedHashMap<>();
        result.inputs().forEach((name, input) -> inputs.put(name, inputView(input)));
        view.put("inputs", inputs);
        Map<String, Object> results = new LinkedHashMap<>();
        result.results().forEach((name, value) -> results.put(name, resultView(value)));
        view.put("results", results);
        view.put("findings", result.findings().stream().map(CalculationJson::remarkView).toList());
        view.put("refused", result.refused() == null ? null : refusalView(result));
        return view;
    }

    private static Map<String, Object> refusalView(CalculationResult result) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("input", result.refused().input());
        view.put("why", result.refused().why());
        view.put("remedy", result.refused().remedy());
        return view;
    }

    private static Map<String, Object> inputView(ResultInput input) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("value", plain(input.field(), input.value()));
        view.put("unit", input.field().unit());
        view.put("typed", input.typed());
        view.put("default", input.byDefault());
        return view;
    }

    private static Map<String, Object> resultView(ResultValue value) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("low", value.low());
        view.put("likely", value.likely());
        view.put("high", value.high());
        if (value.likely() == null) {
            view.put("value", plain(value.field(), value.value()));
        }
        view.put("text", value.text());
        view.put("unit", value.unit());
        view.put("source", value.source().display());
        return view;
    }

    private static Map<String, Object> remarkView(Remark remark) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("severity", remark.severity().name().toLowerCase(java.util.Locale.ROOT));
        view.put("message", remark.message().text());
        view.put("source", remark.source().display());
        return view;
    }

    /** Numbers, flags and texts as they are, everything else in words JSON knows. */
    private static Object plain(FieldDescriptor field, Object value) {
        if (value == null || value instanceof Number || value instanceof Boolean || value instanceof String) {
            return value;
        }
        if (value instanceof Estimate e) {
            Map<String, Object> band = new LinkedHashMap<>();
            band.put("low", e.low());
            band.put("likely", e.likely());
            band.put("high", e.high());
            return band;
        }
        return switch (field.type()) {
            case CHOICE -> field.choices().stream().filter(c -> c.value().equals(value)).map(Choice::literal).findFirst().orElse(value.toString());
            case LIST -> ((Collection<?>) value).stream().map(v -> plain(field.columns().get(0), v)).toList();
            case TABLE -> ((Collection<?>) value).stream().map(row -> rowView(field, row)).toList();
            default -> value.toString();
        };
    }

    private static Map<String, Object> rowView(FieldDescriptor table, Object row) {
        Map<String, Object> cells = Rows.cells(table.columns(), row);
        Map<String, Object> view = new LinkedHashMap<>();
        table.columns().forEach(c -> view.put(c.name(), plain(c, cells.get(c.name()))));
        return view;
    }

    /** Descriptions of calculations for a list. */
    public static String list(List<? extends Calculation<?, ?>> calculations) {
        return GSON.toJson(calculations.stream().map(CalculationJson::description).toList());
    }

    /** One description as plain maps: id, version, title, summary, source, validity, inputs, results. */
    public static Map<String, Object> description(Calculation<?, ?> calculation) {
        CalculationInfo info = calculation.info();
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", info.id());
        view.put("version", info.version());
        view.put("title", info.title());
        view.put("summary", info.summary());
        view.put("source", info.source().display());
        view.put("validity", info.validity());
        view.put("inputs", CalculationRunner.inputs(calculation).stream().map(f -> fieldView(f, true)).toList());
        view.put("results", CalculationRunner.results(calculation).stream().map(f -> fieldView(f, false)).toList());
        return view;
    }

    /** Bounds as numbers in the field's unit, null where there is none; for lists and tables the number of entries. */
    private static Map<String, Object> range(FieldDescriptor field) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("min", Double.isInfinite(field.min()) ? null : field.min());
        view.put("max", Double.isInfinite(field.max()) ? null : field.max());
        view.put("minOpen", field.minOpen());
        return view;
    }

    /** Kind of quantity in words; empty for what is no quantity. */
    private static String kind(FieldDescriptor field) {
        FieldDescriptor number = field.type() == FieldType.LIST ? field.columns().get(0) : field;
        return number.type() == FieldType.QUANTITY ? number.kind().humanName() : "";
    }

    private static Map<String, Object> fieldView(FieldDescriptor field, boolean input) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("name", field.name());
        view.put("label", field.label());
        view.put("type", field.type().name().toLowerCase(java.util.Locale.ROOT));
        view.put("kind", kind(field));
        view.put("unit", field.type() == FieldType.LIST ? field.columns().get(0).unit() : field.unit());
        if (input) {
            view.put("range", range(field));
            view.put("allowed", field.allowed());
            view.put("default", field.def());
            view.put("optional", field.optional());
        }
        if (!field.choices().isEmpty()) {
            view.put("choices", field.choices().stream().map(Choice::literal).toList());
        }
        if (field.type() == FieldType.TABLE) {
            List<Object> columns = new ArrayList<>();
            field.columns().forEach(c -> columns.add(fieldView(c, input)));
            view.put("columns", columns);
        }
        view.put("help", field.help());
        return view;
    }
}
