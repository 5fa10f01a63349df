package org.flexwright.curing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Hardness of cured parts read less than 16 h after the end of the cure. */
@Component(service = FindingRule.class)
public final class ReadEarlyRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "curing.read-early";

    private static final Source STANDARD = Source.published("ISO 48-4:2018, clause 8: at least 16 h between vulcanisation and test");
    private static final double HOURS = 16;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Hardness read too soon after the cure";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        if (trial.getSteps().stream().noneMatch(s -> CureStep.ID.equals(s.getKind()))) {
            return;
        }
        for (Part part : trial.getParts()) {
            for (Measurement measurement : part.getMeasurements()) {
                definition(context, measurement).filter(ReadEarlyRule::isHardness).ifPresent(property -> Ages.sinceCure(trial, measurement)
                        .filter(age -> age < HOURS).ifPresent(age -> out.accept(finding(part, measurement, property, age))));
            }
        }
    }

    private static Optional<PropertyDef> definition(RuleContext context, Measurement measurement) {
        return measurement.getKey() == null || measurement.getKey().getProperty() == null ? Optional.empty()
                : context.properties().find(measurement.getKey().getProperty());
    }

    private static boolean isHardness(PropertyDef property) {
        return property.kind().shore();
    }

    private static Finding finding(Part part, Measurement measurement, PropertyDef property, double age) {
        String hours = Figures.of(age, "h", 3);
        return new Finding(ID, Severity.CAUTION, measurement.getId(), "at", Say.READ_EARLY.with(part.getCode(), property.title(), hours),
                List.of("age " + hours), STANDARD, Say.READ_EARLY_REMEDY.with(Figures.of(HOURS - age, "h", 3)));
    }
}
