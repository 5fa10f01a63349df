package org.flexwright.testing.step;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.testing.Say;
import org.flexwright.testing.piece.ModulusKnown;
import org.osgi.service.component.annotations.Component;

/** Reading the pieces of a trial at the bench; the readings themselves are kept with the pieces. */
@Component(service = StepKind.class)
public final class ReadStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "testing.read";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Measure";
    }

    @Override
    public String summary() {
        return "Parts and test pieces are read after their rest: the control piece first, the same spots, support and dwell on every piece, every reading kept.";
    }

    @Override
    public boolean reads() {
        return true;
    }

    /** The core step says it all: session, times, and the measurements on the pieces. */
    @Override
    public EClass details() {
        return null;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("testing.snap-back", Say.message("prompt.snap-back"), Say.message("prompt.snap-back.controls"), Source.commonPractice(), false));
    }

    /** How far hardness falls while the gauge rests, and what is known of the modulus, each with the way it came; which one goes before is said. */
    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        List<StepAdvice> advice = new ArrayList<>(DecayPlots.advice(trial));
        List<ModulusKnown.Known> known = ModulusKnown.of(trial);
        for (ModulusKnown.Known one : known) {
            String way = one.way().name().toLowerCase(Locale.ROOT);
            boolean first = one == known.getFirst();
            Remark remark = known.size() == 1 ? null : first ? Say.note(one.modulus().source(), "modulus.first", Say.message("modulus." + way, one.detail()).text()) : null;
            advice.add(new StepAdvice("modulus." + way, Say.message("modulus." + way, one.detail()).text(), plain(one.modulus()), "MPa", remark));
        }
        return advice;
    }

    /** Two digits, ends outwards: the formulas tell no more. */
    private static Estimate plain(Estimate band) {
        return new Estimate(digits(band.low(), RoundingMode.FLOOR), digits(band.likely(), RoundingMode.HALF_EVEN), digits(band.high(), RoundingMode.CEILING), band.source());
    }

    private static double digits(double value, RoundingMode mode) {
        return BigDecimal.valueOf(value).round(new MathContext(2, mode)).doubleValue();
    }

    @Override
    public List<StepPlot> plots(Step step, Trial trial, PropertyCatalogue properties) {
        return DecayPlots.plots(trial);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        return Optional.of(StepTime.hands(step.getPlannedDuration(), StepTime.usual(10, 20, 40)));
    }
}
