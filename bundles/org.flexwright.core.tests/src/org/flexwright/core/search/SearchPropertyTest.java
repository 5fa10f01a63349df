package org.flexwright.core.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RandomEdits;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Project;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The index, kept up edit by edit, finds exactly what a plain look at everything finds. */
class SearchPropertyTest {
    private static final int EDITS = 80;
    private static final int ALL = 100_000;
    private static final Clock CLOCK = Clock.fixed(Demo.NOW, ZoneOffset.UTC);
    private static final List<String> ASKED = List.of("a", "two", "two lines", "tab and", "-a", "not two", "28", "28.0 mm", "0-50 g", "> 10", "under 5 A", "about 40",
            "quotes -two", "\"two lines\"", "emoji", "back", "json", "spaced not a", "trials", "trials a", "lots", "notes", "notes two", "note:two", "last year", "before 2020",
            "since 2000", "2026", "discarded", "grade planned", "40-60 %", "bubbles", "material", "sessions not two", "planned 1 g", "without notes", "Ø", "failed");

    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private final Registries registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    private final CardReader reader = new CardReader(registries, ZoneOffset.UTC, new UnitWords());

    static Stream<Long> seeds() {
        return new Random(20261128).longs(6).boxed();
    }

    /** Each thing read afresh and compared with the query, one after the other. */
    private Set<String> scan(Project project, Query query) {
        return CardReader.things(project).stream().map(reader::read).filter(query::matches).map(card -> card.id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Cautions are counted, and shown only when a kind is asked for. */
    private static Set<String> shown(ProjectSession session, Set<String> found, String asked) {
        Set<String> shown = new TreeSet<>(found);
        if (!asked.matches(".*\\b(trials|lots|sessions)\\b.*")) {
            shown.removeIf(id -> session.find(id).orElseThrow() instanceof Acknowledgement);
        }
        return shown;
    }

    /** Everything on the cards, by id. */
    static Map<String, String> print(Stream<Card> cards) {
        return cards.collect(Collectors.toMap(c -> c.id, c -> String.join("|", c.code, c.name, c.line, String.valueOf(c.day), c.dayWord, c.opens, Arrays.toString(c.texts), Arrays
                .toString(c.textLabels), Arrays.toString(c.textPlaces), Arrays.toString(c.lows), Arrays.toString(c.highs), Arrays.toString(c.kinds), Arrays.toString(c.sorts),
                Arrays.toString(c.numberLabels), Arrays.toString(c.numberPlaces), Arrays.toString(c.placeIds), Arrays.toString(c.placeNames)), (a, b) -> a, TreeMap::new));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void indexAndScanAgreeAfterEveryEditAndUndo(long seed) {
        QueryReader queries = new QueryReader(registries, new UnitWords(), CLOCK);
        Random random = new Random(seed);
        Set<String> everFound = new HashSet<>();
        try (ProjectSession s = demo.store().create(Demo.folder(temp), "Dome"); ProjectSearch search = new ProjectSearch(s, registries, CLOCK)) {
            RandomEdits edits = new RandomEdits(seed, demo);
            for (int i = 0; i < EDITS; i++) {
                if (random.nextInt(4) == 0 && s.canUndo()) {
                    s.undo();
                } else if (random.nextInt(4) == 0 && s.canRedo()) {
                    s.redo();
                } else {
                    s.execute("edit " + i, edits::some);
                }
                if (random.nextInt(3) > 0) {
                    continue;
                }
                search.readAll();
                assertEquals(print(CardReader.things(s.project()).stream().map(reader::read)), print(search.cards().stream()), "after edit " + i);
                for (int k = 0; k < 6; k++) {
                    String asked = ASKED.get(random.nextInt(ASKED.size()));
                    Answer answer = search.find(asked, ALL);
                    Set<String> indexed = answer.hits().stream().map(Hit::address).collect(Collectors.toCollection(TreeSet::new));
                    Set<String> scanned = scan(s.project(), queries.read(asked));
                    assertEquals(scanned.size(), answer.total(), asked);
                    assertEquals(shown(s, scanned, asked), indexed, asked + " after edit " + i + ": " + answer.said());
                    if (!indexed.isEmpty()) {
                        everFound.add(asked);
                    }
                }
            }
            assertEquals(CardReader.things(s.project()).size(), search.size());
        }
        assertTrue(everFound.size() > 4, "too few searches found anything: " + everFound);
    }
}
