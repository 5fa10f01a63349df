package org.flexwright.materials.formula;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Stiffness of rubber blocks bonded to plates, from the table of Lindley 1978 for natural rubber. */
public final class RubberBlock {

    /**
     * A row of the table.
     *
     * @param irhd hardness, itself good to 2
     * @param e0   Young's modulus, MPa
     * @param g    shear modulus, MPa
     * @param k    factor of the shape
     * @param bulk bulk modulus, MPa
     */
    public record Row(double irhd, double e0, double g, double k, double bulk) {
    }

    private static final List<Row> TABLE = List.of(new Row(30, 0.92, 0.30, 0.93, 1000), new Row(35, 1.18, 0.37, 0.89, 1000),
            new Row(40, 1.50, 0.45, 0.85, 1000), new Row(45, 1.80, 0.54, 0.80, 1000), new Row(50, 2.20, 0.64, 0.73, 1030),
            new Row(55, 3.25, 0.81, 0.64, 1090), new Row(60, 4.45, 1.06, 0.57, 1150), new Row(65, 5.85, 1.37, 0.54, 1210),
            new Row(70, 7.35, 1.73, 0.53, 1270), new Row(75, 9.40, 2.22, 0.52, 1330));

    private RubberBlock() {
    }

    /** Shape factor of a disc: loaded area to free area, d/(4 t). */
    public static double discShape(double diameter, double thickness) {
        return diameter / (4 * thickness);
    }

    /** Apparent compression modulus of a bonded block in MPa: E0 (1 + 2 k S^2). */
    public static double compression(Row row, double shape) {
        return row.e0() * (1 + 2 * row.k() * shape * shape);
    }

    /** The row for an IRHD of 30 to 75, between rows by straight lines; empty outside. */
    public static Optional<Row> at(double irhd) {
        if (irhd < TABLE.get(0).irhd() || irhd > TABLE.get(TABLE.size() - 1).irhd()) {
            return Optional.empty();
        }
        return Optional.of(new Row(irhd, between(irhd, Row::e0), between(irhd, Row::g), between(irhd, Row::k), between(irhd, Row::bulk)));
    }

    private static double between(double irhd, ToDoubleFunction<Row> value) {
        for (int i = 1; i < TABLE.size(); i++) {
            Row before = TABLE.get(i - 1);
            Row after = TABLE.get(i);
            if (irhd <= after.irhd()) {
                double share = (irhd - before.irhd()) / (after.irhd() - before.irhd());
                return value.applyAsDouble(before) + share * (value.applyAsDouble(after) - value.applyAsDouble(before));
            }
        }
        throw new IllegalArgumentException("No row for " + irhd + " IRHD.");
    }
}
