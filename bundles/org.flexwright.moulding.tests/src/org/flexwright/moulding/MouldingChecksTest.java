package org.flexwright.moulding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Severity;
import org.flexwright.testsupport.CheckValues;
import org.junit.jupiter.api.Test;

/** Printed figures of casting: gates, filling, vents, stretch, clamping. */
class MouldingChecksTest {
    private static final String POISEUILLE = "Hagen-Poiseuille and its power-law form, derived";
    private static final String GROWING = "Hagen-Poiseuille with exponentially growing viscosity, derived";
    /** Working time of a mix that doubles, for a growth constant of 300 s. */
    private static final double DOUBLING_OF_300_S = 300 * Math.log(2);

    private static GateCalculation.Results tube(double consistency, double index) {
        return Ran.done(new GateCalculation(), new GateCalculation.Inputs(GateCalculation.Shape.ROUND, consistency, index, 10, 1.0, null, null, 1, 15.0));
    }

    private static GateCalculation.Results slot(double consistency, double index) {
        return Ran.done(new GateCalculation(), new GateCalculation.Inputs(GateCalculation.Shape.SLOT, consistency, index, 20, null, 10.0, 1.0, 1, null));
    }

    private static FillTimeCalculation.Inputs fill(double volume, Double after) {
        return new FillTimeCalculation.Inputs(volume, 2, DOUBLING_OF_300_S, 2, 100, 1, 10, after);
    }

    private static FrontCalculation.Results front(FrontCalculation.Shape shape) {
        return Ran.done(new FrontCalculation(), new FrontCalculation.Inputs(shape, 1, 50, 2, DOUBLING_OF_300_S, 2, 60));
    }

    @Test
    void pressureAtARoundGate() {
        CheckValues.expect("processes/C1 tube.1", tube(2, 1).pressure(), POISEUILLE);
        CheckValues.expect("processes/C1 tube.2", tube(2, 1).wallRate(), POISEUILLE);
        CheckValues.expect("processes/C1 tube.3", tube(2, 1).push(), POISEUILLE);
        CheckValues.expect("processes/C1 tube.4", tube(20, 0.5).pressure(), POISEUILLE);
    }

    @Test
    void pressureAtASlotGate() {
        CheckValues.expect("processes/C1 slot (L20 w10 h1).1", slot(2, 1).pressure(), POISEUILLE);
        CheckValues.expect("processes/C1 slot (L20 w10 h1).2", slot(20, 0.5).pressure(), POISEUILLE);
    }

    @Test
    void fillTimeOfAThickeningMix() {
        FillTimeCalculation.Results after60 = Ran.done(new FillTimeCalculation(), fill(100, 60.0));
        CheckValues.expect("processes/C2.1", after60.startFlow(), GROWING);
        CheckValues.expect("processes/C2.2", after60.volumeAfter(), GROWING);
        CheckValues.expect("processes/C2.3", Ran.done(new FillTimeCalculation(), fill(100, 120.0)).volumeAfter(), GROWING);
        CheckValues.expect("processes/C2.4", after60.time(), GROWING);
        CheckValues.expect("processes/C2.5", after60.timeIfConstant(), GROWING);
        CheckValues.expect("processes/C2.6", after60.limit(), GROWING);
    }

    @Test
    void frontOfAThickeningMix() {
        CheckValues.expect("processes/C2 tube front.1", front(FrontCalculation.Shape.BORE).front() / 1e3, GROWING);
        CheckValues.expect("processes/C2 tube front.2", front(FrontCalculation.Shape.BORE).farthest() / 1e3, GROWING);
        CheckValues.expect("processes/C2 slot front", front(FrontCalculation.Shape.SLOT).front() / 1e3, GROWING);
    }

    @Test
    void aMouldThatNeverFillsIsRefused() {
        Outcome.Refused<?> refused = Ran.refused(new FillTimeCalculation(), fill(590, null));
        assertEquals("volume", refused.input());
        assertEquals("No more than 589 ml comes through before the mix has set, and 590 ml is wanted: this cannot be filled.", refused.why().text());
        assertTrue(Ran.done(new FillTimeCalculation(), fill(589, null)).time() > 1800, "just below the limit it fills at last");
    }

    @Test
    void vents() {
        VentCalculation.Results vent = Ran.done(new VentCalculation(), new VentCalculation.Inputs(5, 0.1, 3, 1, 2, 50, 101.325));
        CheckValues.expect("processes/C3.1", vent.airPressure(), "slot flow, derived; viscosity of air from memory");
        CheckValues.expect("processes/C3.2", vent.mixPressure(), "slot flow, derived");
        CheckValues.expect("processes/C3.3", vent.bubble() / 100, "Boyle, derived");
    }

