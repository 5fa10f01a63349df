package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Path;

/**
 * The code generated for one model bundle.
 *
 * @param bundle symbolic name, also the name of its folder
 * @param root   the scratch copy of the bundle that the generator wrote into
 */
public record ModelCode(String bundle, Path root) {

    /** Folder of the generated sources, in a bundle. */
    static final String SOURCES = "src-gen";

    /** The generated sources. */
    public Path sources() {
        return root.resolve(SOURCES);
    }

    /** Replaces the sources of the real bundle; nothing else of it is touched. */
    public void install(Path bundles) throws IOException {
        Path target = bundles.resolve(bundle).resolve(SOURCES);
        Trees.delete(target);
        Trees.copy(sources(), target);
    }
}
