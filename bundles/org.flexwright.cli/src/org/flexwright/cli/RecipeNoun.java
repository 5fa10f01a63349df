package org.flexwright.cli;

import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Recipes;
import org.flexwright.core.verdict.RecipeGate;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Recipes. */
@Command(name = "recipe", description = "Plans frozen from a confirmed trial.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright recipe freeze T08 --code R1 --who Kim" }, subcommands = { RecipeNoun.Freeze.class, RecipeNoun.Show.class })
final class RecipeNoun extends Noun {

    @Command(name = "freeze", description = "Freeze a trial's plan. It says what is missing: 3 parts, 2 sessions, every step done, every target in.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright recipe freeze T08 --code R1 --who Kim" })
    static final class Freeze extends ProjectCall {
        @Parameters(paramLabel = "TRIAL", description = "Code of the trial.")
        String trial;
        @Option(names = "--code", required = true, description = "Code of the recipe.")
        String code;
        @Option(names = "--who", description = "Who signs it.")
        String who;
        @Option(names = "--limits", description = "Acceptance limits in words.")
        String limits;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial from = Find.trial(session.project(), trial);
            Reply reply = new Reply(id()).input("trial", from.getCode()).input("code", code);
            List<String> missing = RecipeGate.missing(session.project(), from, services.registries().properties());
            if (!missing.isEmpty()) {
                return reply.refuse("trial", from.getCode() + " cannot become a recipe yet. Still needed: " + String.join("; ", missing) + ".",
                        "Do what is missing, then freeze again.");
            }
            Recipe[] made = new Recipe[1];
            session.execute("Freeze recipe " + code, edit -> made[0] = Recipes.freeze(edit, from, code, who == null ? services.who() : who, limits,
                    missing));
            return reply.words("recipe", made[0].getCode()).result("version", Value.number(made[0].getVersion(), "1", Reply.OWN_RECORD));
        }
    }

    @Command(name = "show", description = "Show the recipes.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright recipe show" })
    static final class Show extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            for (Recipe recipe : session.project().getRecipes()) {
                reply.line(recipe.getCode() + " v" + recipe.getVersion() + "  from " + recipe.getPlan().getCode() + ", frozen " + Words.moment(recipe
                        .getFrozenAt()) + " by " + recipe.getFrozenBy());
                if (recipe.getLimits() != null) {
                    reply.line("  " + recipe.getLimits());
                }
                TrialNoun.describeSteps(services, recipe.getPlan(), reply);
                reply.words("recipe " + recipe.getCode(), "v" + recipe.getVersion());
                reply.item(Map.of("recipe", recipe.getCode(), "version", recipe.getVersion(), "trial", recipe.getPlan().getCode()));
            }
            if (session.project().getRecipes().isEmpty()) {
                reply.line("There is no recipe yet: flexwright recipe freeze makes one from a trial.");
            }
            return reply;
        }
    }
}
