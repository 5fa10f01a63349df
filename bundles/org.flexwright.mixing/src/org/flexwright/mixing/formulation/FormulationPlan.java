package org.flexwright.mixing.formulation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.FillerBasis;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Batch;
import org.flexwright.mixing.formula.Formulation;
import org.flexwright.mixing.formula.Formulation.Grams;
import org.flexwright.mixing.formula.Formulation.Item;
import org.flexwright.mixing.formula.Formulation.Portion;
import org.flexwright.mixing.formula.Formulation.Refused;
import org.flexwright.mixing.formula.Surplus;
import org.flexwright.model.AmountBasis;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Step;

/**
 * The grams that follow from the parts of a weighing step. Uses without parts stay as they are and are not counted in. Nothing here looks at
 * what was weighed, so no choice of what a share is counted on can change it.
 *
 * @param formulation what it is meant to consist of
 * @param uses        the use of each of its items
 * @param shares      of each item in 1 g of it all; empty when the parts do not say it
 * @param grams       of each item in the batch; empty when none follow
 * @param problem     why none follow; null when they do
 * @param figures     what was counted with, with its source
 */
public record FormulationPlan(Formulation formulation, List<MaterialUse> uses, List<Double> shares, List<Double> grams, Message problem, List<Figure> figures) {

    /** What a share may be counted on. */
    public static final List<PartsOf> READINGS = List.of(PartsOf.PER_100_POLYMER, PartsOf.OF_ALL, PartsOf.OF_A, PartsOf.OF_B);

    public FormulationPlan {
        uses = List.copyOf(uses);
        shares = List.copyOf(shares);
        grams = List.copyOf(grams);
        figures = List.copyOf(figures);
    }

    /** Of a weighing step; empty when nobody gave parts to a material. */
    public static Optional<FormulationPlan> of(Step step) {
        if (step.getUses().stream().allMatch(use -> use.getParts() == null)) {
            return Optional.empty();
        }
        return Optional.of(new Maker(step).plan());
    }

    /** Grams of a role in 1 g of it all, premixes counted as their ingredients; zero when the parts do not say it. */
    public double share(PartRole role) {
        double sum = 0;
        for (int i = 0; i < shares.size(); i++) {
            sum += shares.get(i) * Mixtures.share(uses.get(i), role);
        }
        return sum;
    }

    /** Grams of a use; null when none follow. */
    public Double grams(MaterialUse use) {
        int at = uses.indexOf(use);
        return at < 0 || grams.isEmpty() ? null : grams.get(at);
    }

    /**
     * What a share without a base might mean: grams of each way to count it, in the batch that is planned. Empty when the use says of what, has
     * no parts, or nothing follows from the rest either.
     */
    public static Map<PartsOf, Double> readings(Step step, MaterialUse use) {
        Maker maker = new Maker(step);
        Formulation formulation = maker.formulation();
        int at = maker.uses.indexOf(use);
        Map<PartsOf, Double> found = new EnumMap<>(PartsOf.class);
        if (at < 0 || formulation.items().get(at).of() != PartsOf.UNSTATED || formulation.items().get(at).inRatio()) {
            return found;
        }
        for (int i = 0; i < formulation.items().size(); i++) {
            Item item = formulation.items().get(i);
            formulation = i != at && item.of() == PartsOf.UNSTATED && !item.inRatio() ? formulation.without(i) : formulation;
        }
        for (PartsOf of : READINGS) {
            Formulation stated = formulation.counted(at, of);
            Mass mass = maker.mass(stated);
            if (mass.problem() == null && stated.grams(mass.grams()) instanceof Grams grams) {
                found.put(of, grams.each().get(at));
            }
        }
        return found;
    }

    /** Grams of the whole batch that the step says; not a number with the reason when it says none. */
    private record Mass(double grams, Message problem) {
    }

    /** Turns a step into a formulation. */
    private static final class Maker {
        private final Step step;
        private final WeighDetails details;
        private final List<MaterialUse> uses = new ArrayList<>();
        private final List<Figure> figures = new ArrayList<>();

        Maker(Step step) {
            this.step = step;
            this.details = step.getDetails() instanceof WeighDetails d ? d : null;
        }

        Formulation formulation() {
            List<Item> items = new ArrayList<>();
            for (MaterialUse use : step.getUses()) {
                Item item = item(use);
                if (item != null) {
                    uses.add(use);
                    items.add(item);
                }
            }
            return new Formulation(items, details == null ? null : details.getIndex());
        }

        FormulationPlan plan() {
            Formulation formulation = formulation();
            MaterialUse bare = step.getUses().stream().filter(use -> component(use) && !uses.contains(use)).findFirst().orElse(null);
            Mass mass = bare == null ? mass(formulation) : new Mass(Double.NaN, Say.PARTS_MISSING.with(MaterialFigures.name(bare)));
            List<Double> shares = bare == null && formulation.grams(1) instanceof Grams found ? found.each() : List.of();
            Message problem = mass.problem();
            List<Double> grams = List.of();
            if (problem == null) {
                switch (formulation.grams(mass.grams())) {
                    case Grams found -> grams = found.each();
                    case Refused no -> problem = sentence(no);
                }
            }
            return new FormulationPlan(formulation, uses, shares, grams, problem, figures);
        }

        private static boolean component(MaterialUse use) {
            return use.getRole() == PartRole.COMPONENT_A || use.getRole() == PartRole.COMPONENT_B;
        }

