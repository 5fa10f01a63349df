package org.flexwright.safety.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;

/** What to ask about a material by its family and role: the statements to look for on the product's own sheet, never a classification. */
public enum MaterialHazard {
    /** The part of a polyurethane that holds isocyanate. */
    ISOCYANATE("isocyanate", Source.published("matches an MDI supplier's data sheet seen (2011); NIOSH Alert 96-111"), "H334", "H317", "H315", "H319", "H335", "H332", "H351",
            "H373", "EUH204"),
    /** The other part: polyol, amine, catalyst, plasticiser. */
    POLYOL("polyol", memory(), "H302", "H317", "H373", "H410", "H360", "H372"),
    /** Silicone that cures with platinum. */
    ADDITION_SILICONE("silicone-add", memory()),
    /** Silicone that cures with tin. */
    CONDENSATION_SILICONE("silicone-tin", memory(), "H360", "H361", "H373"),
    /** Resin that cures in light. */
    PHOTOPOLYMER("photopolymer", memory(), "H317", "H315", "H319", "H318", "H412", "H411", "H360", "H361", "H335"),
    /** Alcohols and acetone. */
    SOLVENT("solvent", Source.published("NIOSH Pocket Guide, DHHS (NIOSH) 2005-149; statements from memory, unconfirmed"), "H225", "H319", "H336"),
    /** Thinners and release sprays. */
    THINNER("thinner", memory(), "H222", "H229", "H225", "H226", "H304", "H336", "H361", "H373"),
    /** Fillers and pigments as powder. */
    POWDER("powder", memory(), "H351", "H350", "H372"),
    /** Soft filament. */
    FILAMENT("filament", memory());

    private static final Set<String> ISOCYANATE_SIGNS = Set.of("H334", "EUH204");
    private static final Set<String> FLAMMABLE = Set.of("H224", "H225", "H226");

    private final String key;
    private final Source source;
    private final List<String> statements;

    MaterialHazard(String key, Source source, String... statements) {
        this.key = key;
        this.source = source;
        this.statements = List.of(statements);
    }

    private static Source memory() {
        return Source.fromMemory("usual statements of the family");
    }

    /** Short name, part of the prompt's id. */
    public String key() {
        return key;
    }

    /** What the prompt rests on. */
    public Source source() {
        return source;
    }

    /** Codes to look for on the product's own sheet. */
    public List<String> statements() {
        return statements;
    }

    /** What to ask about a material in a step. */
    public static Set<MaterialHazard> of(MaterialUse use) {
        Set<MaterialHazard> found = EnumSet.noneOf(MaterialHazard.class);
        MaterialGrade grade = use.getGrade();
        Set<String> codes = grade == null ? Set.of() : HazardStatements.codes(grade.getHazards());
        byRole(use.getRole(), found);
        if (found.isEmpty() && use.getRole() != PartRole.MOULD && grade != null && grade.getFamily() != null) {
            byFamily(grade.getFamily(), use.getRole(), codes, found);
        }
        if (codes.stream().anyMatch(ISOCYANATE_SIGNS::contains)) {
            found.add(ISOCYANATE);
        }
        if (codes.stream().anyMatch(FLAMMABLE::contains)) {
            found.add(SOLVENT);
        }
        return found;
    }

    private static void byRole(PartRole role, Set<MaterialHazard> found) {
        switch (role) {
            case WASH -> found.add(SOLVENT);
            case THINNER, RELEASE -> found.add(THINNER);
            case FILLER, PIGMENT -> found.add(POWDER);
            case COMPONENT_A, COMPONENT_B, SINGLE, PLASTICISER, CATALYST, MOULD, OTHER -> {
                // the family says more than the role
            }
        }
    }

    private static void byFamily(String family, PartRole role, Set<String> codes, Set<MaterialHazard> found) {
        if (family.startsWith("pu-")) {
            polyurethane(role, codes, found);
        } else if (family.startsWith("silicone-add")) {
            found.add(ADDITION_SILICONE);
        } else if (family.startsWith("silicone-tin")) {
            found.add(CONDENSATION_SILICONE);
        } else if (family.startsWith("photopolymer")) {
            found.add(PHOTOPOLYMER);
        } else if (family.startsWith("tpu")) {
            found.add(FILAMENT);
        }
    }

    /** Makers call either side A. Unless the sheet's statements tell which holds the isocyanate, both are asked about. */
    private static void polyurethane(PartRole role, Set<String> codes, Set<MaterialHazard> found) {
        if (role == PartRole.CATALYST || role == PartRole.PLASTICISER) {
            found.add(POLYOL);
        } else if (codes.isEmpty()) {
            found.addAll(EnumSet.of(ISOCYANATE, POLYOL));
        } else {
            found.add(codes.stream().anyMatch(ISOCYANATE_SIGNS::contains) ? ISOCYANATE : POLYOL);
        }
    }
}
