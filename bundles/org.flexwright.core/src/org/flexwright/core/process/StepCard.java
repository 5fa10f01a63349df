package org.flexwright.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.field.Provenances;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Step;
import org.flexwright.quantity.QuantityKind;

/** A step as planned and actual lines, for screen, bench card, report and command line: made from descriptions alone. */
public final class StepCard {
    private static final double SECONDS_A_MINUTE = 60;

    private StepCard() {
    }

    /** The lines: materials, ratio, duration, then the details; {@code kind} may be null when its plugin is absent. */
    public static List<CardLine> lines(Step step, StepKind kind) {
        List<CardLine> lines = new ArrayList<>();
        uses(step, lines);
        ratio(step, lines);
        duration(step, lines);
        EObject details = step.getDetails();
        if (details != null && kind != null && kind.details() != null && kind.details().isInstance(details)) {
            details(details, lines);
        }
        return List.copyOf(lines);
    }

    private static void uses(Step step, List<CardLine> lines) {
        FieldDescriptor grams = FieldDescriptors.of(ModelPackage.Literals.MATERIAL_USE__PLANNED);
        int number = 0;
        for (MaterialUse use : step.getUses()) {
            Double actual = Mixtures.grams(use);
            String origin = actual == null ? "" : Provenances.word(Origin.MEASURED);
            lines.add(pair("uses/" + number++, nameOf(use), grams, use.getPlanned(), grams, actual, origin));
        }
    }

    private static String nameOf(MaterialUse use) {
        String role = RoleWords.of(use.getRole());
        if (use.getPremix() != null && use.getPremix().getCode() != null) {
            return words("material", role, use.getPremix().getCode());
        }
        if (use.getGrade() == null || use.getGrade().getName() == null) {
            return role;
        }
        String lot = use.getLot() == null || use.getLot().getCode() == null ? "" : use.getLot().getCode();
        return lot.isEmpty() ? words("material", role, use.getGrade().getName()) : words("materialLot", role, use.getGrade().getName(), lot);
    }

    private static void ratio(Step step, List<CardLine> lines) {
        Mixture mixture = Mixtures.of(step);
        if (mixture.plannedRatio() == null && mixture.actualRatio() == null) {
            return;
        }
        Double error = mixture.ratioError();
        lines.add(new CardLine("ratio", words("ratio"), ratioText(mixture.plannedRatio()), ratioText(mixture.actualRatio()), "",
                error == null ? "" : percent(error), "", false));
    }

    private static String ratioText(Double ratio) {
        return ratio == null ? "" : words("ratioText", FieldText.digits(ratio));
    }

    private static void duration(Step step, List<CardLine> lines) {
        FieldDescriptor minutes = FieldDescriptors.of(ModelPackage.Literals.STEP__PLANNED_DURATION);
        Double actual = step.getStartedAt() == null || step.getEndedAt() == null ? null
                : Duration.between(step.getStartedAt(), step.getEndedAt()).toMillis() / 1000.0 / SECONDS_A_MINUTE;
        if (step.getPlannedDuration() != null || actual != null) {
            lines.add(pair("duration", words("duration"), minutes, step.getPlannedDuration(), minutes, actual,
                    actual == null ? "" : Provenances.word(Origin.MEASURED)));
        }
    }

    private static void details(EObject details, List<CardLine> lines) {
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(details.eClass());
        for (FieldDescriptor field : fields) {
            Object value = value(details, field);
            if (field.role() == FieldRole.PLANNED) {
                FieldDescriptor of = fields.stream().filter(f -> f.role() == FieldRole.ACTUAL && f.of().equals(field.name())).findFirst().orElse(null);
                Object actual = of == null ? null : value(details, of);
                lines.add(pair(field.name(), field.label(), field, value, of == null ? field : of, actual, actual == null ? "" : origin(details, of)));
            } else if (field.role() == FieldRole.NONE || fields.stream().noneMatch(f -> f.name().equals(field.of()))) {
                if (!isEmpty(value)) {
                    lines.add(new CardLine(field.name(), field.label(), "", FieldText.show(field, value), origin(details, field), "", "", false));
                }
            }
        }
    }

