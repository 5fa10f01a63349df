package org.flexwright.materials;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.TargetSheet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/** The usual range of a grade's family, when nothing better is known. */
@Component(service = PropertyEstimator.class)
public final class FamilyEstimator implements PropertyEstimator {

    private final Families families;

    /** With the families of this plugin. */
    @Activate
    public FamilyEstimator() {
        this.families = Families.load();
    }

    @Override
    public Rank rank() {
        return Rank.FAMILY_RANGE;
    }

    @Override
    public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
        return Optional.ofNullable(grade.getFamily()).flatMap(families::find).flatMap(f -> Reach.of(f, property.id())).map(Family.Range::estimate);
    }

    @Override
    public List<FamilyReach> families(TargetSheet sheet, PropertyCatalogue properties) {
        return FamilyTable.of(sheet, families.all(), properties).rows().stream().map(FamilyEstimator::reach).toList();
    }

    private static FamilyReach reach(FamilyTable.Row row) {
        return new FamilyReach(row.family().id(), row.family().title(), row.cells().stream().map(c -> new FamilyReach.Answer(c.wanted().property(),
                c.reply(), c.reason(), c.source())).toList());
    }
}
