package org.flexwright.core.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** Where tables are: a folder, a zip file or one file. */
interface TableSource extends Closeable {
    String ENDING = ".csv";

    /** Names of the tables, without .csv, sorted. */
    List<String> names();

    /** The bytes of one. */
    InputStream open(String name) throws IOException;

    /** Bytes of all of them together. */
    long size() throws IOException;

    /** Opens what is at that place. Throws {@link RefusedException} when there are no tables. */
    static TableSource of(Path path) throws IOException {
        Path place = path.toAbsolutePath().normalize();
        TableSource source = Files.isDirectory(place) ? folder(place)
                : place.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip") ? zip(place) : single(place);
        if (source.names().isEmpty()) {
            source.close();
            throw new RefusedException(Message.of(TableSource.class, "import.noTables", place));
        }
        return source;
    }

    private static TableSource folder(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(p -> p.getFileName().toString().endsWith(ENDING) && Files.isRegularFile(p)).sorted().toList();
        }
        return files(files, name -> folder.resolve(name + ENDING));
    }

    private static TableSource single(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new RefusedException(Message.of(TableSource.class, "import.noTables", file));
        }
        return files(List.of(file), name -> file);
    }

    private static String table(String fileName) {
        return fileName.toLowerCase(Locale.ROOT).endsWith(ENDING) ? fileName.substring(0, fileName.length() - ENDING.length()) : fileName;
    }

    private static TableSource files(List<Path> files, java.util.function.Function<String, Path> place) {
        List<String> names = files.stream().map(p -> table(p.getFileName().toString())).toList();
        return new TableSource() {
            @Override
            public List<String> names() {
                return names;
            }

            @Override
            public InputStream open(String name) throws IOException {
                return Files.newInputStream(place.apply(name));
            }

            @Override
            public long size() throws IOException {
                long sum = 0;
                for (Path p : files) {
                    sum += Files.size(p);
                }
                return sum;
            }

            @Override
            public void close() {
                // nothing is held open
            }
        };
    }

    private static TableSource zip(Path file) throws IOException {
        ZipGuard zip = ZipGuard.open(file);
        List<String> names = zip.names().stream().filter(n -> n.endsWith(ENDING) && n.indexOf('/') < 0).map(TableSource::table).sorted().toList();
        return new TableSource() {
            @Override
            public List<String> names() {
                return names;
            }

            @Override
            public InputStream open(String name) throws IOException {
                return zip.open(name + ENDING);
            }

            @Override
            public long size() {
                return zip.size();
            }

            @Override
            public void close() throws IOException {
                zip.close();
            }
        };
    }
}
