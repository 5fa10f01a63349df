package org.flexwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.core.view.CellText;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Trials side by side against the target sheet. */
@Command(name = "compare", description = "Judge trials against the target sheet: in, above, below or cannot tell, with the reason.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial compare T05 T08" })
final class CompareCall extends ProjectCall {
    @Parameters(arity = "0..*", paramLabel = "TRIAL", description = "Codes of the trials; all that have parts when left out.")
    List<String> codes = List.of();
    @Option(names = "--sheet", description = "Version of the target sheet; the newest when left out.")
    Integer version;

    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        TargetSheet sheet = version == null ? TargetNoun.sheet(session.project()) : Find.one("target sheet", session.project().getTargetSheets(),
                s -> String.valueOf(s.getVersion()), String.valueOf(version));
        List<Trial> trials = codes.isEmpty() ? session.project().getTrials().stream().filter(t -> !t.getParts().isEmpty()).toList()
                : codes.stream().map(code -> Find.trial(session.project(), code)).toList();
        Reply reply = new Reply(id()).input("sheet", sheet.getVersion()).input("trials", trials.stream().map(Trial::getCode).toList());
        Doubts doubts = Doubts.of(session.project(), services.registries().properties());
        reply.line("Against target sheet v" + sheet.getVersion() + ":");
        for (Target target : sheet.getTargets()) {
            String id = target.getKey().getProperty();
            PropertyDef def = services.registries().findProperty(id).orElse(null);
            if (def == null) {
                reply.line(id + ": its plugin is not here, no verdict");
                continue;
            }
            reply.line(TargetNoun.words(def, target));
            List<PartValue> reference = PartValues.ofReference(session.project(), target.getKey(), def);
            trials.forEach(trial -> judge(reply, target, def, trial, reference, doubts));
        }
        return reply;
    }

    private static void judge(Reply reply, Target target, PropertyDef def, Trial trial, List<PartValue> reference, Doubts doubts) {
        List<PartValue> parts = PartValues.of(trial, target.getKey(), def);
        Judgement judgement = doubts.on(Verdicts.judge(target, def, parts, null, reference), parts);
        String unit = unit(def);
        String name = trial.getCode() + "." + def.id() + (target.getKey().getSpot() == null ? "" : "." + target.getKey().getSpot());
        if (judgement.mean() != null && judgement.interval() != null) {
            reply.result(name, new Value(judgement.interval().low(), judgement.mean(), judgement.interval().high(), unit, "parts of "
                    + trial.getCode() + ", 95 %", null));
        } else if (judgement.mean() != null) {
            reply.result(name, new Value(judgement.mean(), judgement.mean(), judgement.mean(), unit, "parts of " + trial.getCode()
                    + ", no interval", null));
        }
        reply.line(String.format("  %-5s %-16s %-26s %s", trial.getCode(), judgement.verdict().text(), CellText.of(def, judgement, parts), judgement.reason()
                .text()));
        judgement.notes().forEach(note -> reply.line("        " + note.text()));
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("trial", trial.getCode());
        row.put("target", Limits.text(target, def));
        row.put("property", def.id());
        row.put("verdict", Words.of(judgement.verdict()));
        row.put("n", judgement.n());
        row.put("mean", judgement.mean());
        row.put("low", judgement.interval() == null ? null : judgement.interval().low());
        row.put("high", judgement.interval() == null ? null : judgement.interval().high());
        row.put("unit", unit);
        row.put("difference", judgement.difference());
        row.put("moreParts", judgement.moreParts().isPresent() ? judgement.moreParts().getAsInt() : null);
        row.put("inDoubt", parts.stream().filter(p -> doubts.any(p.sessions())).map(PartValue::part).toList());
        row.put("reason", judgement.reason().text());
        row.put("notes", new ArrayList<>(judgement.notes().stream().map(n -> n.text()).toList()));
        reply.item(row);
    }

    static String unit(PropertyDef def) {
        return def.yesNo() ? "%" : def.kind().unit().symbol();
    }
}
