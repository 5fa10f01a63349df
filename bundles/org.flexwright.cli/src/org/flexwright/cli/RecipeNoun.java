package org.flexwright.cli;

import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.RecipeDifference;
import org.flexwright.core.trial.Recipes;
import org.flexwright.core.verdict.RecipeGate;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Recipes. */
@Command(name = "recipe", description = "Plans frozen from a confirmed trial.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright recipe freeze T08 --code R1 --who Kim" }, subcommands = { RecipeNoun.Freeze.class, RecipeNoun.Show.class, RecipeNoun.Edit.class, RecipeNoun.Versions.class, RecipeNoun.Difference.class })
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

    @Command(name = "show", description = "Show the recipes, or one.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright recipe show" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "RECIPE", arity = "0..1", description = "Only this one: R1 for its newest version, \"R1 v1\" for that one.")
        String recipe;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            for (Recipe recipe : this.recipe == null ? session.project().getRecipes() : List.of(Find.recipe(session.project(), this.recipe))) {
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

    @Command(name = "edit", description = "Begin a trial with the plan of a recipe; frozen under the same code it becomes the next version.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright recipe edit R1 --title \"a little stiffer\"" })
    static final class Edit extends ProjectCall {
        @Parameters(paramLabel = "RECIPE", description = "Code of the recipe; R1 for its newest version, \"R1 v1\" for that one.")
        String recipe;
        @Option(names = "--code", description = "Code of the trial; the next free one when left out.")
        String code;
        @Option(names = "--title", description = "A few words.")
        String title;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Recipe from = Find.recipe(session.project(), recipe);
            Trial[] made = new Trial[1];
            session.execute("Edit recipe " + from.getCode(), edit -> made[0] = Recipes.edit(edit, from, code, title));
            Reply reply = new Reply(id()).words("trial", made[0].getCode()).words("recipe", from.getCode() + " v" + from.getVersion());
            reply.line("Trial " + made[0].getCode() + " with the plan of " + from.getCode() + " v" + from.getVersion() + ":");
            TrialNoun.describeSteps(services, made[0], reply);
            return reply;
        }
    }

    @Command(name = "versions", description = "The versions of a recipe and what changed.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright recipe versions R1" })
    static final class Versions extends ProjectCall {
        @Parameters(paramLabel = "RECIPE", description = "Code of the recipe.")
        String recipe;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            for (Recipe one : Recipes.versions(session.project(), Find.recipe(session.project(), recipe).getCode())) {
                reply.line(one.getCode() + " v" + one.getVersion() + "  frozen " + Words.moment(one.getFrozenAt()) + " by " + one.getFrozenBy());
                if (one.getChanges() != null) {
                    one.getChanges().lines().forEach(line -> reply.line("  " + line));
                }
                reply.item(Map.of("recipe", one.getCode(), "version", one.getVersion(), "changes", one.getChanges() == null ? List.of() : one.getChanges().lines().toList()));
            }
            return reply;
        }
    }

    @Command(name = "difference", description = "What differs between two versions of a recipe, in words.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright recipe difference \"R1 v1\" \"R1 v2\"" })
    static final class Difference extends ProjectCall {
        @Parameters(paramLabel = "OLDER", index = "0", description = "The older one.")
        String older;
        @Parameters(paramLabel = "NEWER", index = "1", description = "The newer one.")
        String newer;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Recipe before = Find.recipe(session.project(), older);
            Recipe after = Find.recipe(session.project(), newer);
            List<String> said = RecipeDifference.between(before, after);
            Reply reply = new Reply(id()).input("older", before.getCode() + " v" + before.getVersion()).input("newer", after.getCode() + " v" + after.getVersion());
            said.forEach(reply::line);
            said.forEach(sentence -> reply.item(Map.of("difference", sentence)));
            if (said.isEmpty()) {
                reply.line("There is no difference.");
            }
            return reply;
        }
    }
}
