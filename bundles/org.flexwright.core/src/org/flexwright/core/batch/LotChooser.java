package org.flexwright.core.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.process.RoleWords;
import org.flexwright.core.trial.Stock;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;

/**
 * Chooses lots for pots: opened ones first, then those that expire first, never one whose date has passed, and no change of lot within a pot where one lot has enough for it.
 * What is taken for one pot is not there for the next.
 */
final class LotChooser {
    /** g that a balance does not see. */
    private static final double NOTHING = 1e-9;

    private final Project project;
    private final Recipe recipe;
    private final BatchWish wish;
    private final Map<Lot, Double> left = new IdentityHashMap<>();
    private final Map<Premix, Double> blends = new IdentityHashMap<>();
    private final Map<Shelf, List<StockLine>> shelves = new LinkedHashMap<>();
    private final Map<String, Gathered> gathered = new LinkedHashMap<>();

    private record Shelf(MaterialGrade grade, LocalDate day) {
    }

    /** What is found out about one material. */
    private static final class Gathered {
        private MaterialGrade grade;
        private Premix premix;
        private String name;
        private double grams;
        private double missing;
        private final List<LotPick> picks = new ArrayList<>();
        private final Set<Lot> expired = new LinkedHashSet<>();
        private final Set<Lot> unknown = new LinkedHashSet<>();
        private final Set<String> recipeLots = new LinkedHashSet<>();
    }

    LotChooser(Project project, Recipe recipe, BatchWish wish) {
        this.project = project;
        this.recipe = recipe;
        this.wish = wish;
    }

    /** The needs of all runs, in the order of the plan's materials. */
    List<MaterialNeed> choose(List<BatchRun> runs) {
        List<Step> steps = recipe.getPlan().getSteps();
        for (BatchRun run : runs) {
            for (int s = 0; s < steps.size(); s++) {
                for (int u = 0; u < steps.get(s).getUses().size(); u++) {
                    double grams = run.grams().get(s).get(u);
                    if (grams > 0) {
                        take(run, s, u, steps.get(s).getUses().get(u), grams);
                    }
                }
            }
        }
        return gathered.values().stream().map(this::need).toList();
    }

    private void take(BatchRun run, int step, int use, MaterialUse planned, double grams) {
        if (planned.getPremix() != null) {
            blend(run, planned, grams);
            return;
        }
        MaterialGrade grade = today(planned.getGrade());
        String name = planned.getGrade() == null ? RoleWords.of(planned.getRole()) : planned.getGrade().getName() == null ? planned.getGrade().getCode() : planned.getGrade()
                .getName();
        Gathered of = gathered.computeIfAbsent(planned.getGrade() == null ? "role " + planned.getRole() : String.valueOf(planned.getGrade().getCode()).toLowerCase(Locale.ROOT), k -> new Gathered());
        of.grade = grade;
        of.name = name;
        of.grams += grams;
        if (planned.getLot() != null && planned.getLot().getCode() != null) {
            of.recipeLots.add(planned.getLot().getCode());
        }
        of.missing += grade == null ? grams : take(of, run, step, use, grade, grams);
    }

    /** Says what is missing. */
    private double take(Gathered of, BatchRun run, int step, int use, MaterialGrade grade, double grams) {
        LocalDate day = day(run.contact() == null ? run.begin() : run.contact());
        List<StockLine> lines = shelves.computeIfAbsent(new Shelf(grade, day), shelf -> StockLine.of(project, grade, day));
        lines.stream().filter(StockLine::expired).filter(line -> line.onHand() == null || line.onHand() > NOTHING).forEach(line -> of.expired.add(line.lot()));
        List<StockLine> known = lines.stream().filter(line -> !line.expired() && line.onHand() != null).toList();
        known.forEach(line -> left.putIfAbsent(line.lot(), line.free()));
        StockLine whole = known.stream().filter(line -> left.get(line.lot()) >= grams - NOTHING).findFirst().orElse(null);
        StockLine open = lines.stream().filter(line -> !line.expired() && line.onHand() == null).findFirst().orElse(null);
        if (whole != null) {
            pick(of, run, step, use, whole.lot(), grams);
            return 0;
        }
        if (open != null) {
            of.unknown.add(open.lot());
            of.picks.add(new LotPick(run.number(), step, use, open.lot(), grams));
            return 0;
        }
        double missing = grams;
        for (StockLine line : known) {
            double some = Math.min(missing, left.get(line.lot()));
            if (some > NOTHING) {
                pick(of, run, step, use, line.lot(), some);
                missing -= some;
            }
        }
        return missing > NOTHING ? missing : 0;
    }

    private void pick(Gathered of, BatchRun run, int step, int use, Lot lot, double grams) {
        left.merge(lot, -grams, Double::sum);
        of.picks.add(new LotPick(run.number(), step, use, lot, grams));
    }

    /** A premix is there or must be made; its ingredients are not counted again. One with an ingredient past its date is left aside like an expired lot. */
    private void blend(BatchRun run, MaterialUse planned, double grams) {
        Premix premix = project.getPremixes().stream().filter(p -> Objects.equals(p.getCode(), planned.getPremix().getCode())).findFirst().orElse(null);
        Gathered of = gathered.computeIfAbsent("premix " + planned.getPremix().getCode(), k -> new Gathered());
        of.premix = premix;
        of.name = planned.getPremix().getCode();
        of.grams += grams;
        double there = premix == null ? 0 : blends.computeIfAbsent(premix, p -> Math.max(0, Stock.onHand(p, project).orElse(0)));
        LocalDate day = day(run.contact() == null ? run.begin() : run.contact());
        List<Lot> old = premix == null ? List.of() : premix.getIngredients().stream().map(MaterialUse::getLot).filter(lot -> lot != null && Stock.expired(lot, day)).toList();
        of.expired.addAll(old);
        double some = old.isEmpty() ? Math.min(there, grams) : 0;
        if (premix != null) {
            blends.merge(premix, -some, Double::sum);
        }
        of.missing += grams - some;
    }

    private MaterialGrade today(MaterialGrade of) {
        return of == null ? null : project.getGrades().stream().filter(grade -> grade.getCode() != null && grade.getCode().equalsIgnoreCase(of.getCode())).findFirst().orElse(null);
    }

    private LocalDate day(Instant at) {
        return at.atZone(wish.zone()).toLocalDate();
    }

    private MaterialNeed need(Gathered of) {
        double missing = of.missing > NOTHING ? of.missing : 0;
        Double pack = of.grade == null ? null : of.grade.getPackSize();
        // a billionth of a pack forgives what the division lost
        Integer packs = missing > 0 && pack != null && pack > 0 ? Integer.valueOf((int) Math.ceil(missing / pack - NOTHING)) : null;
        Double price = packs == null ? null : of.grade.getLots().stream().filter(lot -> lot.getPrice() != null && lot.getAmount() != null && lot.getAmount() > 0)
                .reduce((a, b) -> b).map(lot -> packs * pack * lot.getPrice() / lot.getAmount()).orElse(null);
        double expiredLeft = of.expired.stream().map(lot -> Stock.onHand(lot, project)).filter(java.util.OptionalDouble::isPresent).mapToDouble(java.util.OptionalDouble::getAsDouble)
                .sum();
        return new MaterialNeed(of.grade, of.premix, of.name, of.grams, of.picks, missing, packs, price, List.copyOf(of.expired), expiredLeft, List.copyOf(of.unknown),
                List.copyOf(of.recipeLots));
    }
}
