package org.flexwright.cli;

import java.util.Map;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Importance;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the part must do, in the user's words. */
@Command(name = "need", description = "What the part must do, in the user's words.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright need add \"clicks clearly\"" },
        subcommands = { NeedNoun.Add.class, NeedNoun.Remove.class, NeedNoun.Show.class })
final class NeedNoun extends Noun {

    @Command(name = "add", description = "Add a need.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright need add \"quiet\" --nice" })
    static final class Add extends ProjectCall {
        @Parameters(paramLabel = "NEED", description = "In the user's words.")
        String text;
        @Option(names = "--nice", description = "It would be nice; else the part must do it.")
        boolean nice;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Need need = ProjectNoun.need(text, nice ? Importance.NICE : Importance.MUST);
            session.execute("Add need", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__NEEDS, need));
            return new Reply(id()).words(Words.of(need.getImportance()), text);
        }
    }

    @Command(name = "remove", description = "Take a need out.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright need remove 3" })
    static final class Remove extends ProjectCall {
        @Parameters(paramLabel = "NUMBER", description = "Its number, as flexwright need show counts.")
        int number;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            var needs = session.project().getNeeds();
            if (number < 1 || number > needs.size()) {
                throw new UsageException(needs.isEmpty() ? "There is no need yet." : "There are needs 1 to " + needs.size() + ", not " + number + ".");
            }
            Need need = needs.get(number - 1);
            String text = need.getText();
            session.execute("Remove need", edit -> edit.remove(need));
            return new Reply(id()).words("removed", text);
        }
    }

    @Command(name = "show", description = "Show the needs.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright need show" })
    static final class Show extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            int number = 1;
            for (Need need : session.project().getNeeds()) {
                reply.line(String.format("%3d  %s  %s", number, Words.of(need.getImportance()), need.getText()));
                reply.item(Map.of("number", number, "importance", Words.of(need.getImportance()), "need", need.getText()));
                number++;
            }
            return number > 1 ? reply : reply.line("There is no need yet: flexwright need add writes one down.");
        }
    }
}
