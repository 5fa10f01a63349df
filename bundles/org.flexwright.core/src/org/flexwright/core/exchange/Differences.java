package org.flexwright.core.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.exchange.Walk.Row;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.UnknownText;
import org.flexwright.model.PluginUse;
import org.flexwright.model.Project;
import org.flexwright.model.Provenance;

/** In what two states of a project differ, thing by thing, in words. Things are the same when their ids are. */
public final class Differences {
    private final UnknownText unknownBefore;
    private final UnknownText unknownAfter;
    private final Map<String, Row> before = new LinkedHashMap<>();
    private final Map<String, Row> after = new LinkedHashMap<>();
    private final List<Difference> all = new ArrayList<>();

    private Differences(UnknownText unknownBefore, UnknownText unknownAfter) {
        this.unknownBefore = unknownBefore;
        this.unknownAfter = unknownAfter;
    }

    /** From one state to another, in the order of the file; what was removed comes last. */
    public static List<Difference> between(Project before, UnknownText unknownBefore, Project after, UnknownText unknownAfter) {
        Differences d = new Differences(unknownBefore, unknownAfter);
        Walk.each(before, row -> d.put(d.before, row));
        Walk.each(after, row -> d.put(d.after, row));
        d.compare();
        return List.copyOf(d.all);
    }

    /** Which plugins wrote is the file's own bookkeeping: what they wrote is compared. */
    private void put(Map<String, Row> rows, Row row) {
        if (!(row.object() instanceof PluginUse)) {
            rows.put(row.address(), row);
        }
    }

    private void compare() {
        Set<EObject> added = Collections.newSetFromMap(new IdentityHashMap<>());
        after.forEach((address, row) -> {
            Row was = before.get(address);
            if (was == null || !className(was.object()).equals(className(row.object()))) {
                added.add(row.object());
                if (!added.contains(row.object().eContainer())) {
                    say(Kind.ADDED, row.object(), "", "", "");
                }
            } else {
                features(was.object(), row.object());
                order(was.object(), row.object());
            }
        });
        Set<EObject> removed = Collections.newSetFromMap(new IdentityHashMap<>());
        before.forEach((address, row) -> {
            Row is = after.get(address);
            if (is == null || !className(is.object()).equals(className(row.object()))) {
                removed.add(row.object());
                if (!removed.contains(row.object().eContainer())) {
                    say(Kind.REMOVED, row.object(), "", "", "");
                }
            }
        });
    }

    private static String className(EObject o) {
        return UnknownText.isUnknown(o) ? UnknownText.className(o) : o.eClass().getEPackage().getNsURI() + "#" + o.eClass().getName();
    }

    private void features(EObject was, EObject is) {
        if (UnknownText.isUnknown(is)) {
            if (!unknownBefore.text(was).equals(unknownAfter.text(is))) {
                say(Kind.CHANGED, is, Message.of(Differences.class, "difference.content").text(), "", "");
            }
            return;
        }
        for (EStructuralFeature f : is.eClass().getEAllStructuralFeatures()) {
            if (!Tables.kept(f) || was.eClass().getEStructuralFeature(f.getName()) == null) {
                continue;
            }
            Object a = was.eGet(was.eClass().getEStructuralFeature(f.getName()));
            Object b = is.eGet(f);
            if (f instanceof EReference r && r.isContainment()) {
                if (Tables.inOwnersRow(r)) {
                    inside(is, (EObject) a, (EObject) b);
                }
            } else if (f instanceof EReference) {
                if (!CsvExport.ids(a).equals(CsvExport.ids(b))) {
                    say(Kind.CHANGED, is, label(f), names(a), names(b));
                }
            } else if (!Objects.equals(a, b)) {
                say(Kind.CHANGED, is, label(f), value((EAttribute) f, was), value((EAttribute) f, is));
            }
        }
        String a = unknownBefore.beside(was).orElse("");
        if (!a.equals(unknownAfter.beside(is).orElse(""))) {
            say(Kind.CHANGED, is, Message.of(Differences.class, "difference.content").text(), "", "");
        }
    }

    private void inside(EObject owner, EObject a, EObject b) {
        EObject any = b == null ? a : b;
        if (any == null) {
            return;
        }
        for (EAttribute f : any.eClass().getEAllAttributes()) {
            Object x = a == null ? null : a.eGet(f);
            Object y = b == null ? null : b.eGet(f);
            if (!Objects.equals(x, y)) {
                say(Kind.CHANGED, owner, label(f), a == null ? "" : value(f, a), b == null ? "" : value(f, b));
            }
        }
    }

    /** Things that stay but stand in another order. */
    private void order(EObject was, EObject is) {
        if (UnknownText.isUnknown(is)) {
            return;
        }
        for (EReference r : is.eClass().getEAllContainments()) {
            if (!r.isMany() || r.getEReferenceType().getEIDAttribute() == null) {
                continue;
            }
            List<String> a = ids((List<?>) was.eGet(r));
            List<String> b = ids((List<?>) is.eGet(r));
            a.retainAll(new HashSet<>(b));
            b.retainAll(new HashSet<>(a));
            if (!a.equals(b)) {
                say(Kind.MOVED, is, r.getName(), "", "");
            }
        }
    }

    private static List<String> ids(List<?> objects) {
        return objects.stream().map(o -> Walk.id((EObject) o)).filter(Objects::nonNull).collect(Collectors.toCollection(ArrayList::new));
    }

    private void say(Kind kind, EObject about, String field, String from, String to) {
        all.add(new Difference(kind, about(about), field, from, to));
    }

    /** What a thing is called when two states are told apart. */
    static String about(EObject o) {
        if (o instanceof Provenance p) {
            return Message.of(Differences.class, "difference.origin", Names.path(o), String.valueOf(p.getFeature())).text();
        }
        String path = Names.path(o);
        String kind = UnknownText.isUnknown(o) ? Message.of(TableImport.class, "details").text() : Names.kind(o).toLowerCase(java.util.Locale.ROOT);
        return o instanceof Project ? kind : path + " (" + kind + ")";
    }

    private static String label(EStructuralFeature f) {
        Column c = Column.of("", null, f);
        return c.field() == null ? f.getName() : c.field().label();
    }

    private static String value(EAttribute f, EObject o) {
        Object value = o.eGet(f);
        Column c = Column.of("", null, f);
        if (value == null) {
            return "";
        }
        return c.field() == null || value instanceof List<?> ? Objects.toString(Values.of(o, f), "") : FieldText.show(c.field(), value);
    }

    private static String names(Object value) {
        List<?> targets = value instanceof List<?> l ? l : value == null ? List.of() : List.of(value);
        return targets.stream().map(t -> Names.path((EObject) t)).collect(Collectors.joining("; "));
    }
}
