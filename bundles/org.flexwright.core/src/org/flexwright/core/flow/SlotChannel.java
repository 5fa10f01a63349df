package org.flexwright.core.flow;

/**
 * A flat slot much wider than it is high.
 *
 * @param width  m, above 0
 * @param height m, above 0; the formulas hold for height much smaller than width
 * @param length m, above 0
 */
public record SlotChannel(double width, double height, double length) implements Channel {
    public SlotChannel {
        if (!(width > 0) || !(height > 0) || !(length > 0)) {
            throw new IllegalArgumentException(
                    "A slot needs width, height and length above 0, got " + width + ", " + height + ", " + length + ".");
        }
    }

    @Override
    public double pressureDrop(PowerLaw liquid, double flow) {
        double n = liquid.index();
        double wallRate = 2 * (2 * n + 1) / n * flow / (width * height * height);
        return 2 * liquid.consistency() * length / height * Math.pow(wallRate, n);
    }

    @Override
    public double flow(PowerLaw liquid, double pressureDrop) {
        double n = liquid.index();
        double wallRate = Math.pow(pressureDrop * height / (2 * liquid.consistency() * length), 1 / n);
        return wallRate * n / (2 * (2 * n + 1)) * width * height * height;
    }

    @Override
    public double apparentWallRate(double flow) {
        return 6 * flow / (width * height * height);
    }

    @Override
    public double frontLength(double pressure, double driven) {
        return Math.sqrt(height * height * pressure / 6 * driven);
    }
}
