package org.flexwright.core.recording;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Text files of strangers as bytes in which figures, separators and line ends are plain ASCII, whatever the file was written in. */
final class TextBytes {
    /** So much of the beginning decides what a file is written in. */
    static final int HEAD = 1 << 16;
    private static final int MARK = 3;
    private static final int SHARE_OF_ZEROS = 4;

    private TextBytes() {
    }

    /**
     * What the beginning of a file is written in: by its mark, by its zeros, else UTF-8 when it is valid, else Latin-1; null when it is no
     * text.
     */
    static Charset charset(byte[] head) {
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return StandardCharsets.UTF_8;
        }
        if (starts(head, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (starts(head, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        int[] zeros = new int[2];
        int odd = 0;
        for (int i = 0; i < head.length; i++) {
            int b = head[i] & 0xff;
            if (b == 0) {
                zeros[i & 1]++;
            } else if (b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f' && b != 0x1a) {
                odd++;
            }
        }
        if (odd > 0) {
            return null;
        }
        if (zeros[0] + zeros[1] == 0) {
            return isUtf8(head) ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
        }
        if (zeros[0] == 0 && zeros[1] * SHARE_OF_ZEROS > head.length) {
            return StandardCharsets.UTF_16LE;
        }
        return zeros[1] == 0 && zeros[0] * SHARE_OF_ZEROS > head.length ? StandardCharsets.UTF_16BE : null;
    }

    private static boolean isUtf8(byte[] head) {
        // the last character may be cut off
        for (int cut = 0; cut <= MARK && cut <= head.length; cut++) {
            try {
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(
                        head, 0, head.length - cut));
                return true;
            } catch (CharacterCodingException e) {
                if (head.length < HEAD) {
                    return false;
                }
            }
        }
        return false;
    }

    private static boolean starts(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xff) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** The same bytes without a mark and with ASCII characters as one byte each; null when the file is no text. Reads the beginning. */
    static InputStream plain(InputStream raw) throws IOException {
        PushbackInputStream back = new PushbackInputStream(raw, HEAD);
        byte[] head = back.readNBytes(HEAD);
        Charset charset = charset(head);
        if (charset == null) {
            return null;
        }
        int mark = starts(head, 0xEF, 0xBB, 0xBF) ? MARK : starts(head, 0xFF, 0xFE) || starts(head, 0xFE, 0xFF) ? 2 : 0;
        back.unread(head, mark, head.length - mark);
        return charset.equals(StandardCharsets.UTF_8) || charset.equals(StandardCharsets.ISO_8859_1) ? back : new Recoded(back, charset);
    }

    /** The text of a file's beginning without its mark. */
    static String text(byte[] head, Charset charset) {
        String text = new String(head, charset);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** UTF-16 as UTF-8. */
    private static final class Recoded extends FilterInputStream {
        private final InputStreamReader reader;
        private final CharBuffer chars = CharBuffer.allocate(HEAD / 4);
        private ByteBuffer bytes = ByteBuffer.allocate(0);

        Recoded(InputStream in, Charset charset) {
            super(in);
            reader = new InputStreamReader(in, charset);
        }

        @Override
        public int read() throws IOException {
            return fill() ? bytes.get() & 0xff : -1;
        }

        @Override
        public int read(byte[] b, int off, int len) throws IOException {
            if (!fill()) {
                return -1;
            }
            int n = Math.min(len, bytes.remaining());
            bytes.get(b, off, n);
            return n;
        }

        private boolean fill() throws IOException {
            while (!bytes.hasRemaining()) {
                chars.clear();
                if (reader.read(chars) < 0) {
                    return false;
                }
                bytes = StandardCharsets.UTF_8.encode(chars.flip());
            }
            return true;
        }
    }
}
