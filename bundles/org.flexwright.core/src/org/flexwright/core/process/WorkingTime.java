package org.flexwright.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityKind;

/**
 * How long a mixture can be worked, counted from first contact, with what that means: without what ends it, the amount in the cup and the
 * temperature it cannot be compared with another one.
 *
 * @param minutes          min, with its source
 * @param ends             what ends it, in words: "the viscosity has doubled"; empty when nobody said
 * @param factor           times the viscosity has grown by then, above 1; null when it ends otherwise or nobody said
 * @param mass             g in the cup it holds for; null when nobody said
 * @param celsius          degC it holds for; null when nobody said
 * @param activationEnergy own value in kJ/mol; null where the usual band is taken
 * @param stated           the one this was carried from; null when this is what was stated
 */
public record WorkingTime(Estimate minutes, String ends, Double factor, Double mass, Double celsius, Double activationEnergy, WorkingTime stated) {

    /** So many times what the filling needs should be left of a working time when filling begins; common practice, no source. */
    public static final double RESERVE = 1.3;
    /** Usual band of urethanes, kJ/mol; common practice, no source. */
    private static final double[] ENERGIES = { 35, 50, 75 };
    /** K by the end of the working time if no heat got away; a soft silicone below, a rigid urethane above; common practice, no source. */
    private static final double[] WARMINGS = { 2, 8, 20 };

    public WorkingTime {
        Objects.requireNonNull(minutes, "minutes");
        Objects.requireNonNull(ends, "ends");
        if (!(minutes.low() > 0) || mass != null && !(mass > 0) || factor != null && !(factor > 1)) {
            throw new IllegalArgumentException("A working time and its mass are above 0 and its factor above 1; got " + minutes + ", " + mass + ", " + factor + ".");
        }
    }

    /** As a sheet or an own trial states it. */
    public static WorkingTime stated(Estimate minutes, String ends, Double factor, Double mass, Double celsius, Double activationEnergy) {
        return new WorkingTime(minutes, ends, factor, mass, celsius, activationEnergy, null);
    }

    /** Where the number comes from. */
    public Source source() {
        return minutes.source();
    }

    /** True when this is not what was stated but what it comes to elsewhere. */
    public boolean isCarried() {
        return stated != null;
    }

    /** What it comes to in another cup and at another temperature; where one is null or was not stated, nothing is carried for it. */
    public WorkingTime at(Double toMass, Double toCelsius) {
        WorkingTime from = stated == null ? this : stated;
        boolean cooled = from.celsius != null && toCelsius != null && !from.celsius.equals(toCelsius);
        boolean grown = from.mass != null && toMass != null && toMass > 0 && !from.mass.equals(toMass);
        return cooled || grown ? from.carried(grown ? toMass : from.mass, cooled ? toCelsius : from.celsius, grown, cooled) : from;
    }

    private WorkingTime carried(Double toMass, Double toCelsius, boolean grown, boolean cooled) {
        double[] energies = activationEnergy == null ? ENERGIES : new double[] { activationEnergy, activationEnergy, activationEnergy };
        double likely = carried(minutes.likely(), toMass, toCelsius, energies[1], WARMINGS[1]);
        double low = likely;
        double high = likely;
        for (double energy : energies) {
            for (double warming : new double[] { WARMINGS[0], WARMINGS[2] }) { // a warmer cup is shorter, so the likely one lies between
                double least = carried(minutes.low(), toMass, toCelsius, energy, warming);
                low = Math.min(low, least);
                high = Math.max(high, minutes.high() == minutes.low() ? least : carried(minutes.high(), toMass, toCelsius, energy, warming));
            }
        }
        return new WorkingTime(new Estimate(low, likely, high, carriedSource(grown, cooled)), ends, factor, toMass, toCelsius, activationEnergy, this);
    }

    /** One number carried with one activation energy and one warming; carried back with the same it is the number again. */
    double carried(double time, Double toMass, Double toCelsius, double energy, double warming) {
        double from = celsius == null ? CupClock.COMPARED_AT : celsius;
        double compared = time * CupClock.temperatureFactor(energy, from, CupClock.COMPARED_AT);
        double factor = mass == null ? 1 : CupClock.massFactor(compared, mass, toMass, energy, warming);
        return time * factor * (celsius == null ? 1 : CupClock.temperatureFactor(energy, celsius, toCelsius));
    }

    private Source carriedSource(boolean grown, boolean cooled) {
        List<String> by = new ArrayList<>();
        if (cooled) {
            by.add(activationEnergy == null ? words("by.usual-energy") : words("by.own-energy", Figures.of(activationEnergy, "kJ/mol")));
        }
        if (grown) {
            by.add(words("by.mass"));
        }
        return Source.commonPractice(words("carried", FieldText.number(minutes.likely(), QuantityKind.DURATION, "min"), conditions(), source().display(),
                String.join("; ", by)));
    }

    /** The amount and the temperature it holds for, as far as they were said: {@code 200 g at 23 °C}. */
    public String conditions() {
        if (mass == null && celsius == null) {
            return words("conditions.none");
        }
        String grams = mass == null ? words("conditions.mass") : Figures.of(mass, "g");
        return celsius == null ? grams : words("conditions.both", grams, Figures.of(celsius, "\u00b0C"));
    }

    /** The band with its unit: {@code 15 min}, {@code 15.4 (14.2 … 16.9) min}. */
    public String text() {
        return FieldText.band(minutes.low(), minutes.likely(), minutes.high(), QuantityKind.DURATION, "min");
    }

    private static String words(String key, Object... args) {
        return Message.of(WorkingTime.class, "working-time." + key, args).text();
    }
}
