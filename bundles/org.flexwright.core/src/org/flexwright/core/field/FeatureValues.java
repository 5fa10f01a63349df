package org.flexwright.core.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.quantity.Unit;

/** Values of features as fields hold them, and back. */
public final class FeatureValues {

    private FeatureValues() {
    }

    /** The feature's value as its field holds it: rows of a table as maps, an empty list or text as nothing. */
    public static Object get(EObject owner, EStructuralFeature feature) {
        Object value = owner.eGet(feature);
        if (value instanceof List<?> list) {
            if (list.isEmpty()) {
                return null;
            }
            return feature instanceof EReference reference ? rows(reference.getEReferenceType(), list) : List.copyOf(list);
        }
        if (value instanceof Long l) {
            return Math.toIntExact(l);
        }
        if (value instanceof Float f) {
            return f.doubleValue();
        }
        return "".equals(value) ? null : value;
    }

    private static List<Map<String, Object>> rows(EClass type, List<?> list) {
        List<FieldDescriptor> columns = FieldDescriptors.ofClass(type);
        List<Map<String, Object>> rows = new ArrayList<>();
        list.forEach(row -> rows.add(Rows.cells(columns, row)));
        return rows;
    }

    /** A field's value as the feature takes it: rows become new objects. */
    static Object toFeature(EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            List<?> list = value == null ? List.of() : (List<?>) value;
            return feature instanceof EReference reference ? list.stream().map(row -> object(reference.getEReferenceType(), (Map<?, ?>) row)).toList() : list;
        }
        Class<?> type = feature.getEType().getInstanceClass();
        if (value == null) {
            return type != null && type.isPrimitive() ? feature.getDefaultValue() : null;
        }
        if (type == long.class || type == Long.class) {
            return ((Number) value).longValue();
        }
        return type == float.class || type == Float.class ? (Object) ((Number) value).floatValue() : value;
    }

    private static EObject object(EClass type, Map<?, ?> cells) {
        EObject row = EcoreUtil.create(type);
        cells.forEach((name, value) -> {
            EStructuralFeature feature = type.getEStructuralFeature((String) name);
            if (value != null) {
                row.eSet(feature, toFeature(feature, value));
            }
        });
        return row;
    }

    /** A value of a feature's own field in the unit of another field of the same kind. */
    static Object toField(FieldDescriptor own, FieldDescriptor field, Object value) {
        return converted(own, field, value);
    }

    /** The way back. */
    static Object toOwn(FieldDescriptor own, FieldDescriptor field, Object value) {
        return converted(field, own, value);
    }

    private static Object converted(FieldDescriptor from, FieldDescriptor to, Object value) {
        if (!(value instanceof Double number) || from.type() != FieldType.QUANTITY || to.type() != FieldType.QUANTITY || from.kind() != to.kind()
                || from.unit().equals(to.unit())) {
            return value;
        }
        Unit source = FieldUnits.unit(from.kind(), from.unit());
        Unit sink = FieldUnits.unit(to.kind(), to.unit());
        return sink.fromCanonical(source.toCanonical(number));
    }
}
