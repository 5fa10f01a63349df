package org.flexwright.testsupport;

import java.nio.file.Path;
import java.util.List;

/**
 * The one way for a test to say which printed figure it covers: the call that compares it. Naming an id here looks up the
 * figure, compares, keeps the result for the check page, and fails the test when they disagree. An id counts as covered
 * by nothing else.
 *
 * <pre>
 * CheckValues.expect("testing/7.t.2", StudentT.quantile(0.975, 2), "Student t tables");
 * </pre>
 *
 * Results go to the folder named by the system property {@code flexwright.check.results}, else to
 * {@code target/check-results} of the module being tested, one file a test class.
 */
public final class CheckValues {
	private static final CheckCatalogue CATALOGUE = CheckCatalogue.load();
	private static final StackWalker CALLER = StackWalker.getInstance(StackWalker.Option.RETAIN_CLASS_REFERENCE);

	private CheckValues() {
	}

	/** Compares at the printed precision; the source named on the check page is the sheet and section alone. */
	public static void expect(String id, double got) {
		atPrintedPrecision(CALLER.getCallerClass(), id, got, sheetOf(id));
	}

	/**
	 * Compares at the printed precision: half a unit of the last printed digit.
	 *
	 * @param source where the printed figure comes from (author, year, table), "derived", or "common practice, no source"
	 */
	public static void expect(String id, double got, String source) {
		atPrintedPrecision(CALLER.getCallerClass(), id, got, source);
	}

	/**
	 * Compares within a tolerance of its own, narrower or wider than the printed digits.
	 *
	 * @param tolerance largest difference allowed, in the unit of the figure
	 * @param why       why this tolerance is right, in one sentence; shown on the check page
	 */
	public static void expect(String id, double got, double tolerance, String why, String source) {
		Class<?> test = CALLER.getCallerClass();
		if (!(tolerance >= 0) || why.isBlank()) {
			throw new AssertionError(id + ": a tolerance must be a number from 0 up and say why it is right");
		}
		double expected = printed(id).value();
		keep(test, id, Double.toString(got), Math.abs(got - expected) <= tolerance, "within " + tolerance + ": " + why, source);
	}

	/**
	 * Compares {@code prefix[0]}, {@code prefix[1]}, ... at their printed precision. The catalogue must hold exactly as many
	 * as are given.
	 */
	public static void expectSeries(String prefix, String source, double... got) {
		Class<?> test = CALLER.getCallerClass();
		List<String> ids = CATALOGUE.series(prefix);
		if (ids.isEmpty() || ids.size() != got.length) {
			throw new AssertionError(prefix + ": the catalogue has " + ids.size() + " figures of this series, " + got.length + " were given");
		}
		for (int i = 0; i < got.length; i++) {
			atPrintedPrecision(test, ids.get(i), got[i], source);
		}
	}

	/** Compares a figure that is a text ({@code 9 points}): it must be the same, letter by letter. */
	public static void expectText(String id, String got, String source) {
		Class<?> test = CALLER.getCallerClass();
		keep(test, id, got, expected(id).equals(got.strip()), "same text", source);
	}

	private static void atPrintedPrecision(Class<?> test, String id, double got, String source) {
		keep(test, id, Double.toString(got), printed(id).agreesWith(got), "printed precision", source);
	}

	private static void keep(Class<?> test, String id, String got, boolean passed, String rule, String source) {
		String expected = expected(id);
		if (source == null || source.isBlank()) {
			throw new AssertionError(id + ": say where the figure comes from");
		}
		Path folder = CheckResultFile.defaultFolder();
		String name = test.getName();
		new CheckResultFile(folder, name).append(new CheckResult(id, expected, got, source, passed, rule, name));
		if (!passed) {
			throw new AssertionError(id + ": expected " + expected + " (" + rule + "), got " + got);
		}
	}

	private static String expected(String id) {
		return CATALOGUE.expected(id).orElseThrow(() -> new AssertionError("no figure has the id " + id));
	}

	private static PrintedNumber printed(String id) {
		String text = expected(id);
		return PrintedNumber.read(text).orElseThrow(() -> new AssertionError(id + " is the text \"" + text + "\": use expectText"));
	}

	private static String sheetOf(String id) {
		return "sheet " + CheckCatalogue.sheet(id) + ", section " + CheckCatalogue.section(id);
	}
}
