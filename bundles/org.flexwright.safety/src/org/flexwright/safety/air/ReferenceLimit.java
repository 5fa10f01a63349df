package org.flexwright.safety.air;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Source;

/**
 * A published figure for a substance in air, for someone who looks for the one to enter. Most are from 1971; newer and local ones may be
 * far lower, and sensitised people react below any of them.
 *
 * @param substance what
 * @param kind      whose figure and over which time
 * @param value     in the unit
 * @param unit      ppm or mg/m3
 * @param source    where it stands
 */
public record ReferenceLimit(Substance substance, Kind kind, double value, String unit, Source source) {

    /** Substances listed. */
    public enum Substance {
        ISOPROPANOL, ETHANOL, ACETONE, MDI, TDI, HDI, TOLUENE, XYLENES, STYRENE, CARBON_BLACK, AMORPHOUS_SILICA, CRYSTALLINE_SILICA, TITANIUM_DIOXIDE, OTHER_DUST, OZONE,
        CARBON_DIOXIDE
    }

    /** Whose figure and over which time. */
    public enum Kind {
        OSHA_8_HOURS, OSHA_CEILING, NIOSH_10_HOURS, NIOSH_15_MINUTES, NIOSH_CEILING, IDLH
    }

    private static final Source OSHA = Source.published("29 CFR 1910.1000, Tables Z-1 and Z-2, mostly from 1971");
    private static final Source NIOSH = Source.published("NIOSH Pocket Guide, DHHS (NIOSH) 2005-149");
    private static final Source IDLH_SHEETS = Source.published("NIOSH IDLH sheets, May 1994");
    private static final List<ReferenceLimit> ALL = build();

    /** All figures of a substance. */
    public static List<ReferenceLimit> of(Substance substance) {
        return ALL.stream().filter(l -> l.substance == substance).toList();
    }

    private static List<ReferenceLimit> build() {
        List<ReferenceLimit> all = new ArrayList<>();
        vapour(all, Substance.ISOPROPANOL, 400, 400, 500, 2000);
        vapour(all, Substance.ETHANOL, 1000, 1000, Double.NaN, 3300);
        vapour(all, Substance.ACETONE, 1000, 250, Double.NaN, 2500);
        vapour(all, Substance.TOLUENE, 200, 100, 150, 500);
        all.add(new ReferenceLimit(Substance.TOLUENE, Kind.OSHA_CEILING, 300, "ppm", OSHA));
        vapour(all, Substance.XYLENES, 100, 100, 150, 900);
        vapour(all, Substance.STYRENE, 100, 50, 100, 700);
        all.add(new ReferenceLimit(Substance.STYRENE, Kind.OSHA_CEILING, 200, "ppm", OSHA));
        all.add(new ReferenceLimit(Substance.MDI, Kind.OSHA_CEILING, 0.02, "ppm", OSHA));
        all.add(new ReferenceLimit(Substance.MDI, Kind.NIOSH_10_HOURS, 0.005, "ppm", NIOSH));
        all.add(new ReferenceLimit(Substance.MDI, Kind.NIOSH_CEILING, 0.020, "ppm", NIOSH));
        all.add(new ReferenceLimit(Substance.MDI, Kind.IDLH, 75, "mg/m3", IDLH_SHEETS));
        all.add(new ReferenceLimit(Substance.TDI, Kind.OSHA_CEILING, 0.02, "ppm", OSHA));
        all.add(new ReferenceLimit(Substance.TDI, Kind.IDLH, 2.5, "ppm", IDLH_SHEETS));
        all.add(new ReferenceLimit(Substance.HDI, Kind.NIOSH_10_HOURS, 0.005, "ppm", NIOSH));
        all.add(new ReferenceLimit(Substance.HDI, Kind.NIOSH_CEILING, 0.020, "ppm", NIOSH));
        dust(all, Substance.CARBON_BLACK, 3.5, 3.5, 1750);
        dust(all, Substance.AMORPHOUS_SILICA, Double.NaN, 6, 3000);
        all.add(new ReferenceLimit(Substance.CRYSTALLINE_SILICA, Kind.OSHA_8_HOURS, 0.05, "mg/m3", Source.published("29 CFR 1910.1053, 2016, respirable, secondary copies")));
        all.add(new ReferenceLimit(Substance.CRYSTALLINE_SILICA, Kind.NIOSH_10_HOURS, 0.05, "mg/m3", NIOSH));
        all.add(new ReferenceLimit(Substance.TITANIUM_DIOXIDE, Kind.OSHA_8_HOURS, 15, "mg/m3", OSHA));
        all.add(new ReferenceLimit(Substance.TITANIUM_DIOXIDE, Kind.NIOSH_10_HOURS, 2.4, "mg/m3", Source.published("NIOSH CIB 63, 2011, fine; ultrafine 0.3")));
        all.add(new ReferenceLimit(Substance.TITANIUM_DIOXIDE, Kind.IDLH, 5000, "mg/m3", IDLH_SHEETS));
        all.add(new ReferenceLimit(Substance.OTHER_DUST, Kind.OSHA_8_HOURS, 5, "mg/m3", Source.published("29 CFR 1910.1000, respirable; total 15")));
        all.add(new ReferenceLimit(Substance.OZONE, Kind.OSHA_8_HOURS, 0.1, "ppm", OSHA));
        all.add(new ReferenceLimit(Substance.OZONE, Kind.NIOSH_CEILING, 0.1, "ppm", NIOSH));
        all.add(new ReferenceLimit(Substance.OZONE, Kind.IDLH, 5, "ppm", IDLH_SHEETS));
        vapour(all, Substance.CARBON_DIOXIDE, 5000, 5000, 30_000, 40_000);
        return List.copyOf(all);
    }

    private static void vapour(List<ReferenceLimit> all, Substance substance, double osha, double niosh, double shortTerm, double idlh) {
        add(all, substance, Kind.OSHA_8_HOURS, osha, "ppm", OSHA);
        add(all, substance, Kind.NIOSH_10_HOURS, niosh, "ppm", NIOSH);
        add(all, substance, Kind.NIOSH_15_MINUTES, shortTerm, "ppm", NIOSH);
        add(all, substance, Kind.IDLH, idlh, "ppm", IDLH_SHEETS);
    }

    private static void dust(List<ReferenceLimit> all, Substance substance, double osha, double niosh, double idlh) {
        add(all, substance, Kind.OSHA_8_HOURS, osha, "mg/m3", OSHA);
        add(all, substance, Kind.NIOSH_10_HOURS, niosh, "mg/m3", NIOSH);
        add(all, substance, Kind.IDLH, idlh, "mg/m3", IDLH_SHEETS);
    }

    private static void add(List<ReferenceLimit> all, Substance substance, Kind kind, double value, String unit, Source source) {
        if (!Double.isNaN(value)) {
            all.add(new ReferenceLimit(substance, kind, value, unit, source));
        }
    }
}
