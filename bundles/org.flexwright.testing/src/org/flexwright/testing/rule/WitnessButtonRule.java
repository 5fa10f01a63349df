package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Rounded;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.HardnessReading;
import org.flexwright.testing.Say;
import org.flexwright.testing.WitnessButton;
import org.osgi.service.component.annotations.Component;

/** A cast trial without a flat button poured beside the parts: nobody will know the hardness of the material. */
@Component(service = FindingRule.class)
public final class WitnessButtonRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "testing.witness-button";

    private static final String CAST_ROUTE = "moulding.cast";
    private static final String FILL_STEP = "moulding.fill";
    private static final int READINGS = 5;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Cast without a witness button";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        boolean cast = CAST_ROUTE.equals(trial.getRoute()) || trial.getSteps().stream().anyMatch(s -> FILL_STEP.equals(s.getKind()));
        if (!cast || trial.getState() == TrialState.DISCARDED || trial.getState() == TrialState.FAILED) {
            return;
        }
        List<Part> buttons = trial.getParts().stream().filter(p -> p.getPieceKind() == PieceKind.WITNESS_BUTTON).toList();
        if (buttons.isEmpty()) {
            boolean poured = trial.getState() == TrialState.MADE;
            WitnessButton button = WitnessButton.proposed(GaugeScale.A, READINGS);
            out.accept(new Finding(ID, poured ? Severity.CAUTION : Severity.NOTE, trial.getId(), "parts",
                    Say.message(poured ? "button.none-made" : "button.none", trial.getCode()), List.of("buttons=0", "poured=" + poured), WitnessButton.SOURCE,
                    Say.message(poured ? "button.none-made.remedy" : "button.none.remedy", Rounded.text(button.diameter(), "mm"), Rounded.text(button.thickness(), "mm"),
                            Rounded.text(button.volume(), "ml"))));
        }
        double needed = HardnessReading.neededThickness(GaugeScale.A);
        for (Part button : buttons) {
            if (button.getThickness() != null && button.getThickness() < needed) {
                out.accept(new Finding(ID, Severity.CAUTION, button.getId(), "thickness",
                        Say.message("button.thin", Pieces.name(trial, button), Rounded.text(button.getThickness(), "mm"), Rounded.text(needed, "mm")),
                        List.of("thickness=" + button.getThickness()), WitnessButton.SOURCE, Say.message("button.thin.remedy")));
            }
        }
    }
}
