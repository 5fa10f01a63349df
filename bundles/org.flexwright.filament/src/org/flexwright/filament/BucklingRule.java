package org.flexwright.filament;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.filament.data.Printing;
import org.flexwright.model.Provenance;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** A push that the free strand between drive wheel and guide does not carry. */
@Component(service = FindingRule.class)
public final class BucklingRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "filament.buckling";

    static final Source SOURCE = Source.derived("Euler's load of a straight strand, ends between pinned and fixed; push from the pressure "
            + "of a power-law melt in the nozzle land, or as measured");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Push against buckling of the free strand";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Steps.of(context.trial(), PrintStep.ID, Printing.class).forEach(print -> check(print.step(), print.details(), out));
    }

    private static void check(Step step, Printing d, Consumer<Finding> out) {
        OptionalDouble needed = PushNeeded.of(d);
        Estimate carried = carried(d).orElse(null);
        if (needed.isEmpty() || carried == null) {
            return;
        }
        if (needed.getAsDouble() > carried.high()) {
            out.accept(finding(step, d, Severity.STOP, "buckling.stop", needed.getAsDouble(), carried));
        } else if (needed.getAsDouble() > carried.low()) {
            out.accept(finding(step, d, Severity.CAUTION, "buckling.band", needed.getAsDouble(), carried));
        }
    }

    /** Push the free strand carries, N: from both ends free to turn to both held fast; empty while a value is missing. */
    static Optional<Estimate> carried(Printing d) {
        if (!positive(d.getStrandDiameter()) || !positive(d.getStrandModulus()) || !positive(d.getFreeLength())) {
            return Optional.empty();
        }
        Strand strand = new Strand(d.getStrandDiameter());
        double weakest = strand.bucklingForce(d.getStrandModulus(), d.getFreeLength(), Strand.BOTH_ENDS_PINNED);
        double between = strand.bucklingForce(d.getStrandModulus(), d.getFreeLength(), Strand.ONE_END_PINNED);
        double strongest = strand.bucklingForce(d.getStrandModulus(), d.getFreeLength(), Strand.BOTH_ENDS_FIXED);
        return Optional.of(new Estimate(weakest, between, strongest, SOURCE));
    }

    private static Finding finding(Step step, Printing d, Severity severity, String key, double needed, Estimate carried) {
        return new Finding(ID, severity, step.getId(), "freeLength",
                Message.of(BucklingRule.class, key, Rounded.text(needed, "N"), Rounded.text(d.getFreeLength(), "mm"),
                        Rounded.text(carried.low(), "N"), Rounded.text(carried.high(), "N"), Rounded.text(d.getStrandModulus(), "MPa"), origin(d)),
                List.of("push=" + needed, "strandDiameter=" + d.getStrandDiameter(), "strandModulus=" + d.getStrandModulus(),
                        "freeLength=" + d.getFreeLength()),
                SOURCE, Message.of(BucklingRule.class, "buckling.remedy"));
    }

    /** Where the modulus came from: measured, typed, from a sheet or a calculation, with what was noted of it. */
    private static String origin(Printing d) {
        EStructuralFeature feature = d.eClass().getEStructuralFeature("strandModulus");
        String source = Provenances.of(d, feature).map(Provenance::getSource).orElse(null);
        return Provenances.word(Provenances.origin(d, feature)) + (source == null || source.isBlank() ? "" : ", " + source);
    }

    private static boolean positive(Double value) {
        return value != null && value > 0;
    }
}
