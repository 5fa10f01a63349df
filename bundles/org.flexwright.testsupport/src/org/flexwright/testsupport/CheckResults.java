package org.flexwright.testsupport;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads the result files that {@link CheckValues} wrote. */
public final class CheckResults {
	private CheckResults() {
	}

	/**
	 * All results in a {@code check-results} folder, in the order of the file names.
	 *
	 * @throws IOException when a file cannot be read
	 * @throws IllegalArgumentException when a line is not a check result
	 */
	public static List<CheckResult> readFolder(Path folder) throws IOException {
		List<Path> files;
		try (var found = Files.list(folder)) {
			files = found.filter(f -> f.getFileName().toString().endsWith(CheckResultFile.SUFFIX)).sorted().toList();
		}
		List<CheckResult> results = new ArrayList<>();
		for (Path file : files) {
			for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
				if (!CheckResultFile.isRunLine(line)) {
					results.add(CheckResult.parse(line));
				}
			}
		}
		return results;
	}
}
