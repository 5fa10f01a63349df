package org.flexwright.core.bench;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Which data sheets came with what is in a step, so that a gloved hand need not type them. */
final class Sheets {

    /**
     * A data sheet.
     *
     * @param date     its date
     * @param revision its revision
     */
    record Sheet(LocalDate date, String revision) {
        String text() {
            return date + " " + revision;
        }
    }

    private Sheets() {
    }

    /** The lots a step's cautions speak of: its own, or all of the trial when nothing is added in it. */
    private static List<Lot> lots(Step step) {
        List<Lot> own = Acknowledgements.lots(step);
        return !own.isEmpty() || !(step.eContainer() instanceof Trial trial) ? own
                : trial.getSteps().stream().flatMap(s -> Acknowledgements.lots(s).stream()).distinct().toList();
    }

    /** True when every lot says which data sheet came with it. */
    static boolean known(Step step) {
        List<Lot> lots = lots(step);
        return !lots.isEmpty() && lots.stream().allMatch(lot -> of(lot).isPresent());
    }

    /** The sheet that came with a lot. */
    static Optional<Sheet> of(Lot lot) {
        boolean said = lot.getSheetDate() != null && lot.getSheetRevision() != null && !lot.getSheetRevision().isBlank();
        return said ? Optional.of(new Sheet(lot.getSheetDate(), lot.getSheetRevision())) : Optional.empty();
    }

    /** For a caution that speaks of no lot in particular: the newest sheet of those that came with the trial's lots. */
    static Optional<Sheet> newest(Step step) {
        return lots(step).stream().flatMap(lot -> of(lot).stream()).max(Comparator.comparing(Sheet::date));
    }

    /** The sheet that was read last in this project, to be offered and never taken by itself. */
    static Optional<Sheet> last(Project project) {
        return project.getAcknowledgements().stream().filter(a -> a.getSheetDate() != null && a.getSheetRevision() != null && a.getAt() != null)
                .max(Comparator.comparing(Acknowledgement::getAt)).map(a -> new Sheet(a.getSheetDate(), a.getSheetRevision()));
    }
}
