package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.api.Test;

class StartArgumentsTest {

    @Test
    void aFolderToOpen() {
        assertEquals(Optional.of(Path.of("a.flexwright").toAbsolutePath()), StartArguments.of(new String[] {"--other", "--open", "a.flexwright"}).open());
        assertEquals(Optional.empty(), StartArguments.of(new String[] {"a.flexwright"}).open());
    }

    @Test
    void openWithoutAFolderIsToldInOneSentence() {
        StartArguments none = StartArguments.of(new String[] {"--open"});
        assertEquals(Optional.empty(), none.open());
        assertTrue(none.trouble().contains(".flexwright"), none.trouble());
        assertTrue(StartArguments.of(new String[] {"--open", "a\0b"}).trouble().startsWith("After --open"));
        assertEquals("", StartArguments.of(new String[0]).trouble());
    }
}
