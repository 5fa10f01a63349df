package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Recipe;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialsTest {
    private static final Instant NOW = Instant.parse("2026-03-01T09:30:00Z");

    @TempDir
    Path temp;

    private final EPackage data = EcoreFactory.eINSTANCE.createEPackage();
    private final EClass bake = EcoreFactory.eINSTANCE.createEClass();
    private final EClass ramp = EcoreFactory.eINSTANCE.createEClass();
    private ProjectSession session;

    private final StepKind kind = new StepKind() {
        @Override
        public String id() {
            return "demo.bake";
        }

        @Override
        public String title() {
            return "Bake";
        }

        @Override
        public String summary() {
            return "Bakes.";
        }

        @Override
        public EClass details() {
            return bake;
        }
    };
    private final Function<String, Optional<StepKind>> kinds = id -> id.equals(kind.id()) ? Optional.of(kind) : Optional.empty();

    private record Route(List<PlannedStep> steps) implements ProcessKind {
        @Override
        public String id() {
            return "demo.route";
        }

        @Override
        public String title() {
            return "Route";
        }

        @Override
        public String summary() {
            return "A route.";
        }

        @Override
        public List<Factor> factors() {
            return List.of();
        }

        @Override
        public List<EstimateLine> estimate(Trial plan) {
            return List.of();
        }
    }

    @BeforeEach
    void create() {
        data.setName("bakedata");
        data.setNsPrefix("bake");
        data.setNsURI("urn:flexwright:bake:1");
        bake.setName("Bake");
        ramp.setName("Ramp");
        data.getEClassifiers().addAll(List.of(bake, ramp));
        feature(bake, EcoreFactory.eINSTANCE.createEAttribute(), "planned", EcorePackage.Literals.EDOUBLE_OBJECT,
                Map.of("role", "planned", "kind", "DURATION", "unit", "min", "min", "0", "max", "600"));
        feature(bake, EcoreFactory.eINSTANCE.createEAttribute(), "shelf", EcorePackage.Literals.ESTRING, Map.of("def", "middle"));
        feature(bake, EcoreFactory.eINSTANCE.createEAttribute(), "actual", EcorePackage.Literals.EDOUBLE_OBJECT,
                Map.of("role", "actual", "of", "planned", "kind", "DURATION", "unit", "min"));
        EAttribute id = EcoreFactory.eINSTANCE.createEAttribute();
        feature(ramp, id, "id", EcorePackage.Literals.ESTRING, Map.of());
        id.setID(true);
        feature(ramp, EcoreFactory.eINSTANCE.createEAttribute(), "minutes", EcorePackage.Literals.EDOUBLE_OBJECT, Map.of());
        feature(ramp, EcoreFactory.eINSTANCE.createEAttribute(), "reached", EcorePackage.Literals.EDOUBLE_OBJECT, Map.of("role", "actual"));
        EReference ramps = EcoreFactory.eINSTANCE.createEReference();
        feature(bake, ramps, "ramps", ramp, Map.of());
        ramps.setContainment(true);
        ramps.setUpperBound(-1);
        session = new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "Ann", "1.0.0",
                List.of(new DetailsPackage(data, "demo", "1.0.0")))).create(temp.resolve("Dome.flexwright"), "Dome");
    }

    private static void feature(EClass owner, EStructuralFeature f, String name, EClassifier type, Map<String, String> field) {
        f.setName(name);
        f.setEType(type);
        field.forEach((k, v) -> EcoreUtil.setAnnotation(f, FieldDescriptors.ANNOTATION, k, v));
        EcoreUtil.setAnnotation(f, FieldDescriptors.ANNOTATION, "label", name);
        owner.getEStructuralFeatures().add(f);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private <T> T make(Function<Edit, T> work) {
        Object[] made = new Object[1];
        session.execute("make", e -> made[0] = work.apply(e));
        @SuppressWarnings("unchecked")
        T result = (T) made[0];
        return result;
    }

    private void edit(Consumer<Edit> work) {
        session.execute("edit", work);
    }

    /** The refusal's key; nothing may have changed. */
    private String refused(Consumer<Edit> work) {
        boolean dirty = session.dirty();
        String undo = session.undoName();
        RefusedException e = assertThrows(RefusedException.class, () -> session.execute("refused", work));
        assertEquals(undo, session.undoName());
        assertEquals(dirty, session.dirty());
        assertFalse(e.getMessage().contains("{") || e.getMessage().contains("\n"), e.getMessage());
        return e.sentence().key();
    }

    private Trial create(String code, Map<String, String> defaults) {
        Route route = new Route(List.of(new ProcessKind.PlannedStep("demo.bake", "Bake gently", defaults),
                ProcessKind.PlannedStep.of("absent.step", "Elsewhere")));
        return make(e -> Trials.create(e, route, kinds, code, "First", "warmer"));
    }

    private Object detail(Trial trial, String name) {
        EObject details = trial.getSteps().getFirst().getDetails();
        return details.eGet(details.eClass().getEStructuralFeature(name));
    }

    @Test
    void aTrialBeginsWithTheRoutesStepsAndDefaults() {
        Trial t = create(null, Map.of("planned", "2 h"));
        assertEquals("T01", t.getCode());
        assertEquals("demo.route", t.getRoute());
        assertEquals(TrialState.PLANNED, t.getState());
        assertEquals(NOW, t.getCreatedAt());
        assertEquals(120.0, detail(t, "planned"), "read with its unit");
        assertEquals("middle", detail(t, "shelf"), "the field's own default");
        assertNull(detail(t, "actual"));
        Step step = t.getSteps().getFirst();
        assertEquals("Bake gently", step.getTitle());
        assertEquals(Origin.ASSUMED, Provenances.origin(step.getDetails(), bake.getEStructuralFeature("planned")));
        assertNull(t.getSteps().get(1).getDetails(), "its plugin is absent");
        assertEquals("absent.step", t.getSteps().get(1).getKind());
        assertEquals("T02", create(null, Map.of()).getCode());
        assertEquals("code.taken", refused(e -> Trials.create(e, new Route(List.of()), kinds, "t01", "Again", null)));
        assertEquals("code.empty", refused(e -> Trials.create(e, new Route(List.of()), kinds, "  ", "Again", null)));
    }

    @Test
    void aSketchIsPlannedLikeATrialButBelongsToNoProject() {
        Trial sketch = Trials.sketch(new Route(List.of(new ProcessKind.PlannedStep("demo.bake", "Bake gently", Map.of("planned", "2 h")))), kinds);
        assertEquals(120.0, detail(sketch, "planned"));
        assertNull(sketch.eContainer());
        assertTrue(session.project().getTrials().isEmpty());
    }

    @Test
    void aRouteWithADefaultThatCannotBeIsNamed() {
        Route wrong = new Route(List.of(new ProcessKind.PlannedStep("demo.bake", "Bake", Map.of("planned", "900 min"))));
        assertEquals("default.rejected", refused(e -> Trials.create(e, wrong, kinds, null, "x", null)));
        Route unknown = new Route(List.of(new ProcessKind.PlannedStep("demo.bake", "Bake", Map.of("colour", "red"))));
        assertEquals("default.unknown", refused(e -> Trials.create(e, unknown, kinds, null, "x", null)));
    }

    @Test
    void aStepIsMovedAndTakenOutUntilItWasBegun() {
        Trial t = create(null, Map.of("planned", "2 h"));
        Step first = t.getSteps().getFirst();
        Step added = make(e -> Trials.addStep(e, t, kind, 1));
        edit(e -> Trials.moveStep(e, added, -1));
        assertEquals(0, t.getSteps().indexOf(added));
        edit(e -> Trials.moveStep(e, added, -1));
        assertEquals(0, t.getSteps().indexOf(added), "at the end of the list it stays");
        edit(e -> Trials.removeStep(e, added));
        assertEquals(2, t.getSteps().size());
        session.undo();
        assertEquals(added, t.getSteps().getFirst());
        edit(e -> Trials.start(e, first));
        assertEquals("step.begun", refused(e -> Trials.removeStep(e, first)));
    }

    /** A trial where everything that can happen has happened. */
    private Trial made() {
        Trial t = create(null, Map.of("planned", "2 h"));
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode("L1");
        edit(e -> {
            e.add(e.project(), ModelPackage.Literals.PROJECT__GRADES, grade);
            Lots.add(e, grade, lot);
        });
        Session bench = make(e -> BenchSessions.add(e, ModelFactory.eINSTANCE.createSession()));
        edit(e -> {
            Step step = t.getSteps().getFirst();
            MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
            use.setGrade(grade);
            use.setLot(lot);
            use.setPlanned(20.0);
            e.add(step, ModelPackage.Literals.STEP__USES, use);
            Weighings.add(e, use, 25.0, 5.1, null, false, null);
            e.set(step, ModelPackage.Literals.STEP__SESSION, bench);
            e.set(step, ModelPackage.Literals.STEP__PLANNED_DURATION, 130.0);
            e.set(step, ModelPackage.Literals.ENTRY__NOTE, "smelled");
            e.set(step.getDetails(), bake.getEStructuralFeature("actual"), 118.0);
            EObject row = EcoreUtil.create(ramp);
            row.eSet(ramp.getEStructuralFeature("minutes"), 15.0);
            row.eSet(ramp.getEStructuralFeature("reached"), 14.0);
            e.add(step.getDetails(), bake.getEStructuralFeature("ramps"), row);
            Trials.start(e, step);
            Trials.finish(e, step);
            Trials.addPart(e, t, null, PieceKind.PART, 1.5, e.now());
            e.add(t, ModelPackage.Literals.TRIAL__CALCULATIONS, ModelFactory.eINSTANCE.createCalculationRun());
            Trials.status(e, t, TrialState.MADE, null);
            Trials.conclude(e, t, " Good. ");
            e.set(t, ModelPackage.Literals.TRIAL__COST, 12.0);
            e.set(t, ModelPackage.Literals.TRIAL__HOURS, 3.0);
        });
        return t;
    }

    @Test
    void aCopyCarriesThePlanAndNotWhatHappened() {
        Trial from = made();
        Trial copy = make(e -> Trials.copy(e, from, null, null));
        assertEquals("T02", copy.getCode());
        assertEquals("First", copy.getTitle());
        assertSame(from, copy.getBasedOn());
        assertEquals("demo.route", copy.getRoute());
        assertEquals(2, copy.getSteps().size());
        Step step = copy.getSteps().getFirst();
        assertEquals(120.0, detail(copy, "planned"));
        assertEquals("middle", detail(copy, "shelf"), "features without a role count as plan");
        assertEquals(130.0, step.getPlannedDuration());
        assertEquals(20.0, step.getUses().getFirst().getPlanned());
        assertEquals("L1", step.getUses().getFirst().getLot().getCode());
        EObject row = (EObject) ((List<?>) detail(copy, "ramps")).getFirst();
        EObject old = (EObject) ((List<?>) detail(from, "ramps")).getFirst();
        assertEquals(15.0, row.eGet(ramp.getEStructuralFeature("minutes")));
        assertNotEquals(old.eGet(ramp.getEStructuralFeature("id")), row.eGet(ramp.getEStructuralFeature("id")));

        assertNull(detail(copy, "actual"));
        assertNull(row.eGet(ramp.getEStructuralFeature("reached")), "in tables too");
        assertTrue(step.getUses().getFirst().getWeighings().isEmpty());
        assertEquals(StepState.PLANNED, step.getState());
        assertNull(step.getSession());
        assertNull(step.getStartedAt());
        assertNull(step.getEndedAt());
        assertNull(step.getNote());
        assertTrue(copy.getParts().isEmpty());
        assertTrue(copy.getCalculations().isEmpty());
        assertEquals(TrialState.PLANNED, copy.getState());
        assertNull(copy.getMadeAt());
        assertNull(copy.getConclusion());
        assertNull(copy.getCost());
        assertNull(copy.getHours());
        assertEquals(118.0, detail(from, "actual"), "the other one is as it was");
    }

    @Test
    void copiedNumbersAreUnconfirmedUntilTheStepIsConfirmed() {
        Trial from = made();
        Trial copy = make(e -> Trials.copy(e, from, "X9", "Second"));
        Step step = copy.getSteps().getFirst();
        EObject row = (EObject) ((List<?>) detail(copy, "ramps")).getFirst();
        assertEquals(Origin.COPIED, Provenances.origin(step.getDetails(), bake.getEStructuralFeature("planned")));
        assertEquals(Origin.COPIED, Provenances.origin(row, ramp.getEStructuralFeature("minutes")));
        assertEquals(Origin.COPIED, Provenances.origin(step, ModelPackage.Literals.STEP__PLANNED_DURATION));
        assertEquals(Origin.COPIED, Provenances.origin(step.getUses().getFirst(), ModelPackage.Literals.MATERIAL_USE__PLANNED));
        assertTrue(copy.getSteps().stream().allMatch(Step::isUnconfirmed));
        edit(e -> Trials.confirmAsPlanned(e, step));
        assertFalse(step.isUnconfirmed());
        assertEquals("Ann", step.getConfirmedBy());
        assertEquals(NOW, step.getConfirmedAt());
        assertTrue(copy.getSteps().get(1).isUnconfirmed(), "one step at a time");
        session.undo();
        assertTrue(step.isUnconfirmed());
        assertNull(step.getConfirmedBy());
    }

    @Test
    void failedAndDiscardedNeedAReason() {
        Trial t = create(null, Map.of());
        for (TrialState s : List.of(TrialState.FAILED, TrialState.DISCARDED)) {
            assertEquals("status.reason", refused(e -> Trials.status(e, t, s, " ")));
        }
        edit(e -> Trials.status(e, t, TrialState.FAILED, " split "));
        assertEquals("split", t.getStateReason());
        edit(e -> Trials.status(e, t, TrialState.MADE, null));
        assertNull(t.getStateReason());
        assertEquals(NOW, t.getMadeAt());
        assertEquals("conclusion.empty", refused(e -> Trials.conclude(e, t, "")));
    }

    @Test
    void nothingIsDatedAhead() {
        Trial t = create(null, Map.of());
        Instant ahead = NOW.plusSeconds(1);
        assertEquals("future", refused(e -> Trials.addPart(e, t, null, PieceKind.PART, null, ahead)));
        Session later = ModelFactory.eINSTANCE.createSession();
        later.setAt(ahead);
        assertEquals("future", refused(e -> BenchSessions.add(e, later)));
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setCode("PU-A");
        edit(e -> e.add(e.project(), ModelPackage.Literals.PROJECT__GRADES, grade));
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode("L1");
        lot.setOpened(LocalDate.of(2026, 3, 2));
        assertEquals("future.day", refused(e -> Lots.add(e, grade, lot)));
        lot.setOpened(LocalDate.of(2026, 3, 1));
        lot.setExpires(LocalDate.of(2027, 1, 1));
        edit(e -> Lots.add(e, grade, lot));
        Lot twin = ModelFactory.eINSTANCE.createLot();
        twin.setCode("l1");
        assertEquals("lot.taken", refused(e -> Lots.add(e, grade, twin)));
        twin.setCode(" ");
        assertEquals("lot.code", refused(e -> Lots.add(e, grade, twin)));
    }

    @Test
    void sessionsGetTheNextFreeCode() {
        Session first = make(e -> BenchSessions.add(e, ModelFactory.eINSTANCE.createSession()));
        assertEquals("S01", first.getCode());
        assertEquals(NOW, first.getAt());
        Session twin = ModelFactory.eINSTANCE.createSession();
        twin.setCode("S01");
        assertEquals("session.taken", refused(e -> BenchSessions.add(e, twin)));
        assertEquals("S02", make(e -> BenchSessions.add(e, ModelFactory.eINSTANCE.createSession())).getCode());
    }

    @Test
    void anyTwoOfGrossTareAndNetGiveTheThird() {
        assertEquals(19.9, Weighings.net(25.0, 5.1, null), 1e-12);
        assertEquals(19.9, Weighings.net(null, 5.1, 19.9), 1e-12);
        assertEquals(19.9, Weighings.net(25.0, null, 19.9), 1e-12);
        assertEquals(19.9, Weighings.net(null, null, 19.9), 1e-12);
        Trial t = made();
        MaterialUse use = t.getSteps().getFirst().getUses().getFirst();
        assertEquals(19.9, Weighings.actual(use), 1e-12);
        var w = make(e -> Weighings.add(e, use, 12.0, null, 2.0, true, null));
        assertEquals(10.0, w.getTare(), 1e-12);
        assertTrue(w.isCorrection());
        assertEquals(NOW, w.getAt());
        assertEquals(21.9, Weighings.actual(use), 1e-12);
        assertEquals(25.0, make(e -> Weighings.add(e, use, null, 5.0, 20.0, false, null)).getGross(), 1e-12);
        assertEquals("weigh.contradiction", refused(e -> Weighings.add(e, use, 25.0, 5.0, 19.0, false, null)));
        assertEquals(24.88, Weighings.net(36.88, 12.0, null), "as a person takes it off, exactly");
        assertEquals("weigh.nothing", refused(e -> Weighings.add(e, use, 25.0, null, null, false, null)));
        assertEquals("weigh.negative", refused(e -> Weighings.add(e, use, null, null, -0.1, false, null)));
        assertEquals("weigh.negative", refused(e -> Weighings.add(e, use, 5.0, 6.0, null, false, null)));
        assertEquals("weigh.net", refused(e -> Weighings.add(e, use, 5.0, null, 6.0, false, null)));
    }

    @Test
    void aFrozenTargetSheetIsChangedByANewVersion() {
        TargetSheet v1 = make(e -> TargetSheets.add(e, ModelFactory.eINSTANCE.createTarget(), null));
        assertEquals(1, v1.getVersion());
        assertEquals("who.empty", refused(e -> TargetSheets.freeze(e, v1, "")));
        edit(e -> TargetSheets.freeze(e, v1, "Ann"));
        Target target = v1.getTargets().getFirst();
        assertEquals("sheet.already", refused(e -> TargetSheets.freeze(e, v1, "Ann")));
        assertEquals("edit.frozenSheet", refused(e -> e.set(target, ModelPackage.Literals.TARGET__LOW, 1.0)));
        assertEquals("sheet.frozen", refused(e -> TargetSheets.add(e, ModelFactory.eINSTANCE.createTarget(), null)));
        TargetSheet v2 = make(e -> TargetSheets.newVersion(e, "tighter than the gauge"));
        assertEquals(2, v2.getVersion());
        assertNull(v2.getFrozenAt());
        assertEquals(1, v2.getTargets().size());
        assertNotEquals(target.getId(), v2.getTargets().getFirst().getId());
        edit(e -> e.set(v2.getTargets().getFirst(), ModelPackage.Literals.TARGET__LOW, 1.0));
        assertNull(target.getLow());
        assertSame(v2, TargetSheets.current(session.project()));
    }

    private static Target target(String property, String spot) {
        Target target = ModelFactory.eINSTANCE.createTarget();
        target.setKey(ModelFactory.eINSTANCE.createPropertyKey());
        target.getKey().setProperty(property);
        target.getKey().setSpot(spot);
        return target;
    }

    @Test
    void aSheetHasOneTargetForAPropertyUnderOneSetOfConditions() {
        TargetSheet v1 = make(e -> TargetSheets.add(e, target("x.force", null), null));
        edit(e -> TargetSheets.add(e, target("x.force", "rim"), null));
        assertEquals("target.twice", refused(e -> TargetSheets.add(e, target("x.force", "rim"), null)));
        assertEquals(2, v1.getTargets().size());
        assertEquals("target.none", refused(e -> TargetSheets.remove(e, target("x.mass", null).getKey(), null)));
        edit(e -> TargetSheets.remove(e, target("x.force", "rim").getKey(), null));
        assertEquals(1, v1.getTargets().size());
        assertNull(v1.getTargets().getFirst().getKey().getSpot());
        edit(e -> TargetSheets.freeze(e, v1, "Ann"));
        assertEquals("sheet.frozen", refused(e -> TargetSheets.remove(e, target("x.force", null).getKey(), null)));
        TargetSheet v2 = make(e -> TargetSheets.remove(e, target("x.force", null).getKey(), "not needed"));
        assertEquals(2, v2.getVersion());
        assertEquals(0, v2.getTargets().size());
        assertEquals(1, v1.getTargets().size(), "the frozen one stays");
    }

    private static MaterialValue value(String property, Double sheet, String sheetSource, Double own) {
        MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
        value.setProperty(property);
        value.setUnit("g/cm3");
        value.setSheetValue(sheet);
        value.setSheetSource(sheetSource);
        value.setOwnValue(own);
        return value;
    }

    @Test
    void aPropertyNotedAgainReplacesWhatWasTypedBefore() {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        edit(e -> e.add(session.project(), ModelPackage.Literals.PROJECT__GRADES, grade));
        edit(e -> MaterialValues.note(e, grade, value("x.density", 1.5, "misread", null)));
        edit(e -> MaterialValues.note(e, grade, value("x.density", null, null, 1.04)));
        edit(e -> MaterialValues.note(e, grade, value("x.density", 1.05, "sheet 4", null)));
        assertEquals(1, grade.getValues().size());
        MaterialValue kept = grade.getValues().getFirst();
        assertEquals(1.05, kept.getSheetValue());
        assertEquals("sheet 4", kept.getSheetSource());
        assertEquals(1.04, kept.getOwnValue(), "the other of the two stays");
    }

    @Test
    void aRecipeIsFrozenFromAConfirmedTrialAndSaysWhatIsMissing() {
        Trial from = made();
        Trial copy = make(e -> Trials.copy(e, from, null, null));
        RefusedException no = assertThrows(RefusedException.class,
                () -> session.execute("freeze", e -> Recipes.freeze(e, copy, "R1", "Ann", "", List.of("2 parts more"))));
        assertTrue(no.getMessage().contains("2 parts more") && no.getMessage().contains("Bake gently"), no.getMessage());
        edit(e -> copy.getSteps().forEach(s -> Trials.confirmAsPlanned(e, s)));
        Recipe r1 = make(e -> Recipes.freeze(e, copy, "R1", "Ann", "40 to 44", List.of()));
        Recipe r2 = make(e -> Recipes.freeze(e, copy, "r1", "Ann", "41 to 43", List.of()));
        assertEquals(1, r1.getVersion());
        assertEquals(2, r2.getVersion());
        assertEquals(NOW, r1.getFrozenAt());
        assertFalse(r1.getPlan().getSteps().getFirst().isUnconfirmed());
        edit(e -> e.set(copy.getSteps().getFirst().getDetails(), bake.getEStructuralFeature("planned"), 60.0));
        EObject frozen = r1.getPlan().getSteps().getFirst().getDetails();
        assertEquals(120.0, frozen.eGet(bake.getEStructuralFeature("planned")), "the recipe does not follow its trial");
        assertEquals("edit.frozenRecipe", refused(e -> e.set(frozen, bake.getEStructuralFeature("planned"), 60.0)));
        assertEquals("recipe.code", refused(e -> Recipes.freeze(e, copy, " ", "Ann", "", List.of())));
    }
}
