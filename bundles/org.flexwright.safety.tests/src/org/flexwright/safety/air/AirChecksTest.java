package org.flexwright.safety.air;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.safety.air.ReferenceLimit.Kind;
import org.flexwright.safety.air.ReferenceLimit.Substance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AirChecksTest {
    private static final String GUIDE = "NIOSH Pocket Guide, DHHS (NIOSH) 2005-149";
    private static final double[] CHANGES = {1, 2, 4, 6, 8, 10, 12, 15, 20, 50};

    @Test
    void conversions() {
        expect("safety/2 molar volume 25 C 1 atm (R T/p).1", Vapour.molarVolume(25, Vapour.ATMOSPHERE), Vapour.SOURCE.display());
        expect("safety/2 IPA mg/m3 per ppm", Vapour.milligrams(1, Solvent.ISOPROPANOL.molarMass(), Vapour.MOLAR_VOLUME), GUIDE);
        // Molar masses of 4,4'-MDI and 2,4-TDI by their formulas; limits of OSHA Table Z-1.
        expect("safety/2 ppm<->mg/m3 of listed limits.1", Vapour.milligrams(0.02, 250.25, Vapour.MOLAR_VOLUME), "29 CFR 1910.1000, Table Z-1, MDI");
        expect("safety/2 ppm<->mg/m3 of listed limits.2", Vapour.milligrams(0.02, 174.16, Vapour.MOLAR_VOLUME), "29 CFR 1910.1000, Table Z-1, TDI");
        assertEquals(123, Vapour.ppm(Vapour.milligrams(123, 60.1, 24.45), 60.1, 24.45), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1,53 degF", "2,0 degF", "3,55 degF", "4,200 degF"})
    void fahrenheitFigures(int number, String printed) {
        expect("safety/2 flash C from F (53, 0, 55); UEL T 200 F." + number, QuantityParser.parse(printed, QuantityKind.TEMPERATURE).canonical(), GUIDE);
    }

    @Test
    void listedFlashPointsAreTheFahrenheitOnes() {
        double[] fahrenheit = {53, 0, 55};
        for (int i = 0; i < fahrenheit.length; i++) {
            assertEquals(QuantityParser.parse(fahrenheit[i] + " degF", QuantityKind.TEMPERATURE).canonical(), Solvent.all().get(i).flashPoint(), 0.5);
        }
    }

    @Test
    void solvents() {
        List<Solvent> solvents = Solvent.all();
        assertEquals(3, solvents.size());
        for (int i = 0; i < solvents.size(); i++) {
            Solvent s = solvents.get(i);
            expect("safety/2 density vs air." + (i + 1), Vapour.relativeDensity(s.molarMass()), "derived: M/28.97");
            expect("safety/2 saturated %." + (i + 1), 100 * s.saturated(), "derived from the vapour pressures of the " + GUIDE);
            expect("safety/2 IDLH = 10 % LEL." + (i + 1), s.lowerLimit() / 10 * 1e6, "NIOSH IDLH sheets, May 1994");
        }
        expect("safety/2 2 % IPA mix density", Vapour.relativeDensity(Solvent.ISOPROPANOL.molarMass(), 0.02), "derived");
    }

    @Test
    void headspaces() {
        expect("safety/2 IPA headspace inside 2.0-12.7", Solvent.ISOPROPANOL.headspaceBurns() ? 1 : 0, GUIDE);
        expect("safety/2 ethanol headspace inside 3.3-19", Solvent.ETHANOL.headspaceBurns() ? 1 : 0, GUIDE);
        assertFalse(Solvent.ACETONE.headspaceBurns(), "too rich at rest, as the sheet says");
    }

    @Test
    void isocyanateVapour() {
        double share = Vapour.saturatedShare(1.3, 101_325);
        expect("safety/2 TDI sat ppm, x ceiling.1", share * 1e6, "1.3 Pa at 20 degC, IARC 71; derived");
        expect("safety/2 TDI sat ppm, x ceiling.2", share * 1e6 / 0.02, 5, "printed as about 640, two figures", "derived");
    }

    /** For dusts NIOSH took 500 times the 8 h or 10 h figure as immediately dangerous. */
    @Test
    void dangerousDust() {
        String source = "NIOSH IDLH sheets, May 1994";
        expect("safety/2 carbon black IDLH = 500 x 3.5", 500 * limit(Substance.CARBON_BLACK, Kind.NIOSH_10_HOURS), source);
        expect("safety/2 amorphous silica IDLH = 500 x 6", 500 * limit(Substance.AMORPHOUS_SILICA, Kind.NIOSH_10_HOURS), source);
        expect("safety/2 TiO2 IDLH = 500 x 10", limit(Substance.TITANIUM_DIOXIDE, Kind.IDLH), source);
        assertEquals(500 * limit(Substance.CARBON_BLACK, Kind.NIOSH_10_HOURS), limit(Substance.CARBON_BLACK, Kind.IDLH));
        assertEquals(500 * limit(Substance.AMORPHOUS_SILICA, Kind.NIOSH_10_HOURS), limit(Substance.AMORPHOUS_SILICA, Kind.IDLH));
    }

    /** For the three flammable liquids a tenth of the lower explosive limit was taken. */
    @Test
    void dangerousVapour() {
        assertEquals(1e5 * Solvent.ISOPROPANOL.lowerLimit(), limit(Substance.ISOPROPANOL, Kind.IDLH), 1e-6);
        assertEquals(1e5 * Solvent.ACETONE.lowerLimit(), limit(Substance.ACETONE, Kind.IDLH), 1e-6);
        assertEquals(1e5 * Solvent.ETHANOL.lowerLimit(), limit(Substance.ETHANOL, Kind.IDLH), 1e-6);
    }

    @ParameterizedTest
    @EnumSource(Substance.class)
    void everySubstanceHasFiguresWithSources(Substance substance) {
        assertFalse(ReferenceLimit.of(substance).isEmpty());
        ReferenceLimit.of(substance).forEach(l -> assertTrue(l.value() > 0 && !l.source().display().isBlank()));
    }

    private static double limit(Substance substance, Kind kind) {
        return ReferenceLimit.of(substance).stream().filter(l -> l.kind() == kind).findFirst().orElseThrow().value();
    }

    @Test
    void removal() {
        double[] efficiencies = {0.90, 0.99, 0.999};
        String[] printed = {"90", "99", "99.9"};
        for (int row = 0; row < efficiencies.length; row++) {
            for (int i = 0; i < CHANGES.length; i++) {
                expect("safety/3 removal " + printed[row] + " %." + (i + 1), Room.minutesToRemove(efficiencies[row], CHANGES[i]),
                        "CDC 2003 guideline, Table B.1; MMWR 1994 43 (RR-13), Table S3-1");
            }
        }
    }

    @Test
    void workedRooms() {
        expect("safety/3a Q", Room.airflowOfHalfLife(20, 1.4), "Jayjock 2013");
        expect("safety/3b.1", new Room(1, 1, 1).after(40 / 60.0, 1, 0), "engineering reference table, well-mixed room");
        expect("safety/3b.2", new Room(1, 0.5, 1).after(80 / 60.0, 1, 0), "engineering reference table, well-mixed room");
        String manual = "ACGIH Industrial Ventilation ch. 2 (from memory, unconfirmed; sums rechecked)";
        // In cubic feet and minutes throughout; the equations do not care.
        Room hall = new Room(100_000, 2000, 1);
        expect("safety/3c.1", hall.hoursUpTo(200e-6, 1.2, 0).orElseThrow(), manual);
        expect("safety/3c.2", 1e6 * hall.after(60, 1.2, 0), manual);
        expect("safety/3c.3", hall.hoursDownTo(25e-6, 100e-6).orElseThrow(), manual);
        double changes = Room.changesInExponent(0.20, 0.014, 0.2);
        expect("safety/3d.1", changes, "US Bureau of Reclamation 2006, p. 106");
        expect("safety/3d.2", changes / 2, "US Bureau of Reclamation 2006, p. 106");
    }

    @Test
    void isopropanolInARoom() {
        Solvent ipa = Solvent.ISOPROPANOL;
        double grams = 100 * ipa.density();
        expect("safety/3 IPA 100 mL.1", grams, "derived");
        expect("safety/3 IPA 100 mL.2", Vapour.mixedAtOnce(grams, ipa.molarMass(), Vapour.MOLAR_VOLUME, 30), "derived");
        expect("safety/3 IPA 100 mL.3", grams / 30 * 1000, "derived");
        double lower = ipa.gramsPerCubicMetreAtLowerLimit();
        expect("safety/3 IPA LEL g/m3, L in 30 m3.1", lower, "derived");
        expect("safety/3 IPA LEL g/m3, L in 30 m3.2", lower * 30 / ipa.density() / 1000, "derived");
        double rate = Vapour.volume(60, ipa.molarMass(), Vapour.MOLAR_VOLUME);
        expect("safety/3 bath.1", 1e6 * new Room(30, 30, 1).after(1, rate, 0), "derived");
        expect("safety/3 bath.2", 1e6 * new Room(30, 30, 1).steady(rate), "derived");
        expect("safety/3 bath.3", 1e6 * new Room(30, 30, 3).steady(rate), "derived");
    }

    @Test
    void closedRoomsAndTargetsOutOfReach() {
        Room closed = new Room(30, 0, 1);
        assertEquals(0.02, closed.after(2, 0.3, 0), 1e-12);
        assertEquals(2, closed.hoursUpTo(0.02, 0.3, 0).orElseThrow(), 1e-12);
        assertTrue(closed.hoursDownTo(0.001, 0.01).isEmpty());
        assertTrue(closed.hoursUpTo(0.02, 0, 0).isEmpty());
        assertTrue(new Room(30, 30, 1).hoursUpTo(0.02, 0.3, 0).isEmpty(), "steady state is 0.01");
    }

    @Test
    void shiftSums() {
        String osha = "29 CFR 1910.1000(d)";
        expect("safety/4.1", Exposure.timeWeighted(List.of(new Exposure.Stretch(2, 150), new Exposure.Stretch(2, 75), new Exposure.Stretch(4, 50))), osha);
        expect("safety/4.2", Exposure.mixture(List.of(new Exposure.Against(500, 1000), new Exposure.Against(45, 200), new Exposure.Against(40, 200))), osha);
    }
}
