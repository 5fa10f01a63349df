package org.flexwright.workbench.pages.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.quantity.Units;
import org.flexwright.workbench.pages.common.Properties;

/**
 * What is to be read: a property under conditions, on which pieces, with which gauge, how often.
 *
 * @param property   the property
 * @param key        its conditions; contained nowhere
 * @param instrument the gauge, or null
 * @param pieces     the pieces in order
 * @param wanted     readings on each piece
 */
public record ReadingPlan(PropertyDef property, PropertyKey key, Instrument instrument, List<Specimen> pieces, int wanted) {

    /** Pieces that are read together. */
    public record Group(String words, List<Specimen> pieces) {
    }

    /** Something to read. */
    public record What(String words, PropertyDef property, PropertyKey key) {
    }

    public ReadingPlan {
        pieces = List.copyOf(pieces);
    }

    /** The pieces of the project: newest trial first, then the reference, then control pieces; of a trial those of that kind, or all if it has none. */
    static List<Group> groups(Project project, PieceKind kind) {
        List<Group> groups = new ArrayList<>();
        for (Trial trial : List.copyOf(project.getTrials()).reversed()) {
            List<Part> suiting = trial.getParts().stream().filter(part -> part.getPieceKind() == kind).toList();
            List<Part> parts = suiting.isEmpty() ? List.copyOf(trial.getParts()) : suiting;
            if (!parts.isEmpty()) {
                groups.add(new Group(trial.getCode() + ", " + codes(parts), new ArrayList<>(parts)));
            }
        }
        project.getReferenceParts().forEach(part -> groups.add(new Group("Reference part" + name(part.getName()), List.of(part))));
        project.getControlPieces().forEach(piece -> groups.add(new Group("Control piece" + name(piece.getCode()), List.of(piece))));
        return groups;
    }

    private static String codes(List<Part> parts) {
        String first = parts.getFirst().getCode();
        return parts.size() == 1 ? first : first + " to " + parts.getLast().getCode();
    }

    private static String name(String words) {
        return words == null || words.isBlank() ? "" : ", " + words;
    }

    /** What can be read: first what the newest target sheet asks for, then what was read before, then everything else. */
    public static List<What> whats(Project project, PropertyCatalogue catalogue) {
        Map<String, What> whats = new LinkedHashMap<>();
        TargetSheet sheet = TargetSheets.current(project);
        if (sheet != null) {
            sheet.getTargets().stream().map(Target::getKey).forEach(key -> put(whats, catalogue, key));
        }
        project.getTrials().forEach(trial -> trial.getParts().forEach(part -> part.getMeasurements().stream().map(Measurement::getKey)
                .forEach(key -> put(whats, catalogue, key))));
        catalogue.all().stream().sorted(Comparator.comparing(property -> property.id().contains("apparent"))).forEach(property -> { // the plain gauge before its thin-piece twin
            PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
            key.setProperty(property.id());
            key.setPieceKind(PieceKind.PART);
            put(whats, catalogue, key);
        });
        return List.copyOf(whats.values());
    }

    private static void put(Map<String, What> whats, PropertyCatalogue catalogue, PropertyKey key) {
        if (key == null || key.getProperty() == null) {
            return;
        }
        catalogue.find(key.getProperty()).ifPresent(property -> {
            String words = Properties.words(key, catalogue);
            whats.putIfAbsent(words, new What(words, property, EcoreUtil.copy(key)));
        });
    }

    /** Where work most likely goes on: what was read last in the session, else the first thing there is. */
    public static What likely(List<What> whats, Project project, Session session) {
        Measurement last = null;
        for (Trial trial : project.getTrials()) {
            for (Part part : trial.getParts()) {
                for (Measurement m : part.getMeasurements()) {
                    if (m.getSession() == session && m.getKey() != null) {
                        last = m;
                    }
                }
            }
        }
        if (last != null) {
            for (What what : whats) {
                if (what.property().id().equals(last.getKey().getProperty()) && PartValues.differences(what.key(), last.getKey(), what.property()).isEmpty()) {
                    return what;
                }
            }
        }
        return whats.isEmpty() ? null : whats.getFirst();
    }

    /** The gauge of the session this property was last read with, else the only one that shows its unit; null when neither is clear. */
    public static Instrument likelyGauge(Project project, Session session, PropertyDef property) {
        List<Instrument> gauges = gauges(project, session);
        List<Specimen> all = new ArrayList<>(project.getControlPieces());
        project.getTrials().forEach(trial -> all.addAll(trial.getParts()));
        List<Instrument> fitting = gauges.stream().filter(g -> g.getUnit() != null && Units.find(property.kind(), g.getUnit()).isPresent()).toList();
        return all.stream().flatMap(piece -> piece.getMeasurements().stream())
                .filter(m -> m.getKey() != null && property.id().equals(m.getKey().getProperty()) && m.getInstrument() != null && gauges.contains(m.getInstrument()))
                .reduce((a, b) -> b).map(Measurement::getInstrument).orElse(fitting.size() == 1 ? fitting.getFirst() : null);
    }

    /** The gauges on the bench; all of the project when the session names none. */
    static List<Instrument> gauges(Project project, Session session) {
        return List.copyOf(session.getInstruments().isEmpty() ? project.getInstruments() : session.getInstruments());
    }

    /** The property that stands for the same gauge on a thin or curved piece; null when there is none or it is this one. */
    static PropertyDef apparent(PropertyDef property, PropertyCatalogue catalogue) {
        return property.id().contains("apparent") || property.yesNo() ? null : catalogue.all().stream()
                .filter(other -> other.kind() == property.kind() && other.id().contains("apparent")).findFirst().orElse(null);
    }
}
