package org.flexwright.core.exchange;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;

/**
 * One table of an export: a row an object of one class.
 *
 * @param name    its name; the file's name adds .csv
 * @param type    the class, null for what no plugin here can read
 * @param columns its columns
 */
record Table(String name, EClass type, List<Column> columns) {
    Table {
        columns = List.copyOf(columns);
    }

    String file() {
        return name + ".csv";
    }

    /** Namespace and name of the class. */
    String className() {
        return type == null ? "" : type.getEPackage().getNsURI() + "#" + type.getName();
    }

    Optional<Column> column(Column.Kind kind) {
        return columns.stream().filter(c -> c.kind() == kind).findFirst();
    }

    /** True when its rows are told apart by an id, false when by owner and place. */
    boolean identified() {
        return column(Column.Kind.ID).isPresent();
    }
}
