package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Estimate;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;

/** Key figures of a screen. */
final class Figuring {
    private static final String GRAM = "g";
    private Figuring() {
    }

    /** Still to add, target, in the cup. */
    static List<BenchFigure> use(Step step, int use, Targets targets) {
        List<BenchFigure> figures = new ArrayList<>();
        Double target = targets.grams(use);
        double weighed = targets.weighed(use);
        boolean any = !step.getUses().get(use).getWeighings().isEmpty();
        if (target != null) {
            double missing = target - weighed;
            boolean much = any && missing < -Places.SHORT * target;
            String origin = targets.target(use).map(a -> a.value().source().display())
                    .orElseGet(() -> Provenances.word(Provenances.origin(step.getUses().get(use), ModelPackage.Literals.MATERIAL_USE__PLANNED)));
            figures.add(much ? figure("tooMuch", Say.FIGURE_TOO_MUCH.text(), -missing, origin, Severity.CAUTION, true)
                    : figure("toAdd", Say.FIGURE_TO_ADD.text(), Math.max(0, missing), origin, null, true));
            figures.add(figure("target", Say.FIGURE_TARGET.text(), target, origin, null, false));
        }
        if (any) {
            figures.add(figure("weighed", Say.FIGURE_WEIGHED.text(), weighed, Provenances.word(Origin.MEASURED), null, target == null));
        }
        return figures;
    }

    private static BenchFigure figure(String name, String label, double grams, String origin, Severity severity, boolean main) {
        return new BenchFigure(name, label, FieldText.digits(shown(grams, GRAM)), GRAM, "", origin, severity, main);
    }

    /** Grams as a bench balance shows them, per cent to a tenth; more would be noise at two metres. */
    static double shown(double value, String unit) {
        double step = switch (unit) {
            case GRAM -> value < 1 ? 1000 : 100;
            case "%" -> 10;
            default -> 1e6;
        };
        return Math.rint(value * step) / step;
    }

    /** What the step says of itself, its plan beside what is entered, and how long it runs. */
    static List<BenchFigure> work(Step step, Targets targets, boolean known, Instant now) {
        List<BenchFigure> figures = new ArrayList<>();
        if (step.getState() == StepState.RUNNING && step.getStartedAt() != null) {
            double minutes = Math.max(0, BenchClock.minutes(Duration.between(step.getStartedAt(), now)));
            figures.add(new BenchFigure("running", Say.FIGURE_RUNNING.text(), TimeLine.clock(minutes), "", "", Provenances.word(Origin.MEASURED), null, true));
        }
        if (step.getPlannedDuration() != null) {
            figures.add(new BenchFigure("plannedDuration", Say.FIGURE_PLANNED.text(), TimeLine.clock(step.getPlannedDuration()), "", "",
                    Provenances.word(Provenances.origin(step, ModelPackage.Literals.STEP__PLANNED_DURATION)), null, false));
        }
        for (StepAdvice advice : targets.rest()) {
            boolean nothing = advice.name().startsWith("add") && advice.value().likely() < Mixtures.NOTHING;
            if (!nothing) {
                figures.add(of(advice));
            }
        }
        if (known && step.getDetails() != null) {
            plan(step.getDetails(), figures);
        }
        figures.sort(Comparator.comparing((BenchFigure f) -> !f.main()));
        return figures;
    }

    private static BenchFigure of(StepAdvice advice) {
        Estimate value = advice.value();
        Severity severity = advice.remark() == null ? null : advice.remark().severity();
        boolean band = value.high() > value.low();
        String number = band ? FieldText.rounded(value.likely(), (value.high() - value.low()) / 2) : FieldText.digits(shown(value.likely(), advice.unit()));
        return new BenchFigure(advice.name(), advice.label(), number, advice.unit(), band ? FieldText.range(value.low(), value.high()) : "",
                value.source().display(), severity, advice.name().startsWith("add") || severity != null);
    }

    private static void plan(EObject details, List<BenchFigure> figures) {
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(details.eClass());
        for (FieldDescriptor field : fields) {
            FieldDescriptor planned = field.role() != FieldRole.ACTUAL ? null
                    : fields.stream().filter(f -> f.name().equals(field.of())).findFirst().orElse(null);
            if (planned != null) {
                figure(details, planned, Say.FIGURE_OF_PLAN.text(planned.label()), figures);
            }
            if (field.role() == FieldRole.ACTUAL) {
                figure(details, field, field.label(), figures);
            }
        }
    }

    private static void figure(EObject details, FieldDescriptor field, String label, List<BenchFigure> figures) {
        EStructuralFeature feature = details.eClass().getEStructuralFeature(field.name());
        Object value = entered(details, field, feature);
        if (value == null || "".equals(value) || field.type() == FieldType.TABLE || field.type() == FieldType.LIST) {
            return;
        }
        boolean number = field.type() == FieldType.QUANTITY;
        figures.add(new BenchFigure(field.name(), label, number ? FieldText.digits((Double) value) : field.print(value),
                number ? FieldUnits.unit(field.kind(), field.unit()).display() : "", "", Provenances.word(Provenances.origin(details, feature)), null, false));
    }

    /** A choice cannot be empty in the model: while nobody chose it, it is not entered. */
    static Object entered(EObject details, FieldDescriptor field, EStructuralFeature feature) {
        boolean notEntered = field.type() == FieldType.CHOICE && field.role() != FieldRole.PLANNED && !details.eIsSet(feature);
        return notEntered ? null : details.eGet(feature);
    }
}
