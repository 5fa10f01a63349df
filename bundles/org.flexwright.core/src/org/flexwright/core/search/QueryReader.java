package org.flexwright.core.search;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Message;
import org.flexwright.core.registry.Registries;

/**
 * Reads a maker's search. Words may stand in any order and be the beginnings of longer ones; case and accents do not matter. All must be met.
 * <ul>
 * <li>a word, a lot number, what stands on a label; {@code "words in quotes"} exactly in that order</li>
 * <li>a result: {@code snapped}, {@code rests inverted}, {@code never inverted}</li>
 * <li>a number with its unit, a range, {@code > 12 N}; what it is called may stand beside it: {@code wall 1.4-1.5 mm}</li>
 * <li>a time: {@code last year}, {@code March 2026}, {@code before 2026-03-14}</li>
 * <li>a kind of thing: {@code lots}; a kind of text: {@code notes}, or {@code note:bubbles} for a word in it</li>
 * <li>{@code not}, {@code without} or a minus before what must not be there</li>
 * </ul>
 */
final class QueryReader {
    /** More words than these are no search that anybody typed. */
    private static final int MOST = 24;
    /** Words beside a number that can be its name. */
    private static final int NAME = 4;
    private static final Set<String> JOINING = Set.of("and", "with", "the", "of", "in", "a", "an", "for", "at", "by", "on", "is", "was", "were", "all", "to", "from");
    private static final Set<String> STATES = Set.of("planned", "making", "discarded");
    private static final Map<String, String> TEXTS = Map.of("notes", "note", "decisions", "decision", "conclusions", "conclusion", "reasons", "reason", "ideas", "idea", "captions",
            "caption");

    private final Vocabulary vocabulary;
    private final UnitWords units;
    private final Clock clock;

    QueryReader(Registries registries, UnitWords units, Clock clock) {
        this.vocabulary = new Vocabulary(registries);
        this.units = units;
        this.clock = clock;
    }

    Query read(String typed) {
        return new Reading(typed).query();
    }

    private final class Reading {
        private final String typed;
        private final Tokens words;
        private final TimeWords times;
        private final AmountWords amounts;
        private final List<Term> terms = new ArrayList<>();
        private final List<String> left = new ArrayList<>();
        private final Set<ThingKind> kinds = EnumSet.noneOf(ThingKind.class);
        private String text = "";

        Reading(String typed) {
            this.typed = typed;
            words = new Tokens(typed);
            times = new TimeWords(words, units, LocalDate.now(clock));
            amounts = new AmountWords(words, units, times);
        }

        Query query() {
            int i = 0;
            while (i < words.size()) {
                if (i >= MOST) {
                    left.add(say("left.long", MOST, words.at(i).raw()));
                    break;
                }
                i = one(i);
            }
            names();
            if (!text.isEmpty()) {
                within();
            }
            if (!kinds.isEmpty()) {
                terms.add(0, new Term.Kinds(Set.copyOf(kinds)));
            }
            return new Query(typed, terms, left);
        }

        private int one(int i) {
            if (words.at(i).quoted()) {
                return phrase(i);
            }
            String word = words.small(i);
            if (word.length() > 1 && word.charAt(0) == '-' && Character.isLetter(word.charAt(1))) {
                add(new Term.Without(word(words.raw(i).substring(1), "")));
                return i + 1;
            }
            if (List.of("not", "without", "no", "never").contains(word) && i + 1 < words.size()) {
                return without(i, word);
            }
            Optional<Parsed> known = times.at(i).or(() -> amounts.at(i));
            if (known.isPresent()) {
                add(known.get().term());
                return known.get().next();
            }
            Parsed title = vocabulary.title(words, i);
            if (title != null) {
                add(title.term());
                return title.next();
            }
            return single(i, word);
        }

        private int phrase(int i) {
            String line = Plain.line(words.at(i).raw());
            if (line.isBlank()) {
                left.add(say("left.nothing", words.at(i).raw()));
            } else {
                add(new Term.Phrase(words.at(i).raw(), line));
            }
            return i + 1;
        }

