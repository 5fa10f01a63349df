package org.flexwright.core.recording;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ChannelRole;

/**
 * A sound in a RIFF WAVE file: whole numbers of 8, 16, 24 or 32 bit or floating numbers of 32 or 64 bit, one channel or several, at any
 * rate from 2 kHz on. The format is that of <i>Multimedia Programming Interface and Data Specifications 1.0</i> (1991) and its extensible
 * form; files above 4 GiB (RF64) are read too.
 *
 * @param file      where it lies
 * @param channels  how many
 * @param rate      samples a second of each channel
 * @param bits      of one sample
 * @param floating  floating numbers, not whole ones
 * @param frames    samples of each channel
 * @param dataStart byte at which the sound begins
 */
public record SoundFile(Path file, int channels, double rate, int bits, boolean floating, long frames, long dataStart) {
    /** So many numbers are held at most; a longer sound is folded. */
    public static final int MOST_KEPT = 1 << 24;
    /** Folding stops here: a time is known to half a millisecond. */
    public static final double LEAST_RATE = 2000;
    /** Of a rate that a recorder writes. */
    private static final double MOST_RATE = 1_000_000;
    private static final int MOST_CHANNELS = 64;
    private static final int BLOCK = 1 << 18;
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int FMT_LEAST = 16;
    private static final int FMT_EXTENSIBLE = 40;
    private static final long UNSAID = 0xFFFFFFFFL;
    private static final Map<String, String> OTHERS = Map.of("ID3", "MP3", "OggS", "Ogg", "fLaC", "FLAC", "FORM", "AIFF", ".snd", "AU", "RIFX", "RIFX");

    public SoundFile {
        Objects.requireNonNull(file, "file");
    }

