package org.flexwright.mixing.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

import org.flexwright.model.AmountBasis;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;

/**
 * What a mixture is meant to consist of, in the parts its maker thinks in. Every statement is linear in the grams, so the grams of a batch are
 * the solution of as many equations as there are items: the ratio between the reacting components, what the others are a share of, the index
 * when one is wanted, and the mass of it all. Masses in g, densities in g/cm3, equivalents in mol.
 *
 * @param items in the order of adding
 * @param index NCO groups to 100 groups that react with them, water included; null when the parts alone say the ratio
 */
public record Formulation(List<Item> items, Double index) {

    /** Lowest index that is answered for; common practice, no source. */
    public static final double LOWEST_INDEX = 80;
    /** Highest index that is answered for; common practice, no source. */
    public static final double HIGHEST_INDEX = 130;
    private static final double HUNDRED = 100;

    /**
     * What one gram of a material brings along.
     *
     * @param nco     equivalents of NCO
     * @param active  equivalents that react with NCO, water left out
     * @param water   grams of water
     * @param density g/cm3; null when unknown
     */
    public record Substance(double nco, double active, double water, Double density) {
        /** Equivalents a maker counts it by: NCO of an isocyanate, else what reacts with it. */
        double counted() {
            return nco > 0 ? nco : active;
        }

        /** All equivalents that use up NCO, water included. */
        public double usesUp() {
            return active + water / Polyurethane.waterEquivalent();
        }
    }

    /**
     * A material in an item.
     *
     * @param role      what it does
     * @param share     of the item's mass, above 0 up to 1
     * @param substance what it brings along
     */
    public record Portion(PartRole role, double share, Substance substance) {
        /** True for what becomes the network: A, B, a one-part material, extra polyols. Amounts "on 100 of polymer" are counted on these. */
        boolean polymer() {
            return role == PartRole.COMPONENT_A || role == PartRole.COMPONENT_B || role == PartRole.SINGLE || role == PartRole.POLYOL;
        }
    }

    /**
     * What is weighed as one.
     *
     * @param name     what it is called, for the answer when it cannot be counted
     * @param portions the material itself, or what a premix is made of
     * @param parts    as the maker thinks of them; not negative
     * @param by       weight, volume or equivalents
     * @param of       what they are a share of; unstated belongs to the ratio when it brings polymer, and says nothing otherwise
     */
    public record Item(String name, List<Portion> portions, double parts, AmountBasis by, PartsOf of) {
        public Item {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(of, "of");
            portions = List.copyOf(portions);
        }

        /** An amount a gram of the item brings along. */
        private double each(ToDoubleFunction<Portion> amount) {
            return portions.stream().mapToDouble(p -> p.share() * amount.applyAsDouble(p)).sum();
        }

        double share(PartRole role) {
            return each(p -> p.role() == role ? 1 : 0);
        }

        double nco() {
            return each(p -> p.substance().nco());
        }

        double usesUp() {
            return each(p -> p.substance().usesUp());
        }

        double water() {
            return each(p -> p.substance().water());
        }

        /** True when it belongs to the ratio of the components, and is no share of something. */
        public boolean inRatio() {
            return of == PartsOf.UNSTATED && portions.stream().anyMatch(Portion::polymer);
        }

        private boolean denseEnough() {
            return portions.stream().allMatch(p -> p.substance().density() != null && p.substance().density() > 0);
        }

        /** What one gram counts in the item's own way of counting. */
        private double unit() {
            return switch (by) {
                case WEIGHT -> 1;
                case VOLUME -> each(p -> 1 / p.substance().density());
                case EQUIVALENTS -> each(p -> p.substance().counted());
            };
        }

        /** The same of what its share is counted on. */
        private double base(PartsOf counted, AmountBasis how) {
            return each(p -> switch (counted) {
                case UNSTATED -> 0;
                case PER_100_POLYMER -> p.polymer() ? 1 : 0;
                case OF_ALL -> 1;
                case OF_A -> p.role() == PartRole.COMPONENT_A ? 1 : 0;
                case OF_B -> p.role() == PartRole.COMPONENT_B ? 1 : 0;
            } * (how == AmountBasis.VOLUME ? 1 / p.substance().density() : 1));
        }

        Item counted(PartsOf other) {
            return new Item(name, portions, parts, by, other);
        }
    }

