package org.flexwright.testsupport;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Fills a model with everything its classes can hold, chosen by a seed: every class, every feature, texts that formats stumble over,
 * numbers at the ends of their range, and nothing at all now and then.
 */
public final class RandomModel {
    /** Texts that a format may lose or change. */
    public static final List<String> TEXTS = List.of("", " ", "a", "plain words", "two\nlines", "\r\nline ends\r", "tab\tand \"quotes\" & <tags>", "=1+2",
            "+49", "-", "@home", "\t=1", "'", "''", "'quoted'", "0012", "3/4", "2.5", "1e5", "12:30", "a;b", "\\", "a\\;b", ";", "a,b", "  spaced  ",
            "\u00d8 28,0 mm \u00b1 0.1", "]]>", "emoji \ud83d\ude00", "{\"json\":1}", "null", "true", "\ufeffmark", "\uff1d1", "-2+3", "NaN", "/", "_id",
            "x".repeat(70_000));
    private static final List<Double> NUMBERS = List.of(0.0, -0.0, 1.0, -1.0, 12.5, 0.1, 1e-300, Double.MIN_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE,
            1.0 / 3, 123456789.125, 1e21);
    private static final int OFTEN = 4;

    private final Random random;
    private final List<EClass> details = new ArrayList<>();
    private final Predicate<EStructuralFeature> skip;
    private final List<EObject> made = new ArrayList<>();
    private final Set<EClass> classes = new LinkedHashSet<>();
    private final Set<String> features = new HashSet<>();
    private int budget;
    private int ids;
    private boolean longTextGiven;

    /** Details of plugins are taken from these packages; features for which {@code skip} is true stay as they are. */
    public RandomModel(long seed, List<EPackage> packages, Predicate<EStructuralFeature> skip) {
        this.random = new Random(seed);
        this.skip = skip;
        for (EPackage p : packages) {
            for (EClassifier c : p.getEClassifiers()) {
                if (c instanceof EClass e && !e.isAbstract() && !e.isInterface()) {
                    details.add(e);
                }
            }
        }
    }

    /** Fills an object with about that many others, then lets them refer to each other. */
    public void fill(EObject root, int objects) {
        budget = objects;
        content(root, 0);
        made.forEach(this::references);
    }

    /** Classes that were made so far. */
    public Set<EClass> classes() {
        return classes;
    }

    /** Features that were given a value so far, as {@code Class.feature}. */
    public Set<String> features() {
        return features;
    }

    private void content(EObject o, int depth) {
        made.add(o);
        classes.add(o.eClass());
        List<EStructuralFeature> all = o.eClass().getEAllStructuralFeatures().stream().filter(f -> !f.isTransient() && f.isChangeable() && !skip.test(f)).toList();
        for (EStructuralFeature f : all) {
            if (f instanceof EAttribute a) {
                attribute(o, a);
            }
        }
        List<EReference> contained = new ArrayList<>();
        all.forEach(f -> {
            if (f instanceof EReference r && r.isContainment()) {
                contained.add(r);
            }
        });
        java.util.Collections.shuffle(contained, random);
        for (EReference r : contained) {
            int n = r.isMany() ? random.nextInt(depth == 0 ? 4 : 3) : random.nextInt(OFTEN) == 0 ? 0 : 1;
            for (int i = 0; i < n && budget > 0; i++) {
                child(o, r, depth);
            }
        }
    }

    private void child(EObject o, EReference r, int depth) {
        List<EClass> fitting = r.getEReferenceType() == EcorePackage.Literals.EOBJECT ? details : concrete(r.getEReferenceType());
        if (fitting.isEmpty() || depth > 8) {
            return;
        }
        budget--;
        EObject child = EcoreUtil.create(fitting.get(random.nextInt(fitting.size())));
        features.add(o.eClass().getName() + "." + r.getName());
        if (r.isMany()) {
            list(o, r).add(child);
        } else {
            o.eSet(r, child);
        }
        content(child, depth + 1);
    }

