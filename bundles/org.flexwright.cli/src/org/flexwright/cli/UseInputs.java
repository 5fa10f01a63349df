package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.flexwright.core.field.Provenances;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.MaterialUses;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PartRole;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;

/** Materials as they are typed: which one, how much, and the fields of {@code ROLE.FIELD=VALUE}. */
final class UseInputs {
    private final CliServices services;
    private final Edit edit;
    private final List<MaterialUse> uses;

    /** For the materials of a step or of a premix. */
    UseInputs(CliServices services, Edit edit, List<MaterialUse> uses) {
        this.services = services;
        this.edit = edit;
        this.uses = uses;
    }

    /** Role, grade with lot, and mass: {@code A=PU-A/L12:22.88g}. */
    record Typed(PartRole role, MaterialGrade grade, Lot lot, double grams, String mass) {
        static Typed of(Edit edit, String typed) {
            int equals = typed.indexOf('=');
            int colon = typed.lastIndexOf(':');
            if (equals < 1 || colon < equals) {
                throw new UsageException("--use takes role=material:mass, e.g. A=PU-A/L12:22.88g; got \"" + typed + "\".");
            }
            PartRole role = Find.role(typed.substring(0, equals));
            String material = typed.substring(equals + 1, colon);
            String mass = typed.substring(colon + 1).strip();
            double grams = QuantityParser.parse(mass, QuantityKind.MASS).canonical();
            if (grams < 0) {
                throw new UsageException("A mass cannot be below 0 g; got " + mass + ".");
            }
            Lot lot = material.contains("/") ? Find.lot(edit.project(), material) : null;
            return new Typed(role, lot == null ? Find.grade(edit.project(), material) : (MaterialGrade) lot.eContainer(), lot, grams, mass);
        }
    }

    /** Plans a material of a step: the first with that role, else a new one. */
    static void use(Edit edit, List<MaterialUse> uses, String typed, Function<PartRole, MaterialUse> add) {
        Typed read = Typed.of(edit, typed);
        MaterialUse use = uses.stream().filter(u -> u.getRole() == read.role()).findFirst().orElseGet(() -> add.apply(read.role()));
        MaterialUses.choose(edit, use, read.grade(), read.lot());
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__PLANNED, read.grams());
        Provenances.keep(edit, use, ModelPackage.Literals.MATERIAL_USE__PLANNED, Origin.TYPED, null, read.mass());
    }

    /** Sets fields; a role that is not there yet is added. */
    void read(List<String> settings, Function<PartRole, MaterialUse> add) {
        Map<MaterialUse, Inputs> fields = new LinkedHashMap<>();
        Settings.read(settings, services.workingFolder()).forEach((path, value) -> {
            int dot = path.indexOf('.');
            if (dot < 1 || dot == path.length() - 1) {
                throw new UsageException("--material takes ROLE.FIELD=VALUE, e.g. filler.parts=10; got \"" + path + "\".");
            }
            MaterialUse use = find(path.substring(0, dot).strip(), add);
            String field = path.substring(dot + 1).strip();
            switch (field.toLowerCase(java.util.Locale.ROOT)) {
                case "grade" -> MaterialUses.choose(edit, use, value.isEmpty() ? null : Find.grade(edit.project(), value), null);
                case "lot" -> lot(use, value);
                case "premix" -> MaterialUses.choose(edit, use, value.isEmpty() ? null : Find.premix(edit.project(), value));
                default -> fields.computeIfAbsent(use, u -> new Inputs()).put(field, value);
            }
        });
        fields.forEach((use, inputs) -> inputs.read(use, services.clock()).forEach((feature, value) -> {
            edit.set(use, feature, value);
            Provenances.keep(edit, use, feature, Origin.TYPED, null, inputs.typed(feature));
        }));
    }

    private void lot(MaterialUse use, String value) {
        if (value.isEmpty()) {
            MaterialUses.choose(edit, use, use.getGrade(), null);
            return;
        }
        Lot lot = value.contains("/") || use.getGrade() == null ? Find.lot(edit.project(), value) : Find.one("lot of " + use.getGrade().getCode(), use.getGrade().getLots(), Lot::getCode, value);
        MaterialUses.choose(edit, use, (MaterialGrade) lot.eContainer(), lot);
    }

    private MaterialUse find(String which, Function<PartRole, MaterialUse> add) {
        if (which.matches("\\d{1,4}")) {
            int place = Integer.parseInt(which);
            if (place < 1 || place > uses.size()) {
                throw new UsageException("There is no material " + place + " here: it has " + Words.count(uses.size(), "material") + ".");
            }
            return uses.get(place - 1);
        }
        PartRole role = Find.role(which);
        return uses.stream().filter(u -> u.getRole() == role).findFirst().orElseGet(() -> add.apply(role));
    }
}
