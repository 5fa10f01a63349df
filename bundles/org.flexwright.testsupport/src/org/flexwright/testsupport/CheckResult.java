package org.flexwright.testsupport;

/**
 * One comparison of a printed figure with what the code gave.
 *
 * @param id       the id in the catalogue
 * @param expected the figure as printed
 * @param got      what the code gave
 * @param source   where the printed figure comes from
 * @param passed   whether they agree
 * @param rule     how they were compared: printed precision, text, or a tolerance and why it is right
 * @param test     the test class that compared them
 */
public record CheckResult(String id, String expected, String got, String source, boolean passed, String rule, String test) {
	private static final String PASS = "pass";
	private static final String FAIL = "fail";
	private static final int COLUMNS = 7;

	/** One line of a result file, tab-separated, without the line end. */
	public String toLine() {
		return String.join("\t", cell(id), cell(expected), cell(got), cell(source), passed ? PASS : FAIL, cell(rule), cell(test));
	}

	/**
	 * Reads a line of a result file.
	 *
	 * @throws IllegalArgumentException when the line is not such a line
	 */
	public static CheckResult parse(String line) {
		String[] cells = line.split("\t", -1);
		if (cells.length != COLUMNS || !(cells[4].equals(PASS) || cells[4].equals(FAIL))) {
			throw new IllegalArgumentException("not a check result (7 tab-separated cells, the fifth pass or fail): " + line);
		}
		return new CheckResult(cells[0], cells[1], cells[2], cells[3], cells[4].equals(PASS), cells[5], cells[6]);
	}

	private static String cell(String text) {
		return text.replaceAll("[\\t\\r\\n]+", " ").strip();
	}
}
