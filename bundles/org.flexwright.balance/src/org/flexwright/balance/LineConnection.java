package org.flexwright.balance;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceLine;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;

/**
 * Listens to a device on two threads of its own: one reads and cuts into lines, one tells the listener. Between them is a short queue that
 * drops its oldest line, so that a device that never stops talking blocks nothing; a device that says nothing is only waited for; one that
 * is gone is tried again. Closing never waits longer than a moment for either.
 */
final class LineConnection implements BalanceConnection {
    /** Lines kept for a slow listener; own choice: more than a person can see. */
    private static final int QUEUE = 32;
    private static final long FIRST_PAUSE_MS = 200;
    private static final long LONGEST_PAUSE_MS = 5000;
    private static final long CLOSING_MS = 1500;

    private final LineInput.Opener opener;
    private final BalanceSettings settings;
    private final BalanceListener listener;
    private final ArrayDeque<Runnable> queue = new ArrayDeque<>();
    private final CountDownLatch ended = new CountDownLatch(2);
    private final Thread reader;
    private final Thread teller;
    private volatile State state = State.CONNECTING;
    private volatile boolean closed;
    private volatile LineInput input;
    private long leftOut;

    LineConnection(LineInput.Opener opener, BalanceSettings settings, BalanceListener listener) {
        this.opener = Objects.requireNonNull(opener, "opener");
        this.settings = Objects.requireNonNull(settings, "settings");
        this.listener = Objects.requireNonNull(listener, "listener");
        this.reader = Thread.ofPlatform().daemon().name("balance reader " + settings.place()).unstarted(this::read);
        this.teller = Thread.ofPlatform().daemon().name("balance " + settings.place()).unstarted(this::tell);
    }

    LineConnection start() {
        teller.start();
        reader.start();
        return this;
    }

    @Override
    public State state() {
        // the reader may still write down what it saw last
        return closed ? State.CLOSED : state;
    }

    @Override
    public long leftOut() {
        synchronized (queue) {
            return leftOut;
        }
    }

    private void read() {
        long pause = FIRST_PAUSE_MS;
        try {
            while (!closed) {
                try (LineInput opened = opener.open()) {
                    input = opened;
                    say(State.OPEN, Say.OPEN.with(settings.place()).text());
                    pause = FIRST_PAUSE_MS;
                    lines(opened);
                    say(State.LOST, Say.ENDED.with(settings.place()).text());
                } catch (IOException | RuntimeException | LinkageError e) {
                    say(State.LOST, Say.LOST.with(settings.place(), e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage()).text());
                } finally {
                    input = null;
                }
                Thread.sleep(pause);
                pause = Math.min(LONGEST_PAUSE_MS, 2 * pause);
            }
        } catch (InterruptedException e) {
            // closed: there is nothing left to do on this thread
        } finally {
            ended.countDown();
        }
    }

    private void lines(LineInput from) throws IOException {
        byte[] buffer = new byte[512];
        StringBuilder line = new StringBuilder();
        boolean tooLong = false;
        int read;
        while (!closed && (read = from.read(buffer)) >= 0) {
            for (char c : new String(buffer, 0, read, StandardCharsets.ISO_8859_1).toCharArray()) {
                if (c == '\n' || c == '\r') {
                    if (!line.isEmpty()) {
                        String text = line.toString();
                        offer(() -> listener.line(BalanceLine.parse(text, settings.unit(), settings.bare())));
                    }
                    line.setLength(0);
                    tooLong = false;
                } else if (!tooLong) {
                    line.append(c);
                    // one sign more than is looked at tells that it was too long; the rest of it is not kept
                    tooLong = line.length() > BalanceLine.LONGEST;
                }
            }
        }
    }

    private void say(State now, String sentence) {
        if (!closed && (state != now || now == State.OPEN)) {
            state = now;
            offer(() -> listener.state(now, sentence));
        }
    }

    private void offer(Runnable news) {
        synchronized (queue) {
            if (queue.size() >= QUEUE) {
                queue.removeFirst();
                leftOut++;
            }
            queue.addLast(news);
            queue.notifyAll();
        }
    }

    private void tell() {
        try {
            while (!closed) {
                Runnable news;
                synchronized (queue) {
                    while (queue.isEmpty()) {
                        queue.wait();
                    }
                    news = queue.removeFirst();
                }
                try {
                    if (!closed) {
                        news.run();
                    }
                } catch (RuntimeException | LinkageError e) {
                    // a listener that fails must not silence the balance for good
                }
            }
        } catch (InterruptedException e) {
            // closed
        } finally {
            ended.countDown();
        }
    }

    @Override
    public void close() {
        closed = true;
        LineInput open = input;
        if (open != null) {
            // closing a device may hang: not on the caller's thread
            Thread.ofPlatform().daemon().name("balance closing " + settings.place()).start(() -> {
                try {
                    open.close();
                } catch (IOException | RuntimeException e) {
                    // it is being left behind either way
                }
            });
        }
        reader.interrupt();
        if (Thread.currentThread() != teller) {
            teller.interrupt();
            try {
                ended.await(CLOSING_MS, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
