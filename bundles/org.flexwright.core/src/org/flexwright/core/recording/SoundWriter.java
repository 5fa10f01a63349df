package org.flexwright.core.recording;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Writes sounds as RIFF WAVE: made ones, for examples and tests. */
public final class SoundWriter {
    private static final int HEAD = 44;
    private static final int FMT = 16;
    private static final int BLOCK_FRAMES = 4096;

    /** How a sample is written. */
    public enum Sample {
        WHOLE_8(8, false), WHOLE_16(16, false), WHOLE_24(24, false), WHOLE_32(32, false), FLOAT_32(32, true), FLOAT_64(64, true);

        private final int bits;
        private final boolean floating;

        Sample(int bits, boolean floating) {
            this.bits = bits;
            this.floating = floating;
        }
    }

    private SoundWriter() {
    }

    /**
     * Writes a sound.
     *
     * @param out      not closed
     * @param sample   how a sample is written; whole numbers are cut at full scale
     * @param rate     samples a second, whole
     * @param channels values by channel, all of one length, full scale being 1
     */
    public static void write(OutputStream out, Sample sample, int rate, double[]... channels) throws IOException {
        int frames = channels[0].length;
        int wide = sample.bits / 8;
        int frame = wide * channels.length;
        ByteBuffer head = ByteBuffer.allocate(HEAD).order(ByteOrder.LITTLE_ENDIAN);
        head.put(word("RIFF")).putInt((int) (HEAD - 8 + (long) frames * frame)).put(word("WAVE"));
        head.put(word("fmt ")).putInt(FMT).putShort((short) (sample.floating ? 3 : 1)).putShort((short) channels.length).putInt(rate).putInt(rate * frame).putShort((short) frame)
                .putShort((short) sample.bits);
        head.put(word("data")).putInt((int) ((long) frames * frame));
        out.write(head.array());
        ByteBuffer block = ByteBuffer.allocate(BLOCK_FRAMES * frame).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < frames; i++) {
            for (double[] channel : channels) {
                put(block, sample, channel[i]);
            }
            if (!block.hasRemaining() || i == frames - 1) {
                out.write(block.array(), 0, block.position());
                block.clear();
            }
        }
    }

    private static void put(ByteBuffer block, Sample sample, double value) {
        double most = Math.scalb(1.0, sample.bits - 1);
        long whole = Math.round(Math.clamp(value * most, -most, most - 1));
        switch (sample) {
            case WHOLE_8 -> block.put((byte) (whole + 128));
            case WHOLE_16 -> block.putShort((short) whole);
            case WHOLE_24 -> block.putShort((short) whole).put((byte) (whole >> 16));
            case WHOLE_32 -> block.putInt((int) whole);
            case FLOAT_32 -> block.putFloat((float) value);
            case FLOAT_64 -> block.putDouble(value);
            default -> throw new IllegalStateException(sample.name());
        }
    }

    private static byte[] word(String word) {
        return word.getBytes(StandardCharsets.ISO_8859_1);
    }
}
