package org.flexwright.safety.air;

import java.util.OptionalDouble;

import org.flexwright.core.Source;

/**
 * A room taken as evenly mixed. Mixing that is worse than even enters as a factor k of 1 (ideal) to 10 (very poor): the air that
 * really cleans is Q/k. (Another convention puts a factor of at most 1 into the exponent only; see {@link #changesInExponent}.) The
 * air near the source is always worse than the room's mean.
 *
 * @param volume  m3
 * @param airflow clean air, m3/h; 0 when closed
 * @param mixing  k, 1 to 10
 */
public record Room(double volume, double airflow, double mixing) {
    /** Where model and mixing factor come from. */
    public static final Source SOURCE = Source.published("well-mixed room; mixing factor: CDC 1994, MMWR 43 (RR-13), Table S3-1");

    /** Clean air that counts, Q/k in m3/h. */
    public double effectiveAirflow() {
        return airflow / mixing;
    }

    /** Time constant V k / Q in h; infinite when closed. */
    public double timeConstant() {
        return volume / effectiveAirflow();
    }

    /** Volume share reached in the end from a source of {@code rate} m3/h of vapour; infinite when closed. */
    public double steady(double rate) {
        return rate / effectiveAirflow();
    }

    /** Volume share after {@code hours}, starting from {@code start}, clean air coming in. */
    public double after(double hours, double rate, double start) {
        if (airflow == 0) {
            return start + rate * hours / volume;
        }
        double steady = steady(rate);
        return steady + (start - steady) * Math.exp(-hours / timeConstant());
    }

    /** Hours until a rising share reaches {@code target}; empty when it never does. */
    public OptionalDouble hoursUpTo(double target, double rate, double start) {
        if (target <= start) {
            return OptionalDouble.of(0);
        }
        if (airflow == 0) {
            return rate > 0 ? OptionalDouble.of((target - start) * volume / rate) : OptionalDouble.empty();
        }
        double steady = steady(rate);
        return target < steady ? OptionalDouble.of(-timeConstant() * Math.log((steady - target) / (steady - start))) : OptionalDouble.empty();
    }

    /** Hours until a share that nothing feeds has fallen from {@code start} to {@code target}; empty when the room is closed. */
    public OptionalDouble hoursDownTo(double target, double start) {
        if (target >= start) {
            return OptionalDouble.of(0);
        }
        return airflow == 0 ? OptionalDouble.empty() : OptionalDouble.of(timeConstant() * Math.log(start / target));
    }

    /** Clean air in m3/h that keeps a source of {@code rate} m3/h at a share of {@code target}. */
    public static double requiredAirflow(double rate, double target, double mixing) {
        return mixing * rate / target;
    }

    /** Clean air in m3/h of a room whose content halves in {@code hours}. */
    public static double airflowOfHalfLife(double volume, double hours) {
        return volume * Math.log(2) / hours;
    }

    /** Minutes that remove a share of what is in the air, at evenly mixed air changes an hour. */
    public static double minutesToRemove(double share, double changesPerHour) {
        return -60 * Math.log1p(-share) / changesPerHour;
    }

    /**
     * Air changes from {@code start} to {@code target} under the convention with a factor of at most 1 inside the exponent only (US
     * Bureau of Reclamation 2006, HVAC guide, p. 106). With a factor of 1/k it agrees with the other convention as long as nothing
     * feeds the air.
     */
    public static double changesInExponent(double start, double target, double factor) {
        return Math.log(start / target) / factor;
    }
}
