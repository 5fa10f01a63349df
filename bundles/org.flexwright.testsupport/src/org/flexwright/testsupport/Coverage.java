package org.flexwright.testsupport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which figures of the catalogue the given results cover, sheet by sheet.
 *
 * @param sheets   one entry a sheet, in the order of the catalogue
 * @param problems results that failed, or that do not match the catalogue; empty when all is well
 */
record Coverage(List<Sheet> sheets, List<String> problems) {

	/**
	 * One sheet.
	 *
	 * @param name      its name
	 * @param total     figures it prints
	 * @param uncovered ids no test compared
	 */
	record Sheet(String name, int total, List<String> uncovered) {
		int covered() {
			return total - uncovered.size();
		}
	}

	static Coverage of(CheckCatalogue catalogue, List<CheckResult> results) {
		Set<String> compared = new LinkedHashSet<>();
		List<String> problems = new ArrayList<>();
		for (CheckResult result : results) {
			compared.add(result.id());
			if (!catalogue.expected(result.id()).filter(result.expected()::equals).isPresent()) {
				problems.add(result.id() + ": " + result.test() + " compared with " + result.expected() + ", which is not the figure in the catalogue");
			} else if (!result.passed()) {
				problems.add(result.id() + ": expected " + result.expected() + ", got " + result.got() + " in " + result.test());
			}
		}
		Map<String, List<String>> idsBySheet = new LinkedHashMap<>();
		for (String id : catalogue.ids()) {
			idsBySheet.computeIfAbsent(CheckCatalogue.sheet(id), name -> new ArrayList<>()).add(id);
		}
		List<Sheet> sheets = new ArrayList<>();
		idsBySheet.forEach((name, ids) -> sheets.add(new Sheet(name, ids.size(), ids.stream().filter(id -> !compared.contains(id)).toList())));
		return new Coverage(sheets, problems);
	}
}
