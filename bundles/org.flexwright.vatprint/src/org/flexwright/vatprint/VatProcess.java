package org.flexwright.vatprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.PlannedMaterial;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.TimeBudget;
import org.flexwright.core.process.TimeBudget.Band;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.vatprint.data.PostCuring;
import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.Washing;
import org.osgi.service.component.annotations.Component;

/** Printing soft parts in a vat of light-cured resin. */
@Component(service = ProcessKind.class)
public final class VatProcess implements ProcessKind {
    /** Id of this process. */
    public static final String ID = "vatprint.vat";

    private static final double SLOWEST_LAYERS = 1.3;
    private static final double FASTEST_LAYERS = 0.95;
    private static final TimeBudget HANDS_ON = new TimeBudget(
            Map.of(PrintStep.ID, new Band(10, 15, 30), WashStep.ID, new Band(5, 10, 20), PostCureStep.ID, new Band(5, 10, 20), "testing.read",
                    new Band(10, 20, 40)));
    private static final TimeBudget MACHINE = new TimeBudget(Map.of(PrintStep.ID, new Band(60, 180, 480)));
    private static final TimeBudget AFTER = new TimeBudget(Map.of(WashStep.ID, new Band(2, 5, 15), PostCureStep.ID, new Band(40, 90, 24 * 60)));

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Vat print in soft resin";
    }

    @Override
    public String summary() {
        return "Light cures a soft resin layer by layer. Fine detail and one-offs the same day, often slow to spring back; "
                + "it fails by too little or too much light and by hurried washing.";
    }

    @Override
    public List<PlannedStep> steps() {
        return List.of(
                new PlannedStep(PrintStep.ID, "Print",
                        Map.of("layerHeight", "50 um", "plannedExposure", "4 s", "overCure", "25 um", "baseLayers", "5", "baseExposure", "30 s",
                                "moveTime", "6 s")),
                new PlannedStep(WashStep.ID, "Wash",
                        Map.of("solvent", "isopropanol", "plannedMinutes", "4 min", "baths", "2", "bathVolume", "500 ml", "carriedVolume", "5 ml")),
                new PlannedStep(PostCureStep.ID, "Dry and post-cure",
                        Map.of("plannedDryMinutes", "60 min", "plannedMinutes", "20 min", "plannedTemperature", "50 degC", "medium", "water")),
                PlannedStep.of("testing.read", "Read the parts"));
    }

    @Override
    public List<Factor> factors() {
        return List.of(new Factor("exposure", "Exposure", PrintStep.ID, "plannedExposure"),
                new Factor("layer-height", "Layer height", PrintStep.ID, "layerHeight"),
                new Factor("over-cure", "Over-cure", PrintStep.ID, "overCure"), new Factor("wash", "Wash", WashStep.ID, "plannedMinutes"),
                new Factor("post-cure", "Post-cure light", PostCureStep.ID, "plannedMinutes"),
                new Factor("post-cure-temperature", "Post-cure temperature", PostCureStep.ID, "plannedTemperature"));
    }

    @Override
    public List<EstimateLine> estimate(Trial plan) {
        List<EstimateLine> lines = new ArrayList<>();
        Estimate work = HANDS_ON.minutes(plan);
        Estimate machine = MACHINE.minutes(plan, VatProcess::printing);
        Estimate after = AFTER.minutes(plan, VatProcess::finishing);
        lines.add(new EstimateLine("Time with hands on it", work, "min", EstimateLine.Meaning.HANDS));
        lines.add(new EstimateLine("Time at the machine", machine.times(1 / 60.0), "h"));
        lines.add(new EstimateLine("From start to finished part", new Estimate(work.low() + machine.low() + after.low(),
                work.likely() + machine.likely() + after.likely(), work.high() + machine.high() + after.high(), work.source()).times(1 / 60.0), "h", EstimateLine.Meaning.ELAPSED));
        PlannedMaterial.mass(plan).ifPresent(
                g -> lines.add(new EstimateLine("Material", Estimate.exact(g, Source.derived("sum of the planned grams")), "g")));
        PlannedMaterial.cost(plan).ifPresent(eur -> lines.add(
                new EstimateLine("Cost of material", Estimate.exact(eur, Source.derived("planned grams at the prices of their lots")), "EUR")));
        return lines;
    }

    private static Optional<Band> printing(Step step) {
        if (!(step.getDetails() instanceof Printing d) || d.getPartHeight() == null || d.getLayerHeight() == null || !(d.getLayerHeight() > 0)
                || d.getPlannedExposure() == null || d.getMoveTime() == null) {
            return Optional.empty();
        }
        int base = d.getBaseLayers() == null || d.getBaseExposure() == null ? 0 : d.getBaseLayers();
        double baseExposure = base == 0 ? 0 : d.getBaseExposure();
        double minutes = PrintTime.of(d.getPartHeight(), d.getLayerHeight() / 1e3, base).seconds(baseExposure, d.getPlannedExposure(), d.getMoveTime())
                / 60;
        return Optional.of(new Band(FASTEST_LAYERS * minutes, minutes, SLOWEST_LAYERS * minutes));
    }

    private static Optional<Band> finishing(Step step) {
        if (step.getDetails() instanceof Washing wash) {
            return Optional.ofNullable(wash.getPlannedMinutes()).map(Band::exact);
        }
        if (step.getDetails() instanceof PostCuring cure && cure.getPlannedDryMinutes() != null && cure.getPlannedMinutes() != null) {
            return Optional.of(Band.exact(cure.getPlannedDryMinutes() + cure.getPlannedMinutes()));
        }
        return Optional.empty();
    }
}
