package org.flexwright.core.session;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.FeatureMap;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.emf.ecore.xml.type.XMLTypePackage;
import org.flexwright.core.session.Packages.ClassShape;
import org.flexwright.core.session.Packages.FeatureShape;

/**
 * Writes objects as XMI, one attribute a line, always in the same order, so that the same project gives the same bytes and a
 * version-control diff reads well. EMF reads what this writes; it is written here because unknown parts must come out as they went in,
 * and because a big project must be written quickly on the thread of the screen.
 */
final class ModelWriter {
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";
    private static final byte[][] INDENTS = new byte[16][];
    static {
        for (int i = 0; i < INDENTS.length; i++) {
            INDENTS[i] = XmlBytes.utf8("\n" + "  ".repeat(i));
        }
    }

    private final Packages packages;
    private final XmlBytes out;
    private final Map<String, String> namespaces = new TreeMap<>();

    private ModelWriter(Packages packages, int capacity) {
        this.packages = packages;
        this.out = new XmlBytes(capacity);
    }

    /** A whole file with one root; {@code expectedBytes} is a guess of its size. */
    static byte[] document(Packages packages, EObject root, int expectedBytes) {
        ModelWriter w = new ModelWriter(packages, Math.max(1 << 12, expectedBytes + expectedBytes / 8));
        String name = w.typeName(root);
        w.rest(root, name, 0);
        w.out.add('\n');
        return w.out.after("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<" + name + "\n    xmi:version=\"2.0\"\n    xmlns:xmi=\"" + ModelReader.XMI + "\""
                + w.declarations("\n    "));
    }

    /** Objects with all they contain, for the journal; read back by {@link ModelReader#fragment}. */
    static String fragment(Packages packages, List<EObject> roots) {
        ModelWriter w = new ModelWriter(packages, 1 << 10);
        for (EObject root : roots) {
            String name = w.typeName(root);
            w.out.add('\n');
            w.out.add('<');
            w.out.add(name);
            w.rest(root, name, 0);
        }
        return new String(w.out.after("<objects" + w.declarations(" ") + ">"), StandardCharsets.UTF_8) + "\n</objects>";
    }

    private String declarations(String separator) {
        XmlBytes b = new XmlBytes(1 << 8);
        namespaces.forEach((prefix, uri) -> {
            b.add(separator + "xmlns:" + prefix + "=\"");
            b.escaped(uri, true);
            b.add('"');
        });
        return new String(b.after(""), StandardCharsets.UTF_8);
    }

    /** Attributes, content and end of an element whose name has been written. */
    private void rest(EObject object, String name, int depth) {
        boolean content = object instanceof AnyType any ? standIn(any, depth) : known(object, depth);
        if (!content) {
            out.add("/>");
            return;
        }
        if (out.last() == '>' && !endsWithText) {
            newLine(depth);
        }
        endsWithText = false;
        out.add("</");
        out.add(name);
        out.add('>');
    }

    private boolean endsWithText;

    private boolean known(EObject object, int depth) {
        InternalEObject o = (InternalEObject) object;
        ClassShape shape = packages.shape(object.eClass());
        for (FeatureShape f : shape.attributes) {
            if (o.eIsSet(f.id)) {
                Object value = o.eGet(f.id, true, true);
                newLine(depth + 2);
                out.add(f.attributeStart);
                out.escaped(f.reference == null ? f.print(value) : ids(value, f), true);
                out.add('"');
            }
        }
        AnyType unknown = UnknownFeatures.of(object);
        if (unknown != null) {
            standInAttributes(unknown, depth);
        }
        boolean content = false;
        for (FeatureShape f : shape.elements) {
            if (o.eIsSet(f.id)) {
                content = open(content);
                element(f, o.eGet(f.id, true, true), depth + 1);
            }
        }
        return unknown == null ? content : standInElements(unknown, depth, content);
    }

    private void element(FeatureShape f, Object value, int depth) {
        String name = f.feature.getName();
        if (f.isChild()) {
            if (f.many) {
                for (Object child : (List<?>) value) {
                    child((EObject) child, f, name, depth);
                }
            } else {
                child((EObject) value, f, name, depth);
            }
            return;
        }
        for (Object item : (List<?>) value) {
            newLine(depth);
            out.add(f.elementStart);
            String text = f.print(item);
            if (text.isEmpty()) {
                out.add("/>");
            } else {
                out.add('>');
                out.escaped(text, false);
                out.add("</");
                out.add(name);
                out.add('>');
            }
        }
    }

    private void child(EObject child, FeatureShape f, String name, int depth) {
        newLine(depth);
        out.add(f.elementStart);
        if (child.eClass() != f.reference.getEReferenceType()) {
            type(child, depth);
        }
        rest(child, name, depth);
    }

    private boolean standIn(AnyType any, int depth) {
        standInAttributes(any, depth);
        return standInElements(any, depth, false);
    }

    private void standInAttributes(AnyType any, int depth) {
        for (FeatureMap.Entry e : any.getAnyAttribute()) {
            attribute(qualified(e.getEStructuralFeature()), String.valueOf(e.getValue()), depth);
        }
    }

    private boolean standInElements(AnyType any, int depth, boolean begun) {
        boolean content = begun;
        for (FeatureMap.Entry e : any.getMixed()) {
            content = open(content);
            if (e.getValue() instanceof AnyType child) {
                String name = qualified(e.getEStructuralFeature());
                newLine(depth + 1);
                out.add('<');
                out.add(name);
                if (child.eClass() != XMLTypePackage.Literals.ANY_TYPE) {
                    type(child, depth + 1);
                }
                rest(child, name, depth + 1);
                endsWithText = false;
            } else {
                out.escaped(String.valueOf(e.getValue()), false);
                endsWithText = true;
            }
        }
        return content;
    }

    private boolean open(boolean content) {
        if (!content) {
            out.add('>');
        }
        return true;
    }

    private void type(EObject object, int depth) {
        namespaces.put("xsi", XSI);
        attribute("xsi:type", typeName(object), depth);
    }

    private void attribute(String name, String value, int depth) {
        newLine(depth + 2);
        out.add(name);
        out.add("=\"");
        out.escaped(value, true);
        out.add('"');
    }

    private void newLine(int depth) {
        if (depth < INDENTS.length) {
            out.add(INDENTS[depth]);
        } else {
            out.add("\n" + "  ".repeat(depth));
        }
    }

    private String typeName(EObject object) {
        EPackage p = object.eClass().getEPackage();
        namespaces.put(p.getNsPrefix(), p.getNsURI());
        return p.getNsPrefix() + ":" + object.eClass().getName();
    }

    private String qualified(EStructuralFeature standInFeature) {
        String nsURI = packages.namespace(standInFeature);
        if (nsURI == null) {
            return standInFeature.getName();
        }
        String prefix = packages.prefix(nsURI);
        namespaces.put(prefix, nsURI);
        return prefix + ":" + standInFeature.getName();
    }

    private static String ids(Object value, FeatureShape f) {
        if (!f.many) {
            return id((EObject) value);
        }
        StringBuilder b = new StringBuilder();
        for (Object target : (List<?>) value) {
            b.append(b.isEmpty() ? "" : " ").append(id((EObject) target));
        }
        return b.toString();
    }

    private static String id(EObject target) {
        EAttribute a = target.eClass().getEIDAttribute();
        Object id = a == null ? null : target.eGet(a);
        if (id == null) {
            throw new IllegalStateException("Only an object with an id can be referred to, not a " + target.eClass().getName() + ".");
        }
        return id.toString();
    }
}
