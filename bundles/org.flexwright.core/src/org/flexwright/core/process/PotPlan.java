package org.flexwright.core.process;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.find.Remark;

/** How many parts are made: in so many pots, each poured inside its working time; or why they cannot. */
public sealed interface PotPlan {

    /**
     * The pots.
     *
     * @param pots        in the order of making; their parts together are those asked for
     * @param most        parts a pot may have at most
     * @param recipeParts parts that the grams and minutes of the plan are for
     * @param before      min from first contact until the mould begins to be filled
     * @param why         what the number of pots rests on, in a sentence
     * @param remarks     what to know: a pot too small for the balance, a cup too small, a working time that nobody gave
     */
    record Split(List<Pot> pots, int most, int recipeParts, double before, Message why, List<Remark> remarks) implements PotPlan {
        public Split {
            pots = List.copyOf(pots);
            remarks = List.copyOf(remarks);
        }

        /** Parts of all pots. */
        public int parts() {
            return pots.stream().mapToInt(Pot::parts).sum();
        }
    }

    /**
     * One pot.
     *
     * @param parts parts it fills, at least 1
     * @param grams of each material of the step, in the order of its uses; NaN where none is planned
     * @param net   grams of it that reach the mould; null when nothing tells
     * @param fill  min that filling its parts takes; null when nothing tells
     * @param needs min of working time that must be left when filling begins; null when nothing tells
     * @param workingTime min from first contact in this pot; null when nobody said
     * @param cup   ml that the cup must hold at least, with room to foam; null when nothing tells
     */
    record Pot(int parts, List<Double> grams, Double net, Double fill, Double needs, Estimate workingTime, Double cup) {
        public Pot {
            grams = List.copyOf(grams);
        }

        /** Grams in all. */
        public double mass() {
            return grams.stream().filter(g -> !g.isNaN()).mapToDouble(Double::doubleValue).sum();
        }
    }

    /**
     * It cannot be made like this.
     *
     * @param input  name of the planned feature that stands in the way
     * @param why    one sentence
     * @param remedy one sentence: what would help
     */
    record Refused(String input, Message why, Message remedy) implements PotPlan {
        public Refused {
            Objects.requireNonNull(input, "input");
            Objects.requireNonNull(why, "why");
            Objects.requireNonNull(remedy, "remedy");
        }
    }
}
