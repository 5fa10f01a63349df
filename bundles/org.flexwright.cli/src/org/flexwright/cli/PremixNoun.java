package org.flexwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.flexwright.core.Figures;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Premixes;
import org.flexwright.core.trial.Stock;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Premix;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Blends that are weighed as one and count as their ingredients. */
@Command(name = "premix", description = "Blends that are weighed as one and count as what went into them.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright premix add --use B=PU-B/L7:100g --use filler=PW/F3:8g --material filler.moisture=0.4%% --rested 12h" },
        subcommands = { PremixNoun.Add.class, PremixNoun.Show.class })
final class PremixNoun extends Noun {

    @Command(name = "add", description = "Write down a blend that was made: each ingredient as weighed. Its lots are used up by it.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright premix add --title \"powder in B\" --use B=PU-B/L7:100g --use filler=PW/F3:8g --dried 80degC --dried-for 4h" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", description = "Short code for its label; else the next free one.")
        String code;
        @Option(names = "--title", description = "A few words.")
        String title;
        @Option(names = "--use", required = true, paramLabel = "ROLE=LOT:MASS", description = "An ingredient: role, grade or grade/lot, weighed mass; repeat for each.")
        List<String> uses = List.of();
        @Option(names = "--material", paramLabel = "ROLE.FIELD=VALUE", description = "A field of an ingredient: moisture, dried. Repeat for more.")
        List<String> materials = List.of();
        @Option(names = "--made", description = "When it was made, 2026-05-18T09:00; else now.")
        String made;
        @Option(names = "--rested", description = "How long it rested before use, e.g. 12h.")
        String rested;
        @Option(names = "--dried", description = "Temperature it was dried at.")
        String dried;
        @Option(names = "--dried-for", description = "How long it was dried.")
        String driedFor;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Premix premix = ModelFactory.eINSTANCE.createPremix();
            new Inputs().put("code", code).put("title", title).put("madeAt", made).put("restedHours", rested).put("driedC", dried).put("driedHours", driedFor)
                    .fill(premix, services.clock());
            session.execute("Write down a premix", edit -> {
                uses.forEach(typed -> {
                    UseInputs.Typed read = UseInputs.Typed.of(edit, typed);
                    MaterialUse ingredient = ModelFactory.eINSTANCE.createMaterialUse();
                    ingredient.setRole(read.role());
                    ingredient.setGrade(read.grade());
                    ingredient.setLot(read.lot());
                    premix.getIngredients().add(Premixes.ingredient(edit, ingredient, read.grams()));
                });
                Premixes.add(edit, premix);
                new UseInputs(services, edit, premix.getIngredients()).read(materials, role -> {
                    throw new UsageException("The premix has no ingredient " + Words.of(role) + ": give it with --use.");
                });
            });
            Reply reply = new Reply(id()).words("premix", premix.getCode());
            describe(session, premix, reply);
            return reply;
        }
    }

    @Command(name = "show", description = "Show a premix, or all: what went in, and how much is left.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright premix show X1" })
    static final class Show extends ProjectCall {
        @Parameters(index = "0", arity = "0..1", paramLabel = "CODE", description = "Code of the premix; all when left out.")
        String code;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<Premix> shown = code == null ? session.project().getPremixes() : List.of(Find.premix(session.project(), code));
            if (shown.isEmpty()) {
                reply.line("No premix yet: write one down with flexwright premix add.");
            }
            shown.forEach(premix -> describe(session, premix, reply));
            return reply;
        }
    }

    private static void describe(ProjectSession session, Premix premix, Reply reply) {
        OptionalDouble made = Mixtures.mass(premix);
        OptionalDouble left = Stock.onHand(premix, session.project());
        reply.line("premix " + premix.getCode() + Words.tail(", ", premix.getTitle()) + ": " + grams(made) + " made, " + grams(left) + " left");
        treatment(premix, reply);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Mixtures.Share share : Mixtures.shares(premix)) {
            MaterialUse of = share.of();
            String grams = Mixtures.grams(of) == null ? "?" : FieldText.digits(Mixtures.grams(of)) + " g";
            reply.line(String.format("    %-44s %10s  %s", Names.of(of), grams, Figures.percent(share.share())));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("ingredient", Names.of(of));
            row.put("grams", Mixtures.grams(of));
            row.put("share", share.share());
            row.put("moisture", of.getMoisture());
            rows.add(row);
        }
        Map<String, Object> item = new LinkedHashMap<>();
        item.put("premix", premix.getCode());
        item.put("made", made.isEmpty() ? null : made.getAsDouble());
        item.put("left", left.isEmpty() ? null : left.getAsDouble());
        item.put("ingredients", rows);
        reply.item(item);
    }

    private static void treatment(Premix premix, Reply reply) {
        List<String> words = new ArrayList<>();
        if (premix.getRestedHours() != null) {
            words.add("rested " + FieldText.digits(premix.getRestedHours()) + " h");
        }
        if (premix.getDriedC() != null || premix.getDriedHours() != null) {
            words.add("dried" + (premix.getDriedC() == null ? "" : " at " + FieldText.digits(premix.getDriedC()) + " \u00b0C")
                    + (premix.getDriedHours() == null ? "" : " for " + FieldText.digits(premix.getDriedHours()) + " h"));
        }
        if (!words.isEmpty()) {
            reply.line("    " + String.join(", ", words));
        }
    }

    private static String grams(OptionalDouble grams) {
        return grams.isEmpty() ? "an unknown amount" : Figures.of(grams.getAsDouble(), "g");
    }
}
