package org.flexwright.check;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Whether every bundle is built, holds what it needs and is shipped in one feature. */
public final class Packaging {

    private static final Pattern MODULE = Pattern.compile("<module>([^<]+)</module>");
    private static final Pattern PLUGIN = Pattern.compile("<plugin\\s+id=\"(org\\.flexwright\\.[^\"]+)\"");
    private static final String BUILD = "build.properties";

    private final Path root;

    /** @param root the top folder of the repository */
    public Packaging(Path root) {
        this.root = root;
    }

    /** One sentence for each thing that is forgotten or wrong; empty where all is well. */
    public List<String> violations() throws IOException {
        List<String> found = new ArrayList<>();
        modules(found);
        features(found);
        for (Path bundle : folders("bundles")) {
            contents(bundle, found);
        }
        return found;
    }

    private void modules(List<String> found) throws IOException {
        Set<String> modules = new TreeSet<>(matches(MODULE, Files.readString(root.resolve("pom.xml"))));
        for (String group : List.of("bundles", "features")) {
            for (Path folder : folders(group)) {
                String module = group + "/" + folder.getFileName();
                if (!modules.contains(module)) {
                    found.add(module + " is no module of pom.xml, so nobody builds it.");
                }
            }
        }
    }

    private void features(List<String> found) throws IOException {
        Map<String, List<String>> places = new TreeMap<>();
        for (Path feature : folders("features")) {
            for (String plugin : matches(PLUGIN, Files.readString(feature.resolve("feature.xml")))) {
                places.computeIfAbsent(plugin, key -> new ArrayList<>()).add(feature.getFileName().toString());
            }
        }
        for (BundleManifest bundle : BundleManifest.readAll(root.resolve("bundles"))) {
            List<String> in = places.getOrDefault(bundle.name(), List.of());
            boolean shipped = bundle.host().isEmpty() && Layer.of(bundle.name()) != Layer.TESTSUPPORT;
            if (shipped && in.size() != 1) {
                found.add(bundle.name() + " must be in exactly one feature, and is in " + in + ".");
            } else if (!shipped && !in.isEmpty()) {
                found.add(bundle.name() + " is for tests and must be in no feature, and is in " + in + ".");
            }
        }
    }

    private static void contents(Path bundle, List<String> found) throws IOException {
        String name = bundle.getFileName().toString();
        if (Files.notExists(bundle.resolve(BUILD))) {
            found.add(name + " has no " + BUILD + ".");
            return;
        }
        Properties build = new Properties();
        try (Reader reader = Files.newBufferedReader(bundle.resolve(BUILD))) {
            build.load(reader);
        }
        Set<String> included = words(build.getProperty("bin.includes", ""));
        Set<String> sources = words(build.getProperty("source..", ""));
        for (String entry : List.of("plugin.xml", "model", "css", "icons", "help")) {
            if (Files.exists(bundle.resolve(entry)) && !included.contains(entry) && !included.contains(entry + "/")) {
                found.add(name + " has " + entry + ", which its " + BUILD + " leaves out of bin.includes.");
            }
        }
        for (String source : List.of("src", "src-gen")) {
            if (Files.exists(bundle.resolve(source)) && !sources.contains(source + "/") && !sources.contains(source)) {
                found.add(name + " has " + source + ", which its " + BUILD + " leaves out of source...");
            }
        }
    }

    private List<Path> folders(String group) throws IOException {
        try (Stream<Path> list = Files.list(root.resolve(group))) {
            return list.filter(folder -> Files.exists(folder.resolve("pom.xml"))
                    || Files.exists(folder.resolve(BUILD))).sorted().toList();
        }
    }

    private static Set<String> words(String list) {
        return new TreeSet<>(List.of(list.strip().split("\\s*,\\s*")));
    }

    private static List<String> matches(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        for (Matcher matcher = pattern.matcher(text); matcher.find();) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
