package org.flexwright.curing.formula;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Printed figures of curing, with their sources. */
class CuringFiguresTest {

    private static final String ALGEBRA = "derived: closed form of the rate law";
    private static final String BASER = "Baser and Khakhar 1994, constants by way of open foam code of EU project MoDeNa";
    private static final String CASTRO = "Castro and Macosko 1982, constants by way of open foam code of EU project MoDeNa";
    private static final String FLORY = "derived: Flory-Stockmayer condition";

    /** Test resin: second order, 1e6 1/s, 55 kJ/mol, 80 kJ/kg, 1800 J/kg/K, 1080 kg/m3, 0.20 W/m/K. */
    static Resin testResin() {
        return new Resin(new Arrhenius(1e6, 55), 2, 80_000, 1800, 1080, 0.20, Resin.NONE);
    }

    @Test
    void rateLaws() {
        expect("processes/B1 kt=1.1", OrderRate.conversion(1, 1), ALGEBRA);
        expect("processes/B1 kt=1.2", OrderRate.conversion(1.5, 1), ALGEBRA);
        expect("processes/B1 kt=1.3", OrderRate.conversion(2, 1), ALGEBRA);
        for (double order : new double[] { 0.5, 1, 1.5, 2, 3 }) {
            assertEquals(0.7, OrderRate.conversion(order, OrderRate.progress(order, 0.7)), 1e-12);
        }
        assertEquals(1, OrderRate.conversion(0.5, 5), 0, "an order below 1 ends");
    }

    @Test
    void autocatalyticCure() {
        KamalSourour cure = new KamalSourour(1e-3, 5e-3, 1, 1);
        double[] times = { 100, 300, 600 };
        for (int i = 0; i < times.length; i++) {
            expect("processes/B1 Kamal (closed form printed)." + (i + 1), cure.conversion(times[i]), ALGEBRA);
            expect("processes/B1 Kamal (ODE)." + (i + 1), cure.integrated(times[i]), "derived: integrated rate law");
        }
        expect("processes/B1 t(.9) (quadrature)", cure.summed(0.9), "derived: quadrature of the rate law");
        assertEquals(667.889, cure.timeTo(0.9), 5e-4, "the closed form agrees");
        assertEquals(0.4, cure.fastest(), 1e-12);
        assertEquals(cure.rate(0.4), Math.max(cure.rate(0.39), Math.max(cure.rate(0.4), cure.rate(0.41))), 0);
        assertEquals(0, new KamalSourour(5e-3, 1e-3, 1, 1).fastest(), 0);
    }

    @Test
    void fastPolyurethane() {
        Resin resin = PublishedSets.baserKhakhar();
        expect("processes/B2 P1 kC0, dTad.1", resin.rate().at(25), BASER);
        expect("processes/B2 P1 kC0, dTad.2", resin.adiabaticRise(), BASER);
        expect("processes/B2 P1 adiabatic.1", resin.adiabaticTime(0.5, 297), BASER);
        expect("processes/B2 P1 adiabatic.2", 297 + 0.5 * resin.adiabaticRise(), BASER);
        expect("processes/B2 P1 adiabatic.3", resin.adiabaticTime(0.85, 297), BASER);
        expect("processes/B2 P1 isothermal.1", resin.isothermalTime(0.5, 297), BASER);
        expect("processes/B2 P1 isothermal.2", resin.isothermalTime(0.85, 297), BASER);
        Resin corrected = PublishedSets.baserKhakharCorrected();
        expect("processes/B2 P1 R(X) .85.1", corrected.adiabaticTime(0.85, 297), BASER);
        expect("processes/B2 P1 R(X) .85.2", corrected.isothermalTime(0.85, 297), BASER);
    }

    @Test
    void foamAndSoftPolyurethane() {
        String foam = "Baser and Khakhar 1994 with water, equations read in open foam code of EU project MoDeNa";
        expect("processes/B2 P2 k(50).1", PublishedSets.foamGelling().at(50), foam);
        expect("processes/B2 P2 k(50).2", PublishedSets.foamBlowing().at(50), foam);
        String kincal = "Kincal and Ozkar 1997, abstract; units L/mol/s assumed";
        expect("processes/B2 P3.1", PublishedSets.softPolyurethane(323.15), kincal);
        expect("processes/B2 P3.2", PublishedSets.softPolyurethane(333.15), kincal);
        expect("processes/B2 P3 X 24 h", OrderRate.conversion(2, 0.7 * PublishedSets.softPolyurethane(333.15) * 86_400), kincal);
        expect("processes/B2 P3 Ea=dH+RT at 50 C", PublishedSets.activationEnergy(41.1, 323.15), kincal);
    }

    @Test
    void viscosityWhileCuring() {
        CastroMacosko one = PublishedSets.viscosity1();
        CastroMacosko two = PublishedSets.viscosity2();
        double[] conversions = { 0, 0.3, 0.5, 0.6 };
        for (int i = 0; i < conversions.length; i++) {
            expect("processes/B2 V1 50C." + (i + 1), one.at(conversions[i], 323.15).orElseThrow(), CASTRO);
            expect("processes/B2 V2 50C." + (i + 1), two.at(conversions[i], 323.15).orElseThrow(), CASTRO);
        }
        expect("processes/B2 V 25C X0.1", one.at(0, 298.15).orElseThrow(), CASTRO);
        expect("processes/B2 V 25C X0.2", two.at(0, 298.15).orElseThrow(), CASTRO);
        assertTrue(one.at(0.85, 298.15).isEmpty(), "gelled is no number");
    }