    /** Why no grams follow. */
    public enum Problem {
        /** Nothing in it is a component. */
        NO_POLYMER,
        /** The parts of a component are zero. */
        RATIO_ZERO,
        /** Parts of components are counted in different ways. */
        MIXED_COUNTING,
        /** A share does not say of what. */
        OF_WHAT,
        /** A share of A, or B, is counted where there is none. */
        NOTHING_TO_COUNT_ON,
        /** Counted by volume, and a density is missing. */
        DENSITY,
        /** Counted by equivalents or by index, and NCO content, hydroxyl or amine number is missing. */
        EQUIVALENT,
        /** A share can be counted by weight or volume only. */
        EQUIVALENT_SHARE,
        /** An index is wanted and one of the two sides is not there. */
        ONE_SIDE,
        /** The index wanted is not between 80 and 130. */
        INDEX_RANGE,
        /** The shares leave nothing for the rest. */
        OVERFULL
    }

    /** Grams, or why not. */
    public sealed interface Answer permits Grams, Refused {
    }

    /**
     * Grams of each item.
     *
     * @param each in the order of the items; they come to the mass of the batch
     */
    public record Grams(List<Double> each) implements Answer {
        public Grams {
            each = List.copyOf(each);
        }
    }

    /**
     * No grams follow.
     *
     * @param problem why
     * @param item    name of the item it is about; empty when it is about all
     */
    public record Refused(Problem problem, String item) implements Answer {
    }

    public Formulation {
        items = List.copyOf(items);
    }

    /** Grams of each item in a batch of that mass, above zero. */
    public Answer grams(double mass) {
        Refused no = refusal();
        if (no != null) {
            return no;
        }
        double[][] rows = new double[items.size()][items.size() + 1];
        int next = ratios(rows, 0);
        for (int i = 0; i < items.size(); i++) {
            if (!items.get(i).inRatio()) {
                share(rows[next++], i);
            }
        }
        Arrays.fill(rows[next], 1);
        rows[next][items.size()] = mass;
        double[] found = solve(rows);
        for (int i = 0; found != null && i < found.length; i++) {
            if (Double.isNaN(found[i]) || Double.isInfinite(found[i]) || found[i] < 0 || found[i] == 0 && items.get(i).inRatio()) {
                return new Refused(Problem.OVERFULL, "");
            }
        }
        return found == null ? new Refused(Problem.OVERFULL, "") : new Grams(Arrays.stream(found).boxed().toList());
    }

    /** The same mixture with one item counted on something else. */
    public Formulation counted(int item, PartsOf of) {
        List<Item> others = new ArrayList<>(items);
        others.set(item, items.get(item).counted(of));
        return new Formulation(others, index);
    }

    /** The same mixture with nothing of one item. */
    public Formulation without(int item) {
        Item left = items.get(item);
        List<Item> others = new ArrayList<>(items);
        others.set(item, new Item(left.name(), left.portions(), 0, AmountBasis.WEIGHT, PartsOf.OF_ALL));
        return new Formulation(others, index);
    }

    /** Density in g/cm3 of grams of the items, volumes adding up; NaN when one is unknown. */
    public double density(List<Double> grams) {
        double mass = 0;
        double volume = 0;
        for (int i = 0; i < items.size(); i++) {
            for (Portion p : items.get(i).portions()) {
                double of = grams.get(i) * p.share();
                mass += of;
                volume += of == 0 ? 0 : p.substance().density() == null ? Double.NaN : of / p.substance().density();
            }
        }
        return mass / volume;
    }

    /** Index of grams of the items, water included; NaN when one of the two sides is not there. */
    public double index(List<Double> grams) {
        double nco = 0;
        double others = 0;
        for (int i = 0; i < items.size(); i++) {
            nco += grams.get(i) * items.get(i).nco();
            others += grams.get(i) * items.get(i).usesUp();
        }
        return nco > 0 && others > 0 ? HUNDRED * nco / others : Double.NaN;
    }

    private Refused refusal() {
        if (items.stream().noneMatch(Item::inRatio)) {
            return new Refused(Problem.NO_POLYMER, "");
        }
        if (index != null && !(index >= LOWEST_INDEX && index <= HIGHEST_INDEX)) {
            return new Refused(Problem.INDEX_RANGE, "");
        }
        boolean byIndex = byIndex();
        AmountBasis counting = items.stream().filter(Item::inRatio).findFirst().orElseThrow().by();
        for (Item item : items) {
            Refused no = item.inRatio() ? ratioRefusal(item, counting, byIndex) : shareRefusal(item);
            if (no != null) {
                return no;
            }
        }
        if (byIndex && (items.stream().noneMatch(i -> i.inRatio() && i.nco() > 0) || items.stream().noneMatch(i -> i.inRatio() && !(i.nco() > 0)))) {
            return new Refused(Problem.ONE_SIDE, "");
        }
        double wanted = byIndex ? wantedIndex() : HUNDRED;
        return wanted >= LOWEST_INDEX && wanted <= HIGHEST_INDEX ? null : new Refused(Problem.INDEX_RANGE, "");
    }

