package org.flexwright.core.rubber;

/** How an incompressible piece is stretched; the stretch is length over undeformed length. */
public enum Loading {
    /** Pulled or pressed in one direction, free in the others. */
    UNIAXIAL("one direction") {
        @Override
        double second(double stretch) {
            return 1 / Math.sqrt(stretch);
        }
    },
    /** Alike in two directions. */
    EQUIBIAXIAL("two directions alike") {
        @Override
        double second(double stretch) {
            return stretch;
        }
    },
    /** Pulled in one direction, held in the second: pure shear. */
    PLANAR("pure shear") {
        @Override
        double second(double stretch) {
            return 1;
        }
    };

    private final String title;

    Loading(String title) {
        this.title = title;
    }

    /** For people, after "in". */
    public String title() {
        return title;
    }

    /** The second in-plane stretch that goes with the first. */
    abstract double second(double stretch);
}
