package org.flexwright.mixing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.flexwright.mixing.formula.Formulation.Answer;
import org.flexwright.mixing.formula.Formulation.Grams;
import org.flexwright.mixing.formula.Formulation.Item;
import org.flexwright.mixing.formula.Formulation.Portion;
import org.flexwright.mixing.formula.Formulation.Problem;
import org.flexwright.mixing.formula.Formulation.Refused;
import org.flexwright.mixing.formula.Formulation.Substance;
import org.flexwright.model.AmountBasis;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.testsupport.CheckValues;
import org.junit.jupiter.api.Test;

class FormulationTest {
    private static final String PMA = "Polyurethane Manufacturers Association, technical library, section 5; mass balance";

    private static Substance iso(double nco) {
        return new Substance(nco / 4202, 0, 0, 1.21);
    }

    private static Substance polyol(double hydroxyl, double water) {
        return new Substance(0, hydroxyl / 56100, water, 1.02);
    }

    private static Substance inert(double water, Double density) {
        return new Substance(0, 0, water, density);
    }

    private static Item item(PartRole role, Substance substance, double parts, AmountBasis by, PartsOf of) {
        return new Item(role.getLiteral(), List.of(new Portion(role, 1, substance)), parts, by, of);
    }

    private static Item a(Substance substance, double parts) {
        return item(PartRole.COMPONENT_A, substance, parts, AmountBasis.WEIGHT, PartsOf.UNSTATED);
    }

    private static Item b(Substance substance, double parts) {
        return item(PartRole.COMPONENT_B, substance, parts, AmountBasis.WEIGHT, PartsOf.UNSTATED);
    }

    private static Item filler(double parts, PartsOf of) {
        return item(PartRole.FILLER, inert(0, 1.80), parts, AmountBasis.WEIGHT, of);
    }

    private static List<Double> grams(Double index, double mass, Item... items) {
        return assertInstanceOf(Grams.class, new Formulation(List.of(items), index).grams(mass)).each();
    }

    private static Problem refused(Double index, Item... items) {
        return assertInstanceOf(Refused.class, new Formulation(List.of(items), index).grams(100)).problem();
    }

    @Test
    void isocyanateForAnIndexComesOutOfTheEquations() {
        Item extender = item(PartRole.POLYOL, new Substance(0, 1 / 45.06, 0, 1.0), 10, AmountBasis.WEIGHT, PartsOf.UNSTATED);
        List<Double> dry = grams(105.0, 1, a(iso(33.6), 1), b(polyol(56, 0), 100), extender);
        CheckValues.expect("processes/A4.3", 100 * dry.get(0) / dry.get(1), PMA);
        List<Double> damp = grams(105.0, 1, a(iso(33.6), 1), b(polyol(56, 0.001), 100), extender);
        CheckValues.expect("processes/A4.4", 100 * damp.get(0) / damp.get(1), PMA);
    }

    @Test
    void theIndexOfWhatIsWeighedCountsItsWater() {
        Formulation dry = new Formulation(List.of(a(iso(9), 100), b(polyol(120, 0), 100)), null);
        CheckValues.expect("processes/A4 prepolymer, index, index+water.2", dry.index(List.of(100.0, 100.0)), PMA);
        Formulation damp = new Formulation(List.of(a(iso(9), 100), b(polyol(120, 0.0005), 100)), null);
        CheckValues.expect("processes/A4 prepolymer, index, index+water.3", damp.index(List.of(100.0, 100.0)), PMA);
    }

    @Test
    void tenPerCentIsThreeDifferentAmounts() {
        Item a = a(inert(0, 1.05), 100);
        Item b = b(inert(0, 1.05), 50);
        CheckValues.expect("processes/A5 10 phr.1", share(grams(null, 100, a, b, filler(10, PartsOf.PER_100_POLYMER))), "Mass balance");
        CheckValues.expect("processes/A5 10% of total.1", phr(grams(null, 100, a, b, filler(10, PartsOf.OF_ALL))), "Mass balance");
        CheckValues.expect("processes/A5 10% of B.1", phr(grams(null, 100, a, b, filler(10, PartsOf.OF_B))), "Mass balance");
        CheckValues.expect("processes/A5 10% of B.2", share(grams(null, 100, a, b, filler(10, PartsOf.OF_B))), "Mass balance");
    }

    private static double share(List<Double> grams) {
        return 100 * grams.get(2) / (grams.get(0) + grams.get(1) + grams.get(2));
    }

    private static double phr(List<Double> grams) {
        return 100 * grams.get(2) / (grams.get(0) + grams.get(1));
    }