    private static Refused ratioRefusal(Item item, AmountBasis counting, boolean byIndex) {
        Problem problem = !(item.parts() > 0) ? Problem.RATIO_ZERO
                : item.by() != counting ? Problem.MIXED_COUNTING
                : item.by() == AmountBasis.VOLUME && !item.denseEnough() ? Problem.DENSITY
                : byIndex && !(item.each(p -> p.substance().counted()) > 0) ? Problem.EQUIVALENT : null;
        return problem == null ? null : new Refused(problem, item.name());
    }

    private Refused shareRefusal(Item item) {
        boolean byVolume = item.by() == AmountBasis.VOLUME;
        boolean dense = !byVolume || items.stream().allMatch(Item::denseEnough);
        Problem problem = !(item.parts() >= 0) ? Problem.RATIO_ZERO
                : item.of() == PartsOf.UNSTATED ? Problem.OF_WHAT
                : item.by() == AmountBasis.EQUIVALENTS ? Problem.EQUIVALENT_SHARE
                : !dense ? Problem.DENSITY
                : items.stream().allMatch(i -> i.base(item.of(), AmountBasis.WEIGHT) == 0) ? Problem.NOTHING_TO_COUNT_ON : null;
        return problem == null ? null : new Refused(problem, item.name());
    }

    /** True when the ratio follows from groups that react and not from parts alone. */
    private boolean byIndex() {
        return index != null || items.stream().anyMatch(i -> i.inRatio() && i.by() == AmountBasis.EQUIVALENTS);
    }

    /** The index wanted, or what the equivalents say. */
    private double wantedIndex() {
        if (index != null) {
            return index;
        }
        double nco = items.stream().filter(i -> i.inRatio() && i.nco() > 0).mapToDouble(Item::parts).sum();
        double others = items.stream().filter(i -> i.inRatio() && !(i.nco() > 0)).mapToDouble(Item::parts).sum();
        return HUNDRED * nco / others;
    }

    /** The ratio of each component to the first of its side; by index the two sides follow from the groups that react. */
    private int ratios(double[][] rows, int from) {
        boolean byIndex = byIndex();
        int next = from;
        int[] first = {-1, -1};
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            if (item.inRatio()) {
                int side = byIndex && item.nco() > 0 ? 1 : 0;
                if (first[side] < 0) {
                    first[side] = i;
                } else {
                    Item leader = items.get(first[side]);
                    rows[next][i] = item.unit() * leader.parts();
                    rows[next++][first[side]] = -leader.unit() * item.parts();
                }
            }
        }
        if (byIndex) {
            double wanted = wantedIndex() / HUNDRED;
            for (int i = 0; i < items.size(); i++) {
                rows[next][i] = items.get(i).nco() - wanted * items.get(i).usesUp();
            }
            next++;
        }
        return next;
    }

    private void share(double[] row, int at) {
        Item item = items.get(at);
        for (int i = 0; i < items.size(); i++) {
            row[i] = -item.parts() / HUNDRED * items.get(i).base(item.of(), item.by());
        }
        row[at] += item.unit();
    }

    /** Gauss with the largest pivot of each column; null when the equations contradict each other. Rows hold the right side last. */
    private static double[] solve(double[][] rows) {
        int n = rows.length;
        for (double[] row : rows) {
            double largest = Arrays.stream(row, 0, n).map(Math::abs).max().orElse(0);
            for (int k = 0; largest > 0 && k <= n; k++) {
                row[k] /= largest;
            }
        }
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int r = column + 1; r < n; r++) {
                pivot = Math.abs(rows[r][column]) > Math.abs(rows[pivot][column]) ? r : pivot;
            }
            if (Math.abs(rows[pivot][column]) < 1e-12) {
                return null;
            }
            double[] swap = rows[pivot];
            rows[pivot] = rows[column];
            rows[column] = swap;
            for (int r = 0; r < n; r++) {
                double factor = r == column ? 0 : rows[r][column] / rows[column][column];
                for (int k = column; factor != 0 && k <= n; k++) {
                    rows[r][k] -= factor * rows[column][k];
                }
            }
        }
        double[] found = new double[n];
        for (int i = 0; i < n; i++) {
            found[i] = rows[i][n] / rows[i][i];
        }
        return found;
    }
}
