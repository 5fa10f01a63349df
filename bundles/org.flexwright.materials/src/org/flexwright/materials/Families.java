package org.flexwright.materials;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Source;

/** The families this plugin knows, in the order of its table. */
public final class Families {

    private static final String TABLE = "families.tsv";
    private static final int NOTE = 6;

    private final Map<String, Family> byId = new LinkedHashMap<>();

    private Families(List<String[]> rows) {
        Map<String, String> titles = new LinkedHashMap<>();
        Map<String, Map<String, Family.Range>> ranges = new LinkedHashMap<>();
        for (String[] row : rows) {
            titles.put(row[0], row[1]);
            ranges.computeIfAbsent(row[0], id -> new LinkedHashMap<>()).put(row[2],
                    new Family.Range(Double.parseDouble(row[3]), Double.parseDouble(row[4]), source(row)));
        }
        titles.forEach((id, title) -> byId.put(id, new Family(id, title, ranges.get(id))));
    }

    /** Reads the table kept beside this class: family, title, property, low, high in canonical units, mark, note. */
    public static Families load() {
        try (InputStream in = Families.class.getResourceAsStream(TABLE)) {
            if (in == null) {
                throw new IllegalStateException(TABLE + " is missing beside " + Families.class.getName());
            }
            List<String[]> rows = new ArrayList<>();
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().forEach(line -> rows.add(line.split("\t", -1)));
            return new Families(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Source source(String[] row) {
        String note = row.length > NOTE ? ": " + row[NOTE] : "";
        return switch (row[5]) {
            case "name" -> Source.derived("The family is named by its hardness, \u00b1 5 points");
            case "pub" -> Source.published(row[1] + note);
            case "mem" -> Source.fromMemory("Usual in the family" + note);
            case "cp" -> Source.commonPractice("Usual in the family" + note);
            default -> throw new IllegalStateException(TABLE + ": unknown mark " + row[5]);
        };
    }

    /** All families. */
    public List<Family> all() {
        return List.copyOf(byId.values());
    }

    /** The family with that id; empty when it is not known. */
    public Optional<Family> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
