package org.flexwright.core.property;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * What a family of materials can do about a target sheet, before anything is bought. Usual ranges are compared: "can" only means worth a
 * trial, and "cannot" only that the usual grades do not.
 *
 * @param id      id of the family, as a material names it
 * @param title   a few words
 * @param answers one for each target whose property is known, in the order of the sheet
 */
public record FamilyReach(String id, String title, List<Answer> answers) {

    /** What the usual range says about a target. */
    public enum Reply {
        CAN, CANNOT, UNKNOWN
    }

    /**
     * One target.
     *
     * @param property what is wanted
     * @param reply    can, cannot or unknown
     * @param reason   one sentence
     * @param source   what the usual range rests on; common practice when there is none
     */
    public record Answer(PropertyDef property, Reply reply, Message reason, Source source) {
        public Answer {
            Objects.requireNonNull(property, "property");
            Objects.requireNonNull(reply, "reply");
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(source, "source");
        }
    }

    public FamilyReach {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        answers = List.copyOf(answers);
    }

    /** True when one target at least cannot be met by the usual grades. */
    public boolean excluded() {
        return answers.stream().anyMatch(a -> a.reply() == Reply.CANNOT);
    }
}
