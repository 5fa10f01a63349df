package org.flexwright.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

import org.flexwright.core.balance.BalanceConnection.State;
import org.flexwright.core.balance.BalanceSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A file that grows, is emptied and replaced; a pipe whose writer comes and goes; a serial port that is a pair of pseudo-terminals. */
@Timeout(60)
class FileBalancesTest {
    @TempDir
    Path temp;
    private final Heard heard = new Heard();

    private BalanceSettings at(Path place) {
        return BalanceSettings.of(FileBalances.ID, place.toString());
    }

    private static void write(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    @Test
    void onlyWhatIsWrittenFromNowOnCounts() throws IOException, InterruptedException {
        Path file = temp.resolve("balance.txt");
        write(file, "99 g\n");
        try (var connection = new FileBalances().open(at(file), heard)) {
            Heard.until("open", () -> connection.state() == State.OPEN);
            write(file, "1 g\n2,5 g\nnonsense\n");
            Heard.until("three lines", () -> heard.lines.size() == 3);
            assertEquals(List.of(1.0, 2.5), heard.grams());
            Files.writeString(file, "3 g\n");
            Heard.until("emptied and written anew", () -> heard.grams().size() == 3);
            Files.delete(file);
            Heard.until("gone", () -> connection.state() == State.LOST);
            write(file, "4 g\n");
            Heard.until("there again", () -> heard.grams().size() == 4);
            assertEquals(List.of(1.0, 2.5, 3.0, 4.0), heard.grams());
        }
    }

    @Test
    void whatIsNotThereIsWaitedForAndClosingWorks() throws InterruptedException {
        try (var connection = new FileBalances().open(at(temp.resolve("nothing.txt")), heard)) {
            Heard.until("lost", () -> heard.states.contains(State.LOST));
        }
        try (var connection = new SerialBalances().open(BalanceSettings.of(SerialBalances.ID, "no-such-port"), heard)) {
            Heard.until("lost", () -> heard.states.size() == 2);
        }
        assertEquals(List.of(State.LOST, State.LOST), heard.states);
    }

    private static boolean has(String program, String... arguments) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(program, arguments.length == 0 ? "--version" : arguments[0]).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start()
                    .waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aPipeOutlivesItsWriter() throws IOException, InterruptedException {
        assumeTrue(has("mkfifo"), "no pipes on this system");
        Path pipe = temp.resolve("pipe");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        try (var connection = new FileBalances().open(at(pipe), heard)) {
            Heard.until("open, though nobody writes", () -> connection.state() == State.OPEN);
            write(pipe, "1 g\n");
            Heard.until("the first writer", () -> heard.grams().size() == 1);
            write(pipe, "2 g\n");
            Heard.until("the second writer", () -> heard.grams().size() == 2);
        }
    }

    @Test
    void aSerialPortIsReadAndItsEndNoticed() throws IOException, InterruptedException {
        assumeTrue(has("socat", "-V"), "no pair of pseudo-terminals to be had on this system");
        Path device = temp.resolve("device");
        Path port = temp.resolve("port");
        Process pair = new ProcessBuilder("socat", "PTY,raw,echo=0,link=" + device, "PTY,raw,echo=0,link=" + port).start();
        try {
            Heard.until("the pair stands", () -> Files.exists(device) && Files.exists(port));
            String name = port.toRealPath().toString();
            try (var connection = new SerialBalances().open(BalanceSettings.of(SerialBalances.ID, name), heard)) {
                Heard.until("open", () -> connection.state() == State.OPEN);
                write(device, "ST,+ 24.88 g\r\n");
                Heard.until("a reading", () -> heard.grams().equals(List.of(24.88)));
                pair.destroyForcibly().waitFor();
                Heard.until("the port is gone", () -> connection.state() == State.LOST);
                Heard.until("its end is told", () -> heard.states.contains(State.LOST));
            }
        } finally {
            pair.destroyForcibly();
        }
    }
}
