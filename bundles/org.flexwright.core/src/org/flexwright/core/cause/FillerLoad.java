package org.flexwright.core.cause;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

import org.flexwright.core.process.Mixtures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/**
 * How much filler a trial's mixture holds, weighed where it was weighed, else planned; a premix counts as its ingredients.
 *
 * @param filler  g
 * @param polymer g of everything that becomes the network, above 0
 */
public record FillerLoad(double filler, double polymer) {

    /** A use or an ingredient of a premix with its grams in the cup. */
    public record Part(MaterialUse use, double grams) {
    }

    /** Of a trial; empty when nothing says how much polymer there is. */
    public static Optional<FillerLoad> of(Trial trial) {
        List<Part> parts = parts(trial);
        ToDoubleFunction<List<PartRole>> grams = roles -> parts.stream().filter(p -> roles.contains(p.use().getRole())).mapToDouble(Part::grams).sum();
        double polymer = grams.applyAsDouble(List.of(PartRole.COMPONENT_A, PartRole.COMPONENT_B, PartRole.SINGLE, PartRole.POLYOL));
        return polymer > 0 ? Optional.of(new FillerLoad(grams.applyAsDouble(List.of(PartRole.FILLER)), polymer)) : Optional.empty();
    }

    /** Everything that goes into the cup, in the order of the steps; a skipped step puts nothing in. */
    public static List<Part> parts(Trial trial) {
        return trial.getSteps().stream().filter(s -> s.getState() != StepState.SKIPPED).flatMap(s -> s.getUses().stream()).flatMap(FillerLoad::parts).toList();
    }

    private static Stream<Part> parts(MaterialUse use) {
        Double grams = grams(use);
        if (grams == null) {
            return Stream.empty();
        }
        return Mixtures.shares(use).stream().map(share -> new Part(share.of(), grams * share.share()));
    }

    /** Weighed, else planned; null when neither is there. */
    private static Double grams(MaterialUse use) {
        Double weighed = Mixtures.grams(use);
        return weighed == null ? use.getPlanned() : weighed;
    }

    /** Grams of filler to 100 g of polymer. */
    public double phr() {
        return 100 * filler / polymer;
    }
}
