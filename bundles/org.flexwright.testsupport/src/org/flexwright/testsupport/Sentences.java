package org.flexwright.testsupport;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Looks through the sentences of a bundle: every key has words, all words are used, no word promises what nobody can. */
public final class Sentences {
	private static final Pattern FORBIDDEN = Pattern.compile("\\b(safe|safely|compliant|compliance|certified|certifies|harmless|guaranteed)\\b", Pattern.CASE_INSENSITIVE);
	private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
	private static final Pattern PLACE = Pattern.compile("\\{(\\d+)\\}");

	private final Path sources;
	private final Properties words = new Properties();

	/**
	 * The sentences kept in {@code messages.properties} of one package.
	 *
	 * @param bundle      folder name of the bundle, {@code org.flexwright.safety}
	 * @param packageName package of the messages
	 */
	public Sentences(String bundle, String packageName) throws IOException {
		Path tests = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
		this.sources = tests.resolveSibling(bundle).resolve("src");
		Path file = sources.resolve(packageName.replace('.', '/')).resolve("messages.properties");
		try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
			words.load(reader);
		}
	}

	/** The keys, sorted. */
	public Set<String> keys() {
		return new TreeSet<>(words.stringPropertyNames());
	}

	/** What is wrong with the sentences, one line each; empty when nothing is. */
	public List<String> problems() throws IOException {
		List<String> problems = new ArrayList<>();
		Set<String> literals = literals();
		for (String key : keys()) {
			String sentence = words.getProperty(key);
			if (sentence.isBlank()) {
				problems.add(key + " has no words");
			}
			if (sentence.contains("'")) {
				problems.add(key + " has an apostrophe, which the formatter swallows");
			}
			if (FORBIDDEN.matcher(sentence).find()) {
				problems.add(key + " promises too much: " + sentence);
			}
			if (!filled(sentence)) {
				problems.add(key + " leaves a place empty: " + sentence);
			}
			if (!used(key, literals)) {
				problems.add(key + " is used nowhere");
			}
		}
		return problems;
	}

	/** Text between quotation marks in the sources that promises what nobody can; empty when there is none. */
	public List<String> promises() throws IOException {
		return literals().stream().filter(text -> FORBIDDEN.matcher(text).find()).toList();
	}

	/** Keys handed to the given call as its first literal that have no words. */
	public List<String> missing(String call) throws IOException {
		Pattern use = Pattern.compile(Pattern.quote(call) + "\\((?:[A-Za-z_.]+(?:\\([^()]*\\))?, )*\"([a-z0-9.-]+)\"(?! \\+)");
		List<String> missing = new ArrayList<>();
		for (String source : texts()) {
			Matcher matcher = use.matcher(source);
			while (matcher.find()) {
				if (!words.containsKey(matcher.group(1))) {
					missing.add(matcher.group(1));
				}
			}
		}
		return missing;
	}

	private static boolean filled(String sentence) {
		int places = (int) PLACE.matcher(sentence).results().mapToInt(m -> Integer.parseInt(m.group(1)) + 1).max().orElse(0);
		String[] arguments = new String[places];
		for (int i = 0; i < places; i++) {
			arguments[i] = "value" + i;
		}
		return !new MessageFormat(sentence, Locale.ROOT).format(arguments).contains("{");
	}

	/** A key stands in the sources as it is, or is put together from two literals. */
	private static boolean used(String key, Set<String> literals) {
		if (literals.contains(key)) {
			return true;
		}
		for (int i = 1; i < key.length(); i++) {
			if (literals.contains(key.substring(0, i)) && (literals.contains(key.substring(i)) || key.charAt(i - 1) == '.')) {
				return true;
			}
		}
		return false;
	}

	private Set<String> literals() throws IOException {
		Set<String> literals = new TreeSet<>();
		for (String source : texts()) {
			Matcher matcher = LITERAL.matcher(source);
			while (matcher.find()) {
				literals.add(matcher.group(1));
			}
		}
		return literals;
	}

	private List<String> texts() throws IOException {
		List<Path> files;
		try (Stream<Path> walk = Files.walk(sources)) {
			files = walk.filter(f -> f.toString().endsWith(".java")).sorted().toList();
		}
		List<String> texts = new ArrayList<>();
		for (Path file : files) {
			texts.add(Files.readString(file));
		}
		return texts;
	}
}
