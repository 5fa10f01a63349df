package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.TargetSheet;

import picocli.CommandLine.Command;

/** Families of materials against the target sheet, before anything is bought. */
@Command(name = "families", description = "Say which material families cannot meet the newest sheet, before anything is bought.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright target families" })
final class FamiliesCall extends ProjectCall {
    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        TargetSheet sheet = TargetNoun.sheet(session.project());
        List<FamilyReach> families = services.registries().estimates().families(sheet, services.registries().properties());
        Reply reply = new Reply(id()).input("sheet", sheet.getVersion());
        if (families.isEmpty()) {
            return reply.line("No plugin that knows families of materials is here.");
        }
        List<FamilyReach> left = families.stream().filter(f -> !f.excluded()).toList();
        long worth = left.stream().filter(FamiliesCall::known).count();
        reply.result("families", Value.number(families.size(), "1", "the plugins that know families"));
        reply.result("worthATrial", Value.number(worth, "1", "usual ranges of families held against target sheet v" + sheet.getVersion()));
        reply.line("Against target sheet v" + sheet.getVersion() + ", by what is usual in a family: \"worth a trial\" is no promise, and \"cannot\" speaks of"
                + " the usual grades.");
        left.stream().filter(FamiliesCall::known).forEach(family -> family(reply, family, "worth a trial"));
        left.stream().filter(f -> !known(f)).forEach(family -> family(reply, family, "nothing known"));
        families.stream().filter(FamilyReach::excluded).forEach(family -> family(reply, family, "cannot"));
        return reply;
    }

    private static boolean known(FamilyReach family) {
        return family.answers().stream().anyMatch(a -> a.reply() != FamilyReach.Reply.UNKNOWN);
    }

    private static void family(Reply reply, FamilyReach family, String word) {
        reply.line(String.format("%-14s %-26s %s", word, family.id(), family.title()));
        for (FamilyReach.Answer answer : family.answers()) {
            if (answer.reply() == FamilyReach.Reply.CANNOT || answer.reply() == FamilyReach.Reply.CAN && !family.excluded()) {
                reply.line("        " + answer.property().title() + ": " + answer.reason().text() + "   [" + answer.source().display() + "]");
            }
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("family", family.id());
            row.put("title", family.title());
            row.put("property", answer.property().id());
            row.put("reply", Words.of(answer.reply()));
            row.put("reason", answer.reason().text());
            row.put("source", answer.source().display());
            reply.item(row);
        }
    }
}
