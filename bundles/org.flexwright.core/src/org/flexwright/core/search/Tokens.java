package org.flexwright.core.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The words of a search as typed, with those in quotes kept together. */
final class Tokens {
    /** One word. */
    record Token(String raw, boolean quoted) {
        String small() {
            return raw.toLowerCase(Locale.ROOT);
        }
    }

    private final List<Token> all = new ArrayList<>();

    Tokens(String typed) {
        String text = typed.replaceAll("[\\p{Cntrl}\\p{Z}]+", " ").replaceAll("\\p{Cf}+", "").replaceAll("[–—−]", "-").replace("≥", ">=").replace("≤", "<=").replace('“', '"').replace(
                '”', '"').strip();
        int at = 0;
        while (at < text.length()) {
            if (text.charAt(at) == ' ') {
                at++;
                continue;
            }
            int close = text.charAt(at) == '"' ? text.indexOf('"', at + 1) : -1;
            if (close > at + 1) {
                all.add(new Token(text.substring(at + 1, close), true));
                at = close + 1;
                continue;
            }
            int end = text.indexOf(' ', at);
            end = end < 0 ? text.length() : end;
            // note:"two words" stays together with what stands before it
            int colon = text.indexOf(":\"", at);
            if (colon >= 0 && colon < end && text.indexOf('"', colon + 2) > 0) {
                end = colon + 1;
            }
            String word = text.substring(at, end).replaceAll("[,;!?]+$", "").replaceAll("(?<=\\p{L}\\p{L})[.]$", "");
            if (!word.isEmpty()) {
                all.add(new Token(word, false));
            }
            at = end;
        }
    }

    int size() {
        return all.size();
    }

    Token at(int i) {
        return all.get(i);
    }

    /** The word there in small letters; empty behind the end and for what is in quotes. */
    String small(int i) {
        return i < 0 || i >= all.size() || all.get(i).quoted() ? "" : all.get(i).small();
    }

    /** The word there as typed; empty behind the end and for what is in quotes. */
    String raw(int i) {
        return i < 0 || i >= all.size() || all.get(i).quoted() ? "" : all.get(i).raw();
    }

    /** Some words as typed. */
    String between(int from, int to) {
        return String.join(" ", all.subList(from, Math.min(to, all.size())).stream().map(Token::raw).toList());
    }
}
