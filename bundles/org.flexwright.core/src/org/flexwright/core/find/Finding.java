package org.flexwright.core.find;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * One thing a rule has to say about the project; recomputed, never stored.
 *
 * @param rule      id of the rule
 * @param severity  how much it matters
 * @param subject   id of the model object it is about
 * @param feature   name of the feature beside which it is shown, or empty; for plugin data the feature of {@code details}
 * @param message   one sentence: what and where
 * @param restsOn   the values it rests on, as text; they make up the hash under which it can be overridden
 * @param source    what the rule rests on
 * @param remedy    one sentence: what would help
 */
public record Finding(String rule, Severity severity, String subject, String feature, Message message, List<String> restsOn, Source source,
        Message remedy) {
    public Finding {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(remedy, "remedy");
        feature = feature == null ? "" : feature;
        restsOn = List.copyOf(restsOn);
    }
}
