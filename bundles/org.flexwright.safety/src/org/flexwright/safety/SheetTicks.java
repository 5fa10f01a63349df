package org.flexwright.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;

/**
 * Which data sheets a person still has to read before a step. A tick counts for one session and lot; it is written by
 * {@link Acknowledgements#add} with the prompt {@link SafetyPrompts#SHEET}, never by the program itself.
 */
public final class SheetTicks {

    /**
     * A data sheet nobody ticked.
     *
     * @param grade   the product
     * @param lot     its lot, or null when the step names none
     * @param session the session of the step, or null when it has none
     */
    public record Missing(MaterialGrade grade, Lot lot, Session session) {
        public Missing {
            Objects.requireNonNull(grade, "grade");
        }
    }

    private SheetTicks() {
    }

    /** Materials handled in a step, those of a premix too; the mould's own material is not one of them. */
    public static List<MaterialUse> uses(Step step) {
        return Mixtures.materials(step).stream().filter(use -> use.getGrade() != null && use.getRole() != PartRole.MOULD).toList();
    }

    /** Data sheets not ticked in the session of the step, each once. */
    public static List<Missing> missing(Project project, Step step) {
        Set<Missing> missing = new LinkedHashSet<>();
        for (MaterialUse use : uses(step)) {
            if (tick(project, step, use.getLot()) == null) {
                missing.add(new Missing(use.getGrade(), use.getLot(), step.getSession()));
            }
        }
        return new ArrayList<>(missing);
    }

    /**
     * The newest tick of a lot's data sheet in the session of a step; without a lot, one for this very step. Null when there is none. A
     * tick without date and revision of the sheet is none.
     */
    static Acknowledgement tick(Project project, Step step, Lot lot) {
        Acknowledgement newest = null;
        for (Acknowledgement tick : project.getAcknowledgements()) {
            boolean sheet = SafetyPrompts.SHEET.equals(tick.getPrompt()) && tick.getSheetDate() != null && tick.getSheetRevision() != null
                    && !tick.getSheetRevision().isBlank();
            boolean here = lot == null ? tick.getLot() == null && tick.getStep() == step : tick.getLot() == lot;
            boolean session = step.getSession() != null && tick.getSession() == step.getSession();
            if (sheet && here && session) {
                newest = tick;
            }
        }
        return newest;
    }
}
