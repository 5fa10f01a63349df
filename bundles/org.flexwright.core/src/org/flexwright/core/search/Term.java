package org.flexwright.core.search;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityKind;

/** One thing that is asked for. Whatever an index does, {@link #matches} is what the term means. */
sealed interface Term {
    /** What was understood, in words. */
    String say();

    /** True when a thing has it. */
    boolean matches(Card card);

    /** Where it has it; empty when it has not, and for what stands nowhere. */
    Optional<Why> why(Card card);

    private static String words(String key, Object... args) {
        return Message.of(Term.class, key, args).text();
    }

    /** The place of a text or number of a card. */
    private static Why at(Card card, Label label, short place, String text) {
        return new Why(label.words(), text, place < 0 ? card.id : card.placeIds[place], place < 0 ? "" : card.placeNames[place]);
    }

    /**
     * A word, also as the beginning of a longer one.
     *
     * @param typed  as typed
     * @param word   in plain form
     * @param within beginning of the only label in whose texts it is looked for, plain; empty for everywhere
     */
    record Word(String typed, String word, String within) implements Term {
        @Override
        public String say() {
            return within.isEmpty() ? words("word", typed) : words("word.within", within, typed);
        }

        private boolean inside(Label label) {
            return within.isEmpty() || Plain.begins(label.words(), within);
        }

        @Override
        public boolean matches(Card card) {
            for (int i = 0; i < card.texts.length; i++) {
                if (inside(card.textLabels[i]) && Plain.begins(card.texts[i], word)) {
                    return true;
                }
            }
            return within.isEmpty() && read(card) >= 0;
        }

        /** The first number whose property is called so: "hardness" finds what was read. */
        private int read(Card card) {
            for (int i = 0; i < card.lows.length; i++) {
                if (!card.numberLabels[i].property().isEmpty() && Plain.begins(card.numberLabels[i].words(), word)) {
                    return i;
                }
            }
            return -1;
        }

        @Override
        public Optional<Why> why(Card card) {
            for (int i = 0; i < card.texts.length; i++) {
                if (inside(card.textLabels[i]) && Plain.begins(card.texts[i], word)) {
                    return Optional.of(at(card, card.textLabels[i], card.textPlaces[i], Excerpt.around(card.texts[i], word)));
                }
            }
            int read = within.isEmpty() ? read(card) : -1;
            return read < 0 ? Optional.empty() : Optional.of(at(card, card.numberLabels[read], card.numberPlaces[read], Amount.value(card, read)));
        }
    }

    /**
     * Words exactly in that order.
     *
     * @param line in plain form with one space around each word
     */
    record Phrase(String typed, String line) implements Term {
        @Override
        public String say() {
            return words("phrase", typed);
        }