        private Item item(MaterialUse use) {
            Double parts = parts(use);
            if (parts == null) {
                return null;
            }
            List<Portion> portions = new ArrayList<>();
            for (Mixtures.Share share : Mixtures.shares(use)) {
                MaterialFigures known = MixtureFigures.of(step, share.of());
                figures.addAll(known.figures());
                portions.add(new Portion(share.of().getRole(), share.share(), known.substance()));
            }
            String name = use.getPremix() == null ? MaterialFigures.name(use) : use.getPremix().getCode();
            return new Item(name == null ? "" : name, portions, parts, by(use), of(use));
        }

        /** As given to the use; those of A and B may stand together in the details, that of the filler too. */
        private Double parts(MaterialUse use) {
            if (use.getParts() != null || details == null) {
                return use.getParts();
            }
            boolean alone = step.getUses().stream().filter(u -> u.getRole() == use.getRole()).count() == 1;
            boolean own = step.getUses().stream().anyMatch(u -> u.getParts() != null && (component(u) || u.getPremix() != null));
            Double said = !alone ? null : component(use) && !own ? use.getRole() == PartRole.COMPONENT_A ? details.getRatioA() : details.getRatioB()
                    : use.getRole() == PartRole.FILLER ? details.getFiller() : null;
            boolean byIndex = said == null && details.getIndex() != null && component(use);
            return byIndex ? Double.valueOf(1) : said;
        }

        private AmountBasis by(MaterialUse use) {
            if (use.getParts() != null || details == null || use.getRole() == PartRole.FILLER) {
                return use.getPartsBy();
            }
            if (details.getIndex() != null) {
                return step.getUses().stream().filter(u -> u.getParts() != null && u.getPartsOf() == PartsOf.UNSTATED).map(MaterialUse::getPartsBy).findFirst()
                        .orElse(AmountBasis.WEIGHT);
            }
            return details.getBasis() == Basis.VOLUME ? AmountBasis.VOLUME : AmountBasis.WEIGHT;
        }

        private PartsOf of(MaterialUse use) {
            if (use.getParts() != null || use.getRole() != PartRole.FILLER) {
                return use.getPartsOf();
            }
            return counted(details.getFillerBasis());
        }

        /** The mass typed, else that of the parts to make at the density of the mixture, else what belongs to the planned components. */
        Mass mass(Formulation formulation) {
            if (details != null && details.getBatchMass() != null) {
                return new Mass(details.getBatchMass(), null);
            }
            Double part = details == null ? null : details.getPartVolume() == null ? details.getMeasuredVolume() : details.getPartVolume();
            boolean parts = part != null && details.getPartCount() != null;
            return switch (formulation.grams(1)) {
                case Refused no -> new Mass(Double.NaN, sentence(no));
                case Grams shares -> {
                    double grams = parts ? ofParts(formulation.density(shares.each()), part) : ofComponents(formulation, shares);
                    yield grams > 0 ? new Mass(grams, null)
                            : new Mass(Double.NaN, parts && Double.isNaN(grams) ? Say.BATCH_DENSITY.with(withoutDensity()) : Say.NO_BATCH.with());
                }
            };
        }

        private double ofParts(double density, double part) {
            Batch batch = new Batch(details.getPartCount(), part, zero(details.getRunnerVolume()), zero(details.getDeadVolume()));
            return batch.mass(density, details.getExtraKind() == Extra.LOSS ? Surplus.LOSS : Surplus.ALLOWANCE, zero(details.getExtra()) / 100);
        }

        /** The batch that belongs to the planned grams of its components; zero when none of them has any. */
        private double ofComponents(Formulation formulation, Grams shares) {
            double planned = 0;
            double share = 0;
            for (int i = 0; i < uses.size(); i++) {
                if (formulation.items().get(i).inRatio() && uses.get(i).getPlanned() != null) {
                    planned += uses.get(i).getPlanned();
                    share += shares.each().get(i);
                }
            }
            return share > 0 ? planned / share : 0;
        }

        private String withoutDensity() {
            return String.join(", ", uses.stream().flatMap(use -> Mixtures.shares(use).stream()).map(Mixtures.Share::of)
                    .filter(of -> MixtureFigures.of(step, of).substance().density() == null).map(MaterialFigures::name).distinct().toList());
        }
    }

    /** The base of a filler as the details name it. */
    static PartsOf counted(FillerBasis basis) {
        return switch (basis) {
            case UNSTATED -> PartsOf.UNSTATED;
            case PHR -> PartsOf.PER_100_POLYMER;
            case OF_TOTAL -> PartsOf.OF_ALL;
            case OF_A -> PartsOf.OF_A;
            case OF_B -> PartsOf.OF_B;
        };
    }

    private static Message sentence(Refused no) {
        Say words = switch (no.problem()) {
            case NO_POLYMER -> Say.NO_POLYMER;
            case RATIO_ZERO -> Say.RATIO_ZERO;
            case MIXED_COUNTING -> Say.MIXED_COUNTING;
            case OF_WHAT -> Say.OF_WHAT;
            case NOTHING_TO_COUNT_ON -> Say.NOTHING_TO_COUNT_ON;
            case DENSITY -> Say.DENSITY;
            case EQUIVALENT -> Say.EQUIVALENT;
            case EQUIVALENT_SHARE -> Say.EQUIVALENT_SHARE;
            case ONE_SIDE -> Say.ONE_SIDE;
            case INDEX_RANGE -> Say.INDEX_RANGE;
            case OVERFULL -> Say.OVERFULL;
        };
        return words.with(no.item());
    }

    private static double zero(Double value) {
        return value == null ? 0 : value;
    }
}
