package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.batch.CostShare;
import org.flexwright.core.batch.CostSheet;
import org.flexwright.core.batch.PartCost;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a good part costs. */
@Command(name = "cost", description = "What a good part of a trial or batch costs: lots, cups, mould, work, rejects. What is not known is named and not counted.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright cost T08", "Example: flexwright cost B01 --hour 30 --cup 0.80" })
final class CostCall extends ProjectCall {
    @Parameters(paramLabel = "TRIAL|BATCH", description = "Code of a trial or of a batch.")
    String of;
    @Option(names = "--hour", description = "From now on an hour of work counts so much, e.g. 30.")
    String hour;
    @Option(names = "--cup", description = "From now on a cup and its sticks cost so much.")
    String cup;

    @Override
    protected boolean writes() {
        return hour != null || cup != null;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Project project = session.project();
        if (writes()) {
            Project typed = ModelFactory.eINSTANCE.createProject();
            new Inputs().put("hourlyRate", hour).put("cupPrice", cup).fill(typed, services.clock());
            session.execute("What an hour and a cup cost", edit -> {
                if (hour != null) {
                    edit.set(project, ModelPackage.Literals.PROJECT__HOURLY_RATE, typed.getHourlyRate());
                }
                if (cup != null) {
                    edit.set(project, ModelPackage.Literals.PROJECT__CUP_PRICE, typed.getCupPrice());
                }
            });
        }
        boolean batch = project.getBatches().stream().anyMatch(b -> of.equalsIgnoreCase(b.getCode()));
        List<Trial> trials = batch ? Find.batch(project, of).getPots() : List.of(Find.trial(project, of));
        Reply reply = new Reply(id()).input("of", of);
        describe(PartCost.made(project, trials), reply);
        return reply;
    }

    static void describe(CostSheet sheet, Reply reply) {
        reply.line("  cost a good part: " + sheet.perGoodPartText() + (sheet.good() == null ? "" : "; good parts: " + FieldText.band(sheet.good().low(), sheet.good().likely(), sheet
                .good().high(), QuantityKind.NUMBER, "") + " of " + sheet.made()));
        for (CostShare share : sheet.shares()) {
            String amount = share.eur() == null ? "not known" : CostSheet.money(share.eur());
            reply.line("    " + share.label() + ": " + amount + ". " + share.why() + (share.eur() == null ? "" : "   [" + share.eur().source().display() + "]"));
            if (share.eur() != null) {
                reply.result("cost " + share.id(), Value.band(share.eur(), "EUR"));
            }
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("share", share.id());
            row.put("eur", share.eur() == null ? null : share.eur().likely());
            row.put("why", share.why());
            reply.item(row);
        }
        sheet.missing().forEach(missing -> reply.line("    not counted: " + missing));
        if (sheet.perGoodPart() != null) {
            reply.result(sheet.complete() ? "costPerGoodPart" : "costPerGoodPartAtLeast", Value.band(sheet.perGoodPart(), "EUR"));
        }
        reply.words("costComplete", sheet.complete() ? "yes" : "no, a lower bound: " + String.join("; ", sheet.missing()));
    }
}
