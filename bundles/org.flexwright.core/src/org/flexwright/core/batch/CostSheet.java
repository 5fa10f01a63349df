package org.flexwright.core.batch;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityKind;

/**
 * What parts cost. What is not known is not counted and is named: the sums are then lower bounds.
 *
 * @param shares  each with its origin
 * @param made    parts made or to be made
 * @param good    good parts, as a band; null when nothing tells how many are good: then every part made counts as good
 * @param missing what could not be counted, in words
 */
public record CostSheet(List<CostShare> shares, int made, Estimate good, List<String> missing) {
    public CostSheet {
        shares = List.copyOf(shares);
        missing = List.copyOf(missing);
    }

    /** True when everything was counted. */
    public boolean complete() {
        return missing.isEmpty();
    }

    /** The sum of what is known, EUR; null when nothing is. */
    public Estimate total() {
        List<Estimate> known = shares.stream().map(CostShare::eur).filter(Objects::nonNull).toList();
        return known.isEmpty() ? null : new Estimate(known.stream().mapToDouble(Estimate::low).sum(), known.stream().mapToDouble(Estimate::likely).sum(),
                known.stream().mapToDouble(Estimate::high).sum(), Source.derived(say("cost.sum")));
    }

    /** EUR a good part; null when nothing is known, or when perhaps none is good. */
    public Estimate perGoodPart() {
        Estimate total = total();
        Estimate parts = good == null ? Estimate.exact(made, Source.derived(say("cost.all"))) : good;
        return total == null || !(parts.low() > 0) ? null
                : new Estimate(total.low() / parts.high(), total.likely() / parts.likely(), total.high() / parts.low(), Source.derived(say("cost.perGood")));
    }

    /** EUR a good part in words: {@code 4.20 EUR}, {@code at least 3.10 EUR}, or that it is not known. */
    public String perGoodPartText() {
        Estimate each = perGoodPart();
        if (each == null) {
            return total() == null || made == 0 ? say("cost.unknown") : say("cost.perhapsNone", amount(total().low()));
        }
        return complete() ? money(each) : say("cost.atLeast", amount(each.low()));
    }

    /** An amount with its band, in EUR; cents where nothing is uncertain. */
    public static String money(Estimate eur) {
        return eur.high() > eur.low() ? FieldText.band(eur.low(), eur.likely(), eur.high(), QuantityKind.MONEY, "EUR") : amount(eur.likely());
    }

    private static String amount(double eur) {
        return FieldText.fixed(eur, 2) + " EUR";
    }

    private static String say(String key, Object... args) {
        return Message.of(CostSheet.class, key, args).text();
    }
}
