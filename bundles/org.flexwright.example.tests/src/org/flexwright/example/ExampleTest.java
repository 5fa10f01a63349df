package org.flexwright.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Watch;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.AgeingState;
import org.flexwright.core.ageing.Drift;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.SofterCauses;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.verdict.RecipeGate;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Recording;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;

/** The example is the story it tells: its verdicts and findings come out of the rules, with the plugins of the whole product. */
class ExampleTest {
    private static final long WAIT = 20_000;
    private static final Instant LATER = Instant.parse("2026-05-02T12:00:00Z");

    @TempDir
    static Path folder;
    private static Registries registries;
    private static ProjectSession session;
    private static Project project;

    @BeforeAll
    static void build() throws InterruptedException {
        BundleContext bundles = FrameworkUtil.getBundle(ExampleProject.class).getBundleContext();
        ServiceTracker<Registries, Registries> tracker = new ServiceTracker<>(bundles, Registries.class, null);
        tracker.open();
        registries = tracker.waitForService(WAIT);
        tracker.close();
        ExampleProject example = new ExampleProject(registries, "1.0.0.test");
        assertTrue(example.possible());
        Path place = folder.resolve(ExampleProject.FOLDER_NAME);
        example.build(place);
        session = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "tester", "1.0.0.test", registries.packages())).openReadOnly(place);
        project = session.project();
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static Trial trial(String code) {
        return project.getTrials().stream().filter(t -> code.equals(t.getCode())).findFirst().orElseThrow();
    }

    /** Verdicts of a trial against the newest sheet, by property. */
    private static Map<String, Judgement> verdicts(String code) {
        Map<String, Judgement> verdicts = new LinkedHashMap<>();
        for (Target target : TargetSheets.current(project).getTargets()) {
            PropertyDef def = registries.findProperty(target.getKey().getProperty()).orElseThrow();
            verdicts.put(def.id(), Verdicts.judge(target, def, PartValues.of(trial(code), target.getKey(), def)));
        }
        return verdicts;
    }

    private static Verdict verdict(String code, String property) {
        return verdicts(code).get(property).verdict();
    }

    private static List<Finding> findings() {
        return registries.findings().check(project, LATER);
    }

    private static boolean about(Finding finding, EObject thing) {
        for (EObject o = session.find(finding.subject()).orElseThrow(); o != null; o = o.eContainer()) {
            if (o == thing) {
                return true;
            }
        }
        return false;
    }

    private static Set<String> rules(EObject thing) {
        return findings().stream().filter(f -> about(f, thing)).map(Finding::rule).collect(Collectors.toSet());
    }

    @Test
    void saysThatItIsInvented() {
        assertTrue(project.isInvented());
        assertTrue(project.getJob().startsWith("Invented example."));
        assertTrue(project.getAttachments().stream().allMatch(a -> a.getKind() == AttachmentKind.CURVE ? a.getCaption().endsWith(" (invented, made by code)")
                : a.getCaption().startsWith("Drawn, not photographed: ")), "pictures say that they are drawn, curves that they are invented");
        assertTrue(project.getSessions().stream().allMatch(s -> s.getWho().endsWith("(invented)")));
        assertTrue(project.getGrades().stream().flatMap(g -> g.getValues().stream()).allMatch(v -> v.getSheetSource().startsWith("invented")));
    }

    @Test
    void everyTrialIsThereWithItsConclusion() {
        assertEquals(List.of("T01", "T02", "T03", "T04", "T05", "T06", "T07", "T08", "T09", "T10", "T11", "T12"), project.getTrials().stream().map(Trial::getCode).toList());
        List<Instant> days = project.getSessions().stream().map(s -> s.getAt()).toList();
        assertEquals(days.stream().sorted().toList(), days, "told in the order it happened");
        List<Trial> pots = project.getBatches().getFirst().getPots();
        assertEquals(List.of(trial("T10"), trial("T11"), trial("T12")), pots);
        assertTrue(pots.stream().allMatch(t -> t.getState() == TrialState.PLANNED && t.getMould() == project.getMoulds().getFirst()), "ten more are planned for next year");
        assertTrue(project.getTrials().stream().filter(t -> !pots.contains(t)).allMatch(t -> t.getConclusion() != null && t.getConclusion().endsWith(".")));
        assertEquals(TrialState.FAILED, trial("T01").getState());
        assertEquals(TrialState.DISCARDED, trial("T03").getState());
    }

    @Test
    void verdictsAreTheStorys() {
        assertEquals(Verdict.ABOVE, verdict("T02", Story.PEAK));
        assertEquals(Verdict.ABOVE, verdict("T02", Story.HARD));
        assertEquals(Verdict.ABOVE, verdict("T02", Story.RETURN), "dead: two seconds to come back");
        assertEquals(Verdict.BELOW, verdict("T05", Story.PEAK));
        assertEquals(Verdict.CANNOT_TELL, verdict("T06", Story.PEAK));
        assertEquals(Verdict.BELOW, verdict("T07", Story.PEAK));
        assertEquals(Verdict.ABOVE, verdict("T09", Story.INVERTED), "four of five rest inverted");
        assertEquals(Verdict.ABOVE, verdict("T09", Story.PEAK));
        assertFalse(verdict("T04", Story.PRESSES) == Verdict.IN, "one of three tore after 300 presses");
    }

    @Test
    void theTrialThatBecomesARecipeIsInEverywhere() {
        verdicts("T08").forEach((property, judgement) -> assertEquals(Verdict.IN, judgement.verdict(), () -> property + ": " + judgement.reason().text()));
        assertEquals(List.of(), RecipeGate.missing(project, trial("T08"), registries.properties()));
        assertEquals(1, project.getRecipes().size());
        assertEquals(trial("T08"), project.getRecipes().get(0).getFrom());
    }

    @Test
    void onlyOneTrialCouldBecomeARecipe() {
        for (Trial trial : project.getTrials()) {
            assertEquals(trial == trial("T08"), RecipeGate.missing(project, trial, registries.properties()).isEmpty(), trial.getCode());
        }
    }

    @Test
    void moreFillerMadeItSofter() {
        double six = verdicts("T06").get(Story.HARD).mean();
        double seven = verdicts("T07").get(Story.HARD).mean();
        assertTrue(seven < six, six + " then " + seven);
    }

    /** Of T07 as it is, and of the same trial with other things written down: what is likeliest follows the record, not the story. */
    @Test
    void theLikeliestCauseOfASofterPartFollowsItsOwnRecord() {
        assertTrue(rules(trial("T07")).contains("mixing.softer"));
        assertEquals(1, findings().stream().filter(f -> f.rule().equals("mixing.softer")).count(), "no other trial is softer with more filler");
        SofterCause damp = likeliest(trial("T07"));
        assertEquals("moisture", damp.id());
        assertTrue(damp.evidence().text().contains("1 % of water, not dried"), damp.evidence().text());
        // the index falls from 100 to 94.3: 0.0356 g of water to 0.0654 equivalents
        assertTrue(damp.evidence().text().contains("from 100 to 94.3"), damp.evidence().text());

        Trial dried = EcoreUtil.copy(trial("T07"));
        use(dried, PartRole.FILLER).setDried(true);
        use(dried, PartRole.FILLER).setMoisture(null);
        assertTrue(likeliest(dried).standing() == Standing.CLEARED, "with dried powder this record explains nothing: " + likeliest(dried));

        Trial off = EcoreUtil.copy(dried);
        use(off, PartRole.COMPONENT_B).getWeighings().get(0).setNet(23.3);
        assertEquals("ratio", likeliest(off).id());

        Trial cold = EcoreUtil.copy(dried);
        Step cure = cold.getSteps().stream().filter(s -> s.getKind().equals("curing.cure")).findFirst().orElseThrow();
        cure.getDetails().eSet(cure.getDetails().eClass().getEStructuralFeature("celsius"), 8.0);
        assertEquals("cure", likeliest(cold).id());
        assertEquals(Standing.RECORDED, likeliest(cold).standing());
    }

    private static MaterialUse use(Trial trial, PartRole role) {
        return trial.getSteps().stream().flatMap(s -> s.getUses().stream()).filter(u -> u.getRole() == role).findFirst().orElseThrow();
    }

    private static SofterCause likeliest(Trial trial) {
        return SofterCauses.of(trial, trial("T06"), registries, registries.properties()).getFirst();
    }

    @Test
    void findingsTheStoryTellsOf() {
        assertTrue(rules(trial("T01")).contains("core.expired-lot"), rules(trial("T01")).toString());
        assertTrue(rules(trial("T01")).contains("vatprint.copied-exposure"), rules(trial("T01")).toString());
        assertTrue(rules(trial("T03")).contains("moulding.cure-poison"), rules(trial("T03")).toString());
        assertTrue(findings().stream().anyMatch(f -> f.rule().equals("core.control-off") && about(f, project.getSessions().stream().filter(s -> s.getCode()
                .equals("S12")).findFirst().orElseThrow())), "the control piece drifted in one session");
        assertEquals(1, findings().stream().filter(f -> f.rule().equals("core.control-off")).count(), "and in that one alone");
        TargetSheet first = project.getTargetSheets().get(0);
        assertEquals(List.of(1, 2), project.getTargetSheets().stream().map(TargetSheet::getVersion).toList());
        assertTrue(first.getFrozenAt() != null && first.getTargets().stream().anyMatch(t -> Double.valueOf(1).equals(t.getTolerance())),
                "v1 asked for more than the gauge can see");
    }

    @Test
    void theStopOfTheMouldWasGoneAgainstWithAReason() {
        List<Finding> stops = findings().stream().filter(f -> f.severity() == Severity.STOP && f.rule().equals("moulding.cure-poison")).toList();
        assertEquals(1, stops.size());
        assertTrue(about(stops.get(0), trial("T03")));
        assertTrue(FindingService.overridden(stops.get(0), project).orElseThrow().getReason().length() > 10);
        List<Finding> standing = findings().stream().filter(f -> f.severity() == Severity.STOP && FindingService.overridden(f, project).isEmpty()).toList();
        assertEquals(List.of("vatprint.dose"), standing.stream().map(Finding::rule).toList(), "the one other stop is why T01 split");
        assertTrue(about(standing.get(0), trial("T01")));
    }

    @Test
    void everyReadingIsThereAndEveryPictureIsWhole() throws Exception {
        for (Attachment attachment : project.getAttachments()) {
            byte[] bytes = java.nio.file.Files.readAllBytes(session.folder().resolve(attachment.getPath()));
            assertEquals(attachment.getSha256(), Attachments.sha256(bytes), attachment.getFileName());
        }
        assertTrue(project.getAttachments().size() >= 9);
        assertTrue(project.getTrials().stream().flatMap(t -> t.getParts().stream()).flatMap(p -> p.getMeasurements().stream()).filter(m -> m.getKey()
                .getProperty().equals(Story.HARD)).allMatch(m -> m.getReadings().size() == 5), "five single hardness readings each");
    }

    /** What is read from a curve is what was put into it: peak and least force, snap ratio, a share of speed of 0.68 from 300 mm. */
    @Test
    void everyDomeOfTheRecipeHasACurveAndTheButtonABounce() {
        for (String part : List.of("P1", "P2", "P3")) {
            Part dome = trial("T08").getParts().stream().filter(p -> part.equals(p.getCode())).findFirst().orElseThrow();
            assertEquals(2, dome.getRecordings().size(), part);
            Map<String, Double> read = results(dome.getRecordings().getFirst());
            assertEquals(List.of(0.803, 0.810, 0.818).get(part.charAt(1) - '1'), read.get("peak-force"), 0.008, part);
            assertEquals(List.of(0.273, 0.267, 0.262).get(part.charAt(1) - '1'), read.get("least-force"), 0.008, part);
            assertEquals(3, dome.getMeasurements().stream().filter(m -> m.getRecording() == dome.getRecordings().getLast()).count(), "the last curve gave the readings");
        }
        Part button = trial("T08").getParts().stream().filter(p -> "B1".equals(p.getCode())).findFirst().orElseThrow();
        Measurement rebound = button.getMeasurements().stream().filter(m -> m.getKey().getProperty().equals("testing.rebound-drop")).findFirst().orElseThrow();
        assertEquals(46.2, rebound.getReadings().getFirst().getValue(), 0.5);
        assertTrue(button.getMeasurements().stream().anyMatch(m -> m.getKey().getProperty().equals("testing.density")));
    }

    private static Map<String, Double> results(Recording recording) {
        Map<String, Double> results = new LinkedHashMap<>();
        Recordings.look(session, recording, registries.findRecordingKind(recording.getKind()).orElseThrow(), Watch.NONE).results().forEach(r -> results.put(r.id(), r.value()));
        return results;
    }

    @Test
    void theDomesOfTheRecipeAreFollowedAsTheyAge() {
        AgeingPlan plan = project.getAgeingPlans().getFirst();
        PropertyDef peak = registries.findProperty(Story.PEAK).orElseThrow();
        Map<Double, Set<AgeingState>> states = AgeingPlans.checks(plan, peak, Instant.parse("2026-06-01T12:00:00Z")).stream().collect(Collectors.groupingBy(c -> c.point().getDays(),
                Collectors.mapping(AgeingCheck::state, Collectors.toSet())));
        assertEquals(Map.of(1.0, Set.of(AgeingState.SKIPPED), 7.0, Set.of(AgeingState.READ), 30.0, Set.of(AgeingState.READ), 365.0, Set.of(AgeingState.COMING)), states);
        Drift drift = Drift.of(plan, peak);
        assertEquals(3, drift.series().size());
        assertTrue(drift.sentence().text().contains("went up"), drift.sentence().text());
        assertTrue(verdicts("T08").get(Story.PEAK).notes().stream().anyMatch(n -> n.text().startsWith("Read at an age of 29 d")), "the verdict says which age it used");
        assertEquals(1, registries.findings().check(project, Instant.parse("2027-04-19T12:00:00Z")).stream().filter(f -> f.rule().equals("core.ageing-due")).count());
    }

    @Test
    void theGaugeWasStudiedAndTellsLessThanTheFirstSheetAsked() {
        GaugeStudy study = project.getGaugeStudies().getFirst();
        assertEquals(18, study.getCells().size());
        assertEquals(study, study.getInstrument().getStudy());
        assertEquals(0.3, study.getInstrument().getSpread(), 0.1);
        assertTrue(6 * study.getInstrument().getSpread() > 0.3 * study.getTolerance(), "51 ± 1 is finer than this gauge");
        assertEquals(4, project.getRankings().getFirst().getLists().size());
        assertTrue(project.getRankings().getFirst().getLists().stream().allMatch(l -> l.getPlaces().size() == 5 && l.getWho().endsWith("(invented)")));
        Set<String> spots = project.getReferenceParts().getFirst().getMeasurements().stream().map(m -> m.getKey().getSpot()).collect(Collectors.toSet());
        assertTrue(project.getSpotMaps().getFirst().getPlaces().stream().allMatch(p -> spots.contains(p.getSpot())), "every spot of the map was read on the reference part");
    }

    @Test
    void buildingItAgainGivesTheSameStory() {
        ExampleProject example = new ExampleProject(registries, "1.0.0.test");
        Path again = folder.resolve("again" + ProjectStore.SUFFIX);
        example.build(again);
        ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "tester", "1.0.0.test", registries.packages()));
        try (ProjectSession other = store.openReadOnly(again)) {
            assertEquals(project.getTrials().stream().map(Trial::getConclusion).toList(), other.project().getTrials().stream().map(Trial::getConclusion).toList());
            assertEquals(registries.findings().check(project, LATER).stream().map(f -> f.message().text()).sorted().toList(), registries.findings().check(other
                    .project(), LATER).stream().map(f -> f.message().text()).sorted().toList());
        }
    }
}
