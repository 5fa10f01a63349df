package org.flexwright.dropins;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Where plugins may be dropped: beside the program, in the folders that the person names, in the person's own data. */
final class PluginFolders {

    /** System property and environment variable that name further folders, separated as in a search path. */
    static final String NAMED = "FLEXWRIGHT_PLUGINS";
    /** System property with the data folder of the program, set by its start script. */
    static final String DATA = "flexwright.data";
    /** System property with the place of the installation, a URL. */
    static final String INSTALLATION = "osgi.install.area";

    private PluginFolders() {
    }

    /**
     * The folders in the order in which they are looked through; they need not exist.
     *
     * @param property    looks up a system property, null where it is not set
     * @param environment looks up an environment variable, null where it is not set
     */
    static List<Path> of(UnaryOperator<String> property, UnaryOperator<String> environment) {
        List<Path> folders = new ArrayList<>();
        String installation = property.apply(INSTALLATION);
        if (installation != null && installation.startsWith("file:")) {
            folders.add(Path.of(URI.create(installation.replace(" ", "%20"))).resolve("dropins"));
        }
        String named = property.apply(NAMED);
        if (named == null) {
            named = environment.apply(NAMED);
        }
        if (named != null) {
            for (String one : named.split(File.pathSeparator)) {
                if (!one.isBlank()) {
                    folders.add(Path.of(one).toAbsolutePath());
                }
            }
        }
        String data = property.apply(DATA);
        if (data != null) {
            folders.add(Path.of(data).resolve("plugins"));
        }
        return folders;
    }
}
