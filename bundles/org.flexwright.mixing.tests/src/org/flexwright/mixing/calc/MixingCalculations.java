package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.calc.Calculation;

/** All calculations of this bundle, made as a plain program would. */
final class MixingCalculations {

    private MixingCalculations() {
    }

    static List<Calculation<?, ?>> all() {
        return List.of(new BatchCalculation(), new AsWeighedCalculation(), new RatioConvertCalculation(), new MixDensityCalculation(),
                new FillerCalculation(), new GrossNetCalculation(), new ScaleCalculation(), new IndexCalculation(), new PrepolymerCalculation(),
                new FillerStiffnessCalculation(), new UndercureCalculation(), new WorkingTimeCalculation(), new DegassingCalculation(),
                new MoistureCalculation(), new PotsCalculation(), new VolumeByWaterCalculation(), new VolumeByMassCalculation());
    }
}
