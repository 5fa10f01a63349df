package org.flexwright.core.rubber;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.flexwright.core.Source;
import org.flexwright.core.rubber.RubberFit.Point;

/**
 * Natural rubber with 8 % sulphur in three loadings, 53 points, the usual trial of a rubber law. The files beside this class say what is known of
 * the copies.
 */
public final class Treloar {
    /** Where it was published. */
    public static final Source SOURCE = Source.published("L. R. G. Treloar 1944, Trans. Faraday Soc. 40, 59, as kept in published copies");

    private static final double MPA = 0.0980665;

    private Treloar() {
    }

    /** Name of the file of a loading. */
    public static String fileName(Loading loading) {
        return "treloar-" + loading.name().toLowerCase(Locale.ROOT) + ".csv";
    }

    /** The file of a loading as it is kept: words after #, a heading, stretch and stress in kgf/cm2. */
    public static String file(Loading loading) {
        try (InputStream in = Treloar.class.getResourceAsStream(fileName(loading))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The points of a loading, stress in MPa. */
    public static List<Point> points(Loading loading) {
        return file(loading).lines().filter(line -> !line.isEmpty() && Character.isDigit(line.charAt(0))).map(line -> line.split(","))
                .map(pair -> new Point(loading, Double.parseDouble(pair[0]), Double.parseDouble(pair[1]) * MPA)).toList();
    }

    /** All 53. */
    public static List<Point> points() {
        return Stream.of(Loading.values()).flatMap(loading -> points(loading).stream()).toList();
    }
}
