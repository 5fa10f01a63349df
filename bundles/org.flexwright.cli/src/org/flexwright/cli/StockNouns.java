package org.flexwright.cli;

import java.util.List;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Lots;
import org.flexwright.core.trial.MaterialValues;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.quantity.Unit;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What stands on the shelf: materials and lots. */
final class StockNouns {
    private StockNouns() {
    }

    static <T> void refuseTwice(String what, List<T> all, java.util.function.Function<T, String> code, String typed) {
        if (typed.isBlank()) {
            throw new UsageException("The name of " + Words.a(what) + " cannot be empty.");
        }
        if (all.stream().anyMatch(x -> typed.equalsIgnoreCase(code.apply(x)))) {
            throw new UsageException("There is " + Words.a(what) + " \"" + typed + "\" already: choose another name for this one.");
        }
    }

    /** Materials. */
    @Command(name = "material", description = "Materials as their sheets describe them.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright material add --code PU-A --name \"part A\" --role A --family pu-60a" },
            subcommands = { MaterialAdd.class, MaterialValueCall.class })
    static final class MaterialNoun extends Noun {
    }

    @Command(name = "add", description = "Add a material.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright material add --code PU-A --name \"part A\" --role A --family pu-60a --hazard \"H317;H334\"" })
    static final class MaterialAdd extends ProjectCall {
        @Option(names = "--code", required = true, description = "Short code.")
        String code;
        @Option(names = "--name", description = "What it is called.")
        String name;
        @Option(names = "--family", description = "Id of its family, e.g. pu-60a; flexwright plugin list names them.")
        String family;
        @Option(names = "--role", description = "A, B, single, filler, pigment, plasticiser, thinner, catalyst, mould, release, wash, other.")
        String role = "single";
        @Option(names = "--hazard", description = "H statements you read on its sheet, separated by ;.")
        String hazards;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            refuseTwice("material", session.project().getGrades(), MaterialGrade::getCode, code);
            MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
            new Inputs().put("code", code).put("name", name).put("family", family(services)).put("hazards", hazards).fill(grade, services.clock());
            grade.setRole(Find.role(role));
            session.execute("Add material " + code, edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__GRADES, grade));
            return new Reply(id()).words("material", code);
        }

        /** The family as the plugins call it; anything goes while no plugin knows families. */
        private String family(CliServices services) {
            List<FamilyReach> known = services.registries().estimates().families(ModelFactory.eINSTANCE.createTargetSheet(), services.registries()
                    .properties());
            return family == null || known.isEmpty() ? family : Find.named("family", known, FamilyReach::id, FamilyReach::title, family).id();
        }
    }

    @Command(name = "value", description = "Note a property of a material: the sheet's value, your own, or both. Own wins.",
            mixinStandardHelpOptions = true, footer = { "",
                    "Example: flexwright material value --material PU-A --property materials.density --sheet 1.05g/cm3 --sheet-source \"sheet of 2026-01\"" })
    static final class MaterialValueCall extends ProjectCall {
        @Option(names = "--material", required = true, description = "Code of the material.")
        String material;
        @Option(names = "--lot", description = "Only for this lot.")
        String lot;
        @Option(names = "--property", required = true, description = "Id of the property.")
        String property;
        @Option(names = "--sheet", description = "Value on the sheet, with unit.")
        String sheet;
        @Option(names = "--sheet-source", description = "Which sheet.")
        String sheetSource;
        @Option(names = "--own", description = "Your own value, with unit.")
        String own;
        @Option(names = "--own-uncertainty", description = "Half width of your own value, with unit.")
        String ownUncertainty;
        @Option(names = "--own-source", description = "How it was measured.")
        String ownSource;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            PropertyDef def = Find.property(services.registries().properties(), property);
            if (sheet == null && own == null) {
                throw new UsageException("Give the sheet's value with --sheet, your own with --own, or both.");
            }
            MaterialGrade grade = Find.grade(session.project(), material);
            Unit unit = def.kind().unit();
            MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
            value.setProperty(def.id());
            value.setUnit(unit.symbol());
            value.setSheetValue(Typed.number(def, sheet));
            value.setSheetSource(sheetSource);
            value.setOwnValue(Typed.number(def, own));
            value.setOwnSource(ownSource);
            value.setOwnUncertainty(halfWidth(def));
            Lot of = lot == null ? null : Find.one("lot of " + material, grade.getLots(), Lot::getCode, lot);
            session.execute("Note " + def.title() + " of " + material, edit -> {
                if (of == null) {
                    MaterialValues.note(edit, grade, value);
                } else {
                    MaterialValues.note(edit, of, value);
                }
            });
            Reply reply = new Reply(id()).input("material", grade.getCode()).input("property", def.id());
            String about = def.title() + " of " + grade.getCode() + Words.tail("/", lot);
            said(reply, "sheet", about + ", on its sheet", def, sheet, sheetSource == null ? "a sheet that is not named" : sheetSource);
            said(reply, "own", about + ", own value", def, own, ownSource == null ? "it is not said how it was measured" : ownSource);
            return reply;
        }

        private Double halfWidth(PropertyDef def) {
            if (ownUncertainty == null) {
                return null;
            }
            if (own == null) {
                throw new UsageException("--own-uncertainty goes with --own.");
            }
            double half = Typed.number(def, ownUncertainty);
            if (half < 0) {
                throw new UsageException("An uncertainty is 0 or more; got " + ownUncertainty + ".");
            }
            return half;
        }

        /** Back as it was understood, in the unit it was typed in. */
        private static void said(Reply reply, String name, String about, PropertyDef def, String typed, String source) {
            if (typed != null) {
                reply.result(name, Value.number(Typed.number(def, typed), def.kind().unit().symbol(), source));
                reply.line(about + ": " + Typed.understood(def, typed) + "   [" + source + "]");
            }
        }
    }

    /** Lots. */
    @Command(name = "lot", description = "Bottles, spools and cans.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright lot add --material PU-A --code L12 --opened 2026-05-04 --expires 2027-01-31" },
            subcommands = LotAdd.class)
    static final class LotNoun extends Noun {
    }

    @Command(name = "add", description = "Add a lot of a material.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright lot add --material PU-A --code L12 --opened 2026-05-04 --expires 2027-01-31 --price 38 --amount 1kg" })
    static final class LotAdd extends ProjectCall {
        @Option(names = "--material", required = true, description = "Code of the material.")
        String material;
        @Option(names = "--code", required = true, description = "Lot number on the label.")
        String code;
        @Option(names = "--opened", description = "Day it was opened, 2026-05-04.")
        String opened;
        @Option(names = "--expires", description = "Day it expires.")
        String expires;
        @Option(names = "--price", description = "What it cost.")
        String price;
        @Option(names = "--amount", description = "How much was bought, e.g. 1kg.")
        String amount;
        @Option(names = "--sheet-date", description = "Date of the data sheet that came with it.")
        String sheetDate;
        @Option(names = "--sheet-revision", description = "Revision of that sheet.")
        String sheetRevision;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            MaterialGrade grade = Find.grade(session.project(), material);
            Lot lot = ModelFactory.eINSTANCE.createLot();
            new Inputs().put("code", code).put("opened", opened).put("expires", expires).put("price", price).put("amount", amount)
                    .put("sheetDate", sheetDate).put("sheetRevision", sheetRevision).fill(lot, services.clock());
            session.execute("Add lot " + code, edit -> Lots.add(edit, grade, lot));
            return new Reply(id()).words("material", material).words("lot", code);
        }
    }
}
