package org.flexwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Lines of a file, or of what is piped in. */
final class TypedLines {
    /** The name of a file that means what is piped in. */
    static final String PIPED = "-";

    private TypedLines() {
    }

    /**
     * All lines; throws UsageException when there are more than {@code most}, CliException when they cannot be read.
     *
     * @param piped what is piped in, read when the file is {@link #PIPED}
     * @param why   why more lines cannot be meant
     */
    static List<String> of(CliServices services, BufferedReader piped, String file, int most, String why) {
        if (file.equals(PIPED)) {
            return read(piped, "What was piped in", most, why);
        }
        Path path = services.workingFolder().resolve(file);
        try (BufferedReader in = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
            return read(in, "The file " + path.getFileName(), most, why);
        } catch (IOException e) {
            throw new CliException("The file " + path.getFileName() + " cannot be read: it is not there, is no file, or may not be read.", e);
        }
    }

    private static List<String> read(BufferedReader in, String what, int most, String why) {
        List<String> lines = new ArrayList<>();
        try {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (lines.size() == most) {
                    throw new UsageException(what + " has more than " + most + " lines: " + why + ".");
                }
                lines.add(line);
            }
        } catch (IOException e) {
            throw new CliException(what + " cannot be read as UTF-8 text.", e);
        }
        return lines;
    }
}
