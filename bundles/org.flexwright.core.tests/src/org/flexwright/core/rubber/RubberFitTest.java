package org.flexwright.core.rubber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.flexwright.core.Watch;
import org.flexwright.core.rubber.RubberFit.Point;
import org.junit.jupiter.api.Test;

class RubberFitTest {

    /**
     * Three terms on Treloar's 53 points together. The figures beside are an independent computation with SciPy 1.17 (least_squares from 50 random
     * starts, standard errors from its slopes); the sheet prints none.
     */
    @Test
    void jointOgdenAgreesWithAnotherProgram() {
        RubberFit fit = RubberFit.of(RubberForm.OGDEN_3, Treloar.points()).orElseThrow();
        double[] values = {9.86014247e-07, 8.47955897, 0.363354655, 1.90072690, -5.40330422e-03, -2.22365786};
        double[] errors = {7.40828774e-07, 0.361087156, 0.0278228314, 0.0586032614, 4.02652555e-03, 0.256087699};
        for (int i = 0; i < values.length; i++) {
            assertEquals(values[i], fit.coefficients().get(i).value(), 1e-6 * Math.abs(values[i]), "coefficient " + i);
            assertEquals(errors[i], fit.coefficients().get(i).error().orElseThrow(), 1e-4 * errors[i], "error " + i);
        }
        assertEquals(0.06197290272, fit.rms(), 1e-9);
        assertTrue(fit.limit().isEmpty(), "stable over the stretches used");
        assertTrue(fit.reached() > 25, "most starts end there, " + fit.reached());
        assertTrue(fit.bendsOtherwise(), "what is left is no chance: neighbouring residuals keep their sign");
    }

    /** Laws that made the points are found again, whatever the weights, and their residuals are nothing. */
    @Test
    void lawsAreFoundAgain() {
        long seed = 4;
        Random random = new Random(seed);
        for (int run = 0; run < 1; run++) {
            OgdenLaw made = new OgdenLaw(List.of(new OgdenLaw.Term(0.001 + 0.004 * random.nextDouble(), 4 + random.nextDouble()), new OgdenLaw.Term(0.3 + 0.4 * random.nextDouble(),
                    1.2 + 0.6 * random.nextDouble())));
            PolynomialLaw yeoh = PolynomialLaw.yeoh(0.15 + 0.1 * random.nextDouble(), -0.001, 3e-5);
            for (Weighting weighting : Weighting.values()) {
                RubberFit two = RubberFit.of(RubberForm.OGDEN_2, weighting, points(made, 0.0, random), Watch.NONE).orElseThrow();
                for (int t = 0; t < 2; t++) {
                    assertEquals(made.terms().get(t).mu(), two.coefficients().get(2 * t).value(), 1e-4 * made.terms().get(t).mu(), weighting + " seed " + seed);
                    assertEquals(made.terms().get(t).alpha(), two.coefficients().get(2 * t + 1).value(), 1e-4, weighting + " seed " + seed);
                }
                assertEquals(yeoh.c10(), RubberFit.of(RubberForm.YEOH, weighting, points(yeoh, 0, random), Watch.NONE).orElseThrow().coefficients().get(0).value(), 1e-9);
            }
        }
    }

