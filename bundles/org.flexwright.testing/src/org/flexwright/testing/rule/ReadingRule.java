package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Measurement;
import org.flexwright.testing.Say;

/** A rule that looks at each durometer measurement of a trial. {@link ReferenceReadingsRule} uses it on the other pieces. */
abstract class ReadingRule implements FindingRule, Pieces.Look {

    @Override
    public final void check(RuleContext context, Consumer<Finding> out) {
        Pieces.ofTrial(context.project(), context.trial(), this, out);
    }

    /** A finding about a measurement with the sentence {@code key} and the remedy {@code key.remedy}. */
    final Finding finding(Severity severity, Measurement measurement, String feature, String key, List<String> restsOn, Source source, Object... arguments) {
        return new Finding(id(), severity, measurement.getId(), feature, Say.message(key, arguments), restsOn, source, Say.message(key + ".remedy", arguments));
    }
}
