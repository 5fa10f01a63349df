package org.flexwright.filament;

import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.process.Steps;
import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.Printing;
import org.flexwright.model.Trial;

/** Water that a drying step leaves in the strand. */
final class WaterLeft {
    /** Diameter of the strand while none is entered, mm. */
    static final double USUAL_DIAMETER = 1.75;

    private WaterLeft() {
    }

    /** Share of the water it held, 0 to 1; empty while time or temperature is missing. */
    static Optional<Estimate> of(Drying d, Trial trial) {
        Entered temperature = Entered.of("Temperature", d.getPlannedTemperature(), d.getActualTemperature());
        Entered hours = Entered.of("Hours", d.getPlannedHours(), d.getActualHours());
        if (temperature == null || hours == null) {
            return Optional.empty();
        }
        WaterBand water = WaterBand.of(d.getDiffusivity(), d.getActivationEnergy());
        return Optional.of(water.of(rate -> rate.residual(diameter(trial), temperature.value(), 3600 * hours.value())));
    }

    static double diameter(Trial trial) {
        return Steps.of(trial, PrintStep.ID, Printing.class).stream().map(print -> print.details().getStrandDiameter())
                .filter(diameter -> diameter != null && diameter > 0).findFirst().orElse(USUAL_DIAMETER);
    }
}
