package org.flexwright.workbench.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FormListener;
import org.flexwright.core.field.FormModel;

/** Fields of a form model as the screen binds them. */
public final class Bindings {

    private Bindings() {
    }

    /** All fields of a form; {@code readOnly} when they are only shown. */
    public static List<FieldBinding> of(FormModel form, boolean readOnly) {
        return form.fields().stream().map(field -> of(form, field, readOnly)).toList();
    }

    /** One field of a form. */
    public static FieldBinding of(FormModel form, FieldDescriptor field, boolean readOnly) {
        return new FormField(form, field, readOnly);
    }

    private static final class FormField implements FieldBinding {
        private final FormModel form;
        private final FieldDescriptor field;
        private final boolean readOnly;
        private final Map<Runnable, FormListener> listeners = new HashMap<>();

        FormField(FormModel form, FieldDescriptor field, boolean readOnly) {
            this.form = form;
            this.field = field;
            this.readOnly = readOnly;
        }

        @Override
        public FieldDescriptor field() {
            return field;
        }

        @Override
        public String text() {
            return bare(field, form.text(field.name()));
        }

        @Override
        public void type(String text) {
            form.type(field.name(), text);
        }

        @Override
        public void settle() {
            form.settle(field.name());
        }

        @Override
        public String understood() {
            return form.understood(field.name());
        }

        @Override
        public String problem() {
            return form.problem(field.name());
        }

        @Override
        public String origin() {
            return form.origin(field.name());
        }

        @Override
        public boolean readOnly() {
            return readOnly;
        }

        @Override
        public void addListener(Runnable listener) {
            FormListener own = name -> {
                if (name.equals(field.name())) {
                    listener.run();
                }
            };
            listeners.put(listener, own);
            form.addListener(own);
        }

        @Override
        public void removeListener(Runnable listener) {
            FormListener own = listeners.remove(listener);
            if (own != null) {
                form.removeListener(own);
            }
        }
    }

    /** Without the unit, which stands beside the field. */
    static String bare(FieldDescriptor field, String printed) {
        if (field.type() != FieldType.QUANTITY) {
            return printed;
        }
        String unit = FieldTexts.unit(field);
        return !unit.isEmpty() && printed.endsWith(" " + unit) ? printed.substring(0, printed.length() - unit.length() - 1) : printed;
    }
}
