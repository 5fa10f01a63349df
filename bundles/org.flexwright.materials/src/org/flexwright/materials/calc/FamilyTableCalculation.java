package org.flexwright.materials.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.property.FamilyReach.Reply;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.materials.Families;
import org.flexwright.materials.FamilyTable;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Which families of materials can meet wanted limits. */
@Component(service = Calculation.class)
public final class FamilyTableCalculation implements Calculation<FamilyTableCalculation.Inputs, FamilyTableCalculation.Results> {

    private static final Source USUAL = Source.fromMemory("Usual ranges of families, each with its own mark");

    /** What can be wanted of a family. */
    public enum Wish {
        HARDNESS("testing.shore-a", "Hardness", QuantityKind.SHORE_A),
        MODULUS("materials.modulus", "Modulus", QuantityKind.STRESS),
        STRENGTH("materials.tensile-strength", "Tensile strength", QuantityKind.STRESS),
        ELONGATION("materials.elongation", "Elongation at break", QuantityKind.FRACTION),
        TEAR("materials.tear", "Tear strength", QuantityKind.TEAR_STRENGTH),
        DENSITY("materials.density", "Density", QuantityKind.DENSITY),
        SHRINKAGE("curing.shrinkage", "Linear shrinkage", QuantityKind.FRACTION),
        PRICE("materials.price-class", "Price class", QuantityKind.NUMBER);

        private final PropertyDef property;

        Wish(String id, String title, QuantityKind kind) {
            this.property = new PropertyDef(id, title, kind, false, java.util.Set.of(), "As in the family table.", Source.commonPractice());
        }
    }

    /** One limit. */
    public record Limit(
            @Field(
                    help = "hardness (Shore A), modulus (MPa), strength (MPa), elongation (%), tear (kN/m), density (g/cm3), shrinkage (%) or price (1 to 4).")
            Wish property,
            @Field(optional = true, help = "In that unit; may be empty.") Double atLeast,
            @Field(optional = true, help = "In that unit; may be empty.") Double atMost) {
    }

    /** What is wanted. */
    public record Inputs(
            @Field(def = "hardness; 45; 55 | elongation; 300; ", help = "One row a limit: property; at least; at most.") List<Limit> limits) {
    }

    /** A family. */
    public record Verdict(
            @Field(help = "The family.") String family,
            @Field(help = "Can, cannot, or unknown.") String reply,
            @Field(help = "What decides it, with its source.") String reason) {
    }

    /** All families. */
    public record Results(
            @Field(help = "Families that no limit excludes come first.") List<Verdict> families,
            @Field(label = "Worth a trial", help = "How many families no limit excludes.") int left) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("materials.family-table", "Families against limits", 1,
                "Compares the usual range of each family with each limit: cannot when they do not overlap, can when they do, unknown when nothing is known.",
                USUAL, "Usual ranges, no data of any product; a printed or filled part can lie outside. It tells what not to buy first.");
    }

    @Override
    public Class<Inputs> inputType() {
        return Inputs.class;
    }

    @Override
    public Class<Results> resultType() {
        return Results.class;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        List<FamilyTable.Wanted> wanted = new ArrayList<>();
        for (Limit limit : in.limits()) {
            double low = limit.atLeast() == null ? Double.NEGATIVE_INFINITY : limit.atLeast();
            double high = limit.atMost() == null ? Double.POSITIVE_INFINITY : limit.atMost();
            if (low > high) {
                return Outcome.refused("limits", Say.TABLE_LIMITS.with(limit.property().property.title(), Figures.of(low, ""), Figures.of(high, "")),
                        Say.TABLE_LIMITS_REMEDY.with());
            }
            wanted.add(new FamilyTable.Wanted(limit.property().property, low, high));
        }
        if (wanted.isEmpty()) {
            return Outcome.refused("limits", Say.TABLE_EMPTY.with(), Say.TABLE_EMPTY_REMEDY.with());
        }
        List<FamilyTable.Row> rows = new ArrayList<>(FamilyTable.of(wanted, Families.load().all()).rows());
        rows.sort(java.util.Comparator.comparing(FamilyTable.Row::excluded));
        int left = (int) rows.stream().filter(r -> !r.excluded()).count();
        return Outcome.done(new Results(rows.stream().map(FamilyTableCalculation::verdict).toList(), left), List.of(Say.TABLE_USUAL.note(USUAL)));
    }

    /** The cell that decides: one that excludes, else one nobody knows, else the first. */
    private static Verdict verdict(FamilyTable.Row row) {
        FamilyTable.Cell decides = first(row, Reply.CANNOT).or(() -> first(row, Reply.UNKNOWN)).orElse(row.cells().get(0));
        return new Verdict(row.family().title(), decides.reply().name().toLowerCase(java.util.Locale.ROOT),
                decides.wanted().property().title() + ": " + decides.reason().text() + " [" + decides.source().display() + "]");
    }

    private static Optional<FamilyTable.Cell> first(FamilyTable.Row row, Reply reply) {
        return row.cells().stream().filter(c -> c.reply() == reply).findFirst();
    }
}
