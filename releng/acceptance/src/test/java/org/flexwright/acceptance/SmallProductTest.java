package org.flexwright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The small product, without the three routes, opens the example: it says what is missing, works, and changes nothing it does not know. */
class SmallProductTest {

    @TempDir
    Path home;

    @Test
    void theExampleLosesNothingWhereTheRoutesAreMissing() throws Exception {
        Product whole = new Product("flexwright", home);
        Product small = new Product("flexwright-small", home);
        Path project = home.resolve("dome.flexwright");
        assertEquals(0, whole.run(Map.of(), "example", project.toString()).status());
        List<String> before = Files.readAllLines(project.resolve("project.xmi"));
        String findings = whole.run(Map.of(), "project", "check", "--project", project.toString()).out();

        Product.Run show = small.run(Map.of(), "project", "show", "--project", project.toString());
        assertEquals(0, show.status(), show.err());
        for (String missing : List.of("org.flexwright.moulding", "org.flexwright.vatprint", "org.flexwright.filament")) {
            assertTrue(show.out().contains(missing), show.out());
        }
        assertEquals(before, Files.readAllLines(project.resolve("project.xmi")), "looking changes nothing");
        assertEquals(0, small.run(Map.of(), "report", "--project", project.toString(), "--out", home.resolve("r.html").toString()).status());

        Product.Run edit = small.run(Map.of(), "session", "add", "--code", "S99", "--room", "23degC", "--project", project.toString());
        assertEquals(0, edit.status(), edit.err());
        assertEquals(List.of(), missing(before, Files.readAllLines(project.resolve("project.xmi"))), "lines of the example that a save lost or changed");
        assertEquals(findings, whole.run(Map.of(), "project", "check", "--project", project.toString()).out(), "the same findings as before");
    }

    /** Lines that do not come back in their order; the number of the last edit and the program's version may change. */
    private static List<String> missing(List<String> before, List<String> after) {
        int at = 0;
        for (String line : before) {
            if (line.contains("journalSeq=") || line.contains("writtenBy=")) {
                continue;
            }
            int found = after.subList(at, after.size()).indexOf(line);
            if (found < 0) {
                return List.of(line);
            }
            at += found + 1;
        }
        return List.of();
    }
}
