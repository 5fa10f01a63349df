package org.flexwright.workbench.pages.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.field.ModelFields;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldBinding;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Properties;

/** One target: its rule with the numbers the rule asks for, and the conditions that make it comparable. */
final class TargetBlock {

    private static final Set<String> ELSEWHERE = Set.of("rule");

    private final PageContext context;
    private final Kit kit;
    private final Doing doing;
    private final Block block;
    private Target target;
    private FormModel numbers;
    private FormModel conditions;
    private FormPane form;
    private List<Object> shape = List.of();
    private PickBox<TargetRule> rule;

    TargetBlock(Composite parent, PageContext context, Doing doing) {
        this.context = context;
        this.kit = context.kit();
        this.doing = doing;
        block = new Block(parent, kit, "Target", 1, Spacing.FIELDS);
        block.addDisposeListener(event -> close());
    }

    private void close() {
        if (numbers != null) {
            numbers.close();
            conditions.close();
            numbers = null;
            conditions = null;
        }
    }

    Target target() {
        return target;
    }

    /** Shows a target; null: none. It can be changed when {@code open}. */
    void show(Target next, boolean open) {
        target = next;
        block.setShown(target != null);
        if (target == null) {
            shape = List.of();
            close();
            block.emptied();
            return;
        }
        block.setTitle(Properties.words(target.getKey(), context.registries().properties()));
        List<Object> now = List.of(target, open, Optional.ofNullable(target.getRule()), Optional.ofNullable(target.getKey().getProperty()));
        if (!now.equals(shape)) {
            shape = now;
            fill(open);
        } else if (rule != null) {
            rule.show(rules(), target.getRule());
        }
    }

    private Optional<PropertyDef> property() {
        return target.getKey() == null || target.getKey().getProperty() == null ? Optional.empty() : context.registries().findProperty(target.getKey()
                .getProperty());
    }

    private List<TargetRule> rules() {
        boolean yesNo = property().map(PropertyDef::yesNo).orElse(false);
        return TargetRule.VALUES.stream().filter(r -> (r == TargetRule.NEVER || r == TargetRule.ALWAYS) == yesNo).toList();
    }

    private void fill(boolean open) {
        close();
        Composite body = block.emptied();
        property().ifPresent(known -> Prose.quiet(body, kit, known.help() + " Rests on: " + known.source().display()).setLayoutData(Grid.wide()));
        Composite line = Flow.pane(body, kit, Ink.PAPER);
        line.setLayoutData(Grid.wide());
        kit.text(line, "The value is to be");
        if (open) {
            makeRule(line);
        } else {
            rule = null;
            kit.label(line, target.getRule() == null ? "–" : words(target.getRule()), Ink.INK, Role.STRONG);
        }
        List<FieldDescriptor> own = ModelFields.of(target, context.registries().properties()).stream().filter(f -> !ELSEWHERE.contains(f.name())).toList();
        numbers = FormModel.bound(context.session(), target, own);
        conditions = FormModel.bound(context.session(), target.getKey(), keyFields());
        List<FieldBinding> all = new ArrayList<>(Bindings.of(numbers, !open));
        all.addAll(Bindings.of(conditions, !open));
        form = new FormPane(body, kit, all);
        form.setLayoutData(Grid.wide());
    }

    private void makeRule(Composite line) {
        rule = new PickBox<>(line, kit, "Rule of the target", null, TargetBlock::words);
        rule.show(rules(), target.getRule());
        rule.whenChosen(chosen -> doing.edit("change the rule", edit -> {
            TargetSheets.requireOpen((TargetSheet) target.eContainer());
            edit.set(target, ModelPackage.Literals.TARGET__RULE, chosen);
        }));
        kit.action(line, "Take the target out", () -> doing.edit("take out a target", edit -> edit.remove(target)));
    }

    private List<FieldDescriptor> keyFields() {
        List<FieldDescriptor> fields = new ArrayList<>();
        add(fields, Condition.SPOT, ModelPackage.Literals.PROPERTY_KEY__SPOT);
        add(fields, Condition.SUPPORT, ModelPackage.Literals.PROPERTY_KEY__SUPPORT);
        add(fields, Condition.DWELL, ModelPackage.Literals.PROPERTY_KEY__DWELL);
        add(fields, Condition.PIECE, ModelPackage.Literals.PROPERTY_KEY__PIECE_KIND);
        return fields;
    }

    private void add(List<FieldDescriptor> fields, Condition condition, EAttribute attribute) {
        if (property().map(p -> p.comparedBy().contains(condition)).orElse(true)) {
            fields.add(FieldDescriptors.of(attribute));
        }
    }

    private static String words(TargetRule rule) {
        return switch (rule) {
            case AT_LEAST -> "at least";
            case AT_MOST -> "at most";
            case BETWEEN -> "between two limits";
            case NOMINAL -> "a value with a tolerance";
            case NEVER -> "never";
            case ALWAYS -> "always";
        };
    }

    void setFocus() {
        if (form != null) {
            form.setFocus();
        }
    }

    void reveal(String feature) {
        if (form != null) {
            form.reveal(feature);
        }
    }
}
