package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeLineTest {
    private static final Instant CONTACT = Instant.parse("2025-03-14T10:00:00Z");
    private final Trial trial = ModelFactory.eINSTANCE.createTrial();

    private Step step(String title, StepState state, Double start, Double length) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setTitle(title);
        step.setState(state);
        step.setPlannedStart(start);
        step.setPlannedDuration(length);
        trial.getSteps().add(step);
        return step;
    }

    @Test
    void theClockRunsFromContact() {
        Step weigh = step("weigh", StepState.DONE, -10.0, 5.0);
        weigh.setStartedAt(CONTACT.minusSeconds(480));
        weigh.setEndedAt(CONTACT.minusSeconds(120));
        Step mix = step("mix", StepState.RUNNING, 0.0, 3.0);
        mix.setStartedAt(CONTACT);
        step("degas", StepState.PLANNED, 3.0, 4.0);
        step("demould", StepState.PLANNED, 960.0, null);
        TimeLine line = TimeLine.of(trial, CONTACT.plusSeconds(252));
        assertEquals("4:12", line.clock());
        assertEquals("\u22128:00", line.lines().get(0).actualStart());
        assertEquals("6:00", line.lines().get(0).taken());
        assertEquals("✓", line.lines().get(0).shape());
        assertEquals("4:12", line.lines().get(1).taken());
        assertTrue(line.lines().get(1).late(), "it runs longer than planned");
        assertTrue(line.lines().get(2).late(), "it should have begun");
        assertFalse(line.lines().get(3).late());
        assertEquals("16 h", line.lines().get(3).plannedStart());
        assertEquals(960, line.lines().get(3).minutesFromContact());
    }

    @Test
    void withoutContactThePlanAloneStands() {
        step("mix", StepState.PLANNED, 0.0, 3.0);
        TimeLine line = TimeLine.of(trial, CONTACT);
        assertNull(line.contact());
        assertEquals("", line.clock());
        assertEquals("0:00", line.lines().get(0).plannedStart());
        assertFalse(line.lines().get(0).late());
    }

    @Test
    void contactIsReckonedBackWhenItsStepWasNotStarted() {
        step("mix", StepState.PLANNED, 0.0, null);
        Step pour = step("pour", StepState.RUNNING, 6.0, null);
        pour.setStartedAt(CONTACT.plusSeconds(360));
        assertEquals(CONTACT, TimeLine.contactOf(trial));
    }

    @Test
    void contactAsSaidAtTheBenchCountsBeforeAllThatIsReckoned() {
        Step mix = step("mix", StepState.RUNNING, 0.0, null);
        mix.setStartedAt(CONTACT.plusSeconds(90));
        trial.setContactAt(CONTACT);
        assertEquals(CONTACT, TimeLine.contactOf(trial));
        assertEquals("1:30", TimeLine.of(trial, CONTACT.plusSeconds(90)).clock());
    }

    @ParameterizedTest
    @CsvSource({"0, 0:00", "0.5, 0:30", "4.2, 4:12", "239.9, 239:54", "240, 4 h", "960, 16 h", "4320, 3 d", "-0.001, 0:00", "-2, \u22122:00"})
    void timesReadAsOnAStopwatch(double minutes, String shown) {
        assertEquals(shown, TimeLine.clock(minutes));
    }

    @Test
    void withoutPlannedTimesContactIsWhenTheSecondComponentWentIn() {
        Step weigh = step("weigh", StepState.RUNNING, null, null);
        weighed(weigh, PartRole.COMPONENT_A, CONTACT.minusSeconds(60));
        assertNull(TimeLine.contactOf(trial), "A alone touches nothing");
        weighed(weigh, PartRole.COMPONENT_B, CONTACT);
        weighed(weigh, PartRole.COMPONENT_B, CONTACT.plusSeconds(90));
        assertEquals(CONTACT, TimeLine.contactOf(trial));
        assertEquals("3:00", TimeLine.of(trial, CONTACT.plusSeconds(180)).clock());
    }

    private static void weighed(Step step, PartRole role, Instant at) {
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setAt(at);
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.getWeighings().add(weighing);
        step.getUses().add(use);
    }
}