        /** What must not be there; "never" before a yes or no asks for a no that was read. */
        private int without(int i, String word) {
            int before = terms.size();
            int next = one(i + 1);
            if (terms.size() > before) {
                Term term = terms.removeLast();
                Term no = word.equals("never") && term instanceof Term.Result result ? vocabulary.opposite(result) : null;
                terms.add(no != null ? no : term instanceof Term.Without twice ? twice.term() : new Term.Without(term));
            }
            return next;
        }

        private int single(int i, String word) {
            Optional<ThingKind> kind = ThingKind.ofWord(word);
            Term.Result result = vocabulary.result(Plain.word(word));
            int colon = word.indexOf(':');
            if (kind.isPresent()) {
                kinds.add(kind.get());
            } else if (TEXTS.containsKey(word)) {
                text = TEXTS.get(word);
            } else if (result != null && !vocabulary.together(Plain.word(word), Plain.word(words.raw(i + 1)))) {
                add(result);
            } else if (colon > 0 && Character.isLetter(word.charAt(0))) {
                return labelled(i, colon);
            } else if (word.equals("or")) {
                left.add(say("left.or", words.raw(i)));
            } else if (JOINING.contains(word)) {
                left.add(say("left.connecting", words.raw(i)));
            } else if (Plain.word(word).isEmpty()) {
                left.add(say("left.nothing", words.raw(i)));
            } else {
                add(word(words.raw(i), STATES.contains(word) ? "state" : ""));
            }
            return i + 1;
        }

        /** {@code note:bubbles}, also with a space behind the colon or with quotes. */
        private int labelled(int i, int colon) {
            String label = Plain.word(words.raw(i).substring(0, colon));
            String behind = words.raw(i).substring(colon + 1);
            if (behind.isEmpty() && i + 1 < words.size()) {
                if (words.at(i + 1).quoted()) {
                    Plain.words(words.at(i + 1).raw()).forEach(w -> add(new Term.Word(w, w, label)));
                } else {
                    add(word(words.raw(i + 1), label));
                }
                return i + 2;
            }
            if (Plain.word(behind).isEmpty()) {
                add(new Term.Having(label));
            } else {
                add(word(behind, label));
            }
            return i + 1;
        }

        private Term word(String raw, String within) {
            return new Term.Word(raw, Plain.word(raw), within);
        }

        private void add(Term term) {
            if (!terms.contains(term)) {
                terms.add(term);
            }
        }

        /** Words beside a number become its name where something with such a unit is called so. */
        private void names() {
            for (int i = 0; i < terms.size(); i++) {
                if (terms.get(i) instanceof Term.Amount amount) {
                    int before = i;
                    while (before > 0 && i - before < NAME && plain(before - 1)) {
                        before--;
                    }
                    int behind = i + 1;
                    while (behind < terms.size() && behind - i <= NAME && plain(behind)) {
                        behind++;
                    }
                    i = named(amount, i, before, behind);
                }
            }
        }

        private boolean plain(int i) {
            return terms.get(i) instanceof Term.Word word && word.within().isEmpty() && word.word().length() > 1;
        }

        private int named(Term.Amount amount, int i, int before, int behind) {
            for (int from = before; from < i; from++) {
                if (name(amount, from, i, i)) {
                    return from;
                }
            }
            for (int to = behind; to > i + 1; to--) {
                if (name(amount, i + 1, to, i)) {
                    return i;
                }
            }
            return i;
        }

        private boolean name(Term.Amount amount, int from, int to, int at) {
            List<String> name = terms.subList(from, to).stream().map(t -> ((Term.Word) t).word()).toList();
            if (!vocabulary.called(name, amount)) {
                return false;
            }
            terms.set(at, amount.called(name));
            terms.subList(from, to).clear();
            return true;
        }

        /** All words are looked for in one kind of text; without words, whatever has such a text. */
        private void within() {
            boolean any = false;
            for (int i = 0; i < terms.size(); i++) {
                if (terms.get(i) instanceof Term.Word word && word.within().isEmpty()) {
                    terms.set(i, new Term.Word(word.typed(), word.word(), text));
                    any = true;
                }
            }
            if (!any) {
                terms.add(new Term.Having(text));
            }
        }
    }

    private static String say(String key, Object... args) {
        return Message.of(QueryReader.class, key, args).text();
    }
}
