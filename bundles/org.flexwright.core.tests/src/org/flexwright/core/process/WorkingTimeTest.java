package org.flexwright.core.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class WorkingTimeTest {

    private static final Source SHEET = Source.sheet("data sheet");

    private static WorkingTime stated(double minutes, Double mass, Double celsius) {
        return WorkingTime.stated(Estimate.exact(minutes, SHEET), "its viscosity has doubled", 2.0, mass, celsius, null);
    }

    private static WorkingTime random(Random random) {
        return stated(2 + 300 * random.nextDouble(), 5 + 800 * random.nextDouble(), 10 + 25 * random.nextDouble());
    }

    @Test
    void atItsOwnAmountAndTemperatureItIsTheNumberThatWasStated() {
        WorkingTime time = stated(15, 200.0, 23.0);
        assertSame(time, time.at(200.0, 23.0));
        assertSame(time, time.at(null, null));
        assertSame(time, time.at(80.0, 30.0).at(200.0, 23.0), "carried there and back");
    }

    @Test
    void whatWasNotStatedIsNotCarried() {
        WorkingTime time = stated(15, null, null);
        assertSame(time, time.at(500.0, 30.0));
        WorkingTime warm = stated(15, null, 23.0).at(500.0, 33.0);
        assertNull(warm.mass());
        assertEquals(15 / 1.941, warm.minutes().likely(), 0.005);
    }

    /** A9: dividing by 1.941 from 23 to 33 degC with 50 kJ/mol, the likely value; the band reaches beyond 40 and 60. */
    @Test
    void aWarmerRoomShortensItByTheFactorOfTheSheet() {
        Estimate warm = stated(20, 100.0, 23.0).at(100.0, 33.0).minutes();
        assertEquals(20 / 1.941, warm.likely(), 0.005);
        assertTrue(warm.low() < 20 / 2.216 && warm.high() > 20 / 1.7);
    }

    /** A10: the worked resin, 1481.6 s with 20 g to 1360.1 s with 500 g; not one of ours, so it must lie inside the band. */
    @Test
    void theWorkedResinLiesInsideTheBandOfItsMass() {
        Estimate big = stated(1481.6 / 60, 20.0, 23.0).at(500.0, 23.0).minutes();
        assertTrue(big.low() < 1360.1 / 60 && 1360.1 / 60 < big.high(), big.toString());
        Estimate small = stated(1360.1 / 60, 500.0, 23.0).at(20.0, 23.0).minutes();
        assertTrue(small.low() < 1481.6 / 60 && 1481.6 / 60 < small.high(), small.toString());
    }

    /** A10: between a layer that stays at room temperature and a cup that keeps all its heat, 2151.2 and 1296.1 s of the worked resin. */
    @Test
    void withoutLossACupIsNoShorterThanItsWarmingAllows() {
        double warming = 0.3 * 44.44;
        double endless = CupClock.minutes(2151.2 / 60, 1e12, 55, warming) * 60;
        assertEquals(1296.1, endless, 100, "a steady reaction and one of second order differ by a few per cent");
        assertEquals(2151.2, CupClock.minutes(2151.2 / 60, 1e-9, 55, warming) * 60, 1);
    }

    @Test
    void carriedThereAndBackOneNumberIsTheSame() {
        Random random = new Random(4);
        for (int i = 0; i < 60; i++) {
            WorkingTime from = random(random);
            double mass = 5 + 800 * random.nextDouble();
            double celsius = 10 + 25 * random.nextDouble();
            double energy = 35 + 40 * random.nextDouble();
            double warming = 20 * random.nextDouble();
            double there = from.carried(from.minutes().likely(), mass, celsius, energy, warming);
            double back = stated(there, mass, celsius).carried(there, from.mass(), from.celsius(), energy, warming);
            assertEquals(1, back / from.minutes().likely(), 1e-9);
        }
    }

    @Test
    void theBandIsOrderedAndWarmerOrBiggerIsNeverLonger() {
        Random random = new Random(5);
        for (int i = 0; i < 30; i++) {
            WorkingTime from = random(random);
            double mass = 5 + 800 * random.nextDouble();
            double celsius = 12 + 20 * random.nextDouble();
            Estimate here = from.at(mass, celsius).minutes();
            Estimate warmer = from.at(mass, celsius + 2).minutes();
            Estimate bigger = from.at(mass * 1.5, celsius).minutes();
            assertTrue(here.low() <= here.likely() && here.likely() <= here.high());
            assertTrue(warmer.likely() < here.likely(), "warmer");
            assertTrue(bigger.likely() < here.likely(), "bigger");
            assertTrue(here.low() < here.high(), "nobody knows it to a point");
        }
    }

    @Test
    void anOwnActivationEnergyLeavesNoBandOfTemperature() {
        WorkingTime time = WorkingTime.stated(Estimate.exact(20, SHEET), "", null, null, 23.0, 60.0);
        Estimate warm = time.at(null, 33.0).minutes();
        assertEquals(20 / 2.216, warm.likely(), 0.005);
        assertEquals(warm.low(), warm.high());
        assertTrue(warm.source().display().contains("20 min") && warm.source().display().contains("60 kJ/mol"), warm.source().display());
    }

    @Test
    void nonsenseIsNoWorkingTime() {
        assertThrows(IllegalArgumentException.class, () -> stated(0, null, null));
        assertThrows(IllegalArgumentException.class, () -> stated(10, 0.0, null));
        assertThrows(IllegalArgumentException.class, () -> WorkingTime.stated(Estimate.exact(5, SHEET), "", 1.0, null, null, null));
    }

    @Test
    void ofATrialItIsForTheRoomAndTheCup() {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        assertTrue(WorkingTimes.of(trial, StepKinds.NONE).isEmpty());
        assertNull(WorkingTimes.gramsInCup(trial));
        Step weigh = ModelFactory.eINSTANCE.createStep();
        weigh.getUses().add(use(PartRole.COMPONENT_A, 30));
        weigh.getUses().add(use(PartRole.FILLER, 4));
        weigh.getUses().add(use(PartRole.RELEASE, 100));
        trial.getSteps().add(weigh);
        assertEquals(34, WorkingTimes.gramsInCup(trial));
        assertNull(WorkingTimes.roomC(trial));
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setRoomC(21.0);
        weigh.setSession(session);
        assertEquals(21, WorkingTimes.roomC(trial));
    }

    private static MaterialUse use(PartRole role, double grams) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(grams);
        return use;
    }
}
