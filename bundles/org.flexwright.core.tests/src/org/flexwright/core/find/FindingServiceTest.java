package org.flexwright.core.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class FindingServiceTest {
    private static final Instant NOW = Instant.parse("2025-03-14T10:00:00Z");
    private static final PropertyCatalogue NONE = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of();
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return Optional.empty();
        }
    };

    private record Rule(String id, Scope scope, Severity severity) implements FindingRule {
        @Override
        public String title() {
            return id;
        }

        @Override
        public void check(RuleContext context, Consumer<Finding> out) {
            String subject = context.trial() == null ? context.project().getId() : context.trial().getId();
            out.accept(finding(id, severity, subject, "1"));
            if (severity == Severity.STOP) {
                throw new IllegalStateException("lost its way");
            }
        }
    }

    private static Finding finding(String rule, Severity severity, String subject, String... restsOn) {
        return new Finding(rule, severity, subject, "", Message.of(FindingService.class, "broken", rule, subject), List.of(restsOn), Source.commonPractice(),
                Message.of(FindingService.class, "broken.remedy", rule));
    }

    private static Project project() {
        Project project = ModelFactory.eINSTANCE.createProject();
        project.setId("p");
        for (String id : List.of("t1", "t2")) {
            Trial trial = ModelFactory.eINSTANCE.createTrial();
            trial.setId(id);
            project.getTrials().add(trial);
        }
        return project;
    }

    @Test
    void rulesAreAskedPerProjectOrPerTrialAndTheGravestComesFirst() {
        FindingService service = new FindingService(List.of(new Rule("a.note", FindingRule.Scope.TRIAL, Severity.NOTE),
                new Rule("b.caution", FindingRule.Scope.PROJECT, Severity.CAUTION)), NONE);
        assertEquals(List.of("p", "t1", "t2"), service.check(project(), NOW).stream().map(Finding::subject).toList());
        Project project = project();
        assertEquals(List.of("t2"), service.check(project, project.getTrials().get(1), NOW).stream().map(Finding::subject).toList());
    }

    @Test
    void aFailingRuleBecomesAFindingAndWhatItFoundBeforeStays() {
        FindingService service = new FindingService(List.of(new Rule("a.stop", FindingRule.Scope.PROJECT, Severity.STOP),
                new Rule("b.note", FindingRule.Scope.PROJECT, Severity.NOTE)), NONE);
        List<Finding> found = service.check(project(), NOW);
        assertEquals(List.of("a.stop", FindingService.BROKEN_RULE, "b.note"), found.stream().map(Finding::rule).toList());
        assertEquals("The rule a.stop broke off, so what it looks for was not checked: lost its way", found.get(1).message().text());
    }

    @Test
    void anOverrideHoldsUntilItsValuesChange() {
        Project project = project();
        Finding before = finding("a.stop", Severity.STOP, "t1", "resin", "silicone");
        StopOverride override = ModelFactory.eINSTANCE.createStopOverride();
        override.setRule("a.stop");
        override.setSubject("t1");
        override.setInputHash(FindingService.hash(before));
        project.getOverrides().add(override);
        assertEquals(Optional.of(override), FindingService.overridden(before, project));
        Finding after = finding("a.stop", Severity.STOP, "t1", "resin", "other silicone");
        assertTrue(FindingService.overridden(after, project).isEmpty());
        assertEquals(List.of(override), FindingService.lapsed(after, project));
        assertTrue(FindingService.overridden(finding("a.stop", Severity.STOP, "t2", "resin", "silicone"), project).isEmpty());
    }

    @Test
    void theHashTellsValuesApartThatRunTogether() {
        assertNotEquals(FindingService.hash(finding("r", Severity.STOP, "s", "ab", "c")), FindingService.hash(finding("r", Severity.STOP, "s", "a", "bc")));
        assertNotEquals(FindingService.hash(finding("r", Severity.STOP, "s", "a", "")), FindingService.hash(finding("r", Severity.STOP, "s", "a")));
        assertEquals(64, FindingService.hash(finding("r", Severity.STOP, "s")).length());
    }
}