    @Test
    void volumesBecomeWeightsByTheirDensities() {
        Item a = item(PartRole.COMPONENT_A, inert(0, 1.05), 100, AmountBasis.VOLUME, PartsOf.UNSTATED);
        Item b = item(PartRole.COMPONENT_B, inert(0, 1.21), 50, AmountBasis.VOLUME, PartsOf.UNSTATED);
        List<Double> grams = grams(null, 100, a, b);
        CheckValues.expect("processes/A2.1", 100 * grams.get(1) / grams.get(0), "Mass balance");
    }

    @Test
    void whatCannotBeCountedIsRefusedByName() {
        Item a = a(iso(9), 100);
        Item b = b(polyol(120, 0), 100);
        assertEquals(Problem.RATIO_ZERO, refused(null, a, b(polyol(120, 0), 0)));
        assertEquals(Problem.INDEX_RANGE, refused(79.9, a, b));
        assertEquals(Problem.INDEX_RANGE, refused(130.1, a, b));
        assertEquals(Problem.INDEX_RANGE, refused(Double.NaN, a, b));
        assertEquals(Problem.INDEX_RANGE, refused(null, item(PartRole.COMPONENT_A, iso(9), 140, AmountBasis.EQUIVALENTS, PartsOf.UNSTATED),
                item(PartRole.COMPONENT_B, polyol(120, 0), 100, AmountBasis.EQUIVALENTS, PartsOf.UNSTATED)));
        assertEquals(Problem.EQUIVALENT, refused(100.0, a, b(inert(0, 1.0), 100)));
        assertEquals(Problem.ONE_SIDE, refused(100.0, a(polyol(56, 0), 100), b));
        assertEquals(Problem.OF_WHAT, refused(null, a, b, filler(10, PartsOf.UNSTATED)));
        assertEquals(Problem.NO_POLYMER, refused(null, filler(10, PartsOf.OF_ALL)));
        assertEquals(Problem.NOTHING_TO_COUNT_ON, refused(null, item(PartRole.SINGLE, inert(0, 1.0), 100, AmountBasis.WEIGHT, PartsOf.UNSTATED), filler(10, PartsOf.OF_B)));
        assertEquals(Problem.OVERFULL, refused(null, a, b, filler(100, PartsOf.OF_ALL)));
        assertEquals(Problem.OVERFULL, refused(null, a, b, filler(130, PartsOf.OF_ALL)));
        assertEquals(Problem.MIXED_COUNTING, refused(null, a, item(PartRole.COMPONENT_B, polyol(120, 0), 100, AmountBasis.VOLUME, PartsOf.UNSTATED)));
        assertEquals(Problem.DENSITY, refused(null, a, b, item(PartRole.FILLER, inert(0, null), 10, AmountBasis.VOLUME, PartsOf.OF_ALL)));
        assertEquals(Problem.EQUIVALENT_SHARE, refused(null, a, b, item(PartRole.POLYOL, polyol(300, 0), 10, AmountBasis.EQUIVALENTS, PartsOf.OF_B)));
        Refused no = (Refused) new Formulation(List.of(a, b, filler(10, PartsOf.UNSTATED)), null).grams(100);
        assertEquals("filler", no.item());
    }

    /** Random formulations: sums, ratios and index are those asked for, whatever is counted on what. */
    @Test
    void gramsComeToTheBatchAndToWhatWasAskedFor() {
        Random random = new Random(41);
        int solved = 0;
        for (int round = 0; round < 3000; round++) {
            boolean byIndex = random.nextBoolean();
            Double index = byIndex ? 80 + 50 * random.nextDouble() : null;
            AmountBasis by = random.nextBoolean() ? AmountBasis.WEIGHT : AmountBasis.VOLUME;
            List<Item> items = new ArrayList<>();
            items.add(item(PartRole.COMPONENT_A, iso(3 + 30 * random.nextDouble()), 1 + 100 * random.nextDouble(), by, PartsOf.UNSTATED));
            items.add(item(PartRole.COMPONENT_B, polyol(20 + 200 * random.nextDouble(), 0.002 * random.nextDouble()), 1 + 100 * random.nextDouble(), by, PartsOf.UNSTATED));
            if (random.nextBoolean()) {
                items.add(item(PartRole.POLYOL, polyol(300 + 900 * random.nextDouble(), 0), 1 + 20 * random.nextDouble(), by, PartsOf.UNSTATED));
            }
            int shares = random.nextInt(4);
            for (int i = 0; i < shares; i++) {
                items.add(item(i == 0 ? PartRole.FILLER : i == 1 ? PartRole.PIGMENT : PartRole.PLASTICISER, inert(0.02 * random.nextDouble(), 0.9 + 2 * random.nextDouble()),
                        25 * random.nextDouble(), random.nextBoolean() ? AmountBasis.WEIGHT : AmountBasis.VOLUME, PartsOf.get(1 + random.nextInt(4))));
            }
            double mass = Math.pow(10, 3 * random.nextDouble());
            Formulation formulation = new Formulation(items, index);
            Answer answer = formulation.grams(mass);
            if (answer instanceof Refused no) {
                assertEquals(Problem.OVERFULL, no.problem(), formulation::toString);
                assertTrue(byIndex && shares > 0, "parts below 25 of 100 leave room unless their water asks for more isocyanate than there is room for");
                continue;
            }
            List<Double> grams = ((Grams) answer).each();
            solved++;
            assertEquals(mass, grams.stream().mapToDouble(Double::doubleValue).sum(), 1e-9 * mass);
            assertTrue(grams.stream().allMatch(g -> g >= 0), grams::toString);
            if (byIndex) {
                assertEquals(index, formulation.index(grams), 1e-7);
            } else {
                double unitA = by == AmountBasis.WEIGHT ? 1 : 1 / 1.21;
                double unitB = by == AmountBasis.WEIGHT ? 1 : 1 / 1.02;
                assertEquals(items.get(1).parts() / items.get(0).parts(), grams.get(1) * unitB / (grams.get(0) * unitA), 1e-9 * items.get(1).parts() / items.get(0).parts());
            }
            counted(items, grams);
        }
        assertTrue(solved > 2900, solved + " of 3000 have grams");
    }

