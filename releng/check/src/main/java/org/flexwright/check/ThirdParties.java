package org.flexwright.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the target platform, the table of third parties and the platform feature tell of the same parts. */
public final class ThirdParties {

    /** Licences under which a part may be shipped with a program under the EPL 2.0. */
    private static final Set<String> SHIPPED = Set.of("Apache-2.0", "BSD-3-Clause", "EPL-2.0", "MIT", "Unicode-3.0");
    /** Licences under which a part may be used in tests besides. */
    private static final Set<String> TESTS = Set.of("EPL-1.0");
    private static final String NOT_SHIPPED = "-";
    private static final Pattern DEPENDENCY = Pattern
            .compile("<groupId>([^<]+)</groupId>\\s*<artifactId>([^<]+)</artifactId>");
    private static final Pattern PLUGIN = Pattern.compile("<plugin\\s+id=\"([^\"]+)\"");

    private final String target;
    private final List<String> table;
    private final String feature;

    /**
     * @param target  text of the target definition
     * @param table   lines of the table: artifact, licence, bundle
     * @param feature text of the platform feature
     */
    public ThirdParties(String target, List<String> table, String feature) {
        this.target = target;
        this.table = List.copyOf(table);
        this.feature = feature;
    }

    /** Reads the three from a repository. */
    public static ThirdParties of(Path root) throws IOException {
        return new ThirdParties(Files.readString(root.resolve("releng/target/org.flexwright.target.target")),
                Files.readAllLines(root.resolve("releng/check/third-parties.tsv")),
                Files.readString(root.resolve("features/org.flexwright.platform.feature/feature.xml")));
    }

    /** One sentence for each disagreement; empty where there is none. */
    public List<String> violations() {
        List<String> found = new ArrayList<>();
        Map<String, String> licences = new TreeMap<>();
        Set<String> shipped = new TreeSet<>();
        for (String line : table) {
            String[] cells = line.split("\t");
            if (line.startsWith("#")) {
                continue;
            }
            if (cells.length != 3) {
                found.add("The line '" + line + "' has " + cells.length + " cells; three are needed.");
                continue;
            }
            licences.put(cells[0], cells[1]);
            boolean isShipped = !cells[2].equals(NOT_SHIPPED);
            if (isShipped) {
                shipped.add(cells[2]);
            }
            if (!SHIPPED.contains(cells[1]) && (isShipped || !TESTS.contains(cells[1]))) {
                found.add(cells[0] + " is under " + cells[1] + ", which is not among the licences that fit.");
            }
        }
        compare(matches(DEPENDENCY, target), licences.keySet(), "the target platform", "the table of third parties", found);
        compare(shipped, matches(PLUGIN, feature), "the table of third parties", "the platform feature", found);
        return found;
    }

    private static void compare(Set<String> one, Set<String> other, String nameOfOne, String nameOfOther,
            List<String> found) {
        for (String part : one) {
            if (!other.contains(part)) {
                found.add(part + " is in " + nameOfOne + " and not in " + nameOfOther + ".");
            }
        }
        for (String part : other) {
            if (!one.contains(part)) {
                found.add(part + " is in " + nameOfOther + " and not in " + nameOfOne + ".");
            }
        }
    }

    private static Set<String> matches(Pattern pattern, String text) {
        Set<String> found = new TreeSet<>();
        for (Matcher matcher = pattern.matcher(text); matcher.find();) {
            found.add(matcher.groupCount() == 1 ? matcher.group(1) : matcher.group(1) + ":" + matcher.group(2));
        }
        return found;
    }
}
