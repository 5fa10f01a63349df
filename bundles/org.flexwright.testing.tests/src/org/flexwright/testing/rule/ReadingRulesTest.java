package org.flexwright.testing.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.HardnessDetails;
import org.flexwright.testing.data.HardnessRule;
import org.flexwright.testing.data.RubberSort;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingRulesTest {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private Project project;
    private Trial trial;

    @BeforeEach
    void aTrialThatWasMade() {
        project = MODEL.createProject();
        trial = MODEL.createTrial();
        trial.setId("t5");
        trial.setCode("T05");
        trial.setState(TrialState.MADE);
        project.getTrials().add(trial);
    }

    @Test
    void thinPieceIsApparentAThickOneIsNot() {
        measure(part("P1", 3.0), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        measure(part("P2", 6.0), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        Finding found = only(new ApparentHardnessRule());
        assertEquals(Severity.CAUTION, found.severity());
        assertEquals("m-P1", found.subject());
        assertTrue(found.message().text().contains("3 mm thick"), found.message().text());
    }

    @Test
    void curvedSpotIsApparentWhateverItsThickness() {
        Measurement m = measure(part("P1", 20.0), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        m.getKey().setSpot("crown, curved");
        assertTrue(only(new ApparentHardnessRule()).message().text().contains("curved spot"));
    }

    @Test
    void anApparentHardnessIsLeftAlone() {
        measure(part("P1", 3.0), TestingProperties.APPARENT_HARDNESS, 3.0, 45, 46, 45, 46, 45);
        assertEquals(List.of(), find(new ApparentHardnessRule()));
    }

    @Test
    void thicknessNotEnteredIsANote() {
        measure(part("P1", null), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        assertEquals(Severity.NOTE, only(new ApparentHardnessRule()).severity());
    }

    @Test
    void oneReadingWarnsFourAreNotedFiveAreEnough() {
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45);
        measure(part("P2", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46);
        measure(part("P3", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        List<Finding> found = find(new FewReadingsRule());
        assertEquals(List.of(Severity.CAUTION, Severity.NOTE), found.stream().map(Finding::severity).toList());
        assertTrue(found.get(1).remedy().text().contains("Take 5"));
    }

    @Test
    void aKnownMaterialNeedsThree() {
        MaterialGrade grade = MODEL.createMaterialGrade();
        grade.setFamily("pu-60a");
        MaterialUse use = MODEL.createMaterialUse();
        use.setGrade(grade);
        Step step = MODEL.createStep();
        step.getUses().add(use);
        trial.getSteps().add(step);
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45);
        assertEquals(List.of(), find(new FewReadingsRule()));
        measure(part("P2", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46);
        assertTrue(only(new FewReadingsRule()).remedy().text().contains("Take 3"));
    }

    @Test
    void aReadingLeftOutDoesNotCount() {
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 12);
        m.getReadings().get(4).setLeftOut("slipped");
        assertEquals(1, find(new FewReadingsRule()).size());
    }

    @Test
    void dwellMissing() {
        measure(part("P1", 6.5), TestingProperties.SHORE_A, null, 45, 46, 45, 46, 45);
        assertTrue(only(new DwellRule()).message().text().contains("not entered"));
    }

    @Test
    void dwellOtherThanTheNewestTargetAsks() {
        target(15.0);
        target(3.0);
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 15.0, 45, 46, 45, 46, 45);
        Finding found = only(new DwellRule());
        assertTrue(found.message().text().contains("after 15 s, the target asks for 3 s"), found.message().text());
    }

    @Test
    void dwellAsTheTargetAsksIsFineBesideAnotherProperty() {
        target(3.0);
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        measure(part("P2", 6.5), TestingProperties.APPARENT_HARDNESS, 15.0, 45, 46, 45, 46, 45);
        assertEquals(List.of(), find(new DwellRule()));
    }

    @Test
    void dwellMixedWithinATrial() {
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        measure(part("P2", 6.5), TestingProperties.SHORE_A, 15.0, 42, 43, 42, 43, 42);
        assertEquals(2, find(new DwellRule()).size());
    }

    @Test
    void softReadingOnScaleAIsSentToScale00() {
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 12, 13, 12, 13, 12);
        measure(part("P2", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        measure(part("P3", 6.5), TestingProperties.SHORE_00, 3.0, 12, 13, 12, 13, 12);
        List<Finding> found = find(new WindowRule());
        assertEquals(List.of("m-P1", "m-P3"), found.stream().map(Finding::subject).toList());
        assertTrue(found.get(0).remedy().text().contains("scale 00"));
        assertTrue(found.get(1).message().text().contains("no better scale"), "00 is the softest at hand; it is said all the same");
    }

    @Test
    void nothingIsAskedOfTheProtocolUntilSomethingIsSaid() {
        measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        assertEquals(List.of(), find(new ProtocolRule()));
    }

    /** Each standard has its own figures: 12 mm to the edge by ISO 48-4 and ASTM D2240, 9 mm by ISO 868. */
    @ParameterizedTest
    @CsvSource({"ISO_48_4,11.9,true", "ISO_48_4,12,false", "ISO_868,8.9,true", "ISO_868,9,false", "ASTM_D2240,11,true", "UNKNOWN,11,true"})
    void distanceToTheEdge(HardnessRule rule, double edge, boolean speaks) {
        HardnessDetails held = held(measure(part("P1", 6.5), TestingProperties.SHORE_A, null, 45, 46, 45, 46, 45), rule);
        held.setEdge(edge);
        held.setSpacing(6.0);
        List<Finding> found = find(new ProtocolRule());
        assertEquals(speaks ? 1 : 0, found.size(), found.toString());
        if (speaks) {
            assertTrue(found.get(0).message().text().startsWith("T05 P1: ") && found.get(0).message().text().contains("to the edge"), found.get(0).message().text());
        }
    }

    @Test
    void aNamedStandardAsksForWhatIsNotEntered() {
        held(measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45), HardnessRule.ISO_48_4);
        List<Finding> found = find(new ProtocolRule());
        assertEquals(List.of(Severity.NOTE, Severity.NOTE), found.stream().map(Finding::severity).toList());
        assertTrue(found.get(0).message().text().contains("12 mm") && found.get(1).message().text().contains("6 mm"), found.toString());
    }

    @Test
    void aScaleTheStandardDoesNotHave() {
        held(measure(part("P1", 6.5), TestingProperties.SHORE_00, 3.0, 45, 46, 45, 46, 45), HardnessRule.ISO_868);
        assertTrue(only(new ProtocolRule()).message().text().contains("has no scale 00"));
    }

    @Test
    void pliesTemperatureAndSpread() {
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 52);
        m.setPieceC(31.0);
        HardnessDetails held = held(m, HardnessRule.UNKNOWN);
        held.setPlies(4);
        held.setPlySmooth(false);
        List<String> said = find(new ProtocolRule()).stream().map(f -> f.message().text()).toList();
        assertEquals(4, said.size(), said.toString());
        assertTrue(said.get(0).contains("4 plies") && said.get(1).contains("not smooth") && said.get(2).contains("31 °C") && said.get(3).contains("differ by 7 points"), said.toString());
    }

    /** The room stands for the piece only when the piece lay in it for an hour. */
    @Test
    void theRoomStandsForTheConditionedPieceAlone() {
        Session session = MODEL.createSession();
        session.setRoomC(19.0);
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        m.setSession(session);
        assertEquals(List.of(), find(new ProtocolRule()));
        session.setConditioningHours(0.25);
        assertEquals(List.of(), find(new ProtocolRule()), "a piece that has not taken the temperature of the room yet");
        session.setConditioningHours(2.0);
        assertTrue(only(new ProtocolRule()).message().text().contains("19 °C"));
        session.setRoomC(24.0);
        assertEquals(List.of(), find(new ProtocolRule()));
    }

    @ParameterizedTest
    @CsvSource({"Shore A,0,", "a,0,", "'',0,", "D,1,CAUTION", "Shore OO,1,CAUTION", "M,1,CAUTION", "soft ones,1,NOTE"})
    void theGaugeHasTheScaleOfTheReading(String scale, int said, Severity severity) {
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        Instrument gauge = MODEL.createInstrument();
        gauge.setName("G1");
        gauge.setScale(scale);
        m.setInstrument(gauge);
        List<Finding> found = find(new GaugeScaleRule());
        assertEquals(said, found.size(), found.toString());
        found.forEach(f -> assertEquals(severity, f.severity()));
    }

    @Test
    void dwellOfTheSort() {
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45, 46, 45);
        HardnessDetails held = held(m, HardnessRule.UNKNOWN);
        held.setSort(RubberSort.THERMOPLASTIC);
        assertTrue(only(new ProtocolRule()).message().text().contains("has 15 s"));
        held.setSort(RubberSort.VULCANISED);
        assertEquals(List.of(), find(new ProtocolRule()));
    }

    @Test
    void whatIsSaidToBeCurvedIsApparentAndIso868AsksForFive() {
        Measurement m = measure(part("P1", 6.5), TestingProperties.SHORE_A, 3.0, 45, 46, 45);
        HardnessDetails held = held(m, HardnessRule.ISO_868);
        held.setSort(RubberSort.VULCANISED);
        held.setCurved(true);
        assertTrue(only(new ApparentHardnessRule()).message().text().contains("curved"));
        assertTrue(only(new FewReadingsRule()).remedy().text().contains("Take 5"));
        held.setRule(HardnessRule.ISO_48_4);
        assertEquals(List.of(), find(new FewReadingsRule()), "three are enough of a known sort");
    }

    private static HardnessDetails held(Measurement measurement, HardnessRule rule) {
        HardnessDetails details = TestingDataFactory.eINSTANCE.createHardnessDetails();
        details.setRule(rule);
        measurement.setDetails(details);
        return details;
    }

    @Test
    void discardedTrialsAndForcesAreLeftAlone() {
        measure(part("P1", 1.5), TestingProperties.PEAK_FORCE, null, 0.8);
        assertEquals(List.of(), findAll());
        measure(part("P2", 1.5), TestingProperties.SHORE_A, null, 12);
        assertEquals(4, findAll().size());
        trial.setState(TrialState.DISCARDED);
        assertEquals(List.of(), findAll());
    }

    @Test
    void referencePartsAreAskedTheSame() {
        ReferencePart reference = MODEL.createReferencePart();
        reference.setCode("R");
        reference.setThickness(1.45);
        project.getReferenceParts().add(reference);
        Measurement m = measurement("m-R", TestingProperties.SHORE_A, null, 51);
        reference.getMeasurements().add(m);
        List<String> rules = find(new ReferenceReadingsRule()).stream().map(Finding::rule).toList();
        assertEquals(List.of(ApparentHardnessRule.ID, FewReadingsRule.ID, DwellRule.ID), rules);
    }

    @Test
    void castsNeedAWitnessButton() {
        assertEquals(List.of(), find(new WitnessButtonRule()), "no cast, no button");
        trial.setRoute("moulding.cast");
        assertEquals(Severity.CAUTION, only(new WitnessButtonRule()).severity());
        trial.setState(TrialState.PLANNED);
        Finding planned = only(new WitnessButtonRule());
        assertEquals(Severity.NOTE, planned.severity());
        assertTrue(planned.remedy().text().contains("35 mm across and 7 mm thick"), planned.remedy().text());
        Part button = part("B1", null);
        button.setPieceKind(PieceKind.WITNESS_BUTTON);
        assertEquals(List.of(), find(new WitnessButtonRule()));
        button.setThickness(4.0);
        assertTrue(only(new WitnessButtonRule()).message().text().contains("4 mm thick"));
        button.setThickness(6.2);
        assertEquals(List.of(), find(new WitnessButtonRule()));
    }

    @Test
    void aFillStepMakesATrialACast() {
        Step fill = MODEL.createStep();
        fill.setKind("moulding.fill");
        trial.getSteps().add(fill);
        assertEquals(1, find(new WitnessButtonRule()).size());
        trial.setState(TrialState.FAILED);
        assertEquals(List.of(), find(new WitnessButtonRule()));
    }

    private Part part(String code, Double thickness) {
        Part part = MODEL.createPart();
        part.setId(code);
        part.setCode(code);
        part.setThickness(thickness);
        trial.getParts().add(part);
        return part;
    }

    @Test
    void piecesThatJustCameInWereReadTooEarly() {
        Session session = MODEL.createSession();
        session.setId("s1");
        session.setCode("S1");
        project.getSessions().add(session);
        assertEquals(List.of(), find(new ConditioningRule()), "nothing was read");
        measure(part("P1", 6.0), TestingProperties.SHORE_A, 3.0, 45, 46, 45).setSession(session);
        Finding unknown = only(new ConditioningRule());
        assertEquals(Severity.NOTE, unknown.severity());
        assertEquals("conditioningHours", unknown.feature());
        session.setConditioningHours(0.5);
        Finding early = only(new ConditioningRule());
        assertEquals(Severity.CAUTION, early.severity());
        assertEquals("Session S1: the pieces lay in the room for 0.5 h, less than 1 h, before they were read.", early.message().text());
        session.setConditioningHours(1.0);
        assertEquals(List.of(), find(new ConditioningRule()));
    }

    private static Measurement measure(Part part, String property, Double dwell, double... values) {
        Measurement m = measurement("m-" + part.getCode(), property, dwell, values);
        part.getMeasurements().add(m);
        return m;
    }

    private static Measurement measurement(String id, String property, Double dwell, double... values) {
        Measurement m = MODEL.createMeasurement();
        m.setId(id);
        m.setKey(key(property, dwell));
        for (double value : values) {
            Reading reading = MODEL.createReading();
            reading.setValue(value);
            m.getReadings().add(reading);
        }
        return m;
    }

    private static PropertyKey key(String property, Double dwell) {
        PropertyKey key = MODEL.createPropertyKey();
        key.setProperty(property);
        key.setDwell(dwell);
        return key;
    }

    private void target(double dwell) {
        TargetSheet sheet = MODEL.createTargetSheet();
        Target target = MODEL.createTarget();
        target.setKey(key(TestingProperties.SHORE_A, dwell));
        sheet.getTargets().add(target);
        project.getTargetSheets().add(sheet);
    }

    private List<Finding> findAll() {
        List<Finding> all = new ArrayList<>();
        for (FindingRule rule : List.of(new ApparentHardnessRule(), new FewReadingsRule(), new DwellRule(), new WindowRule())) {
            all.addAll(find(rule));
        }
        return all;
    }

    private List<Finding> find(FindingRule rule) {
        List<Finding> found = new ArrayList<>();
        rule.check(new RuleContext(project, rule.scope() == FindingRule.Scope.TRIAL ? trial : null, new NoProperties(), Instant.EPOCH), found::add);
        found.forEach(f -> {
            assertTrue(!f.message().text().isBlank() && !f.remedy().text().isBlank());
            assertTrue(!f.restsOn().isEmpty());
        });
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
