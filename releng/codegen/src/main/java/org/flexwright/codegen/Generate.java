package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the EMF code of every bundle with a {@code model/*.genmodel} anew. Arguments: the folders that hold the bundles. */
public final class Generate {

    private Generate() {
    }

    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException("Give the folders that hold the bundles.");
        }
        for (String folder : args) {
            if (!Files.isDirectory(Path.of(folder))) {
                throw new IllegalArgumentException(folder + " is not a folder that holds bundles.");
            }
            generate(Path.of(folder).toRealPath());
        }
    }

    private static void generate(Path bundles) throws IOException {
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
