package org.flexwright.materials.calc;

import java.util.List;

import org.flexwright.core.calc.Calculation;

/** All calculations of this bundle, made as a plain program would. */
final class MaterialCalculations {

    private MaterialCalculations() {
    }

    static List<Calculation<?, ?>> all() {
        return List.of(new ModulusCalculation(), new BondedBlockCalculation(), new IrhdCalculation(), new FamilyTableCalculation());
    }
}
