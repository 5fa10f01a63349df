package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityFormat;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Target sheets. */
@Command(name = "target", description = "What the part must reach.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright target add --property peak-force --between \"0.70N;0.90N\" --reject-above 1.2N" },
        subcommands = { TargetNoun.Add.class, TargetNoun.Remove.class, TargetNoun.Show.class, TargetNoun.Freeze.class,
                FamiliesCall.class })
final class TargetNoun extends Noun {

    /** The limit itself: exactly one. */
    static final class Limit {
        @Option(names = "--at-least", required = true, description = "Smallest value.")
        String atLeast;
        @Option(names = "--at-most", required = true, description = "Largest value.")
        String atMost;
        @Option(names = "--between", required = true, paramLabel = "LOW;HIGH", description = "Both ends.")
        String between;
        @Option(names = "--nominal", required = true, description = "The value itself, with --tolerance.")
        String nominal;
        @Option(names = "--never", required = true, description = "It must not happen.")
        boolean never;
        @Option(names = "--always", required = true, description = "It must happen every time.")
        boolean always;
    }

    /** Conditions under which a property is read. */
    static final class Conditions {
        @Option(names = "--piece", description = "part, test piece or witness button.")
        String piece;
        @Option(names = "--spot", description = "Where on the piece.")
        String spot;
        @Option(names = "--support", description = "What the piece rests on.")
        String support;
        @Option(names = "--dwell", description = "Time from contact to reading, e.g. 3s.")
        String dwell;

        PropertyKey key(PropertyDef property, CliServices services) {
            PropertyKey key = typed(services);
            key.setProperty(property.id());
            return key;
        }

        /** For whatever is read on that piece: its kind is the key's when none was typed. */
        PropertyKey on(Specimen read, CliServices services) {
            PropertyKey key = typed(services);
            if (piece == null) {
                key.setPieceKind(read.getPieceKind());
            }
            return key;
        }

        private PropertyKey typed(CliServices services) {
            PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
            new Inputs().put("pieceKind", piece).put("spot", spot).put("support", support).put("dwell", dwell).fill(key, services.clock());
            return key;
        }

        /** A dwell alone, in seconds; null for null. */
        static Double dwell(String typed, CliServices services) {
            PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
            new Inputs().put("dwell", typed).fill(key, services.clock());
            return key.getDwell();
        }
    }

