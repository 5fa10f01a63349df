package org.flexwright.core.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;

import org.flexwright.core.Message;
import org.flexwright.core.naming.Nearest;

/** The cards of a project by their words. It may be asked on any thread while cards come and go. */
final class CardIndex {
    /** Questions with more terms than this are not taken apart. */
    private static final int MOST_WEIGHED = 6;
    private static final String AFTER_ALL = "\uFFFF";
    /** Words this much longer or shorter are no slip of the same word. */
    private static final int SLIP = 2;

    private final ReadWriteLock lock = new ReentrantReadWriteLock();
    private final NavigableMap<String, Slots> words = new TreeMap<>();
    private final Map<String, Integer> slots = new HashMap<>();
    private final List<Card> cards = new ArrayList<>();
    private final Deque<Integer> free = new ArrayDeque<>();

    /** Slots in rising order. */
    private static final class Slots {
        private int[] slots = new int[2];
        private int size;

        void add(int slot) {
            int at = Arrays.binarySearch(slots, 0, size, slot);
            if (at < 0) {
                if (size == slots.length) {
                    slots = Arrays.copyOf(slots, size + (size >> 1) + 1);
                }
                System.arraycopy(slots, -at - 1, slots, -at, size + at + 1);
                slots[-at - 1] = slot;
                size++;
            }
        }

        void remove(int slot) {
            int at = Arrays.binarySearch(slots, 0, size, slot);
            if (at >= 0) {
                System.arraycopy(slots, at + 1, slots, at, size - at - 1);
                size--;
            }
        }

        void into(BitSet set) {
            for (int i = 0; i < size; i++) {
                set.set(slots[i]);
            }
        }
    }

    private static Set<String> wordsOf(Card card) {
        Set<String> all = new HashSet<>();
        for (String text : card.texts) {
            Plain.words(text, all::add);
        }
        Set<Label> called = new HashSet<>();
        for (Label label : card.numberLabels) {
            if (!label.property().isEmpty() && called.add(label)) {
                Plain.words(label.words(), all::add);
            }
        }
        return all;
    }

    /** Takes a card in, in place of the one with its id. */
    void put(Card card) {
        Set<String> all = wordsOf(card);
        lock.writeLock().lock();
        try {
            drop(card.id);
            int slot = free.isEmpty() ? cards.size() : free.pop();
            if (slot == cards.size()) {
                cards.add(card);
            } else {
                cards.set(slot, card);
            }
            slots.put(card.id, slot);
            all.forEach(word -> words.computeIfAbsent(word, w -> new Slots()).add(slot));
        } finally {
            lock.writeLock().unlock();
        }
    }

    /** Takes the card with that id out; nothing when there is none. */
    void remove(String id) {
        lock.writeLock().lock();
        try {
            drop(id);
        } finally {
            lock.writeLock().unlock();
        }
    }

    private void drop(String id) {
        Integer slot = slots.remove(id);
        if (slot != null) {
            for (String word : wordsOf(cards.get(slot))) {
                Slots those = words.get(word);
                those.remove(slot);
                if (those.size == 0) {
                    words.remove(word);
                }
            }
            cards.set(slot, null);
            free.push(slot);
        }
    }

    /** All cards as they are now. */
    List<Card> cards() {
        lock.readLock().lock();
        try {
            return slots.values().stream().map(cards::get).toList();
        } finally {
            lock.readLock().unlock();
        }
    }

    /** How many cards there are. */
    int size() {
        lock.readLock().lock();
        try {
            return slots.size();
        } finally {
            lock.readLock().unlock();
        }
    }

    /** Everything that meets the query; the best {@code most} of them with the reasons. */
    Answer find(Query query, int most, int unread) {
        lock.readLock().lock();
        try {
            List<String> left = new ArrayList<>(query.left());
            query.terms().forEach(term -> nowhere(term).ifPresent(left::add));
            List<Card> found = new ArrayList<>();
            Map<ThingKind, Integer> counts = new EnumMap<>(ThingKind.class);
            if (!query.terms().isEmpty()) {
                BitSet all = all();
                // words first: they leave few for the others to look at
                query.terms().stream().sorted(Comparator.comparing(t -> !cheap(t))).forEach(term -> all.and(of(term, all)));
                all.stream().forEach(slot -> found.add(cards.get(slot)));
                found.forEach(card -> counts.merge(card.kind, 1, Integer::sum));
                if (found.isEmpty() && unread == 0) {
                    left.addAll(inTheWay(query.terms()));
                }
            }
            String whole = Plain.word(query.typed());
            found.sort(Comparator.comparing((Card c) -> c.kind).thenComparing(c -> !c.plainCode.equals(whole) && !c.plainName.equals(whole)).thenComparing(c -> c.day,
                    Comparator.nullsLast(Comparator.reverseOrder())).thenComparing(c -> c.code, Comparator.reverseOrder()).thenComparing(c -> c.id));
            // cautions read are many and alike: counted, and shown to whoever asks for them
            if (query.terms().stream().noneMatch(Term.Kinds.class::isInstance)) {
                found.removeIf(card -> card.kind == ThingKind.CAUTION);
            }
            List<Hit> hits = best(found, most).stream().map(card -> hit(card, query)).toList();
            return new Answer(query.typed(), query.terms().stream().map(Term::say).toList(), left, hits, counts, unread);
        } finally {
            lock.readLock().unlock();
        }
    }

