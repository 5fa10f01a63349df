package org.flexwright.core.rubber;

/** How an incompressible piece is stretched; the stretch is length over undeformed length. */
public enum Loading {
    /** Pulled or pressed in one direction, free in the others. */
    UNIAXIAL {
        @Override
        double second(double stretch) {
            return 1 / Math.sqrt(stretch);
        }
    },
    /** Alike in two directions. */
    EQUIBIAXIAL {
        @Override
        double second(double stretch) {
            return stretch;
        }
    },
    /** Pulled in one direction, held in the second: pure shear. */
    PLANAR {
        @Override
        double second(double stretch) {
            return 1;
        }
    };

    /** The second in-plane stretch that goes with the first. */
    abstract double second(double stretch);
}
