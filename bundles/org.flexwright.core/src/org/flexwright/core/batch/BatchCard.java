package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.process.StepKinds;
import org.flexwright.model.Batch;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * The card of one pot, to lie beside the balance.
 *
 * @param title what it is: batch, pot, parts
 * @param facts cup, mould, recipe, in a few words each
 * @param steps one a step
 */
public record BatchCard(String title, List<String> facts, List<StepLines> steps) {

    /**
     * A step.
     *
     * @param number from 1
     * @param title  its title
     * @param lines  what is planned, and what happened so far
     */
    public record StepLines(int number, String title, List<CardLine> lines) {
        public StepLines {
            lines = List.copyOf(lines);
        }
    }

    public BatchCard {
        facts = List.copyOf(facts);
        steps = List.copyOf(steps);
    }

    /** One a pot, in their order. */
    public static List<BatchCard> of(Batch batch, StepKinds kinds) {
        return batch.getPots().stream().map(pot -> of(batch, pot, kinds)).toList();
    }

    private static BatchCard of(Batch batch, Trial pot, StepKinds kinds) {
        int number = batch.getPots().indexOf(pot) + 1;
        List<String> facts = new ArrayList<>();
        if (pot.getCupLabel() != null) {
            facts.add(say("cup", pot.getCupLabel()));
        }
        if (pot.getMould() != null) {
            facts.add(say("mould", pot.getMould().getCode(), pot.getMould().getName() == null ? "" : pot.getMould().getName()).strip());
        }
        if (batch.getRecipe() != null) {
            facts.add(say("recipe", batch.getRecipe().getCode(), batch.getRecipe().getVersion()));
            if (batch.getRecipe().getLimits() != null && !batch.getRecipe().getLimits().isBlank()) {
                facts.add(say("limits", batch.getRecipe().getLimits()));
            }
        }
        if (number == 1 || number == batch.getPots().size()) {
            facts.add(say(number == 1 ? batch.getPots().size() == 1 ? "bothChecked" : "firstChecked" : "lastChecked"));
        }
        List<StepLines> steps = new ArrayList<>();
        for (Step step : pot.getSteps()) {
            steps.add(new StepLines(steps.size() + 1, step.getTitle() == null ? step.getKind() : step.getTitle(), StepCard.lines(step, kinds.findStepKind(step.getKind())
                    .orElse(null)).stream().filter(line -> !line.planned().isEmpty() || !line.actual().isEmpty()).toList()));
        }
        return new BatchCard(say("title", batch.getCode(), number, batch.getPots().size(), pot.getPartsWanted() == null ? "?" : pot.getPartsWanted()) + ", " + pot.getCode(), facts,
                steps);
    }

    /** The card as lines of plain text. */
    public List<String> text() {
        List<String> lines = new ArrayList<>();
        lines.add(title);
        facts.forEach(fact -> lines.add("  " + fact));
        for (StepLines step : steps) {
            lines.add("  " + step.number() + "  " + step.title());
            step.lines().forEach(line -> lines.add("       " + line.label() + ": " + (line.planned().isEmpty() ? line.actual() : line.planned()) + (line.planned().isEmpty()
                    || line.actual().isEmpty() ? "" : " \u2192 " + line.actual())));
        }
        return lines;
    }

    private static String say(String key, Object... args) {
        return Message.of(BatchCard.class, "card." + key, args).text();
    }
}
