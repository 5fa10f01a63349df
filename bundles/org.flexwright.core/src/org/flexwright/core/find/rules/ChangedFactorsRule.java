package org.flexwright.core.find.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.FactorTable;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** More than one planned factor changed against the trial this one is based on. */
@Component(service = FindingRule.class)
public final class ChangedFactorsRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.changed-factors";
    private static final Source SOURCE = Source.commonPractice("changing three things teaches nothing about any of them, unless the set was planned so");

    private final List<ProcessKind> routes;

    /** A rule that knows the factors of these routes. */
    @Activate
    public ChangedFactorsRule(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<ProcessKind> routes) {
        this.routes = List.copyOf(routes);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("changed.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        Trial before = trial.getBasedOn();
        if (before == null || before == trial || !Objects.equals(before.getRoute(), trial.getRoute())) {
            return;
        }
        Optional<ProcessKind> route = routes.stream().filter(r -> r.id().equals(trial.getRoute())).findFirst();
        List<Comparison.FactorValue> changed = byLabel(FactorTable.of(route, List.of(before, trial)).differing(trial));
        if (changed.size() > 1) {
            List<String> restsOn = new ArrayList<>(List.of("basedOn=" + before.getId()));
            changed.forEach(f -> restsOn.add(f.id() + "=" + f.value()));
            String names = String.join(", ", changed.stream().map(Comparison.FactorValue::label).toList());
            out.accept(Say.finding(this, Severity.NOTE, trial, "basedOn", "changed", restsOn, SOURCE, Say.name(trial), Say.name(before), changed.size(), names));
        }
    }

    /** How much of a material and which material are one change: one factor a label. */
    private static List<Comparison.FactorValue> byLabel(List<Comparison.FactorValue> factors) {
        Map<String, Comparison.FactorValue> first = new LinkedHashMap<>();
        factors.forEach(f -> first.putIfAbsent(f.label().toLowerCase(Locale.ROOT), f));
        return List.copyOf(first.values());
    }
}
