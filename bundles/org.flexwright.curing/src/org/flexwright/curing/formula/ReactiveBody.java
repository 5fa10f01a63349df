package org.flexwright.curing.formula;

/**
 * A part that cures between warm walls: rho cp T_t = k lap T + rho H X_t, the surface held at the wall's temperature. Cells of equal
 * width on two grids, extrapolated (Richardson); the worked case is met to some 1e-4 K.
 *
 * @param body   shape
 * @param resin  what it is made of
 * @param half   half thickness or radius in m
 * @param startK K everywhere at the start
 * @param wallK  K of the wall
 */
public record ReactiveBody(Body body, Resin resin, double half, double startK, double wallK) {

    private static final int COARSE = 30;

    /**
     * The centre at a time.
     *
     * @param seconds    s
     * @param kelvin     K
     * @param conversion 0..1
     */
    public record Centre(double seconds, double kelvin, double conversion) {
    }

    /** The centre at each of the rising times in s. */
    public Centre[] centre(double... seconds) {
        ReactiveCells coarse = new ReactiveCells(this, COARSE);
        ReactiveCells fine = new ReactiveCells(this, 2 * COARSE);
        Centre[] course = new Centre[seconds.length];
        double before = 0;
        for (int i = 0; i < seconds.length; i++) {
            coarse.advance(seconds[i] - before);
            fine.advance(seconds[i] - before);
            before = seconds[i];
            course[i] = new Centre(before, extrapolate(coarse.centreKelvin(), fine.centreKelvin()),
                    extrapolate(coarse.centreConversion(), fine.centreConversion()));
        }
        return course;
    }

    /** Second order in the width of a cell: the fine grid has a quarter of the coarse one's error. */
    private static double extrapolate(double coarse, double fine) {
        return fine + (fine - coarse) / 3;
    }
}
