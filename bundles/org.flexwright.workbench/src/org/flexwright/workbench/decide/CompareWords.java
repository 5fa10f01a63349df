package org.flexwright.workbench.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.Comparison.Cell;
import org.flexwright.core.view.Comparison.Column;
import org.flexwright.core.view.Comparison.Row;

/** Cells and headings of the comparison in words, for people who hear the screen and for tool tips. */
final class CompareWords {

    private CompareWords() {
    }

    /** A cell: trial, target, value and verdict with its reason. */
    static String cell(Comparison shown, int row, int column) {
        Row target = shown.rows().get(row);
        Column trial = shown.columns().get(column);
        Cell cell = shown.cell(row, column);
        List<String> words = new ArrayList<>();
        words.add(trial.code() + ", " + target.title() + ", target " + target.limits());
        words.add(cell.value().isEmpty() ? "no value" : cell.value());
        if (!cell.word().isEmpty()) {
            words.add(cell.word());
        }
        if (cell.judgement() != null) {
            words.add(cell.judgement().reason().text());
            cell.judgement().notes().forEach(note -> words.add(note.text()));
        }
        return String.join("; ", words);
    }

    /** A column's heading with every factor that differs. */
    static String column(Column column) {
        String differing = column.differing().stream().map(f -> f.label() + " " + f.value()).collect(Collectors.joining("; "));
        return column.code() + " " + column.title() + (column.summary().isEmpty() ? "" : ", " + column.summary()) + (differing.isEmpty() ? "" : "; " + differing);
    }

    /** A row's heading. */
    static String row(Row row, String sign) {
        return row.title() + ", target " + row.limits() + (row.weight() == null ? "" : ", weight " + org.flexwright.core.field.FieldText.digits(row.weight()))
                + (sign.isEmpty() ? "" : sign.equals("↑") ? ", sorted, smallest first" : ", sorted, largest first");
    }
}
