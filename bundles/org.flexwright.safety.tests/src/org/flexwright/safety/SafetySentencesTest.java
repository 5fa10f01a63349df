package org.flexwright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;

import org.flexwright.testsupport.Sentences;
import org.junit.jupiter.api.Test;

class SafetySentencesTest {

    @Test
    void everyKeyHasWordsAndEveryWordIsUsed() throws IOException {
        Sentences sentences = new Sentences("org.flexwright.safety", "org.flexwright.safety");
        assertEquals(List.of(), sentences.problems());
        for (String call : List.of("Say.message", "Say.note", "Say.caution")) {
            assertEquals(List.of(), sentences.missing(call), call);
        }
        for (String key : sentences.keys()) {
            assertFalse(Say.message(key, "a", "b", "c", "d", "e").text().isBlank(), key);
        }
    }

    @Test
    void nothingPromisesWhatNobodyCan() throws IOException {
        assertEquals(List.of(), new Sentences("org.flexwright.safety", "org.flexwright.safety").promises());
    }
}
