package org.flexwright.balance;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;

import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceLine;
import org.flexwright.core.balance.BalanceListener;

/** Keeps what was heard. */
final class Heard implements BalanceListener {
    private static final long LONG_MS = 20_000;
    final List<BalanceLine> lines = new CopyOnWriteArrayList<>();
    final List<BalanceConnection.State> states = new CopyOnWriteArrayList<>();

    @Override
    public void line(BalanceLine line) {
        lines.add(line);
    }

    @Override
    public void state(BalanceConnection.State state, String sentence) {
        states.add(state);
    }

    List<Double> grams() {
        return lines.stream().flatMap(l -> l.reading().stream()).map(BalanceLine.Reading::grams).toList();
    }

    static void until(String what, BooleanSupplier so) throws InterruptedException {
        long end = System.nanoTime() + LONG_MS * 1_000_000;
        while (!so.getAsBoolean()) {
            if (System.nanoTime() > end) {
                fail("It never came to this: " + what);
            }
            Thread.sleep(5);
        }
    }
}
