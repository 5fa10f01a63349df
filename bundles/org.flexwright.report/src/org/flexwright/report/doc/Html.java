package org.flexwright.report.doc;

/** Writes HTML in which every text is escaped; only this class puts angle brackets into a report. */
final class Html {
    private final StringBuilder out = new StringBuilder();

    /** A text as it may stand in HTML, in attributes too. */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder();
        (text == null ? "" : text).codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> {
                    if (c >= ' ' && c != 0xFFFE && c != 0xFFFF && !(c >= 0x7F && c <= 0x9F) || c == '\n' || c == '\t') {
                        escaped.appendCodePoint(c);
                    } else {
                        escaped.append('\uFFFD');
                    }
                }
            }
        });
        return escaped.toString();
    }

    Html open(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"").append(escape(attributes[i + 1])).append('"');
        }
        out.append('>');
        return this;
    }

    Html close(String tag) {
        out.append("</").append(tag).append(">\n");
        return this;
    }

    Html text(String text) {
        out.append(escape(text));
        return this;
    }

    Html element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close(tag);
    }

    /** A drawing, in place. */
    Html drawing(Drawing drawing) {
        out.append(Svg.inline(drawing));
        return this;
    }

    /** The style sheet, fixed text of this program. */
    Html style(String css) {
        out.append("<style>").append(css).append("</style>\n");
        return this;
    }

    Html doctype() {
        out.append("<!DOCTYPE html>\n");
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
