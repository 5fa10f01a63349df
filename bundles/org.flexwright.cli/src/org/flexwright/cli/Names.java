package org.flexwright.cli;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Measurement;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** What people call a thing in a project. */
final class Names {
    private Names() {
    }

    static String of(EObject object) {
        String own = switch (object) {
            case null -> "project";
            case Trial trial -> trial.getCode();
            case Step step -> step.getTitle();
            case ReferencePart part -> "reference part";
            case Specimen piece -> "piece " + piece.getCode();
            case Measurement measurement -> measurement.getKey() == null ? "reading" : measurement.getKey().getProperty();
            case Session session -> "session " + session.getCode();
            case MaterialGrade grade -> grade.getCode();
            case Lot lot -> "lot " + lot.getCode();
            case TargetSheet sheet -> "target sheet v" + sheet.getVersion();
            case Target target -> target.getKey() == null ? "target" : target.getKey().getProperty();
            default -> "";
        };
        EObject container = object == null ? null : object.eContainer();
        String outer = container == null || container.eContainer() == null ? "" : of(container);
        return outer.isEmpty() ? own.isEmpty() ? "project" : own : own.isEmpty() ? outer : outer + ", " + own;
    }
}
