package org.flexwright.mixing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.batch.BatchPlan;
import org.flexwright.core.batch.BatchPlanner;
import org.flexwright.core.batch.BatchRun;
import org.flexwright.core.batch.BatchWish;
import org.flexwright.core.batch.LotPick;
import org.flexwright.core.batch.MaterialNeed;
import org.flexwright.core.batch.Schedule;
import org.flexwright.core.batch.Spares;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.registry.Registries;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Mould;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** So many of a recipe: pots inside their working time, lots, one pair of hands. */
class TenMoreTest {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;
    private static final ZoneId ZONE = ZoneId.of("UTC");
    private static final Instant START = Instant.parse("2027-04-12T08:00:00Z");

    /** A step of another capability, as the casting ones say it. */
    private record Other(String id, boolean fillsMould, StepTime takes) implements StepKind {
        @Override
        public String title() {
            return id;
        }

        @Override
        public String summary() {
            return "";
        }

        @Override
        public EClass details() {
            return null;
        }

        @Override
        public Optional<StepTime> time(Step step, Trial trial) {
            return fillsMould ? Optional.ofNullable(step.getPlannedDuration()).map(minutes -> StepTime.hands(minutes, null)) : Optional.of(takes);
        }
    }

    private static final Registries KINDS = new Registries(List.of(), List.of(new WeighStep(), new MixStep(), new DegasStep(), new Other("x.fill", true, null),
            new Other("x.prepare", false, new StepTime(StepTime.usual(10, 20, 60), 0, null)), new Other("x.cure", false, StepTime.waiting(24 * 60, org.flexwright.core.Source
                    .commonPractice())), new Other("x.demould", false, new StepTime(StepTime.usual(5, 10, 30), 0, 16 * 60.0))), List.of(), List.of(), List.of(), List.of());

    private final Project project = MODEL.createProject();
    private final Recipe recipe = MODEL.createRecipe();
    private final WeighDetails weigh = MixingDataFactory.eINSTANCE.createWeighDetails();
    private final MixDetails mix = MixingDataFactory.eINSTANCE.createMixDetails();
    private final DegasDetails degas = MixingDataFactory.eINSTANCE.createDegasDetails();
    private final Step fill = step("x.fill");

    TenMoreTest() {
        recipe.setCode("R1");
        recipe.setVersion(1);
        Trial plan = MODEL.createTrial();
        recipe.setPlan(plan);
        Step weighing = step(WeighStep.ID);
        weighing.setDetails(weigh);
        weigh.setPartCount(3);
        weigh.setPartVolume(12.0);
        weigh.setExtra(15.0);
        weigh.setExtraKind(Extra.ALLOWANCE);
        use(weighing, PartRole.COMPONENT_A, "PU-A", 22.88);
        use(weighing, PartRole.COMPONENT_B, "PU-B", 21.57);
        Step mixing = step(MixStep.ID);
        mixing.setDetails(mix);
        mix.setPlannedMinutes(2.0);
        Step vacuum = step(DegasStep.ID);
        vacuum.setDetails(degas);
        degas.setPlannedMinutes(4.0);
        degas.setCupVolume(250.0);
        fill.setPlannedDuration(3.0);
        plan.getSteps().addAll(List.of(step("x.prepare"), weighing, mixing, vacuum, fill, step("x.cure"), step("x.demould")));
    }

    private static Step step(String kind) {
        Step step = MODEL.createStep();
        step.setKind(kind);
        step.setTitle(kind);
        return step;
    }

    private void use(Step step, PartRole role, String code, double grams) {
        MaterialGrade frozen = MODEL.createMaterialGrade();
        frozen.setCode(code);
        frozen.getLots().add(lot("L1", null, 1000));
        recipe.getMaterials().add(frozen);
        MaterialUse use = MODEL.createMaterialUse();
        use.setRole(role);
        use.setGrade(frozen);
        use.setLot(frozen.getLots().getFirst());
        use.setPlanned(grams);
        step.getUses().add(use);
        MaterialGrade today = MODEL.createMaterialGrade();
        today.setCode(code);
        project.getGrades().add(today);
    }

    private static Lot lot(String code, String expires, double grams) {
        Lot lot = MODEL.createLot();
        lot.setCode(code);
        lot.setExpires(expires == null ? null : LocalDate.parse(expires));
        lot.setAmount(grams);
        return lot;
    }

