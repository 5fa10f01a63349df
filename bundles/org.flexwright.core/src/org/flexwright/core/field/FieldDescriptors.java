package org.flexwright.core.field;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Estimate;
import org.flexwright.core.calc.Field;
import org.flexwright.model.ModelPackage;
import org.flexwright.quantity.QuantityKind;

/** Makes field descriptors from record components and from features of model classes. */
public final class FieldDescriptors {
    /** Source of the annotation on features: label, kind, unit, min, max, minOpen, def, optional, help, type, role, of, limit. */
    public static final String ANNOTATION = "urn:flexwright:field";

    private FieldDescriptors() {
    }

    /** Descriptors of all components, in order. Throws IllegalArgumentException when a component lacks {@link Field} or has a type it must not have. */
    public static List<FieldDescriptor> ofRecord(Class<? extends Record> type) {
        return Arrays.stream(type.getRecordComponents()).map(FieldDescriptors::ofComponent).toList();
    }

    private static FieldDescriptor ofComponent(RecordComponent component) {
        Field field = component.getAnnotation(Field.class);
        String where = component.getDeclaringRecord().getName() + "." + component.getName();
        if (field == null) {
            throw new IllegalArgumentException(where + " has no description.");
        }
        if (field.optional() && component.getType().isPrimitive()) {
            throw new IllegalArgumentException(where + " may be left empty but cannot hold nothing.");
        }
        String name = component.getName();
        String label = field.label().isEmpty() ? Words.ofName(name) : field.label();
        FieldDescriptor plain = ofType(name, label, component.getType(), component.getGenericType(), field, where);
        return plain.withBounds(field.min(), field.max(), field.minOpen()).withDefault(field.def()).withOptional(field.optional())
                .withHelp(field.help());
    }

    private static FieldDescriptor ofType(String name, String label, Class<?> type, Type generic, Field field, String where) {
        if (type == double.class || type == Double.class || type == Estimate.class) {
            QuantityKind kind = FieldUnits.kindOf(field.kind(), field.unit());
            return FieldDescriptor.quantity(name, label, kind, FieldUnits.checked(kind, field.unit(), where));
        }
        if (type == int.class || type == Integer.class) {
            return FieldDescriptor.of(name, label, FieldType.INTEGER);
        }
        if (type == boolean.class || type == Boolean.class) {
            return FieldDescriptor.of(name, label, FieldType.FLAG);
        }
        if (type == String.class) {
            return FieldDescriptor.of(name, label, FieldType.TEXT);
        }
        if (type.isEnum()) {
            return FieldDescriptor.choice(name, label, choices(type));
        }
        if (type == List.class && generic instanceof ParameterizedType p && p.getActualTypeArguments()[0] instanceof Class<?> element) {
            if (element.isRecord() && element != Estimate.class) {
                return FieldDescriptor.table(name, label, ofRecord(element.asSubclass(Record.class)));
            }
            return FieldDescriptor.list(name, label, ofType(name, label, element, element, field, where));
        }
        throw new IllegalArgumentException(where + " has the type " + generic + ", which no field can take.");
    }

    private static List<Choice> choices(Class<?> type) {
        return Arrays.stream(type.getEnumConstants()).map(c -> (Enum<?>) c)
                .map(c -> new Choice(c.name().toLowerCase(Locale.ROOT).replace('_', '-'), label(c), c)).toList();
    }

    /** The words a constant prints as when its author gave it some, else its name in words. */
    private static String label(Enum<?> constant) {
        return constant.toString().equals(constant.name()) ? Words.ofConstant(constant.name()) : constant.toString();
    }

