package org.flexwright.core.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;

/** Manual page of a calculation, made from its description alone, so that it cannot say something else than the form does. */
public final class Manual {

    private Manual() {
    }

    /** The page as an HTML fragment: title, what it does, inputs, results, source, validity. All texts are escaped. */
    public static String page(Calculation<?, ?> calculation) {
        CalculationInfo info = calculation.info();
        StringBuilder page = new StringBuilder();
        page.append("<h1>").append(escape(info.title())).append("</h1>\n");
        page.append("<p><code>").append(escape(info.id())).append("</code></p>\n");
        page.append("<p>").append(escape(info.summary())).append("</p>\n");
        heading(page, "manual.inputs");
        table(page, CalculationRunner.inputs(calculation), true);
        heading(page, "manual.results");
        table(page, CalculationRunner.results(calculation), false);
        heading(page, "manual.source");
        page.append("<p>").append(escape(info.source().display())).append("</p>\n");
        heading(page, "manual.validity");
        page.append("<p>").append(escape(info.validity())).append("</p>\n");
        return page.toString();
    }

    private static void heading(StringBuilder page, String key) {
        page.append("<h2>").append(escape(words(key))).append("</h2>\n");
    }

    private static void table(StringBuilder page, List<FieldDescriptor> fields, boolean inputs) {
        page.append("<table>\n");
        List<String> titles = inputs ? List.of("manual.field", "manual.name", "manual.unit", "manual.allowed", "manual.default", "manual.help")
                : List.of("manual.field", "manual.name", "manual.unit", "manual.help");
        row(page, "th", titles.stream().map(Manual::words).toList());
        for (FieldDescriptor field : fields) {
            row(page, "td", cells(field, field.label(), inputs));
            if (field.type() == FieldType.TABLE) {
                for (FieldDescriptor column : field.columns()) {
                    row(page, "td", cells(column, words("manual.column", field.label(), column.label()), inputs));
                }
            }
        }
        page.append("</table>\n");
    }

    private static List<String> cells(FieldDescriptor field, String label, boolean input) {
        List<String> cells = new ArrayList<>(List.of(label, field.name(), unit(field)));
        if (input) {
            cells.add(allowed(field));
            cells.add(!field.def().isEmpty() ? field.def() : words(field.optional() ? "manual.optional" : "manual.required"));
        }
        cells.add(field.help());
        return cells;
    }

    private static String unit(FieldDescriptor field) {
        return field.type() == FieldType.LIST ? field.columns().get(0).unit() : field.unit();
    }

    private static String allowed(FieldDescriptor field) {
        return field.type() == FieldType.CHOICE ? field.choices().stream().map(Choice::literal).collect(Collectors.joining(", ")) : field.allowed();
    }

    private static void row(StringBuilder page, String tag, List<String> cells) {
        page.append("<tr>");
        cells.forEach(cell -> page.append('<').append(tag).append('>').append(escape(cell)).append("</").append(tag).append('>'));
        page.append("</tr>\n");
    }

    private static String words(String key, Object... args) {
        return Message.of(Manual.class, key, args).text();
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
