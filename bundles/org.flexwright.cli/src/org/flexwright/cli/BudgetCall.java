package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.PartBudget;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.view.Bars;
import org.flexwright.core.view.Budgets;
import org.flexwright.model.Target;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What makes the value of each part unsure. */
@Command(name = "budget", description = "What makes the value of each part unsure: readings, step, gauge, control piece, a bar a contribution.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright trial budget T05 --property shore-a" })
final class BudgetCall extends TrialNoun.OneTrial {
    private static final int BAR = 24;

    @Option(names = "--property", description = "Id of the property or its title; all targets when left out.")
    String property;
    @Option(names = "--part", description = "Code of the part; all when left out.")
    String part;

    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Trial trial = trial(session);
        if (part != null) {
            Find.part(trial, part);
        }
        PropertyDef only = property == null ? null : Find.property(services.registries().properties(), property);
        Reply reply = new Reply(id());
        boolean some = false;
        for (Target target : TargetNoun.sheet(session.project()).getTargets()) {
            PropertyDef def = services.registries().findProperty(target.getKey().getProperty()).orElse(null);
            if (def == null || only != null && !def.id().equals(only.id())) {
                continue;
            }
            List<PartValue> values = PartValues.of(trial, target.getKey(), def).stream().filter(v -> part == null || part.strip().equalsIgnoreCase(v.part())).toList();
            for (PartValue value : values) {
                some |= PartBudget.of(value, def).map(budget -> shown(reply, trial, def, target.getKey().getSpot(), budget)).isPresent();
            }
        }
        return some ? reply : reply.line("No part of " + trial.getCode() + " has a number for " + (only == null ? "a target." : only.title() + " that is a target."));
    }

    private static Reply shown(Reply reply, Trial trial, PropertyDef def, String spot, PartBudget budget) {
        Bars bars = Budgets.bars(budget);
        reply.line(def.title() + Words.tail(", ", spot) + ". " + bars.title() + ":");
        bars.text(BAR).forEach(line -> reply.line("  " + line));
        Budgets.sentences(budget).forEach(sentence -> reply.line("  " + sentence));
        String unit = CompareCall.unit(def);
        double half = budget.expanded().orElse(0.0);
        reply.result(trial.getCode() + "." + budget.part().part() + "." + def.id() + Words.tail(".", spot), new Value(budget.part().value() - half, budget.part().value(), budget.part().value() + half, unit, half == 0
                ? "no band" : PartBudget.SOURCE.display(), null));
        budget.contributions().forEach(c -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("part", budget.part().part());
            row.put("property", def.id());
            row.put("spot", spot);
            row.put("contribution", Words.of(c.kind()));
            row.put("standard", c.standard());
            row.put("df", Double.isInfinite(c.df()) ? null : c.df());
            row.put("unit", unit);
            row.put("how", c.how().text());
            row.put("source", c.source().display());
            reply.item(row);
        });
        return reply;
    }
}
