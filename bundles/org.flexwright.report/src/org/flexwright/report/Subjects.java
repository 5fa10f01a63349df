package org.flexwright.report;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.Attachment;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Identified;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** Things findings speak of, by id; looked up once for the whole report. */
final class Subjects {
    private final Project project;
    private final Map<String, EObject> byId = new HashMap<>();

    Subjects(Project project) {
        this.project = project;
        byId.put(project.getId(), project);
        for (Iterator<EObject> all = EcoreUtil.getAllContents(project, true); all.hasNext();) {
            if (all.next() instanceof Identified identified) {
                byId.putIfAbsent(identified.getId(), identified);
            }
        }
    }

    /** The trial that a thing belongs to, empty where it belongs to none or is not there. */
    Optional<Trial> trial(String id) {
        for (EObject o = byId.get(id); o != null; o = o.eContainer()) {
            if (o instanceof Trial trial) {
                return Optional.of(trial);
            }
        }
        return Optional.empty();
    }

    String name(String id) {
        StringBuilder name = new StringBuilder();
        for (EObject o = byId.get(id); o != null && o != project; o = o.eContainer()) {
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
            case ReferencePart part -> "reference part " + part.getName();
            case ControlPiece piece -> "control piece " + piece.getCode();
            case Specimen piece -> "piece " + piece.getCode();
            case Session session -> "session " + session.getCode();
            case MaterialGrade grade -> grade.getCode();
            case Lot lot -> "lot " + lot.getCode();
            case TargetSheet sheet -> "target sheet v" + sheet.getVersion();
            case Measurement measurement -> measurement.getKey() == null ? "reading" : measurement.getKey().getProperty();
            case Instrument instrument -> instrument.getName();
            case Recipe recipe -> "recipe " + recipe.getCode() + " v" + recipe.getVersion();
            case Attachment attachment -> attachment.getFileName();
            case Target target -> target.getKey() == null ? "target" : target.getKey().getProperty();
            default -> "";
        };
    }
}
