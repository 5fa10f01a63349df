package org.flexwright.core.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.RoleWords;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/**
 * What differs between two versions of a recipe, in sentences: steps added, removed, moved and renamed, planned values, materials, lots, values of materials, limits and targets.
 * It reads the descriptions of fields alone, so that details of any plugin are compared. Who froze a version and when is no difference.
 */
public final class RecipeDifference {
    private static final EStructuralFeature PLANNED = ModelPackage.Literals.MATERIAL_USE__PLANNED;

    private final List<String> said = new ArrayList<>();

    private RecipeDifference() {
    }

    /** The differences from the older to the newer, in the order of the plan; empty when there is none. */
    public static List<String> between(Recipe older, Recipe newer) {
        RecipeDifference all = new RecipeDifference();
        all.change(say("limits"), older.getLimits(), newer.getLimits());
        all.plans(older.getPlan(), newer.getPlan());
        all.matched(older.getMaterials(), newer.getMaterials(), MaterialGrade::getCode, all::material, null);
        all.matched(older.getPremixes(), newer.getPremixes(), Premix::getCode, all::premix, null);
        all.change(say("mould"), older.getMould() == null ? null : older.getMould().getCode(), newer.getMould() == null ? null : newer.getMould().getCode());
        if (older.getMould() != null && newer.getMould() != null) {
            all.fields(say("mould"), older.getMould(), newer.getMould(), List.of(ModelPackage.Literals.MOULD__CASTS_BEFORE, ModelPackage.Literals.MOULD__CODE));
        }
        all.targets(older.getTargets(), newer.getTargets());
        return List.copyOf(all.said);
    }

    private void plans(Trial older, Trial newer) {
        if (older == null || newer == null) {
            if (older != newer) {
                said.add(say("plan"));
            }
            return;
        }
        change(say("title"), older.getTitle(), newer.getTitle());
        change(say("idea"), older.getIdea(), newer.getIdea());
        change(say("route"), older.getRoute(), newer.getRoute());
        Map<Step, Step> pairs = pairs(older.getSteps(), newer.getSteps());
        older.getSteps().stream().filter(step -> !pairs.containsKey(step)).forEach(step -> said.add(say("stepRemoved", place(step), name(step))));
        newer.getSteps().stream().filter(step -> !pairs.containsValue(step)).forEach(step -> said.add(say("stepAdded", place(step), name(step))));
        moved(pairs);
        pairs.forEach(this::step);
    }

    /** Steps of one kind belong together by their title, those left over by their order. */
    private static Map<Step, Step> pairs(List<Step> older, List<Step> newer) {
        Map<Step, Step> pairs = new LinkedHashMap<>();
        List<Step> free = new ArrayList<>(newer);
        for (boolean byTitle : new boolean[] { true, false }) {
            for (Step step : older) {
                if (!pairs.containsKey(step)) {
                    free.stream().filter(s -> Objects.equals(s.getKind(), step.getKind()) && (!byTitle || Objects.equals(s.getTitle(), step.getTitle()))).findFirst()
                            .ifPresent(s -> {
                                free.remove(s);
                                pairs.put(step, s);
                            });
                }
            }
        }
        Map<Step, Step> ordered = new LinkedHashMap<>();
        older.stream().filter(pairs::containsKey).forEach(step -> ordered.put(step, pairs.get(step)));
        return ordered;
    }

    /** Of the steps both have, the fewest that must be moved to get from one order to the other. */
    private void moved(Map<Step, Step> pairs) {
        List<Step> before = List.copyOf(pairs.keySet());
        int[] to = before.stream().mapToInt(step -> place(pairs.get(step))).toArray();
        boolean[] stays = longestRising(to);
        for (int i = 0; i < to.length; i++) {
            if (!stays[i]) {
                said.add(say("stepMoved", name(before.get(i)), place(before.get(i)), to[i]));
            }
        }
    }

    private static boolean[] longestRising(int[] values) {
        int[] length = new int[values.length];
        int[] from = new int[values.length];
        int best = -1;
        for (int i = 0; i < values.length; i++) {
            length[i] = 1;
            from[i] = -1;
            for (int j = 0; j < i; j++) {
                if (values[j] < values[i] && length[j] + 1 > length[i]) {
                    length[i] = length[j] + 1;
                    from[i] = j;
                }
            }
            best = best < 0 || length[i] > length[best] ? i : best;
        }
        boolean[] in = new boolean[values.length];
        for (int i = best; i >= 0; i = from[i]) {
            in[i] = true;
        }
        return in;
    }

