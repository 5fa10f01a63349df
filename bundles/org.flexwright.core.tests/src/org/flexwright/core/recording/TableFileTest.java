package org.flexwright.core.recording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.flexwright.core.Watch;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ChannelRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableFileTest {
    private static final RecordingKind KIND = new PressLike();
    private static final double EXACTLY = 0;
    @TempDir
    Path temp;

    private Path file(String text, Charset charset) throws IOException {
        return Files.write(temp.resolve("press.csv"), text.getBytes(charset));
    }

    private Path file(String text) throws IOException {
        return file(text, StandardCharsets.UTF_8);
    }

    private static RecordingData read(Path file, TableGuess guess) {
        assertEquals(List.of(), guess.asked().stream().map(m -> m.text()).toList());
        return read(file, guess.format(), guess.columns());
    }

    private static RecordingData read(Path file, TableFormat format, List<ColumnUse> columns) {
        try (var in = Files.newInputStream(file)) {
            return TableFile.read(in, file.getFileName().toString(), Files.size(file), format, columns, KIND.channels(), Watch.NONE);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double[] values(RecordingData data, ChannelRole role) {
        return data.find(role).orElseThrow().values();
    }

    private void expect(String text, double[] travel, double[] force) throws IOException {
        Path f = file(text);
        RecordingData data = read(f, TableGuess.of(f, KIND));
        assertArrayEquals(travel, values(data, ChannelRole.TRAVEL), 1e-15);
        assertArrayEquals(force, values(data, ChannelRole.FORCE), 1e-15);
    }

    @Test
    void filesOfManySortsSayTheSame() throws IOException {
        double[] travel = { 0, 0.5, 1 };
        double[] force = { 0.25, 1.5, -2 };
        expect("Travel [mm],Force [N]\n0,0.25\n0.5,1.5\n1,-2\n", travel, force);
        expect("Weg in mm;Kraft in N\r\n0,0;0,25\r\n0,5;1,5\r\n1;-2\r\n", travel, force);
        expect("sep=;\nForce (mN);Travel (cm)\n250;0\n1500;0.05\n-2000;0.1\n", travel, force);
        expect("Load\tExtension\nN\tmm\n0.25\t0\n1.5\t0.5\n-2\t1\n", travel, force);
        expect("Sample,7\nOperator,\"A, B\"\n\n\"Displacement / mm\",\"Load / N\",remark\n\"0\",\"0.25\",\n\"0.5\",\"1.5\",\n\"1\",\"-2\",\n", travel, force);
        expect("# a note\n#  travel_mm   force_N\n  0.0   0.25\n\n  5e-1  15E-1\n# pause\n  1.   -2.0\n", travel, force);
        expect("Weg [mm]|Kraft [N]\r0|0,25\r0,5|1,5\r1|-2\rEnde der Messung\r", travel, force);
        expect("Test,Bend 3\nDate,2026-05-01\n\nClock,State,\"Position (mm)\",\"Force (N)\"\n2026-05-01T10:00:00,ok,0,0.25\n2026-05-01T10:00:01,ok,0.5,1.5\n2026-05-01T10:00:02,held,1,-2\n\nPeak,1.5\n", travel, force);
        expect("Time;Load (N);Stroke (mm)\n10:00:00,5;0,25;0\n10:00:01,0;1,5;0,5\n10:00:01,5;-2;1\n", travel, force);
        expect("\"Weg (mm)\",\"Kraft (N)\"\n\"0,0\",\"0,25\"\n\"0,5\",\"1,5\"\n\"1,0\",\"-2,0\"\n", travel, force);
        expect("Zeit [s];Kraft [N];Weg [mm]\n0;0,25;0\n0,1;1,5;0,5\n0,1;-2;1", travel, force);
    }

    @ParameterizedTest
    @ValueSource(strings = { "UTF-8", "UTF-16LE", "UTF-16BE", "ISO-8859-1" })
    void whateverItIsWrittenIn(String charset) throws IOException {
        String text = "Prüfer;Bäcker\nWeg [µm];Kraft [mN]\n0;250\n500;1500\n";
        String unmarked = charset.startsWith("UTF") ? "\uFEFF" + text : text;
        for (String each : List.of(text, unmarked)) {
            Path f = file(each, Charset.forName(charset));
            RecordingData data = read(f, TableGuess.of(f, KIND));
            assertArrayEquals(new double[] { 0, 0.5 }, values(data, ChannelRole.TRAVEL), 1e-15);
            assertArrayEquals(new double[] { 0.25, 1.5 }, values(data, ChannelRole.FORCE), 1e-15);
        }
    }

    /** Every way of writing a number gives the very double that Java reads from it. */
    @Test
    void figuresAreReadExactly() {
        Random random = new Random(71);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            String text = i % 4 == 0 && Double.isFinite(value) ? Double.toString(value) : i % 4 == 1 ? String.format(Locale.ROOT, "%.6f", random.nextGaussian() * 1000)
                    : i % 4 == 2 ? String.format(Locale.ROOT, "%+.3e", random.nextGaussian()) : Integer.toString(random.nextInt());
            boolean comma = random.nextBoolean();
            byte[] bytes = (" " + (comma ? text.replace('.', ',') : text) + "\t").getBytes(StandardCharsets.UTF_8);
            assertEquals(Double.parseDouble(text), FigureBytes.read(bytes, 0, bytes.length, comma, false), EXACTLY, text);
        }
        for (String none : List.of("", " ", "-", ".", "e5", "1e", "NaN", "inf", "Infinity", "1e999", "1.2.3", "1,5", "12a", "0x10", "--1", "1:20")) {
            byte[] bytes = none.getBytes(StandardCharsets.UTF_8);
            assertTrue(Double.isNaN(FigureBytes.read(bytes, 0, bytes.length, false, false)), none);
        }
        byte[] clock = "1:02:03.5".getBytes(StandardCharsets.UTF_8);
        assertEquals(3723.5, FigureBytes.read(clock, 0, clock.length, false, true), EXACTLY);
    }

    @Test
    void whatTheFileDoesNotSayIsAsked() throws IOException {
        Path f = file("a;b\n1;2\n3;4\n");
        assertEquals(List.of("column.missing"), TableGuess.of(f, KIND).asked().stream().map(m -> m.key()).toList());
        f = file("Weg;Kraft\n1;2\n3;4\n");
        TableGuess guess = TableGuess.of(f, KIND);
        assertEquals(List.of("unit.unsaid", "unit.unsaid"), guess.asked().stream().map(m -> m.key()).toList());
        assertTrue(guess.asked().get(1).text().contains("Column 2 (Kraft) holds the force"), guess.asked().get(1).text());
        Path same = f;
        assertEquals("unit.unsaid", assertThrows(RefusedException.class, () -> read(same, guess.format(), guess.columns())).sentence().key());
        List<ColumnUse> said = List.of(guess.columns().get(0).withUnit("mm"), guess.columns().get(1).withUnit("kg"));
        assertEquals("unit.other", assertThrows(RefusedException.class, () -> read(same, guess.format(), said)).sentence().key());
        List<ColumnUse> turned = List.of(guess.columns().get(0).withUnit("mm"), guess.columns().get(1).withUnit("mN").withReversed(true));
        assertArrayEquals(new double[] { -0.002, -0.004 }, values(read(f, guess.format(), turned), ChannelRole.FORCE), 1e-18);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', value = {
            "cell.none ! 0,1|1,2|2,NaN|3,4 ! line 4 ! NaN",
            "cell.none ! 0,1|1,|2,3|3,4 ! line 3 ! column 2",
            "row.short ! 0,1|1|2,3 ! line 3 ! column 2",
            "row.ragged ! 0,1|1,2|2,3,4|3,4 ! line 4 ! 2",
            "line.noFigures ! 0,1|1,2|paused,by hand|2,3 ! line 4 ! paused,by hand" })
    void aBadRowIsNamedByItsLine(String key, String rows, String place, String what) throws IOException {
        Path f = file("Travel [mm],Force [N]\n" + rows.replace('|', '\n') + "\n");
        List<ColumnUse> columns = List.of(new ColumnUse(ChannelRole.TRAVEL, 1, "Travel [mm]", "mm", false), new ColumnUse(ChannelRole.FORCE, 2, "Force [N]", "N", false));
        RefusedException e = assertThrows(RefusedException.class, () -> read(f, new TableFormat(",", false, 1), columns));
        assertEquals(key, e.sentence().key());
        assertTrue(e.getMessage().contains(place) && e.getMessage().contains(what), e.getMessage());
    }

    @Test
    void timeGoesOn() throws IOException {
        Path f = file("Time [s],Travel [mm],Force [N]\n0,0,1\n0.5,1,2\n0.4,2,3\n");
        RefusedException e = assertThrows(RefusedException.class, () -> read(f, TableGuess.of(f, KIND)));
        assertEquals("time.back", e.sentence().key());
        assertTrue(e.getMessage().contains("line 4") && e.getMessage().contains("0.5") && e.getMessage().contains("0.4"), e.getMessage());
    }

    @Test
    void whatIsNoTableIsRefusedInOneSentence() throws IOException {
        byte[] noise = new byte[5000];
        new Random(3).nextBytes(noise);
        Path binary = Files.write(temp.resolve("noise.csv"), noise);
        Path zeros = Files.write(temp.resolve("zeros.csv"), new byte[9000]);
        Path big = temp.resolve("big.csv");
        try (RandomAccessFile f = new RandomAccessFile(big.toFile(), "rw")) {
            f.setLength(1L << 30);
        }
        assertEquals("binary", refusal(binary));
        assertEquals("binary", refusal(zeros));
        assertEquals("file.big", refusal(big));
        assertEquals("file.empty", refusal(file("")));
        assertEquals("columns.one", refusal(file("Force\n1\n2\n3\n")));
        assertEquals("columns.none", refusal(file("Dear all,\nplease find the curve\nenclosed.\n")));
        assertEquals("file.unreadable", refusal(temp.resolve("nowhere.csv")));
        Path few = file("Travel [mm],Force [N]\n0,1\n1,2\n");
        assertEquals("rows.none", assertThrows(RefusedException.class, () -> TableGuess.of(few, KIND, null, null, 500)).sentence().key());
        assertEquals("separator.none", assertThrows(RefusedException.class, () -> TableGuess.of(binary, KIND, "5", null, null)).sentence().key());
    }

    private static String refusal(Path file) {
        return assertThrows(RefusedException.class, () -> TableGuess.of(file, KIND)).sentence().key();
    }

    @Test
    void moreRowsThanFitAreRefusedAndACancelledReadingEnds() throws IOException {
        Path f = temp.resolve("long.csv");
        byte[] block = "1,2\n".repeat(50_000).getBytes(StandardCharsets.UTF_8);
        try (OutputStream out = Files.newOutputStream(f)) {
            for (int i = 0; i < 20; i++) {
                out.write(block);
            }
        }
        List<ColumnUse> columns = List.of(new ColumnUse(ChannelRole.TRAVEL, 1, "", "mm", false), new ColumnUse(ChannelRole.FORCE, 2, "", "N", false));
        TableFormat format = new TableFormat(",", false, 0);
        RecordingData data = read(f, format, columns);
        assertEquals(1_000_000, data.rows());
        long[] last = new long[1];
        Watch cancels = new Watch() {
            @Override
            public void done(long part, long whole) {
                last[0] = part;
                assertTrue(part <= whole);
            }

            @Override
            public boolean cancelled() {
                return last[0] > 1_000_000;
            }
        };
        try (var in = Files.newInputStream(f)) {
            assertThrows(CancellationException.class, () -> TableFile.read(in, "long.csv", Files.size(f), format, columns, KIND.channels(), cancels));
        }
        assertTrue(last[0] < 2_000_000, "it ended at " + last[0]);
    }

    /** A row's bytes may lie on either side of any edge of the buffer. */
    @Test
    void rowsOfEveryLengthComeOutWhole() throws IOException {
        Random random = new Random(11);
        StringBuilder text = new StringBuilder();
        double[] travel = new double[30_000];
        double[] force = new double[travel.length];
        for (int i = 0; i < travel.length; i++) {
            travel[i] = Math.round(random.nextDouble() * 1e6) / 1e3;
            force[i] = random.nextGaussian();
            text.append(travel[i]).append(" ".repeat(1 + random.nextInt(5))).append(force[i]).append(random.nextBoolean() ? "\r\n" : "\n");
        }
        Path f = file(text.toString());
        List<ColumnUse> columns = List.of(new ColumnUse(ChannelRole.TRAVEL, 1, "", "mm", false), new ColumnUse(ChannelRole.FORCE, 2, "", "N", false));
        RecordingData data = read(f, new TableFormat(TableFormat.BLANKS, false, 0), columns);
        assertArrayEquals(travel, values(data, ChannelRole.TRAVEL), EXACTLY);
        assertArrayEquals(force, values(data, ChannelRole.FORCE), EXACTLY);
    }
}
