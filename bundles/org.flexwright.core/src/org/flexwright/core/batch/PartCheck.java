package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Batch;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Interval;

/**
 * A check of one part against the limits of the recipe: of the first part of a batch before the rest is made, and of the last one.
 * One part judges no recipe; it tells whether something went wrong.
 *
 * @param which    first or last part, in words
 * @param pot      the trial; null while the batch has none
 * @param part     the part; null while it is not made
 * @param state    where it stands
 * @param sentence what was found, or what is to be done
 */
public record PartCheck(String which, Trial pot, Part part, State state, String sentence) {

    /** Where a check stands. */
    public enum State {
        /** Not made, or not everything is read. */
        OPEN,
        /** Everything is read and inside. */
        INSIDE,
        /** Something is outside. */
        OUTSIDE
    }

    /** The check of the first part of the first pot and of the last part of the last one. */
    public static List<PartCheck> of(Project project, Batch batch, PropertyCatalogue properties) {
        List<Trial> pots = batch.getPots();
        if (pots.isEmpty()) {
            return List.of();
        }
        TargetSheet sheet = batch.getRecipe() != null && batch.getRecipe().getTargets() != null ? batch.getRecipe().getTargets() : TargetSheets.current(project);
        return List.of(check("first", pots.getFirst(), false, sheet, properties), check("last", pots.getLast(), true, sheet, properties));
    }

    private static PartCheck check(String which, Trial pot, boolean last, TargetSheet sheet, PropertyCatalogue properties) {
        String words = say(which);
        List<Part> parts = pot.getParts().stream().filter(part -> part.getPieceKind() == PieceKind.PART).toList();
        boolean allMade = pot.getPartsWanted() == null || parts.size() >= pot.getPartsWanted();
        if (parts.isEmpty() || last && !allMade) {
            return new PartCheck(words, pot, null, State.OPEN, say("notMade", words, pot.getCode()));
        }
        Part part = last ? parts.getLast() : parts.getFirst();
        if (part.isFailed()) {
            return new PartCheck(words, pot, part, State.OUTSIDE, say("failed", words, part.getCode(), part.getFailReason() == null ? "" : part.getFailReason()).strip());
        }
        if (sheet == null || sheet.getTargets().isEmpty()) {
            return new PartCheck(words, pot, part, State.OPEN, say("noLimits", words));
        }
        List<String> open = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        for (Target target : sheet.getTargets()) {
            PropertyDef def = target.getKey() == null ? null : properties.find(target.getKey().getProperty()).orElse(null);
            PartValue value = def == null ? null : PartValues.of(part, target.getKey(), def);
            if (value == null || value.notComparable() || value.readings() == 0) {
                open.add(def == null ? String.valueOf(target.getKey() == null ? "?" : target.getKey().getProperty()) : def.title());
            } else if (!inside(target, value)) {
                outside.add(say("outside", def.title(), def.yesNo() ? value.yes() + "/" + value.readings() : FieldText.digits(value.value()) + " " + def.kind().unit().display(),
                        Limits.text(target, def)));
            }
        }
        if (!outside.isEmpty()) {
            return new PartCheck(words, pot, part, State.OUTSIDE, say("found", words, part.getCode(), String.join("; ", outside)));
        }
        return open.isEmpty() ? new PartCheck(words, pot, part, State.INSIDE, say("inside", words, part.getCode()))
                : new PartCheck(words, pot, part, State.OPEN, say("notRead", words, part.getCode(), String.join(", ", open)));
    }

    private static boolean inside(Target target, PartValue value) {
        if (target.getRule() == TargetRule.NEVER) {
            return value.yes() == 0;
        }
        if (target.getRule() == TargetRule.ALWAYS) {
            return value.no() == 0;
        }
        Interval limits = Limits.of(target);
        return limits == null || value.low() >= limits.low() && value.high() <= limits.high() || value.censored() && value.high() >= limits.low() && value.low() <= limits.high();
    }

    private static String say(String key, Object... args) {
        return Message.of(PartCheck.class, "check." + key, args).text();
    }
}
