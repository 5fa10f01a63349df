package org.flexwright.curing.formula;

import org.flexwright.numerics.Ode;

/**
 * A part that cures between warm walls: rho cp T_t = k lap T + rho H X_t, the surface held at the wall's temperature. Cells of equal
 * width, exact in time to a tight tolerance; two grids are extrapolated (Richardson), which leaves an error of some 1e-3 K.
 *
 * @param body   shape
 * @param resin  what it is made of
 * @param half   half thickness or radius in m
 * @param startK K everywhere at the start
 * @param wallK  K of the wall
 */
public record ReactiveBody(Body body, Resin resin, double half, double startK, double wallK) {

    private static final int COARSE = 40;
    private static final double TIGHT = 1e-7;

    /**
     * The centre at a time.
     *
     * @param seconds s
     * @param kelvin  K
     * @param conversion 0..1
     */
    public record Centre(double seconds, double kelvin, double conversion) {
    }

    /** The centre at each of the rising times in s. */
    public Centre[] centre(double... seconds) {
        Centre[] coarse = run(COARSE, seconds);
        Centre[] fine = run(2 * COARSE, seconds);
        Centre[] best = new Centre[seconds.length];
        for (int i = 0; i < best.length; i++) {
            best[i] = new Centre(seconds[i], extrapolate(coarse[i].kelvin(), fine[i].kelvin()), extrapolate(coarse[i].conversion(), fine[i].conversion()));
        }
        return best;
    }

    /** Second order in the width of a cell: the fine grid has a quarter of the coarse one's error. */
    private static double extrapolate(double coarse, double fine) {
        return fine + (fine - coarse) / 3;
    }

    private Centre[] run(int cells, double[] seconds) {
        double[] start = new double[2 * cells];
        java.util.Arrays.fill(start, 0, cells, startK);
        double[][] rows = Ode.integrate((t, y) -> derivatives(cells, y), 0, start, seconds, TIGHT);
        Centre[] centre = new Centre[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            centre[i] = new Centre(seconds[i], atCentre(rows[i], 0), atCentre(rows[i], cells));
        }
        return centre;
    }

    /** Even about the centre, so the two innermost cells give it by a parabola. */
    private static double atCentre(double[] y, int offset) {
        return y[offset] + (y[offset] - y[offset + 1]) / 8;
    }

    private double[] derivatives(int cells, double[] y) {
        double width = half / cells;
        double spread = resin.diffusivity() / width;
        double[] d = new double[2 * cells];
        double inflow = 0;
        for (int i = 0; i < cells; i++) {
            double outer = (i + 1.0) / cells;
            boolean last = i == cells - 1;
            double gradient = last ? (8 * wallK - 9 * y[i] + y[i - 1]) / 3 : y[i + 1] - y[i];
            double outflow = spread * gradient * Math.pow(outer, body.curvature());
            double rate = resin.rate(y[cells + i], y[i]);
            d[cells + i] = rate;
            d[i] = (outflow - inflow) / volume(i, cells) + resin.adiabaticRise() * rate;
            inflow = outflow;
        }
        return d;
    }

    /** Volume of a cell in m by the surface at x = 1. */
    private double volume(int i, int cells) {
        int power = body.curvature() + 1;
        return half / power * (Math.pow((i + 1.0) / cells, power) - Math.pow((double) i / cells, power));
    }
}
