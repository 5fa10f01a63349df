package org.flexwright.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

import org.flexwright.core.Figures;
import org.flexwright.core.batch.StockLine;
import org.flexwright.core.session.ProjectSession;

import picocli.CommandLine.Command;

/** What is left on the shelf. */
@Command(name = "stock", description = "What is left on the shelf.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright stock show" },
        subcommands = StockNoun.Show.class)
final class StockNoun extends Noun {

    @Command(name = "show", description = "Lots on hand, reserved by open batches, expired, and what to buy.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright stock show" })
    static final class Show extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            LocalDate today = LocalDate.ofInstant(services.clock().instant(), services.clock().getZone());
            for (StockLine line : StockLine.all(session.project(), today)) {
                String name = line.grade().getCode() + "/" + line.lot().getCode();
                reply.line(String.format("  %-16s %s", name, line.onHand() == null ? "how much there was is not entered" : Figures.of(line.onHand(), "g") + " on hand") + (line.reserved() > 0
                        ? ", " + Figures.of(line.reserved(), "g") + " reserved" : "") + (line.expired() ? ", EXPIRED " + line.lot().getExpires() : line.lot().getExpires() == null ? ""
                                : ", good until " + line.lot().getExpires()));
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("material", line.grade().getCode());
                row.put("lot", line.lot().getCode());
                row.put("onHand", line.onHand());
                row.put("reserved", line.reserved());
                row.put("free", line.free());
                row.put("expired", line.expired());
                reply.item(row);
            }
            StockLine.toBuy(session.project()).forEach((grade, grams) -> {
                reply.line("  to buy: " + grade.getCode() + ", " + Figures.of(grams, "g") + (grade.getPackSize() == null ? "" : ", that is " + Words.count((int) Math.ceil(grams / grade
                        .getPackSize()), "pack") + " of " + Figures.of(grade.getPackSize(), "g")));
                reply.result("toBuy " + grade.getCode(), Value.number(grams, "g", "open batches that have no lot for it"));
            });
            if (session.project().getGrades().isEmpty()) {
                reply.line("There is no material yet: flexwright material add makes one.");
            }
            return reply;
        }
    }
}
