package org.flexwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
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
    /** More than these are not listed in a sentence. */
    private static final int FEW = 14;

    private Find() {
    }

    static <T> T one(String what, List<T> all, Function<T, String> code, String typed) {
        return all.stream().filter(x -> typed.strip().equalsIgnoreCase(code.apply(x))).findFirst().orElseThrow(() -> none(what, typed, all.stream().map(code)
                .map(String::valueOf).toList()));
    }

    /** By id, by what stands behind the point of an id when that is enough, or by title. */
    static <T> T named(String what, List<T> all, Function<T, String> id, Function<T, String> title, String typed) {
        String wanted = typed.strip();
        Optional<T> exact = all.stream().filter(x -> wanted.equalsIgnoreCase(id.apply(x))).findFirst();
        if (exact.isPresent()) {
            return exact.get();
        }
        String tail = "." + wanted.toLowerCase(Locale.ROOT);
        List<T> found = all.stream().filter(x -> id.apply(x).endsWith(tail) || wanted.equalsIgnoreCase(title.apply(x))).toList();
        if (found.size() > 1) {
            throw new UsageException("There is more than one " + what + " \"" + typed + "\": say which of " + String.join(", ", found.stream().map(id).toList())
                    + ".");
        }
        return found.stream().findFirst().orElseThrow(() -> none(what, typed, all.stream().map(id).toList()));
    }

    private static UsageException none(String what, String typed, List<String> known) {
        String sentence = "There is no " + what + " \"" + typed + "\"";
        List<String> near = Nearest.of(typed, known);
        if (known.isEmpty()) {
            return new UsageException(sentence + "; there is none yet.");
        }
        if (known.size() <= FEW) {
            return new UsageException(sentence + "; there are " + String.join(", ", known) + ".");
        }
        return new UsageException(sentence + (near.isEmpty() ? "; there are " + known.size() + "." : ": did you mean " + String.join(" or ", near) + "?"));
    }

    /** A constant by its word; dashes, underlines and spaces are alike. */
    static <E extends Enum<E>> E word(String what, List<E> all, String typed) {
        return one(what, all, Words::of, typed.replace('-', ' ').replace('_', ' '));
    }

    static Trial trial(Project project, String code) {
        return one("trial", project.getTrials(), Trial::getCode, code);
    }

    static Part part(Trial trial, String code) {
        return one("part of " + trial.getCode(), trial.getParts(), Part::getCode, code);
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

    static PropertyDef property(CliServices services, String typed) {
        return named("property", services.registries().properties().all(), PropertyDef::id, PropertyDef::title, typed);
    }

    /** The newest target sheet. */
    static TargetSheet sheet(Project project) {
        TargetSheet sheet = TargetSheets.current(project);
        if (sheet == null) {
            throw new UsageException("There is no target sheet yet: flexwright target add makes one.");
        }
        return sheet;
    }

    /** A step by its number from 1, its kind or its title. */
    static Step step(Trial trial, String typed) {
        List<Step> steps = trial.getSteps();
        if (typed.matches("\\d{1,4}")) {
            int number = Integer.parseInt(typed);
            if (number < 1 || number > steps.size()) {
                throw new UsageException(trial.getCode() + " has steps 1 to " + steps.size() + ", not " + typed + ".");
            }
            return steps.get(number - 1);
        }
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<Step> found = steps.stream().filter(s -> wanted.equalsIgnoreCase(s.getTitle()) || s.getKind() != null && (wanted.equals(s.getKind())
                || s.getKind().endsWith("." + wanted))).toList();
        if (found.isEmpty()) {
            throw new UsageException("There is no step \"" + typed + "\" in " + trial.getCode() + "; there are " + String.join(", ", steps.stream().map(s -> (steps
                    .indexOf(s) + 1) + " " + s.getTitle()).toList()) + ".");
        }
        if (found.size() > 1) {
            throw new UsageException("There is more than one step \"" + typed + "\" in " + trial.getCode() + ": give its number, 1 to " + steps.size() + ".");
        }
        return found.get(0);
    }

    /** A role by its word; A and B are the components, "part A" too. */
    static PartRole role(String typed) {
        return word("role", Arrays.asList(PartRole.values()), typed.strip().replaceFirst("(?i)^(part|component)[\\s_-]+(?=[ab]$)", ""));
    }
}
