package org.flexwright.safety.energy;

import static org.flexwright.testsupport.CheckValues.expect;

import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.safety.air.Vapour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnergyChecksTest {
    private static final double FOUR_BAR_GAUGE = 400 + PressureEnergy.ATMOSPHERE;
    private static final double TEN_LITRES = 0.010;

    @Test
    void pressurePot() {
        expect("safety/6 10 L 4 bar.1", PressureEnergy.isentropic(FOUR_BAR_GAUGE, TEN_LITRES), PressureEnergy.ISENTROPIC_SOURCE.display());
        expect("safety/6 10 L 4 bar.2", PressureEnergy.isothermal(FOUR_BAR_GAUGE, TEN_LITRES), "derived");
        expect("safety/6 10 L 4 bar.3", PressureEnergy.brode(FOUR_BAR_GAUGE, TEN_LITRES), PressureEnergy.BRODE_SOURCE.display());
        expect("safety/6 PCC-2 same", PressureEnergy.isentropicRounded(FOUR_BAR_GAUGE, TEN_LITRES), PressureEnergy.ISENTROPIC_SOURCE.display());
    }

    @Test
    void vacuum() {
        double lid = PressureEnergy.lidForce(0.250);
        expect("safety/6 lid kN, kgf, collapse kJ.1", lid, "derived");
        expect("safety/6 lid kN, kgf, collapse kJ.2", PressureEnergy.kilogramForce(lid), "derived");
        expect("safety/6 lid kN, kgf, collapse kJ.3", PressureEnergy.collapse(TEN_LITRES), "derived");
    }

    @Test
    void reaction() {
        expect("safety/6 CO2 L", Exotherm.carbonDioxide(1, Vapour.MOLAR_VOLUME), "derived");
        expect("safety/7 exotherm", Exotherm.adiabaticRise(1.5, Exotherm.URETHANE_HEAT, Exotherm.HEAT_CAPACITY), Exotherm.SOURCE.display());
    }

    @ParameterizedTest
    @CsvSource({"1,120 degF", "2,140 degF", "3,155 degF"})
    void scaldListInFahrenheit(int number, String printed) {
        expect("safety/7 F scald list (C)." + number, QuantityParser.parse(printed, QuantityKind.TEMPERATURE).canonical(),
                "independent scald-type list in Fahrenheit");
    }
}
