package org.flexwright.core.rubber;

import java.util.List;
import java.util.stream.Stream;

import org.flexwright.core.rubber.RubberFit.Point;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;

/**
 * Stretch and nominal stress in kgf/cm2 of natural rubber with 8 % sulphur, L. R. G. Treloar 1944, Trans. Faraday Soc. 40, 59, as kept in
 * published copies: two agree on the uniaxial ones, copies of the equibiaxial ones differ by up to 3 %, the planar ones are one copy
 * rounded back.
 */
final class Treloar {
    static final List<Point> UNIAXIAL = read(Loading.UNIAXIAL, "1.02:0.26 1.125:1.37 1.24:2.30 1.39:3.23 1.585:4.16 1.90:5.10 2.18:6.00 2.42:6.90 3.02:8.80 3.57:10.7 4.03:12.5 "
            + "4.76:16.2 5.36:19.9 5.75:23.6 6.15:27.4 6.40:31.0 6.60:34.8 6.85:38.5 7.05:42.1 7.15:45.8 7.25:49.6 7.40:53.3 "
            + "7.50:57.0 7.60:64.4");
    static final List<Point> EQUIBIAXIAL = read(Loading.EQUIBIAXIAL, "1.03:0.95 1.07:1.60 1.12:2.42 1.14:2.62 1.20:3.32 1.31:4.43 1.42:5.18 1.68:6.60 1.94:7.78 2.49:9.79 3.03:12.6 "
            + "3.43:14.7 3.75:17.4 4.07:20.1 4.26:22.5 4.45:24.7");
    static final List<Point> PLANAR = read(Loading.PLANAR, "1.03:0.68 1.12:1.62 1.19:2.50 1.31:3.39 1.46:4.27 1.84:6.04 2.38:7.80 2.97:9.60 3.47:11.4 3.95:13.1 4.37:14.9 "
            + "4.69:16.6 4.97:18.4");

    private Treloar() {
    }

    static List<Point> firstNine() {
        return UNIAXIAL.stream().filter(p -> p.stretch() < 3.1).toList();
    }

    static List<Point> all() {
        return Stream.of(UNIAXIAL, EQUIBIAXIAL, PLANAR).flatMap(List::stream).toList();
    }

    private static List<Point> read(Loading loading, String text) {
        return Stream.of(text.split(" ")).map(pair -> pair.split(":"))
                .map(pair -> new Point(loading, Double.parseDouble(pair[0]), QuantityParser.parse(pair[1] + " kgf/cm2", QuantityKind.STRESS).canonical())).toList();
    }
}
