package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.calc.Calculation;

/** All calculations of this bundle, made as a plain program would. */
final class CuringCalculations {

    private CuringCalculations() {
    }

    static List<Calculation<?, ?>> all() {
        return List.of(new ConversionCalculation(), new AutocatalyticCalculation(), new ScheduleCalculation(), new GelPointCalculation(),
                new AdiabaticCalculation(), new CupCalculation(), new ViscosityCalculation(), new WarmUpCalculation(), new PartCureCalculation(),
                new InternalHeatCalculation(), new ShrinkageCalculation(), new PublishedCureCalculation());
    }
}
