package org.flexwright.core.exchange;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** A table as text from anywhere: finds out its encoding and its separator and gives one row after the other. */
final class CsvIn implements Closeable {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int SAMPLE = 1 << 16;
    private static final int BUFFER = 1 << 16;
    private static final int BYTE = 0xff;

    /** Opens the bytes; called more than once. */
    interface Opener {
        InputStream open() throws IOException;
    }

    private final String name;
    private final Charset charset;
    private final char separator;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private final List<String> header = new ArrayList<>();
    private CSVRecord row;
    private long rowsBefore;

    private CsvIn(String name, Charset charset, char separator, CSVParser parser) {
        this.name = name;
        this.charset = charset;
        this.separator = separator;
        this.parser = parser;
        this.records = parser.iterator();
    }

    /** Opens a table and reads its first line. Throws {@link RefusedException} when it is none. */
    static CsvIn open(String name, Opener opener) throws IOException {
        Charset charset = charset(opener);
        String first = firstLine(opener, charset);
        boolean hint = first.matches("sep=.");
        char separator = hint ? first.charAt(first.length() - 1) : separator(first);
        BufferedReader reader = reader(opener, charset);
        if (hint) {
            reader.readLine();
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(false).get();
        CsvIn in = new CsvIn(name, charset, separator, CSVParser.parse(reader, format));
        in.rowsBefore = hint ? 1 : 0;
        boolean good = false;
        try {
            if (!in.next()) {
                throw new RefusedException(Message.of(CsvIn.class, "csv.empty", name));
            }
            good = true;
        } finally {
            if (!good) {
                in.close();
            }
        }
        in.row.forEach(cell -> in.header.add(cell.strip()));
        while (!in.header.isEmpty() && in.header.getLast().isEmpty()) {
            in.header.removeLast();
        }
        return in;
    }

    private static BufferedReader reader(Opener opener, Charset charset) throws IOException {
        BufferedReader r = new BufferedReader(new InputStreamReader(opener.open(), charset), BUFFER);
        r.mark(1);
        if (r.read() != '\ufeff') {
            r.reset();
        }
        return r;
    }

    private static Charset charset(Opener opener) throws IOException {
        try (InputStream in = new BufferedInputStream(opener.open(), BUFFER)) {
            byte[] head = in.readNBytes(SAMPLE);
            if (starts(head, 0xff, 0xfe)) {
                return StandardCharsets.UTF_16LE;
            }
            if (starts(head, 0xfe, 0xff)) {
                return StandardCharsets.UTF_16BE;
            }
            int even = 0;
            int odd = 0;
            for (int i = 0; i + 1 < head.length; i += 2) {
                even += head[i] == 0 ? 1 : 0;
                odd += head[i + 1] == 0 ? 1 : 0;
            }
            // text in Latin letters has a zero in every other byte when it is UTF-16
            if (Math.max(even, odd) > head.length / 5) {
                return odd > even ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            }
            return utf8(head, in) ? StandardCharsets.UTF_8 : WINDOWS;
        }
    }

    private static boolean starts(byte[] head, int a, int b) {
        return head.length > 1 && (head[0] & BYTE) == a && (head[1] & BYTE) == b;
    }

    private static boolean utf8(byte[] head, InputStream rest) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(SAMPLE);
        ByteBuffer bytes = ByteBuffer.allocate(SAMPLE + 8);
        byte[] block = head;
        while (true) {
            bytes.put(block).flip();
            boolean last = block.length < SAMPLE;
            CoderResult result;
            do {
                chars.clear();
                result = decoder.decode(bytes, chars, last);
            } while (result.isOverflow());
            if (result.isError()) {
                return false;
            }
            if (last) {
                return true;
            }
            bytes.compact();
            block = rest.readNBytes(SAMPLE);
        }
    }

    private static String firstLine(Opener opener, Charset charset) throws IOException {
        try (BufferedReader r = reader(opener, charset)) {
            StringBuilder b = new StringBuilder();
            boolean quoted = false;
            for (int c = r.read(); c >= 0 && b.length() < SAMPLE; c = r.read()) {
                quoted ^= c == '"';
                if (!quoted && (c == '\n' || c == '\r')) {
                    break;
                }
                b.append((char) c);
            }
            return b.toString();
        }
    }

    private static char separator(String header) {
        char best = ',';
        int most = 0;
        for (char candidate : new char[] { ',', ';', '\t' }) {
            boolean quoted = false;
            int count = 0;
            for (int i = 0; i < header.length(); i++) {
                char c = header.charAt(i);
                quoted ^= c == '"';
                count += !quoted && c == candidate ? 1 : 0;
            }
            if (count > most) {
                most = count;
                best = candidate;
            }
        }
        return best;
    }

    /** Goes to the next row; false when there is none. */
    boolean next() throws IOException {
        try {
            if (!records.hasNext()) {
                return false;
            }
            row = records.next();
            return true;
        } catch (UncheckedIOException | IllegalStateException e) {
            throw damaged(e);
        }
    }

    private RuntimeException damaged(RuntimeException e) throws IOException {
        if (e.getCause() instanceof CharacterCodingException c) {
            throw c;
        }
        return new RefusedException(Message.of(CsvIn.class, "csv.damaged", name, Long.toString(parser.getCurrentLineNumber())));
    }

    /** Number of the present row as a spreadsheet counts: the header is 1. */
    long rowNumber() {
        return parser.getRecordNumber() + rowsBefore;
    }

    /** Where the present row begins, in characters. */
    long position() {
        return row.getCharacterPosition();
    }

    List<String> header() {
        return header;
    }

    /** The present row, to be kept. */
    CSVRecord row() {
        return row;
    }

    /** How many cells the present row has. */
    int cells() {
        return row.size();
    }

    /** A cell of the present row; empty behind its end. */
    String cell(int column) {
        return column < row.size() ? row.get(column) : "";
    }

    boolean blank() {
        for (String cell : row) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }

    char separator() {
        return separator;
    }

    Charset charset() {
        return charset;
    }

    /** True when the bytes are no Unicode and were taken for the old Western encoding. */
    boolean guessed() {
        return charset.equals(WINDOWS);
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
