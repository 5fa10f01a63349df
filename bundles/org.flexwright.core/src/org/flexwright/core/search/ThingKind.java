package org.flexwright.core.search;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.Message;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Attachment;
import org.flexwright.model.Batch;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Mould;
import org.flexwright.model.Need;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.StopOverride;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** The things that can be found, in the order in which they are shown. What is inside a thing is found through it. */
public enum ThingKind {
    /** A trial with its steps, parts, readings, notes and decisions. */
    TRIAL(Trial.class, "trials", "pots"),
    /** A frozen recipe. */
    RECIPE(Recipe.class, "recipes"),
    /** A batch. */
    BATCH(Batch.class, "batches"),
    /** A lot. */
    LOT(Lot.class, "lots"),
    /** A material. */
    MATERIAL(MaterialGrade.class, "materials", "grades"),
    /** A premix. */
    PREMIX(Premix.class, "premixes"),
    /** A mould with its casts. */
    MOULD(Mould.class, "moulds", "molds"),
    /** A time at the bench. */
    SESSION(Session.class, "sessions"),
    /** A target sheet. */
    TARGETS(TargetSheet.class, "targets", "sheets"),
    /** A need. */
    NEED(Need.class, "needs"),
    /** A reference part. */
    REFERENCE(ReferencePart.class, "references"),
    /** A control piece. */
    CONTROL(ControlPiece.class, "controls"),
    /** An instrument. */
    INSTRUMENT(Instrument.class, "instruments", "gauges"),
    /** A photo or another file. */
    FILE(Attachment.class, "files", "photos", "pictures", "attachments"),
    /** A stop finding that was gone against, with its reason. */
    OVERRIDE(StopOverride.class, "overrides"),
    /** A caution or data sheet that was read; among other things they are counted only, shown when asked for. */
    CAUTION(Acknowledgement.class, "cautions"),
    /** The project itself. */
    PROJECT(Project.class, "projects");

    private final Class<?> type;
    private final List<String> words;

    ThingKind(Class<?> type, String... words) {
        this.type = type;
        this.words = List.of(words);
    }

    /** The kind in words, many of it: {@code Trials}. */
    public String title() {
        return Message.of(ThingKind.class, "kind." + name()).text();
    }

    /** The kind that a word alone asks for, such as {@code lots}; one of a kind is an ordinary word. */
    static Optional<ThingKind> ofWord(String word) {
        return List.of(values()).stream().filter(k -> k.words.contains(word)).findFirst();
    }

    /** The kind of a thing that stands in a project as one of its own, else empty. */
    static Optional<ThingKind> of(EObject thing) {
        EObject owner = thing.eContainer();
        boolean top = thing instanceof Project || owner instanceof Project || thing instanceof Lot && owner != null && owner.eContainer() instanceof Project;
        return top ? List.of(values()).stream().filter(k -> k.type.isInstance(thing)).findFirst() : Optional.empty();
    }
}
