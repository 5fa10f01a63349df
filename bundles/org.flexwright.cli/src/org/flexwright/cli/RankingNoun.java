package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.ranking.RankOutcome;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.RankList;
import org.flexwright.model.Ranking;
import org.flexwright.model.Specimen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Rankings by several people. */
@Command(name = "ranking", description = "The same pieces put in order by several people.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright ranking add --question \"which feels liveliest?\" --blind yes" },
        subcommands = { RankingNoun.Add.class, RankingNoun.Put.class, RankingNoun.Show.class })
final class RankingNoun extends Noun {

    @Command(name = "add", description = "Begin a ranking.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright ranking add --title \"feel\" --question \"which feels liveliest?\" --blind yes" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", description = "Short code; the next free one when left out.")
        String code;
        @Option(names = "--title", description = "What it is about.")
        String title;
        @Option(names = "--question", required = true, description = "What the people are asked.")
        String question;
        @Option(names = "--blind", description = "Whether nobody sees which piece is which: yes or no.")
        String blind;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Ranking ranking = ModelFactory.eINSTANCE.createRanking();
            new Inputs().put("code", code).put("title", title).put("question", question).put("blind", blind).fill(ranking, services.clock());
            session.execute("Begin a ranking", edit -> Rankings.add(edit, ranking));
            return new Reply(id()).words("ranking", ranking.getCode());
        }
    }

    @Command(name = "put", description = "Put down the order one person found, first to last; it replaces that person's earlier one.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright ranking put B1 --who Ana --order \"T05/P1 > T07/P1 = T08/P1\"" })
    static final class Put extends ProjectCall {
        @Parameters(paramLabel = "RANKING", description = "Code of the ranking.")
        String code;
        @Option(names = "--who", required = true, description = "Name or initials.")
        String who;
        @Option(names = "--order", required = true, description = "Pieces from first to last with > between them, = where two feel alike.")
        String order;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Ranking ranking = Find.ranking(session.project(), code);
            List<List<Specimen>> read = Rankings.read(session.project(), order);
            session.execute("Put down the order of " + who, edit -> Rankings.put(edit, ranking, who, read));
            return shown(new Reply(id()), ranking);
        }
    }

    @Command(name = "show", aliases = "list", description = "Show a ranking, or all rankings.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright ranking show B1" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "RANKING", arity = "0..1", description = "Code of the ranking.")
        String code;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<Ranking> all = code == null ? session.project().getRankings() : List.of(Find.ranking(session.project(), code));
            all.forEach(ranking -> shown(reply, ranking));
            if (all.isEmpty()) {
                reply.line("There is no ranking yet: flexwright ranking add begins one.");
            }
            return reply;
        }
    }

    private static Reply shown(Reply reply, Ranking ranking) {
        reply.line(ranking.getCode() + Words.tail("  ", ranking.getTitle()) + Words.tail(": ", ranking.getQuestion()));
        for (RankList list : ranking.getLists()) {
            reply.line("  " + list.getWho() + ": " + Rankings.text(list));
        }
        switch (Rankings.outcome(ranking)) {
            case RankOutcome.Refused no -> reply.line(no.sentence().text());
            case RankOutcome.Order order -> {
                Rankings.sentences(ranking, order).forEach(reply::line);
                for (RankOutcome.Place place : order.places()) {
                    reply.line("  " + place.place() + ".  " + Names.piece(place.piece()) + ", placed " + place.placed().text() + ", first by " + place.first() + " of " + order.people());
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("ranking", ranking.getCode());
                    row.put("piece", Names.piece(place.piece()));
                    row.put("place", place.place());
                    row.put("best", place.best());
                    row.put("worst", place.worst());
                    row.put("first", place.first());
                    row.put("people", order.people());
                    reply.item(row);
                }
                reply.line("[" + RankOutcome.SOURCE.display() + "]");
            }
        }
        return reply;
    }
}