        @Override
        public boolean matches(Card card) {
            for (String text : card.texts) {
                if (Plain.line(text).contains(line)) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public Optional<Why> why(Card card) {
            for (int i = 0; i < card.texts.length; i++) {
                if (Plain.line(card.texts[i]).contains(line)) {
                    return Optional.of(at(card, card.textLabels[i], card.textPlaces[i], Excerpt.around(card.texts[i], line.strip().split(" ")[0])));
                }
            }
            return Optional.empty();
        }
    }

    /**
     * A range of one kind of quantity, in its canonical unit.
     *
     * @param kind what is measured; null for a number typed without a unit, which may be of any
     * @param low  lower end, may be minus infinity
     * @param high upper end, may be infinity
     * @param lowOpen  true when the lower end itself does not count
     * @param highOpen true when the upper end itself does not count
     */
    record Range(QuantityKind kind, double low, double high, boolean lowOpen, boolean highOpen) {
        /** Ends that were converted count as met within rounding. */
        private static final double ROUNDING = 1e-9;

        boolean holds(double from, double to) {
            boolean exact = from == to;
            double under = slack(low);
            double over = slack(high);
            boolean above = exact && lowOpen ? from > low + under : from >= low - under;
            boolean below = exact && highOpen ? to < high - over : to <= high + over;
            return above && below;
        }

        private static double slack(double end) {
            return Double.isFinite(end) && Math.abs(end) < Double.MAX_VALUE ? ROUNDING * Math.abs(end) : 0;
        }
    }

    /**
     * A number or range of numbers.
     *
     * @param said   the numbers and unit in words
     * @param called beginnings of the words of what it must be called, plain; empty for anything
     * @param ranges one for each kind the unit can be of
     * @param point  true for one number, which single readings may match too; ranges are compared with medians of pieces
     * @param code   plain word that a text may begin with instead (a lot 24-117); empty for none
     * @param whole  true when that word must be a whole one
     */
    record Amount(String said, List<String> called, List<Range> ranges, boolean point, String code, boolean whole) implements Term {
        @Override
        public String say() {
            String numbers = called.isEmpty() ? said : String.join(" ", called) + " " + said;
            return code.isEmpty() ? numbers : words("amount.bare", numbers);
        }

        Amount called(List<String> words) {
            return new Amount(said, words, ranges, point, "", false);
        }

        boolean number(Card card, int i) {
            boolean held = false;
            for (int r = 0; r < ranges.size() && !held; r++) {
                Range range = ranges.get(r);
                held = (range.kind() == null || range.kind().ordinal() == card.kinds[i]) && range.holds(card.lows[i], card.highs[i]);
            }
            if (!held || card.sort(i) == Card.Sort.YES || card.sort(i) == Card.Sort.NO || !point && card.sort(i) == Card.Sort.READING) {
                return false;
            }
            return called.isEmpty() || called.stream().allMatch(word -> Plain.begins(card.numberLabels[i].words(), word));
        }

        /** The number to show: a median before a single reading, a reading before what was planned or written. */
        int best(Card card) {
            int best = -1;
            for (int i = 0; i < card.lows.length; i++) {
                if (number(card, i) && (best < 0 || card.sort(i).ordinal() < card.sort(best).ordinal())) {
                    best = i;
                    if (card.sort(i) == Card.Sort.MEDIAN) {
                        break;
                    }
                }
            }
            return best;
        }

        boolean coded(String word) {
            return whole ? word.equals(code) : word.startsWith(code);
        }

        @Override
        public boolean matches(Card card) {
            return best(card) >= 0 || text(card) >= 0;
        }

        private int text(Card card) {
            for (int i = 0; i < card.texts.length && !code.isEmpty(); i++) {
                if (Plain.words(card.texts[i]).stream().anyMatch(this::coded)) {
                    return i;
                }
            }
            return -1;
        }

        @Override
        public Optional<Why> why(Card card) {
            int number = best(card);
            if (number >= 0) {
                return Optional.of(at(card, card.numberLabels[number], card.numberPlaces[number], value(card, number)));
            }
            int text = text(card);
            return text < 0 ? Optional.empty() : Optional.of(at(card, card.textLabels[text], card.textPlaces[text], Excerpt.around(card.texts[text], code)));
        }

        /** A number of a card as people read it. */
        static String value(Card card, int i) {
            QuantityKind kind = card.quantity(i);
            double low = card.lows[i];
            double high = card.highs[i];
            String number;
            if (low == high) {
                number = FieldText.number(low, kind, "");
            } else if (Double.isInfinite(high)) {
                number = words("more", FieldText.number(low, kind, ""));
            } else if (Double.isInfinite(low)) {
                number = words("less", FieldText.number(high, kind, ""));
            } else {
                number = words("range", FieldText.digits(low), FieldText.number(high, kind, ""));
            }
            return switch (card.sort(i)) {
                case MEDIAN -> words("median", number);
                case READING -> words("reading", number);
                case WRITTEN -> words("written", number);
                case YES -> words("yes");
                case NO -> words("no");
                case ENTERED -> number;
            };
        }
    }

    /**
     * A result of a property: yes or no, or a number within a range that has a name.
     *
     * @param said     what was understood
     * @param property id of the property
     * @param yes      the answer, for a yes/no property; null for a number
     * @param range    the range, for a number
     */
    record Result(String said, String property, Boolean yes, Range range) implements Term {
        @Override
        public String say() {
            return said;
        }

        /** The first number that means it; a no counts only where nothing of the thing was read as yes. */
        private int number(Card card) {
            int found = -1;
            for (int i = 0; i < card.lows.length; i++) {
                if (card.numberLabels[i].property().equals(property)) {
                    if (yes != null && !yes && card.sort(i) == Card.Sort.YES) {
                        return -1;
                    }
                    found = found < 0 && means(card, i) ? i : found;
                }
            }
            return found;
        }

        private boolean means(Card card, int i) {
            if (yes != null) {
                return card.sort(i) == (yes ? Card.Sort.YES : Card.Sort.NO);
            }
            return card.sort(i) == Card.Sort.MEDIAN && range.holds(card.lows[i], card.highs[i]);
        }

        @Override
        public boolean matches(Card card) {
            return number(card) >= 0;
        }

        @Override
        public Optional<Why> why(Card card) {
            int i = number(card);
            return i < 0 ? Optional.empty() : Optional.of(at(card, card.numberLabels[i], card.numberPlaces[i], Amount.value(card, i)));
        }
    }

    /** A time; null for an open end. Both days count. */
    record Time(String said, LocalDate from, LocalDate to) implements Term {
        @Override
        public String say() {
            return said;
        }

        @Override
        public boolean matches(Card card) {
            return card.day != null && (from == null || !card.day.isBefore(from)) && (to == null || !card.day.isAfter(to));
        }

        @Override
        public Optional<Why> why(Card card) {
            return matches(card) ? Optional.of(new Why(words("date"), card.dayWord + " " + card.day, card.id, "")) : Optional.empty();
        }
    }

    /** Only things of some kinds. */
    record Kinds(Set<ThingKind> kinds) implements Term {
        @Override
        public String say() {
            return words("kinds", String.join(", ", kinds.stream().sorted().map(k -> k.title().toLowerCase(java.util.Locale.ROOT)).toList()));
        }

        @Override
        public boolean matches(Card card) {
            return kinds.contains(card.kind);
        }

        @Override
        public Optional<Why> why(Card card) {
            return Optional.empty();
        }
    }

    /** Things that have a text of a certain name, such as a note. */
    record Having(String label) implements Term {
        @Override
        public String say() {
            return words("having", label);
        }

        @Override
        public boolean matches(Card card) {
            for (Label l : card.textLabels) {
                if (Plain.begins(l.words(), label)) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public Optional<Why> why(Card card) {
            for (int i = 0; i < card.texts.length; i++) {
                if (Plain.begins(card.textLabels[i].words(), label)) {
                    return Optional.of(at(card, card.textLabels[i], card.textPlaces[i], Excerpt.around(card.texts[i], "")));
                }
            }
            return Optional.empty();
        }
    }

    /** Things that do not have it. */
    record Without(Term term) implements Term {
        @Override
        public String say() {
            return words("without", term.say());
        }

        @Override
        public boolean matches(Card card) {
            return !term.matches(card);
        }

        @Override
        public Optional<Why> why(Card card) {
            return Optional.empty();
        }
    }
}
