package org.flexwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code name=value} pairs; {@code name=@file.csv} takes the file's text. */
final class Settings {
    private Settings() {
    }

    static Map<String, String> read(List<String> pairs, Path workingFolder) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String pair : pairs) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new UsageException("\"" + pair + "\" is not name=value.");
            }
            String name = pair.substring(0, equals).strip();
            if (map.put(name, value(pair.substring(equals + 1).strip(), workingFolder)) != null) {
                throw new UsageException("\"" + name + "\" is given twice.");
            }
        }
        return map;
    }

    private static String value(String text, Path workingFolder) {
        if (!text.startsWith("@")) {
            return text;
        }
        Path file = workingFolder.resolve(text.substring(1));
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new CliException("The file " + file.getFileName() + " cannot be read as UTF-8 text.", e);
        }
    }
}
