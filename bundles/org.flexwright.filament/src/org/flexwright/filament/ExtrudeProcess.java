package org.flexwright.filament;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.PlannedMaterial;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.Steps;
import org.flexwright.core.process.TimeBudget;
import org.flexwright.core.process.TimeBudget.Band;
import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.Printing;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Printing soft parts from filament. */
@Component(service = ProcessKind.class)
public final class ExtrudeProcess implements ProcessKind {
    /** Id of this process. */
    public static final String ID = "filament.extrude";

    private static final Band DENSITY = new Band(1.07, 1.15, 1.25);
    private static final Band TRAVEL = new Band(1.05, 1.25, 2);
    private static final TimeBudget HANDS_ON = new TimeBudget(
            Map.of(DryStep.ID, new Band(2, 5, 10), PrintStep.ID, new Band(10, 20, 40), "testing.read", new Band(10, 20, 40)));
    private static final TimeBudget MACHINE = new TimeBudget(Map.of(PrintStep.ID, new Band(60, 180, 600)));
    private static final TimeBudget DRYING = new TimeBudget(Map.of(DryStep.ID, new Band(4 * 60, 6 * 60, 24 * 60)));

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Soft filament print";
    }

    @Override
    public String summary() {
        return "A soft strand is melted and laid line by line. Tough, no chemistry, the same day; softer strands are hard to feed, "
                + "and it fails by buckling, damp strand and thin laid lines.";
    }

    @Override
    public List<PlannedStep> steps() {
        return List.of(new PlannedStep(DryStep.ID, "Dry the spool", Map.of("plannedTemperature", "50 degC", "plannedHours", "6 h")),
                new PlannedStep(PrintStep.ID, "Print",
                        Map.of("plannedSpeed", "15 mm/s", "nozzleDiameter", "0.6 mm", "nozzleLength", "1 mm", "layerHeight", "0.2 mm", "lineWidth",
                                "0.6 mm", "plannedNozzleTemperature", "225 degC", "strandDiameter", "1.75 mm", "freeLength", "10 mm")),
                PlannedStep.of("testing.read", "Read the parts"));
    }

    @Override
    public List<Factor> factors() {
        return List.of(new Factor("speed", "Speed", PrintStep.ID, "plannedSpeed"),
                new Factor("nozzle-temperature", "Nozzle temperature", PrintStep.ID, "plannedNozzleTemperature"),
                new Factor("layer-height", "Layer height", PrintStep.ID, "layerHeight"), new Factor("line-width", "Line width", PrintStep.ID, "lineWidth"),
                new Factor("drying", "Drying", DryStep.ID, "plannedHours"), new Factor("drying-temperature", "Drying temperature", DryStep.ID, "plannedTemperature"));
    }

    @Override
    public List<EstimateLine> estimate(Trial plan) {
        List<EstimateLine> lines = new ArrayList<>();
        Estimate work = HANDS_ON.minutes(plan);
        Estimate machine = MACHINE.minutes(plan, ExtrudeProcess::printing);
        Estimate drying = DRYING.minutes(plan, ExtrudeProcess::drying);
        lines.add(new EstimateLine("Time with hands on it", work, "min", EstimateLine.Meaning.HANDS));
        lines.add(new EstimateLine("Time at the machine", machine.times(1 / 60.0), "h"));
        lines.add(new EstimateLine("From start to finished part", new Estimate(work.low() + machine.low() + drying.low(),
                work.likely() + machine.likely() + drying.likely(), work.high() + machine.high() + drying.high(), work.source()).times(1 / 60.0), "h", EstimateLine.Meaning.ELAPSED));
        mass(plan).ifPresent(g -> lines.add(new EstimateLine("Material", Estimate.exact(g, Source.derived("sum of the planned grams")), "g")));
        PlannedMaterial.cost(plan).ifPresent(eur -> lines.add(
                new EstimateLine("Cost of material", Estimate.exact(eur, Source.derived("planned grams at the prices of their lots")), "EUR")));
        return lines;
    }

    private static OptionalDouble mass(Trial plan) {
        OptionalDouble used = PlannedMaterial.mass(plan);
        if (used.isPresent()) {
            return used;
        }
        List<Double> prints = Steps.of(plan, PrintStep.ID, Printing.class).stream().map(print -> print.details().getPlannedMass()).filter(g -> g != null).toList();
        return prints.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(prints.stream().mapToDouble(g -> g).sum());
    }

    private static Optional<Band> printing(Step step) {
        if (!(step.getDetails() instanceof Printing d) || d.getPlannedMass() == null || d.getPlannedSpeed() == null || d.getLineWidth() == null
                || d.getLayerHeight() == null) {
            return Optional.empty();
        }
        double flow = new Bead(d.getLineWidth(), d.getLayerHeight()).rectangle() * d.getPlannedSpeed();
        if (!(flow > 0)) {
            return Optional.empty();
        }
        double minutes = 1e3 * d.getPlannedMass() / flow / 60;
        return Optional.of(new Band(TRAVEL.low() * minutes / DENSITY.high(), TRAVEL.likely() * minutes / DENSITY.likely(),
                TRAVEL.high() * minutes / DENSITY.low()));
    }

    private static Optional<Band> drying(Step step) {
        return step.getDetails() instanceof Drying d ? Optional.ofNullable(d.getPlannedHours()).map(h -> Band.exact(60 * h)) : Optional.empty();
    }
}
