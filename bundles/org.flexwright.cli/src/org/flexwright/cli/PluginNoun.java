package org.flexwright.cli;

import java.util.Map;

import org.flexwright.core.registry.Registries;
import org.flexwright.model.ModelFactory;

import picocli.CommandLine.Command;

/** What the plugins brought. */
@Command(name = "plugin", description = "What the plugins brought: routes, step kinds, properties, families, rules, and what failed to start.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright plugin list" }, subcommands = PluginNoun.ListCall.class)
final class PluginNoun extends Noun {

    @Command(name = "list", description = "List all of it.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright plugin list --json" })
    static final class ListCall extends Call {
        @Override
        protected Reply reply(CliServices services) {
            Registries all = services.registries();
            Reply reply = new Reply(id());
            all.processKinds().forEach(p -> row(reply, "route", p.id(), p.title()));
            all.stepKinds().forEach(s -> row(reply, "step", s.id(), s.title()));
            all.properties().all().forEach(p -> row(reply, "property", p.id(), p.title()));
            all.estimates().families(ModelFactory.eINSTANCE.createTargetSheet(), all.properties()).forEach(f -> row(reply, "family", f.id(), f.title()));
            all.recordingKinds().forEach(k -> row(reply, "recording", k.id(), k.title()));
            all.rules().forEach(r -> row(reply, "rule", r.id(), r.title()));
            all.calculations().forEach(c -> row(reply, "calculation", c.info().id(), c.info().title()));
            all.failures().forEach(f -> {
                reply.line("failed       " + f.what() + "  " + f.plugin() + ": " + f.why());
                reply.item(Map.of("what", "failed", "id", f.what(), "title", f.why()));
            });
            return reply;
        }

        private static void row(Reply reply, String what, String id, String title) {
            reply.line(String.format("%-12s %-34s %s", what, id, title));
            reply.item(Map.of("what", what, "id", id, "title", title));
        }
    }
}
