package org.flexwright.workbench.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.osgi.service.prefs.BackingStoreException;

/** What a maker set, kept from run to run: size of text, theme, projects opened before. */
public final class Settings {

    /** Light or dark. */
    public enum Theme {
        /** As the system is. */
        SYSTEM,
        /** Dark text on white. */
        LIGHT,
        /** Light text on near black. */
        DARK
    }

    private static final String TEXT = "textPercent";
    private static final String THEME = "theme";
    private static final String RECENT = "recent";
    private static final String SOUND = "benchSound";
    private static final String ASKED = "asked";
    private static final String LOOKED = "looked";
    private static final int MOST_RECENT = 8;
    private static final int MOST_ASKED = 8;
    private static final int MOST_LOOKED = 30;

    private final IEclipsePreferences node;

    /** Settings kept in that node. */
    public Settings(IEclipsePreferences node) {
        this.node = node;
    }

    /** Size of text, per cent of the system's. */
    public int textPercent() {
        return node.getInt(TEXT, 100);
    }

    /** Sets the size of text. */
    public void setTextPercent(int percent) {
        node.putInt(TEXT, percent);
        keep();
    }

    /** The theme asked for. */
    public Theme theme() {
        try {
            return Theme.valueOf(node.get(THEME, Theme.SYSTEM.name()).toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            return Theme.SYSTEM; // a word from another version
        }
    }

    /** Sets the theme. */
    public void setTheme(Theme theme) {
        node.put(THEME, theme.name());
        keep();
    }

    /** True when the bench view makes sounds. */
    public boolean benchSound() {
        return node.getBoolean(SOUND, true);
    }

    /** Turns the sounds of the bench view on or off. */
    public void setBenchSound(boolean on) {
        node.putBoolean(SOUND, on);
        keep();
    }

    /** Folders of projects opened before, the last one first; some may be gone. */
    public List<Path> recent() {
        List<Path> folders = new ArrayList<>();
        for (String line : node.get(RECENT, "").split("\n")) {
            if (!line.isBlank()) {
                try {
                    folders.add(Path.of(line));
                } catch (InvalidPathException e) {
                    ILog.get().warn("A project opened before has no usable path: " + line);
                }
            }
        }
        return folders;
    }

    /** Puts a folder first among those opened before. */
    public void opened(Path folder) {
        List<Path> folders = recent();
        Path whole = folder.toAbsolutePath().normalize();
        folders.remove(whole);
        folders.add(0, whole);
        putRecent(folders);
    }

    /** Takes a folder from the list. */
    public void forget(Path folder) {
        List<Path> folders = recent();
        folders.remove(folder);
        putRecent(folders);
    }

    /** What was looked for before, the last first. */
    public List<String> asked() {
        return lines(ASKED);
    }

    /** Keeps what was looked for. */
    public void asked(String query) {
        if (!query.isBlank()) {
            putFirst(ASKED, query.strip().replace('\n', ' '), MOST_ASKED);
        }
    }

    /** Things opened before, of all projects, the last first; some may be gone. */
    public List<RecentThing> looked() {
        return lines(LOOKED).stream().map(line -> line.split("\t", 2)).filter(parts -> parts.length == 2).map(parts -> new RecentThing(parts[0], parts[1])).toList();
    }

    /** Keeps that a thing was opened. */
    public void looked(RecentThing thing) {
        putFirst(LOOKED, thing.project() + "\t" + thing.address(), MOST_LOOKED);
    }

    private List<String> lines(String key) {
        return node.get(key, "").lines().filter(line -> !line.isBlank()).toList();
    }

    private void putFirst(String key, String line, int most) {
        List<String> all = new ArrayList<>(lines(key));
        all.remove(line);
        all.add(0, line);
        node.put(key, String.join("\n", all.stream().limit(most).toList()));
        keep();
    }

    private void putRecent(List<Path> folders) {
        node.put(RECENT, String.join("\n", folders.stream().limit(MOST_RECENT).map(Path::toString).toList()));
        keep();
    }

    private void keep() {
        try {
            node.flush();
        } catch (BackingStoreException e) {
            ILog.get().warn("Settings could not be written; they last until the window is closed.", e);
        }
    }
}
