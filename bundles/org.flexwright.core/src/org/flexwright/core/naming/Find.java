package org.flexwright.core.naming;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.recording.Recordings;
import org.flexwright.model.Batch;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Identified;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Mould;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Ranking;
import org.flexwright.model.Recipe;
import org.flexwright.model.Recording;
import org.flexwright.model.SavedSearch;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Things by the code a person types. Each method throws {@link UnknownNameException} when there is none, with what was near. Upper and lower case are alike. */
public final class Find {
    /** More than these are not listed in a sentence. */
    private static final int FEW = 14;

    private Find() {
    }

    /** The one of a list with that code. */
    public static <T> T one(String what, List<T> all, Function<T, String> code, String typed) {
        return all.stream().filter(x -> typed.strip().equalsIgnoreCase(code.apply(x))).findFirst().orElseThrow(() -> none(what, typed, all.stream().map(code)
                .map(String::valueOf).toList()));
    }

    /** By id, by what stands behind the point of an id when that is enough, or by title. */
    public static <T> T named(String what, List<T> all, Function<T, String> id, Function<T, String> title, String typed) {
        String wanted = typed.strip();
        Optional<T> exact = all.stream().filter(x -> wanted.equalsIgnoreCase(id.apply(x))).findFirst();
        if (exact.isPresent()) {
            return exact.get();
        }
        String tail = "." + wanted.toLowerCase(Locale.ROOT);
        List<T> found = all.stream().filter(x -> id.apply(x).endsWith(tail) || wanted.equalsIgnoreCase(title.apply(x))).toList();
        if (found.size() > 1) {
            throw UnknownNameException.of("several", what, typed, String.join(", ", found.stream().map(id).toList()));
        }
        return found.stream().findFirst().orElseThrow(() -> none(what, typed, all.stream().map(id).toList()));
    }

    private static UnknownNameException none(String what, String typed, List<String> known) {
        if (known.isEmpty()) {
            return UnknownNameException.of("none", what, typed);
        }
        if (known.size() <= FEW) {
            return UnknownNameException.of("none.known", what, typed, String.join(", ", known));
        }
        List<String> near = Nearest.of(typed, known);
        return near.isEmpty() ? UnknownNameException.of("none.many", what, typed, known.size()) : UnknownNameException.of("none.near", what, typed, String.join(
                " or ", near));
    }

    /** A constant by its word; dashes, underlines and spaces are alike. */
    public static <E extends Enum<E>> E word(String what, List<E> all, String typed) {
        return one(what, all, Names::word, typed.replace('-', ' ').replace('_', ' '));
    }

    /** A trial. */
    public static Trial trial(Project project, String code) {
        return one("trial", project.getTrials(), Trial::getCode, code);
    }

    /** A part of a trial. */
    public static Part part(Trial trial, String code) {
        return one("part of " + trial.getCode(), trial.getParts(), Part::getCode, code);
    }

    /** A session. */
    public static Session session(Project project, String code) {
        return one("session", project.getSessions(), Session::getCode, code);
    }

    /** A material. */
    public static MaterialGrade grade(Project project, String code) {
        return one("material", project.getGrades(), MaterialGrade::getCode, code);
    }

    /** An instrument by its name. */
    public static Instrument instrument(Project project, String name) {
        return one("instrument", project.getInstruments(), Instrument::getName, name);
    }

    /** A control piece. */
    public static ControlPiece controlPiece(Project project, String code) {
        return one("control piece", project.getControlPieces(), ControlPiece::getCode, code);
    }

    /** Anything that can be read: a part by its trial and its own code ({@code T08/P1}), a reference part or a control piece by its code. */
    public static Specimen piece(Project project, String typed) {
        List<Specimen> found = called(project, typed).stream().filter(Specimen.class::isInstance).map(Specimen.class::cast).toList();
        if (found.size() != 1) {
            throw UnknownNameException.of(found.isEmpty() ? "piece.none" : "piece.several", typed);
        }
        return found.getFirst();
    }

    /** A gauge study. */
    public static GaugeStudy gaugeStudy(Project project, String code) {
        return one("gauge study", project.getGaugeStudies(), GaugeStudy::getCode, code);
    }

    /** A ranking. */
    public static Ranking ranking(Project project, String code) {
        return one("ranking", project.getRankings(), Ranking::getCode, code);
    }

    /** A mould. */
    public static Mould mould(Project project, String code) {
        return one("mould", project.getMoulds(), Mould::getCode, code);
    }

    /** A premix. */
    public static Premix premix(Project project, String code) {
        return one("premix", project.getPremixes(), Premix::getCode, code);
    }

    /** A batch. */
    public static Batch batch(Project project, String code) {
        return one("batch", project.getBatches(), Batch::getCode, code);
    }

    /** A saved search by its name. */
    public static SavedSearch search(Project project, String name) {
        return one("saved search", project.getSearches(), SavedSearch::getName, name);
    }

    /** A recording. */
    public static Recording recording(Project project, String code) {
        return one("recording", Recordings.all(project).toList(), Recording::getCode, code);
    }

