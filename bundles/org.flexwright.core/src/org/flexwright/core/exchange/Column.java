package org.flexwright.core.exchange;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldType;

/**
 * One column of a {@link Table}.
 *
 * @param kind    what stands in it
 * @param name    its name; the header adds the unit
 * @param inside  for what a contained single object holds (a measurement's key): the feature that contains it; else null
 * @param feature the feature, null for owner, in, place, class and content
 * @param field   label, kind, unit, bounds and help; null where the model has no such
 */
record Column(Kind kind, String name, EReference inside, EStructuralFeature feature, FieldDescriptor field) {

    /** What stands in a column. */
    enum Kind {
        /** The row's own id. */
        ID,
        /** Id or address of what contains the row's object. */
        OWNER,
        /** Feature of the owner that contains it. */
        IN,
        /** Its place there, from 1; empty when the feature has room for one only. */
        PLACE,
        /** Namespace and name of a class that is not here. */
        CLASS,
        /** What an absent plugin wrote, as XML. */
        CONTENT,
        /** A value or a list of values. */
        VALUE,
        /** Ids of other objects. */
        REFERENCE
    }

    static Column plain(Kind kind, String name) {
        return new Column(kind, name, null, null, null);
    }

    static Column of(String prefix, EReference inside, EStructuralFeature feature) {
        String name = prefix + (inside == null ? "" : inside.getName() + ".") + feature.getName();
        if (!(feature instanceof EAttribute attribute)) {
            return new Column(Kind.REFERENCE, name, inside, feature, null);
        }
        FieldDescriptor field;
        try {
            field = FieldDescriptors.of(attribute);
        } catch (IllegalArgumentException noField) {
            // a type no form can take still has its text
            field = null;
        }
        return new Column(attribute.isID() ? Kind.ID : Kind.VALUE, name, inside, feature, field);
    }

    EAttribute attribute() {
        return (EAttribute) feature;
    }

    boolean many() {
        return feature.isMany();
    }

    /** Symbol of the unit, empty when there is none. */
    String unit() {
        return field != null && field.type() == FieldType.QUANTITY ? field.unit() : "";
    }

    /** As it stands in the first line of the table. */
    String header() {
        return unit().isEmpty() ? name : name + " [" + unit() + "]";
    }
}
