package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the EMF code of bundles with a {@code model/*.genmodel} anew. Arguments: folders of bundles, or folders that hold bundles. */
public final class Generate {

    private Generate() {
    }

    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException("Give the folder of a bundle, or folders that hold bundles.");
        }
        for (String folder : args) {
            if (!Files.isDirectory(Path.of(folder))) {
                throw new IllegalArgumentException(folder + " is not the folder of a bundle, nor one that holds bundles.");
            }
            Path real = Path.of(folder).toRealPath();
            if (generate(real) == 0) {
                throw new IllegalArgumentException("There is no model/*.genmodel in " + folder + ", nor in a folder in it.");
            }
        }
    }

    /** Installs what was generated and gives how many bundles that were. */
    private static int generate(Path folder) throws IOException {
        boolean one = Files.isDirectory(folder.resolve("model"));
        Path bundles = one ? folder.getParent() : folder;
        Path scratch = Files.createTempDirectory("flexwright-codegen");
        int installed = 0;
        try {
            for (ModelCode code : new ModelGenerator(bundles).generate(scratch)) {
                if (!one || bundles.resolve(code.bundle()).equals(folder)) {
                    code.install(bundles);
                    installed++;
                    System.out.println(code.bundle() + ": " + Trees.files(code.sources()).size() + " files");
                }
            }
        } finally {
            Trees.delete(scratch);
        }
        return installed;
    }
}
