package org.flexwright.cli;

import java.util.List;
import java.util.function.Function;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/** Things by the code a person types; one sentence when there is none. */
final class Find {
    private Find() {
    }

    static <T> T one(String what, List<T> all, Function<T, String> code, String typed) {
        return all.stream().filter(x -> typed.equalsIgnoreCase(code.apply(x))).findFirst().orElseThrow(() -> new UsageException(
                "There is no " + what + " \"" + typed + "\"; " + (all.isEmpty() ? "there is none yet." : "there are " + String.join(", ",
                        all.stream().map(code).map(String::valueOf).limit(20).toList()) + ".")));
    }

    static Trial trial(Project project, String code) {
        return one("trial", project.getTrials(), Trial::getCode, code);
    }

    static Part part(Trial trial, String code) {
        return one("part in " + trial.getCode(), trial.getParts(), Part::getCode, code);
    }

    static Session session(Project project, String code) {
        return one("session", project.getSessions(), Session::getCode, code);
    }

    static MaterialGrade grade(Project project, String code) {
        return one("material", project.getGrades(), MaterialGrade::getCode, code);
    }

    static Instrument instrument(Project project, String name) {
        return one("instrument", project.getInstruments(), Instrument::getName, name);
    }

    /** A lot by {@code grade/lot}, or by its own code when only one grade has it. */
    static Lot lot(Project project, String typed) {
        int slash = typed.indexOf('/');
        if (slash > 0) {
            return one("lot", grade(project, typed.substring(0, slash)).getLots(), Lot::getCode, typed.substring(slash + 1));
        }
        return one("lot", project.getGrades().stream().flatMap(g -> g.getLots().stream()).toList(), Lot::getCode, typed);
    }

    static PropertyDef property(CliServices services, String id) {
        return one("property", services.registries().properties().all(), PropertyDef::id, id.contains(".") ? id : "testing." + id);
    }

    /** The newest target sheet. */
    static TargetSheet sheet(Project project) {
        if (project.getTargetSheets().isEmpty()) {
            throw new UsageException("There is no target sheet yet: flexwright target add makes one.");
        }
        return project.getTargetSheets().get(project.getTargetSheets().size() - 1);
    }

    /** A step by its number from 1, its kind or its title. */
    static Step step(Trial trial, String typed) {
        List<Step> steps = trial.getSteps();
        if (typed.matches("\\d+")) {
            int number = Integer.parseInt(typed);
            if (number < 1 || number > steps.size()) {
                throw new UsageException(trial.getCode() + " has steps 1 to " + steps.size() + ", not " + typed + ".");
            }
            return steps.get(number - 1);
        }
        List<Step> found = steps.stream().filter(s -> typed.equalsIgnoreCase(s.getTitle()) || s.getKind() != null && (typed.equals(s.getKind())
                || s.getKind().endsWith("." + typed))).toList();
        if (found.size() != 1) {
            throw new UsageException((found.isEmpty() ? "There is no step \"" : "There is more than one step \"") + typed + "\" in "
                    + trial.getCode() + ": give its number, 1 to " + steps.size() + ".");
        }
        return found.get(0);
    }

    /** A role by its name, or A and B for the components. */
    static PartRole role(String typed) {
        String name = switch (typed.strip().toUpperCase(java.util.Locale.ROOT)) {
            case "A" -> "COMPONENT_A";
            case "B" -> "COMPONENT_B";
            default -> typed.strip().toUpperCase(java.util.Locale.ROOT).replace('-', '_').replace(' ', '_');
        };
        return one("role", PartRole.VALUES, r -> r.getName(), name);
    }
}
