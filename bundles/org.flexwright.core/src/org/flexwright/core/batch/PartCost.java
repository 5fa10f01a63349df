package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.trial.Moulds;
import org.flexwright.model.Batch;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Mould;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** What a good part costs: lots by grams used, what stays in the cup, cups, share of the mould, work, rejects. Nothing unknown is counted as nothing. */
public final class PartCost {
    private static final double MINUTES_AN_HOUR = 60;

    private final List<CostShare> shares = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();
    private final Project project;

    private PartCost(Project project) {
        this.project = project;
    }

    /** Of a plan, by its chosen lots, planned times and the own record of rejects. */
    static CostSheet planned(Project project, List<BatchRun> runs, List<MaterialNeed> needs, Estimate hands, Spares spares) {
        PartCost cost = new PartCost(project);
        int made = runs.stream().mapToInt(BatchRun::parts).sum();
        double grams = 0;
        double money = 0;
        for (MaterialNeed need : needs) {
            for (LotPick pick : need.picks()) {
                Double each = perGram(pick.lot());
                if (each == null) {
                    cost.lacks(say("lack.price", need.name(), pick.lot().getCode()));
                } else {
                    money += pick.grams() * each;
                    grams += pick.grams();
                }
            }
            if (need.premix() != null) {
                Double each = perGram(need.premix());
                if (each == null) {
                    cost.lacks(say("lack.blend", need.name()));
                } else {
                    money += need.grams() * each;
                    grams += need.grams();
                }
            } else if (need.missing() > 0) {
                if (need.price() != null) {
                    double each = need.price() / (need.packs() * need.grade().getPackSize());
                    money += need.missing() * each;
                    grams += need.missing();
                } else {
                    cost.lacks(say("lack.lot", need.name(), Figures.of(need.missing(), "g")));
                }
            }
        }
        Double net = runs.stream().allMatch(run -> run.pot() != null && run.pot().net() != null) && !runs.isEmpty()
                ? Double.valueOf(runs.stream().mapToDouble(run -> run.pot().net()).sum() / runs.stream().mapToDouble(run -> run.pot().mass()).sum()) : null;
        cost.materials(grams, money, net);
        cost.cups((int) runs.stream().filter(run -> run.pot() != null).count());
        cost.moulds(runs.stream().map(BatchRun::mould).filter(Objects::nonNull).toList(), runs.stream().anyMatch(run -> run.filled() != null && run.mould() == null), List.of());
        cost.work(hands.times(1 / MINUTES_AN_HOUR));
        return cost.rejects(made, spares.share() == null ? null : good(made, spares.share()));
    }

    private static Estimate good(int made, Estimate share) {
        return new Estimate(made * (1 - share.high()), made * (1 - share.likely()), made * (1 - share.low()), share.source());
    }

    /** Of trials that were made, by what was weighed, their hours, and the parts that are good. Parts that nobody noted do not count. */
    public static CostSheet made(Project project, Collection<Trial> trials) {
        PartCost cost = of(project, trials);
        List<String> hourless = trials.stream().filter(trial -> trial.getHours() == null).map(Trial::getCode).toList();
        double hours = trials.stream().map(Trial::getHours).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum();
        if (!hourless.isEmpty()) {
            cost.lacks(say("lack.hours", String.join(", ", hourless)));
        }
        cost.work(hours > 0 || hourless.isEmpty() ? Estimate.exact(hours, Source.ownRecord(say("hours.record"))) : null);
        int made = (int) trials.stream().flatMap(trial -> trial.getParts().stream()).filter(part -> part.getPieceKind() == PieceKind.PART).count();
        int good = (int) trials.stream().flatMap(trial -> trial.getParts().stream()).filter(part -> part.getPieceKind() == PieceKind.PART && !Spares.rejected(part)).count();
        return cost.rejects(made, Estimate.exact(good, Source.ownRecord(say("parts.record"))));
    }

    /**
     * Of a batch whose parts are still to be made: planned grams, planned times, rejects by the own record.
     *
     * @param hands min of a person's time
     */
    public static CostSheet ahead(Project project, Batch batch, Estimate hands) {
        PartCost cost = of(project, batch.getPots());
        cost.work(hands.times(1 / MINUTES_AN_HOUR));
        int made = batch.getPots().stream().map(Trial::getPartsWanted).filter(Objects::nonNull).mapToInt(Integer::intValue).sum();
        Spares spares = Spares.of(project, batch.getRecipe(), made);
        return cost.rejects(made, spares.share() == null ? null : good(made, spares.share()));
    }

    /** Materials, cups and moulds: what was weighed, else what is planned. */
    private static PartCost of(Project project, Collection<Trial> trials) {
        PartCost cost = new PartCost(project);
        double grams = 0;
        double money = 0;
        for (Trial trial : trials) {
            for (Step step : trial.getSteps()) {
                for (MaterialUse use : step.getState() == StepState.SKIPPED ? List.<MaterialUse>of() : step.getUses()) {
                    Double used = Mixtures.grams(use) == null ? use.getPlanned() : Mixtures.grams(use);
                    Double each = used == null ? null : perGram(use);
                    if (used != null && each != null) {
                        grams += used;
                        money += used * each;
                    } else if (used == null) {
                        cost.lacks(say("lack.grams", trial.getCode(), name(use)));
                    } else {
                        cost.lacks(say("lack.price", name(use), use.getLot() == null ? "?" : use.getLot().getCode()));
                    }
                }
            }
        }
        cost.materials(grams, money, null);
        cost.cups((int) trials.stream().filter(PartCost::hasCup).count());
        cost.moulds(trials.stream().map(Trial::getMould).filter(Objects::nonNull).toList(), trials.stream().anyMatch(trial -> trial.getMould() == null && hasCup(trial)), trials);
        return cost;
    }

