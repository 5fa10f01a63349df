package org.flexwright.mixing;

import static org.flexwright.mixing.Bench.step;
import static org.flexwright.mixing.Bench.use;
import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.cause.FillerLoad;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.SofterCauses;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.rubber.Network;
import org.flexwright.core.view.PlotModel;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** Why a part may be softer with more filler: from its own record, and the likeliest first. */
class SofterTest {

    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;
    private static final StepKinds KINDS = StepKinds.of(new WeighStep(), new MixStep(), new DegasStep());
    private static final PropertyCatalogue NOTHING_READ = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of();
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return Optional.empty();
        }
    };

    private final MaterialGrade a = grade("PU-A", "pu-60a", MixingProperties.NCO_CONTENT, 9.0);
    private final MaterialGrade b = grade("PU-B", "pu-60a", MixingProperties.HYDROXYL_VALUE, 120);
    private final MaterialGrade powder = grade("powder", null, null, 0);

    private static MaterialGrade grade(String name, String family, String property, double sheet) {
        MaterialGrade grade = MODEL.createMaterialGrade();
        grade.setName(name);
        grade.setFamily(family);
        if (property != null) {
            MaterialValue value = MODEL.createMaterialValue();
            value.setProperty(property);
            value.setUnit(property.equals(MixingProperties.NCO_CONTENT) ? "%" : "");
            value.setSheetValue(sheet);
            value.setSheetSource("sheet");
            grade.getValues().add(value);
        }
        return grade;
    }

    private static MaterialUse of(MaterialUse use, MaterialGrade grade) {
        use.setGrade(grade);
        return use;
    }

    private MaterialUse filler(double grams, Boolean dried, Double moisture) {
        MaterialUse filler = of(use(PartRole.FILLER, grams, grams), powder);
        filler.setDried(dried);
        filler.setMoisture(moisture);
        return filler;
    }

    /** 100 g of each, degassed and stirred as planned. */
    private Trial cup(double weighedB, MaterialUse... more) {
        Step weigh = step(WeighStep.ID, Bench.ratio(100, 100), of(use(PartRole.COMPONENT_A, 100.0, 100), a), of(use(PartRole.COMPONENT_B, 100.0, weighedB), b));
        weigh.getUses().addAll(List.of(more));
        MixDetails mixing = MixingDataFactory.eINSTANCE.createMixDetails();
        mixing.setScraped(true);
        DegasDetails degassing = MixingDataFactory.eINSTANCE.createDegasDetails();
        degassing.setPlannedMinutes(4.0);
        degassing.setMinutes(4.0);
        degassing.setPlannedPressure(5.0);
        degassing.setPressure(5.0);
        Trial trial = MODEL.createTrial();
        trial.setId("t");
        trial.getSteps().addAll(List.of(weigh, step(MixStep.ID, mixing), step(DegasStep.ID, degassing)));
        return trial;
    }

    private static List<SofterCause> causes(Trial trial) {
        return SofterCauses.of(trial, null, KINDS, NOTHING_READ);
    }

    private static SofterCause cause(Trial trial, String id) {
        return causes(trial).stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    /** A premix of 5 g of powder with 1 % of water, stirred into 100 g of B and not dried: 0.05 g of water in the cup of the sheet. */
    @Test
    void aPremixWithUndriedPowderLowersTheIndexByWhatTheSheetSays() {
        Premix premix = MODEL.createPremix();
        premix.setCode("X1");
        MaterialUse polyol = of(use(PartRole.COMPONENT_B, 100.0, 100), b);
        MaterialUse damp = filler(5, null, 1.0);
        premix.getIngredients().addAll(List.of(polyol, damp));
        premix.setDriedHours(0.0);
        MaterialUse blend = use(PartRole.PREMIX, 105.0, 105);
        blend.setPremix(premix);
        Trial trial = cup(100);
        trial.getSteps().getFirst().getUses().remove(1);
        trial.getSteps().getFirst().getUses().add(blend);
        CupWater cup = CupWater.of(trial);
        expect("processes/A4 prepolymer, index, index+water.2", cup.dryIndex(), "Polyurethane Manufacturers Association, technical library, section 5");
        expect("processes/A4 prepolymer, index, index+water.3", cup.wetIndex().likely(), "Polyurethane Manufacturers Association, technical library, section 5");
        SofterCause first = causes(trial).getFirst();
        assertEquals("moisture", first.id());
        assertEquals(Standing.RECORDED, first.standing());
        String evidence = first.evidence().text();
        assertTrue(evidence.contains("5 g of powder with 1 % of water, not dried") && evidence.contains("from 100.1 to 97.6"), evidence);
        double fall = Network.relativeStiffness(Network.alpha(97.60, 1)) / Network.relativeStiffness(Network.alpha(100.13, 1));
        assertEquals(fall, first.stiffness().likely(), 0.0005);
        assertTrue(first.stiffness().low() <= first.stiffness().likely() && first.stiffness().likely() < first.stiffness().high(), "half of the water may be gone");
        assertEquals(5, FillerLoad.of(trial).orElseThrow().filler(), 1e-9, "the blend counts as its ingredients");
        premix.setDriedHours(6.0);
        damp.setMoisture(null);
        assertEquals(Standing.CLEARED, cause(trial, "moisture").standing());
    }

    @Test
    void aRatioThatIsOffComesFirstWhenThePowderWasDried() {
        Trial trial = cup(106, filler(5, true, null));
        List<SofterCause> causes = causes(trial);
        assertEquals("ratio", causes.getFirst().id());
        assertEquals(Standing.RECORDED, causes.getFirst().standing());
        // too much polyol: index 100.13/1.06
        assertEquals(Network.relativeStiffness(Network.alpha(100.13 / 1.06, 1)) / Network.relativeStiffness(Network.alpha(100.13, 1)),
                causes.getFirst().stiffness().likely(), 0.0005);
        assertEquals(Standing.CLEARED, cause(trial, "moisture").standing());
    }

    @Test
    void theLargerLossComesFirst() {
        assertEquals("ratio", causes(cup(106, filler(5, false, 0.2))).getFirst().id());
        assertEquals("moisture", causes(cup(103, filler(5, false, 3.0))).getFirst().id());
    }

    @Test
    void whatNobodyWroteDownIsOpenAndItsBandIsWide() {
        Trial trial = cup(100, filler(5, null, null));
        SofterCause moisture = cause(trial, "moisture");
        assertEquals(Standing.OPEN, moisture.standing());
        assertTrue(moisture.stiffness().high() - moisture.stiffness().low() > 0.1, moisture.stiffness().toString());
        assertEquals(Standing.RECORDED, cause(cup(100, filler(5, false, null)), "moisture").standing());
        assertTrue(causes(cup(100)).stream().noneMatch(c -> c.id().equals("moisture")), "without a powder nobody speaks of water");
    }

    @Test
    void withoutTheChemistryTheIndexIsABandOverTheUsualOnes() {
        a.getValues().clear();
        CupWater cup = CupWater.of(cup(100, filler(5, false, 1.0)));
        assertFalse(cup.isKnown());
        assertEquals(100, cup.dryIndex());
        assertTrue(cup.wetIndex().low() < cup.wetIndex().likely() && cup.wetIndex().likely() < cup.wetIndex().high());
    }

    @Test
    void theOtherTrialsOwnShareDoesNotCount() {
        Trial wet = cup(100, filler(5, false, 1.0));
        double alone = causes(wet).getFirst().stiffness().likely();
        List<SofterCause> against = SofterCauses.of(wet, cup(100, filler(5, false, 1.0)), KINDS, NOTHING_READ);
        assertTrue(alone < 0.95);
        assertEquals(1, against.stream().filter(c -> c.id().equals("moisture")).findFirst().orElseThrow().stiffness().likely(), 1e-12);
    }

    @Test
    void oilAndSkippedDegassingAreNamed() {
        assertEquals("liquid", causes(cup(100, of(use(PartRole.PLASTICISER, 20.0, 20), grade("oil", null, null, 0)))).getFirst().id());
        Trial trial = cup(100, filler(5, true, null));
        trial.getSteps().get(2).setState(org.flexwright.model.StepState.SKIPPED);
        assertEquals("air", causes(trial).getFirst().id());
        ((MixDetails) trial.getSteps().get(1).getDetails()).setScraped(false);
        assertEquals(Standing.RECORDED, cause(trial, "stirring").standing());
    }

    @Test
    void inASiliconeThePowdersSurfaceIsTheQuestionNotItsWater() {
        a.setFamily("silicone-add-60a");
        a.getValues().clear();
        b.setFamily("silicone-add-60a");
        Trial trial = cup(100, filler(5, null, null));
        Set<String> ids = Set.copyOf(causes(trial).stream().map(SofterCause::id).toList());
        assertTrue(ids.contains("surface") && !ids.contains("moisture"), ids.toString());
        assertEquals("surface", causes(trial).getFirst().id());
    }

    @Test
    void everyCauseHasEvidenceACheckAndASource() {
        for (SofterCause cause : causes(cup(106, filler(5, false, 1.0)))) {
            for (String text : List.of(cause.title().text(), cause.evidence().text(), cause.check().text(), cause.standing().words(), cause.source().display())) {
                assertFalse(text.isBlank() || text.contains("{"), text);
            }
            assertTrue(cause.stiffness() == null || cause.stiffness().low() <= cause.stiffness().likely() && cause.stiffness().likely() <= cause.stiffness().high());
        }
        assertEquals(Source.Mark.FROM_MEMORY, cause(cup(106), "ratio").source().mark());
    }

    private void density(MaterialGrade grade, double value) {
        MaterialValue density = MODEL.createMaterialValue();
        density.setProperty("materials.density");
        density.setUnit("g/cm3");
        density.setOwnValue(value);
        grade.getValues().add(density);
    }

    private List<StepPlot> plots(Trial trial) {
        return new WeighStep().plots(trial.getSteps().getFirst(), trial, NOTHING_READ);
    }

    /** Every curve rises from 1 and ends where its formula does; nothing is drawn at packing. */
    @Test
    void curvesOverFillerRiseAsFarAsTheyHoldAndPackingIsRefused() {
        density(a, 1.05);
        density(b, 1.05);
        assertTrue(plots(cup(100)).isEmpty(), "without a filler there is nothing to draw");
        assertEquals(null, plots(cup(100, filler(10, true, null))).getFirst().plot(), "a density is missing");
        density(powder, 1.80);
        List<StepPlot> plots = plots(cup(100, filler(160, true, null)));
        assertEquals(2, plots.size());
        for (StepPlot plot : plots) {
            for (PlotModel.Series series : plot.plot().series()) {
                assertEquals(1, series.points().getFirst().y(), 1e-12, series.name());
                for (int i = 1; i < series.points().size(); i++) {
                    assertTrue(series.points().get(i).y() > series.points().get(i - 1).y(), series.name());
                }
            }
        }
        // A5 and A7: 10 phr of 1.80 in 1.05 g/cm3 is phi 0.05512; Guth and Gold at phi 0.20 is 2.0640, where its curve ends
        PlotModel.Series spheres = plots.getFirst().plot().series().get(1);
        assertEquals(2.0640, spheres.points().getLast().y(), 1e-4);
        assertEquals(1.125, plots.getFirst().plot().series().getFirst().points().getLast().y(), 1e-9, "Smallwood ends at phi 0.05");
        List<StepPlot> packed = plots(cup(100, filler(700, true, null)));
        assertEquals(null, packed.getFirst().plot());
        assertEquals(org.flexwright.core.find.Severity.STOP, packed.getFirst().remarks().getFirst().severity());
    }

    @Test
    void aStructuredBlackHasACurveOfItsOwn() {
        density(a, 1.05);
        density(b, 1.05);
        density(powder, 1.80);
        int without = plots(cup(100, filler(10, true, null))).getFirst().plot().series().size();
        MaterialValue oil = MODEL.createMaterialValue();
        oil.setProperty(MixingProperties.OIL_ABSORPTION);
        oil.setUnit("");
        oil.setSheetValue(100.0);
        powder.getValues().add(oil);
        assertEquals(without + 1, plots(cup(100, filler(10, true, null))).getFirst().plot().series().size());
    }
}
