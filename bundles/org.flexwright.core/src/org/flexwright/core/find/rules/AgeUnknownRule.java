package org.flexwright.core.find.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Parts whose age at test is unknown though what was read changes with age. */
@Component(service = FindingRule.class)
public final class AgeUnknownRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.age-unknown";
    private static final Source SOURCE = Source.commonPractice("soft parts go on changing for days after they were made");
    /** Kinds of quantity for which age is no matter worth a note. */
    private static final Set<QuantityKind> AGELESS = Set.of(QuantityKind.MASS, QuantityKind.LENGTH, QuantityKind.VOLUME, QuantityKind.DENSITY, QuantityKind.COUNT);

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("age.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        List<String> parts = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        for (Part part : context.trial().getParts()) {
            if (part.getMeasurements().stream().anyMatch(m -> ages(context, m) && !m.getReadings().isEmpty() && Measurements.ageHours(m) == null)) {
                parts.add(Say.name(part));
                ids.add("part=" + part.getId());
            }
        }
        if (!parts.isEmpty()) {
            out.accept(Say.finding(this, Severity.NOTE, context.trial(), "parts", parts.size() == 1 ? "age.one" : "age.some", ids, SOURCE, Say.name(context.trial()),
                    String.join(", ", parts)));
        }
    }

    private static boolean ages(RuleContext context, Measurement measurement) {
        return measurement.getKey() != null && measurement.getKey().getProperty() != null
                && context.properties().find(measurement.getKey().getProperty()).filter(p -> !p.yesNo() && !AGELESS.contains(p.kind())).isPresent();
    }
}
