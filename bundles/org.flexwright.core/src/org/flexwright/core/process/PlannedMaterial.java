package org.flexwright.core.process;

import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Trial;

/** What a plan uses up: sums over the planned grams of its steps. */
public final class PlannedMaterial {
    private PlannedMaterial() {
    }

    /** Sum of all planned masses in g; empty when none is planned. */
    public static OptionalDouble mass(Trial plan) {
        List<MaterialUse> uses = uses(plan);
        return uses.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(uses.stream().mapToDouble(MaterialUse::getPlanned).sum());
    }

    /** What the planned grams cost in EUR at the prices of their lots; empty when one of them has no lot, price or amount. */
    public static OptionalDouble cost(Trial plan) {
        double sum = 0;
        List<MaterialUse> uses = uses(plan);
        for (MaterialUse use : uses) {
            for (Mixtures.Share share : Mixtures.shares(use)) {
                Lot lot = share.of().getLot();
                if (lot == null || lot.getPrice() == null || lot.getAmount() == null || !(lot.getAmount() > 0)) {
                    return OptionalDouble.empty();
                }
                sum += use.getPlanned() * share.share() * lot.getPrice() / lot.getAmount();
            }
        }
        return uses.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }

    private static List<MaterialUse> uses(Trial plan) {
        return plan.getSteps().stream().flatMap(step -> step.getUses().stream()).filter(use -> use.getPlanned() != null).toList();
    }
}
