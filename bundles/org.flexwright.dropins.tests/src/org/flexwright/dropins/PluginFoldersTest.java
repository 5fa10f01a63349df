package org.flexwright.dropins;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

class PluginFoldersTest {

    private static final Path BASE = Path.of("some place").toAbsolutePath();

    @Test
    void looksBesideTheProgramThenWhereThePersonSaysThenInTheData() {
        Map<String, String> properties = Map.of(PluginFolders.INSTALLATION, "file:" + BASE.resolve("app") + "/",
                PluginFolders.DATA, BASE.resolve("data").toString());
        Map<String, String> environment = Map.of(PluginFolders.NAMED,
                BASE.resolve("one") + File.pathSeparator + File.pathSeparator + BASE.resolve("two"));
        assertEquals(List.of(BASE.resolve("app").resolve("dropins"), BASE.resolve("one"), BASE.resolve("two"),
                BASE.resolve("data").resolve("plugins")), PluginFolders.of(properties::get, environment::get));
    }

    @Test
    void aPropertyGoesBeforeTheEnvironment() {
        assertEquals(List.of(BASE), PluginFolders.of(Map.of(PluginFolders.NAMED, BASE.toString())::get,
                Map.of(PluginFolders.NAMED, "other")::get));
    }

    @Test
    void nothingSetMeansNoFolder() {
        assertEquals(List.of(), PluginFolders.of(name -> null, name -> null));
    }
}