    /** When nothing has all that is asked for: which word to take away, else how many things have each by itself. Silent for long questions. */
    private List<String> inTheWay(List<Term> terms) {
        if (terms.size() < 2 || terms.size() > MOST_WEIGHED) {
            return List.of();
        }
        List<BitSet> each = terms.stream().map(term -> met(term)).toList();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < terms.size(); i++) {
            BitSet others = all();
            for (int k = 0; k < terms.size(); k++) {
                if (k != i) {
                    others.and(each.get(k));
                }
            }
            say("way.without", terms.get(i), others, said);
        }
        if (said.isEmpty()) {
            for (int i = 0; i < terms.size(); i++) {
                say("way.alone", terms.get(i), each.get(i), said);
            }
        }
        return said;
    }

    private BitSet met(Term term) {
        BitSet met = all();
        met.and(of(term, all()));
        return met;
    }

    /** Cautions read are many and alike, and count for nothing here. */
    private void say(String key, Term term, BitSet met, List<String> said) {
        long count = met.stream().filter(slot -> cards.get(slot).kind != ThingKind.CAUTION).count();
        if (count > 0) {
            said.add(Message.of(CardIndex.class, key, term.say(), count).text());
        }
    }

    /** So many hits that no kind is crowded out: each kind gets its share of the room first. */
    private static List<Card> best(List<Card> found, int most) {
        if (found.size() <= most) {
            return found;
        }
        Map<ThingKind, Integer> room = new EnumMap<>(ThingKind.class);
        found.forEach(card -> room.merge(card.kind, 1, Integer::sum));
        int share = Math.max(1, most / room.size());
        int spare = most - room.values().stream().mapToInt(n -> Math.min(n, share)).sum();
        for (Map.Entry<ThingKind, Integer> kind : room.entrySet()) {
            int wanted = Math.max(0, kind.getValue() - share);
            int more = Math.min(wanted, Math.max(0, spare));
            spare -= more;
            kind.setValue(Math.min(kind.getValue(), share) + more);
        }
        List<Card> best = new ArrayList<>();
        for (Card card : found) {
            if (room.merge(card.kind, -1, Integer::sum) >= 0) {
                best.add(card);
            }
        }
        return best;
    }

    private static Hit hit(Card card, Query query) {
        List<Why> why = new ArrayList<>();
        for (Term term : query.terms()) {
            term.why(card).filter(w -> !why.contains(w)).ifPresent(why::add);
        }
        String opens = why.stream().map(Why::place).filter(place -> !place.equals(card.id)).findFirst().orElse(card.opens);
        return new Hit(card.kind, card.id, card.code, card.name, card.line, card.day, card.dayWord, why, opens);
    }

    private BitSet all() {
        BitSet all = new BitSet(cards.size());
        slots.values().forEach(all::set);
        return all;
    }

    private static boolean cheap(Term term) {
        return term instanceof Term.Word || term instanceof Term.Phrase || term instanceof Term.Without without && cheap(without.term());
    }

    /** The slots that meet a term, among some. */
    private BitSet of(Term term, BitSet among) {
        return switch (term) {
            case Term.Word word when word.within().isEmpty() -> beginning(word.word());
            case Term.Word word -> verified(term, beginning(word.word()), among);
            case Term.Phrase phrase -> {
                BitSet all = (BitSet) among.clone();
                for (String word : phrase.line().strip().split(" ")) {
                    all.and(beginning(word));
                }
                yield verified(term, all, among);
            }
            case Term.Without without -> {
                BitSet rest = (BitSet) among.clone();
                rest.andNot(of(without.term(), among));
                yield rest;
            }
            case Term.Amount amount -> {
                BitSet all = new BitSet();
                among.stream().filter(slot -> amount.best(cards.get(slot)) >= 0).forEach(all::set);
                if (!amount.code().isEmpty()) {
                    words.subMap(amount.code(), true, amount.code() + AFTER_ALL, false).forEach((word, those) -> {
                        if (amount.coded(word)) {
                            those.into(all);
                        }
                    });
                }
                yield all;
            }
            default -> verified(term, among, among);
        };
    }

    private BitSet beginning(String word) {
        BitSet all = new BitSet();
        words.subMap(word, true, word + AFTER_ALL, false).values().forEach(those -> those.into(all));
        return all;
    }

    private BitSet verified(Term term, BitSet perhaps, BitSet among) {
        BitSet all = new BitSet();
        perhaps.stream().filter(slot -> among.get(slot) && term.matches(cards.get(slot))).forEach(all::set);
        return all;
    }

    private boolean called(String label) {
        Set<Label> seen = new HashSet<>();
        return cards.stream().filter(java.util.Objects::nonNull).anyMatch(card -> {
            for (Label l : card.textLabels) {
                if (seen.add(l) && Plain.begins(l.words(), label)) {
                    return true;
                }
            }
            return false;
        });
    }

    private Optional<String> nowhere(Term term) {
        if (term instanceof Term.Word within && !within.within().isEmpty() && !called(within.within()) || term instanceof Term.Having having && !called(having.label())) {
            return Optional.of(Message.of(CardIndex.class, "left.scope", term instanceof Term.Word w ? w.within() : ((Term.Having) term).label()).text());
        }
        if (!(term instanceof Term.Word word) || !words.subMap(word.word(), true, word.word() + AFTER_ALL, false).isEmpty()) {
            return Optional.empty();
        }
        List<String> alike = words.subMap(word.word().substring(0, 1), true, word.word().substring(0, 1) + AFTER_ALL, false).keySet().stream().filter(w -> Math.abs(w
                .length() - word.word().length()) <= SLIP).toList();
        List<String> near = Nearest.of(word.word(), alike);
        return Optional.of(near.isEmpty() ? Message.of(CardIndex.class, "word.nowhere", word.typed()).text() : Message.of(CardIndex.class, "word.near", word.typed(), String
                .join(", ", near)).text());
    }
}
