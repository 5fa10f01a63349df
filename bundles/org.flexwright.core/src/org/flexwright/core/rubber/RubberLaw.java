package org.flexwright.core.rubber;

/** An incompressible elastic law of rubber. Stresses and moduli in MPa, energies in MPa (N mm a mm3), stretches above 0. */
public sealed interface RubberLaw permits PolynomialLaw, OgdenLaw {

    /** Energy stored in a unit of undeformed volume at two in-plane stretches; the third follows. */
    double energy(double first, double second);

    /** Nominal stress (force over undeformed area) at a stretch. */
    double stress(Loading loading, double stretch);

    /** How the in-plane Kirchhoff stresses answer to small changes of the logarithmic stretches, thickness free. */
    Tangent tangent(double first, double second);

    /** Initial shear modulus. */
    double shearModulus();

    /** Initial Young's modulus, three times the shear modulus. */
    default double youngsModulus() {
        return 3 * shearModulus();
    }

    /** The tangent on the way of a loading. */
    default Tangent tangent(Loading loading, double stretch) {
        return tangent(stretch, loading.second(stretch));
    }
}
