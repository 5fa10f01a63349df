package org.flexwright.core.flow;

/**
 * A round bore.
 *
 * @param radius m, above 0
 * @param length m, above 0
 */
public record RoundChannel(double radius, double length) implements Channel {
    public RoundChannel {
        if (!(radius > 0) || !(length > 0)) {
            throw new IllegalArgumentException("A round channel needs radius and length above 0, got " + radius + ", " + length + ".");
        }
    }

    @Override
    public double pressureDrop(PowerLaw liquid, double flow) {
        double n = liquid.index();
        double wallRate = (3 * n + 1) / n * flow / (Math.PI * Math.pow(radius, 3));
        return 2 * liquid.consistency() * length / radius * Math.pow(wallRate, n);
    }

    @Override
    public double flow(PowerLaw liquid, double pressureDrop) {
        double n = liquid.index();
        double wallRate = Math.pow(pressureDrop * radius / (2 * liquid.consistency() * length), 1 / n);
        return wallRate * n / (3 * n + 1) * Math.PI * Math.pow(radius, 3);
    }

    @Override
    public double apparentWallRate(double flow) {
        return 4 * flow / (Math.PI * Math.pow(radius, 3));
    }

    @Override
    public double frontLength(double pressure, double driven) {
        return Math.sqrt(radius * radius * pressure / 4 * driven);
    }
}
