package org.flexwright.workbench.bench;

/**
 * What was tapped on the number pad or typed by a keyboard, or by a balance that types like one: characters in their order, none lost, until they are
 * taken. What they mean is decided when they are taken.
 */
final class Typed {

    /** Longer than any reading; the rest is a device that does not stop. */
    static final int MOST = 24;

    private final StringBuilder typed = new StringBuilder();
    private boolean tooMuch;

    /** Adds a character. A comma or point is taken once by the pad; a keyboard may type what it likes, so that a wrong line is seen as it came. */
    void add(char c) {
        if (typed.length() >= MOST) {
            tooMuch = true;
        } else if (!Character.isISOControl(c)) {
            typed.append(c);
        }
    }

    /** Takes the last character away. */
    void back() {
        if (!typed.isEmpty()) {
            typed.setLength(typed.length() - 1);
        }
        tooMuch = false;
    }

    /** Takes everything away. */
    void clear() {
        typed.setLength(0);
        tooMuch = false;
    }

    /** Puts other text there. */
    void set(String text) {
        clear();
        text.chars().forEach(c -> add((char) c));
    }

    /** True when nothing is there. */
    boolean isEmpty() {
        return typed.toString().isBlank();
    }

    /** True when a point or comma is there. */
    boolean hasPoint() {
        return typed.indexOf(".") >= 0 || typed.indexOf(",") >= 0;
    }

    /** True when more came than a reading has; then nothing of it is to be trusted. */
    boolean tooMuch() {
        return tooMuch;
    }

    /** As it came, without blanks around it. */
    String text() {
        return typed.toString().strip();
    }
}
