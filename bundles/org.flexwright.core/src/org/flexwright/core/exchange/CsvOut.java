package org.flexwright.core.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;

/** Rows as RFC 4180 wants them: commas, CR LF, quotes where a cell needs them. */
final class CsvOut implements Closeable {
    private final Writer out;
    private boolean begun;

    CsvOut(Writer out) {
        this.out = out;
    }

    void cell(String text) throws IOException {
        if (begun) {
            out.write(',');
        }
        begun = true;
        if (!quoted(text)) {
            out.write(text);
            return;
        }
        out.write('"');
        int from = 0;
        for (int at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) {
            out.write(text, from, at + 1 - from);
            out.write('"');
            from = at + 1;
        }
        out.write(text, from, text.length() - from);
        out.write('"');
    }

    private static boolean quoted(String text) {
        int n = text.length();
        for (int i = 0; i < n; i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r' || c == ';' || c == '\t' || c == '\ufeff') {
                return true;
            }
        }
        return n > 0 && (text.charAt(0) <= ' ' || text.charAt(n - 1) <= ' ');
    }

    void end() throws IOException {
        out.write("\r\n");
        begun = false;
    }

    void row(String... cells) throws IOException {
        for (String c : cells) {
            cell(c);
        }
        end();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
