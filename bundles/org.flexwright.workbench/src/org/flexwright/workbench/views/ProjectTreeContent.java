package org.flexwright.workbench.views;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.Viewer;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;

/** The project itself, then one heading a list; materials hold their lots. */
final class ProjectTreeContent implements ITreeContentProvider {

    private Project project;

    @Override
    public void inputChanged(Viewer viewer, Object before, Object now) {
        project = (Project) now;
    }

    @Override
    public Object[] getElements(Object input) {
        List<Object> top = new ArrayList<>();
        top.add(input);
        top.addAll(List.of(Section.values()));
        return top.toArray();
    }

    @Override
    public Object[] getChildren(Object element) {
        if (element instanceof Section section) {
            return section.things(project).toArray();
        }
        return element instanceof MaterialGrade grade ? grade.getLots().toArray() : new Object[0];
    }

    @Override
    public boolean hasChildren(Object element) {
        return getChildren(element).length > 0;
    }

    @Override
    public Object getParent(Object element) {
        if (!(element instanceof EObject thing) || thing.eContainer() == null) {
            return null;
        }
        if (thing.eContainer() instanceof MaterialGrade grade) {
            return grade;
        }
        for (Section section : Section.values()) {
            if (section.feature() == thing.eContainingFeature()) {
                return section;
            }
        }
        return null;
    }
}
