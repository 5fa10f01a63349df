package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the EMF code of every bundle with a {@code model/*.genmodel} anew. Argument: the folder of the bundles. */
public final class Generate {

    private Generate() {
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 1 || !Files.isDirectory(Path.of(args[0]))) {
            throw new IllegalArgumentException("Give one argument: the folder that holds the bundles.");
        }
        Path bundles = Path.of(args[0]).toRealPath();
        Path scratch = Files.createTempDirectory("flexwright-codegen");
        try {
            List<ModelCode> generated = new ModelGenerator(bundles).generate(scratch);
            for (ModelCode code : generated) {
                code.install(bundles);
                System.out.println(code.bundle() + ": " + Trees.files(code.sources()).size() + " files");
            }
        } finally {
            Trees.delete(scratch);
        }
    }
}
