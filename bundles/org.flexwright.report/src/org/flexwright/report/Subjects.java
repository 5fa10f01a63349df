package org.flexwright.report;

import java.util.Iterator;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.Identified;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** Things findings speak of, by id. */
final class Subjects {
    private Subjects() {
    }

    static EObject find(Project project, String id) {
        if (id.equals(project.getId())) {
            return project;
        }
        if (project.eResource() != null) {
            return project.eResource().getEObject(id);
        }
        for (Iterator<EObject> all = EcoreUtil.getAllContents(project, true); all.hasNext();) {
            if (all.next() instanceof Identified identified && id.equals(identified.getId())) {
                return identified;
            }
        }
        return null;
    }

    static String name(Project project, String id) {
        StringBuilder name = new StringBuilder();
        for (EObject o = find(project, id); o != null && o != project; o = o.eContainer()) {
            String own = own(o);
            if (!own.isEmpty()) {
                name.insert(0, own + (name.isEmpty() ? "" : ", "));
            }
        }
        return name.isEmpty() ? "project" : name.toString();
    }

    private static String own(EObject object) {
        return switch (object) {
            case Trial trial -> trial.getCode();
            case Step step -> step.getTitle();
            case Specimen piece -> "piece " + piece.getCode();
            case Session session -> "session " + session.getCode();
            case MaterialGrade grade -> grade.getCode();
            case Lot lot -> "lot " + lot.getCode();
            case TargetSheet sheet -> "target sheet v" + sheet.getVersion();
            case Target target -> target.getKey() == null ? "target" : target.getKey().getProperty();
            default -> "";
        };
    }
}
