package org.flexwright.core.session;

/** Text as it stands in an XML file. */
final class XmlText {
    private XmlText() {
    }

    /** Place of the first character that XML cannot hold, or -1. */
    static int firstForbidden(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c < 0xD800 || c == '\n' || c == '\t' || c == '\r' || c > 0xDFFF && c < 0xFFFE) {
                continue;
            }
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
                continue;
            }
            return i;
        }
        return -1;
    }

    /** A text holds a character that no XML file can hold. */
    static final class ForbiddenCharacterException extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final int place;
        private final int code;

        ForbiddenCharacterException(String text, int place) {
            super("character " + Integer.toHexString(text.charAt(place)) + " at place " + (place + 1));
            this.place = place;
            this.code = text.charAt(place);
        }

        int place() {
            return place + 1;
        }

        String code() {
            return String.format("U+%04X", code);
        }
    }
}
