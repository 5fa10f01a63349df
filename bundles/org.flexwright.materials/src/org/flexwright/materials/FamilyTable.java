package org.flexwright.materials;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.property.FamilyReach.Reply;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityFormat;

/**
 * Families against targets: which families cannot meet the sheet, before anything is bought. It compares usual ranges, so "can" only means
 * worth a trial, and "cannot" only that the usual grades do not.
 *
 * @param rows one a family
 */
public record FamilyTable(List<Row> rows) {

    /**
     * Bounds of a target in the property's canonical unit.
     *
     * @param property what is wanted
     * @param low      at least; minus infinity when open
     * @param high     at most; infinity when open
     */
    public record Wanted(PropertyDef property, double low, double high) {

        /** True when neither end is limited. */
        public boolean open() {
            return Double.isInfinite(low) && Double.isInfinite(high);
        }

        /** The limits in words. */
        public String text() {
            if (Double.isInfinite(low)) {
                return "at most " + format(high, property);
            }
            return Double.isInfinite(high) ? "at least " + format(low, property) : span(low, high, property);
        }
    }

    /**
     * One family and one target.
     *
     * @param wanted the target's limits
     * @param reply  can, cannot or unknown
     * @param reason one sentence
     * @param source what the family's range rests on; common practice when there is none
     */
    public record Cell(Wanted wanted, Reply reply, Message reason, Source source) {
    }

    /**
     * A family against all targets.
     *
     * @param family the family
     * @param cells  in the order of the targets
     */
    public record Row(Family family, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** True when one target at least cannot be met. */
        public boolean excluded() {
            return cells.stream().anyMatch(c -> c.reply() == Reply.CANNOT);
        }
    }

    public FamilyTable {
        rows = List.copyOf(rows);
    }

    /** Families against a sheet; targets whose property no plugin knows are left out. */
    public static FamilyTable of(TargetSheet sheet, List<Family> families, PropertyCatalogue properties) {
        return of(sheet.getTargets().stream().map(t -> wanted(t, properties)).flatMap(Optional::stream).toList(), families);
    }

    /** Families against limits. */
    public static FamilyTable of(List<Wanted> wanted, List<Family> families) {
        List<Row> rows = new ArrayList<>();
        for (Family family : families) {
            rows.add(new Row(family, wanted.stream().map(w -> cell(family, w)).toList()));
        }
        return new FamilyTable(rows);
    }

    private static Optional<Wanted> wanted(Target target, PropertyCatalogue properties) {
        String id = target.getKey() == null ? null : target.getKey().getProperty();
        return Optional.ofNullable(id).flatMap(properties::find).map(property -> switch (target.getRule()) {
            case AT_LEAST -> new Wanted(property, or(target.getLow(), Double.NEGATIVE_INFINITY), Double.POSITIVE_INFINITY);
            case AT_MOST -> new Wanted(property, Double.NEGATIVE_INFINITY, or(target.getHigh(), Double.POSITIVE_INFINITY));
            case BETWEEN -> new Wanted(property, or(target.getLow(), Double.NEGATIVE_INFINITY), or(target.getHigh(), Double.POSITIVE_INFINITY));
            case NOMINAL -> nominal(property, target);
            case NEVER, ALWAYS -> new Wanted(property, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        });
    }

    private static Wanted nominal(PropertyDef property, Target target) {
        if (target.getNominal() == null || target.getTolerance() == null) {
            return new Wanted(property, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        return new Wanted(property, target.getNominal() - target.getTolerance(), target.getNominal() + target.getTolerance());
    }

    private static double or(Double value, double otherwise) {
        return Objects.requireNonNullElse(value, otherwise);
    }

    private static Cell cell(Family family, Wanted wanted) {
        if (wanted.property().yesNo()) {
            return unknown(wanted, Say.TABLE_YES_NO);
        }
        if (wanted.open()) {
            return unknown(wanted, Say.TABLE_NO_LIMIT);
        }
        Optional<Family.Range> range = Reach.of(family, wanted.property().id());
        return range.isEmpty() ? unknown(wanted, Say.TABLE_SILENT) : compared(range.get(), wanted);
    }

    private static Cell unknown(Wanted wanted, Say why) {
        return new Cell(wanted, Reply.UNKNOWN, why.with(), Source.commonPractice());
    }

    private static Cell compared(Family.Range range, Wanted wanted) {
        boolean below = range.high() < wanted.low();
        boolean above = range.low() > wanted.high();
        boolean inside = range.low() >= wanted.low() && range.high() <= wanted.high();
        Say words = below ? Say.TABLE_BELOW : above ? Say.TABLE_ABOVE : inside ? Say.TABLE_INSIDE : Say.TABLE_PARTLY;
        return new Cell(wanted, below || above ? Reply.CANNOT : Reply.CAN,
                words.with(span(range.low(), range.high(), wanted.property()), wanted.text()), range.source());
    }

    /** The unit once, behind the second number. */
    private static String span(double low, double high, PropertyDef property) {
        return low == high ? format(low, property) : QuantityFormat.plain(low) + " to " + format(high, property);
    }

    private static String format(double value, PropertyDef property) {
        return QuantityFormat.format(value, property.kind().unit());
    }
}