    private MaterialGrade grade(int at) {
        return project.getGrades().get(at);
    }

    private BatchPlan plan(BatchWish wish) {
        Outcome<BatchPlan> outcome = BatchPlanner.plan(project, recipe, wish, KINDS);
        return assertInstanceOf(Outcome.Done.class, outcome, outcome.toString()) instanceof Outcome.Done<?> done ? (BatchPlan) done.results() : null;
    }

    private static BatchWish wish(int parts) {
        return BatchWish.of(parts, START, ZONE).withSpares(0);
    }

    private Mould mould(int cavities) {
        Mould mould = MODEL.createMould();
        mould.setCode("M" + (project.getMoulds().size() + 1));
        mould.setCavities(cavities);
        project.getMoulds().add(mould);
        return mould;
    }

    /** 6 min pass before filling, a part needs 1.3 min: 11.5 min hold four parts: 6 + 5.2. */
    @Test
    void aShortWorkingTimeForcesThreePots() {
        mix.setWorkingTime(11.5);
        BatchPlan plan = plan(wish(10));
        assertEquals(List.of(4, 3, 3), plan.runs().stream().map(BatchRun::parts).toList());
        BatchRun first = plan.runs().getFirst();
        assertEquals(4 * 22.88 / 3, first.grams().get(1).getFirst(), 1e-9);
        assertEquals(1.3 * 4, first.pot().needs(), 1e-9);
        assertEquals(Duration.ofMinutes(6 + 4), Duration.between(first.contact(), first.filled()));
        assertEquals(3 * 4 * 12 * 1.15, first.pot().cup(), 1e-9, "the cup is a third full at most");
        assertTrue(plan.why().contains("4 parts"), plan.why());
    }

    @Test
    void aWorkingTimeShorterThanTheFillIsRefused() {
        mix.setWorkingTime(7.2);
        Outcome.Refused<BatchPlan> no = assertInstanceOf(Outcome.Refused.class, BatchPlanner.plan(project, recipe, wish(10), KINDS));
        assertEquals("workingTime", no.input());
        assertTrue(no.why().text().contains("7.2 min") && no.why().text().contains("1.3 min"), no.why().text());
        for (int wrong : new int[] { 0, -1, 10_001 }) {
            assertInstanceOf(Outcome.Refused.class, BatchPlanner.plan(project, recipe, BatchWish.of(wrong, START, ZONE), KINDS));
        }
        weigh.setPartCount(null);
        assertEquals("partCount", assertInstanceOf(Outcome.Refused.class, BatchPlanner.plan(project, recipe, wish(10), KINDS)).input());
    }

    /** One lot is expired, one opened, one good for long: the expired one is named and never taken. */
    @Test
    void anExpiredLotIsNamedAndNeverTaken() {
        Lot opened = lot("A-open", "2028-01-01", 40);
        opened.setOpened(LocalDate.parse("2026-01-01"));
        grade(0).getLots().addAll(List.of(lot("A-old", "2027-03-31", 900), lot("A-late", "2029-01-01", 500), lot("A-soon", "2027-12-31", 500), opened));
        grade(1).getLots().add(lot("L1", null, 60));
        grade(1).setPackSize(25.0);
        MaterialNeed a = plan(wish(10).withMoulds(List.of(mould(4)))).needs().getFirst();
        assertEquals(List.of("A-open", "A-soon"), a.lots().stream().map(Lot::getCode).toList());
        assertEquals(List.of("A-old"), a.expired().stream().map(Lot::getCode).toList());
        assertEquals(900, a.expiredLeft());
        assertEquals(0, a.missing());
        assertTrue(a.sentences().stream().anyMatch(s -> s.contains("A-old") && s.contains("2027-03-31")), a.sentences().toString());
        assertEquals(List.of("A-open", "A-soon"), a.newLots().stream().map(Lot::getCode).toList());
        MaterialNeed b = plan(wish(10)).needs().get(1);
        assertEquals(10 * 21.57 / 3 - 60, b.missing(), 1e-9);
        assertEquals(1, b.packs());
        assertTrue(b.newLots().isEmpty(), "the recipe was made with a lot of that number");
    }

