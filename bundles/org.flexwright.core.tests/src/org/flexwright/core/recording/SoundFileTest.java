package org.flexwright.core.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.flexwright.core.Watch;
import org.flexwright.core.session.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SoundFileTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(SoundWriter.Sample.class)
    void everySampleComesBack(SoundWriter.Sample sample) throws IOException {
        double step = switch (sample) {
            case WHOLE_8 -> 1.0 / 128;
            case WHOLE_16 -> 1.0 / 32768;
            case WHOLE_24, FLOAT_32 -> 1.0 / 8388608;
            default -> 1.0 / 2147483648.0;
        };
        double[] left = noise(5000, 1);
        double[] right = noise(5000, 2);
        SoundFile sound = SoundFile.open(file("two.wav", bytes(sample, 8000, left, right)));
        assertEquals(2, sound.channels());
        assertEquals(0.625, sound.seconds());
        RecordingData data = sound.read(Watch.NONE);
        assertEquals(8000, data.rate());
        for (int i = 0; i < left.length; i++) {
            assertEquals(left[i], data.channels().get(0).values()[i], step);
            assertEquals(right[i], data.channels().get(1).values()[i], step);
        }
    }

    @Test
    void theExtensibleFormAndOtherChunksAreRead() throws IOException {
        double[] one = noise(100, 3);
        byte[] plain = bytes(SoundWriter.Sample.WHOLE_24, 192_000, one);
        ByteBuffer b = ByteBuffer.allocate(plain.length + 24 + 12).order(ByteOrder.LITTLE_ENDIAN);
        b.put(plain, 0, 12).put("LIST".getBytes(StandardCharsets.US_ASCII)).putInt(3).putInt(7); // three bytes and one to make it even
        b.put("fmt ".getBytes(StandardCharsets.US_ASCII)).putInt(40).putShort((short) 0xFFFE).put(plain, 22, 14).putShort((short) 22).putShort((short) 24).putInt(4).putShort((short) 1);
        b.put(new byte[14]).put(plain, 36, plain.length - 36);
        SoundFile sound = SoundFile.open(file("extensible.wav", b.array()));
        assertEquals(24, sound.bits());
        assertEquals(192_000, sound.rate());
        assertEquals(one[99], sound.read(Watch.NONE).channels().get(0).values()[99], 1e-6);
        assertEquals("192 kHz, 24 bit, 1 channel, 0.0005208 s", sound.describe());
    }

    @Test
    void aSoundWhoseLengthWasNeverWrittenGoesToItsEnd() throws IOException {
        byte[] plain = bytes(SoundWriter.Sample.WHOLE_16, 8000, noise(800, 4));
        ByteBuffer.wrap(plain).order(ByteOrder.LITTLE_ENDIAN).putInt(4, 0).putInt(40, 0);
        assertEquals(800, SoundFile.open(file("unsaid.wav", plain)).frames());
        ByteBuffer.wrap(plain).order(ByteOrder.LITTLE_ENDIAN).putInt(4, -1).putInt(40, -1);
        assertEquals(800, SoundFile.open(file("unsaid.wav", plain)).frames());
    }

    @Test
    void whatIsNoSoundIsRefusedInOneSentence() throws IOException {
        byte[] plain = bytes(SoundWriter.Sample.WHOLE_16, 8000, noise(800, 5));
        assertEquals("a.wav is empty: a sound is a WAV file with some seconds in it.", refused(new byte[0]));
        assertTrue(refused(new byte[] {1, 2, 3}).contains("no WAV sound"));
        assertTrue(refused("OggS and so on, some more".getBytes(StandardCharsets.US_ASCII)).contains("is Ogg, not WAV"));
        assertTrue(refused("ID3 and so on, some more".getBytes(StandardCharsets.US_ASCII)).contains("is MP3, not WAV"));
        assertTrue(refused("....ftypM4A and so on".getBytes(StandardCharsets.US_ASCII)).contains("is MP4, not WAV"));
        assertEquals("a.wav is cut off: 0.1 s are announced and 0.05 s are there; copy it again.", refused(Arrays.copyOf(plain, 44 + 800)));
        assertTrue(refused(Arrays.copyOf(plain, 30)).contains("cut off"));
        assertTrue(refused(Arrays.copyOf(plain, 36)).contains("before its sound begins"));
        assertTrue(refused(changed(plain, 40, 0)).contains("length is zero"));
        assertTrue(refused(changed(plain, 20, 2 | 1 << 16)).contains("packed (format 2)"));
        assertTrue(refused(changed(plain, 20, 1)).contains("0 channels"));
        assertTrue(refused(changed(plain, 24, 0)).contains("rate of 0 Hz"));
        assertTrue(refused(changed(plain, 32, 7 | 16 << 16)).contains("contradicts itself"));
        assertTrue(refused(changed(plain, 32, 2 | 48 << 16)).contains("48 bit"));
        assertTrue(assertThrows(RefusedException.class, () -> SoundFile.open(folder.resolve("none.wav"))).getMessage().contains("no file none.wav"));
        byte[] floating = bytes(SoundWriter.Sample.FLOAT_32, 8000, new double[] {0, 0.5, Double.NaN});
        assertTrue(refused(floating).contains("no number at 0.00025 s"));
    }

    /** An hour of 48 kHz, 24 bit: held in less than 140 MiB, and the impact in it keeps its time to half a millisecond. */
    @Test
    void anHourIsFoldedWithoutLosingAnImpact() throws IOException {
        Path hour = folder.resolve("hour.wav");
        long frames = 3600L * 48_000;
        long hit = 100_000_003L;
        try (RandomAccessFile out = new RandomAccessFile(hour.toFile(), "rw")) {
            byte[] head = Arrays.copyOf(bytes(SoundWriter.Sample.WHOLE_24, 48_000, new double[1]), 44);
            out.write(changed(changed(head, 4, (int) (36 + frames * 3)), 40, (int) (frames * 3)));
            out.setLength(44 + frames * 3);
            out.seek(44 + hit * 3);
            out.write(new byte[] {0, 0, (byte) 0xC0});
        }
        SoundFile sound = SoundFile.open(hour);
        RecordingData data = sound.read(Watch.NONE);
        assertTrue(data.rows() <= SoundFile.MOST_KEPT);
        assertTrue(data.rate() >= SoundFile.LEAST_RATE);
        double[] values = data.channels().get(0).values();
        int at = 0;
        while (values[at] == 0) {
            at++;
        }
        assertEquals(-0.5, values[at]);
        assertEquals(hit / 48_000.0, at / data.rate(), 1 / data.rate());
        assertThrows(CancellationException.class, () -> sound.read(new Watch() {
            @Override
            public void done(long part, long whole) {
                // nobody looks
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        }));
        Files.delete(hour);
    }

    @Test
    void aSoundTooLongForItsChannelsIsRefused() {
        SoundFile day = new SoundFile(folder.resolve("day.wav"), 2, 48_000, 16, false, 24L * 3600 * 48_000, 44);
        assertEquals("day.wav lasts 1440 min: cut out the drops, 69 min at most with so many channels.", assertThrows(RefusedException.class, () -> day.read(Watch.NONE)).getMessage());
    }

    private String refused(byte[] content) throws IOException {
        Path file = file("a.wav", content);
        return assertThrows(RefusedException.class, () -> SoundFile.open(file).read(Watch.NONE)).getMessage();
    }

    private static byte[] changed(byte[] content, int at, int value) {
        byte[] copy = content.clone();
        ByteBuffer.wrap(copy).order(ByteOrder.LITTLE_ENDIAN).putInt(at, value);
        return copy;
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content);
    }

    private static byte[] bytes(SoundWriter.Sample sample, int rate, double[]... channels) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new BufferedOutputStream(bytes)) {
            SoundWriter.write(out, sample, rate, channels);
        }
        return bytes.toByteArray();
    }

    private static double[] noise(int n, long seed) {
        Random random = new Random(seed);
        return random.doubles(n, -0.99, 0.99).toArray();
    }
}
