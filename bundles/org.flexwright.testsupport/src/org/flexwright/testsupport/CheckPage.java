package org.flexwright.testsupport;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Merges the check results of all modules into one page, and says how much of each sheet is covered.
 * Arguments: the folder of the project, the page to write. Exit status 1 when a comparison failed or there is none.
 */
public final class CheckPage {
	private static final int MOST_NAMED = 12;
	private static final List<String> MODULE_FOLDERS = List.of("bundles", "releng");

	private CheckPage() {
	}

	/** Runs after the tests; see the class comment. */
	public static void main(String[] args) throws IOException {
		if (args.length != 2) {
			System.err.println("Two arguments are needed: the folder of the project, and the page to write.");
			System.exit(2);
		}
		System.exit(run(Path.of(args[0]), Path.of(args[1]), System.out));
	}

	static int run(Path project, Path page, PrintStream out) throws IOException {
		List<CheckResult> results = new ArrayList<>();
		for (Path folder : resultFolders(project)) {
			results.addAll(CheckResults.readFolder(folder));
		}
		CheckCatalogue catalogue = CheckCatalogue.load();
		Coverage coverage = Coverage.of(catalogue, results);
		Path parent = page.toAbsolutePath().getParent();
		Files.createDirectories(parent);
		Files.writeString(page, html(catalogue, results, coverage), StandardCharsets.UTF_8);
		for (Coverage.Sheet sheet : coverage.sheets()) {
			out.println("checks " + sheet.name() + ": " + sheet.covered() + " / " + sheet.total() + " covered");
			if (!sheet.uncovered().isEmpty()) {
				out.println("  not covered: " + named(sheet.uncovered()));
			}
		}
		coverage.problems().forEach(problem -> out.println("FAILED " + problem));
		if (results.isEmpty()) {
			out.println("FAILED no check results found: run the tests first");
		}
		out.println("check page: " + page);
		return results.isEmpty() || !coverage.problems().isEmpty() ? 1 : 0;
	}

	private static List<Path> resultFolders(Path project) throws IOException {
		List<Path> folders = new ArrayList<>();
		for (String name : MODULE_FOLDERS) {
			Path parent = project.resolve(name);
			if (Files.isDirectory(parent)) {
				try (var modules = Files.list(parent)) {
					modules.map(m -> m.resolve("target").resolve("check-results")).filter(Files::isDirectory).sorted().forEach(folders::add);
				}
			}
		}
		return folders;
	}

	private static String html(CheckCatalogue catalogue, List<CheckResult> results, Coverage coverage) {
		Map<String, List<CheckResult>> byId = new LinkedHashMap<>();
		results.forEach(r -> byId.computeIfAbsent(r.id(), id -> new ArrayList<>()).add(r));
		StringBuilder h = new StringBuilder("""
				<!DOCTYPE html>
				<html lang="en"><head><meta charset="utf-8"><title>Flexwright: check page</title><style>
				:root{color-scheme:light dark} body{font:15px/1.45 sans-serif;margin:2em;max-width:90em}
				table{border-collapse:collapse} th,td{text-align:left;padding:.2em .8em .2em 0;border-bottom:1px solid #8886;vertical-align:top}
				td.n{font-family:monospace} td.fail{font-weight:bold;color:#c0392b} tr.open td{opacity:.65}
				</style></head><body><h1>Printed figures and what the code gives</h1>
				<p>Every figure of the reference sheets, the value the tests got, and how the two were compared. Printed precision
				means: the difference is at most half a unit of the last printed digit.</p>
				<table><tr><th>sheet</th><th>covered</th><th>total</th></tr>
				""");
		for (Coverage.Sheet s : coverage.sheets()) {
			h.append("<tr><td><a href=\"#").append(escape(s.name())).append("\">").append(escape(s.name())).append("</a></td><td>")
					.append(s.covered()).append("</td><td>").append(s.total()).append("</td></tr>\n");
		}
		h.append("</table>\n");
		String sheet = "";
		for (String id : catalogue.ids()) {
			if (!CheckCatalogue.sheet(id).equals(sheet)) {
				h.append(sheet.isEmpty() ? "" : "</table>\n");
				sheet = CheckCatalogue.sheet(id);
				h.append("<h2 id=\"").append(escape(sheet)).append("\">").append(escape(sheet)).append("</h2>\n<table><tr><th>id</th><th>expected</th>"
						+ "<th>got</th><th>outcome</th><th>source</th><th>compared</th><th>test</th></tr>\n");
			}
			appendRows(h, id, catalogue.expected(id).orElseThrow(), byId.getOrDefault(id, List.of()));
		}
		return h.append("</table></body></html>\n").toString();
	}

	/** The page names them all; here a screen is not filled with them. */
	private static String named(List<String> ids) {
		return ids.size() <= MOST_NAMED ? String.join(" ", ids) : String.join(" ", ids.subList(0, MOST_NAMED)) + " and " + (ids.size() - MOST_NAMED) + " more";
	}

	private static void appendRows(StringBuilder h, String id, String expected, List<CheckResult> results) {
		if (results.isEmpty()) {
			h.append("<tr class=\"open\"><td>").append(escape(id)).append("</td><td class=\"n\">").append(escape(expected))
					.append("</td><td></td><td>not covered</td><td></td><td></td><td></td></tr>\n");
		}
		for (CheckResult r : results) {
			h.append("<tr><td>").append(escape(id)).append("</td><td class=\"n\">").append(escape(r.expected())).append("</td><td class=\"n\">")
					.append(escape(r.got())).append(r.passed() ? "</td><td>pass" : "</td><td class=\"fail\">FAIL").append("</td><td>")
					.append(escape(r.source())).append("</td><td>").append(escape(r.rule())).append("</td><td>").append(escape(r.test())).append("</td></tr>\n");
		}
	}

	private static String escape(String text) {
		return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
	}
}
