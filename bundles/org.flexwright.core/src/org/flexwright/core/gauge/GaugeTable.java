package org.flexwright.core.gauge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.trial.Measurements;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Reading;

/**
 * The readings of a gauge study as a table: a row a piece, a column a person. A piece or person without a name has none here.
 *
 * @param study   the study
 * @param pieces  names of the pieces, in the order they were added
 * @param persons names of the persons, in the order they were added
 */
public record GaugeTable(GaugeStudy study, List<String> pieces, List<String> persons) {
    public GaugeTable {
        Objects.requireNonNull(study, "study");
        pieces = List.copyOf(pieces);
        persons = List.copyOf(persons);
    }

    /** The table of a study. */
    public static GaugeTable of(GaugeStudy study) {
        Set<String> pieces = new LinkedHashSet<>();
        Set<String> persons = new LinkedHashSet<>();
        for (GaugeCell cell : study.getCells()) {
            pieces.add(name(cell.getPiece()));
            persons.add(name(cell.getWho()));
        }
        return new GaugeTable(study, new ArrayList<>(pieces), new ArrayList<>(persons));
    }

    static String name(String typed) {
        return typed == null ? "" : typed.strip();
    }

    /** The cell of a piece and a person; upper and lower case are alike. Empty when nothing stands there. */
    public Optional<GaugeCell> cell(String piece, String who) {
        return study.getCells().stream().filter(c -> name(c.getPiece()).equalsIgnoreCase(name(piece)) && name(c.getWho()).equalsIgnoreCase(name(who))).findFirst();
    }

    /** All readings of a piece by a person, those left out as well. */
    public List<Reading> readings(String piece, String who) {
        return cell(piece, who).map(c -> List.copyOf(c.getReadings())).orElse(List.of());
    }

    /** The readings that count. */
    public List<Reading> counting(String piece, String who) {
        return readings(piece, who).stream().filter(GaugeTable::counts).toList();
    }

    private static boolean counts(Reading reading) {
        return reading.getValue() != null && Measurements.counts(reading);
    }

    /** The numbers that count, bounds too. */
    public double[] numbers(String piece, String who) {
        return counting(piece, who).stream().mapToDouble(Reading::getValue).toArray();
    }

    /** How many readings count in the fullest cell. */
    public int repeats() {
        return pieces.stream().mapToInt(p -> persons.stream().mapToInt(w -> counting(p, w).size()).max().orElse(0)).max().orElse(0);
    }

    /** How many readings count in all. */
    public int count() {
        return pieces.stream().mapToInt(p -> persons.stream().mapToInt(w -> counting(p, w).size()).sum()).sum();
    }
}
