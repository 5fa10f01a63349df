package org.flexwright.mixing.formulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyService;
import org.flexwright.core.property.PropertySet;
import org.flexwright.mixing.MixingProperties;
import org.flexwright.mixing.formula.Formulation.Substance;
import org.flexwright.mixing.formula.Polyurethane;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.quantity.QuantityKind;

/**
 * What is known of a material where it is used: of the lot before the grade, own value before the sheet's. Water that is entered where it is
 * used wins over what the sheet says; a material that was dried is not taken to hold the water of its sheet.
 *
 * @param substance    what one gram brings along
 * @param figures      each value with its source
 * @param waterUnknown true when nobody says how much water it holds
 */
public record MaterialFigures(Substance substance, List<Figure> figures, boolean waterUnknown) {

    private static final PropertySet KNOWN = new MixingProperties();
    private static final PropertyDef NCO = find(MixingProperties.NCO_CONTENT);
    private static final PropertyDef HYDROXYL = find(MixingProperties.HYDROXYL_VALUE);
    private static final PropertyDef WATER = find(MixingProperties.WATER_CONTENT);
    /** The density belongs to the materials plugin; its id is what both share. */
    private static final PropertyDef DENSITY = new PropertyDef("materials.density", "Density", QuantityKind.DENSITY, false, Set.of(), "", Source.derived("Mass over volume"));
    private static final PropertyService NOTED = new PropertyService(List.of());

    public MaterialFigures {
        figures = List.copyOf(figures);
    }

    private static PropertyDef find(String id) {
        return KNOWN.properties().stream().filter(p -> id.equals(p.id())).findFirst().orElseThrow();
    }

    /** Of a material without a density of its own at hand. */
    public static MaterialFigures of(MaterialUse use) {
        return of(use, null);
    }

    /** Of a material whose density was entered at the weighing, or null. */
    public static MaterialFigures of(MaterialUse use, Double density) {
        List<Figure> figures = new ArrayList<>();
        Double nco = value(use, NCO, figures);
        Double hydroxyl = value(use, HYDROXYL, figures);
        Double dense = density;
        if (density == null) {
            dense = value(use, DENSITY, figures);
        } else {
            figures.add(new Figure(name(use), DENSITY.title(), density, "g/cm3", Source.ownRecord(Say.DENSITY_ENTERED.with().text())));
        }
        Double water = use.getMoisture();
        if (water != null) {
            figures.add(new Figure(name(use), WATER.title(), water, "%", Source.ownRecord(Say.WATER_ENTERED.with().text())));
        } else if (!Boolean.TRUE.equals(use.getDried())) {
            water = value(use, WATER, figures);
        }
        return new MaterialFigures(new Substance(nco == null || !(nco > 0) ? 0 : 1 / Polyurethane.isocyanateEquivalent(nco),
                hydroxyl == null || !(hydroxyl > 0) ? 0 : 1 / Polyurethane.hydroxylEquivalent(hydroxyl), water == null ? 0 : water / 100, dense), figures, water == null);
    }

    private static Double value(MaterialUse use, PropertyDef property, List<Figure> figures) {
        Optional<Estimate> best = use.getGrade() == null ? Optional.empty() : NOTED.estimate(property, use.getGrade(), use.getLot()).map(e -> e.estimate());
        best.ifPresent(e -> figures.add(new Figure(name(use), property.title(), e.likely(), property.kind().unit().symbol(), e.source())));
        return best.map(Estimate::likely).orElse(null);
    }

    /** True when the material is there to react, so that an index needs its NCO content or hydroxyl value. */
    public static boolean reacts(MaterialUse use) {
        return switch (use.getRole()) {
            case COMPONENT_A, COMPONENT_B, POLYOL, SINGLE, PREMIX -> true;
            default -> false;
        };
    }

    /** True for a powder or paste, which may hold water without anybody having said so. */
    public static boolean mayBeDamp(MaterialUse use) {
        return use.getRole() == PartRole.FILLER || use.getRole() == PartRole.PIGMENT;
    }

    /** What a material is called in a sentence: its name, else what it does. */
    public static String name(MaterialUse use) {
        return use.getGrade() == null || use.getGrade().getName() == null ? RoleWords.of(use.getRole()) : use.getGrade().getName();
    }
}
