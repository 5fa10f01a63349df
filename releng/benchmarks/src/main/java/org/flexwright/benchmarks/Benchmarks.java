package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Map;

import javax.xml.parsers.ParserConfigurationException;

import org.flexwright.core.registry.Registries;
import org.xml.sax.SAXException;

/** Measures and prints. What is aimed at stands beside; nothing is judged, as a busy machine would be blamed on the program. */
public final class Benchmarks {

    /** The trials of the example's own, and those of a busy workshop's years. */
    private static final int[] TRIALS = {9, 300};
    private static final int STARTS = 7;
    private static final int CALLS = 9;
    private static final double WINDOW_AIM = 1.5;
    private static final double CALL_AIM_MS = 1000;
    private static final double TABLES_AIM_MS = 3000;
    private static final double FILE_AIM = 3;
    private static final double SCREEN_AIM_MS = 50;
    private static final double SEARCH_AIM_MS = 100;
    private static final double CURVE_AIM_MS = 3000;
    private static final double MEBIBYTE = 1 << 20;

    private final Installation product;
    private final Path dropins;
    private final Path work;
    private final Path big;
    private final Figures figures = new Figures(System.out);

    private Benchmarks(Path product, Path dropins, Path work) {
        this.product = new Installation(product, work.resolve("home"));
        this.dropins = dropins;
        this.work = work;
        this.big = work.resolve("large.flexwright");
    }

    /**
     * Runs all of them.
     *
     * @param arguments the folder of the product, the folder with the fixture's jar, and an empty folder to work in
     */
    public static void main(String[] arguments) throws IOException, InterruptedException, ParserConfigurationException, SAXException,
            ReflectiveOperationException {
        if (arguments.length != 3) {
            System.err.println("Give three folders: the product, the fixture's jar, and an empty one to work in; releng/bench does.");
            System.exit(2);
        }
        Path work = Path.of(arguments[2]).toAbsolutePath();
        new Benchmarks(Path.of(arguments[0]).toAbsolutePath(), Path.of(arguments[1]).toAbsolutePath(), work).run();
    }

    private void run() throws IOException, InterruptedException, ParserConfigurationException, SAXException, ReflectiveOperationException {
        Files.createDirectories(work);
        figures.head();
        Registries registries = Components.registries();
        for (int trials : TRIALS) {
            new Everyday(registries, work, trials).run(figures);
            new Taps(registries, work, trials).run(figures);
        }
        new Sounds(registries, work).run(figures);
        new RubberFits(work).run(figures);
        files(registries);
        tables();
        search(registries);
        longCurve();
        call();
        windows();
    }

    private void files(Registries registries) throws IOException, ParserConfigurationException, SAXException {
        BigProject project = new BigProject(registries);
        project.make(big, BigProject.TRIALS);
        OpenAndSave files = new OpenAndSave(project.store(), big);
        files.run();
        figures.line("a bare SAX parse of the large project's file", files.parse);
        figures.line("opening the large project", files.open, files.parse, FILE_AIM);
        figures.line("writing the same bytes, not waiting for the disk", files.write);
        figures.line("writing the same bytes until the disk has them", files.forced);
        figures.line("saving the large project", files.save, files.forced, FILE_AIM);
        figures.note(String.format(Locale.ROOT, "(large: %d trials, %d readings, a file of %.1f MiB, %.0f MiB of memory when open)",
                BigProject.TRIALS, BigProject.TRIALS * BigProject.READINGS_A_TRIAL, Files.size(big.resolve("project.xmi")) / MEBIBYTE,
                files.held() / MEBIBYTE));
    }

    private void tables() throws IOException {
        TablesOutAndIn tables = new TablesOutAndIn(Files.createDirectories(work.resolve("tables")));
        tables.run();
        figures.line("10 000 trials as tables, out and in again", tables.both, TABLES_AIM_MS);
        figures.line("the same, out alone", tables.out);
        figures.note(String.format(Locale.ROOT, "(%d rows in all tables)", tables.rows));
    }

    private void search(Registries registries) {
        BigProject project = new BigProject(registries);
        Path folder = work.resolve("search.flexwright");
        project.make(folder, Searching.TRIALS);
        Searching searching = new Searching(registries, project.store(), folder);
        searching.run();
        figures.line("a search of every sort in 10 000 trials", searching.find, SEARCH_AIM_MS);
        figures.line("the index after an edit of a trial", searching.follow, SCREEN_AIM_MS);
        figures.line("reading 10 000 trials into the index, in slices", searching.read);
        figures.note(String.format(Locale.ROOT, "(the index of %d trials holds %.0f MiB of memory)", Searching.TRIALS, searching.held() / MEBIBYTE));
    }

    private void longCurve() throws IOException, InterruptedException {
        Path folder = Files.createDirectories(work.resolve("curves"));
        Path file = folder.resolve("press.csv");
        LongCurve.write(file);
        List<String> own = Beside.java(LongCurve.class, "512m", file.toString(), folder.toString());
        String[] said = own.get(0).split(" ");
        Series other = new Series();
        Optional<List<String>> numpy = SciPy.run(work, "curve.py", file.toString());
        if (numpy.isPresent()) {
            String[] theirs = numpy.get().get(0).split(" ");
            figures.note(String.format(Locale.ROOT, "(a curve of %s rows: NumPy reads %s; sums of force differ by %.1e N, highest forces by %.1e N; highest drawn less highest read %.1e N)", said[0],
                    theirs[0], Math.abs(Double.parseDouble(said[1]) - Double.parseDouble(theirs[1])), Math.abs(Double.parseDouble(said[2]) - Double.parseDouble(theirs[2])), Math.abs(Double
                            .parseDouble(said[3]) - Double.parseDouble(said[2]))));
            other = Series.read(numpy.get().get(1));
            figures.line("NumPy: reading 2 000 000 rows, copy, checksum", other);
        }
        figures.line("2 000 000 rows taken in, 512 MiB of memory", Series.read(own.get(1)), CURVE_AIM_MS);
        figures.line("the same, read again with its checksum", Series.read(own.get(2)));
        figures.line("its peak, snap and strokes", Series.read(own.get(3)));
        figures.line("a stretch of it drawn anew", Series.read(own.get(4)), SCREEN_AIM_MS);
    }

    private void call() throws IOException, InterruptedException {
        Series call = new Series();
        product.run(Map.of(), "plugin", "list");
        for (int i = 0; i < CALLS; i++) {
            call.add(product.run(Map.of(), "plugin", "list"));
        }
        figures.line("one call: plugin list", call, CALL_AIM_MS);
    }

    private void windows() throws IOException, InterruptedException {
        Installation empty = product.emptied(work.resolve("empty"), work.resolve("empty-home"));
        WindowStarts starts = new WindowStarts(dropins, work);
        String[] open = {"--open", big.toString()};
        Series bare = new Series();
        Series own = new Series();
        Series large = new Series();
        // the first start makes the caches
        starts.painted(empty);
        starts.painted(product);
        for (int i = 0; i < STARTS; i++) {
            bare.add(starts.painted(empty));
            own.add(starts.painted(product));
        }
        starts.painted(product, open);
        for (int i = 0; i < STARTS; i++) {
            large.add(starts.painted(product, open));
        }
        figures.line("an empty window, second start until painted", bare);
        figures.line("the product's window, second start until painted", own, bare, WINDOW_AIM);
        figures.line("the same, opening the large project", large);
        figures.line("scrolling its trials in the tree by a page", starts.scroll(product, open), SCREEN_AIM_MS);
    }
}
