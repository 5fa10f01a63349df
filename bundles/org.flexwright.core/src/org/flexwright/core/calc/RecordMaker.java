package org.flexwright.core.calc;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Makes input records from values by name. */
final class RecordMaker {

    private RecordMaker() {
    }

    /** Throws IllegalArgumentException, with the record's own sentence, when its constructor refuses the values. */
    static <R extends Record> R make(Class<R> type, Map<String, Object> values) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] args = new Object[components.length];
        for (int i = 0; i < args.length; i++) {
            args[i] = fit(components[i], values.get(components[i].getName()));
        }
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(Arrays.stream(components).map(RecordComponent::getType).toArray(Class[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(args);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(e.getCause().getMessage(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(type.getName() + " cannot be made.", e);
        }
    }

    /** An empty list stands for an optional list left empty; rows become records. */
    private static Object fit(RecordComponent component, Object value) {
        if (component.getType() != List.class) {
            return value;
        }
        List<?> list = value == null ? List.of() : (List<?>) value;
        Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        if (!element.isRecord()) {
            return list;
        }
        List<Object> rows = new ArrayList<>();
        for (Object row : list) {
            rows.add(element.isInstance(row) ? row : make(element.asSubclass(Record.class), cells(row)));
        }
        return rows;
    }

    @SuppressWarnings("unchecked") // tables are lists of maps by contract of FieldType.TABLE
    private static Map<String, Object> cells(Object row) {
        return (Map<String, Object>) row;
    }
}
