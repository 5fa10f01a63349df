package org.flexwright.core.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Attachment;
import org.flexwright.model.Batch;
import org.flexwright.model.BenchNote;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Decision;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.RankList;
import org.flexwright.model.Ranking;
import org.flexwright.model.Recipe;
import org.flexwright.model.Recording;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.SavedSearch;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** What people call a thing: short for trees, tabs and tables; as a path for sentences. */
public final class Names {
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern HUMPS = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    private static final List<String> LEADING = List.of("code", "title", "name", "text", "caption", "fileName", "property");
    /** Letters of a name on a tab. */
    private static final int LONGEST = 28;

    private Names() {
    }

    /** The thing's code and title, or what else tells it from its neighbours; never empty. */
    public static String of(EObject object) {
        if (object instanceof Project project) {
            return filled(project.getTitle()) ? project.getTitle() : "Project without a title";
        }
        if (object instanceof TargetSheet sheet) {
            return "Version " + sheet.getVersion() + (sheet.getFrozenAt() == null ? "" : ", frozen");
        }
        if (object instanceof ReferencePart part) {
            return filled(part.getName()) ? part.getName() : filled(part.getCode()) ? part.getCode() : "Reference part";
        }
        if (object instanceof MaterialUse use) {
            return use.getPremix() != null ? kind(use.getPremix()) + " " + of(use.getPremix()) : use.getGrade() == null ? "Material not chosen" : of(use.getGrade());
        }
        if (object instanceof Recipe recipe) {
            return (filled(recipe.getCode()) ? recipe.getCode() : "Recipe") + " v" + recipe.getVersion();
        }
        if (object instanceof Acknowledgement tick) {
            return "Caution read" + (filled(tick.getPrompt()) ? ": " + tick.getPrompt() : "") + (filled(tick.getWho()) ? ", by " + tick.getWho() : "");
        }
        if (object instanceof StopOverride override) {
            return "Gone against " + (filled(override.getRule()) ? override.getRule() : "a finding");
        }
        if (object instanceof MouldCast cast) {
            return cast.getTrial() == null ? "Cast without a trial" : "Cast of " + cast.getTrial().getCode();
        }
        if (object instanceof BenchNote note) {
            return filled(note.getNote()) ? shortened(note.getNote()) : "Bench note";
        }
        if (object instanceof Decision decision) {
            return upper(word(decision.getWord())) + (filled(decision.getReason()) ? ": " + shortened(decision.getReason()) : "");
        }
        if (object instanceof Measurement measurement && measurement.eContainer() instanceof Specimen piece) {
            return "Reading of " + of(piece);
        }
        List<String> words = new ArrayList<>();
        for (String feature : LEADING) {
            String value = text(object, feature);
            if (filled(value) && words.size() < 2 && !words.contains(value)) {
                words.add(value);
            }
        }
        if (words.isEmpty() && filled(text(object, "kind"))) {
            words.add(text(object, "kind"));
        }
        return words.isEmpty() ? kind(object) + " without a name" : String.join("  ", words);
    }

    /** The thing's code alone where it has one, else {@link #of}: for a tab. */
    public static String tab(EObject object) {
        String code = code(object);
        if (filled(code)) {
            return object instanceof Recipe recipe ? code + " v" + recipe.getVersion() : code;
        }
        if (object instanceof TargetSheet sheet) {
            return "Targets v" + sheet.getVersion();
        }
        return shortened(of(object));
    }

    /** Whose it is and what it is, in a sentence: {@code T07, piece P2}; {@code project} for the project itself and for null. */
    public static String path(EObject object) {
        List<String> parts = new ArrayList<>();
        for (EObject o = object; o != null && !(o instanceof Project); o = o.eContainer()) {
            String own = spoken(o);
            if (filled(own)) {
                parts.add(0, own);
            }
        }
        return parts.isEmpty() ? "project" : String.join(", ", parts);
    }

