package org.flexwright.core.process;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Step;
import org.flexwright.model.Weighing;

/** The mixture a step makes. A premix is weighed as one and counts as what went into it. */
public final class Mixtures {

    /** g that a bench balance does not show, half of a last digit of 0.01 g; common practice, no source. */
    public static final double NOTHING = 0.005;

    private Mixtures() {
    }

    /**
     * A material in what is weighed.
     *
     * @param of    where it is written down: the use itself, or the ingredient of its premix
     * @param share of the mass weighed, above 0 up to 1; those of a use come to 1
     */
    public record Share(MaterialUse of, double share) {
    }

    /** What the step's uses come to, premixes taken apart. */
    public static Mixture of(Step step) {
        return new Mixture(step.getUses().stream().flatMap(use -> {
            Double grams = grams(use);
            return shares(use).stream().map(part -> new Mixture.Ingredient(part.of().getRole(), part.of().getGrade(), part.of().getLot(),
                    times(use.getPlanned(), part.share()), times(grams, part.share()), part.of()));
        }).toList());
    }

    private static Double times(Double grams, double share) {
        return grams == null ? null : Double.valueOf(grams * share);
    }

    /** What a use counts as: itself, or the ingredients of its premix. A premix with an unknown amount in it counts as itself. */
    public static List<Share> shares(MaterialUse use) {
        List<Share> inside = use.getPremix() == null ? List.of() : shares(use.getPremix());
        return inside.isEmpty() ? List.of(new Share(use, 1)) : inside;
    }

    /** What a premix is made of; empty when an amount in it is unknown. */
    public static List<Share> shares(Premix premix) {
        OptionalDouble mass = mass(premix);
        if (mass.isEmpty() || !(mass.getAsDouble() > 0)) {
            return List.of();
        }
        return premix.getIngredients().stream().map(part -> new Share(part, grams(part) / mass.getAsDouble())).filter(s -> s.share() > 0).toList();
    }

    /** The materials a step handles, premixes taken apart. */
    public static List<MaterialUse> materials(Step step) {
        return step.getUses().stream().flatMap(use -> shares(use).stream()).map(Share::of).toList();
    }

    /** The share of a role in what is weighed, 0 to 1. */
    public static double share(MaterialUse use, PartRole role) {
        return shares(use).stream().filter(s -> s.of().getRole() == role).mapToDouble(Share::share).sum();
    }

    /** What is added when a component is short: the component itself, else the premix that brings most of it. Empty when nothing brings it. */
    public static Optional<MaterialUse> brings(Step step, PartRole role) {
        return step.getUses().stream().filter(use -> use.getRole() == role && use.getPremix() == null).findFirst()
                .or(() -> step.getUses().stream().filter(use -> share(use, role) > 0).max(Comparator.comparingDouble(use -> share(use, role))));
    }

    /** Grams of a premix that were made; empty when an ingredient has no weighed amount. */
    public static OptionalDouble mass(Premix premix) {
        List<Double> grams = new ArrayList<>();
        premix.getIngredients().forEach(part -> grams.add(grams(part)));
        return grams.isEmpty() || grams.contains(null) ? OptionalDouble.empty() : OptionalDouble.of(grams.stream().mapToDouble(Double::doubleValue).sum());
    }

    /** Grams weighed so far for one use; null when nothing was weighed. */
    public static Double grams(MaterialUse use) {
        return use.getWeighings().stream().map(Mixtures::net).filter(Objects::nonNull).reduce(Double::sum).orElse(null);
    }

    /** Net grams of one weighing: as entered, else gross less tare; null when neither is complete. */
    public static Double net(Weighing weighing) {
        if (weighing.getNet() != null) {
            return weighing.getNet();
        }
        return weighing.getGross() == null || weighing.getTare() == null ? null : weighing.getGross() - weighing.getTare();
    }
}
