package org.flexwright.core.field;

import java.util.List;
import java.util.Objects;

import org.flexwright.quantity.QuantityKind;

/**
 * One field of a form, a command or a table, whatever it was made from. Forms, the command line, cards and reports all read it.
 *
 * @param name     name of the record component or feature
 * @param label    words beside it
 * @param type     what kind of value it takes
 * @param kind     kind of quantity, for {@link FieldType#QUANTITY}; otherwise {@code NUMBER}
 * @param unit     symbol of the unit its number is in; empty for plain numbers and everything else
 * @param min      smallest allowed number, in the unit; minus infinity when there is none
 * @param max      largest allowed number, in the unit; infinity when there is none
 * @param minOpen  true when {@code min} itself is not allowed
 * @param def      starting value as a person would type it, or empty
 * @param optional true when it may be left empty; empty is not zero
 * @param help     one line of help, or empty
 * @param choices  what may be chosen, for {@link FieldType#CHOICE}
 * @param columns  columns of a {@link FieldType#TABLE}; the one element of a {@link FieldType#LIST}
 * @param role     planned or actual, for features of a step
 * @param of       name of the planned feature an actual one belongs to, or empty
 * @param limit    own limit for the difference of actual and planned, per cent of planned or an amount with unit, or empty
 */
public record FieldDescriptor(String name, String label, FieldType type, QuantityKind kind, String unit, double min, double max,
        boolean minOpen, String def, boolean optional, String help, List<Choice> choices, List<FieldDescriptor> columns, FieldRole role,
        String of, String limit) {

    public FieldDescriptor {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(def, "def");
        Objects.requireNonNull(help, "help");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(limit, "limit");
        choices = List.copyOf(choices);
        columns = List.copyOf(columns);
        if (Double.isNaN(min) || Double.isNaN(max) || min > max) {
            throw new IllegalArgumentException("Field " + name + " has the bounds " + min + " and " + max + ".");
        }
    }

    /** A plain optional field of that type without unit, bounds or help. */
    public static FieldDescriptor of(String name, String label, FieldType type) {
        return new FieldDescriptor(name, label, type, QuantityKind.NUMBER, "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false, "",
                true, "", List.of(), List.of(), FieldRole.NONE, "", "");
    }

    /** An optional number in that unit. */
    public static FieldDescriptor quantity(String name, String label, QuantityKind kind, String unit) {
        return of(name, label, FieldType.QUANTITY).withUnit(kind, unit);
    }

    /** A choice. */
    public static FieldDescriptor choice(String name, String label, List<Choice> choices) {
        FieldDescriptor d = of(name, label, FieldType.CHOICE);
        return new FieldDescriptor(name, label, d.type, d.kind, d.unit, d.min, d.max, false, "", true, "", choices, List.of(), d.role, "", "");
    }

    /** A list of such elements. */
    public static FieldDescriptor list(String name, String label, FieldDescriptor element) {
        return columns(name, label, FieldType.LIST, List.of(element));
    }

    /** A table with such columns. */
    public static FieldDescriptor table(String name, String label, List<FieldDescriptor> columns) {
        return columns(name, label, FieldType.TABLE, columns);
    }

    private static FieldDescriptor columns(String name, String label, FieldType type, List<FieldDescriptor> columns) {
        FieldDescriptor d = of(name, label, type);
        return new FieldDescriptor(name, label, type, d.kind, d.unit, d.min, d.max, false, "", true, "", List.of(), columns, d.role, "", "");
    }

    /** The same field in another kind and unit; bounds are taken as numbers in the new unit. */
    public FieldDescriptor withUnit(QuantityKind newKind, String newUnit) {
        return new FieldDescriptor(name, label, type, newKind, newUnit, min, max, minOpen, def, optional, help, choices, columns, role, of, limit);
    }

    /** The same field with bounds in its unit; {@code open}: the lower one itself is not allowed. */
    public FieldDescriptor withBounds(double newMin, double newMax, boolean open) {
        return new FieldDescriptor(name, label, type, kind, unit, newMin, newMax, open, def, optional, help, choices, columns, role, of, limit);
    }

    /** The same field with a starting value as a person would type it. */
    public FieldDescriptor withDefault(String newDef) {
        return new FieldDescriptor(name, label, type, kind, unit, min, max, minOpen, newDef, optional, help, choices, columns, role, of, limit);
    }

    /** The same field that may or may not be left empty. */
    public FieldDescriptor withOptional(boolean mayBeEmpty) {
        return new FieldDescriptor(name, label, type, kind, unit, min, max, minOpen, def, mayBeEmpty, help, choices, columns, role, of, limit);
    }

    /** The same field with a line of help. */
    public FieldDescriptor withHelp(String newHelp) {
        return new FieldDescriptor(name, label, type, kind, unit, min, max, minOpen, def, optional, newHelp, choices, columns, role, of, limit);
    }

    /** The same field with a role in a step. */
    public FieldDescriptor withRole(FieldRole newRole, String plannedFeature, String ownLimit) {
        return new FieldDescriptor(name, label, type, kind, unit, min, max, minOpen, def, optional, help, choices, columns, newRole,
                plannedFeature, ownLimit);
    }

    /** Reads what a person typed; point and comma are both decimal signs, other units of the kind are converted. Never throws. */
    public FieldInput read(String typed) {
        return FieldReader.read(this, typed == null ? "" : typed.strip());
    }

    /** A value as text that {@link #read} understands again; empty for null. */
    public String print(Object value) {
        return FieldPrinter.print(this, value);
    }

    /** What is allowed, in words: "above 0 g and at most 500 g"; empty when anything is. */
    public String allowed() {
        return FieldReader.allowed(this);
    }
}
