package org.flexwright.core.flow;

/**
 * A liquid whose shear stress is {@code K * rate^n}.
 *
 * @param consistency K in Pa s^n, above 0; the viscosity in Pa s when the index is 1
 * @param index       n, above 0; 1 for a liquid whose viscosity does not depend on the rate
 */
public record PowerLaw(double consistency, double index) {
    public PowerLaw {
        if (!(consistency > 0) || !(index > 0)) {
            throw new IllegalArgumentException("A power law needs K and n above 0, got " + consistency + ", " + index + ".");
        }
    }

    /** A liquid of constant viscosity in Pa s. */
    public static PowerLaw newtonian(double viscosity) {
        return new PowerLaw(viscosity, 1);
    }
}