    @Command(name = "add", description = "Add a target to the open sheet; a frozen sheet gets a new version.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright target add --property peak-force --between \"0.70N;0.90N\" --reject-above 1.2N --weight 3" })
    static final class Add extends ProjectCall {
        @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a; flexwright plugin list names them.")
        String property;
        @ArgGroup(multiplicity = "1")
        Limit limit;
        @Option(names = "--tolerance", description = "Plus and minus this much, with --nominal.")
        String tolerance;
        @Option(names = "--weight", description = "How much it matters, 0 to 10.")
        String weight;
        @Option(names = "--reject-below", description = "A part below this is no part.")
        String rejectBelow;
        @Option(names = "--reject-above", description = "A part above this is no part.")
        String rejectAbove;
        @Option(names = "--allowed-share", description = "With --never or --always: share of exceptions that may be, e.g. 10%%.")
        String allowedShare;
        @Option(names = "--reason", description = "Why there is a new version, when the last one is frozen.")
        String reason;
        @Mixin
        Conditions conditions = new Conditions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            PropertyDef def = Find.property(services.registries().properties(), property);
            Target target = ModelFactory.eINSTANCE.createTarget();
            new Inputs().put("weight", weight).put("allowedShare", allowedShare).fill(target, services.clock());
            target.setKey(conditions.key(def, services));
            limit(def, target);
            target.setRejectBelow(Typed.number(def, rejectBelow));
            target.setRejectAbove(Typed.number(def, rejectAbove));
            session.execute("Add target " + def.title(), edit -> TargetSheets.add(edit, target, reason));
            TargetSheet sheet = sheet(session.project());
            return new Reply(id()).words("property", def.id()).words("target", words(def, target)).result("sheet", Value.number(sheet.getVersion(),
                    "1", Reply.OWN_RECORD));
        }

        private void limit(PropertyDef def, Target target) {
            boolean count = limit.never || limit.always;
            if (count != def.yesNo()) {
                throw new UsageException(def.title() + (def.yesNo() ? " is yes or no: use --never or --always."
                        : " is a number: use --at-least, --at-most, --between or --nominal."));
            }
            if ((limit.nominal != null) != (tolerance != null)) {
                throw new UsageException("--nominal and --tolerance go together.");
            }
            if (limit.atLeast != null) {
                target.setRule(TargetRule.AT_LEAST);
                target.setLow(Typed.number(def, limit.atLeast));
            } else if (limit.atMost != null) {
                target.setRule(TargetRule.AT_MOST);
                target.setHigh(Typed.number(def, limit.atMost));
            } else if (limit.between != null) {
                between(def, target);
            } else if (limit.nominal != null) {
                target.setRule(TargetRule.NOMINAL);
                target.setNominal(Typed.number(def, limit.nominal));
                target.setTolerance(Typed.number(def, tolerance));
                if (target.getTolerance() <= 0) {
                    throw new UsageException("A tolerance is above 0; got " + tolerance + ".");
                }
            } else {
                target.setRule(limit.never ? TargetRule.NEVER : TargetRule.ALWAYS);
            }
        }

        private void between(PropertyDef def, Target target) {
            String[] ends = limit.between.split(";");
            if (ends.length != 2) {
                throw new UsageException("--between takes two values separated by ;, e.g. \"0.70N;0.90N\".");
            }
            target.setRule(TargetRule.BETWEEN);
            target.setLow(Typed.number(def, ends[0].strip()));
            target.setHigh(Typed.number(def, ends[1].strip()));
            if (target.getLow() >= target.getHigh()) {
                throw new UsageException("--between: the first value must be below the second; got " + limit.between + ".");
            }
        }
    }

    @Command(name = "remove", description = "Take a target out of the open sheet; a frozen sheet gets a new version.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright target remove --property shore-a --spot crown --dwell 3s" })
    static final class Remove extends ProjectCall {
        @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a.")
        String property;
        @Option(names = "--reason", description = "Why there is a new version, when the last one is frozen.")
        String reason;
        @Mixin
        Conditions conditions = new Conditions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            PropertyDef def = Find.property(services.registries().properties(), property);
            PropertyKey key = conditions.key(def, services);
            session.execute("Remove target " + def.title(), edit -> TargetSheets.remove(edit, key, reason));
            TargetSheet sheet = sheet(session.project());
            return new Reply(id()).words("property", def.id()).result("sheet", Value.number(sheet.getVersion(), "1", Reply.OWN_RECORD)).result("targets",
                    Value.number(sheet.getTargets().size(), "1", Reply.OWN_RECORD));
        }
    }

    /** The newest target sheet. */
    static TargetSheet sheet(Project project) {
        TargetSheet sheet = TargetSheets.current(project);
        if (sheet == null) {
            throw new UsageException("There is no target sheet yet: flexwright target add makes one.");
        }
        return sheet;
    }

    static String words(PropertyDef def, Target target) {
        String unit = def.yesNo() ? "" : " " + def.kind().unit().symbol();
        String limit = switch (target.getRule()) {
            case AT_LEAST -> "at least " + QuantityFormat.plain(target.getLow()) + unit;
            case AT_MOST -> "at most " + QuantityFormat.plain(target.getHigh()) + unit;
            case BETWEEN -> QuantityFormat.plain(target.getLow()) + " to " + QuantityFormat.plain(target.getHigh()) + unit;
            case NOMINAL -> QuantityFormat.plain(target.getNominal()) + " ± " + QuantityFormat.plain(target.getTolerance()) + unit;
            case NEVER -> "never";
            case ALWAYS -> "always";
        };
        PropertyKey key = target.getKey();
        List<String> conditions = Stream.of(key.getSpot(), key.getSupport(), key.getDwell() == null ? null : "dwell " + QuantityFormat.plain(key
                .getDwell()) + " s").filter(java.util.Objects::nonNull).toList();
        return def.title() + ": " + limit + (conditions.isEmpty() ? "" : " (" + String.join(", ", conditions) + ")");
    }

    @Command(name = "show", description = "Show the target sheets.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright target show --json" })
    static final class Show extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            for (TargetSheet sheet : session.project().getTargetSheets()) {
                reply.line("Target sheet v" + sheet.getVersion() + (sheet.getFrozenAt() == null ? ", open" : ", frozen " + Words.moment(sheet.getFrozenAt()) + Words.tail(" by ", sheet.getFrozenBy())));
                for (Target target : sheet.getTargets()) {
                    String id = target.getKey().getProperty();
                    String text = services.registries().properties().find(id).map(def -> words(def, target)).orElse(id
                            + " (its plugin is not here)");
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("sheet", sheet.getVersion());
                    row.put("property", id);
                    row.put("target", text);
                    reply.line("  " + text).item(row);
                }
            }
            if (session.project().getTargetSheets().isEmpty()) {
                reply.line("There is no target sheet yet: flexwright target add makes one.");
            }
            return reply;
        }
    }

    @Command(name = "freeze", description = "Freeze the newest sheet; it can then only get a new version.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright target freeze --who Kim" })
    static final class Freeze extends ProjectCall {
        @Option(names = "--who", description = "Who agrees.")
        String who;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            TargetSheet sheet = sheet(session.project());
            session.execute("Freeze target sheet v" + sheet.getVersion(), edit -> TargetSheets.freeze(edit, sheet, who == null ? services.who()
                    : who));
            return new Reply(id()).result("sheet", Value.number(sheet.getVersion(), "1", Reply.OWN_RECORD));
        }
    }
}
