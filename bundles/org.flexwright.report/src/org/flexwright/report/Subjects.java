package org.flexwright.report;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.naming.Names;
import org.flexwright.model.Identified;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;

/** Things findings speak of, by id; looked up once for the whole report. */
final class Subjects {
    private final Map<String, EObject> byId = new HashMap<>();

    Subjects(Project project) {
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
        return Names.path(byId.get(id));
    }
}
