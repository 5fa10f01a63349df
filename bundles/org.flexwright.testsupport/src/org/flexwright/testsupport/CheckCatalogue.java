package org.flexwright.testsupport;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The printed figures of the reference sheets: id to expected text, in the order of the sheets.
 * An id starts with its sheet and section, as in {@code testing/7.t.2}.
 */
public final class CheckCatalogue {
	private static final String RESOURCE = "checks.tsv";

	private final Map<String, String> expectedById;

	private CheckCatalogue(Map<String, String> expectedById) {
		this.expectedById = Collections.unmodifiableMap(expectedById);
	}

	/** Reads the catalogue kept beside this class. */
	public static CheckCatalogue load() {
		try (InputStream in = CheckCatalogue.class.getResourceAsStream(RESOURCE)) {
			if (in == null) {
				throw new IllegalStateException(RESOURCE + " is missing beside " + CheckCatalogue.class.getName());
			}
			return read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static CheckCatalogue read(BufferedReader reader) throws IOException {
		Map<String, String> map = new LinkedHashMap<>();
		reader.readLine(); // the heading
		for (String line = reader.readLine(); line != null; line = reader.readLine()) {
			String[] cells = line.split("\t", -1);
			if (cells.length != 2 || cells[0].isBlank() || cells[1].isBlank()) {
				throw new IllegalStateException(RESOURCE + ": not 'id <tab> expected': " + line);
			}
			if (map.put(cells[0], cells[1]) != null) {
				throw new IllegalStateException(RESOURCE + ": the id " + cells[0] + " stands there twice");
			}
		}
		return new CheckCatalogue(map);
	}

	/** The expected text as printed in the sheet, or empty when there is no such id. */
	public Optional<String> expected(String id) {
		return Optional.ofNullable(expectedById.get(id));
	}

	/** All ids in the order of the sheets. */
	public List<String> ids() {
		return List.copyOf(expectedById.keySet());
	}

	/** The ids {@code prefix[0]}, {@code prefix[1]}, ... as far as they go without a gap. */
	public List<String> series(String prefix) {
		List<String> found = new ArrayList<>();
		while (expectedById.containsKey(prefix + "[" + found.size() + "]")) {
			found.add(prefix + "[" + found.size() + "]");
		}
		return found;
	}

	/** The sheet an id belongs to: {@code testing} for {@code testing/7.t.2}. */
	public static String sheet(String id) {
		int slash = id.indexOf('/');
		return slash < 0 ? id : id.substring(0, slash);
	}

	/** The section of its sheet: {@code 7} for {@code testing/7.t.2}. */
	public static String section(String id) {
		String rest = id.substring(id.indexOf('/') + 1);
		int dot = rest.indexOf('.');
		return dot < 0 ? rest : rest.substring(0, dot);
	}
}
