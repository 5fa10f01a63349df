package org.flexwright.curing.formula;

import java.util.List;

import org.flexwright.numerics.Ode;

/** Sets of constants from publications: worked examples for checking formulas, never the constants of somebody's own resin. */
public final class PublishedSets {

    private static final double BOLTZMANN_BY_PLANCK = 1.380649e-23 / 6.62607015e-34;

    private static final double FOAM_OH = 3400;
    private static final double FOAM_WATER = 300;
    private static final double FOAM_NCO = 4000;

    private PublishedSets() {
    }

    /** Fast rigid polyurethane without water, second order (Baser and Khakhar 1994), the plain law; trustworthy to X = 0.5. */
    public static Resin baserKhakhar() {
        return baserKhakhar(Resin.NONE);
    }

    /** The same with the factor its users select for it. */
    public static Resin baserKhakharCorrected() {
        return baserKhakhar(new Resin.Correction(x -> x < 0.5 ? 1 : x < 0.87 ? 2.013 - 2.027 * x : 3.461 * x - 2.761, List.of(0.5, 0.87)));
    }

    private static Resin baserKhakhar(Resin.Correction correction) {
        double concentration = 3765;
        double density = 1100;
        return new Resin(new Arrhenius(1965 * concentration, 54.87), 2, 74_900 * concentration / density, 1800, density, 0.2, correction);
    }

    /** Rate of hydroxyl with isocyanate in a water-blown foam, m3/mol/s. */
    public static Arrhenius foamGelling() {
        return new Arrhenius(1.7348, 40.4);
    }

    /** Rate of water with isocyanate in the same foam, 1/s. */
    public static Arrhenius foamBlowing() {
        return new Arrhenius(1385, 32.66);
    }

    /**
     * Conversion of hydroxyl and share of water used up in that foam after a time in s at a temperature in K: 3400, 300 and 4000 mol/m3 of
     * OH, water and NCO.
     */
    public static double[] foam(double seconds, double kelvin) {
        double gelling = foamGelling().atKelvin(kelvin) * FOAM_OH;
        double blowing = foamBlowing().atKelvin(kelvin);
        return Ode.integrate((t, y) -> new double[] { gelling * (1 - y[0]) * (FOAM_NCO / FOAM_OH - 2 * FOAM_WATER / FOAM_OH * y[1] - y[0]), blowing * (1 - y[1]) },
                0, new double[] { 0, 0 }, seconds, 1e-10);
    }

    /** Rate of HTPB with IPDI, L/mol/s at a temperature in K (Kincal and Ozkar 1997): activation enthalpy 41.1 kJ/mol, entropy -198 J/mol/K. */
    public static double softPolyurethane(double kelvin) {
        return BOLTZMANN_BY_PLANCK * kelvin * Math.exp(-198 / Arrhenius.GAS_CONSTANT) * Math.exp(-41_100 / (Arrhenius.GAS_CONSTANT * kelvin));
    }

    /** Activation energy in kJ/mol that belongs to an activation enthalpy at a temperature in K: Ea = dH + RT. */
    public static double activationEnergy(double enthalpy, double kelvin) {
        return enthalpy + Arrhenius.GAS_CONSTANT * kelvin / 1000;
    }

    /** Viscosity set 1 of Castro and Macosko 1982. */
    public static CastroMacosko viscosity1() {
        return new CastroMacosko(4.1e-8, 38.3, 4, -2, 0.85);
    }

    /** Viscosity set 2 of Castro and Macosko 1982. */
    public static CastroMacosko viscosity2() {
        return new CastroMacosko(10.3e-8, 41.3, 1.5, 1, 0.65);
    }
}
