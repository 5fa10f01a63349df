package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecipesTest {
    private static final Instant NOW = Instant.parse("2026-05-02T09:30:00Z");
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    @TempDir
    Path temp;

    private final EPackage data = EcoreFactory.eINSTANCE.createEPackage();
    private final EClass stir = EcoreFactory.eINSTANCE.createEClass();
    private ProjectSession session;
    private MaterialGrade grade;
    private Lot lot;
    private Session bench;
    private Trial trial;

    @BeforeEach
    void create() {
        data.setName("stirdata");
        data.setNsPrefix("stir");
        data.setNsURI("urn:flexwright:stir:1");
        stir.setName("Stir");
        data.getEClassifiers().add(stir);
        attribute("planned", EcorePackage.Literals.EDOUBLE_OBJECT, Map.of("role", "planned", "kind", "DURATION", "unit", "min"));
        attribute("tool", EcorePackage.Literals.ESTRING, Map.of("role", "planned"));
        attribute("scraped", EcorePackage.Literals.EBOOLEAN_OBJECT, Map.of("role", "planned"));
        attribute("turns", EcorePackage.Literals.EINTEGER_OBJECT, Map.of());
        attribute("actual", EcorePackage.Literals.EDOUBLE_OBJECT, Map.of("role", "actual", "of", "planned", "kind", "DURATION", "unit", "min"));
        session = store().create(temp.resolve("Dome.flexwright"), "Dome");
        edit(this::fill);
    }

    private ProjectStore store() {
        return new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "Ann", "1.0.0", List.of(new DetailsPackage(data, "demo", "1.0.0"))));
    }

    private void attribute(String name, org.eclipse.emf.ecore.EDataType type, Map<String, String> field) {
        EAttribute attribute = EcoreFactory.eINSTANCE.createEAttribute();
        attribute.setName(name);
        attribute.setEType(type);
        field.forEach((k, v) -> EcoreUtil.setAnnotation(attribute, FieldDescriptors.ANNOTATION, k, v));
        EcoreUtil.setAnnotation(attribute, FieldDescriptors.ANNOTATION, "label", name);
        stir.getEStructuralFeatures().add(attribute);
    }

    /** A trial that was made: weighed with a balance in a session, cast in a mould. */
    private void fill(Edit e) {
        Project project = e.project();
        grade = MODEL.createMaterialGrade();
        grade.setCode("PU-A");
        grade.setName("part A");
        MaterialValue value = MODEL.createMaterialValue();
        value.setProperty("x.density");
        value.setUnit("g/cm3");
        value.setSheetValue(1.05);
        grade.getValues().add(value);
        e.add(project, ModelPackage.Literals.PROJECT__GRADES, grade);
        lot = lot("L1");
        Lots.add(e, grade, lot);
        Lots.add(e, grade, lot("L2"));
        Instrument balance = MODEL.createInstrument();
        balance.setName("balance");
        balance.setResolution(0.01);
        e.add(project, ModelPackage.Literals.PROJECT__INSTRUMENTS, balance);
        bench = MODEL.createSession();
        bench.setRoomC(21.0);
        bench.getInstruments().add(balance);
        BenchSessions.add(e, bench);
        Mould mould = MODEL.createMould();
        mould.setName("four domes");
        mould.setCastsBefore(7);
        Moulds.add(e, mould);
        trial = MODEL.createTrial();
        trial.setCode("T08");
        trial.setTitle("dome");
        trial.setMould(mould);
        for (String title : List.of("Weigh", "Mix", "Pour")) {
            Step step = MODEL.createStep();
            step.setKind("demo.stir");
            step.setTitle(title);
            step.setSession(bench);
            step.setDetails(EcoreUtil.create(stir));
            trial.getSteps().add(step);
        }
        MaterialUse use = MODEL.createMaterialUse();
        use.setRole(PartRole.COMPONENT_A);
        use.setGrade(grade);
        use.setLot(lot);
        use.setPlanned(20.0);
        trial.getSteps().getFirst().getUses().add(use);
        e.add(project, ModelPackage.Literals.PROJECT__TRIALS, trial);
        Weighings.add(e, use, null, null, 20.02, false, balance);
        Moulds.cast(e, mould, trial, "wax", true, 3);
    }

    private static Lot lot(String code) {
        Lot lot = MODEL.createLot();
        lot.setCode(code);
        return lot;
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void edit(Consumer<Edit> work) {
        session.execute("edit", work);
    }

    private <T> T make(Function<Edit, T> work) {
        List<T> made = new ArrayList<>();
        edit(e -> made.add(work.apply(e)));
        return made.getFirst();
    }

    private Recipe freeze(Trial from, String limits) {
        edit(e -> from.getSteps().stream().filter(Step::isUnconfirmed).forEach(s -> Trials.confirmAsPlanned(e, s)));
        return make(e -> Recipes.freeze(e, from, "R1", "Ann", limits, List.of()));
    }

    /** Everything inside that points at something outside, but the trial and the target sheet it comes from, which are frozen or only named. */
    private static List<String> pointsOutside(Recipe recipe) {
        List<String> outside = new ArrayList<>();
        recipe.eAllContents().forEachRemaining(object -> {
            for (EReference reference : object.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isContainer()) {
                    Object value = object.eGet(reference);
                    List<?> all = value instanceof List<?> many ? many : value == null ? List.of() : List.of(value);
                    all.stream().filter(target -> !EcoreUtil.isAncestor(recipe, (EObject) target)).forEach(t -> outside.add(object.eClass().getName() + "." + reference
                            .getName()));
                }
            }
        });
        return outside;
    }

    @Test
    void aFrozenRecipeHoldsAllItRefersToAndFollowsNothing() {
        Recipe r1 = freeze(trial, "0.7 to 0.9 N");
        assertEquals(List.of(), pointsOutside(r1));
        assertEquals(1, r1.getMaterials().size());
        MaterialGrade kept = r1.getMaterials().getFirst();
        assertNotSame(grade, kept);
        assertEquals(1.05, kept.getValues().getFirst().getSheetValue());
        assertEquals(List.of("L1"), kept.getLots().stream().map(Lot::getCode).toList(), "only the lot that went in");
        assertEquals(20.02, r1.getAsMade().getSteps().getFirst().getUses().getFirst().getWeighings().getFirst().getNet());
        assertSame(kept, r1.getPlan().getSteps().getFirst().getUses().getFirst().getGrade());
        assertEquals(21.0, r1.getAsMade().getSteps().getFirst().getSession().getRoomC());
        assertEquals(8, r1.getMould().getCastsBefore(), "seven before and the one counted");
        assertNull(r1.getTargets(), "there is no frozen sheet");
        EObject before = EcoreUtil.copy(r1);
        edit(e -> {
            e.set(grade, ModelPackage.Literals.MATERIAL_GRADE__NAME, "renamed");
            e.set(grade.getValues().getFirst(), ModelPackage.Literals.MATERIAL_VALUE__SHEET_VALUE, 1.5);
            e.set(bench, ModelPackage.Literals.SESSION__ROOM_C, 5.0);
            e.set(trial.getSteps().getFirst().getUses().getFirst(), ModelPackage.Literals.MATERIAL_USE__PLANNED, 1.0);
            e.remove(trial.getSteps().get(1));
            e.remove(lot);
        });
        assertTrue(EcoreUtil.equals(before, EcoreUtil.copy(r1)), "nothing of it changed");
        assertThrows(RefusedException.class, () -> edit(e -> e.set(kept, ModelPackage.Literals.MATERIAL_GRADE__NAME, "no")));
        session.save();
        session.close();
        session = store().open(temp.resolve("Dome.flexwright"));
        assertTrue(EcoreUtil.equals(before, EcoreUtil.copy(session.project().getRecipes().getFirst())), "and the file keeps it");
    }

    @Test
    void editingAFrozenRecipeMakesATrialOfToday() {
        Recipe r1 = freeze(trial, null);
        edit(e -> e.remove(lot));
        Trial next = make(e -> Recipes.edit(e, r1, null, null));
        MaterialUse use = next.getSteps().getFirst().getUses().getFirst();
        assertSame(grade, use.getGrade(), "the material of today, not the frozen copy");
        assertEquals("L1", use.getLot().getCode());
        assertSame(grade, use.getLot().eContainer(), "a lot that was thrown out comes back as it was frozen");
        assertNotSame(r1.getMaterials().getFirst().getLots().getFirst(), use.getLot());
        assertSame(session.project().getMoulds().getFirst(), next.getMould());
        assertTrue(next.getSteps().getFirst().isUnconfirmed());
        assertTrue(use.getWeighings().isEmpty());
        Recipe r2 = freeze(next, null);
        assertEquals(2, r2.getVersion());
        assertEquals(List.of(r1, r2), Recipes.versions(session.project(), "r1"));
        assertEquals(1, r1.getVersion());
    }

    @Test
    void aRecipeDiffersInNothingFromItself() {
        Recipe r1 = freeze(trial, "limits");
        assertEquals(List.of(), RecipeDifference.between(r1, r1));
        Recipe again = freeze(make(e -> Recipes.edit(e, r1, null, r1.getPlan().getTitle())), "limits");
        assertEquals(List.of(), RecipeDifference.between(r1, again));
        assertEquals("", again.getChanges());
        assertNull(r1.getChanges(), "there was none before");
    }

    /** One kind of change to a trial that shall become the next version, and words that must name it. */
    private record Named(String words, Consumer<Edit> change) {
    }

    private List<Named> changes(Trial t, Random random) {
        Step step = t.getSteps().get(random.nextInt(t.getSteps().size()));
        EObject details = step.getDetails();
        MaterialUse use = t.getSteps().stream().flatMap(s -> s.getUses().stream()).findFirst().orElseThrow();
        double number = 1 + random.nextInt(1000) / 7.0;
        Step added = MODEL.createStep();
        added.setKind("demo.rest");
        added.setTitle("Rest " + random.nextInt(99));
        MaterialUse more = MODEL.createMaterialUse();
        more.setRole(PartRole.PIGMENT);
        more.setPlanned(number);
        return Arrays.asList(
                new Named("planned: nothing → ", e -> e.set(details, stir.getEStructuralFeature("planned"), number)),
                new Named("tool: nothing → spatula " + number, e -> e.set(details, stir.getEStructuralFeature("tool"), "spatula " + number)),
                new Named("scraped: nothing → ", e -> e.set(details, stir.getEStructuralFeature("scraped"), random.nextBoolean())),
                new Named("turns: nothing → ", e -> e.set(details, stir.getEStructuralFeature("turns"), random.nextInt(500))),
                new Named("Planned: 20 g → ", e -> e.set(use, ModelPackage.Literals.MATERIAL_USE__PLANNED, number + 30)),
                new Named("Planned: 20 g → 20.000001", e -> e.set(use, ModelPackage.Literals.MATERIAL_USE__PLANNED, 20.000001)),
                new Named("lot: L1 → L2", e -> e.set(use, ModelPackage.Literals.MATERIAL_USE__LOT, grade.getLots().get(1))),
                new Named("Step added: ", e -> e.add(t, ModelPackage.Literals.TRIAL__STEPS, random.nextInt(4), added)),
                new Named("Step removed: 3 Pour", e -> e.remove(t.getSteps().get(2))),
                new Named("Step moved: Weigh, from place 1 to 3", e -> e.move(t, ModelPackage.Literals.TRIAL__STEPS, t.getSteps().get(0), 2)),
                new Named("pigment added", e -> e.add(step, ModelPackage.Literals.STEP__USES, more)),
                new Named("Density", e -> e.set(grade.getValues().getFirst(), ModelPackage.Literals.MATERIAL_VALUE__OWN_VALUE, number)),
                new Named("Idea: nothing → other " + number, e -> e.set(t, ModelPackage.Literals.TRIAL__IDEA, "other " + number)));
    }

    @Test
    void everyChangeIsNamedAndUndoLosesNothing() {
        Random random = new Random(20260502);
        Recipe r1 = freeze(trial, null);
        int count = changes(trial, random).size();
        for (int round = 0; round < 3 * count; round++) {
            Trial t = make(e -> Recipes.edit(e, r1, null, r1.getPlan().getTitle()));
            Named named = changes(t, random).get(round % count);
            edit(named.change());
            String words = named.words().equals("Density") ? "x.density" : named.words();
            Recipe changed = freeze(t, null);
            List<String> said = RecipeDifference.between(r1, changed);
            assertEquals(1, said.size(), named.words() + " is said as " + said);
            assertTrue(said.getFirst().toLowerCase().contains(words.toLowerCase()), words + " is not in " + said);
            assertFalse(said.getFirst().contains("{"), said.getFirst());
            while (session.undoName() != null && session.project().getTrials().contains(t)) {
                session.undo();
            }
            assertEquals(List.of(r1), session.project().getRecipes());
        }
        session.redo();
        Recipe back = freeze(session.project().getTrials().getLast(), null);
        assertEquals(List.of(), RecipeDifference.between(r1, back));
    }

    @Test
    void aMouldCountsEachTrialOnce() {
        Mould mould = session.project().getMoulds().getFirst();
        assertEquals("M1", mould.getCode());
        assertEquals(8, Moulds.casts(mould));
        assertNull(Moulds.left(mould));
        assertThrows(RefusedException.class, () -> edit(e -> Moulds.cast(e, mould, trial, null, null, null)));
        assertThrows(RefusedException.class, () -> edit(e -> Moulds.cast(e, mould, null, null, null, -1)));
        edit(e -> e.set(mould, ModelPackage.Literals.MOULD__CASTS_LIMIT, 9));
        assertEquals(1, Moulds.left(mould));
        edit(e -> Moulds.cast(e, mould, null, "wax", false, 2));
        assertEquals(0, Moulds.left(mould));
        Mould twin = MODEL.createMould();
        twin.setCode("m1");
        assertThrows(RefusedException.class, () -> edit(e -> Moulds.add(e, twin)));
    }
}
