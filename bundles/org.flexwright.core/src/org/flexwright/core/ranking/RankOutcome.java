package org.flexwright.core.ranking;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Concordance;

/** What a ranking says: an order with the agreement, or one sentence why it says nothing yet. */
public sealed interface RankOutcome {
    /** Where the measure of agreement comes from. */
    Source SOURCE = Source.fromMemory("Kendall and Babington Smith 1939, W corrected for shared places; chance counted over all orders up to six pieces");

    /**
     * No order.
     *
     * @param sentence what is missing or wrong, where, and what is allowed
     */
    record Refused(Message sentence) implements RankOutcome {
    }

    /**
     * An order of all.
     *
     * @param people    how many put the pieces in order
     * @param places    from first to last by the sum of places; equal sums stand at one place
     * @param agreement how far the people agree; empty for one person, or when everybody found everything alike
     */
    record Order(int people, List<Place> places, Optional<Concordance> agreement) implements RankOutcome {
        public Order {
            places = List.copyOf(places);
            Objects.requireNonNull(agreement, "agreement");
        }

        /** True when such agreement comes up by chance less than once in twenty times. */
        public boolean agreed() {
            return agreement.map(a -> a.p() < 0.05).orElse(false);
        }
    }

    /**
     * A piece in the order of all.
     *
     * @param piece the piece
     * @param place its place in the order of all; 1 is first
     * @param best  the best place anybody gave it
     * @param worst the worst place anybody gave it
     * @param first how many put it first, alone or with others
     */
    record Place(Specimen piece, int place, int best, int worst, int first) {

        /** Between which places the people put it. */
        public Message placed() {
            return best == worst ? Message.of(RankOutcome.class, "placed.all", best) : Message.of(RankOutcome.class, "placed.between", best, worst);
        }
    }
}