    /** Each share is counted anew from the grams. */
    private static void counted(List<Item> items, List<Double> grams) {
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            double base = 0;
            for (int k = 0; k < items.size(); k++) {
                PartRole role = items.get(k).portions().get(0).role();
                boolean in = switch (item.of()) {
                    case UNSTATED -> false;
                    case OF_ALL -> true;
                    case OF_A -> role == PartRole.COMPONENT_A;
                    case OF_B -> role == PartRole.COMPONENT_B;
                    case PER_100_POLYMER -> role == PartRole.COMPONENT_A || role == PartRole.COMPONENT_B || role == PartRole.POLYOL;
                };
                base += in ? amount(items.get(k), grams.get(k), item.by()) : 0;
            }
            if (item.of() != PartsOf.UNSTATED) {
                assertEquals(item.parts() * base / 100, amount(item, grams.get(i), item.by()), 1e-7 * base);
            }
        }
    }

    private static double amount(Item item, double grams, AmountBasis by) {
        return by == AmountBasis.VOLUME ? grams / item.portions().get(0).substance().density() : grams;
    }

    @Test
    void partsByEquivalentsAreTheIndex() {
        Random random = new Random(42);
        for (int round = 0; round < 500; round++) {
            double nco = 82 + 46 * random.nextDouble();
            double extender = 60 * random.nextDouble() + 1;
            Formulation formulation = new Formulation(List.of(
                    item(PartRole.COMPONENT_A, iso(3 + 30 * random.nextDouble()), nco, AmountBasis.EQUIVALENTS, PartsOf.UNSTATED),
                    item(PartRole.COMPONENT_B, polyol(56, 0.001 * random.nextDouble()), 100 - extender, AmountBasis.EQUIVALENTS, PartsOf.UNSTATED),
                    item(PartRole.POLYOL, polyol(1245, 0), extender, AmountBasis.EQUIVALENTS, PartsOf.UNSTATED)), null);
            List<Double> grams = assertInstanceOf(Grams.class, formulation.grams(250)).each();
            assertEquals(nco, formulation.index(grams), 1e-8);
            assertEquals(extender / (100 - extender), grams.get(2) * 1245 / (grams.get(1) * 56), 1e-8);
            assertEquals(250, grams.stream().mapToDouble(Double::doubleValue).sum(), 1e-9);
        }
    }

    @Test
    void aPremixIsWeighedAsOneAndCountsAsItsIngredients() {
        double powder = 8.0 / 108;
        Item premix = new Item("X1", List.of(new Portion(PartRole.COMPONENT_B, 1 - powder, polyol(120, 0)), new Portion(PartRole.FILLER, powder, inert(0.03, 1.8))), 1,
                AmountBasis.WEIGHT, PartsOf.UNSTATED);
        Formulation formulation = new Formulation(List.of(a(iso(9), 1), premix), 100.0);
        List<Double> grams = assertInstanceOf(Grams.class, formulation.grams(200)).each();
        assertEquals(100, formulation.index(grams), 1e-9);
        double eqA = grams.get(0) * 9 / 4202;
        double eqB = grams.get(1) * (1 - powder) * 120 / 56100 + grams.get(1) * powder * 0.03 / 9.0075;
        assertEquals(eqA, eqB, 1e-12 + 1e-9 * eqA);
    }
}
