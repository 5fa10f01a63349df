package org.flexwright.core.exchange;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Watch;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.Values.NotAValue;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.UnknownText;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;

import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import com.google.gson.stream.MalformedJsonException;

/**
 * The whole project as one JSON file: {@code {"kind": "flexwright-project", "version": 1, "units": {"Trial.cost": "EUR", ...}, "project":
 * {...}}}. An object has its features by their names in the model: values as text, number or true and false; moments as
 * {@code 2031-05-04T10:20:30Z}; what it contains as objects; references as ids. What is not there is not written. {@code class} stands
 * first where the class does not follow from the feature ({@code namespace#Name} for details of plugins), {@code unread} holds what an
 * absent plugin wrote, as XML. The same project gives the same bytes.
 */
public final class ProjectJson {
    private static final String KIND = "flexwright-project";
    private static final int VERSION = 1;
    private static final String CLASS = "class";
    private static final String UNREAD = "unread";
    /** Deeper than any project. */
    private static final int DEEPEST = 64;

    private ProjectJson() {
    }

    /** Writes a new file; it appears whole or not at all. Throws {@link RefusedException} when there is something at that place. */
    public static void write(Project project, UnknownText unknown, Path target, Watch watch) throws IOException {
        Beside.file(target, out -> {
            Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 16);
            JsonWriter json = new JsonWriter(text);
            json.setIndent(" ");
            json.beginObject();
            json.name("kind").value(KIND).name("version").value(VERSION).name("units").beginObject();
            for (Map.Entry<String, String> unit : units(project).entrySet()) {
                json.name(unit.getKey()).value(unit.getValue());
            }
            json.endObject().name("project");
            new Writing(json, unknown, watch).object(project, ModelPackage.Literals.PROJECT);
            json.endObject().flush();
            text.write('\n');
            text.flush();
            return null;
        });
    }

    private static Map<String, String> units(Project project) {
        Set<EClass> classes = new HashSet<>();
        Walk.each(project, row -> {
            if (!UnknownText.isUnknown(row.object()) && classes.add(row.object().eClass())) {
                row.object().eClass().getEAllContainments().stream().filter(Tables::inOwnersRow).forEach(r -> classes.add(r.getEReferenceType()));
            }
        });
        Map<String, String> units = new TreeMap<>();
        for (EClass c : classes) {
            for (EAttribute a : c.getEAllAttributes()) {
                String unit = Column.of("", null, a).unit();
                if (!unit.isEmpty()) {
                    units.put(name(c) + "." + a.getName(), unit);
                }
            }
        }
        return units;
    }

    private static String name(EClass c) {
        return c.getEPackage() == ModelPackage.eINSTANCE ? c.getName() : c.getEPackage().getNsURI() + "#" + c.getName();
    }

    /** Walks a project. */
    private record Writing(JsonWriter json, UnknownText unknown, Watch watch) {

        void object(EObject o, EClass declared) throws IOException {
            json.beginObject();
            if (UnknownText.isUnknown(o)) {
                json.name(CLASS).value(UnknownText.className(o)).name(UNREAD).value(unknown.text(o)).endObject();
                return;
            }
            watch.check();
            if (o.eClass() != declared) {
                json.name(CLASS).value(name(o.eClass()));
            }
            for (EStructuralFeature f : o.eClass().getEAllStructuralFeatures()) {
                if (Tables.kept(f)) {
                    feature(o, f);
                }
            }
            String beside = unknown.beside(o).orElse(null);
            if (beside != null) {
                json.name(UNREAD).value(beside);
            }
            json.endObject();
        }

        private void feature(EObject o, EStructuralFeature f) throws IOException {
            Object value = o.eGet(f);
            if (value == null || value instanceof List<?> l && l.isEmpty() || f.isUnsettable() && !o.eIsSet(f)) {
                return;
            }
            json.name(f.getName());
            if (value instanceof List<?> many) {
                json.beginArray();
                for (Object one : many) {
                    value(f, one);
                }
                json.endArray();
            } else {
                value(f, value);
            }
        }

        private void value(EStructuralFeature f, Object value) throws IOException {
            if (f instanceof EReference r) {
                if (r.isContainment()) {
                    object((EObject) value, r.getEReferenceType());
                } else {
                    json.value(Walk.id((EObject) value));
                }
            } else if (value instanceof Boolean b) {
                json.value(b);
            } else if (value instanceof Number) {
                json.jsonValue(Values.print((EAttribute) f, value));
            } else {
                json.value(Values.print((EAttribute) f, value));
            }
        }
    }

    /** Makes a new project of a file: the same ids, order and values. Throws {@link RefusedException} and makes nothing when anything is refused. */
    public static ProjectSession create(ProjectStore store, List<DetailsPackage> packages, Path file, Path folder, Watch watch) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw refused("json.none", file);
        }
        ProjectStore.Draft draft = store.draft();
        try (Reader text = new BufferedReader(new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder().onMalformedInput(
                CodingErrorAction.REPORT)), 1 << 16)) {
            JsonReader json = new JsonReader(text);
            json.setStrictness(com.google.gson.Strictness.STRICT);
            try {
                new Reading(json, packages, draft, watch).whole();
            } catch (MalformedJsonException | EOFException | NumberFormatException | IllegalStateException | java.nio.charset.CharacterCodingException e) {
                throw refused("json.damaged", file, json.getPath());
            }
        }
        watch.check();
        return store.create(folder, draft);
    }

    /** Reads a project into a draft. */
    private static final class Reading {
        private final JsonReader json;
        private final Map<String, EPackage> packages = new HashMap<>();
        private final ProjectStore.Draft draft;
        private final Watch watch;
        private final Map<String, EObject> ids = new HashMap<>();
        private final List<Link> links = new ArrayList<>();

        private record Link(EObject owner, EReference feature, List<String> ids, String path) {
        }

        Reading(JsonReader json, List<DetailsPackage> packages, ProjectStore.Draft draft, Watch watch) {
            this.json = json;
            packages.forEach(p -> this.packages.put(p.ePackage().getNsURI(), p.ePackage()));
            this.draft = draft;
            this.watch = watch;
        }

        void whole() throws IOException {
            json.beginObject();
            boolean kind = false;
            boolean project = false;
            Set<String> names = new HashSet<>();
            while (json.hasNext()) {
                String name = once(names);
                switch (name) {
                    case "kind" -> {
                        if (!KIND.equals(json.nextString())) {
                            throw refused("json.kind");
                        }
                        kind = true;
                    }
                    case "version" -> {
                        if (json.nextInt() > VERSION) {
                            throw refused("json.newer");
                        }
                    }
                    case "units" -> units();
                    case "project" -> {
                        if (!kind) {
                            throw refused("json.kind");
                        }
                        json.beginObject();
                        features(draft.project(), 1);
                        project = true;
                    }
                    default -> throw refused("json.unknown", json.getPath());
                }
            }
            json.endObject();
            if (json.peek() != JsonToken.END_DOCUMENT || !project || draft.project().getId() == null) {
                throw refused("json.kind");
            }
            links.forEach(this::link);
        }

        /** The numbers are in the units of this model; others are refused rather than mistaken. */
        private void units() throws IOException {
            json.beginObject();
            while (json.hasNext()) {
                String name = json.nextName();
                String unit = json.nextString();
                int dot = name.lastIndexOf('.');
                EClass c = dot < 0 ? null : find(name.substring(0, dot));
                EStructuralFeature f = c == null ? null : c.getEStructuralFeature(name.substring(dot + 1));
                if (f instanceof EAttribute a && !Column.of("", null, a).unit().equals(unit)) {
                    throw refused("json.unit", json.getPath(), unit, Column.of("", null, a).unit());
                }
            }
            json.endObject();
        }

        private String once(Set<String> names) throws IOException {
            String name = json.nextName();
            if (!names.add(name)) {
                throw refused("json.twice", json.getPath());
            }
            return name;
        }

        private EClass find(String name) {
            int hash = name.lastIndexOf('#');
            EPackage p = hash < 0 ? ModelPackage.eINSTANCE : packages.get(name.substring(0, hash));
            EClassifier c = p == null ? null : p.getEClassifier(name.substring(hash + 1));
            return c instanceof EClass e && !e.isAbstract() && !e.isInterface() ? e : null;
        }

        private EObject object(EReference in, int depth) throws IOException {
            if (depth > DEEPEST) {
                throw refused("json.deep", json.getPath());
            }
            watch.check();
            json.beginObject();
            EClass type = in.getEReferenceType();
            String first = json.hasNext() ? json.nextName() : "";
            if (first.equals(CLASS)) {
                String said = json.nextString();
                type = find(said);
                first = json.hasNext() ? json.nextName() : "";
                if (type == null) {
                    return unread(first, said);
                }
            }
            if (type.isAbstract() || type.isInterface() || type.getInstanceClass() == EObject.class || !(in.getEReferenceType().getInstanceClass() == EObject.class
                    || in.getEReferenceType().isSuperTypeOf(type))) {
                throw refused("json.class", json.getPath());
            }
            EObject made = EcoreUtil.create(type);
            features(made, depth, first);
            return made;
        }

        private EObject unread(String name, String said) throws IOException {
            if (!name.equals(UNREAD)) {
                throw refused("json.class", json.getPath());
            }
            EObject made = readUnread(xml -> draft.unknown().read(xml));
            json.endObject();
            return made;
        }

        private EObject readUnread(java.util.function.Function<String, EObject> how) throws IOException {
            try {
                return how.apply(json.nextString());
            } catch (RefusedException e) {
                throw refused("json.value", json.getPath(), e.sentence().text());
            }
        }

        private void features(EObject o, int depth) throws IOException {
            features(o, depth, json.hasNext() ? json.nextName() : "");
        }

        private void features(EObject o, int depth, String firstName) throws IOException {
            Set<String> names = new HashSet<>();
            for (String name = firstName; !name.isEmpty(); name = json.hasNext() ? json.nextName() : "") {
                if (!names.add(name)) {
                    throw refused("json.twice", json.getPath());
                }
                if (name.equals(UNREAD)) {
                    readUnread(xml -> {
                        draft.unknown().readBeside(o, xml);
                        return o;
                    });
                    continue;
                }
                EStructuralFeature f = o.eClass().getEStructuralFeature(name);
                if (f == null || !Tables.kept(f)) {
                    throw refused("json.unknown", json.getPath());
                }
                feature(o, f, depth);
            }
            json.endObject();
            String id = Walk.id(o);
            if (id != null && ids.put(id, o) != null) {
                throw refused("json.sameId", id);
            }
        }

        @SuppressWarnings("unchecked")
        private void feature(EObject o, EStructuralFeature f, int depth) throws IOException {
            if (f instanceof EReference r && !r.isContainment()) {
                List<String> targets = new ArrayList<>();
                String path = json.getPath();
                each(f, () -> targets.add(json.nextString()));
                links.add(new Link(o, r, targets, path));
            } else if (f.isMany()) {
                List<Object> list = (List<Object>) o.eGet(f);
                each(f, () -> list.add(value(f, depth)));
            } else {
                o.eSet(f, value(f, depth));
            }
        }

        private interface One {
            void read() throws IOException;
        }

        private void each(EStructuralFeature f, One one) throws IOException {
            if (!f.isMany()) {
                one.read();
                return;
            }
            json.beginArray();
            while (json.hasNext()) {
                one.read();
            }
            json.endArray();
        }

        private Object value(EStructuralFeature f, int depth) throws IOException {
            if (f instanceof EReference r) {
                return object(r, depth + 1);
            }
            EAttribute a = (EAttribute) f;
            Class<?> type = a.getEAttributeType().getInstanceClass();
            JsonToken token = json.peek();
            boolean number = Number.class.isAssignableFrom(type) || type == double.class || type == int.class || type == long.class;
            boolean flag = type == Boolean.class || type == boolean.class;
            if (token != (number ? JsonToken.NUMBER : flag ? JsonToken.BOOLEAN : JsonToken.STRING)) {
                throw refused("json.type", json.getPath(), Message.of(CsvExport.class, number ? "type.number" : flag ? "type.yesNo" : "type.text").text());
            }
            try {
                return flag ? (Object) json.nextBoolean() : Values.parse(a, json.nextString());
            } catch (NotAValue e) {
                throw refused("json.value", json.getPath(), e.sentence().text());
            }
        }

        private void link(Link l) {
            List<EObject> targets = new ArrayList<>();
            for (String id : l.ids) {
                EObject target = ids.get(id);
                if (target == null || !l.feature.getEReferenceType().isInstance(target)) {
                    throw refused("json.dangling", l.path, id);
                }
                targets.add(target);
            }
            l.owner.eSet(l.feature, l.feature.isMany() ? targets : targets.get(0));
        }
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(Message.of(ProjectJson.class, key, args));
    }
}
