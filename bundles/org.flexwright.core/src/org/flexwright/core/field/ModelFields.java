package org.flexwright.core.field;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.model.Instrument;
import org.flexwright.model.LawFit;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/** Fields of model objects that hang on something else: the unit of a target on its property, a gauge's on its unit, the words of a fit on the laws there are. */
public final class ModelFields {
    private static final Set<String> GAUGE_NUMBERS = Set.of("resolution", "accuracy", "spread");
    private static final Set<String> TARGET_NUMBERS = Set.of("low", "high", "nominal", "tolerance", "rejectBelow", "rejectAbove");

    private ModelFields() {
    }

    /** The fields of an object with their units as they are now; of a target only those its rule asks for. */
    public static List<FieldDescriptor> of(EObject object, PropertyCatalogue properties) {
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(object.eClass());
        if (object instanceof Target target) {
            return target(target, fields, properties);
        }
        if (object instanceof MaterialValue value) {
            Optional<PropertyDef> property = value.getProperty() == null ? Optional.empty() : properties.find(value.getProperty());
            return property.isEmpty() ? fields : fields.stream().map(f -> valueField(f, value, property.get().kind())).toList();
        }
        if (object instanceof Instrument gauge) {
            return fields.stream().map(f -> gaugeField(f, gauge)).toList();
        }
        if (object instanceof LawFit) {
            return fields.stream().map(ModelFields::lawField).toList();
        }
        return fields;
    }

    /** A fit keeps its law and weights as words of which only some mean anything. */
    private static FieldDescriptor lawField(FieldDescriptor field) {
        return switch (field.name()) {
            case "law" -> FieldDescriptor.choice(field.name(), field.label(), Stream.of(RubberForm.values()).map(one -> new Choice(one.id(), one.title(), one.id())).toList())
                    .withOptional(false).withHelp(field.help());
            case "weighting" -> FieldDescriptor.choice(field.name(), field.label(), Stream.of(Weighting.values()).map(one -> new Choice(one.id(), one.title(), one.id())).toList())
                    .withHelp(field.help());
            default -> field;
        };
    }

    private static List<FieldDescriptor> target(Target target, List<FieldDescriptor> fields, PropertyCatalogue properties) {
        String id = target.getKey() == null ? null : target.getKey().getProperty();
        Optional<PropertyDef> property = id == null ? Optional.empty() : properties.find(id);
        return fields.stream().filter(f -> asked(target, f.name(), property)).map(f -> property.isPresent() && TARGET_NUMBERS.contains(f.name())
                ? inKind(f, f.name().equals("tolerance") ? differenceOf(property.get().kind()) : property.get().kind(), "")
                : f).toList();
    }

    private static boolean asked(Target target, String name, Optional<PropertyDef> property) {
        return switch (name) {
            case "low" -> switch (target.getRule()) {
                case AT_LEAST, BETWEEN -> true;
                default -> false;
            };
            case "high" -> switch (target.getRule()) {
                case AT_MOST, BETWEEN -> true;
                default -> false;
            };
            case "nominal", "tolerance" -> target.getRule() == TargetRule.NOMINAL;
            case "allowedShare" -> switch (target.getRule()) {
                case NEVER, ALWAYS -> true;
                default -> false;
            };
            case "rejectBelow", "rejectAbove" -> property.map(p -> !p.yesNo()).orElse(true);
            default -> true;
        };
    }

    private static FieldDescriptor valueField(FieldDescriptor field, MaterialValue value, QuantityKind kind) {
        String unit = value.getUnit() == null ? "" : value.getUnit();
        return switch (field.name()) {
            case "sheetValue", "ownValue" -> Units.find(kind, unit).isPresent() || unit.isEmpty() ? inKind(field, kind, unit) : field;
            case "ownUncertainty" -> kind == QuantityKind.TEMPERATURE ? inKind(field, differenceOf(kind), "delta " + unit) : inKind(field, kind, unit);
            default -> field;
        };
    }

    /** A gauge's unit tells its kind when only one kind has it; else its numbers stay plain. */
    private static FieldDescriptor gaugeField(FieldDescriptor field, Instrument gauge) {
        if (!GAUGE_NUMBERS.contains(field.name()) || gauge.getUnit() == null || gauge.getUnit().isBlank()) {
            return field;
        }
        List<QuantityKind> kinds = Units.kindsWith(gauge.getUnit());
        return kinds.size() == 1 ? inKind(field, kinds.get(0), gauge.getUnit()) : field;
    }

    private static FieldDescriptor inKind(FieldDescriptor field, QuantityKind kind, String unit) {
        Unit known = unit.isEmpty() ? kind.unit() : Units.find(kind, unit).orElse(kind.unit());
        return field.withUnit(kind, known.symbol());
    }

    private static QuantityKind differenceOf(QuantityKind kind) {
        return kind == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
    }
}
