package org.flexwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.CalculationJson;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.ResultValue;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.quantity.QuantityKind;

/**
 * What a command has to say, in one shape for people and for scripts:
 * {@code {id, version, inputs, results: {name: {low, likely, high, unit, source}}, findings, refused, items, notices}}.
 */
public final class Reply {
    private static final int VERSION = 1;
    private static final double AN_HOUR = 3600;

    /** Source of what the project's own record says. */
    static final String OWN_RECORD = "own record";

    private final String id;
    private int version = VERSION;
    private final Map<String, Object> inputs = new LinkedHashMap<>();
    private final Map<String, Value> results = new LinkedHashMap<>();
    private final List<Map<String, Object>> findings = new ArrayList<>();
    private final List<Map<String, Object>> items = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final List<String> notices = new ArrayList<>();
    private Map<String, Object> calculation = Map.of();
    private Map<String, Object> refused;
    private boolean stop;

    /** A reply of the command {@code noun.verb}. */
    public Reply(String id) {
        this.id = id;
    }

    /** The reply of a calculation: its own id, version and results. */
    static Reply of(CalculationResult result) {
        Reply reply = new Reply(result.id());
        reply.version = result.version();
        reply.calculation = CalculationJson.view(result);
        result.results().values().stream().filter(value -> !value.text().isEmpty()).forEach(value -> reply.line(value.field().label() + ": " + value.text()
                + hours(value) + "   [" + value.source().display() + "]"));
        result.findings().forEach(reply::remark);
        if (!result.done()) {
            reply.refuse(result.refused().input(), result.refused().why(), result.refused().remedy());
        }
        return reply;
    }

    /** Long times in seconds are said in hours too. */
    private static String hours(ResultValue value) {
        boolean seconds = value.field().kind() == QuantityKind.DURATION && value.unit().equals("s") && value.likely() != null && value.likely() >= AN_HOUR;
        return seconds ? ", that is " + FieldText.band(value.low() / AN_HOUR, value.likely() / AN_HOUR, value.high() / AN_HOUR, QuantityKind.DURATION, "h") : "";
    }

    Reply input(String name, Object value) {
        inputs.put(name, value);
        return this;
    }

    Reply result(String name, Value value) {
        results.put(name, value);
        return this;
    }

    Reply words(String name, String text) {
        return result(name, Value.words(text, OWN_RECORD));
    }

    /** A line for people only. */
    Reply line(String text) {
        lines.add(text);
        return this;
    }

    /** Something to know about the project itself: edits that came back, absent plugins. */
    Reply notice(String text) {
        notices.add(text);
        return this;
    }

    /** A row for scripts only. */
    Reply item(Map<String, Object> row) {
        items.add(row);
        return this;
    }

    Reply finding(Finding finding, String subjectName, boolean overridden) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("rule", finding.rule());
        row.put("severity", finding.severity().name().toLowerCase(java.util.Locale.ROOT));
        row.put("subject", finding.subject());
        row.put("about", subjectName);
        row.put("feature", finding.feature());
        row.put("message", finding.message().text());
        row.put("remedy", finding.remedy().text());
        row.put("source", finding.source().display());
        row.put("overridden", overridden);
        findings.add(row);
        stop |= finding.severity() == Severity.STOP && !overridden;
        return this;
    }

    Reply remark(Remark remark) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("severity", remark.severity().name().toLowerCase(java.util.Locale.ROOT));
        row.put("message", remark.message().text());
        row.put("source", remark.source().display());
        findings.add(row);
        stop |= remark.severity() == Severity.STOP;
        return this;
    }

    Reply refuse(String input, String why, String remedy) {
        refused = new LinkedHashMap<>();
        refused.put("input", input);
        refused.put("why", why);
        refused.put("remedy", remedy);
        return this;
    }

    /** 0 fine, 1 a finding at stop level or a refusal. */
    int status() {
        return stop || refused != null ? Status.FINDINGS : Status.FINE;
    }

    Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", id);
        map.put("version", version);
        map.put("inputs", calculation.getOrDefault("inputs", inputs));
        Map<String, Object> values = new LinkedHashMap<>();
        results.forEach((name, value) -> values.put(name, value.json()));
        map.put("results", calculation.getOrDefault("results", values));
        map.put("findings", findings);
        map.put("refused", refused);
        map.put("items", items);
        map.put("notices", notices);
        return map;
    }

    /** What it is about, then the sentence; what the sentence says itself at its beginning is not said twice. */
    static String sentence(String about, String message) {
        if (about == null || message.startsWith(about + ": ") || message.startsWith(about + " ")) {
            return message;
        }
        int colon = message.indexOf(": ");
        List<String> said = List.of(about.split("[,\\s]+"));
        boolean twice = colon > 0 && said.containsAll(List.of(message.substring(0, colon).split("[,\\s]+")));
        return about + ": " + (twice ? message.substring(colon + 2) : message);
    }

    /** The reply for people: lines, results with source, findings, refusal. */
    List<String> text() {
        List<String> all = new ArrayList<>();
        notices.forEach(notice -> all.add("note     " + notice));
        all.addAll(lines);
        if (lines.isEmpty()) {
            results.forEach((name, value) -> all.add(Words.label(name) + ": " + value.display() + (value.source().equals(OWN_RECORD) ? "" : "   [" + value
                    .source() + "]")));
        }
        for (Map<String, Object> row : findings) {
            String rule = row.containsKey("rule") ? "   (rule " + row.get("rule") + ")" : "";
            String kept = Boolean.TRUE.equals(row.get("overridden")) ? " (gone against with a reason)" : "";
            all.add(row.get("severity") + kept + "  " + sentence((String) row.get("about"), (String) row.get("message")) + "   [" + row.get("source") + "]"
                    + rule);
            if (row.get("remedy") != null) {
                all.add("        what helps: " + row.get("remedy"));
            }
        }
        if (refused != null) {
            all.add("refused  " + refused.get("why"));
            all.add("        what helps: " + refused.get("remedy"));
        }
        return all;
    }
}
