package org.flexwright.moulding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.PlannedMaterial;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.Steps;
import org.flexwright.core.process.TimeBudget;
import org.flexwright.core.process.TimeBudget.Band;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** Casting a liquid two-part rubber in a mould. */
@Component(service = ProcessKind.class)
public final class CastProcess implements ProcessKind {
    /** Id of this process. */
    public static final String ID = "moulding.cast";

    private static final String MIX = "mixing.mix";
    private static final String DEGAS = "mixing.degas";
    private static final String CURE = "curing.cure";
    private static final TimeBudget HANDS_ON = new TimeBudget(Map.of(PrepareStep.ID, new Band(10, 20, 60), "mixing.weigh", new Band(5, 10, 20),
            MIX, new Band(3, 5, 10), DEGAS, new Band(5, 10, 20), FillStep.ID, new Band(2, 5, 15), "curing.demould",
            new Band(5, 10, 30), "testing.read", new Band(10, 20, 40)));
    private static final TimeBudget CURING = new TimeBudget(Map.of(CURE, new Band(4 * 60, 16 * 60, 24 * 60)));

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Casting in a mould";
    }

    @Override
    public String summary() {
        return "Two liquids are weighed, mixed and poured or pressed into a mould. From skin-soft to hard, lively, cheap once the mould stands; "
                + "it fails by a wrong ratio, damp, or a mould that spoils the cure.";
    }

    @Override
    public List<PlannedStep> steps() {
        return List.of(
                new PlannedStep(PrepareStep.ID, "Prepare the mould",
                        Map.of("plannedTreatment", "none", "plannedDryHours", "2 h", "plannedTemperature", "23 degC")),
                PlannedStep.of("mixing.weigh", "Weigh"), new PlannedStep(MIX, "Mix", Map.of("plannedMinutes", "3 min")),
                new PlannedStep(DEGAS, "Pull vacuum", Map.of("plannedMinutes", "5 min")),
                new PlannedStep(FillStep.ID, "Fill the mould", Map.of("method", "poured", "plannedFillMinutes", "3 min", "workingGrowth", "2")),
                new PlannedStep(CURE, "Cure", Map.of("plannedHours", "16 h", "plannedC", "23 degC")),
                new PlannedStep("curing.demould", "Demould", Map.of("plannedAge", "16 h")), PlannedStep.of("testing.read", "Read the parts"));
    }

    @Override
    public List<Factor> factors() {
        return List.of(new Factor("treatment", "Mould treatment", PrepareStep.ID, "plannedTreatment"),
                new Factor("drying", "Mould drying", PrepareStep.ID, "plannedDryHours"),
                new Factor("mould-temperature", "Mould temperature", PrepareStep.ID, "plannedTemperature"),
                new Factor("filler", "Filler", "mixing.weigh", "filler"), new Factor("fill-time", "Fill time", FillStep.ID, "plannedFillMinutes"),
                new Factor("cure-temperature", "Cure temperature", CURE, "plannedC"));
    }

    @Override
    public List<EstimateLine> estimate(Trial plan) {
        List<EstimateLine> lines = new ArrayList<>();
        Estimate work = HANDS_ON.minutes(plan, CastProcess::fillTime);
        lines.add(new EstimateLine("Time with hands on it", work, "min", EstimateLine.Meaning.HANDS));
        Estimate cure = CURING.minutes(plan, CastProcess::cureTime);
        double drying = drying(plan);
        lines.add(new EstimateLine("From start to finished part", new Estimate(work.low() + cure.low() + drying, work.likely() + cure.likely() + drying,
                work.high() + cure.high() + drying, work.source()).times(1 / 60.0), "h", EstimateLine.Meaning.ELAPSED));
        PlannedMaterial.mass(plan).ifPresent(
                g -> lines.add(new EstimateLine("Material", Estimate.exact(g, Source.derived("sum of the planned grams")), "g")));
        PlannedMaterial.cost(plan).ifPresent(eur -> lines.add(
                new EstimateLine("Cost of material", Estimate.exact(eur, Source.derived("planned grams at the prices of their lots")), "EUR")));
        return lines;
    }

    private static Optional<Band> fillTime(Step step) {
        return step.getDetails() instanceof Filling fill ? Optional.ofNullable(fill.getPlannedFillMinutes()).map(Band::exact) : Optional.empty();
    }

    /** Read by name: the class of those details belongs to another plugin. */
    private static Optional<Band> cureTime(Step step) {
        EObject details = step.getDetails();
        EStructuralFeature hours = details == null ? null : details.eClass().getEStructuralFeature("plannedHours");
        return hours != null && details.eGet(hours) instanceof Double planned ? Optional.of(Band.exact(60 * planned)) : Optional.empty();
    }

    private static double drying(Trial plan) {
        return Moulds.preparations(plan).stream().map(Steps.Detailed::details).map(Preparation::getPlannedDryHours).filter(h -> h != null)
                .mapToDouble(h -> 60 * h).sum();
    }
}
