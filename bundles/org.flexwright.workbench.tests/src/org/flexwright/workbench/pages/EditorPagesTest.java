package org.flexwright.workbench.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.ModelFactory;
import org.flexwright.workbench.Stage;
import org.junit.jupiter.api.Test;

class EditorPagesTest {

    private record Offered(String id, int order, boolean broken) implements EditorPageProvider {
        @Override
        public String title() {
            return id;
        }

        @Override
        public Stage stage() {
            return Stage.PLAN;
        }

        @Override
        public boolean accepts(EObject subject) {
            if (broken) {
                throw new IllegalStateException("broken");
            }
            return true;
        }

        @Override
        public EditorPage create(Composite parent, PageContext context) {
            throw new AssertionError("Nobody looks at this page.");
        }
    }

    @Test
    void pagesStandInTheirOrderAnIdIsTakenOnceAndABrokenOneIsLeftOut() {
        EditorPages pages = new EditorPages(List.of(new Offered("b", 200, false), new Offered("a", 100, false), new Offered("a", 1, false),
                new Offered("c", 50, true)));
        assertEquals(List.of("a", "b"), pages.pagesFor(ModelFactory.eINSTANCE.createProject()).stream().map(EditorPageProvider::id).toList());
        assertEquals(100, pages.pagesFor(ModelFactory.eINSTANCE.createProject()).get(0).order());
    }
}
