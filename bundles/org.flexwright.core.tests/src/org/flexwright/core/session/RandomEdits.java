package org.flexwright.core.session;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;

/** Edits of every kind on every feature, chosen by a seed. */
public final class RandomEdits {
    private static final List<String> TEXTS = List.of("", " ", "a", "two\nlines", "tab\tand \"quotes\" & <tags>", "Ø 28,0 mm ± 0.1", "\r\n", "]]>",
            "  spaced  ", "emoji \uD83D\uDE00", "back\\slash", "{\"json\":1}");

    private final Random random;
    private final Demo demo;

    /** With details of the demo plugin, or without when it is null. */
    public RandomEdits(long seed, Demo demo) {
        this.random = new Random(seed);
        this.demo = demo;
    }

    /** One to four changes in one edit. */
    public void some(Edit edit) {
        int n = 1 + random.nextInt(4);
        for (int i = 0; i < n; i++) {
            one(edit);
        }
    }

    private void one(Edit edit) {
        List<EObject> all = all(edit.project());
        EObject o = all.get(random.nextInt(all.size()));
        List<EStructuralFeature> features = o.eClass().getEAllStructuralFeatures().stream().filter(RandomEdits::isOurs).toList();
        if (features.isEmpty()) {
            return;
        }
        EStructuralFeature f = features.get(random.nextInt(features.size()));
        if (f instanceof EReference r && r.isContainment()) {
            contained(edit, o, r, all.size());
        } else if (f.isMany()) {
            many(edit, o, f, all);
        } else {
            edit.set(o, f, random.nextInt(4) == 0 ? null : value(f, all));
        }
    }

    private static boolean isOurs(EStructuralFeature f) {
        return f.isChangeable() && !f.isDerived() && !f.isTransient() && f != ModelPackage.Literals.IDENTIFIED__ID
                && f != ModelPackage.Literals.PROJECT__JOURNAL_SEQ && f != ModelPackage.Literals.PROJECT__WRITTEN_BY
                && f != ModelPackage.Literals.PROJECT__FORMAT_VERSION && f != ModelPackage.Literals.PROJECT__PLUGINS
                && !f.getName().equals("frozenAt");
    }

    private void contained(Edit edit, EObject o, EReference r, int size) {
        List<?> present = Change.list(o.eGet(r));
        int what = random.nextInt(size > 300 ? 3 : 8);
        if (what < 3 && !present.isEmpty()) {
            EObject child = (EObject) present.get(random.nextInt(present.size()));
            if (what == 0 && r.isMany()) {
                edit.move(o, r, child, random.nextInt(present.size()));
            } else if (what == 1 && r.isMany()) {
                // to the end of the list, by taking out and putting in the same object
                edit.remove(child);
                edit.add(o, r, child);
            } else {
                edit.remove(child);
            }
            return;
        }
        EObject child = child(r, 0);
        if (child == null) {
            return;
        }
        if (r.isMany()) {
            edit.add(o, r, random.nextInt(present.size() + 1), child);
        } else {
            edit.set(o, r, child);
        }
        if (random.nextBoolean()) {
            edit.set(child, ModelPackage.Literals.ENTRY__NOTE.getEContainingClass().isSuperTypeOf(child.eClass())
                    ? ModelPackage.Literals.ENTRY__NOTE : child.eClass().getEAllAttributes().getFirst(), null);
        }
    }

    private EObject child(EReference r, int depth) {
        EClass type = r.getEReferenceType();
        if (type == EcorePackage.Literals.EOBJECT && demo == null) {
            return null;
        } else if (type == EcorePackage.Literals.EOBJECT) {
            type = demo.pour;
        } else if (demo != null && type == demo.row && random.nextBoolean()) {
            type = demo.special;
        }
        if (type.isAbstract() || depth > 3) {
            return null;
        }
        EObject child = EcoreUtil.create(type);
        for (EStructuralFeature f : type.getEAllStructuralFeatures()) {
            if (!isOurs(f) || random.nextInt(3) > 0) {
                continue;
            }
            if (f instanceof EReference c && c.isContainment()) {
                EObject inner = child(c, depth + 1);
                if (inner != null) {
                    put(child, f, inner);
                }
            } else if (f instanceof EAttribute) {
                put(child, f, value(f, List.of()));
            }
        }
        return child;
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject o, EStructuralFeature f, Object value) {
        if (f.isMany()) {
            ((List<Object>) o.eGet(f)).add(value);
        } else {
            o.eSet(f, value);
        }
    }

    private void many(Edit edit, EObject o, EStructuralFeature f, List<EObject> all) {
        List<Object> present = new ArrayList<>(Change.list(o.eGet(f)));
        Object value = value(f, all);
        switch (random.nextInt(4)) {
            case 0 -> {
                if (!present.isEmpty()) {
                    edit.remove(o, f, present.get(random.nextInt(present.size())));
                }
            }
            case 1 -> {
                if (!present.isEmpty()) {
                    edit.move(o, f, present.getFirst(), random.nextInt(present.size()));
                }
            }
            default -> {
                if (value != null && !present.contains(value)) {
                    edit.add(o, f, random.nextInt(present.size() + 1), value);
                }
            }
        }
    }

    private Object value(EStructuralFeature f, List<EObject> all) {
        if (f instanceof EReference r) {
            List<EObject> targets = all.stream().filter(r.getEReferenceType()::isInstance).toList();
            return targets.isEmpty() ? null : targets.get(random.nextInt(targets.size()));
        }
        EAttribute a = (EAttribute) f;
        Class<?> type = a.getEAttributeType().getInstanceClass();
        if (a.getEAttributeType() instanceof EEnum e) {
            Enumerator literal = e.getELiterals().get(random.nextInt(e.getELiterals().size())).getInstance();
            return literal;
        } else if (type == String.class) {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        } else if (type == Double.class) {
            return random.nextGaussian() * Math.pow(10, random.nextInt(12) - 6);
        } else if (type == Integer.class || type == int.class) {
            return random.nextInt(100);
        } else if (type == Boolean.class || type == boolean.class) {
            return random.nextBoolean();
        } else if (type == Instant.class) {
            return Instant.ofEpochSecond(random.nextInt(), random.nextBoolean() ? 0 : random.nextInt(1_000_000_000));
        } else if (type == LocalDate.class) {
            return LocalDate.ofEpochDay(random.nextInt(40_000));
        }
        throw new IllegalStateException(f.getName());
    }

    private static List<EObject> all(Project project) {
        List<EObject> all = new ArrayList<>();
        all.add(project);
        for (Iterator<EObject> i = EcoreUtil.getAllProperContents(project, false); i.hasNext();) {
            EObject o = i.next();
            EPackage p = o.eClass().getEPackage();
            if (!(o instanceof AnyType) && p != null && !(o.eContainer() instanceof AnyType)) {
                all.add(o);
            }
        }
        return all;
    }
}
