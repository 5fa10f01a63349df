package org.flexwright.mixing;

import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Premix;

/** Materials with figures, and uses of them, for tests. */
final class Cans {

    private Cans() {
    }

    static MaterialGrade grade(String name, Object... propertyAndSheet) {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setName(name);
        for (int i = 0; i < propertyAndSheet.length; i += 2) {
            grade.getValues().add(sheet((String) propertyAndSheet[i], ((Number) propertyAndSheet[i + 1]).doubleValue()));
        }
        return grade;
    }

    static MaterialValue sheet(String property, double value) {
        MaterialValue known = ModelFactory.eINSTANCE.createMaterialValue();
        known.setProperty(property);
        known.setSheetValue(value);
        return known;
    }

    static Lot lot(MaterialGrade grade, String property, double own) {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode("L1");
        MaterialValue known = ModelFactory.eINSTANCE.createMaterialValue();
        known.setProperty(property);
        known.setOwnValue(own);
        lot.getValues().add(known);
        grade.getLots().add(lot);
        return lot;
    }

    /** An isocyanate side with 9 % NCO. */
    static MaterialGrade iso() {
        return grade("Iso", MixingProperties.NCO_CONTENT, 9.0, "materials.density", 1.05);
    }

    /** A polyol side with hydroxyl value 120. */
    static MaterialGrade polyol() {
        return grade("Polyol", MixingProperties.HYDROXYL_VALUE, 120.0, "materials.density", 1.10);
    }

    static MaterialGrade powder() {
        return grade("Powder", "materials.density", 1.8);
    }

    static MaterialUse use(PartRole role, MaterialGrade grade, Double parts, PartsOf of, double... weighed) {
        MaterialUse use = Bench.use(role, null, weighed);
        use.setId("u-" + role);
        use.setGrade(grade);
        use.setParts(parts);
        use.setPartsOf(of);
        return use;
    }

    /** Polyol and powder, 100 to so many. */
    static Premix premix(double powder, Double moisture) {
        Premix premix = ModelFactory.eINSTANCE.createPremix();
        premix.setCode("X1");
        MaterialUse filler = use(PartRole.FILLER, powder(), null, PartsOf.UNSTATED, powder);
        filler.setMoisture(moisture);
        premix.getIngredients().add(use(PartRole.COMPONENT_B, polyol(), null, PartsOf.UNSTATED, 100));
        premix.getIngredients().add(filler);
        return premix;
    }

    static MaterialUse use(Premix premix, Double parts, double... weighed) {
        MaterialUse use = use(PartRole.PREMIX, null, parts, PartsOf.UNSTATED, weighed);
        use.setPremix(premix);
        return use;
    }
}