    /** A recipe by {@code R1 v2}; by {@code R1} its newest version. */
    public static Recipe recipe(Project project, String typed) {
        String wanted = typed.strip().replaceAll("\\s+", " ");
        return project.getRecipes().stream().filter(r -> wanted.equalsIgnoreCase(version(r))).findFirst().or(() -> project.getRecipes().stream().filter(r -> wanted
                .equalsIgnoreCase(r.getCode())).max((a, b) -> Integer.compare(a.getVersion(), b.getVersion()))).orElseThrow(() -> none("recipe", typed, project
                        .getRecipes().stream().map(Find::version).toList()));
    }

    private static String version(Recipe recipe) {
        return recipe.getCode() + " v" + recipe.getVersion();
    }

    /** A lot by {@code grade/lot}, or by its own code when only one grade has it. */
    public static Lot lot(Project project, String typed) {
        int slash = typed.indexOf('/');
        if (slash > 0) {
            return one("lot", grade(project, typed.substring(0, slash)).getLots(), Lot::getCode, typed.substring(slash + 1));
        }
        List<Lot> all = project.getGrades().stream().flatMap(g -> g.getLots().stream()).toList();
        List<Lot> found = all.stream().filter(l -> typed.strip().equalsIgnoreCase(l.getCode())).toList();
        if (found.size() > 1) {
            throw UnknownNameException.of("several", "lot", typed, String.join(", ", found.stream().map(l -> ((MaterialGrade) l.eContainer()).getCode() + "/" + l
                    .getCode()).toList()));
        }
        return one("lot", all, Lot::getCode, typed);
    }

    /** A property by its id, the end of it, or its title. */
    public static PropertyDef property(PropertyCatalogue properties, String typed) {
        return named("property", properties.all(), PropertyDef::id, PropertyDef::title, typed);
    }

    /** A step by its number from 1, its kind or its title. */
    public static Step step(Trial trial, String typed) {
        List<Step> steps = trial.getSteps();
        if (typed.matches("\\d{1,4}")) {
            int number = Integer.parseInt(typed);
            if (number < 1 || number > steps.size()) {
                throw UnknownNameException.of("step.number", trial.getCode(), steps.size(), typed);
            }
            return steps.get(number - 1);
        }
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<Step> found = steps.stream().filter(s -> wanted.equalsIgnoreCase(s.getTitle()) || s.getKind() != null && (wanted.equals(s.getKind())
                || s.getKind().endsWith("." + wanted))).toList();
        if (found.isEmpty()) {
            throw UnknownNameException.of("step.none", typed, trial.getCode(), String.join(", ", steps.stream().map(s -> (steps.indexOf(s) + 1) + " " + s
                    .getTitle()).toList()));
        }
        if (found.size() > 1) {
            throw UnknownNameException.of("step.several", typed, trial.getCode(), steps.size());
        }
        return found.get(0);
    }

    /** A role by its word; A and B are the components, "part A" too. */
    public static PartRole role(String typed) {
        return word("role", Arrays.asList(PartRole.values()), bare(typed));
    }

    /** True when a person means this role: as {@link #role}, without complaint about words that are none. */
    public static boolean isRole(PartRole role, String typed) {
        return Names.word(role).equalsIgnoreCase(bare(typed).replace('-', ' ').replace('_', ' '));
    }

    private static String bare(String role) {
        return role.strip().replaceFirst("(?i)^(part|component)[\\s_-]+(?=[ab]$)", "");
    }

    /** Everything of the project that a person calls exactly so: by its code, its name, or a code with the code of what it belongs to ({@code T07 P2}, {@code A1/L7}). */
    public static List<Identified> called(Project project, String typed) {
        String wanted = joined(typed);
        return addressable(project).filter(thing -> addresses(thing).anyMatch(a -> joined(a).equals(wanted))).map(Identified.class::cast).toList();
    }

    private static Stream<? extends Identified> addressable(Project project) {
        return Stream.of(project.getTrials(), project.getTrials().stream().flatMap(t -> t.getParts().stream()).toList(), project.getRecipes(), project
                .getSessions(), project.getGrades(), project.getGrades().stream().flatMap(g -> g.getLots().stream()).toList(), project.getMoulds(), project
                        .getPremixes(), project.getBatches(), project.getControlPieces(), project.getReferenceParts(), project.getInstruments(), project
                                .getSearches(), Recordings.all(project).toList()).flatMap(List::stream);
    }

    private static Stream<String> addresses(Identified thing) {
        return switch (thing) {
            case Part part -> Stream.of(((Trial) part.eContainer()).getCode() + " " + part.getCode());
            case Lot lot -> Stream.of(lot.getCode(), ((MaterialGrade) lot.eContainer()).getCode() + " " + lot.getCode()).filter(Objects::nonNull);
            case Recipe recipe -> Stream.of(version(recipe));
            default -> Stream.of(Names.code(thing), Names.text(thing, "name"));
        };
    }

    /** Without case; spaces, slashes, points, dashes and underlines all part two codes alike. */
    private static String joined(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s/._-]+", " ");
    }
}
