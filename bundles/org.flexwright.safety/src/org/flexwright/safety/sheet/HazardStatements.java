package org.flexwright.safety.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.flexwright.core.Source;
import org.flexwright.safety.Say;

/** Hazard statements by their codes. The codes come from the product's own sheet: nothing here classifies a product. */
public final class HazardStatements {
    /** Where the words come from; the revision belongs to the record. */
    public static final Source SOURCE = Source.fromMemory("UN GHS Rev. 9 (2021), Annex 3, spot-checked; EUH statements: CLP");

    private static final Pattern CODE = Pattern.compile("EUH\\s*\\d{3}|H\\s*\\d{3}");
    private static final Set<String> KNOWN = Set.of("H222", "H225", "H226", "H229", "H280", "H302", "H304", "H312", "H314", "H315", "H317", "H318", "H319", "H330", "H331",
            "H332", "H334", "H335", "H336", "H341", "H350", "H351", "H360", "H361", "H372", "H373", "H400", "H410", "H411", "H412", "EUH204");

    private HazardStatements() {
    }

    /** The codes in what a person typed from a sheet, in order, without the letters that refine them: {@code H360FD} is H360. */
    public static Set<String> codes(Iterable<String> typed) {
        Set<String> codes = new LinkedHashSet<>();
        for (String text : typed) {
            Matcher matcher = CODE.matcher(text.toUpperCase(Locale.ROOT));
            while (matcher.find()) {
                codes.add(matcher.group().replaceAll("\\s", ""));
            }
        }
        return codes;
    }

    /** The words of a code; empty for a code whose words are not kept here. */
    public static Optional<String> words(String code) {
        return KNOWN.contains(code) ? Optional.of(Say.message("statement." + code).text()) : Optional.empty();
    }

    /** Codes with their words, separated by semicolons; a code without words stands alone. */
    public static String list(Iterable<String> codes) {
        return StreamSupport.stream(codes.spliterator(), false).map(c -> words(c).map(w -> c + " " + w).orElse(c)).collect(Collectors.joining("; "));
    }

    /** All codes with words. */
    public static List<String> known() {
        return KNOWN.stream().sorted().toList();
    }
}
