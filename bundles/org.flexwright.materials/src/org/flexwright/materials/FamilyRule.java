package org.flexwright.materials;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.FamilyReach.Reply;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.model.TargetSheet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/** Grades whose family usually cannot meet the newest target sheet. A note: usual ranges are no data of the product. */
@Component(service = FindingRule.class)
public final class FamilyRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "materials.family";

    private final Families families;

    /** With the families of this plugin. */
    @Activate
    public FamilyRule() {
        this.families = Families.load();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Family that cannot meet the targets";
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Project project = context.project();
        project.getTargetSheets().stream().max(Comparator.comparingInt(TargetSheet::getVersion)).ifPresent(sheet -> {
            for (MaterialGrade grade : project.getGrades()) {
                families.find(grade.getFamily()).ifPresent(family -> FamilyTable.of(sheet, List.of(family), context.properties()).rows().get(0).cells().stream()
                        .filter(c -> c.reply() == Reply.CANNOT).forEach(c -> out.accept(finding(grade, family, c))));
            }
        });
    }

    private static Finding finding(MaterialGrade grade, Family family, FamilyTable.Cell cell) {
        String name = grade.getCode() == null ? grade.getName() : grade.getCode();
        return new Finding(ID, Severity.NOTE, grade.getId(), "family",
                Say.FAMILY_CANNOT.with(name, family.title(), cell.wanted().property().title(), cell.reason().text()),
                List.of("family " + family.id(), cell.wanted().property().id() + " " + cell.wanted().text()), cell.source(), Say.FAMILY_CANNOT_REMEDY.with());
    }
}
