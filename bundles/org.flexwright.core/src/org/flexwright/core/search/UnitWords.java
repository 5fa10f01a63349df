package org.flexwright.core.search;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/** Which units a typed unit can be, over all kinds of quantity; what was asked once is kept. */
final class UnitWords {
    /** Longest text that can be a unit; longer ones are not even asked for. */
    private static final int LONGEST = 16;
    /** So many different words are kept, then it starts anew: notes hold any words behind numbers. */
    private static final int KEPT = 4000;

    private final Map<String, List<Unit>> known = new ConcurrentHashMap<>();

    /** The units of that spelling, one a kind; none when it is no unit. Where the spelling fits exactly, other cases do not count; a small a is Shore A all the same. */
    List<Unit> of(String text) {
        if (text.isEmpty() || text.length() > LONGEST) {
            return List.of();
        }
        if (known.size() > KEPT) {
            known.clear();
        }
        return known.computeIfAbsent(text, UnitWords::find);
    }

    private static List<Unit> find(String text) {
        List<Unit> all = Stream.of(QuantityKind.values()).filter(k -> k != QuantityKind.MONEY).flatMap(k -> Units.find(k, text).stream()).toList();
        List<Unit> exact = all.stream().filter(u -> u.symbol().equals(text) || u.display().equals(text) || u.aliases().contains(text)).toList();
        if (text.equals("a")) {
            return all.stream().filter(u -> u.kind() == QuantityKind.SHORE_A).toList();
        }
        return exact.isEmpty() ? all : exact;
    }
}