    /** A cup is used where two components meet. */
    private static boolean hasCup(Trial trial) {
        return trial.getSteps().stream().flatMap(step -> step.getUses().stream()).anyMatch(use -> use.getRole() == PartRole.COMPONENT_A || use.getRole() == PartRole.COMPONENT_B);
    }

    private static String name(MaterialUse use) {
        return use.getGrade() != null && use.getGrade().getName() != null ? use.getGrade().getName() : use.getPremix() != null ? use.getPremix().getCode()
                : org.flexwright.core.process.RoleWords.of(use.getRole());
    }

    private static Double perGram(MaterialUse use) {
        return use.getPremix() != null ? perGram(use.getPremix()) : use.getLot() == null ? null : perGram(use.getLot());
    }

    private static Double perGram(Premix premix) {
        double money = 0;
        double grams = 0;
        for (MaterialUse use : premix.getIngredients()) {
            Double each = use.getLot() == null ? null : perGram(use.getLot());
            Double used = Mixtures.grams(use);
            if (each == null || used == null) {
                return null;
            }
            money += used * each;
            grams += used;
        }
        return grams > 0 ? Double.valueOf(money / grams) : null;
    }

    private static Double perGram(Lot lot) {
        return lot.getPrice() == null || lot.getAmount() == null || !(lot.getAmount() > 0) ? null : Double.valueOf(lot.getPrice() / lot.getAmount());
    }

    private void lacks(String what) {
        if (!missing.contains(what)) {
            missing.add(what);
        }
    }

    private void materials(double grams, double money, Double net) {
        Source source = Source.ownRecord(say("lots.record"));
        if (!(grams > 0)) {
            shares.add(new CostShare("material", say("material"), null, say("material.none")));
            return;
        }
        if (net == null) {
            shares.add(new CostShare("material", say("material"), Estimate.exact(money, source), say("material.all", Figures.of(grams, "g"))));
            return;
        }
        shares.add(new CostShare("material", say("material"), Estimate.exact(money * net, source), say("material.net", Figures.of(grams * net, "g"))));
        shares.add(new CostShare("loss", say("loss"), Estimate.exact(money * (1 - net), source), say("loss.why", Figures.of(grams * (1 - net), "g"))));
    }

    private void cups(int pots) {
        if (pots == 0) {
            return;
        }
        if (project.getCupPrice() == null) {
            lacks(say("lack.cup"));
            shares.add(new CostShare("cups", say("cups"), null, say("lack.cup")));
        } else {
            shares.add(new CostShare("cups", say("cups"), Estimate.exact(pots * project.getCupPrice(), Source.ownRecord(say("cups.record"))), say("cups.why", pots, Figures.of(
                    project.getCupPrice(), "EUR"))));
        }
    }

    /** {@code made}: trials behind these casts; what a mould has counted of them already is not counted again. */
    private void moulds(List<Mould> casts, boolean mouldless, Collection<Trial> made) {
        if (mouldless) {
            lacks(say("lack.mould"));
        }
        if (casts.isEmpty()) {
            if (mouldless) {
                shares.add(new CostShare("mould", say("mould"), null, say("lack.mould")));
            }
            return;
        }
        double low = 0;
        double high = 0;
        boolean known = false;
        List<String> why = new ArrayList<>();
        for (Mould mould : casts.stream().distinct().toList()) {
            int of = (int) casts.stream().filter(m -> m == mould).count();
            if (mould.getPrice() == null) {
                lacks(say("lack.mouldPrice", mould.getCode()));
                continue;
            }
            known = true;
            int counted = (int) made.stream().filter(trial -> trial.getMould() == mould && mould.getCasts().stream().anyMatch(cast -> cast.getTrial() == trial)).count();
            int seen = Math.max(1, Moulds.casts(mould) + of - counted);
            if (mould.getCastsLimit() != null) {
                double share = of * mould.getPrice() / mould.getCastsLimit();
                low += share;
                high += share;
                why.add(say("mould.limit", mould.getCode(), of, mould.getCastsLimit()));
            } else {
                // how long it will last is not known: what it has seen is the least
                high += mould.getPrice() * of / seen;
                why.add(say("mould.seen", mould.getCode(), of, seen));
            }
        }
        shares.add(new CostShare("mould", say("mould"), known ? new Estimate(low, high, high, Source.ownRecord(say("mould.record"))) : null, known ? String.join(" ", why) : say(
                "lack.mouldPrice", String.join(", ", casts.stream().distinct().map(Mould::getCode).toList()))));
    }

    private void work(Estimate hours) {
        if (hours == null || project.getHourlyRate() == null) {
            if (project.getHourlyRate() == null) {
                lacks(say("lack.rate"));
            }
            shares.add(new CostShare("work", say("work"), null, project.getHourlyRate() == null ? say("lack.rate") : say("work.none")));
            return;
        }
        shares.add(new CostShare("work", say("work"), hours.times(project.getHourlyRate()), say("work.why", org.flexwright.core.field.FieldText.band(hours.low(), hours
                .likely(), hours.high(), org.flexwright.quantity.QuantityKind.DURATION, "h"), Figures.of(project.getHourlyRate(), "EUR"))));
    }

    private CostSheet rejects(int made, Estimate good) {
        if (good == null) {
            lacks(say("lack.rejects"));
        }
        return new CostSheet(shares, made, good, missing);
    }

    private static String say(String key, Object... args) {
        return Message.of(PartCost.class, "cost." + key, args).text();
    }
}