    /** A choice cannot be empty in the model: outside the plan its first word, while nobody chose it, is no entry. */
    private static Object value(EObject details, FieldDescriptor field) {
        EStructuralFeature feature = feature(details, field);
        boolean notEntered = field.type() == FieldType.CHOICE && field.role() != FieldRole.PLANNED && !details.eIsSet(feature);
        return notEntered ? null : details.eGet(feature);
    }

    private static EStructuralFeature feature(EObject details, FieldDescriptor field) {
        return details.eClass().getEStructuralFeature(field.name());
    }

    private static String origin(EObject details, FieldDescriptor field) {
        return Provenances.word(Provenances.origin(details, feature(details, field)));
    }

    private static boolean isEmpty(Object value) {
        return value == null || "".equals(value) || value instanceof List<?> list && list.isEmpty();
    }

    private static CardLine pair(String name, String label, FieldDescriptor plannedField, Object planned, FieldDescriptor actualField, Object actual,
            String origin) {
        String difference = "";
        boolean outside = false;
        OwnLimit limit = null;
        if (plannedField.type() == FieldType.QUANTITY || plannedField.type() == FieldType.INTEGER) {
            limit = OwnLimit.of(actualField.limit().isEmpty() ? plannedField : actualField);
            if (planned != null && actual != null) {
                double meant = ((Number) planned).doubleValue();
                double got = inUnitOf(plannedField, actualField, ((Number) actual).doubleValue());
                difference = difference(plannedField, meant, got);
                outside = limit != null && limit.exceeded(meant, got);
            }
        } else if (!isEmpty(planned) && !isEmpty(actual) && !planned.equals(actual)) {
            difference = words("other");
            outside = plannedField.type() == FieldType.CHOICE || plannedField.type() == FieldType.FLAG;
        }
        String limitText = limit == null ? "" : (actualField.limit().isEmpty() ? plannedField : actualField).limit();
        return new CardLine(name, label, FieldText.show(plannedField, planned), FieldText.show(actualField, actual), origin, difference, limitText, outside);
    }

    private static double inUnitOf(FieldDescriptor to, FieldDescriptor from, double value) {
        if (from.kind() != to.kind() || from.unit().equals(to.unit())) {
            return value;
        }
        return FieldUnits.unit(to.kind(), to.unit()).fromCanonical(FieldUnits.unit(from.kind(), from.unit()).toCanonical(value));
    }

    /** Per cent of what was meant; for temperatures and where nothing was meant, the amount itself. */
    private static String difference(FieldDescriptor field, double planned, double actual) {
        if (actual == planned) {
            return "";
        }
        if (field.kind() == QuantityKind.TEMPERATURE) {
            double factor = FieldUnits.unit(field.kind(), field.unit()).factor();
            return signed((actual - planned) * factor, QuantityKind.TEMPERATURE_DIFFERENCE.unit().display());
        }
        return planned == 0 || field.type() == FieldType.INTEGER ? signed(actual - planned, FieldUnits.unit(field.kind(), field.unit()).display())
                : percent(100 * (actual - planned) / Math.abs(planned));
    }

    private static String percent(double value) {
        return sign(value) + (Math.abs(value) < 9.95 ? FieldText.fixed(Math.abs(value), 1) : FieldText.fixed(Math.abs(value), 0)) + " %";
    }

    private static String signed(double value, String unit) {
        return (sign(value) + FieldText.digits(Math.abs(value)) + " " + unit).strip();
    }

    private static String sign(double value) {
        return value < 0 ? "\u2212" : "+";
    }

    private static String words(String key, Object... args) {
        return Message.of(StepCard.class, key, args).text();
    }
}
