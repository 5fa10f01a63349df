package org.flexwright.testing.piece;

import org.flexwright.core.Source;

/** Dumbbell test pieces for tensile tests. Results of different types are not comparable with each other. */
public enum Dumbbell {
    ISO_37_TYPE_1("ISO 37 type 1", 6.0, 25, 2.0, 500, false),
    ISO_37_TYPE_1A("ISO 37 type 1A", 5.0, 20, 2.0, 500, false),
    ISO_37_TYPE_2("ISO 37 type 2", 4.0, 20, 2.0, 500, false),
    ISO_37_TYPE_3("ISO 37 type 3", 4.0, 10, 2.0, 200, false),
    ISO_37_TYPE_4("ISO 37 type 4", 2.0, 10, 1.0, 200, false),
    ASTM_D412_DIE_C("ASTM D412 die C", 6.0, 25, 2.0, 500, true);

    private final String designation;
    private final double width;
    private final double testLength;
    private final double thickness;
    private final double speed;
    private final boolean sizesSeen;

    Dumbbell(String designation, double width, double testLength, double thickness, double speed, boolean sizesSeen) {
        this.designation = designation;
        this.width = width;
        this.testLength = testLength;
        this.thickness = thickness;
        this.speed = speed;
        this.sizesSeen = sizesSeen;
    }

    /** Standard and type as printed. */
    public String designation() {
        return designation;
    }

    @Override
    public String toString() {
        return designation;
    }

    /** Width of the narrow part in mm. */
    public double width() {
        return width;
    }

    /** Test length in mm. */
    public double testLength() {
        return testLength;
    }

    /** Usual thickness in mm. */
    public double thickness() {
        return thickness;
    }

    /** Speed of the moving grip in mm/min. */
    public double speed() {
        return speed;
    }

    /** Where width and test length come from. */
    public Source source() {
        return sizesSeen ? Source.published(designation + ", clause not confirmed") : Source.fromMemory(designation + ", clause not confirmed");
    }
}
