package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.registry.Registries;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The command line as a person has it, with the plugins of the whole product, in a folder of its own. */
final class Bench {
    private static final long WAIT = 20_000;
    private final Path folder;
    private final Registries registries;
    private Clock clock = Clock.fixed(Instant.parse("2026-05-20T12:00:00Z"), ZoneId.of("UTC"));
    final List<String> logged = new ArrayList<>();

    Bench(Path folder) throws InterruptedException {
        this.folder = folder;
        BundleContext bundles = FrameworkUtil.getBundle(Cli.class).getBundleContext();
        ServiceTracker<Registries, Registries> tracker = new ServiceTracker<>(bundles, Registries.class, null);
        tracker.open();
        registries = tracker.waitForService(WAIT);
        tracker.close();
    }

    record Run(int status, String out, String err) {
        JsonObject json() {
            return JsonParser.parseString(out).getAsJsonObject();
        }

        double likely(String result) {
            return json().getAsJsonObject("results").getAsJsonObject(result).get("likely").getAsDouble();
        }
    }

    Registries registries() {
        return registries;
    }

    void at(String moment) {
        clock = Clock.fixed(Instant.parse(moment), ZoneId.of("UTC"));
    }

    Cli cli(PrintWriter out, PrintWriter err) {
        return new Cli(services(), out, err);
    }

    private CliServices services() {
        return new CliServices(registries, clock, folder, "tester", "1.0.0.test", List.of(), (what, problem) -> {
            logged.add(what);
            return "the test's log";
        });
    }

    Run run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = cli(new PrintWriter(out), new PrintWriter(err)).run(List.of(args));
        return new Run(status, out.toString(), err.toString());
    }

    /** Runs while these lines are typed. */
    Run typing(String lines, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new Cli(services(), new BufferedReader(new StringReader(lines)), new PrintWriter(out), new PrintWriter(err)).run(List.of(args));
        return new Run(status, out.toString(), err.toString());
    }

    /** Runs and wants status 0. */
    Run ok(String... args) {
        Run run = run(args);
        assertEquals(0, run.status(), () -> String.join(" ", args) + "\n" + run.out() + run.err() + logged);
        return run;
    }
}