    @Test
    void workingTimeOfThatPolyurethane() {
        Resin resin = PublishedSets.baserKhakhar();
        CastroMacosko viscosity = PublishedSets.viscosity1();
        String both = BASER + "; " + CASTRO;
        double doubled = viscosity.conversionAt(2);
        expect("processes/B2 pot doubling 20/25/35, x4 25.1", resin.isothermalTime(doubled, 293.15), both);
        expect("processes/B2 pot doubling 20/25/35, x4 25.2", resin.isothermalTime(doubled, 298.15), both);
        expect("processes/B2 pot doubling 20/25/35, x4 25.3", resin.isothermalTime(doubled, 308.15), both);
        expect("processes/B2 pot doubling 20/25/35, x4 25.4", resin.isothermalTime(viscosity.conversionAt(4), 298.15), both);
        double thinnest = viscosity.thinnest(297, resin.adiabaticRise());
        expect("processes/B2 adiabatic visc.1", viscosity.at(0, 297).orElseThrow(), both);
        expect("processes/B2 adiabatic visc.2", viscosity.at(thinnest, 297 + thinnest * resin.adiabaticRise()).orElseThrow(), both);
        expect("processes/B2 adiabatic visc.3", thinnest, both);
        assertEquals(0, viscosity.thinnest(297, 0), 0, "without a rise it never thins");
    }

    @Test
    void gelPoints() {
        expect("processes/B3 FS.1", new GelPoint(3, 2, 1).gel().orElseThrow(), FLORY);
        expect("processes/B3 FS.2", new GelPoint(3, 3, 1).gel().orElseThrow(), FLORY);
        expect("processes/B3 FS.3", new GelPoint(4, 2, 1).gel().orElseThrow(), FLORY);
        expect("processes/B3 FS.4", new GelPoint(2.5, 2.2, 1).gel().orElseThrow(), FLORY);
        expect("processes/B3 FS.5", new GelPoint(3, 2, 0.9).gel().orElseThrow(), FLORY);
        expect("processes/B3 FS.6", new GelPoint(3, 2, 1.1).gel().orElseThrow(), FLORY);
        GelPoint never = new GelPoint(3, 2, 0.4);
        expect("processes/B3 (3,2) r .4: pOH, pNCO.1", never.hydroxylConversion(), FLORY);
        expect("processes/B3 (3,2) r .4: pOH, pNCO.2", never.isocyanateConversion(), FLORY);
        assertTrue(never.gel().isEmpty());
        expect("processes/B3 Carothers, 1/(f-1).1", new GelPoint(3, 2, 1).carothers(), "derived: Carothers");
        expect("processes/B3 Carothers, 1/(f-1).2", new GelPoint(3, 2, 1).simple(), "derived");
        assertEquals(2.5, GelPoint.functionality(List.of(new GelPoint.Groups(2, 1), new GelPoint.Groups(3, 1))), 1e-12);
    }

    @Test
    void schedules() {
        String arrhenius = "derived: Arrhenius equivalence";
        double[] energies = { 44, 56, 70 };
        for (int i = 0; i < energies.length; i++) {
            expect("processes/B4 2h60=23." + (i + 1), Schedule.hold(120, 60).equivalentMinutes(energies[i], 23) / 60, arrhenius);
        }
        Schedule ramp = Schedule.of(List.of(new Schedule.Stage(60, 80, true)), 20);
        double seconds = 60 * ramp.equivalentMinutes(55, 50);
        double kt = testResin().rate().at(50) * seconds;
        expect("processes/B4 ramp.1", kt, arrhenius);
        expect("processes/B4 ramp.2", OrderRate.conversion(2, kt), arrhenius);
        expect("processes/B4 ramp.3", seconds, arrhenius);
    }

    @Test
    void adiabaticRise() {
        expect("processes/B5", AdiabaticRise.kelvin(1.0695, 74.9, 1800), "derived: heat balance");
    }

    @Test
    void warmCups() {
        String lumped = "derived: lumped heat balance of the test resin";
        double room = 296.15;
        CupHeat small = new CupHeat(testResin(), 0.020, room, 8);
        CupHeat big = new CupHeat(testResin(), 0.500, room, 8);
        expect("processes/A10 20 g.1", small.peak(20_000).orElseThrow().kelvin(), lumped);
        expect("processes/A10 20 g.2", small.peak(20_000).orElseThrow().seconds(), lumped);
        expect("processes/A10 20 g.3", small.timeTo(0.3, 20_000).orElseThrow(), lumped);
        expect("processes/A10 500 g.1", big.peak(20_000).orElseThrow().kelvin(), lumped);
        expect("processes/A10 500 g.2", big.peak(20_000).orElseThrow().seconds(), lumped);
        expect("processes/A10 500 g.3", big.timeTo(0.3, 20_000).orElseThrow(), lumped);
        expect("processes/A10 iso, adia, dTad.1", testResin().isothermalTime(0.3, room), lumped);
        expect("processes/A10 iso, adia, dTad.2", testResin().adiabaticTime(0.3, room), lumped);
        expect("processes/A10 iso, adia, dTad.3", testResin().adiabaticRise(), lumped);
    }

    @Test
    void shrinkage() {
        expect("processes/B8.1", 100 * Shrinkage.linear(0.02), "derived: geometry");
        expect("processes/B8.2", 100 * Shrinkage.linear(0.05), "derived: geometry");
        assertEquals(0.98, Math.pow(1 - Shrinkage.linear(0.02), 3), 1e-12);
        assertEquals(10 / (0.99 * 0.99 * 1.001), Shrinkage.mouldSize(10, 0.01, 2e-4, 2e-5, 50), 1e-12);
    }
}
