package org.flexwright.workbench.pages.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;

/** How a recording is read and what was said of it: what its kind asks, then what belongs to every recording. */
final class SettingsBlock {

    private static final List<FieldDescriptor> ALWAYS = Stream.of(ModelPackage.Literals.RECORDING__TITLE, ModelPackage.Literals.RECORDING__CYCLE,
            ModelPackage.Literals.RECORDING__LEFT_OUT, ModelPackage.Literals.RECORDING__AT, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();
    private static final List<FieldDescriptor> TABLE = Stream.of(ModelPackage.Literals.RECORDING__SEPARATOR, ModelPackage.Literals.RECORDING__DECIMAL_COMMA,
            ModelPackage.Literals.RECORDING__SKIP_LINES).map(FieldDescriptors::of).toList();

    private final PageContext context;
    private final Block asked;
    private final Block block;
    private final List<FormModel> forms = new ArrayList<>();
    private Recording shown;

    SettingsBlock(Composite parent, PageContext context) {
        this.context = context;
        asked = new Block(parent, context.kit(), "Of the piece and the run", 1, Spacing.FIELDS);
        block = new Block(parent, context.kit(), "The recording", 1, Spacing.FIELDS);
        block.addListener(SWT.Dispose, event -> close());
    }

    private void close() {
        forms.forEach(FormModel::close);
        forms.clear();
    }

    void show(Recording recording) {
        if (recording == shown) {
            return;
        }
        shown = recording;
        close();
        Composite body = block.emptied();
        Composite details = asked.emptied();
        EObject own = recording == null ? null : recording.getDetails();
        boolean asks = own != null && !(own instanceof AnyType) && !FieldDescriptors.ofClass(own.eClass()).isEmpty();
        asked.setShown(asks);
        block.setShown(recording != null);
        if (asks) {
            form(details, own, FieldDescriptors.ofClass(own.eClass()));
        }
        if (recording != null) {
            if (recording.getFile() != null) {
                String sum = recording.getFile().getSha256();
                Prose.quiet(body, context.kit(), "Raw file " + recording.getFile().getFileName() + ", kept unchanged" + (sum == null ? "" : "; checksum begins "
                        + sum.substring(0, Math.min(8, sum.length())))).setLayoutData(Grid.wide());
            }
            form(body, recording, recording.getSeparator() == null ? ALWAYS : Stream.concat(ALWAYS.stream(), TABLE.stream()).toList());
        }
    }

    private void form(Composite body, EObject object, List<FieldDescriptor> fields) {
        FormModel model = FormModel.bound(context.session(), object, fields);
        forms.add(model);
        new FormPane(body, context.kit(), Bindings.of(model, context.session().readOnly())).setLayoutData(Grid.wide());
    }
}
