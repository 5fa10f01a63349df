package org.flexwright.core.session;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** An XML file as it is being put together, in UTF-8 from the start: a big project has millions of small pieces. */
final class XmlBytes {
    /** Characters that stand for themselves everywhere and take one byte. */
    private static final boolean[] PLAIN = new boolean[128];
    static {
        Arrays.fill(PLAIN, ' ', PLAIN.length, true);
        "<>&\"".chars().forEach(c -> PLAIN[c] = false);
    }

    private byte[] bytes;
    private int length;

    XmlBytes(int capacity) {
        bytes = new byte[Math.max(capacity, 1 << 6)];
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Adds one ASCII character as it is. */
    void add(char c) {
        room(1);
        bytes[length++] = (byte) c;
    }

    /** Adds bytes as they are. */
    void add(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, length, more.length);
        length += more.length;
    }

    /** Adds text as it is. */
    void add(String text) {
        add(utf8(text));
    }

    /** Adds text so that a reader gets exactly it back; in an attribute line ends and tabs too. */
    void escaped(String text, boolean attribute) {
        int n = text.length();
        room(n);
        byte[] to = bytes;
        int at = length;
        for (int i = 0; i < n; i++) {
            char c = text.charAt(i);
            if (c >= PLAIN.length || !PLAIN[c]) {
                length = at;
                others(text, i, attribute);
                return;
            }
            to[at++] = (byte) c;
        }
        length = at;
    }

    /** The rest of a text, from the first character that needs a look. */
    private void others(String text, int begin, boolean attribute) {
        int bad = XmlText.firstForbidden(text);
        if (bad >= 0) {
            throw new XmlText.ForbiddenCharacterException(text, bad);
        }
        StringBuilder b = new StringBuilder(text.length() + 16);
        for (int i = begin; i < text.length(); i++) {
            char c = text.charAt(i);
            String instead = switch (c) {
                case '<' -> "&lt;";
                case '&' -> "&amp;";
                case '>' -> attribute ? null : "&gt;";
                case '"' -> attribute ? "&quot;" : null;
                case '\n' -> attribute ? "&#xA;" : null;
                case '\t' -> attribute ? "&#x9;" : null;
                case '\r' -> "&#xD;";
                default -> null;
            };
            if (instead == null) {
                b.append(c);
            } else {
                b.append(instead);
            }
        }
        add(b.toString());
    }

    /** The last byte; there must be one. */
    byte last() {
        return bytes[length - 1];
    }

    /** All of it with a beginning before it. */
    byte[] after(String beginning) {
        byte[] first = utf8(beginning);
        byte[] all = new byte[first.length + length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(bytes, 0, all, first.length, length);
        return all;
    }

    private void room(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length + (bytes.length >> 1), length + more));
        }
    }
}
