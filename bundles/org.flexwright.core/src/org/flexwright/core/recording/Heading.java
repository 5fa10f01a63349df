package org.flexwright.core.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.model.ChannelRole;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Units;

/**
 * The heading of one column as instruments write it.
 *
 * @param text as it stands in the file; may be empty
 * @param name without its unit
 * @param said the unit it says; null when it says none
 */
record Heading(String text, String name, String said) {
    private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*[\\[(<{]\\s*([^\\[\\](){}<>]*)\\s*[\\])>}]\\s*");
    private static final Pattern BEHIND = Pattern.compile("(.+?)(?:\\s*/\\s*|\\s+in\\s+|\\s*,\\s*|\\s+|_)([^\\s,_]+(?:/\\S+)?)");
    private static final Map<ChannelRole, Pattern> WORDS = Map.ofEntries(
            word(ChannelRole.TIME, "t|time|zeit|temps|tiempo|seconds|elapsed.*|.*\\btime|.*zeit|timestamp"),
            word(ChannelRole.FORCE, "f|force|load|kraft|fuerza|charge|.*\\bforce|.*\\bload|.*kraft|f_?n"),
            word(ChannelRole.TRAVEL, "x|s|z|travel|displacement|extension|position|stroke|crosshead.*|distance|elongation|deflection|depth|weg|.*weg|verschiebung|d.placement|.*\\bdisplacement|.*\\bextension|.*\\bposition|.*\\btravel"),
            word(ChannelRole.STRAIN, "e|eps|epsilon|strain|dehnung|.*\\bstrain|\u03b5"),
            word(ChannelRole.STRESS, "sigma|stress|spannung|.*\\bstress|\u03c3"),
            word(ChannelRole.STRETCH, "lambda|stretch|stretch ratio|\u03bb"),
            word(ChannelRole.TEMPERATURE, "temp|temperature|temperatur|.*\\btemperature"),
            word(ChannelRole.MASS, "m|mass|weight|masse|gewicht"),
            word(ChannelRole.HEIGHT, "h|y|height|h.he|hoehe|px|pixels?.*|.*\\bpixels?|.*\\bpx|.*\\bheight"),
            word(ChannelRole.FRAME, "frame|frames|picture|image|bild|frame n(o|r)\\.?"));

    private static Map.Entry<ChannelRole, Pattern> word(ChannelRole role, String pattern) {
        return Map.entry(role, Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }

    /** The headings of a table from the lines above its figures; empty ones when there are none. */
    static List<Heading> of(List<String> lines, TableFormat format, int width) {
        List<List<String>> above = new ArrayList<>();
        for (int i = Math.min(format.skipLines(), lines.size()) - 1; i >= 0 && above.size() < 2; i--) {
            String bare = lines.get(i).strip().replaceFirst("^(#+|%+|//)\\s*", "");
            if (!bare.isEmpty()) {
                above.add(TableGuess.cells(bare, format));
            }
        }
        List<String> nearest = row(above, 0, width);
        List<String> further = row(above, 1, width);
        boolean units = nearest != null && further != null && nearest.stream().allMatch(Heading::isUnitCell) && nearest.stream().anyMatch(c -> !c.isEmpty());
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            if (units) {
                String unit = bare(nearest.get(i));
                headings.add(new Heading((further.get(i) + " " + nearest.get(i)).strip(), further.get(i), unit.isEmpty() ? null : unit));
            } else {
                headings.add(one(nearest == null ? "" : nearest.get(i)));
            }
        }
        return headings;
    }

    private static List<String> row(List<List<String>> above, int place, int width) {
        if (place >= above.size() || above.get(place).size() < width) {
            return null;
        }
        return above.get(place);
    }

    private static boolean isUnitCell(String cell) {
        String bare = bare(cell);
        return bare.isEmpty() || bare.equals("-") || isUnit(bare);
    }

    private static String bare(String cell) {
        return cell.replaceAll("^[\\[(<{]\\s*|\\s*[\\])>}]$", "").strip();
    }

    private static boolean isUnit(String text) {
        return !Units.kindsWith(text).isEmpty();
    }

    /** One heading, with its unit taken off where it says one. */
    static Heading one(String text) {
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches() && (isUnit(brackets.group(2)) || brackets.group(2).equals("-"))) {
            return new Heading(text, brackets.group(1), brackets.group(2));
        }
        Matcher behind = BEHIND.matcher(text);
        if (behind.matches() && isUnit(behind.group(2))) {
            return new Heading(text, behind.group(1), behind.group(2));
        }
        return new Heading(text, text, null);
    }

    /** The wish this column fits by its words, or by a unit that only one wish has; null when none or when it is taken. */
    ChannelWish wish(List<ChannelWish> wishes, Set<ChannelRole> taken) {
        List<ChannelWish> free = wishes.stream().filter(w -> !taken.contains(w.role())).toList();
        List<ChannelWish> fitting = free.stream().filter(w -> said == null || fits(w)).toList();
        String plain = name.strip().toLowerCase(Locale.ROOT);
        for (ChannelWish wish : fitting) {
            Pattern words = WORDS.get(wish.role());
            if (words != null && words.matcher(plain).matches()) {
                return wish;
            }
        }
        if (said == null || said.equals("-")) {
            return null;
        }
        List<ChannelWish> byUnit = wishes.stream().filter(this::fits).toList();
        return byUnit.size() == 1 && fitting.contains(byUnit.get(0)) ? byUnit.get(0) : null;
    }

    private boolean fits(ChannelWish wish) {
        return said.equals("-") ? wish.kind() == QuantityKind.NUMBER || wish.kind() == QuantityKind.FRACTION : Units.find(wish.kind(), said).isPresent();
    }

    /** The unit of this column for a wish; null when it has to be asked. */
    String unit(ChannelWish wish) {
        if (wish == null) {
            return said;
        }
        if (wish.kind() == QuantityKind.NUMBER || wish.kind() == QuantityKind.COUNT) {
            return "";
        }
        if ("-".equals(said)) {
            return wish.kind() == QuantityKind.FRACTION ? "fraction" : null;
        }
        return said;
    }
}