    private void step(Step older, Step newer) {
        String where = say("step", place(newer), name(newer));
        change(say("of", where, say("title")), older.getTitle(), newer.getTitle());
        change(say("of", where, say("note")), older.getNote(), newer.getNote());
        feature(where, older, newer, ModelPackage.Literals.STEP__PLANNED_START);
        feature(where, older, newer, ModelPackage.Literals.STEP__PLANNED_DURATION);
        uses(where, older.getUses(), newer.getUses());
        details(where, older.getDetails(), newer.getDetails());
    }

    private void details(String where, EObject older, EObject newer) {
        boolean known = older != null && newer != null && !(older instanceof AnyType) && older.eClass() == newer.eClass();
        if (!known) {
            if (!EcoreUtil.equals(older, newer)) {
                said.add(say("details", where));
            }
            return;
        }
        for (FieldDescriptor field : FieldDescriptors.ofClass(newer.eClass())) {
            if (field.role() != FieldRole.ACTUAL) {
                EStructuralFeature feature = newer.eClass().getEStructuralFeature(field.name());
                change(say("of", where, field.label()), field, older.eGet(feature), newer.eGet(feature));
            }
        }
    }

    private void uses(String where, List<MaterialUse> older, List<MaterialUse> newer) {
        Map<String, MaterialUse> before = keyed(older);
        Map<String, MaterialUse> after = keyed(newer);
        before.forEach((key, use) -> {
            if (!after.containsKey(key)) {
                said.add(say("useRemoved", where, name(use)));
            }
        });
        after.forEach((key, use) -> {
            MaterialUse was = before.get(key);
            if (was == null) {
                said.add(say("useAdded", where, name(use), FieldText.show(FieldDescriptors.of((EAttribute) PLANNED), use.getPlanned())).strip());
            } else {
                String which = say("of", where, RoleWords.of(use.getRole()));
                change(say("of", which, say("useMaterial")), what(was), what(use));
                change(say("of", which, say("useLot")), was.getLot() == null ? null : was.getLot().getCode(), use.getLot() == null ? null : use.getLot().getCode());
                fields(which, was, use, List.of(ModelPackage.Literals.MATERIAL_USE__ROLE));
            }
        });
        List<String> common = before.keySet().stream().filter(after::containsKey).toList();
        if (!common.equals(after.keySet().stream().filter(before::containsKey).toList())) {
            said.add(say("useOrder", where, String.join(", ", newer.stream().map(RecipeDifference::name).toList())));
        }
    }

    /** A use is the same again by what it does, and by how many of its kind stand before it. */
    private static Map<String, MaterialUse> keyed(List<MaterialUse> uses) {
        Map<String, MaterialUse> keyed = new LinkedHashMap<>();
        for (MaterialUse use : uses) {
            int n = 0;
            while (keyed.containsKey(use.getRole() + "/" + n)) {
                n++;
            }
            keyed.put(use.getRole() + "/" + n, use);
        }
        return keyed;
    }

    private void material(MaterialGrade older, MaterialGrade newer) {
        String where = say("material", newer.getCode());
        fields(where, older, newer, List.of(ModelPackage.Literals.MATERIAL_GRADE__CODE));
        values(where, older.getValues(), newer.getValues());
        matched(older.getLots(), newer.getLots(), org.flexwright.model.Lot::getCode, (was, is) -> {
            String lot = say("lot", newer.getCode(), is.getCode());
            fields(lot, was, is, List.of(ModelPackage.Literals.LOT__CODE));
            values(lot, was.getValues(), is.getValues());
        }, null);
    }

    private void values(String where, List<MaterialValue> older, List<MaterialValue> newer) {
        matched(older, newer, MaterialValue::getProperty, (was, is) -> attributes(say("of", where, is.getProperty()), was, is), "value");
    }

    private void premix(Premix older, Premix newer) {
        String where = say("premix", newer.getCode());
        fields(where, older, newer, List.of(ModelPackage.Literals.PREMIX__CODE, ModelPackage.Literals.PREMIX__MADE_AT));
        uses(where, older.getIngredients(), newer.getIngredients());
    }

