package org.flexwright.core.rubber;

/**
 * Symmetric stiffness in plane stress, Kirchhoff stress against logarithmic stretch, MPa.
 *
 * @param d11 first direction
 * @param d22 second direction
 * @param d12 between them
 */
public record Tangent(double d11, double d22, double d12) {

    /** Product of the two principal stiffnesses; 0 where the law loses its stability. */
    public double determinant() {
        return d11 * d22 - d12 * d12;
    }

    /** Drucker's condition: more strain never takes less stress. */
    public boolean stable() {
        return d11 + d22 > 0 && determinant() > 0;
    }

    /** Sum of two. */
    Tangent plus(Tangent other) {
        return new Tangent(d11 + other.d11, d22 + other.d22, d12 + other.d12);
    }
}
