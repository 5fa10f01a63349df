package org.flexwright.core.find.rules;

import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Identified;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;

/** Findings of these rules: a sentence and its remedy under {@code key.remedy}. */
final class Say {

    private Say() {
    }

    static Finding finding(FindingRule rule, Severity severity, Identified subject, String feature, String key, List<String> restsOn, Source source, Object... args) {
        return new Finding(rule.id(), severity, subject.getId() == null ? "" : subject.getId(), feature, Message.of(Say.class, key, args), restsOn, source,
                Message.of(Say.class, key + ".remedy", args));
    }

    static String words(String key, Object... args) {
        return Message.of(Say.class, key, args).text();
    }

    static String name(Trial trial) {
        return trial.getCode() == null ? words("unnamed") : trial.getCode();
    }

    static String name(Specimen piece) {
        return piece.getCode() == null ? words("unnamed") : piece.getCode();
    }

    /** A lot as a sentence names it: its number, and of what. */
    static String lot(MaterialUse use, Lot lot) {
        String code = lot.getCode() == null ? words("unnamed") : lot.getCode();
        return use.getGrade() == null || use.getGrade().getName() == null ? code : words("lotOf", code, use.getGrade().getName());
    }

    static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
