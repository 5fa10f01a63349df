package org.flexwright.core.batch;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.find.Remark;
import org.flexwright.model.Recipe;

/**
 * How so many of a recipe are made.
 *
 * @param recipe      the frozen recipe
 * @param wish        what was wished for
 * @param spares      what the own record says of rejects
 * @param parts       parts to make, spares included
 * @param recipeParts parts that the recipe's grams are for
 * @param runs        pots or runs in the order of making
 * @param ofPots      true when they are pots, false for runs of a machine
 * @param why         what their number rests on
 * @param schedule    the order of work
 * @param hands       min of a person's time, as a band
 * @param needs       what it takes of each material
 * @param cost        what it costs
 * @param remarks     what to know
 */
public record BatchPlan(Recipe recipe, BatchWish wish, Spares spares, int parts, int recipeParts, List<BatchRun> runs, boolean ofPots, String why, Schedule schedule,
        Estimate hands, List<MaterialNeed> needs, CostSheet cost, List<Remark> remarks) {
    public BatchPlan {
        runs = List.copyOf(runs);
        needs = List.copyOf(needs);
        remarks = List.copyOf(remarks);
    }

    /** Materials of which a lot was chosen that the recipe was not made with: they ask for a bridge trial. */
    public List<MaterialNeed> newLots() {
        return needs.stream().filter(need -> !need.newLots().isEmpty()).toList();
    }
}