    @Test
    void sparesComeFromTheOwnRecordAndSayHowLittleItTells() {
        assertEquals(1, Spares.of(project, recipe, 10).number());
        assertNull(Spares.of(project, recipe, 10).share());
        Trial from = MODEL.createTrial();
        recipe.setFrom(from);
        project.getTrials().add(from);
        project.getRecipes().add(recipe);
        for (int i = 0; i < 5; i++) {
            Part part = MODEL.createPart();
            part.setPieceKind(PieceKind.PART);
            part.setFailed(i == 0);
            from.getParts().add(part);
        }
        Spares spares = Spares.of(project, recipe, 10);
        assertEquals(0.2, spares.share().likely(), 1e-12);
        assertEquals(0.0051, spares.share().low(), 5e-5, "exact interval of 1 of 5");
        assertEquals(0.7164, spares.share().high(), 5e-5, "exact interval of 1 of 5");
        assertEquals(3, spares.number(), "13 made give 10 good at one reject in five");
        assertEquals(26, spares.most());
    }

    /** Pots cover the parts, each inside its working time; grams add up; no lot gives more than it has; one pair of hands; moulds are used one cast at a time. */
    @Test
    void whateverIsPlannedHoldsTogether() {
        Random random = new Random(20270412);
        int planned = 0;
        for (int round = 0; round < 400; round++) {
            mix.setWorkingTime(random.nextInt(5) == 0 ? null : Double.valueOf(6 + random.nextInt(40)));
            mix.setWorkingTimeMass(random.nextBoolean() ? null : Double.valueOf(50 + random.nextInt(300)));
            mix.setPlannedMinutes(1.0 + random.nextInt(5));
            degas.setPlannedMinutes(1.0 + random.nextInt(8));
            fill.setPlannedDuration(0.5 + random.nextInt(12));
            weigh.setDeadVolume(random.nextBoolean() ? null : Double.valueOf(random.nextInt(5)));
            weigh.setExtraKind(random.nextBoolean() ? Extra.LOSS : Extra.ALLOWANCE);
            project.getMoulds().clear();
            List<Mould> moulds = new ArrayList<>();
            for (int i = random.nextInt(3); i > 0; i--) {
                Mould mould = mould(1 + random.nextInt(6));
                mould.setTurnMinutes(random.nextBoolean() ? null : Double.valueOf(60 * random.nextInt(40)));
                moulds.add(mould);
            }
            project.getGrades().forEach(grade -> {
                grade.getLots().clear();
                for (int i = random.nextInt(4); i > 0; i--) {
                    Lot lot = lot("L" + i, LocalDate.parse("2027-04-01").plusDays(random.nextInt(40)).toString(), random.nextInt(300));
                    lot.setOpened(random.nextBoolean() ? null : LocalDate.parse("2026-01-01").plusDays(random.nextInt(300)));
                    grade.getLots().add(lot);
                }
            });
            int parts = 1 + random.nextInt(40);
            Outcome<BatchPlan> outcome = BatchPlanner.plan(project, recipe, wish(parts).withMoulds(moulds), KINDS);
            if (outcome instanceof Outcome.Done<BatchPlan> done) {
                planned++;
                holdsTogether(done.results(), parts);
            } else {
                assertEquals("workingTime", ((Outcome.Refused<BatchPlan>) outcome).input());
            }
        }
        assertTrue(planned > 200, "only " + planned + " could be planned");
    }