    /** Each point a hundred times over changes no coefficient; the errors shrink as they must. */
    @Test
    void manyPointsAreSearchedInTwoSteps() {
        List<Point> many = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            many.addAll(Treloar.points());
        }
        RubberFit once = RubberFit.of(RubberForm.OGDEN_3, Treloar.points()).orElseThrow();
        RubberFit often = RubberFit.of(RubberForm.OGDEN_3, many).orElseThrow();
        for (int i = 0; i < 6; i++) {
            assertEquals(once.coefficients().get(i).value(), often.coefficients().get(i).value(), 1e-5 * Math.abs(once.coefficients().get(i).value()));
            assertEquals(once.coefficients().get(i).error().orElseThrow() * Math.sqrt(47.0 / (5300 - 6)), often.coefficients().get(i).error().orElseThrow(), 1e-3 * once.coefficients().get(i)
                    .error().orElseThrow());
        }
    }

    @Test
    void pointsOfTheLawItselfBendNotOtherwise() {
        assertFalse(RubberFit.of(RubberForm.YEOH, points(PolynomialLaw.yeoh(0.18, -0.001, 3e-5), 0, new Random(1))).orElseThrow().bendsOtherwise());
        assertTrue(RubberFit.of(RubberForm.NEO_HOOKE, Treloar.points()).orElseThrow().bendsOtherwise());
    }

    /** With chance of a known size on the stresses, the 95 % interval of E holds the true one about that often. */
    @Test
    void intervalsHoldWhatTheyPromise() {
        Random random = new Random(20);
        PolynomialLaw law = PolynomialLaw.mooneyRivlin(0.15, 0.05);
        int inside = 0;
        int runs = 400;
        for (int run = 0; run < runs; run++) {
            RubberFit fit = RubberFit.of(RubberForm.MOONEY_RIVLIN, points(law, 0.02, random)).orElseThrow();
            inside += fit.young().band().orElseThrow().low() <= law.youngsModulus() && fit.young().band().orElseThrow().high() >= law.youngsModulus() ? 1 : 0;
        }
        // 380 expected, standard deviation 4.4
        assertTrue(inside > 362 && inside < 398, inside + " of " + runs);
    }

    @Test
    void unstableFitsAreRejectedByName() {
        RubberFit fit = RubberFit.of(RubberForm.MOONEY_RIVLIN, Treloar.points(Loading.UNIAXIAL)).orElseThrow();
        String said = FitWords.rejected(fit).orElseThrow().text();
        assertEquals("Mooney-Rivlin is rejected: it gives way at stretch 1 in one direction, where more strain would take less stress (E = -2.05 MPa).", said);
        assertTrue(FitWords.rejected(RubberFit.of(RubberForm.YEOH, Treloar.points()).orElseThrow()).isEmpty());
    }

    /** A law of many coefficients on a stretch of curve comes close and still foretells badly; the ranking goes by what was left out. */
    @Test
    void lawsAreRankedByWhatTheyHadNotSeen() {
        LawRanking ranking = LawRanking.of(Weighting.EQUAL, Treloar.points(), Watch.NONE);
        List<LawRanking.Rank> ranks = ranking.ranks();
        assertEquals(RubberForm.values().length, ranks.size());
        for (int i = 1; i < ranks.size(); i++) {
            assertTrue(ranks.get(i - 1).stable() || !ranks.get(i).stable(), "unstable ones come last");
            if (ranks.get(i).foretold().isPresent()) {
                assertTrue(ranks.get(i - 1).foretold().orElseThrow() <= ranks.get(i).foretold().getAsDouble());
            }
        }
        assertTrue(ranking.suggested().orElseThrow().stable());
        LawRanking alone = LawRanking.of(Weighting.EQUAL, Treloar.points(Loading.UNIAXIAL), Watch.NONE);
        assertFalse(alone.ranks().stream().filter(r -> r.form() == RubberForm.MOONEY_RIVLIN).findFirst().orElseThrow().stable());
    }

    @Test
    void weightsAreAsTheySay() {
        List<Point> points = List.of(new Point(Loading.UNIAXIAL, 1.5, 1), new Point(Loading.UNIAXIAL, 2, 4), new Point(Loading.PLANAR, 2, 10), new Point(Loading.PLANAR, 1.001, 0.01));
        double[] relative = Weighting.RELATIVE.factors(points);
        assertEquals(4, relative[0] / relative[1], 1e-12);
        assertEquals(20, relative[3] / relative[2], 1e-12, "below a twentieth of the largest stress the twentieth counts");
        double[] loading = Weighting.PER_LOADING.factors(points);
        assertEquals(Math.sqrt(100.0001 / 17), loading[0] / loading[2], 1e-12);
        assertEquals(1, Weighting.EQUAL.factors(points)[2], 1e-12);
    }

    @Test
    void tooFewPointsAndNoStretchGiveNoFit() {
        List<Point> two = Treloar.points().subList(0, 2);
        assertTrue(RubberFit.of(RubberForm.YEOH, two).isEmpty());
        assertTrue(RubberFit.of(RubberForm.OGDEN_3, Treloar.points().subList(0, 5)).isEmpty());
        List<Point> unstretched = List.of(new Point(Loading.UNIAXIAL, 1, 0), new Point(Loading.UNIAXIAL, 1, 0.1), new Point(Loading.UNIAXIAL, 1, -0.1));
        for (RubberForm form : RubberForm.values()) {
            assertTrue(RubberFit.of(form, unstretched).isEmpty(), form + " from unstretched points");
        }
        RubberFit exact = RubberFit.of(RubberForm.MOONEY_RIVLIN, two).orElseThrow();
        assertTrue(exact.coefficients().get(0).band().isEmpty(), "two points and two coefficients leave no error");
    }

    @Test
    void aSearchCanBeEnded() {
        Watch tired = new Watch() {
            @Override
            public void done(long part, long whole) {
                // nobody looks
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> RubberFit.of(RubberForm.OGDEN_3, Weighting.EQUAL, Treloar.points(), tired));
    }

    @Test
    void plotsCarryAllPoints() {
        RubberFit fit = RubberFit.of(RubberForm.YEOH, Treloar.points()).orElseThrow();
        assertEquals(53, FitPlots.residuals(fit).series().stream().mapToInt(s -> s.points().size()).sum());
        assertEquals(6, FitPlots.fit(fit).series().size());
        FitWords.remarks(fit).forEach(r -> assertFalse(r.message().text().isBlank()));
    }

    private static List<Point> points(RubberLaw law, double chance, Random random) {
        List<Point> all = new ArrayList<>();
        for (Loading loading : Loading.values()) {
            for (double stretch = 1.05; stretch < (loading == Loading.EQUIBIAXIAL ? 3 : 5); stretch += 0.2) {
                all.add(new Point(loading, stretch, law.stress(loading, stretch) + chance * random.nextGaussian()));
            }
        }
        return all;
    }
}
