package org.flexwright.workbench.pages.common;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A choice among things of the project. The first line may stand for none of them.
 *
 * @param <T> what is chosen
 */
public final class PickBox<T> {

    private final Combo combo;
    private final Function<T, String> words;
    private final String none;
    private final List<T> things = new ArrayList<>();

    /**
     * An empty choice.
     *
     * @param name  name of the field
     * @param none  words for no choice; null when something must be chosen
     * @param words words of a thing
     */
    public PickBox(Composite parent, Kit kit, String name, String none, Function<T, String> words) {
        this.words = words;
        this.none = none;
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setVisibleItemCount(16);
        kit.dress(combo, null, null, Role.BODY);
        Kit.name(combo, name);
    }

    /** The control. */
    public Combo control() {
        return combo;
    }

    /** Called with the thing, or null for none, when a person chooses. */
    public void whenChosen(Consumer<T> listener) {
        combo.addListener(SWT.Selection, event -> listener.accept(chosen()));
    }

    /** Offers things and shows one of them as chosen, or none. Nothing happens when it would look the same. */
    public void show(List<? extends T> offered, T chosen) {
        List<String> lines = new ArrayList<>();
        if (none != null) {
            lines.add(none);
        }
        offered.forEach(thing -> lines.add(words.apply(thing)));
        things.clear();
        things.addAll(offered);
        if (!lines.equals(List.of(combo.getItems()))) {
            combo.setItems(lines.toArray(String[]::new));
        }
        int at = things.indexOf(chosen) + (none == null ? 0 : 1);
        if (at != combo.getSelectionIndex()) {
            if (at < 0) {
                combo.deselectAll();
            } else {
                combo.select(at);
            }
        }
    }

    /** The chosen thing, or null. */
    public T chosen() {
        int at = combo.getSelectionIndex() - (none == null ? 0 : 1);
        return at < 0 || at >= things.size() ? null : things.get(at);
    }
}