    private void holdsTogether(BatchPlan plan, int parts) {
        assertEquals(parts, plan.runs().stream().mapToInt(BatchRun::parts).sum());
        for (BatchRun run : plan.runs()) {
            assertTrue(run.parts() >= 1 && (run.mould() == null || run.parts() <= run.mould().getCavities()));
            double minutes = Duration.between(run.contact(), run.filled()).toMillis() / 60_000.0;
            if (run.pot().workingTime() != null) {
                assertTrue(minutes <= run.pot().workingTime().low() + 1e-4, minutes + " against " + run.pot().workingTime());
                assertTrue(minutes - run.pot().fill() + run.pot().needs() <= run.pot().workingTime().low() + 1e-4, "with the reserve");
            }
            assertTrue(run.pot().net() < run.pot().mass());
        }
        Map<Lot, Double> taken = new HashMap<>();
        for (int use = 0; use < 2; use++) {
            MaterialNeed need = plan.needs().get(use);
            int u = use;
            double sum = plan.runs().stream().mapToDouble(run -> run.grams().get(1).get(u)).sum();
            assertEquals(sum, need.grams(), 1e-6);
            assertEquals(need.grams(), need.missing() + need.picks().stream().mapToDouble(LotPick::grams).sum(), 1e-6);
            for (LotPick pick : need.picks()) {
                BatchRun run = plan.runs().get(pick.run() - 1);
                assertFalse(pick.lot().getExpires().isBefore(run.contact().atZone(ZONE).toLocalDate()), "expired " + pick);
                assertTrue(pick.grams() > 0);
                taken.merge(pick.lot(), pick.grams(), Double::sum);
            }
        }
        taken.forEach((lot, grams) -> assertTrue(grams <= lot.getAmount() + 1e-6, grams + " g out of " + lot.getAmount()));
        List<Schedule.Item> hands = plan.schedule().items().stream().filter(item -> item.kind() == Schedule.Kind.HANDS).toList();
        for (int i = 1; i < hands.size(); i++) {
            assertFalse(hands.get(i).start().isBefore(hands.get(i - 1).end()), hands.get(i - 1) + " and " + hands.get(i));
        }
        for (Schedule.Item item : hands) {
            LocalTime from = item.start().atZone(ZONE).toLocalTime();
            assertTrue(!from.isBefore(LocalTime.of(8, 0)) && !item.end().isAfter(item.start().atZone(ZONE).toLocalDate().atTime(18, 0).atZone(ZONE).toInstant()), item.toString());
        }
        for (BatchRun run : plan.runs()) {
            plan.runs().stream().filter(other -> other.number() < run.number() && other.mould() == run.mould()).forEach(other -> assertFalse(run.begin().isBefore(other.free()),
                    "the mould is still in use"));
            if (run.mould() != null && run.mould().getTurnMinutes() != null) {
                assertFalse(run.free().isBefore(run.filled().plusSeconds((long) (60 * run.mould().getTurnMinutes()))));
            }
        }
    }

    @Test
    void whatIsNotKnownIsNotCountedAndNamed() {
        grade(0).getLots().add(lot("L1", null, 1000));
        grade(1).getLots().add(lot("L1", null, 1000));
        BatchPlan bare = plan(wish(9));
        assertNull(bare.cost().total());
        assertFalse(bare.cost().complete());
        assertEquals("not known", bare.cost().perGoodPartText());
        project.getGrades().forEach(grade -> grade.getLots().getFirst().setPrice(30.0));
        project.setCupPrice(0.5);
        BatchPlan some = plan(wish(9));
        double mixed = 3 * (22.88 + 21.57) * 0.03;
        assertEquals(mixed + 0.5, some.cost().total().likely(), 1e-9);
        assertEquals(mixed / 1.15, share(some, "material"), 1e-9);
        assertEquals(mixed - mixed / 1.15, share(some, "loss"), 1e-9);
        assertTrue(some.cost().perGoodPartText().startsWith("at least "), some.cost().perGoodPartText());
        assertTrue(some.cost().missing().stream().anyMatch(m -> m.contains("hour")), some.cost().missing().toString());
        Mould mould = mould(3);
        mould.setPrice(40.0);
        mould.setCastsLimit(20);
        project.setHourlyRate(20.0);
        BatchPlan more = plan(wish(9).withMoulds(List.of(mould)));
        assertEquals(3 * 40.0 / 20, share(more, "mould"), 1e-9);
        assertEquals(more.hands().likely() / 60 * 20, share(more, "work"), 1e-9);
        assertEquals(1.5, share(more, "cups"), 1e-9);
        assertEquals(List.of("The share of rejects: there are no earlier parts"), more.cost().missing());
    }

    private static double share(BatchPlan plan, String id) {
        return plan.cost().shares().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow().eur().likely();
    }

    @Test
    void aMouldNearItsLimitIsSaid() {
        Mould mould = mould(4);
        mould.setCastsBefore(23);
        mould.setCastsLimit(25);
        BatchPlan plan = plan(wish(12).withMoulds(List.of(mould)));
        assertSame(mould, plan.runs().getFirst().mould());
        assertTrue(plan.remarks().stream().anyMatch(r -> r.message().text().contains("23 of 25")), plan.remarks().toString());
    }
}
