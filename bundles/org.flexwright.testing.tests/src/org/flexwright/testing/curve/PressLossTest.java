package org.flexwright.testing.curve;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Recording;
import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.Test;

class PressLossTest {
    private static final double[] IN = {0, 2, 4.4, 7.4, 11.2, 16};
    private static final double[] OUT = {0, 1.2, 3, 5.5, 9.4, 16};
    private static final int STEPS = 50;

    private final Recording recording = ModelFactory.eINSTANCE.createRecording();

    PressLossTest() {
        PressDetails details = TestingDataFactory.eINSTANCE.createPressDetails();
        details.setSlack(Slack.NONE);
        recording.setDetails(details);
    }

    @Test
    void theLoopOfTheSheet() {
        Look look = look(0);
        expect("testing/5.loss", loss(look).value(), "trapezoids, derived");
        assertEquals(CurveProperties.PRESS_LOSS, loss(look).property());
        assertTrue(said(look, "Which press of the part this is"));
        recording.setCycle(3);
        assertTrue(!said(look(0), "Which press of the part this is"));
    }

    @Test
    void aPartThatIsNotLetOutIsSaidSo() {
        assertTrue(said(look(2 * STEPS), "not let out"));
        assertTrue(look(5 * STEPS).results().stream().noneMatch(r -> r.id().equals("press-loss")), "a press alone has no loss");
    }

    /** In to 5 mm and out to a place, straight between the points. */
    private Look look(int until) {
        int many = 5 * STEPS;
        double[] travel = new double[2 * many + 1 - until];
        double[] force = new double[travel.length];
        for (int i = 0; i < travel.length; i++) {
            int at = i <= many ? i : 2 * many - i;
            double[] branch = i <= many ? IN : OUT;
            int cell = Math.min(4, at / STEPS);
            travel[i] = at / (double) STEPS;
            force[i] = branch[cell] + (travel[i] - cell) * (branch[cell + 1] - branch[cell]);
        }
        RecordingData data = new RecordingData(List.of(new RecordingData.Channel(ChannelRole.TRAVEL, "x", "mm", travel), new RecordingData.Channel(ChannelRole.FORCE, "F", "N", force)), 0);
        return new PressKind().look(recording, data, Watch.NONE);
    }

    private static RecordingResult loss(Look look) {
        return look.results().stream().filter(r -> r.id().equals("press-loss")).findFirst().orElseThrow(() -> new AssertionError(look.results() + " " + look.remarks()));
    }

    private static boolean said(Look look, String words) {
        return look.remarks().stream().anyMatch(r -> r.message().text().contains(words));
    }
}
