package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders: listing, copying, deleting. */
final class Trees {

    private Trees() {
    }

    /** The files below a folder, relative to it and sorted; empty where there is no folder. */
    static List<Path> files(Path root) throws IOException {
        if (Files.notExists(root)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(Files::isRegularFile).map(root::relativize).sorted().toList();
        }
    }

    static void copy(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            Path target = to.resolve(file.toString());
            Files.createDirectories(target.getParent());
            Files.copy(from.resolve(file.toString()), target);
        }
    }

    static void delete(Path root) throws IOException {
        if (Files.notExists(root)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> walk = Files.walk(root)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : all) {
            Files.delete(path);
        }
    }
}
