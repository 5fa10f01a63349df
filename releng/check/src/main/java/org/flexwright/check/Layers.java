package org.flexwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rules about who may use whom, checked on manifests alone. */
public final class Layers {

    private static final String OURS = "org.flexwright.";
    private static final List<String> SCREENS = List.of("org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui",
            "org.eclipse.e4.ui", "org.eclipse.swtchart");

    private final List<BundleManifest> bundles;
    private final Map<String, String> exporters = new HashMap<>();

    /** @param bundles all bundles and fragments of the repository */
    public Layers(List<BundleManifest> bundles) {
        this.bundles = List.copyOf(bundles);
        for (BundleManifest bundle : bundles) {
            for (String exported : bundle.exports()) {
                exporters.put(exported, bundle.name());
            }
        }
    }

    /** One sentence for each broken rule; empty where all hold. */
    public List<String> violations() {
        List<String> found = new ArrayList<>();
        for (BundleManifest bundle : bundles) {
            check(bundle, found);
        }
        return found;
    }

    private void check(BundleManifest bundle, List<String> found) {
        boolean fragment = !bundle.host().isEmpty();
        String owner = fragment ? bundle.host() : bundle.name();
        Layer layer = Layer.of(owner);
        if (layer == null) {
            found.add(bundle.name() + " is in no layer; give it a place in the table first.");
            return;
        }
        for (String used : usedOfOurs(bundle, found)) {
            if (!used.equals(owner) && !mayUse(owner, layer, used, fragment)) {
                found.add(bundle.name() + " uses " + used + ", which its layer does not allow.");
            }
        }
        for (String exported : bundle.exports()) {
            if (List.of(exported.split("\\.")).contains("internal")) {
                found.add(bundle.name() + " exports " + exported + ", which is internal.");
            }
        }
        checkThirdParties(bundle, layer, fragment, found);
    }

    private Set<String> usedOfOurs(BundleManifest bundle, List<String> found) {
        Set<String> used = new TreeSet<>();
        bundle.requires().stream().filter(name -> name.startsWith(OURS)).forEach(used::add);
        for (String imported : bundle.imports()) {
            if (imported.startsWith(OURS)) {
                String exporter = exporters.get(imported);
                if (exporter == null) {
                    found.add(bundle.name() + " imports " + imported + ", which no bundle exports.");
                } else {
                    used.add(exporter);
                }
            }
        }
        return used;
    }

    private static boolean mayUse(String owner, Layer layer, String used, boolean fragment) {
        Layer below = Layer.of(used);
        if (below == null) {
            return false;
        }
        if (below == Layer.TESTSUPPORT) {
            return fragment;
        }
        boolean shared = below.compareTo(Layer.CAPABILITY) < 0 && below.compareTo(layer) < 0;
        return shared || switch (layer) {
            // the readers' tests look at whole projects, so they may name capabilities; the readers may not
            case READER -> fragment && below == Layer.CAPABILITY;
            case CLI, WORKBENCH -> below == Layer.READER || fragment && below == Layer.CAPABILITY;
            case UI -> below == Layer.WORKBENCH || used.equals(Layer.ownerOf(owner));
            default -> false;
        };
    }

    private static void checkThirdParties(BundleManifest bundle, Layer layer, boolean fragment, List<String> found) {
        List<String> foreign = new ArrayList<>(bundle.requires());
        foreign.addAll(bundle.imports());
        foreign.removeIf(name -> name.startsWith(OURS));
        for (String name : foreign) {
            if (!layer.hasScreens() && SCREENS.stream().anyMatch(screen -> isOrIsBelow(name, screen))) {
                found.add(bundle.name() + " is headless and reaches " + name + ".");
            } else if (!fragment && layer == Layer.QUANTITY) {
                found.add(bundle.name() + " is pure Java and reaches " + name + ".");
            } else if (!fragment && layer == Layer.NUMERICS && !isOrIsBelow(name, "org.hipparchus")) {
                found.add(bundle.name() + " is pure Java and Hipparchus and reaches " + name + ".");
            }
        }
    }

    private static boolean isOrIsBelow(String name, String root) {
        return name.equals(root) || name.startsWith(root + ".");
    }
}