    private List<EClass> concrete(EClass type) {
        List<EClass> all = new ArrayList<>();
        for (EClassifier c : type.getEPackage().getEClassifiers()) {
            if (c instanceof EClass e && !e.isAbstract() && type.isSuperTypeOf(e)) {
                all.add(e);
            }
        }
        return all;
    }

    private void attribute(EObject o, EAttribute a) {
        if (a.isID()) {
            o.eSet(a, "_" + Integer.toString(++ids, Character.MAX_RADIX) + Integer.toString(random.nextInt(1 << 20), Character.MAX_RADIX));
            return;
        }
        if (random.nextInt(OFTEN) == 0) {
            return;
        }
        features.add(o.eClass().getName() + "." + a.getName());
        if (a.isMany()) {
            for (int n = random.nextInt(4); n > 0; n--) {
                Object value = value(a.getEAttributeType());
                if (!a.isUnique() || !list(o, a).contains(value)) {
                    list(o, a).add(value);
                }
            }
        } else {
            o.eSet(a, value(a.getEAttributeType()));
        }
    }

    private Object value(EDataType type) {
        if (type instanceof EEnum e) {
            return e.getELiterals().get(random.nextInt(e.getELiterals().size())).getInstance();
        }
        Class<?> c = type.getInstanceClass();
        if (c == String.class) {
            return text();
        }
        if (c == Double.class || c == double.class) {
            return random.nextInt(3) == 0 ? NUMBERS.get(random.nextInt(NUMBERS.size())) : (Double) (random.nextGaussian() * Math.pow(10, random.nextInt(9) - 3));
        }
        if (c == Boolean.class || c == boolean.class) {
            return random.nextBoolean();
        }
        if (c == Integer.class || c == int.class) {
            return random.nextInt(5) == 0 ? Integer.MIN_VALUE : random.nextInt(10_000) - 100;
        }
        if (c == Long.class || c == long.class) {
            return random.nextLong();
        }
        if (c == Instant.class) {
            return random.nextBoolean() ? Instant.ofEpochSecond(1_700_000_000L + random.nextInt(300_000_000))
                    : Instant.ofEpochSecond(random.nextInt() * 9L, random.nextInt(1_000_000_000));
        }
        if (c == LocalDate.class) {
            return LocalDate.ofEpochDay(random.nextInt(60_000) - 10_000L);
        }
        throw new IllegalStateException("No random values of " + type.getName() + " yet.");
    }

    private String text() {
        int at = random.nextInt(TEXTS.size());
        if (at == TEXTS.size() - 1) {
            // one very long text a model is enough
            at = longTextGiven ? 0 : at;
            longTextGiven = true;
        }
        return TEXTS.get(at) + (random.nextInt(3) == 0 ? TEXTS.get(random.nextInt(TEXTS.size() - 1)) : "");
    }

    private void references(EObject o) {
        for (EStructuralFeature f : o.eClass().getEAllStructuralFeatures()) {
            if (!(f instanceof EReference r) || r.isContainment() || r.isContainer() || r.isTransient() || skip.test(f) || random.nextInt(OFTEN) == 0) {
                continue;
            }
            List<EObject> targets = made.stream().filter(t -> r.getEReferenceType().isInstance(t) && t.eClass().getEIDAttribute() != null).toList();
            if (targets.isEmpty()) {
                continue;
            }
            features.add(o.eClass().getName() + "." + r.getName());
            if (r.isMany()) {
                for (int n = random.nextInt(3); n > 0; n--) {
                    EObject t = targets.get(random.nextInt(targets.size()));
                    if (!list(o, r).contains(t)) {
                        list(o, r).add(t);
                    }
                }
            } else {
                o.eSet(r, targets.get(random.nextInt(targets.size())));
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static EList<Object> list(EObject o, EStructuralFeature f) {
        return (EList<Object>) o.eGet(f);
    }
}
