package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.StepState;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/** What still stands between a trial and a recipe: three parts, two sessions, every step done or left out, every target in (common practice, no source). */
public final class RecipeGate {
    private static final int PARTS = 3;
    private static final int SESSIONS = 2;

    private RecipeGate() {
    }

    /** What is missing, each in a few words; empty when the trial may become a recipe. */
    public static List<String> missing(Project project, Trial trial, PropertyCatalogue properties) {
        List<String> missing = new ArrayList<>();
        TargetSheet sheet = TargetSheets.current(project);
        if (sheet == null || sheet.getFrozenAt() == null) {
            missing.add(say("recipe.sheet"));
        }
        if (trial.getState() != TrialState.MADE) {
            missing.add(say("recipe.made"));
        }
        List<Part> parts = trial.getParts().stream().filter(p -> p.getPieceKind() == PieceKind.PART && !p.isFailed()).toList();
        long sessions = parts.stream().flatMap(p -> p.getMeasurements().stream()).map(m -> m.getSession()).filter(Objects::nonNull).distinct().count();
        if (parts.size() < PARTS) {
            missing.add(say("recipe.parts", PARTS, parts.size()));
        }
        if (sessions < SESSIONS) {
            missing.add(say("recipe.sessions", SESSIONS, sessions));
        }
        trial.getSteps().stream().filter(s -> s.isUnconfirmed()).forEach(s -> missing.add(say("recipe.unconfirmed", s.getTitle())));
        trial.getSteps().stream().filter(s -> s.getState() == StepState.PLANNED || s.getState() == StepState.RUNNING).forEach(s -> missing.add(say("recipe.step",
                s.getTitle())));
        if (sheet != null) {
            sheet.getTargets().forEach(target -> verdict(target, trial, properties, missing));
        }
        return List.copyOf(missing);
    }

    private static void verdict(Target target, Trial trial, PropertyCatalogue properties, List<String> missing) {
        String id = target.getKey().getProperty();
        PropertyDef def = properties.find(id).orElse(null);
        if (def == null) {
            missing.add(say("recipe.absent", id));
            return;
        }
        Verdict verdict = Verdicts.judge(target, def, PartValues.of(trial, target.getKey(), def)).verdict();
        if (verdict != Verdict.IN) {
            missing.add(say("recipe.verdict", def.title(), verdict.word()));
        }
    }

    private static String say(String key, Object... args) {
        return Message.of(RecipeGate.class, key, args).text();
    }
}
