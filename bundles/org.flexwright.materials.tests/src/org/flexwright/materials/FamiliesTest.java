package org.flexwright.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.property.FamilyReach.Reply;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FamiliesTest {

    private final Families families = Families.load();

    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            List<PropertyDef> all = new ArrayList<>(new MaterialProperties().properties());
            all.add(def("testing.shore-a", QuantityKind.SHORE_A, false));
            all.add(def("testing.apparent-hardness", QuantityKind.SHORE_A, false));
            all.add(def("testing.rests-inverted", QuantityKind.NUMBER, true));
            all.add(def("testing.return-time", QuantityKind.DURATION, false));
            return all;
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }

        private PropertyDef def(String id, QuantityKind kind, boolean yesNo) {
            return new PropertyDef(id, "Property " + id, kind, yesNo, Set.of(), "Read.", Source.commonPractice());
        }
    };

    private static Target target(String property, TargetRule rule, Double low, Double high) {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(property);
        Target target = ModelFactory.eINSTANCE.createTarget();
        target.setKey(key);
        target.setRule(rule);
        target.setLow(low);
        target.setHigh(high);
        return target;
    }

    private Map<String, Reply> replies(Target target) {
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.getTargets().add(target);
        Map<String, Reply> replies = new HashMap<>();
        FamilyTable.of(sheet, families.all(), PROPERTIES).rows().forEach(r -> replies.put(r.family().id(), r.cells().get(0).reply()));
        return replies;
    }

    @Test
    void allAgreedFamiliesAreThere() {
        assertEquals(List.of("tpu-60a", "tpu-70a", "tpu-85a", "tpu-95a", "photopolymer-50a", "photopolymer-80a", "pu-20a", "pu-60a", "pu-90a",
                "silicone-add-00-30", "silicone-add-10-30a", "silicone-add-60a", "silicone-tin-10-40a", "natural-rubber"),
                families.all().stream().map(Family::id).toList());
    }

    @Test
    void everyRangeNamesHowFarItWasConfirmed() {
        for (Family family : families.all()) {
            assertFalse(family.ranges().isEmpty());
            family.ranges().forEach((property, range) -> assertFalse(range.source().display().isBlank(), () -> family.id() + " " + property));
        }
        assertEquals(Source.Mark.FROM_MEMORY, families.find("pu-60a").orElseThrow().range("materials.tear").orElseThrow().source().mark());
        assertEquals(Source.Mark.PUBLISHED, families.find("tpu-95a").orElseThrow().range("materials.tensile-strength").orElseThrow().source().mark());
    }

    @Test
    void hardnessOutsideExcludesAFamilyAndItsEdgeDoesNot() {
        Map<String, Reply> replies = replies(target("testing.shore-a", TargetRule.BETWEEN, 45.0, 55.0));
        assertEquals(Reply.CANNOT, replies.get("tpu-70a"));
        assertEquals(Reply.CANNOT, replies.get("silicone-add-10-30a"));
        assertEquals(Reply.CAN, replies.get("photopolymer-50a"));
        assertEquals(Reply.CAN, replies.get("pu-60a"), "55 is in both");
        assertEquals(Reply.UNKNOWN, replies.get("natural-rubber"), "its hardness is not in the table");
    }

    @Test
    void aCurvedPieceMayReadFivePointsOtherwise() {
        assertEquals(Reply.CAN, replies(target("testing.apparent-hardness", TargetRule.BETWEEN, 45.0, 52.0)).get("pu-60a"));
        assertEquals(Reply.CANNOT, replies(target("testing.shore-a", TargetRule.BETWEEN, 45.0, 52.0)).get("pu-60a"));
    }

    @Test
    void elongationExcludesPhotopolymers() {
        Map<String, Reply> replies = replies(target("materials.elongation", TargetRule.AT_LEAST, 300.0, null));
        assertEquals(Reply.CANNOT, replies.get("photopolymer-50a"));
        assertEquals(Reply.CAN, replies.get("pu-60a"));
    }

    @Test
    void whatAFamilyCannotSayIsUnknown() {
        assertEquals(Set.of(Reply.UNKNOWN), Set.copyOf(replies(target("testing.return-time", TargetRule.AT_MOST, null, 0.3)).values()));
        assertEquals(Set.of(Reply.UNKNOWN), Set.copyOf(replies(target("testing.rests-inverted", TargetRule.NEVER, null, null)).values()));
        assertEquals(Set.of(Reply.UNKNOWN), Set.copyOf(replies(target("testing.shore-a", TargetRule.NOMINAL, null, null)).values()));
    }

    @Test
    void aModulusFollowsFromHardness() {
        Map<String, Reply> replies = replies(target("materials.modulus", TargetRule.AT_MOST, null, 1.5));
        assertEquals(Reply.CANNOT, replies.get("pu-60a"));
        assertEquals(Reply.CAN, replies.get("pu-20a"));
        assertEquals(Reply.UNKNOWN, replies.get("silicone-add-00-30"), "below 10 Shore A no modulus is given");
    }

    @Test
    void estimatesCarryTheRangeAndItsMark() {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        FamilyEstimator estimator = new FamilyEstimator();
        PropertyDef density = PROPERTIES.find("materials.density").orElseThrow();
        assertTrue(estimator.estimate(density, grade).isEmpty(), "no family, no range");
        grade.setFamily("pu-60a");
        var estimate = estimator.estimate(density, grade).orElseThrow();
        assertEquals(1.02, estimate.low());
        assertEquals(1.06, estimate.likely(), 1e-12);
        assertEquals(1.10, estimate.high());
        grade.setFamily("no-such-family");
        assertTrue(estimator.estimate(density, grade).isEmpty());
    }

    @Test
    void aWideRangeHasItsGeometricMiddleAsLikely() {
        assertEquals(Math.sqrt(1800.0 * 57600), families.find("silicone-add-10-30a").orElseThrow().range("curing.demould-time").orElseThrow().estimate().likely(), 1e-9);
    }

    @Test
    void ownHardnessBeforeSheetHardnessGivesTheModulus() {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        PropertyDef modulus = PROPERTIES.find("materials.modulus").orElseThrow();
        assertTrue(new ModulusEstimator().estimate(modulus, grade).isEmpty());
        MaterialValue hardness = ModelFactory.eINSTANCE.createMaterialValue();
        hardness.setProperty("testing.shore-a");
        hardness.setSheetValue(60.0);
        grade.getValues().add(hardness);
        assertEquals(ModulusBand.of(60).likely(), new ModulusEstimator().estimate(modulus, grade).orElseThrow().likely(), 0);
        hardness.setOwnValue(50.0);
        assertEquals(ModulusBand.of(50).likely(), new ModulusEstimator().estimate(modulus, grade).orElseThrow().likely(), 0);
        hardness.setOwnValue(97.0);
        assertTrue(new ModulusEstimator().estimate(modulus, grade).isEmpty(), "refused outside 10 to 95");
        assertTrue(new ModulusEstimator().estimate(PROPERTIES.find("materials.tear").orElseThrow(), grade).isEmpty());
    }

    @Test
    void aGradeOfAFamilyThatCannotIsANoteAgainstTheNewestSheet() {
        Project project = ModelFactory.eINSTANCE.createProject();
        project.getTargetSheets().add(sheet(1, target("testing.shore-a", TargetRule.BETWEEN, 60.0, 80.0)));
        project.getTargetSheets().add(sheet(2, target("testing.shore-a", TargetRule.BETWEEN, 45.0, 52.0)));
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setId("g1");
        grade.setCode("FIL");
        grade.setFamily("tpu-70a");
        project.getGrades().add(grade);
        project.getGrades().add(ModelFactory.eINSTANCE.createMaterialGrade());
        List<Finding> found = new ArrayList<>();
        new FamilyRule().check(new RuleContext(project, null, PROPERTIES, Instant.EPOCH), found::add);
        assertEquals(1, found.size());
        assertEquals(Severity.NOTE, found.get(0).severity());
        assertEquals("g1", found.get(0).subject());
        assertTrue(found.get(0).message().text().contains("too high for the wanted 45 to 52"), found.get(0).message().text());
    }

    private static TargetSheet sheet(int version, Target target) {
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.setVersion(version);
        sheet.getTargets().add(target);
        return sheet;
    }

    @ParameterizedTest
    @EnumSource(Say.class)
    void everySentenceHasWords(Say sentence) {
        String text = sentence.with("1", "2", "3", "4").text();
        assertFalse(text.isBlank() || text.contains("{") || text.contains("''"), text);
    }

    @Test
    void noWordsAreLeftOver() {
        assertEquals(Stream.of(Say.values()).map(Say::key).collect(Collectors.toSet()), ResourceBundle.getBundle("org.flexwright.materials.messages").keySet());
    }

    /** What the command line and the window ask through core is the table itself, every family once. */
    @Test
    void throughCore() {
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.getTargets().add(target("testing.shore-a", TargetRule.BETWEEN, 45.0, 55.0));
        sheet.getTargets().add(target("testing.rests-inverted", TargetRule.NEVER, null, null));
        List<FamilyReach> reached = new FamilyEstimator().families(sheet, PROPERTIES);
        assertEquals(families.all().stream().map(Family::id).toList(), reached.stream().map(FamilyReach::id).toList());
        for (FamilyReach family : reached) {
            assertEquals(2, family.answers().size(), family.id());
            assertEquals(Reply.UNKNOWN, family.answers().get(1).reply(), family.id());
            Family.Range hardness = families.find(family.id()).orElseThrow().range("testing.shore-a").orElse(null);
            boolean apart = hardness != null && (hardness.high() < 45 || hardness.low() > 55);
            assertEquals(apart, family.excluded(), family.id());
        }
        assertTrue(reached.stream().anyMatch(FamilyReach::excluded));
        assertTrue(reached.stream().anyMatch(f -> !f.excluded()));
        assertEquals(reached.size(), new FamilyEstimator().families(ModelFactory.eINSTANCE.createTargetSheet(), PROPERTIES).size(), "named without targets");
    }
}
