package org.flexwright.core.find.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.trial.Stock;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.osgi.service.component.annotations.Component;

/** More is still to be weighed than a lot, or a premix, has left. Says nothing where nobody said how much there was. */
@Component(service = FindingRule.class)
public final class ShortStockRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.short-stock";
    private static final Source SOURCE = Source.derived("amount bought or made, less everything weighed out of it");
    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("stock.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Map<Entry, Double> wanted = new LinkedHashMap<>();
        Map<Entry, MaterialUse> first = new LinkedHashMap<>();
        for (Step step : context.trial().getSteps()) {
            boolean open = step.getState() == StepState.PLANNED || step.getState() == StepState.RUNNING;
            for (MaterialUse use : open ? step.getUses() : List.<MaterialUse>of()) {
                Entry from = use.getPremix() != null ? use.getPremix() : use.getLot();
                if (from != null && use.getPlanned() != null) {
                    wanted.merge(from, toCome(use), Double::sum);
                    first.putIfAbsent(from, use);
                }
            }
        }
        wanted.forEach((from, grams) -> {
            OptionalDouble left = left(from, context.project());
            if (left.isPresent() && grams > left.getAsDouble() + Mixtures.NOTHING) {
                MaterialUse use = first.get(from);
                String has = Figures.of(Math.max(0, left.getAsDouble()), "g");
                out.accept(Say.finding(this, Severity.CAUTION, use, "planned", "stock", List.of("of=" + from.getId(), "left=" + has, "wanted=" + Figures.of(grams, "g")),
                        SOURCE, Say.name(context.trial()), Figures.of(grams, "g"), name(use), has));
            }
        });
    }

    private static double toCome(MaterialUse use) {
        Double weighed = Mixtures.grams(use);
        return Math.max(0, use.getPlanned() - (weighed == null ? 0 : weighed));
    }

    private static OptionalDouble left(Entry from, Project project) {
        return from instanceof Lot lot ? Stock.onHand(lot, project) : Stock.onHand((Premix) from, project);
    }

    private static String name(MaterialUse use) {
        return use.getPremix() != null ? Say.words("premix", use.getPremix().getCode()) : Say.lot(use, use.getLot());
    }
}
