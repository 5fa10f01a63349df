package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Forms of rubber laws that can be fitted. */
public enum RubberForm {
    /** W = C10 (I1 - 3). */
    NEO_HOOKE("Neo-Hooke", 0),
    /** W = C10 (I1 - 3) + C01 (I2 - 3). */
    MOONEY_RIVLIN("Mooney-Rivlin", 0),
    /** W = C10 (I1 - 3) + C20 (I1 - 3)^2 + C30 (I1 - 3)^3. */
    YEOH("Yeoh", 0),
    /** One term mu, alpha. */
    OGDEN_1("Ogden, 1 term", 1),
    /** Two terms. */
    OGDEN_2("Ogden, 2 terms", 2),
    /** Three terms. */
    OGDEN_3("Ogden, 3 terms", 3);

    private final String title;
    private final int terms;

    RubberForm(String title, int terms) {
        this.title = title;
        this.terms = terms;
    }

    /** As it stands in files and on the command line: {@code neo-hooke}, {@code ogden-3}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one meant by its id or title, in any case; empty for another word and for null. */
    public static Optional<RubberForm> find(String typed) {
        return typed == null ? Optional.empty() : Stream.of(values()).filter(one -> one.id().equalsIgnoreCase(typed.strip()) || one.title().equalsIgnoreCase(typed.strip())).findFirst();
    }

    /** All ids, for sentences. */
    public static String ids() {
        return Stream.of(values()).map(RubberForm::id).collect(Collectors.joining(", "));
    }

    /** For people. */
    public String title() {
        return title;
    }

    /** How many coefficients are fitted. */
    public int coefficients() {
        return terms > 0 ? 2 * terms : units().size();
    }

    /** Terms of an Ogden law; 0 for the others. */
    int terms() {
        return terms;
    }

    /** The laws with one coefficient of 1 and the others 0: the stress is a sum of theirs. Empty for Ogden laws. */
    List<PolynomialLaw> units() {
        PolynomialLaw first = PolynomialLaw.neoHooke(1);
        return switch (this) {
            case NEO_HOOKE -> List.of(first);
            case MOONEY_RIVLIN -> List.of(first, new PolynomialLaw(0, 1, 0, 0));
            case YEOH -> List.of(first, new PolynomialLaw(0, 0, 1, 0), new PolynomialLaw(0, 0, 0, 1));
            default -> List.of();
        };
    }

    /** The law with such coefficients, in the order of {@link #names}. */
    RubberLaw law(double[] c) {
        return switch (this) {
            case NEO_HOOKE -> PolynomialLaw.neoHooke(c[0]);
            case MOONEY_RIVLIN -> PolynomialLaw.mooneyRivlin(c[0], c[1]);
            case YEOH -> PolynomialLaw.yeoh(c[0], c[1], c[2]);
            default -> {
                List<OgdenLaw.Term> all = new ArrayList<>();
                for (int i = 0; i < terms; i++) {
                    all.add(new OgdenLaw.Term(c[2 * i], c[2 * i + 1]));
                }
                yield new OgdenLaw(all);
            }
        };
    }

    /** Names of the coefficients; moduli in MPa, exponents without unit. */
    List<String> names() {
        return switch (this) {
            case NEO_HOOKE -> List.of("C10");
            case MOONEY_RIVLIN -> List.of("C10", "C01");
            case YEOH -> List.of("C10", "C20", "C30");
            default -> {
                List<String> all = new ArrayList<>();
                for (int i = 1; i <= terms; i++) {
                    all.add("mu" + i);
                    all.add("alpha" + i);
                }
                yield all;
            }
        };
    }
}
