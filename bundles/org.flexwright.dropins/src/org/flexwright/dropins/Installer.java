package org.flexwright.dropins;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.flexwright.core.Message;
import org.flexwright.core.registry.Failure;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.FrameworkWiring;

/** Brings the framework in line with the jars in the plugin folders, whatever state the last start left. */
final class Installer {

    /** The location of a bundle of ours is this, the file and its state: a changed file is another bundle. */
    private static final String LOCATION = "flexwright-plugin:";
    private static final Pattern UNRESOLVED = Pattern.compile("Unresolved requirement: ([A-Za-z-]+: [^;\\s]+)");

    private final BundleContext context;
    private final List<DropIn> loaded = new ArrayList<>();
    private final List<Failure> failures = new ArrayList<>();

    Installer(BundleContext context) {
        this.context = context;
    }

    /** Uninstalls plugins whose jar is gone or changed, installs what is new and starts all that are there. */
    void install(List<Path> folders) {
        Map<String, Path> wanted = new LinkedHashMap<>();
        for (Path folder : folders) {
            for (Path jar : jars(folder)) {
                wanted.put(location(jar), jar);
            }
        }
        uninstallOthers(wanted);
        Map<Bundle, Path> installed = new LinkedHashMap<>();
        wanted.forEach((location, jar) -> installOne(location, jar, installed));
        installed.forEach(this::start);
    }

    DropIns result() {
        return new Result(List.copyOf(loaded), List.copyOf(failures));
    }

    private List<Path> jars(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(file -> file.getFileName().toString().endsWith(".jar")).sorted().toList();
        } catch (IOException e) {
            fail(folder, "", "folder", e.getMessage());
            return List.of();
        }
    }

    private static String location(Path jar) {
        java.io.File file = jar.toFile();
        return LOCATION + jar + "#" + file.lastModified() + "-" + file.length();
    }

    private void uninstallOthers(Map<String, Path> wanted) {
        List<Bundle> gone = new ArrayList<>();
        for (Bundle bundle : context.getBundles()) {
            if (bundle.getLocation().startsWith(LOCATION) && !wanted.containsKey(bundle.getLocation())) {
                try {
                    bundle.uninstall();
                    gone.add(bundle);
                } catch (BundleException e) {
                    failures.add(new Failure(bundle.getLocation(), e.getMessage(), bundle.getSymbolicName()));
                }
            }
        }
        if (!gone.isEmpty()) {
            context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class).refreshBundles(gone);
        }
    }

    private void installOne(String location, Path jar, Map<Bundle, Path> installed) {
        Bundle bundle;
        try (InputStream in = Files.newInputStream(jar)) {
            bundle = context.installBundle(location, in);
        } catch (IOException | BundleException e) {
            fail(jar, "", "unreadable", e.getMessage());
            return;
        }
        String name = bundle.getSymbolicName();
        if (name == null) {
            refuse(bundle, jar, "", "noName");
            return;
        }
        for (Bundle other : context.getBundles()) {
            if (other != bundle && name.equals(other.getSymbolicName())) {
                refuse(bundle, jar, name, "duplicate", name, other.getVersion());
                return;
            }
        }
        installed.put(bundle, jar);
    }

    private void refuse(Bundle bundle, Path jar, String name, String key, Object... args) {
        try {
            bundle.uninstall();
        } catch (BundleException e) {
            fail(jar, name, "unreadable", e.getMessage());
        }
        fail(jar, name, key, args);
    }

    private void start(Bundle bundle, Path jar) {
        String name = bundle.getSymbolicName();
        try {
            if (bundle.getHeaders().get(Constants.FRAGMENT_HOST) != null) {
                FrameworkWiring wiring = context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class);
                if (!wiring.resolveBundles(List.of(bundle))) {
                    fail(jar, name, "noHost");
                    return;
                }
            } else {
                // transient: the next start looks at the folders before it starts anything
                bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY);
            }
            loaded.add(new DropIn(jar, name, bundle.getVersion().toString()));
        } catch (BundleException e) {
            String needs = unresolved(e.getMessage());
            if (needs.isEmpty()) {
                fail(jar, name, "notStarted", cause(e));
            } else {
                fail(jar, name, "needs", needs);
            }
        }
    }

    private static String unresolved(String message) {
        TreeSet<String> requirements = new TreeSet<>();
        for (Matcher matcher = UNRESOLVED.matcher(message == null ? "" : message); matcher.find();) {
            requirements.add(matcher.group(1));
        }
        return String.join(", ", requirements);
    }

    /** The innermost words that there are, on one line. */
    private static String cause(Throwable error) {
        String words = String.valueOf(error.getMessage());
        for (Throwable inner = error.getCause(); inner != null; inner = inner.getCause()) {
            words = inner.getMessage() == null ? inner.getClass().getSimpleName() : inner.getMessage();
        }
        return words.lines().findFirst().orElse(words);
    }

    private void fail(Path file, String plugin, String key, Object... args) {
        failures.add(new Failure(file.toString(), Message.of(Installer.class, key, args).text(), plugin));
    }

    private record Result(List<DropIn> loaded, List<Failure> now) implements DropIns {
    }
}
