package org.flexwright.core.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/** Short codes people write on labels. */
public final class Codes {
    private Codes() {
    }

    /** The first free of prefix1, prefix2..., numbers padded to that many digits. */
    public static String next(String prefix, int digits, List<String> taken) {
        // asked for each new trial of a project with thousands
        Set<String> known = new HashSet<>();
        taken.stream().filter(Objects::nonNull).forEach(code -> known.add(code.toLowerCase(Locale.ROOT)));
        for (int n = 1;; n++) {
            String number = String.valueOf(n);
            String code = prefix + "0".repeat(Math.max(0, digits - number.length())) + number;
            if (!known.contains(code.toLowerCase(Locale.ROOT))) {
                return code;
            }
        }
    }

    /** The code itself when it is free. The refusal's arguments are those given, with the code put in before the last. */
    static String free(String code, List<String> taken, String key, String... args) {
        if (code.isBlank()) {
            throw PlanException.of("code.empty");
        }
        if (taken.stream().anyMatch(code::equalsIgnoreCase)) {
            List<Object> all = new ArrayList<>(List.of(args));
            all.add(all.size() - 1, code);
            throw PlanException.of(key, all.toArray());
        }
        return code;
    }
}
