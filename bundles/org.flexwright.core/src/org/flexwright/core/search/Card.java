package org.flexwright.core.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.quantity.QuantityKind;

/**
 * Everything that can be found of one thing, read at one moment; it never changes. Numbers are in the canonical unit of their kind.
 */
final class Card {
    /** How a number came about. */
    enum Sort {
        /** Median of the readings on one piece. */
        MEDIAN,
        /** A single reading beside that median. */
        READING,
        /** Readings of yes on one piece. */
        YES,
        /** Only readings of no on one piece. */
        NO,
        /** A number entered or weighed. */
        ENTERED,
        /** A number in a written sentence. */
        WRITTEN
    }

    private static final Sort[] SORTS = Sort.values();
    private static final QuantityKind[] KINDS = QuantityKind.values();

    final String id;
    final ThingKind kind;
    final String code;
    final String name;
    /** Code and name as plain words, to see at once whether exactly they were typed. */
    final String plainCode;
    final String plainName;
    final LocalDate day;
    final String dayWord;
    final String line;
    /** What is opened for it, where that is not the thing itself. */
    final String opens;
    final String[] texts;
    final Label[] textLabels;
    final short[] textPlaces;
    final double[] lows;
    final double[] highs;
    final byte[] kinds;
    final byte[] sorts;
    final Label[] numberLabels;
    final short[] numberPlaces;
    final String[] placeIds;
    final String[] placeNames;
    /** Ids of other things whose names stand here. */
    final List<String> uses;

    private Card(Maker m) {
        id = m.id;
        kind = m.kind;
        code = m.code;
        name = m.name;
        plainCode = Plain.word(code);
        plainName = Plain.word(name);
        day = m.day;
        dayWord = m.dayWord;
        line = m.line;
        opens = m.opens == null ? m.id : m.opens;
        texts = m.texts.stream().map(Text::text).toArray(String[]::new);
        textLabels = m.texts.stream().map(Text::label).toArray(Label[]::new);
        textPlaces = shorts(m.texts.stream().map(Text::place).toList());
        lows = m.numbers.stream().mapToDouble(Number::low).toArray();
        highs = m.numbers.stream().allMatch(n -> n.low == n.high) ? lows : m.numbers.stream().mapToDouble(Number::high).toArray();
        kinds = new byte[lows.length];
        sorts = new byte[lows.length];
        for (int i = 0; i < lows.length; i++) {
            kinds[i] = (byte) m.numbers.get(i).kind.ordinal();
            sorts[i] = (byte) m.numbers.get(i).sort.ordinal();
        }
        numberLabels = m.numbers.stream().map(Number::label).toArray(Label[]::new);
        numberPlaces = shorts(m.numbers.stream().map(Number::place).toList());
        placeIds = m.placeIds.toArray(String[]::new);
        placeNames = m.placeNames.toArray(String[]::new);
        uses = List.copyOf(m.uses);
    }

    private static short[] shorts(List<Integer> numbers) {
        short[] all = new short[numbers.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = (short) (int) numbers.get(i);
        }
        return all;
    }

    Sort sort(int number) {
        return SORTS[sorts[number]];
    }

    QuantityKind quantity(int number) {
        return KINDS[kinds[number]];
    }

    private record Text(String text, Label label, int place) {
    }

    private record Number(double low, double high, QuantityKind kind, Sort sort, Label label, int place) {
    }

    /** Gathers a card. */
    static final class Maker {
        private final String id;
        private final ThingKind kind;
        private final List<Text> texts = new ArrayList<>();
        private final List<Number> numbers = new ArrayList<>();
        private final List<String> placeIds = new ArrayList<>();
        private final List<String> placeNames = new ArrayList<>();
        private final java.util.Set<String> uses = new java.util.LinkedHashSet<>();
        private String code = "";
        private String name = "";
        private LocalDate day;
        private String dayWord = "";
        private String line = "";
        private String opens;

        Maker(String id, ThingKind kind) {
            this.id = id;
            this.kind = kind;
        }

        void named(String shortCode, String longName) {
            code = shortCode;
            name = longName;
        }

        /** The day of a thing; the first that is told counts. */
        void dated(LocalDate when, String word) {
            if (day == null && when != null) {
                day = when;
                dayWord = word;
            }
        }

        /** A short line beside its name. */
        void line(String text) {
            line = text;
        }

        void opens(String address) {
            opens = address;
        }

        /** A place inside the thing; returns its number. More places than a short counts share the last one. */
        int place(String address, String called) {
            if (placeIds.size() < Short.MAX_VALUE) {
                placeIds.add(address);
                placeNames.add(called);
            }
            return placeIds.size() - 1;
        }

        void text(Label label, int place, String text) {
            if (text != null && !text.isBlank()) {
                texts.add(new Text(text, label, place));
            }
        }

        void number(Label label, int place, QuantityKind of, Sort sort, double low, double high) {
            if (!Double.isNaN(low) && !Double.isNaN(high)) {
                numbers.add(new Number(low, high, of, sort, label, place));
            }
        }

        void uses(String other) {
            if (other != null) {
                uses.add(other);
            }
        }

        Card card() {
            return new Card(this);
        }
    }
}
