package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.cause.Softer;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.SofterCauses;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Why the parts of a trial may be softer than those of another one. */
@Command(name = "causes", description = "Why the parts may be softer than with less filler: ranked from this trial's own record, each with the cheapest check.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial causes T07", "Or: flexwright trial causes T07 --than T05" })
final class CausesCall extends TrialNoun.OneTrial {
    @Option(names = "--than", paramLabel = "OTHER", description = "The trial to compare with; the less filled one it is based on when left out.")
    String than;

    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Trial trial = trial(session);
        Optional<Softer> softer = Softer.of(trial, services.registries().properties());
        Trial other = than == null ? softer.map(Softer::than).orElse(trial.getBasedOn()) : Find.trial(session.project(), than);
        Reply reply = new Reply(id()).words("trial", trial.getCode());
        if (other != null) {
            reply.words("than", other.getCode());
        }
        softer.filter(s -> s.than() == other).ifPresentOrElse(s -> reply.line(trial.getCode() + " is softer than " + other.getCode() + ": " + Figures.of(s.hardness(), "", 3)
                + " against " + Figures.of(s.before(), "", 3) + " (" + s.property().title() + "), with " + Figures.of(s.load(), "", 2) + " against " + Figures.of(s.loadBefore(),
                        "", 2)
                + " g of filler to 100 g of polymer."),
                () -> reply.line(other == null ? "Nothing to compare with: " + trial.getCode() + " is based on no other trial."
                        : "The readings do not show that " + trial.getCode() + " is softer than " + other.getCode() + " with less filler; these would be the causes."));
        List<SofterCause> causes = SofterCauses.of(trial, other, services.registries(), services.registries().properties());
        if (causes.isEmpty()) {
            reply.line("The steps of this trial speak of no cause.");
        }
        int number = 1;
        for (SofterCause cause : causes) {
            add(reply, number++, cause);
        }
        return reply;
    }

    private static void add(Reply reply, int number, SofterCause cause) {
        reply.line(String.format("%2d  %s: %s", number, cause.title().text(), cause.standing().words()));
        reply.line("      " + cause.evidence().text());
        if (cause.stiffness() != null) {
            Estimate left = cause.stiffness().times(100);
            reply.result(cause.id(), Value.band(left, "%"));
            reply.line("      stiffness left by this alone: " + FieldText.band(left.low(), left.likely(), left.high(), QuantityKind.FRACTION, "%") + "   ["
                    + cause.source().display() + "]");
        }
        reply.line("      check: " + cause.check().text());
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("cause", cause.id());
        row.put("standing", cause.standing().name().toLowerCase(java.util.Locale.ROOT));
        row.put("evidence", cause.evidence().text());
        row.put("check", cause.check().text());
        row.put("source", cause.source().display());
        reply.item(row);
    }
}
