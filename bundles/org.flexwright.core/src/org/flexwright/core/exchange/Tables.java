package org.flexwright.core.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.flexwright.core.exchange.Column.Kind;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.model.ModelPackage;

/**
 * The tables of a project: one for each class of the core model and of the plugins that are here, made from the model itself. What an
 * object contains stands in the table of its own class and names its owner; only a single small thing without an id of its own (the
 * key of a measurement) stands in its owner's row.
 */
final class Tables {
    /** Table of what absent plugins wrote. */
    static final String UNREAD = "unread";
    private static final String DETAILS = "details.";
    /** Parts of the file's own bookkeeping: the number of its last journal line, program and layout that wrote it. */
    private static final Set<EStructuralFeature> BOOKKEEPING = Set.of(ModelPackage.Literals.PROJECT__JOURNAL_SEQ,
            ModelPackage.Literals.PROJECT__WRITTEN_BY, ModelPackage.Literals.PROJECT__FORMAT_VERSION);

    private final Map<String, Table> byName = new LinkedHashMap<>();
    private final Map<EClass, Table> byClass = new LinkedHashMap<>();
    private final Table unread = new Table(UNREAD, null, List.of(Column.plain(Kind.OWNER, "owner"), Column.plain(Kind.IN, "in"),
            Column.plain(Kind.PLACE, "place"), Column.plain(Kind.CLASS, "class"), Column.plain(Kind.CONTENT, "content")));

    Tables(List<DetailsPackage> packages) {
        Map<String, EPackage> details = new TreeMap<>();
        packages.forEach(p -> details.put(p.ePackage().getNsURI(), p.ePackage()));
        for (EClass c : parentsFirst(details)) {
            Table t = new Table(name(c, details), c, columns(c));
            byClass.put(c, t);
            byName.put(t.name(), t);
        }
        byName.put(UNREAD, unread);
    }

    /** Bookkeeping of the file, which no export holds. */
    static boolean isBookkeeping(EStructuralFeature feature) {
        return BOOKKEEPING.contains(feature);
    }

    /** True for what stands in the owner's row. */
    static boolean inOwnersRow(EReference r) {
        EClass type = r.getEReferenceType();
        return r.isContainment() && !r.isMany() && type.getEPackage() == ModelPackage.eINSTANCE && !type.isAbstract()
                && type.getEIDAttribute() == null && type.getEAllReferences().isEmpty();
    }

    static boolean kept(EStructuralFeature f) {
        return !f.isTransient() && !f.isDerived() && !(f instanceof EReference r && r.isContainer()) && !isBookkeeping(f);
    }

    /** All, owners before what they contain. */
    List<Table> all() {
        return List.copyOf(byName.values());
    }

    /** The table of that name, or null. */
    Table named(String name) {
        return byName.get(name);
    }

    /** The table of a class; the one of what cannot be read for classes that are not here. */
    Table of(EClass type) {
        return byClass.getOrDefault(type, unread);
    }

    Table unread() {
        return unread;
    }

    private static List<EClass> parentsFirst(Map<String, EPackage> details) {
        List<EClass> classes = new ArrayList<>();
        List<EPackage> all = new ArrayList<>();
        all.add(ModelPackage.eINSTANCE);
        all.addAll(details.values());
        for (EPackage p : all) {
            for (EClassifier c : p.getEClassifiers()) {
                if (c instanceof EClass e && !e.isAbstract() && !e.isInterface()) {
                    classes.add(e);
                }
            }
        }
        Set<EClass> done = new LinkedHashSet<>();
        Set<EClass> open = new LinkedHashSet<>();
        // what is finished first is contained by all that comes later
        classes.sort(Comparator.comparing((EClass c) -> c != ModelPackage.Literals.PROJECT));
        classes.forEach(c -> visit(c, classes, open, done));
        List<EClass> order = new ArrayList<>(done);
        order.removeIf(c -> classes.stream().allMatch(o -> o.getEAllReferences().stream().filter(r -> r.isContainment() && r.getEReferenceType() == c)
                .allMatch(Tables::inOwnersRow)) && containedSomewhere(c, classes));
        return order.reversed();
    }

    private static boolean containedSomewhere(EClass c, List<EClass> classes) {
        return classes.stream().anyMatch(o -> o.getEAllReferences().stream().anyMatch(r -> r.isContainment() && r.getEReferenceType() == c));
    }

    private static void visit(EClass c, List<EClass> classes, Set<EClass> open, Set<EClass> done) {
        if (done.contains(c) || !open.add(c)) {
            return;
        }
        List<EReference> references = new ArrayList<>(c.getEAllReferences());
        for (EReference r : references.reversed()) {
            if (r.isContainment()) {
                boolean any = r.getEReferenceType() == EcorePackage.Literals.EOBJECT;
                for (EClass other : classes.reversed()) {
                    boolean fits = any ? other.getEPackage() != ModelPackage.eINSTANCE : r.getEReferenceType().isSuperTypeOf(other);
                    if (fits) {
                        visit(other, classes, open, done);
                    }
                }
            }
        }
        done.add(c);
    }

    private static List<Column> columns(EClass c) {
        List<Column> columns = new ArrayList<>();
        EAttribute id = c.getEIDAttribute();
        if (id != null) {
            columns.add(Column.of("", null, id));
        }
        if (c != ModelPackage.Literals.PROJECT) {
            columns.add(Column.plain(Kind.OWNER, "owner"));
            columns.add(Column.plain(Kind.IN, "in"));
            columns.add(Column.plain(Kind.PLACE, "place"));
        }
        String prefix = c.getEPackage() == ModelPackage.eINSTANCE ? "" : DETAILS;
        for (EStructuralFeature f : c.getEAllStructuralFeatures()) {
            if (!kept(f) || f == id) {
                continue;
            }
            if (f instanceof EReference r && r.isContainment()) {
                if (inOwnersRow(r)) {
                    r.getEReferenceType().getEAllAttributes().stream().filter(Tables::kept).forEach(a -> columns.add(Column.of(prefix, r, a)));
                }
            } else {
                columns.add(Column.of(prefix, null, f));
            }
        }
        return columns;
    }

    private static String name(EClass c, Map<String, EPackage> details) {
        String words = c.getName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        EPackage p = c.getEPackage();
        if (p == ModelPackage.eINSTANCE) {
            return c == ModelPackage.Literals.PROJECT ? words : plural(words);
        }
        boolean shared = details.values().stream().anyMatch(o -> o != p && o.getNsPrefix().equals(p.getNsPrefix()));
        return "details-" + p.getNsPrefix() + (shared ? "-" + crc(p.getNsURI()) : "") + "-" + words;
    }

    private static String crc(String text) {
        CRC32 crc = new CRC32();
        crc.update(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", crc.getValue());
    }

    private static String plural(String word) {
        return word.endsWith("ch") || word.endsWith("x") || word.endsWith("s") ? word + "es"
                : word.endsWith("y") ? word.substring(0, word.length() - 1) + "ies" : word + "s";
    }
}
