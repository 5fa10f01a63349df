package org.flexwright.testsupport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Writes into a folder of its own, so that nothing here counts as coverage. */
class CheckValuesTest {
	private static final String SOURCE = "invented for this test";

	@TempDir
	Path project;
	private Path results;
	private String folderBefore;

	@BeforeEach
	void useOwnFolder() {
		results = project.resolve("bundles/some.tests/target/check-results");
		folderBefore = System.getProperty(CheckResultFile.FOLDER_PROPERTY);
		System.setProperty(CheckResultFile.FOLDER_PROPERTY, results.toString());
	}

	@AfterEach
	void restoreFolder() {
		if (folderBefore == null) {
			System.clearProperty(CheckResultFile.FOLDER_PROPERTY);
		} else {
			System.setProperty(CheckResultFile.FOLDER_PROPERTY, folderBefore);
		}
	}

	@Test
	void keepsWhatAgrees() throws IOException {
		CheckValues.expect("testing/7.t.2", 4.30265, SOURCE);
		CheckValues.expect("testing/7.t.4", 2.77645);
		CheckValues.expectText("testing/7.gum.n", "20 readings", SOURCE);
		CheckValues.expect("testing/7.NumAcc1.mean", 10000002, 1e-9, "certified without error", SOURCE);
		CheckValues.expectSeries("testing/7.median", SOURCE, 75, 93.75, 96.875);

		List<CheckResult> kept = CheckResults.readFolder(results);
		assertEquals(7, kept.size());
		assertTrue(kept.stream().allMatch(CheckResult::passed));
		assertEquals(new CheckResult("testing/7.t.2", "4.3027", "4.30265", SOURCE, true, "printed precision", getClass().getName()), kept.get(0));
		assertEquals("sheet testing, section 7", kept.get(1).source());
	}

	@Test
	void failsAndKeepsWhatDisagrees() throws IOException {
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 4.3028, SOURCE));
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", Double.NaN, SOURCE));
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 4.31, 0.001, "rounded", SOURCE));
		assertThrows(AssertionError.class, () -> CheckValues.expectText("testing/7.gum.n", "21 readings", SOURCE));
		List<CheckResult> kept = CheckResults.readFolder(results);
		assertEquals(4, kept.size());
		assertFalse(kept.stream().anyMatch(CheckResult::passed));
	}

	@Test
	void refusesWhatIsNoClaim() throws IOException {
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.3", 3.1824, SOURCE), "no such id");
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.gum.n", 20, SOURCE), "a text");
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 4.3027, " "), "no source");
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 4.3027, Double.NaN, "why", SOURCE));
		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 4.3027, 1, "", SOURCE));
		assertThrows(AssertionError.class, () -> CheckValues.expectSeries("testing/7.median", SOURCE, 75, 93.75));
		assertFalse(Files.exists(results));
	}

	@Test
	void aLaterRunReplacesTheFile() throws IOException {
		Files.createDirectories(results);
		Path file = results.resolve(getClass().getName() + CheckResultFile.SUFFIX);
		CheckResult old = new CheckResult("testing/7.t.4", "2.7764", "2.7764", SOURCE, true, "printed precision", getClass().getName());
		Files.write(file, List.of("# run of yesterday", old.toLine()));
		CheckValues.expect("testing/7.t.2", 4.3027, SOURCE);
		CheckValues.expect("testing/7.t.5", 2.5706, SOURCE);
		assertEquals(List.of("testing/7.t.2", "testing/7.t.5"), CheckResults.readFolder(results).stream().map(CheckResult::id).toList());
	}

	@Test
	void thePageShowsCoveredAndUncovered() throws IOException {
		CheckValues.expect("testing/7.t.2", 4.3027, "a <source> & a \"table\"");
		Path page = project.resolve("out/page.html");
		String said = runPage(page, 0);
		long total = CheckCatalogue.load().ids().stream().filter(id -> id.startsWith("testing/")).count();
		assertTrue(said.contains("checks testing: 1 / " + total + " covered"), said);
		assertTrue(said.contains("  not covered: testing/1.spring.A[0] "), said);
		assertTrue(said.contains(" and " + (total - 1 - 12) + " more"), "a dozen is named, the page has them all: " + said);
		String html = Files.readString(page);
		assertTrue(html.contains("<tr class=\"open\"><td>testing/7.t.4</td>"));
		assertFalse(html.contains("<tr class=\"open\"><td>testing/7.t.2</td>"));
		assertTrue(html.contains("a &lt;source&gt; &amp; a &quot;table&quot;"));
		assertFalse(html.contains("<source>"));
	}

	@Test
	void thePageFailsForAFailureForAForeignFigureAndForNothingAtAll() throws IOException {
		Path page = project.resolve("page.html");
		assertTrue(runPage(page, 1).contains("no check results found"));

		assertThrows(AssertionError.class, () -> CheckValues.expect("testing/7.t.2", 5, SOURCE));
		assertTrue(runPage(page, 1).contains("FAILED testing/7.t.2: expected 4.3027, got 5.0"));

		CheckResult foreign = new CheckResult("testing/7.t.4", "2.78", "2.78", SOURCE, true, "printed precision", "T");
		Files.write(results.resolve(getClass().getName() + CheckResultFile.SUFFIX), List.of(foreign.toLine()));
		assertTrue(runPage(page, 1).contains("is not the figure in the catalogue"));
	}

	@Test
	void aDamagedLineIsNotSkipped() {
		assertThrows(IllegalArgumentException.class, () -> CheckResult.parse("testing/7.t.2\t4.3027\t4.3027\tpass"));
		assertThrows(IllegalArgumentException.class, () -> CheckResult.parse("a\tb\tc\td\tperhaps\tf\tg"));
	}

	private String runPage(Path page, int status) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
			assertEquals(status, CheckPage.run(project, page, out));
		}
		return bytes.toString(StandardCharsets.UTF_8);
	}
}
