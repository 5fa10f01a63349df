package org.flexwright.core;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/**
 * A sentence as key and arguments; the words stand in {@code messages.properties} in the owner's package.
 *
 * @param owner class in whose package the words stand
 * @param key   key of the sentence
 * @param args  arguments, numbers already formatted with their unit
 */
public record Message(Class<?> owner, String key, List<String> args) {

    public Message {
        Objects.requireNonNull(owner, "owner");
        Objects.requireNonNull(key, "key");
        args = List.copyOf(args);
    }

    /** A sentence with arguments; each argument is turned to text by {@code String.valueOf}. */
    public static Message of(Class<?> owner, String key, Object... args) {
        return new Message(owner, key, java.util.Arrays.stream(args).map(String::valueOf).toList());
    }

    /** The sentence in the language of this run. Throws MissingResourceException when the key has no words: a defect of the plugin. */
    public String text() {
        ResourceBundle words = ResourceBundle.getBundle(owner.getPackageName() + ".messages", Locale.getDefault(), owner.getClassLoader());
        return new MessageFormat(words.getString(key), Locale.ROOT).format(args.toArray());
    }
}
