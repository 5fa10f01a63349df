package org.flexwright.filament;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.testsupport.Sentences;
import org.junit.jupiter.api.Test;

class FilamentSentencesTest {
    private static final String BUNDLE = "org.flexwright.filament";

    @Test
    void everyKeyHasWordsAndAllWordsAreUsed() throws IOException {
        Sentences sentences = new Sentences(BUNDLE, BUNDLE);
        assertEquals(List.of(), sentences.problems());
        assertEquals(List.of(), sentences.missing("Message.of"));
        for (String key : sentences.keys()) {
            assertFalse(Message.of(ExtrudeProcess.class, key, "a", "b", "c", "d", "e").text().isBlank(), key);
        }
    }

    @Test
    void nothingPromisesWhatNobodyCan() throws IOException {
        assertEquals(List.of(), new Sentences(BUNDLE, BUNDLE).promises());
    }
}
