package org.flexwright.workbench.bench;

import java.util.List;

import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceLine;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;
import org.flexwright.core.balance.BalanceSource;

/** A balance that says what a test lets it say, on a thread of its own. */
final class SimulatedBalance implements BalanceSource {

    static final String TITLE = "Simulated balance";

    private volatile BalanceListener listener;
    private volatile BalanceSettings settings;

    @Override
    public String id() {
        return "simulated";
    }

    @Override
    public String title() {
        return TITLE;
    }

    @Override
    public List<Place> places() {
        return List.of(new Place("here", TITLE));
    }

    @Override
    public BalanceConnection open(BalanceSettings wanted, BalanceListener heard) {
        settings = wanted;
        listener = heard;
        return new BalanceConnection() {
            @Override
            public State state() {
                return State.OPEN;
            }

            @Override
            public long leftOut() {
                return 0;
            }

            @Override
            public void close() {
                listener = null;
            }
        };
    }

    /** Says a line. */
    void says(String line) {
        chatters(1, line);
    }

    /** Says a line many times without a pause. */
    void chatters(int times, String line) {
        BalanceListener heard = listener;
        BalanceLine parsed = BalanceLine.parse(line, settings.unit(), settings.bare());
        Thread thread = new Thread(() -> {
            for (int i = 0; i < times; i++) {
                heard.line(parsed);
            }
        }, "simulated balance");
        thread.setDaemon(true);
        thread.start();
    }
}