    /** A thing inside a sentence; empty for what has no name of its own and goes by the name of what holds it. */
    private static String spoken(EObject object) {
        return switch (object) {
            case Trial trial -> trial.getCode();
            case Step step -> step.getTitle();
            case ReferencePart part -> ("reference part " + Objects.toString(part.getName(), "")).strip();
            case ControlPiece piece -> "control piece " + piece.getCode();
            case Specimen piece -> "piece " + piece.getCode();
            case Measurement measurement -> measurement.getKey() == null ? "reading" : measurement.getKey().getProperty();
            case Recording recording -> "recording " + recording.getCode();
            case Session session -> "session " + session.getCode();
            case MaterialGrade grade -> grade.getCode();
            case Lot lot -> "lot " + lot.getCode();
            case TargetSheet sheet -> "target sheet v" + sheet.getVersion();
            case Target target -> target.getKey() == null ? "target" : target.getKey().getProperty();
            case Instrument instrument -> instrument.getName();
            case Recipe recipe -> "recipe " + recipe.getCode() + " v" + recipe.getVersion();
            case Attachment attachment -> attachment.getFileName();
            case GaugeStudy study -> "gauge study " + study.getCode();
            case GaugeCell cell -> (Objects.toString(cell.getPiece(), "") + " " + Objects.toString(cell.getWho(), "")).strip();
            case Ranking ranking -> "ranking " + ranking.getCode();
            case RankList list -> "order of " + list.getWho();
            case Mould mould -> "mould " + mould.getCode();
            case MouldCast cast -> "cast" + (cast.getTrial() == null ? "" : " of " + cast.getTrial().getCode());
            case Premix premix -> "premix " + premix.getCode();
            case Batch batch -> "batch " + batch.getCode();
            case BenchNote note -> "note";
            case Decision decision -> "decision";
            case SavedSearch search -> "saved search " + search.getName();
            default -> "";
        };
    }

    /** A piece as it can be typed: {@code T05/P1}; a reference part or control piece by its code or name. */
    public static String piece(Specimen piece) {
        String own = filled(piece.getCode()) ? piece.getCode() : of(piece);
        return piece.eContainer() instanceof Trial trial && filled(trial.getCode()) ? trial.getCode() + "/" + own : own;
    }

    /** The short code of a thing, empty where it has none. */
    public static String code(EObject object) {
        return text(object, "code");
    }

    /** A constant as people type it: {@code WITNESS_BUTTON} becomes {@code witness button}; the components are A and B. */
    public static String word(Enum<?> constant) {
        if (constant == PartRole.COMPONENT_A || constant == PartRole.COMPONENT_B) {
            return constant == PartRole.COMPONENT_A ? "A" : "B";
        }
        return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String shortened(String name) {
        String line = SPACES.matcher(name.strip()).replaceAll(" ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1).strip() + "…";
    }

    private static String upper(String words) {
        return words.isEmpty() ? "Decision" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Where a thing is, for a table: the thing of the project it belongs to, then its own name. */
    public static String where(EObject object) {
        EObject top = object;
        while (top.eContainer() != null && !(top.eContainer() instanceof Project)) {
            top = top.eContainer();
        }
        return top == object ? tab(object) : tab(top) + "  " + of(object);
    }

    /** What kind of thing it is, in words. */
    public static String kind(EObject object) {
        if (object.eClass().getEPackage() == ModelPackage.eINSTANCE && object.eClass() == ModelPackage.Literals.MATERIAL_GRADE) {
            return "Material";
        }
        String spaced = HUMPS.matcher(object.eClass().getName()).replaceAll(" ").toLowerCase(Locale.ROOT);
        return upper(spaced);
    }

    static String text(EObject object, String feature) {
        EStructuralFeature known = object.eClass().getEStructuralFeature(feature);
        return known != null && !known.isMany() && object.eGet(known) instanceof String words ? words.strip() : "";
    }

    private static boolean filled(String words) {
        return words != null && !words.isBlank();
    }
}
