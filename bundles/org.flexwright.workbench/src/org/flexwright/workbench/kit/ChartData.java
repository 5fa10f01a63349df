package org.flexwright.workbench.kit;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What a chart shows.
 *
 * @param name       what it is, for people who hear the screen and for file names
 * @param xTitle     quantity and unit along
 * @param yTitle     quantity and unit upwards
 * @param categories names instead of numbers along, or empty
 * @param bandLow    lower end of the target band, or null
 * @param bandHigh   upper end of the target band, or null
 * @param series     the series, at most six so that colours stay apart
 */
public record ChartData(String name, String xTitle, String yTitle, List<String> categories, Double bandLow, Double bandHigh,
        List<ChartSeries> series) {

    public ChartData {
        Objects.requireNonNull(name, "name");
        categories = List.copyOf(categories);
        series = List.copyOf(series);
    }

    /** A chart without categories and band. */
    public static ChartData of(String name, String xTitle, String yTitle, List<ChartSeries> series) {
        return new ChartData(name, xTitle, yTitle, List.of(), null, null, series);
    }

    /** True when there is a target band. */
    public boolean banded() {
        return bandLow != null || bandHigh != null;
    }

    /** The numbers as comma separated text with a header line; decimal point everywhere. */
    public String csv() {
        StringBuilder text = new StringBuilder("series," + quoted(xTitle) + "," + quoted(yTitle) + ",minus,plus\n");
        for (ChartSeries s : series) {
            for (int i = 0; i < s.x().length; i++) {
                String along = categories.isEmpty() ? number(s.x()[i]) : quoted(categories.get((int) s.x()[i]));
                text.append(quoted(s.name())).append(',').append(along).append(',').append(number(s.y()[i])).append(',');
                text.append(s.minus().length == 0 ? "," : number(s.minus()[i]) + "," + number(s.plus()[i])).append('\n');
            }
        }
        return text.toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6g", value);
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }
}
