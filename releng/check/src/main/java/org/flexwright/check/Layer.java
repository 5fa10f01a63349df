package org.flexwright.check;

import java.util.Set;

/** The layers, lowest first. A bundle may use bundles of lower layers only; {@link Layers} says which of them. */
enum Layer {
    /** Kinds of quantity and units; pure Java. */
    QUANTITY("quantity"),
    /** Statistics, fits, equations; pure Java and Hipparchus. */
    NUMERICS("numerics"),
    MODEL("model"),
    CORE("core"),
    /** Plugins dropped into a folder. */
    DROPINS("dropins"),
    /** Solids from files, shared by several capabilities. */
    MESH("mesh"),
    /** Never use each other. */
    CAPABILITY("materials", "mixing", "curing", "testing", "safety", "moulding", "vatprint", "filament", "balance", "shapes",
            "trials"),
    /** Reads the capabilities through the registries of core. */
    READER("report", "example"),
    CLI("cli"),
    WORKBENCH("workbench"),
    /** Screens of one capability or reader. */
    UI,
    /** Helpers of tests, never shipped. */
    TESTSUPPORT("testsupport");

    private static final String PREFIX = "org.flexwright.";
    private static final String UI_SUFFIX = ".ui";
    private final Set<String> members;

    Layer(String... members) {
        this.members = Set.of(members);
    }

    /** The layer of a bundle, or null where the table has none for it. */
    static Layer of(String bundle) {
        if (!bundle.startsWith(PREFIX)) {
            return null;
        }
        if (bundle.endsWith(UI_SUFFIX)) {
            return of(bundle.substring(0, bundle.length() - UI_SUFFIX.length())) == null ? null : UI;
        }
        String name = bundle.substring(PREFIX.length());
        for (Layer layer : values()) {
            if (layer.members.contains(name)) {
                return layer;
            }
        }
        return null;
    }

    /** The bundle that a bundle of screens belongs to. */
    static String ownerOf(String uiBundle) {
        return uiBundle.substring(0, uiBundle.length() - UI_SUFFIX.length());
    }

    /** Whether bundles of this layer may reach SWT, JFace or the workbench. */
    boolean hasScreens() {
        return this == WORKBENCH || this == UI;
    }
}