    /** Descriptors of a class's attributes and contained tables, in order; of core's own classes only those meant for a form. */
    public static List<FieldDescriptor> ofClass(EClass type) {
        List<FieldDescriptor> fields = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!isField(feature)) {
                continue;
            }
            if (feature instanceof EAttribute attribute) {
                fields.add(of(attribute));
            } else if (feature instanceof EReference reference) {
                fields.add(tableOf(reference));
            }
        }
        return fields;
    }

    private static boolean isField(EStructuralFeature feature) {
        if (!feature.isChangeable() || feature.isDerived() || feature.isTransient()) {
            return false;
        }
        boolean ofCore = feature.getEContainingClass().getEPackage() == ModelPackage.eINSTANCE;
        boolean described = value(feature, "label", null) != null;
        if (feature instanceof EAttribute attribute) {
            return !attribute.isID() && (described || !ofCore);
        }
        EReference reference = (EReference) feature;
        return !ofCore && reference.isContainment() && reference.isMany() && !reference.getEReferenceType().isAbstract()
                && reference.getEReferenceType().getEPackage() != ModelPackage.eINSTANCE && !ofClass(reference.getEReferenceType()).isEmpty();
    }

    private static FieldDescriptor tableOf(EReference reference) {
        FieldDescriptor table = FieldDescriptor.table(reference.getName(), labelOf(reference), ofClass(reference.getEReferenceType()));
        return described(table, reference);
    }

    /** Descriptor of one attribute, from its type and annotation. Throws IllegalArgumentException for a type no field can take or an unknown kind or unit. */
    public static FieldDescriptor of(EAttribute attribute) {
        FieldDescriptor single = single(attribute);
        return described(attribute.isMany() ? FieldDescriptor.list(attribute.getName(), single.label(), single) : single, attribute);
    }

    private static FieldDescriptor single(EAttribute attribute) {
        String name = attribute.getName();
        String label = labelOf(attribute);
        if (attribute.getEAttributeType() instanceof EEnum type) {
            return FieldDescriptor.choice(name, label, choices(type));
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == double.class || type == Double.class || type == float.class || type == Float.class) {
            String where = attribute.getEContainingClass().getName() + "." + name;
            String unit = value(attribute, "unit", "");
            QuantityKind kind = FieldUnits.kindOf(kind(value(attribute, "kind", "NUMBER"), where), unit);
            return FieldDescriptor.quantity(name, label, kind, FieldUnits.checked(kind, unit, where));
        }
        if (type == int.class || type == Integer.class || type == long.class || type == Long.class) {
            return FieldDescriptor.of(name, label, FieldType.INTEGER);
        }
        if (type == boolean.class || type == Boolean.class) {
            return FieldDescriptor.of(name, label, FieldType.FLAG);
        }
        if (type == java.time.LocalDate.class) {
            return FieldDescriptor.of(name, label, FieldType.DATE);
        }
        if (type == java.time.Instant.class) {
            return FieldDescriptor.of(name, label, FieldType.INSTANT);
        }
        if (type == String.class) {
            return FieldDescriptor.of(name, label, "file".equals(value(attribute, "type", "")) ? FieldType.FILE : FieldType.TEXT);
        }
        throw new IllegalArgumentException(attribute.getEContainingClass().getName() + "." + name + " has a type no field can take.");
    }

    private static QuantityKind kind(String name, String where) {
        try {
            return QuantityKind.valueOf(name);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(where + " names the unknown kind of quantity " + name + "; there are "
                    + Arrays.stream(QuantityKind.values()).map(QuantityKind::name).collect(Collectors.joining(", ")) + ".", e);
        }
    }

    private static FieldDescriptor described(FieldDescriptor d, EStructuralFeature feature) {
        EClassifier type = feature.getEType();
        boolean mustHold = feature instanceof EAttribute && !feature.isMany() && type.getInstanceClass() != null && type.getInstanceClass().isPrimitive()
                && type.getInstanceClass() != boolean.class;
        String role = value(feature, "role", "none");
        FieldRole fieldRole = role.equals("planned") ? FieldRole.PLANNED : role.equals("actual") ? FieldRole.ACTUAL : FieldRole.NONE;
        return d.withBounds(number(feature, "min", Double.NEGATIVE_INFINITY), number(feature, "max", Double.POSITIVE_INFINITY),
                        Boolean.parseBoolean(value(feature, "minOpen", "false")))
                .withDefault(value(feature, "def", mustHold ? String.valueOf(feature.getDefaultValue()) : ""))
                .withOptional(!mustHold && Boolean.parseBoolean(value(feature, "optional", "true")))
                .withHelp(value(feature, "help", ""))
                .withRole(fieldRole, value(feature, "of", ""), value(feature, "limit", ""));
    }

    private static double number(EStructuralFeature feature, String key, double otherwise) {
        String text = value(feature, key, "");
        return text.isEmpty() ? otherwise : Double.parseDouble(text);
    }

    private static String labelOf(EStructuralFeature feature) {
        return value(feature, "label", Words.ofName(feature.getName()));
    }

    private static String value(EStructuralFeature feature, String key, String otherwise) {
        EAnnotation annotation = feature.getEAnnotation(ANNOTATION);
        String value = annotation == null ? null : annotation.getDetails().get(key);
        return value == null ? otherwise : value;
    }

    private static List<Choice> choices(EEnum type) {
        List<Choice> choices = new ArrayList<>();
        for (EEnumLiteral literal : type.getELiterals()) {
            EAnnotation annotation = literal.getEAnnotation(ANNOTATION);
            String label = annotation == null ? null : annotation.getDetails().get("label");
            Enumerator instance = literal.getInstance();
            choices.add(new Choice(literal.getLiteral().replace('_', '-'), label == null ? Words.ofConstant(literal.getLiteral()) : label, instance));
        }
        return choices;
    }
}
