package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.flexwright.core.Figures;
import org.flexwright.core.Watch;
import org.flexwright.core.rubber.FitWords;
import org.flexwright.core.rubber.LawRanking;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Weighting;

/** Fits of rubber laws as replies. */
final class FitReply {
    private static final String MPA = "MPa";
    private static final int DIGITS = 3;

    private FitReply() {
    }

    /** One law, or all beside each other. */
    static Reply of(Reply reply, RubberForm form, Weighting weighting, List<RubberFit.Point> points) {
        if (form == null) {
            return ranking(reply, LawRanking.of(weighting, points, Watch.NONE));
        }
        RubberFit fit = RubberFit.of(form, weighting, points, Watch.NONE).orElse(null);
        if (fit == null) {
            return reply.refuse("law", form.title() + " has " + form.coefficients() + " coefficients, which " + points.size() + " points do not determine.",
                    "Take a law with fewer coefficients or more points.");
        }
        return fit(reply, fit);
    }

    /** A fit with its coefficients, what to know about it, and its residuals. */
    static Reply fit(Reply reply, RubberFit fit) {
        reply.line(fit.form().title() + ", " + fit.weighting().title() + ", " + fit.points().size() + " points");
        if (FitWords.rejected(fit).isPresent()) {
            return reply.refuse("law", FitWords.rejected(fit).get().text(), FitWords.remedy().text());
        }
        for (RubberFit.Coefficient c : fit.coefficients()) {
            put(reply, c, "95 %, these points alone; " + FitWords.SOURCE.display());
            reply.line(String.format("  %-7s %s", c.name(), FitWords.text(c)));
        }
        put(reply, fit.young(), "initial Young's modulus of the law, 95 %");
        reply.line(String.format("  %-7s %s", "E", FitWords.text(fit.young()) + "   initial Young's modulus of the law"));
        reply.result("rms", Value.number(fit.rms(), MPA, "unweighted residuals"));
        StringBuilder rms = new StringBuilder("  rms     ").append(Figures.of(fit.rms(), MPA, DIGITS));
        if (fit.loadings().size() > 1) {
            fit.loadings().forEach(l -> rms.append("; ").append(Figures.of(fit.rms(l), MPA, DIGITS)).append(" in ").append(l.title()));
        }
        reply.line(rms.toString());
        fit.r2().ifPresent(r2 -> reply.result("r2", Value.number(r2, "1", "1 less the residual share, unweighted")).line("  R2      " + Figures.of(r2, "", 4)));
        if (fit.starts() > 0) {
            reply.line("  search  " + fit.reached() + " of " + fit.starts() + " starts ended here");
        }
        reply.line("  " + FitWords.reach(fit).text());
        FitWords.remarks(fit).forEach(reply::remark);
        for (int i = 0; i < fit.points().size(); i++) {
            RubberFit.Point p = fit.points().get(i);
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("loading", p.loading().name().toLowerCase(Locale.ROOT));
            row.put("stretch", p.stretch());
            row.put("stress", p.stress());
            row.put("residual", fit.residuals().get(i));
            reply.item(row);
        }
        return reply;
    }

    private static void put(Reply reply, RubberFit.Coefficient c, String source) {
        reply.result(c.name(), new Value(c.band().map(b -> b.low()).orElse(c.value()), c.value(), c.band().map(b -> b.high()).orElse(c.value()), c.unit().isEmpty() ? "1" : c.unit(), source,
                null));
    }

    static Reply ranking(Reply reply, LawRanking ranking) {
        reply.line("Ranked by what each law had not seen (" + (ranking.loadings() > 1 ? "each loading left out in turn" : "the upper third of the stretches left out") + "), "
                + ranking.weighting().title() + ":");
        reply.line(String.format("  %-15s %-4s %-12s %-12s %s", "law", "n", "rms, MPa", "unseen, MPa", "E, MPa"));
        for (LawRanking.Rank rank : ranking.ranks()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("law", rank.form().id());
            row.put("coefficients", rank.form().coefficients());
            row.put("rms", rank.fit().map(RubberFit::rms).orElse(null));
            row.put("foretold", rank.foretold().isPresent() ? rank.foretold().getAsDouble() : null);
            row.put("stable", rank.stable());
            reply.item(row);
            String foretold = rank.foretold().isPresent() ? Figures.of(rank.foretold().getAsDouble(), "", DIGITS) : "not to be had";
            String rest = rank.fit().isEmpty() ? "the points do not determine its coefficients"
                    : FitWords.rejected(rank.fit().get()).map(m -> m.text()).orElseGet(() -> String.format("%-12s %-12s %s", Figures.of(rank.fit().get().rms(), "", DIGITS), foretold,
                            FitWords.text(rank.fit().get().young()).replace(" MPa", "")));
            reply.line(String.format("  %-15s %-4d %s", rank.form().title(), rank.form().coefficients(), rest));
        }
        ranking.suggested().ifPresentOrElse(r -> reply.words("suggested", r.form().id()).line("Fewest coefficients of those that foretell about as well as the best: " + r.form().title()
                + ". A hint, no proof."), () -> reply.line("No law could be checked on what it had not seen: no hint which to take."));
        if (ranking.loadings() == 1) {
            reply.line("Only one loading was measured: nothing here tells which law holds in the others.");
        }
        return reply;
    }
}
