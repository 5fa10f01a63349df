package org.flexwright.workbench.bench;

/** Date and revision of a data sheet, typed with digits alone: year, month, day, then the revision. */
final class SheetText {

    private static final int YEAR = 4;
    private static final int MONTH = 6;
    private static final int DAY = 8;

    private SheetText() {
    }

    /** {@code 202601154} as {@code 2026-01-15 4}; anything that is not that long stays as it is, for the engine to refuse. */
    static String of(String typed) {
        String digits = typed.replaceAll("\\D", "");
        if (digits.length() <= DAY || typed.contains("-")) {
            return typed;
        }
        return digits.substring(0, YEAR) + "-" + digits.substring(YEAR, MONTH) + "-" + digits.substring(MONTH, DAY) + " " + digits.substring(DAY);
    }
}
