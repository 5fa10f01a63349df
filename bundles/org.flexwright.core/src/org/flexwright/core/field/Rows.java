package org.flexwright.core.field;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;

/** A row of a table as cells by column name, whatever the row is made of. */
public final class Rows {

    private Rows() {
    }

    /** Cells by column name of a map, a record or a model object; a column the row does not have is empty. */
    public static Map<String, Object> cells(List<FieldDescriptor> columns, Object row) {
        Map<String, Object> cells = new LinkedHashMap<>();
        for (FieldDescriptor column : columns) {
            cells.put(column.name(), cell(row, column.name()));
        }
        return cells;
    }

    private static Object cell(Object row, String name) {
        if (row instanceof Map<?, ?> map) {
            return map.get(name);
        }
        if (row instanceof EObject object) {
            var feature = object.eClass().getEStructuralFeature(name);
            return feature == null ? null : object.eGet(feature);
        }
        return row instanceof Record r ? component(r, name) : null;
    }

    /** Value of a component of a record. Throws IllegalArgumentException when there is none of that name. */
    public static Object component(Record row, String name) {
        for (RecordComponent component : row.getClass().getRecordComponents()) {
            if (component.getName().equals(name)) {
                try {
                    var accessor = component.getAccessor();
                    accessor.setAccessible(true);
                    return accessor.invoke(row);
                } catch (ReflectiveOperationException e) {
                    throw new IllegalArgumentException("Component " + name + " of " + row.getClass().getName() + " cannot be read.", e);
                }
            }
        }
        throw new IllegalArgumentException(row.getClass().getName() + " has no component " + name + ".");
    }
}
