package org.flexwright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.safety.rule.OldSheetRule;
import org.flexwright.safety.rule.SheetRule;
import org.flexwright.safety.sheet.HazardStatements;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PromptsAndSheetsTest {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private final SafetyPrompts prompts = new SafetyPrompts();
    private Project project;
    private Trial trial;
    private Step step;
    private Session session;

    @BeforeEach
    void aTrialBeingMade() {
        project = MODEL.createProject();
        session = session("S1");
        trial = MODEL.createTrial();
        trial.setCode("T05");
        trial.setState(TrialState.MAKING);
        project.getTrials().add(trial);
        step = MODEL.createStep();
        step.setId("weigh");
        step.setTitle("Weigh");
        step.setSession(session);
        trial.getSteps().add(step);
    }

    @Test
    void nothingInTheStepNoPrompts() {
        assertEquals(List.of(), prompts.prompts(step, trial));
        use("CLAY", "", PartRole.MOULD);
        assertEquals(List.of(), prompts.prompts(step, trial));
    }

    @Test
    void aPolyurethaneWithoutStatementsAsksForBothSides() {
        use("PU-A", "pu-60a", PartRole.COMPONENT_A);
        assertEquals(List.of("safety.sheet", "safety.isocyanate", "safety.polyol"), ids());
        HazardPrompt isocyanate = find("safety.isocyanate");
        assertTrue(isocyanate.hazard().text().contains("look for these on YOUR sheet: H334 may cause allergy or asthma"), isocyanate.hazard().text());
        assertTrue(isocyanate.controls().text().contains("once sensitised, stop for good"));
        assertTrue(isocyanate.needsSheet());
    }

    @Test
    void theSheetsStatementsTellWhichSideHoldsTheIsocyanate() {
        use("PU-A", "pu-60a", PartRole.COMPONENT_A).getGrade().getHazards().addAll(List.of("H334", "H317"));
        use("PU-B", "pu-60a", PartRole.COMPONENT_B).getGrade().getHazards().add("H360FD");
        assertTrue(find("safety.isocyanate").hazard().text().contains("(PU-A)"));
        assertTrue(find("safety.polyol").hazard().text().contains("(PU-B)"));
        assertTrue(find("safety.statements.PU-A").hazard().text().contains("H317 may cause an allergic skin reaction"));
        assertTrue(find("safety.statements.PU-B").hazard().text().contains("H360 may damage fertility"));
    }

    @Test
    void eachFamilyAndRoleHasItsPrompt() {
        use("SI", "silicone-add-00-30", PartRole.SINGLE);
        use("TIN", "silicone-tin-10-40a", PartRole.SINGLE);
        use("RESIN", "photopolymer-50a", PartRole.SINGLE);
        use("STRAND", "tpu-85a", PartRole.SINGLE);
        use("IPA", "", PartRole.WASH);
        use("OIL", "", PartRole.THINNER);
        use("CHALK", "", PartRole.FILLER);
        assertEquals(List.of("safety.sheet", "safety.silicone-add", "safety.silicone-tin", "safety.photopolymer", "safety.solvent", "safety.thinner", "safety.powder",
                "safety.filament"), ids());
        assertTrue(find("safety.solvent").hazard().text().contains("near the liquid whatever the mean of the room says"));
        for (HazardPrompt prompt : prompts.prompts(step, trial)) {
            assertFalse(prompt.hazard().text().isBlank());
            assertFalse(prompt.controls().text().isBlank());
        }
    }

    @Test
    void isocyanateAndAlcoholInOneStep() {
        use("PU-A", "pu-60a", PartRole.COMPONENT_A);
        assertFalse(ids().contains("safety.alcohol-isocyanate"));
        use("IPA", "", PartRole.WASH);
        assertTrue(ids().contains("safety.alcohol-isocyanate"));
    }

    @Test
    void statementsAreReadFromWhatPeopleType() {
        assertEquals(List.of("H302", "H312", "H334", "EUH204"), List.copyOf(HazardStatements.codes(List.of("h302+H312", "H 334", "EUH 204", "none"))));
        assertEquals("H999", HazardStatements.list(List.of("H999")));
        HazardStatements.known().forEach(code -> assertFalse(HazardStatements.words(code).orElseThrow().isBlank(), code));
    }

    @Test
    void theNextStepStopsUntilItsSheetsAreTicked() {
        Lot lot = use("PU-A", "pu-60a", PartRole.COMPONENT_A).getLot();
        Finding stop = only(new SheetRule());
        assertEquals(Severity.STOP, stop.severity());
        assertEquals("weigh", stop.subject());
        assertTrue(stop.message().text().contains("PU-A/L1"), stop.message().text());
        tick(session, lot, LocalDate.of(2026, 1, 15), "4");
        assertEquals(List.of(), find(new SheetRule()));
    }

    @Test
    void aTickHoldsForOneSessionAndLot() {
        Lot lot = use("PU-A", "pu-60a", PartRole.COMPONENT_A).getLot();
        tick(session("S2"), lot, LocalDate.of(2026, 1, 15), "4");
        assertEquals(1, SheetTicks.missing(project, step).size());
        tick(session, MODEL.createLot(), LocalDate.of(2026, 1, 15), "4");
        assertEquals(1, SheetTicks.missing(project, step).size());
        tick(session, lot, LocalDate.of(2026, 1, 15), "4");
        assertEquals(List.of(), SheetTicks.missing(project, step));
    }

    @Test
    void aTickWithoutDateOrRevisionIsNone() {
        Lot lot = use("PU-A", "pu-60a", PartRole.COMPONENT_A).getLot();
        tick(session, lot, null, "4");
        tick(session, lot, LocalDate.of(2026, 1, 15), " ");
        assertEquals(1, SheetTicks.missing(project, step).size());
    }

    @Test
    void aTickForOneMaterialDoesNotCountForAnotherWithoutLot() {
        Lot lot = use("PU-A", "pu-60a", PartRole.COMPONENT_A).getLot();
        MaterialUse nameless = use("PU-B", "pu-60a", PartRole.COMPONENT_B);
        nameless.setLot(null);
        tick(session, lot, LocalDate.of(2026, 1, 15), "4");
        assertTrue(only(new SheetRule()).remedy().text().contains("Name the lot of PU-B"));
    }

    @Test
    void doneWithoutIsACautionAndAPlanIsLeftAlone() {
        use("PU-A", "pu-60a", PartRole.COMPONENT_A);
        step.setState(StepState.DONE);
        assertEquals(Severity.CAUTION, only(new SheetRule()).severity());
        step.setState(StepState.SKIPPED);
        assertEquals(List.of(), find(new SheetRule()));
        step.setState(StepState.PLANNED);
        trial.setState(TrialState.PLANNED);
        assertEquals(Severity.STOP, only(new SheetRule()).severity(), "its session is set: it is about to begin");
        step.setSession(null);
        assertEquals(List.of(), find(new SheetRule()));
        trial.setState(TrialState.MAKING);
        assertTrue(only(new SheetRule()).remedy().text().contains("Give the step its session"));
    }

    @Test
    void oneFindingForALotUsedInTwoSteps() {
        MaterialUse first = use("PU-A", "pu-60a", PartRole.COMPONENT_A);
        step.setState(StepState.DONE);
        Step second = MODEL.createStep();
        second.setId("pour");
        second.setTitle("Pour");
        second.setSession(session);
        second.setState(StepState.RUNNING);
        MaterialUse again = MODEL.createMaterialUse();
        again.setGrade(first.getGrade());
        again.setLot(first.getLot());
        second.getUses().add(again);
        trial.getSteps().add(second);
        assertEquals(1, find(new SheetRule()).size());
    }

    @Test
    void anOlderSheetThanTheLotsOwnIsNamed() {
        Lot lot = use("PU-A", "pu-60a", PartRole.COMPONENT_A).getLot();
        lot.setSheetDate(LocalDate.of(2026, 1, 1));
        tick(session, lot, LocalDate.of(2026, 1, 1), "4");
        assertEquals(List.of(), find(new OldSheetRule()));
        tick(session, lot, LocalDate.of(2024, 5, 1), "3");
        assertTrue(only(new OldSheetRule()).message().text().contains("2024-05-01"));
    }

    private MaterialUse use(String code, String family, PartRole role) {
        MaterialGrade grade = MODEL.createMaterialGrade();
        grade.setId(code);
        grade.setCode(code);
        grade.setFamily(family);
        Lot lot = MODEL.createLot();
        lot.setId(code + "-lot");
        lot.setCode("L1");
        grade.getLots().add(lot);
        project.getGrades().add(grade);
        MaterialUse use = MODEL.createMaterialUse();
        use.setGrade(grade);
        use.setLot(lot);
        use.setRole(role);
        step.getUses().add(use);
        return use;
    }

    private Session session(String code) {
        Session made = MODEL.createSession();
        made.setCode(code);
        project.getSessions().add(made);
        return made;
    }

    private void tick(Session in, Lot lot, LocalDate date, String revision) {
        Acknowledgement tick = MODEL.createAcknowledgement();
        tick.setPrompt(SafetyPrompts.SHEET);
        tick.setSession(in);
        tick.setLot(lot);
        tick.setWho("Kim");
        tick.setSheetDate(date);
        tick.setSheetRevision(revision);
        project.getAcknowledgements().add(tick);
    }

    private List<String> ids() {
        return prompts.prompts(step, trial).stream().map(HazardPrompt::id).toList();
    }

    private HazardPrompt find(String id) {
        return prompts.prompts(step, trial).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private List<Finding> find(FindingRule rule) {
        List<Finding> found = new ArrayList<>();
        rule.check(new RuleContext(project, rule.scope() == FindingRule.Scope.TRIAL ? trial : null, new NoProperties(), Instant.EPOCH), found::add);
        found.forEach(f -> assertTrue(!f.message().text().isBlank() && !f.remedy().text().isBlank() && !f.restsOn().isEmpty()));
        return found;
    }

    private Finding only(FindingRule rule) {
        List<Finding> found = find(rule);
        assertEquals(1, found.size(), () -> found.toString());
        return found.get(0);
    }

    private record NoProperties() implements PropertyCatalogue {
        @Override
        public List<PropertyDef> all() {
            return List.of();
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return Optional.empty();
        }
    }
}
