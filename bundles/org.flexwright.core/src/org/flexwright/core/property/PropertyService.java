package org.flexwright.core.property;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/** What is known of a property of a material: own measurement before sheet before model before family range; a lot's value before its grade's. */
public final class PropertyService {
    private final List<PropertyEstimator> estimators;

    /** A service that asks these when nothing was measured and no sheet says anything. */
    public PropertyService(List<? extends PropertyEstimator> estimators) {
        this.estimators = estimators.stream().<PropertyEstimator>map(e -> e).sorted(Comparator.comparing(PropertyEstimator::rank)).toList();
    }

    /** The best evidence; empty when there is none at all. {@code lot} may be null. */
    public Optional<Evidence> estimate(PropertyDef property, MaterialGrade grade, Lot lot) {
        return all(property, grade, lot).stream().findFirst();
    }

    /** All evidence, the best first, so that own and sheet value can stand side by side. {@code lot} may be null. */
    public List<Evidence> all(PropertyDef property, MaterialGrade grade, Lot lot) {
        List<Evidence> found = new ArrayList<>();
        List<List<MaterialValue>> places = lot == null ? List.of(grade.getValues()) : List.of(lot.getValues(), grade.getValues());
        places.forEach(values -> values.stream().filter(v -> property.id().equals(v.getProperty())).forEach(v -> own(property, v).ifPresent(found::add)));
        places.forEach(values -> values.stream().filter(v -> property.id().equals(v.getProperty())).forEach(v -> sheet(property, v).ifPresent(found::add)));
        for (PropertyEstimator estimator : estimators) {
            Evidence.Rank rank = estimator.rank() == PropertyEstimator.Rank.MODEL ? Evidence.Rank.MODEL : Evidence.Rank.FAMILY;
            estimator.estimate(property, grade).ifPresent(e -> found.add(new Evidence(e, rank, true)));
        }
        return List.copyOf(found);
    }

    /** Every family of materials that is known here, held against a target sheet; a sheet without targets names them alone. */
    public List<FamilyReach> families(TargetSheet sheet, PropertyCatalogue properties) {
        return estimators.stream().flatMap(e -> e.families(sheet, properties).stream()).toList();
    }

    private static Optional<Evidence> own(PropertyDef property, MaterialValue value) {
        if (value.getOwnValue() == null) {
            return Optional.empty();
        }
        return unit(property.kind(), value.getUnit()).map(unit -> {
            double canonical = unit.toCanonical(value.getOwnValue());
            Double spread = value.getOwnUncertainty();
            double half = spread == null ? 0 : Math.abs(spread) * unit.factor();
            String said = text(value.getOwnSource(), "ownMeasurement");
            Source source = Source.ownRecord(spread == null ? Message.of(PropertyService.class, "withoutBand", said).text() : said);
            return new Evidence(Estimate.plusMinus(canonical, half, source), Evidence.Rank.OWN, spread != null);
        });
    }

    private static Optional<Evidence> sheet(PropertyDef property, MaterialValue value) {
        if (value.getSheetValue() == null) {
            return Optional.empty();
        }
        return unit(property.kind(), value.getUnit()).map(unit -> {
            Source source = Source.sheet(Message.of(PropertyService.class, "withoutBand", text(value.getSheetSource(), "sheet")).text());
            return new Evidence(Estimate.exact(unit.toCanonical(value.getSheetValue()), source), Evidence.Rank.SHEET, false);
        });
    }

    /** The value's unit; a value in a unit the property cannot have is no evidence for it. */
    private static Optional<Unit> unit(QuantityKind kind, String symbol) {
        return symbol == null || symbol.isBlank() ? Optional.of(kind.unit()) : Units.find(kind, symbol);
    }

    private static String text(String said, String otherwise) {
        return said == null || said.isBlank() ? Message.of(PropertyService.class, otherwise).text() : said;
    }
}