    /**
     * Reads the head of a file.
     *
     * @throws RefusedException when it is no such sound, is cut off or holds nothing; the sentence says which
     */
    public static SoundFile open(Path file) {
        String name = String.valueOf(file.getFileName());
        try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ)) {
            return head(file, name, in);
        } catch (IOException unreadable) {
            throw refused(Files.exists(file) ? "sound.unreadable" : "sound.missing", name);
        }
    }

    private static SoundFile head(Path file, String name, FileChannel in) throws IOException {
        long size = in.size();
        if (size == 0) {
            throw refused("sound.empty", name);
        }
        ByteBuffer start = bytes(in, 0, 12);
        String form = word(start, 0);
        if (start.limit() < 12 || !(form.equals("RIFF") || form.equals("RF64") || form.equals("BW64")) || !word(start, 8).equals("WAVE")) {
            throw refusedForm(name, start);
        }
        long riffSize = Integer.toUnsignedLong(start.getInt(4));
        ByteBuffer fmt = null;
        long at = 12;
        while (at + 8 <= size) {
            ByteBuffer chunk = bytes(in, at, 8);
            long length = Integer.toUnsignedLong(chunk.getInt(4));
            String id = word(chunk, 0);
            at += 8;
            if (id.equals("fmt ")) {
                fmt = bytes(in, at, (int) Math.min(length, FMT_EXTENSIBLE));
            } else if (id.equals("data")) {
                if (fmt == null || fmt.limit() < FMT_LEAST) {
                    throw refused("sound.noFormat", name);
                }
                // a recorder that was cut off, or that wrote into a pipe, leaves the length unsaid: the sound goes to the end
                boolean unsaid = length == UNSAID || length == 0 && (riffSize == 0 || riffSize == UNSAID);
                return sound(file, name, fmt, at, unsaid ? size - at : length, size - at);
            }
            at += length + (length & 1);
        }
        throw refused(fmt == null ? "sound.noFormat" : "sound.noData", name);
    }

    private static SoundFile sound(Path file, String name, ByteBuffer fmt, long start, long said, long there) {
        int tag = Short.toUnsignedInt(fmt.getShort(0));
        if (tag == EXTENSIBLE && fmt.limit() >= FMT_EXTENSIBLE) {
            tag = Short.toUnsignedInt(fmt.getShort(24));
        }
        int channels = Short.toUnsignedInt(fmt.getShort(2));
        double rate = Integer.toUnsignedLong(fmt.getInt(4));
        int bits = Short.toUnsignedInt(fmt.getShort(14));
        boolean floating = tag == FLOAT;
        if (tag != PCM && tag != FLOAT) {
            throw refused("sound.packed", name, tag);
        }
        if (floating ? bits != 32 && bits != 64 : bits == 0 || bits > 32) {
            throw refused("sound.bits", name, bits);
        }
        if (channels < 1 || channels > MOST_CHANNELS) {
            throw refused("sound.channels", name, channels, MOST_CHANNELS);
        }
        if (rate < LEAST_RATE || rate > MOST_RATE) {
            throw refused("sound.rate", name, Figures.of(rate, "Hz"));
        }
        int wide = (bits + 7) / 8;
        int frame = Short.toUnsignedInt(fmt.getShort(12));
        if (frame != wide * channels) {
            throw refused("sound.frame", name, frame, wide * channels);
        }
        if (said > there + frame) {
            throw refused("sound.cut", name, Figures.of(said / frame / rate, "s"), Figures.of(Math.max(0, there) / frame / rate, "s"));
        }
        long frames = Math.min(said, there) / frame;
        if (frames == 0) {
            throw refused("sound.silent", name);
        }
        return new SoundFile(file, channels, rate, wide * 8, floating, frames, start);
    }

    /** How long it lasts, s. */
    public double seconds() {
        return frames / rate;
    }

    /** How many samples become one so that the sound can be held: 1 for up to some minutes. */
    public int folded() {
        return (int) Math.max(1, (frames * channels + MOST_KEPT - 1) / MOST_KEPT);
    }

    /** What it is, in words: {@code 48 kHz, 16 bit, 2 channels, 12.5 s}. */
    public String describe() {
        return Message.of(SoundFile.class, "sound.words", Figures.of(rate / 1000, "kHz"), bits + (floating ? " bit float" : " bit"),
                channels == 1 ? "1 channel" : channels + " channels", Figures.of(seconds(), "s")).text();
    }

    /**
     * The sound, full scale being 1. A long sound is folded: of each few samples the one farthest from zero stays, so no impact is lost and
     * its time is known to the rate of the answer, which is never below {@link #LEAST_RATE}.
     *
     * @throws RefusedException when it is too long for that, or cannot be read
     * @throws java.util.concurrent.CancellationException when the watch was cancelled
     */
    public RecordingData read(Watch watch) {
        String name = String.valueOf(file.getFileName());
        int fold = folded();
        if (rate / fold < LEAST_RATE) {
            throw refused("sound.long", name, Figures.of(seconds() / 60, "min", 3), Figures.of(Math.floor(MOST_KEPT / LEAST_RATE / channels / 60), "min"));
        }
        double[][] kept = new double[channels][(int) ((frames + fold - 1) / fold)];
        try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ)) {
            in.position(dataStart);
            fill(in, kept, fold, name, watch);
        } catch (IOException unreadable) {
            throw refused("sound.unreadable", name);
        }
        List<RecordingData.Channel> list = new ArrayList<>();
        for (double[] values : kept) {
            list.add(new RecordingData.Channel(ChannelRole.SOUND, "", "", values));
        }
        return new RecordingData(list, rate / fold);
    }

    private void fill(FileChannel in, double[][] kept, int fold, String name, Watch watch) throws IOException {
        int wide = bits / 8;
        int frame = wide * channels;
        int many = BLOCK / frame;
        ByteBuffer block = ByteBuffer.allocateDirect(many * frame).order(ByteOrder.LITTLE_ENDIAN);
        double[] samples = new double[many * channels];
        Object scratch = scratch(many * channels);
        long done = 0;
        while (done < frames) {
            watch.check();
            watch.done(done, frames);
            int now = (int) Math.min(many, frames - done);
            block.clear().limit(now * frame);
            while (block.hasRemaining()) {
                if (in.read(block) < 0) {
                    throw new IOException("shorter than it was");
                }
            }
            decode(block.flip(), scratch, samples, now * channels);
            for (int i = 0; floating && i < now * channels; i++) {
                if (!Double.isFinite(samples[i])) {
                    throw refused("sound.number", name, Figures.of((done + i / channels) / rate, "s"));
                }
            }
            for (int c = 0; c < channels; c++) {
                keep(samples, c, now, kept[c], done, fold);
            }
            done += now;
        }
        watch.done(frames, frames);
    }

    /** Samples of a channel into what is kept of it. */
    private void keep(double[] samples, int channel, int now, double[] kept, long from, int fold) {
        int cell = (int) (from / fold);
        int s = channel;
        if (fold == 1) {
            for (int i = 0; i < now; i++, s += channels) {
                kept[cell + i] = samples[s];
            }
            return;
        }
        int in = (int) (from % fold);
        double far = kept[cell];
        double most = Math.abs(far);
        for (int i = 0; i < now; i++, s += channels) {
            double v = samples[s];
            double away = Math.abs(v);
            if (away > most) {
                far = v;
                most = away;
            }
            if (++in == fold) {
                kept[cell++] = far;
                far = 0;
                most = 0;
                in = 0;
            }
        }
        if (in > 0) {
            kept[cell] = far;
        }
    }

    /** A block in its own numbers, into samples; {@code scratch} is an array of them, large enough. */
    private void decode(ByteBuffer block, Object scratch, double[] samples, int count) {
        switch (scratch) {
            case float[] f -> {
                block.asFloatBuffer().get(f, 0, count);
                for (int i = 0; i < count; i++) {
                    samples[i] = f[i];
                }
            }
            case double[] d -> {
                block.asDoubleBuffer().get(d, 0, count);
                System.arraycopy(d, 0, samples, 0, count);
            }
            case short[] w -> {
                block.asShortBuffer().get(w, 0, count);
                for (int i = 0; i < count; i++) {
                    samples[i] = w[i] * (1.0 / 32768);
                }
            }
            case int[] w -> {
                block.asIntBuffer().get(w, 0, count);
                for (int i = 0; i < count; i++) {
                    samples[i] = w[i] * (1.0 / 2147483648.0);
                }
            }
            case byte[] w when bits == 8 -> {
                block.get(w, 0, count);
                for (int i = 0; i < count; i++) {
                    samples[i] = ((w[i] & 0xFF) - 128) / 128.0;
                }
            }
            case byte[] w -> {
                block.get(w, 0, 3 * count);
                for (int i = 0, at = 0; i < count; i++, at += 3) {
                    samples[i] = (w[at] & 0xFF | (w[at + 1] & 0xFF) << 8 | w[at + 2] << 16) * (1.0 / 8388608);
                }
            }
            default -> throw new IllegalStateException(String.valueOf(bits));
        }
    }

    private Object scratch(int count) {
        return switch (bits) {
            case 8 -> new byte[count];
            case 16 -> new short[count];
            case 24 -> new byte[3 * count];
            case 32 -> floating ? new float[count] : new int[count];
            default -> new double[count];
        };
    }

    /** Up to so many bytes from a place; fewer at the end of the file. */
    private static ByteBuffer bytes(FileChannel in, long at, int many) throws IOException {
        ByteBuffer b = ByteBuffer.allocate(many).order(ByteOrder.LITTLE_ENDIAN);
        while (b.hasRemaining() && in.read(b, at + b.position()) >= 0) {
            // until it is full or the file ends
        }
        return b.flip();
    }

    private static String word(ByteBuffer b, int at) {
        return b.limit() < at + 4 ? "" : new String(Arrays.copyOfRange(b.array(), at, at + 4), StandardCharsets.ISO_8859_1);
    }

    private static RefusedException refusedForm(String name, ByteBuffer start) {
        String begins = new String(start.array(), 0, start.limit(), StandardCharsets.ISO_8859_1);
        boolean film = begins.length() >= 8 && begins.startsWith("ftyp", 4);
        boolean mpeg = begins.length() >= 2 && begins.charAt(0) == 0xFF && (begins.charAt(1) & 0xE0) == 0xE0;
        String other = film ? "MP4" : mpeg ? "MP3" : OTHERS.entrySet().stream().filter(e -> begins.startsWith(e.getKey())).map(Map.Entry::getValue).findFirst().orElse(null);
        return other == null ? refused("sound.noWave", name) : refused("sound.other", name, other);
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(Message.of(SoundFile.class, key, args));
    }
}