    @Test
    void stretchOverACore() {
        StretchCalculation.Results round = Ran.done(new StretchCalculation(), new StretchCalculation.Inputs(12, 12, 9, 9, 3, null));
        CheckValues.expect("processes/C5.1", round.stretch(), "ratio of perimeters, derived");
        CheckValues.expect("processes/C5.2", round.needed(), "ratio of perimeters, derived; margin of 3 common practice, no source");
        StretchCalculation.Results ellipse = Ran.done(new StretchCalculation(), new StretchCalculation.Inputs(16, 10, 9, 9, 3, null));
        CheckValues.expect("processes/C5.3", ellipse.corePerimeter(), "complete elliptic integral, derived");
        CheckValues.expect("processes/C5.4", ellipse.stretch(), "ratio of perimeters, derived");
    }

    @Test
    void clampForce() {
        CheckValues.expect("processes/C6.1", Ran.done(new ClampCalculation(), new ClampCalculation.Inputs(50, 20, 1.5)).opening(), "derived");
        CheckValues.expect("processes/C6.2", Ran.done(new ClampCalculation(), new ClampCalculation.Inputs(300, 30, 1.5)).opening(), "derived");
        assertEquals(1350, Ran.done(new ClampCalculation(), new ClampCalculation.Inputs(300, 30, 1.5)).clamp(), 1e-9);
    }

    @Test
    void aCircleIsAnEllipseAndAFlatOneIsTwiceItsLength() {
        assertEquals(2 * Math.PI * 7, Ellipse.perimeter(7, 7), 1e-12);
        // the perimeter tends to four semi-axes; at 1e-6 the excess is below 1e-10
        assertEquals(4 * 3, Ellipse.perimeter(3, 3e-6), 1e-9);
    }

    @Test
    void aGateNeedsTheSizesOfItsShape() {
        assertEquals("radius",
                Ran.refused(new GateCalculation(), new GateCalculation.Inputs(GateCalculation.Shape.ROUND, 2, 1, 10, null, null, null, 1, null)).input());
        assertEquals("height",
                Ran.refused(new GateCalculation(), new GateCalculation.Inputs(GateCalculation.Shape.SLOT, 2, 1, 10, null, 10.0, null, 1, null)).input());
    }

    @Test
    void flowAndPressureAreInverse() {
        var gate = new org.flexwright.core.flow.RoundChannel(1e-3, 1e-2);
        var slot = new org.flexwright.core.flow.SlotChannel(1e-2, 1e-3, 2e-2);
        var melt = new org.flexwright.core.flow.PowerLaw(20, 0.5);
        assertEquals(3e-7, gate.flow(melt, gate.pressureDrop(melt, 3e-7)), 1e-18);
        assertEquals(3e-7, slot.flow(melt, slot.pressureDrop(melt, 3e-7)), 1e-18);
    }

    @Test
    void remarksSpeakAtTheirLimits() {
        GateCalculation gate = new GateCalculation();
        var hard = new GateCalculation.Inputs(GateCalculation.Shape.ROUND, 20, 1, 10, 1.0, null, null, 1, 15.0);
        assertEquals("Pressing with 90 N is more than 60 N, which is about what a hand likes.", Ran.remarks(gate, hard).get(0).message().text());
        var deep = new GateCalculation.Inputs(GateCalculation.Shape.SLOT, 2, 1, 10, null, 10.0, 3.0, 1, null);
        assertEquals(1, Ran.remarks(gate, deep).size());
        assertEquals(Severity.STOP, Ran.remarks(new StretchCalculation(), new StretchCalculation.Inputs(12, 12, 9, 9, 3, 30.0)).get(0).severity());
        assertEquals(Severity.CAUTION, Ran.remarks(new StretchCalculation(), new StretchCalculation.Inputs(12, 12, 9, 9, 3, 90.0)).get(0).severity());
        assertTrue(Ran.remarks(new StretchCalculation(), new StretchCalculation.Inputs(12, 12, 9, 9, 3, 110.0)).isEmpty());
        assertEquals(1, Ran.remarks(new FillTimeCalculation(), new FillTimeCalculation.Inputs(160, 2, DOUBLING_OF_300_S, 2, 100, 1, 10, null)).size());
        assertTrue(Ran.remarks(new FillTimeCalculation(), fill(100, null)).isEmpty());
        assertEquals(1, Ran.remarks(new VentCalculation(), new VentCalculation.Inputs(5, 1, 3, 1, 2, 50, 101.325)).size());
    }

    @Test
    void draftIsRefusedWhenNothingIsLeft() {
        assertEquals("draft", Ran.refused(new DraftCalculation(), new DraftCalculation.Inputs(100, 5, 10)).input());
        DraftCalculation.Results result = Ran.done(new DraftCalculation(), new DraftCalculation.Inputs(20, 45, 50));
        assertEquals(20, result.side(), 1e-12);
        assertEquals(10, result.narrow(), 1e-12);
    }
}
