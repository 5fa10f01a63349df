package org.flexwright.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

import org.flexwright.core.balance.BalanceConnection.State;
import org.flexwright.core.balance.BalanceLine;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A device that is simulated: it talks in pieces, falls silent, never stops, hangs, goes and comes back. */
@Timeout(60)
class LineConnectionTest {
    private static final BalanceSettings SETTINGS = BalanceSettings.of("test", "simulated");
    private final Heard heard = new Heard();

    /** Gives what is put into it; an empty piece is its end. */
    private static final class Device implements LineInput {
        final BlockingQueue<String> says = new LinkedBlockingQueue<>();

        @Override
        public int read(byte[] buffer) throws IOException {
            try {
                String piece = says.poll(20, TimeUnit.MILLISECONDS);
                if (piece == null) {
                    return 0;
                }
                byte[] bytes = piece.getBytes(StandardCharsets.ISO_8859_1);
                System.arraycopy(bytes, 0, buffer, 0, bytes.length);
                return bytes.length == 0 ? -1 : bytes.length;
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
        }

        @Override
        public void close() {
        }
    }

    @Test
    void linesInPiecesAreOneLine() throws InterruptedException {
        Device device = new Device();
        try (var connection = new LineConnection(() -> device, SETTINGS, heard).start()) {
            device.says.addAll(List.of("ST,  2", "4.8", "8 g\r", "\n21.57 g\n1.89 ", "g\n"));
            Heard.until("three readings", () -> heard.lines.size() == 3);
            assertEquals(List.of(24.88, 21.57, 1.89), heard.grams());
            assertEquals(State.OPEN, connection.state());
        }
    }

    @Test
    void aTalkativeDeviceBlocksNothingAndTheLastLineIsHeard() throws InterruptedException {
        CountDownLatch held = new CountDownLatch(1);
        AtomicInteger lines = new AtomicInteger();
        String[] last = new String[1];
        int many = 20_000;
        int[] said = new int[1];
        LineInput torrent = new LineInput() {
            @Override
            public int read(byte[] buffer) {
                if (said[0] >= many) {
                    return pause();
                }
                byte[] line = (++said[0] + " g\n").getBytes(StandardCharsets.ISO_8859_1);
                System.arraycopy(line, 0, buffer, 0, line.length);
                return line.length;
            }

            private int pause() {
                Thread.yield();
                return 0;
            }

            @Override
            public void close() {
            }
        };
        BalanceListener slow = new BalanceListener() {
            @Override
            public void line(BalanceLine line) {
                try {
                    held.await();
                } catch (InterruptedException e) {
                    return;
                }
                lines.incrementAndGet();
                last[0] = String.valueOf(line.reading().orElseThrow().grams());
            }

            @Override
            public void state(State state, String sentence) {
            }
        };
        try (var connection = new LineConnection(() -> torrent, SETTINGS, slow).start()) {
            Heard.until("all was said", () -> said[0] >= many && connection.leftOut() > many - 100);
            held.countDown();
            Heard.until("the last line", () -> (many + ".0").equals(last[0]));
            assertTrue(lines.get() < 100, "kept in between: " + lines.get());
        }
    }

    @Test
    void aLineWithoutEndIsNotKept() throws InterruptedException {
        Device device = new Device();
        try (var connection = new LineConnection(() -> device, SETTINGS, heard).start()) {
            for (int i = 0; i < 500; i++) {
                device.says.add("1".repeat(400));
            }
            device.says.addAll(List.of("\n", "5 g\n"));
            Heard.until("two lines", () -> heard.lines.size() == 2);
            assertEquals(BalanceLine.Why.TOO_LONG, ((BalanceLine.Refused) heard.lines.get(0)).why());
            assertEquals(List.of(5.0), heard.grams());
        }
    }

    @Test
    void aDeviceThatHangsOpeningReadingAndClosingIsLeftBehind() throws InterruptedException {
        CountDownLatch never = new CountDownLatch(1);
        LineInput hanging = new LineInput() {
            @Override
            public int read(byte[] buffer) {
                return forEver();
            }

            @Override
            public void close() {
                forEver();
            }

            private int forEver() {
                while (true) {
                    try {
                        never.await();
                        return -1;
                    } catch (InterruptedException e) {
                        // a device that does not even listen to that
                    }
                }
            }
        };
        for (LineInput.Opener opener : List.<LineInput.Opener>of(() -> hanging, () -> {
            hanging.read(null);
            return hanging;
        })) {
            long from = System.nanoTime();
            var connection = new LineConnection(opener, SETTINGS, heard).start();
            Thread.sleep(50);
            connection.close();
            connection.close();
            long took = (System.nanoTime() - from) / 1_000_000;
            assertTrue(took < 4500, "closing twice took " + took + " ms");
            assertEquals(State.CLOSED, connection.state());
        }
        never.countDown();
    }

    @Test
    void whatIsGoneIsTriedAgain() throws InterruptedException {
        AtomicInteger opened = new AtomicInteger();
        Device device = new Device();
        try (var connection = new LineConnection(() -> {
            if (opened.incrementAndGet() == 2) {
                throw new IOException("not there");
            }
            return device;
        }, SETTINGS, heard).start()) {
            device.says.addAll(List.of("1 g\n", ""));
            Heard.until("opened three times", () -> opened.get() == 3);
            device.says.add("2 g\n");
            Heard.until("two readings", () -> heard.grams().size() == 2);
            assertEquals(List.of(State.OPEN, State.LOST, State.OPEN), heard.states);
        }
    }

    @Test
    void nothingIsHeardAfterClosingAndAListenerMayFailOrClose() throws InterruptedException {
        Device device = new Device();
        LineConnection[] self = new LineConnection[1];
        AtomicInteger lines = new AtomicInteger();
        CountDownLatch started = new CountDownLatch(1);
        self[0] = new LineConnection(() -> device, SETTINGS, new BalanceListener() {
            @Override
            public void line(BalanceLine line) {
                if (lines.incrementAndGet() == 1) {
                    throw new IllegalStateException("a listener that fails");
                }
                try {
                    started.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                self[0].close();
            }

            @Override
            public void state(State state, String sentence) {
            }
        });
        self[0].start();
        started.countDown();
        device.says.addAll(List.of("1 g\n", "2 g\n", "3 g\n", "4 g\n"));
        Heard.until("closed by its own listener", () -> self[0].state() == State.CLOSED);
        Thread.sleep(60);
        assertEquals(2, lines.get());
    }
}
