package org.flexwright.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The sentences of core: each can be formed, each is used, and what looks like a key of a package has its words. */
class MessagesTest {
    private static final String ROOT = "org/flexwright/core";

    /** Words by package folder. */
    private final Map<String, Properties> words = new TreeMap<>();
    /** Texts in the constant pools of a package's classes, by package folder. */
    private final Map<String, Set<String>> constants = new TreeMap<>();

    MessagesTest() throws IOException {
        for (URL url : resources("messages.properties")) {
            Properties properties = new Properties();
            try (var reader = new InputStreamReader(url.openStream(), StandardCharsets.UTF_8)) {
                properties.load(reader);
            }
            words.put(folder(url), properties);
        }
        for (URL url : resources("*.class")) {
            try (InputStream in = url.openStream()) {
                constants.computeIfAbsent(folder(url), f -> new TreeSet<>()).addAll(texts(in));
            }
        }
    }

    private static String folder(URL url) {
        String path = url.getPath();
        return path.substring(path.lastIndexOf(ROOT), path.lastIndexOf('/'));
    }

    /** What core's bundle, or its folder on a plain class path, holds; its tests left out. */
    private static List<URL> resources(String pattern) throws IOException {
        Bundle bundle = FrameworkUtil.getBundle(Message.class);
        if (bundle != null) {
            return Collections.list(bundle.findEntries(ROOT, pattern, true)).stream().filter(u -> !u.getPath().contains("Test")).toList();
        }
        Path root = Path.of(Message.class.getProtectionDomain().getCodeSource().getLocation().getPath());
        String ending = pattern.replace("*", "");
        List<URL> urls = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root.resolve(ROOT))) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).toList()) {
                urls.add(file.toUri().toURL());
            }
        }
        return urls;
    }

    /** The text constants of a class file (Java Virtual Machine Specification 21, chapter 4.4). */
    private static Set<String> texts(InputStream in) throws IOException {
        DataInputStream data = new DataInputStream(in);
        data.skipNBytes(8);
        int count = data.readUnsignedShort();
        Set<String> texts = new TreeSet<>();
        for (int i = 1; i < count; i++) {
            switch (data.readUnsignedByte()) {
                case 1 -> texts.add(data.readUTF());
                case 3, 4, 9, 10, 11, 12, 17, 18 -> data.skipNBytes(4);
                case 5, 6 -> {
                    data.skipNBytes(8);
                    i++;
                }
                case 7, 8, 16, 19, 20 -> data.skipNBytes(2);
                case 15 -> data.skipNBytes(3);
                default -> throw new IOException("No class file.");
            }
        }
        return texts;
    }

    @Test
    void thereIsSomethingToLookAt() {
        assertTrue(words.size() > 5, words.keySet().toString());
        assertTrue(constants.get(ROOT + "/verdict").contains("notMeasured"));
    }

    @Test
    void everySentenceCanBeFormed() {
        Object[] args = {"a0", "a1", "a2", "a3", "a4", "a5", "a6", "a7"};
        words.forEach((folder, properties) -> properties.forEach((key, sentence) -> {
            String formed = new MessageFormat((String) sentence, Locale.ROOT).format(args);
            assertFalse(formed.isBlank() || formed.contains("{") || formed.contains("}"), folder + " " + key + ": " + formed);
            assertEquals(((String) sentence).contains("'"), ((String) sentence).contains("''"), folder + " " + key + " has a lone apostrophe");
        }));
    }

    @Test
    void everySentenceIsUsed() {
        words.forEach((folder, properties) -> properties.stringPropertyNames().forEach(key -> {
            String stem = key.replaceFirst("\\.remedy$", "");
            assertTrue(used(constants.getOrDefault(folder, Set.of()), stem), folder + " " + key + " is used nowhere");
        }));
    }

    /** The key itself, or as the constant of an enum of sentences, or a text it begins with and one it ends with, as when it is put together. */
    private static boolean used(Set<String> texts, String key) {
        if (texts.contains(key) || texts.contains(key.toUpperCase(Locale.ROOT).replace('.', '_'))) {
            return true;
        }
        // A constant with \1 is a recipe of the compiler for putting texts together.
        return texts.stream().anyMatch(t -> t.length() > 1 && (t.endsWith(".") && key.startsWith(t) || t.indexOf('\1') >= 0 && key.matches(recipe(t))))
                || texts.stream().anyMatch(start -> start.length() > 2 && key.startsWith(start) && texts.contains(key.substring(start.length())));
    }

    private static String recipe(String text) {
        StringBuilder pattern = new StringBuilder();
        for (String part : text.split("\1", -1)) {
            pattern.append(pattern.isEmpty() ? "" : ".*").append(java.util.regex.Pattern.quote(part));
        }
        return text.replace("\1", "").length() < 2 ? "(?!)" : pattern.toString();
    }

    @Test
    void whatLooksLikeAKeyHasItsWords() {
        words.forEach((folder, properties) -> {
            Set<String> families = new TreeSet<>();
            properties.stringPropertyNames().stream().filter(k -> k.contains(".")).forEach(k -> families.add(k.substring(0, k.indexOf('.') + 1)));
            for (String text : constants.getOrDefault(folder, Set.of())) {
                boolean looks = text.matches("[a-z][A-Za-z]*(\\.[A-Za-z_]+)+") && families.stream().anyMatch(text::startsWith);
                assertTrue(!looks || properties.containsKey(text) || properties.stringPropertyNames().stream().anyMatch(k -> k.startsWith(text)),
                        folder + ": " + text + " has no words");
            }
        });
    }
}