    private void targets(TargetSheet older, TargetSheet newer) {
        if (older == newer) {
            return;
        }
        change(say("sheet"), older == null ? null : "v" + older.getVersion(), newer == null ? null : "v" + newer.getVersion());
        matched(older == null ? List.of() : older.getTargets(), newer == null ? List.of() : newer.getTargets(), RecipeDifference::key,
                (was, is) -> attributes(say("target", key(is)), was, is), "target");
    }

    private static String key(Target target) {
        return target.getKey() == null ? "" : String.join(" ", java.util.stream.Stream.of(target.getKey().getProperty(), target.getKey().getSpot(), target.getKey()
                .getSupport(), target.getKey().getDwell() == null ? null : FieldText.digits(target.getKey().getDwell()) + " s").filter(Objects::nonNull).toList());
    }

    /** Pairs by a key; of what only one side has, it is said that it came or went, unless the uses say so already: then {@code word} is null. */
    private <T> void matched(List<T> older, List<T> newer, Function<T, String> key, java.util.function.BiConsumer<T, T> both, String word) {
        Map<String, T> before = new LinkedHashMap<>();
        older.forEach(o -> before.put(String.valueOf(key.apply(o)), o));
        Map<String, T> after = new LinkedHashMap<>();
        newer.forEach(n -> after.put(String.valueOf(key.apply(n)), n));
        if (word != null) {
            before.keySet().stream().filter(k -> !after.containsKey(k)).forEach(k -> said.add(say("gone", say(word, k))));
            after.keySet().stream().filter(k -> !before.containsKey(k)).forEach(k -> said.add(say("come", say(word, k))));
        }
        after.forEach((k, n) -> {
            if (before.containsKey(k)) {
                both.accept(before.get(k), n);
            }
        });
    }

    /** The fields meant for a form, and the note. */
    private void fields(String where, EObject older, EObject newer, List<? extends EStructuralFeature> without) {
        EClass type = newer.eClass();
        for (FieldDescriptor field : FieldDescriptors.ofClass(type)) {
            EStructuralFeature feature = type.getEStructuralFeature(field.name());
            if (!without.contains(feature)) {
                change(say("of", where, field.label()), field, older.eGet(feature), newer.eGet(feature));
            }
        }
        if (newer instanceof org.flexwright.model.Entry is && older instanceof org.flexwright.model.Entry was
                && FieldDescriptors.ofClass(type).stream().noneMatch(f -> f.name().equals("note"))) {
            change(say("of", where, say("note")), was.getNote(), is.getNote());
        }
    }

    /** All attributes: for records whose columns are no form. */
    private void attributes(String where, EObject older, EObject newer) {
        for (EAttribute attribute : newer.eClass().getEAllAttributes()) {
            if (!attribute.isID()) {
                FieldDescriptor field = FieldDescriptors.of(attribute);
                change(say("of", where, field.label()), field, older.eGet(attribute), newer.eGet(attribute));
            }
        }
    }

    private void feature(String where, EObject older, EObject newer, EAttribute attribute) {
        FieldDescriptor field = FieldDescriptors.of(attribute);
        change(say("of", where, field.label()), field, older.eGet(attribute), newer.eGet(attribute));
    }

    private void change(String what, FieldDescriptor field, Object older, Object newer) {
        String was = FieldText.show(field, older);
        String is = FieldText.show(field, newer);
        if (was.equals(is)) {
            // what is shown rounded may hide a difference
            change(what, field.print(older), field.print(newer));
        } else {
            change(what, was, is);
        }
    }

    private void change(String what, String older, String newer) {
        String was = older == null ? "" : older.strip();
        String is = newer == null ? "" : newer.strip();
        if (!was.equals(is)) {
            said.add(say("change", what, was.isEmpty() ? say("nothing") : was, is.isEmpty() ? say("nothing") : is));
        }
    }

    private static String what(MaterialUse use) {
        return use.getGrade() != null ? use.getGrade().getCode() : use.getPremix() != null ? use.getPremix().getCode() : null;
    }

    private static String name(MaterialUse use) {
        String what = what(use);
        return what == null ? RoleWords.of(use.getRole()) : say("use", RoleWords.of(use.getRole()), what);
    }

    private static String name(Step step) {
        return step.getTitle() == null || step.getTitle().isBlank() ? step.getKind() : step.getTitle();
    }

    private static int place(Step step) {
        return ((Trial) step.eContainer()).getSteps().indexOf(step) + 1;
    }

    private static String say(String key, Object... args) {
        return Message.of(RecipeDifference.class, "difference." + key, args).text();
    }
}
