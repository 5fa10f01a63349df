package org.flexwright.core.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.flexwright.core.trial.Stock;
import org.flexwright.model.Batch;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.core.process.Mixtures;
import org.flexwright.model.MaterialUse;

/**
 * A lot on the shelf.
 *
 * @param grade    its material
 * @param lot      the lot
 * @param onHand   g left by the record, below zero when more was weighed out than bought; null when nobody said how much was bought
 * @param reserved g that open batches still mean to weigh out of it
 * @param expired  whether its date has passed on that day
 */
public record StockLine(MaterialGrade grade, Lot lot, Double onHand, double reserved, boolean expired) {

    /** g that nothing is planned for, not below zero; null when nobody said how much was bought. */
    public Double free() {
        return onHand == null ? null : Double.valueOf(Math.max(0, onHand - reserved));
    }

    /** All lots, by material; within a material in the order in which they are used up. */
    public static List<StockLine> all(Project project, LocalDate day) {
        List<StockLine> lines = new ArrayList<>();
        project.getGrades().forEach(grade -> lines.addAll(of(project, grade, day)));
        return List.copyOf(lines);
    }

    /** The lots of a material in the order in which they are used up: opened ones first, then those that expire first. */
    public static List<StockLine> of(Project project, MaterialGrade grade, LocalDate day) {
        return grade.getLots().stream().sorted(Comparator.comparing((Lot lot) -> lot.getOpened() == null)
                .thenComparing(Lot::getExpires, Comparator.nullsLast(Comparator.naturalOrder())).thenComparing(Lot::getOpened, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Lot::getCode, Comparator.nullsLast(Comparator.naturalOrder()))).map(lot -> of(project, grade, lot, day)).toList();
    }

    private static StockLine of(Project project, MaterialGrade grade, Lot lot, LocalDate day) {
        OptionalDouble onHand = Stock.onHand(lot, project);
        return new StockLine(grade, lot, onHand.isPresent() ? Double.valueOf(onHand.getAsDouble()) : null, reserved(project, lot), Stock.expired(lot, day));
    }

    /** What the pots of open batches have not weighed out yet. */
    private static double reserved(Project project, Lot lot) {
        return project.getBatches().stream().filter(batch -> batch.getClosedAt() == null).map(Batch::getPots).flatMap(List::stream).distinct()
                .filter(pot -> pot.getState() == TrialState.PLANNED || pot.getState() == TrialState.MAKING).map(Trial::getSteps).flatMap(List::stream)
                .filter(step -> step.getState() == StepState.PLANNED || step.getState() == StepState.RUNNING).map(Step::getUses).flatMap(List::stream)
                .filter(use -> use.getLot() == lot && use.getPlanned() != null).mapToDouble(StockLine::open).sum();
    }

    private static double open(MaterialUse use) {
        Double weighed = Mixtures.grams(use);
        return Math.max(0, use.getPlanned() - (weighed == null ? 0 : weighed));
    }

    /** Grams missing of each material that open batches have no lot for, by material; empty when nothing is missing. */
    public static Map<MaterialGrade, Double> toBuy(Project project) {
        Map<MaterialGrade, Double> missing = new java.util.LinkedHashMap<>();
        project.getBatches().stream().filter(batch -> batch.getClosedAt() == null).map(Batch::getPots).flatMap(List::stream).distinct()
                .filter(pot -> pot.getState() == TrialState.PLANNED || pot.getState() == TrialState.MAKING).map(Trial::getSteps).flatMap(List::stream)
                .filter(step -> step.getState() == StepState.PLANNED || step.getState() == StepState.RUNNING).map(Step::getUses).flatMap(List::stream)
                .filter(use -> use.getLot() == null && use.getGrade() != null && use.getPlanned() != null)
                .forEach(use -> missing.merge(use.getGrade(), open(use), Double::sum));
        missing.values().removeIf(grams -> !(grams > 0));
        return missing;
    }
}
