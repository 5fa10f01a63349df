package org.flexwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/**
 * What the checks need of a MANIFEST.MF.
 *
 * @param name     symbolic name
 * @param host     symbolic name of the host of a fragment, empty for a bundle
 * @param requires symbolic names in Require-Bundle
 * @param imports  package names in Import-Package and DynamicImport-Package
 * @param exports  package names in Export-Package
 */
public record BundleManifest(String name, String host, List<String> requires, List<String> imports,
        List<String> exports) {

    /** Path of the manifest in the folder of a bundle. */
    public static final String PATH = "META-INF/MANIFEST.MF";

    /** Reads the manifests of all bundles in a folder, sorted by folder name. */
    public static List<BundleManifest> readAll(Path bundles) throws IOException {
        List<BundleManifest> found = new ArrayList<>();
        try (Stream<Path> list = Files.list(bundles)) {
            for (Path manifest : list.sorted().map(bundle -> bundle.resolve(PATH)).filter(Files::exists).toList()) {
                found.add(read(manifest));
            }
        }
        return found;
    }

    /** Reads one manifest. */
    public static BundleManifest read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            Attributes main = new Manifest(in).getMainAttributes();
            List<String> imports = new ArrayList<>(names(main.getValue("Import-Package")));
            imports.addAll(names(main.getValue("DynamicImport-Package")));
            return new BundleManifest(first(main, "Bundle-SymbolicName"), first(main, "Fragment-Host"),
                    names(main.getValue("Require-Bundle")), imports, names(main.getValue("Export-Package")));
        }
    }

    private static String first(Attributes main, String header) {
        List<String> names = names(main.getValue(header));
        return names.isEmpty() ? "" : names.get(0);
    }

    /** The names of a header, without attributes and directives; a clause may hold several names. */
    static List<String> names(String header) {
        if (header == null) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        for (String clause : header.replaceAll("\"[^\"]*\"", "").split(",")) {
            for (String part : clause.split(";")) {
                if (!part.contains("=") && !part.isBlank()) {
                    names.add(part.strip());
                }
            }
        }
        return names;
    }
}
