package org.flexwright.core.trial;

import java.util.List;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;

/** What is known of a material's properties: a property stands once at a grade and once at a lot, sheet and own value side by side. */
public final class MaterialValues {
    private static final List<EAttribute> SHEET = List.of(ModelPackage.Literals.MATERIAL_VALUE__SHEET_VALUE,
            ModelPackage.Literals.MATERIAL_VALUE__SHEET_SOURCE);
    private static final List<EAttribute> OWN = List.of(ModelPackage.Literals.MATERIAL_VALUE__OWN_VALUE,
            ModelPackage.Literals.MATERIAL_VALUE__OWN_UNCERTAINTY, ModelPackage.Literals.MATERIAL_VALUE__OWN_SOURCE);

    private MaterialValues() {
    }

    /** Notes a value of a grade; a sheet or own value of the same property that was there is replaced, the other one stays. */
    public static MaterialValue note(Edit edit, MaterialGrade grade, MaterialValue value) {
        return note(edit, grade, ModelPackage.Literals.MATERIAL_GRADE__VALUES, grade.getValues(), value);
    }

    /** The same of a lot. */
    public static MaterialValue note(Edit edit, Lot lot, MaterialValue value) {
        return note(edit, lot, ModelPackage.Literals.LOT__VALUES, lot.getValues(), value);
    }

    private static MaterialValue note(Edit edit, Entry owner, EReference feature, EList<MaterialValue> values, MaterialValue value) {
        MaterialValue known = values.stream().filter(v -> value.getProperty().equals(v.getProperty()) && value.getUnit().equals(v.getUnit())).findFirst()
                .orElse(null);
        if (known == null) {
            edit.add(owner, feature, value);
            return value;
        }
        if (value.getSheetValue() != null) {
            SHEET.forEach(attribute -> edit.set(known, attribute, value.eGet(attribute)));
        }
        if (value.getOwnValue() != null) {
            OWN.forEach(attribute -> edit.set(known, attribute, value.eGet(attribute)));
        }
        return known;
    }
}
