package org.flexwright.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.UUID;

/**
 * The result file of one test class. Its first line names the run that wrote it: the first comparison of a later run
 * replaces the file, so what an earlier run found never counts for a later one.
 */
final class CheckResultFile {
	/** System property that names the folder of the result files. */
	static final String FOLDER_PROPERTY = "flexwright.check.results";
	static final String SUFFIX = ".tsv";
	private static final String RUN_MARK = "# run ";
	private static final String RUN_LINE = RUN_MARK + UUID.randomUUID();

	private final Path file;

	CheckResultFile(Path folder, String testClass) {
		this.file = folder.resolve(testClass + SUFFIX);
	}

	/** The folder named by the system property, else {@code target/check-results} of the module being tested. */
	static Path defaultFolder() {
		String named = System.getProperty(FOLDER_PROPERTY);
		if (named != null && !named.isBlank()) {
			return Path.of(named);
		}
		return Path.of(System.getProperty("basedir", "")).resolve("target").resolve("check-results").toAbsolutePath();
	}

	void append(CheckResult result) {
		try {
			Files.createDirectories(file.getParent());
			if (!isOfThisRun()) {
				Files.write(file, List.of(RUN_LINE), StandardCharsets.UTF_8);
			}
			Files.write(file, List.of(result.toLine()), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
		} catch (IOException e) {
			throw new UncheckedIOException("cannot keep the check result in " + file, e);
		}
	}

	private boolean isOfThisRun() throws IOException {
		if (!Files.exists(file)) {
			return false;
		}
		try (var lines = Files.lines(file, StandardCharsets.UTF_8)) {
			return lines.findFirst().filter(RUN_LINE::equals).isPresent();
		}
	}

	static boolean isRunLine(String line) {
		return line.startsWith(RUN_MARK);
	}
}
