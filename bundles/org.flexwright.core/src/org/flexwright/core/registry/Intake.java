package org.flexwright.core.registry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

import org.flexwright.core.Message;

/** Takes in what plugins offer: one entry an id, the first one wins, whatever throws is set aside and named. */
final class Intake {
    private final List<Failure> failures = new ArrayList<>();

    /**
     * Entries by id, in order of id.
     *
     * @param probe looks at what a screen or a list will ask for, and throws when it is not there
     */
    <T> Map<String, T> byId(Collection<? extends T> offered, Function<T, String> id, Consumer<T> probe) {
        Map<String, T> taken = new TreeMap<>();
        for (T one : offered) {
            guarded(one, () -> {
                String key = Objects.requireNonNull(id.apply(one), "id");
                probe.accept(one);
                T first = taken.putIfAbsent(key, one);
                if (first != null) {
                    fail(key, one, Message.of(Intake.class, "duplicate", key, Owner.of(first.getClass()).plugin()));
                }
            });
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(taken));
    }

    /** Runs the work; a failure in it is one of {@code one}'s plugin. */
    void guarded(Object one, Runnable work) {
        try {
            work.run();
        } catch (RuntimeException | LinkageError e) {
            fail(one.getClass().getName(), one, Message.of(Intake.class, "broken", e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage()));
        }
    }

    /** The second owner of an id loses. */
    void duplicate(String id, Object second) {
        fail(id, second, Message.of(Intake.class, "duplicateProperty", id));
    }

    private void fail(String what, Object one, Message why) {
        failures.add(new Failure(what, why.text(), Owner.of(one.getClass()).plugin()));
    }

    List<Failure> failures() {
        return failures;
    }
}
