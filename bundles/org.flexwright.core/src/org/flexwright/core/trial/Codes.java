package org.flexwright.core.trial;

import java.util.ArrayList;
import java.util.List;

/** Short codes people write on labels. */
final class Codes {
    private Codes() {
    }

    /** The first free of prefix1, prefix2..., numbers padded to that many digits. */
    static String next(String prefix, int digits, List<String> taken) {
        for (int n = 1;; n++) {
            String code = prefix + String.format("%0" + digits + "d", n);
            if (taken.stream().noneMatch(code::equalsIgnoreCase)) {
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
