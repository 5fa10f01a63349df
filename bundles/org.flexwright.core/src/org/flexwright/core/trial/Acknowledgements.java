package org.flexwright.core.trial;

import java.time.LocalDate;
import java.util.List;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;

/** Prompts a person read and ticked: once a session and lot, never ticked for the person. */
public final class Acknowledgements {
    private Acknowledgements() {
    }

    /**
     * Writes down that a person read a prompt and, when it asks for that, the product's data sheet.
     *
     * @param prompt     id of the prompt
     * @param lot        the lot it speaks of, or null
     * @param who        the person; needed
     * @param sheetDate  date of the data sheet read, or null when the prompt asks for none
     * @param needsSheet true when the prompt asks for the data sheet: then date and revision are needed
     */
    public static Acknowledgement add(Edit edit, String prompt, Session session, Lot lot, Step step, String who, LocalDate sheetDate,
            String sheetRevision, boolean needsSheet) {
        if (who == null || who.isBlank()) {
            throw PlanException.of("ack.who");
        }
        if (session == null) {
            throw PlanException.of("ack.session");
        }
        if (needsSheet && (sheetDate == null || sheetRevision == null || sheetRevision.isBlank())) {
            throw PlanException.of("ack.sheet");
        }
        Acknowledgement tick = ModelFactory.eINSTANCE.createAcknowledgement();
        tick.setPrompt(prompt);
        tick.setSession(session);
        tick.setLot(lot);
        tick.setStep(step);
        tick.setWho(who.strip());
        tick.setAt(edit.now());
        tick.setSheetDate(sheetDate);
        tick.setSheetRevision(sheetRevision);
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__ACKNOWLEDGEMENTS, tick);
        return tick;
    }

    /** True when the prompt was ticked in that session for that lot (null: for no lot in particular). */
    public static boolean given(Project project, String prompt, Session session, Lot lot) {
        return session != null && project.getAcknowledgements().stream().anyMatch(a -> prompt.equals(a.getPrompt()) && a.getSession() == session
                && (lot == null || a.getLot() == lot));
    }

    /** The lots used in a step. */
    public static List<Lot> lots(Step step) {
        return Mixtures.materials(step).stream().map(u -> u.getLot()).filter(java.util.Objects::nonNull).distinct().toList();
    }
}
