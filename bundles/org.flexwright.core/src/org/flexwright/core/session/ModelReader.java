package org.flexwright.core.session;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.FeatureMapUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.emf.ecore.xml.type.XMLTypeFactory;
import org.flexwright.core.session.Packages.ClassShape;
import org.flexwright.core.session.Packages.FeatureShape;
import org.flexwright.core.session.StoreException.Kind;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.ext.DefaultHandler2;

/**
 * Reads what {@link ModelWriter} writes. A file is data from a stranger: document types, entities and references to other files are
 * refused, classes are never looked up by name, and nothing is fetched. What is unknown is kept.
 */
final class ModelReader extends DefaultHandler2 {
    static final String XMI = "http://www.omg.org/XMI";
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";
    /** Deeper than any project; keeps a hostile file from exhausting the stack when it is written or walked. */
    private static final int DEEPEST = 64;

    private final Packages packages;
    private final boolean fragment;
    private final List<EObject> roots = new ArrayList<>();
    private final Map<String, EObject> ids = new HashMap<>();
    private final List<Pending> pending = new ArrayList<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private final Map<String, String> prefixes = new HashMap<>();
    private final Deque<Frame> frames = new ArrayDeque<>();
    private Locator locator;
    private int modelVersion;
    private int formatVersion;
    private boolean headOnly;
    private int unknownFeatures;

    /** An element being read: a known object, a stand-in or a plain value. */
    private static final class Frame {
        final EObject object;
        final ClassShape shape;
        final FeatureShape value;
        StringBuilder text;

        Frame(EObject object, ClassShape shape, FeatureShape value) {
            this.object = object;
            this.shape = shape;
            this.value = value;
        }
    }

    private record Pending(EObject owner, FeatureShape feature, String ids, int line) {
    }

    private ModelReader(Packages packages, boolean fragment) {
        this.packages = packages;
        this.fragment = fragment;
    }

    /**
     * What was read.
     *
     * @param roots           objects at the top
     * @param ids             objects by id
     * @param missing         namespaces of details whose package is not here
     * @param modelVersion    version of the core model the file was written with
     * @param formatVersion   version of the layout the file was written with
     * @param unknownFeatures how many attributes and elements of known objects are unknown here
     */
    record Content(List<EObject> roots, Map<String, EObject> ids, Set<String> missing, int modelVersion, int formatVersion,
            int unknownFeatures) {
    }

    /** Reads a whole file. */
    static Content document(Packages packages, byte[] bytes) throws UnreadableException {
        return new ModelReader(packages, false).read(new InputSource(new ByteArrayInputStream(bytes)), id -> null);
    }

    /** Reads no further than the first element: what it is and which versions wrote it. */
    static Content head(Packages packages, byte[] bytes) throws UnreadableException {
        ModelReader reader = new ModelReader(packages, false);
        reader.headOnly = true;
        return reader.read(new InputSource(new ByteArrayInputStream(bytes)), id -> null);
    }

    /** Reads a fragment; objects outside it are asked of {@code outside} by their id. */
    static Content fragment(Packages packages, String xml, Function<String, EObject> outside) throws UnreadableException {
        return new ModelReader(packages, true).read(new InputSource(new StringReader(xml)), outside);
    }

    private Content read(InputSource source, Function<String, EObject> outside) throws UnreadableException {
        try {
            XMLReader parser = parser();
            parser.setContentHandler(this);
            parser.setErrorHandler(this);
            parser.setEntityResolver(this);
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", this);
            parser.parse(source);
        } catch (Stop stop) {
            if (stop.reason != null) {
                throw stop.reason;
            }
        } catch (SAXParseException e) {
            throw new UnreadableException(Kind.UNREADABLE, "xml.damaged", e.getLineNumber(), e.getColumnNumber());
        } catch (SAXException | IOException e) {
            throw new UnreadableException(Kind.UNREADABLE, "xml.damaged", line(), locator == null ? 0 : locator.getColumnNumber());
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("The Java runtime has no usable XML parser.", e);
        }
        resolve(outside);
        return new Content(roots, ids, missing, modelVersion, formatVersion, unknownFeatures);
    }

    private static XMLReader parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.setXIncludeAware(false);
        return factory.newSAXParser().getXMLReader();
    }

    /** Ends the parsing, with a reason of our own or because enough was read. */
    private static final class Stop extends SAXException {
        private static final long serialVersionUID = 1L;
        private final transient UnreadableException reason;

        Stop(UnreadableException reason) {
            this.reason = reason;
        }
    }

    private Stop stop(Kind kind, String key, Object... args) {
        Object[] all = new Object[args.length + 1];
        all[0] = line();
        System.arraycopy(args, 0, all, 1, args.length);
        return new Stop(new UnreadableException(kind, key, all));
    }

    private int line() {
        return locator == null ? 0 : Math.max(locator.getLineNumber(), 0);
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startDTD(String name, String publicId, String systemId) throws SAXException {
        throw stop(Kind.HOSTILE, "xml.doctype");
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String baseURI, String systemId) throws SAXException {
        throw stop(Kind.HOSTILE, "xml.entity");
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }

    @Override
    public void startPrefixMapping(String prefix, String uri) {
        prefixes.put(prefix, uri);
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
        if (frames.size() >= DEEPEST) {
            throw stop(Kind.HOSTILE, "xml.deep", DEEPEST);
        }
        Frame parent = frames.peek();
        if (parent == null) {
            if (fragment) {
                frames.push(new Frame(null, null, null));
            } else {
                root(uri, localName, qName, attributes);
            }
        } else if (parent.shape != null) {
            knownChild(parent, uri, localName, qName, attributes);
        } else if (parent.object != null) {
            standInChild((AnyType) parent.object, parent, uri, localName, qName, attributes);
        } else if (parent.value == null) {
            root(uri, localName, qName, attributes);
        } else {
            throw stop(Kind.UNREADABLE, "xml.unexpected", qName);
        }
    }

    private void root(String uri, String name, String qName, Attributes attributes) throws SAXException {
        EObject object;
        if (fragment) {
            object = create(uri, prefix(qName), name);
        } else {
            modelVersion = Packages.modelVersion(uri);
            if (modelVersion == 0 || !name.equals("Project")) {
                throw stop(Kind.UNREADABLE, "xml.noProject");
            }
            formatVersion = formatVersion(attributes.getValue("formatVersion"));
            if (headOnly) {
                throw new Stop(null);
            }
            object = create(uri, prefix(qName), name);
        }
        roots.add(object);
        push(object, attributes);
    }

    private int formatVersion(String literal) throws SAXException {
        try {
            return literal == null ? 0 : Integer.parseInt(literal);
        } catch (NumberFormatException e) {
            throw stop(Kind.UNREADABLE, "xml.value", "formatVersion", literal);
        }
    }

    private void knownChild(Frame parent, String uri, String name, String qName, Attributes attributes) throws SAXException {
        FeatureShape f = uri.isEmpty() ? parent.shape.feature(name) : null;
        if (f != null && f.reference != null && !f.isChild()) {
            throw stop(Kind.HOSTILE, "xml.href");
        }
        if (f == null || !f.isElement()) {
            unknownFeatures++;
            standInChild(UnknownFeatures.on(parent.object), parent, uri, name, qName, attributes);
            return;
        }
        if (!f.isChild()) {
            frames.push(new Frame(parent.object, null, f));
            frames.peek().text = new StringBuilder();
            return;
        }
        EObject child = child(f, attributes);
        InternalEObject owner = (InternalEObject) parent.object;
        if (f.many) {
            // a new object cannot be in the list yet, so nobody needs to look
            ((InternalEList<EObject>) list(owner, f)).addUnique(child);
        } else {
            owner.eSet(f.id, child);
        }
        push(child, attributes);
    }

    @SuppressWarnings("unchecked")
    private static List<EObject> list(InternalEObject owner, FeatureShape f) {
        return (List<EObject>) owner.eGet(f.id, true, true);
    }

    private EObject child(FeatureShape f, Attributes attributes) throws SAXException {
        String type = attributes.getValue(XSI, "type");
        EClass declared = f.reference.getEReferenceType();
        if (type == null) {
            if (declared.isAbstract() || declared.isInterface() || declared.getInstanceClass() == EObject.class) {
                throw stop(Kind.UNREADABLE, "xml.noType", f.feature.getName());
            }
            return EcoreUtil.create(declared);
        }
        EObject object = typed(type);
        if (!f.reference.getEReferenceType().isInstance(object)) {
            throw stop(Kind.UNREADABLE, "xml.wrongType", f.feature.getName(), type);
        }
        return object;
    }

    private EObject typed(String type) throws SAXException {
        int colon = type.indexOf(':');
        String prefix = colon < 0 ? "" : type.substring(0, colon);
        String uri = prefixes.get(prefix);
        if (uri == null) {
            throw stop(Kind.UNREADABLE, "xml.noPrefix", type);
        }
        return create(uri, prefix, type.substring(colon + 1));
    }

    private EObject create(String uri, String prefix, String name) {
        EPackage p = packages.find(uri);
        EClassifier c = p == null ? null : p.getEClassifier(name);
        if (c instanceof EClass eClass && !eClass.isAbstract() && !eClass.isInterface()) {
            return EcoreUtil.create(eClass);
        }
        missing.add(uri);
        return packages.standIn(uri, prefix, name);
    }

    private void standInChild(AnyType owner, Frame parent, String uri, String name, String qName, Attributes attributes) throws SAXException {
        dropBlank(parent);
        flushText(parent);
        String type = attributes.getValue(XSI, "type");
        AnyType child;
        if (type == null) {
            child = XMLTypeFactory.eINSTANCE.createAnyType();
        } else {
            int colon = type.indexOf(':');
            String typeUri = prefixes.get(colon < 0 ? "" : type.substring(0, colon));
            if (typeUri == null) {
                throw stop(Kind.UNREADABLE, "xml.noPrefix", type);
            }
            child = packages.standIn(typeUri, colon < 0 ? "" : type.substring(0, colon), type.substring(colon + 1));
        }
        owner.getMixed().add(packages.standInFeature(uri.isEmpty() ? null : uri, prefix(qName), name, true), child);
        push(child, attributes);
    }

    private static String prefix(String qName) {
        int colon = qName.indexOf(':');
        return colon < 0 ? "" : qName.substring(0, colon);
    }

    private void push(EObject object, Attributes attributes) throws SAXException {
        if (object instanceof AnyType any) {
            for (int i = 0; i < attributes.getLength(); i++) {
                keepAttribute(any, attributes, i);
            }
            frames.push(new Frame(object, null, null));
            frames.peek().text = new StringBuilder();
            return;
        }
        ClassShape shape = packages.shape(object.eClass());
        InternalEObject o = (InternalEObject) object;
        for (int i = 0; i < attributes.getLength(); i++) {
            FeatureShape f = attributes.getURI(i).isEmpty() ? shape.feature(attributes.getLocalName(i)) : null;
            if (f == null || f.isElement()) {
                keepUnknown(object, attributes, i);
            } else if (f.reference != null) {
                pending.add(new Pending(object, f, attributes.getValue(i), line()));
            } else {
                o.eSet(f.id, value(f, attributes.getValue(i)));
            }
        }
        if (shape.idAttribute != null) {
            Object id = object.eGet(shape.idAttribute);
            if (id != null && ids.put(id.toString(), object) != null) {
                throw stop(Kind.UNREADABLE, "xml.sameId", id);
            }
        }
        frames.push(new Frame(object, shape, null));
    }

    private void keepUnknown(EObject object, Attributes attributes, int i) throws SAXException {
        if (attributes.getURI(i).equals(XMI) && attributes.getLocalName(i).equals("version") || attributes.getURI(i).equals(XSI)) {
            return;
        }
        if (attributes.getLocalName(i).equals("href")) {
            throw stop(Kind.HOSTILE, "xml.href");
        }
        unknownFeatures++;
        keepAttribute(UnknownFeatures.on(object), attributes, i);
    }

    private void keepAttribute(AnyType any, Attributes attributes, int i) {
        String uri = attributes.getURI(i);
        if (uri.equals(XSI)) {
            return;
        }
        any.getAnyAttribute().add(
                packages.standInFeature(uri.isEmpty() ? null : uri, prefix(attributes.getQName(i)), attributes.getLocalName(i), false),
                attributes.getValue(i));
    }

    private Object value(FeatureShape f, String literal) throws SAXException {
        try {
            Object value = f.parse(literal);
            if (value instanceof Double d && !Double.isFinite(d)) {
                throw stop(Kind.UNREADABLE, "xml.value", f.feature.getName(), literal);
            }
            return value;
        } catch (RuntimeException e) {
            throw stop(Kind.UNREADABLE, "xml.value", f.feature.getName(), literal);
        }
    }

    @Override
    public void characters(char[] ch, int start, int length) throws SAXException {
        Frame f = frames.peek();
        if (f != null && f.text != null) {
            f.text.append(ch, start, length);
            return;
        }
        for (int i = start; i < start + length; i++) {
            if (ch[i] > ' ') {
                throw stop(Kind.UNREADABLE, "xml.text");
            }
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) throws SAXException {
        Frame f = frames.pop();
        if (f.value != null) {
            addValue(f);
        } else if (f.text != null) {
            if (!((AnyType) f.object).getMixed().isEmpty()) {
                dropBlank(f);
            }
            flushText(f);
        }
    }

    @SuppressWarnings("unchecked")
    private void addValue(Frame f) throws SAXException {
        ((List<Object>) (List<?>) list((InternalEObject) f.object, f.value)).add(value(f.value, f.text.toString()));
    }

    private static void dropBlank(Frame f) {
        if (f.text != null && f.text.chars().allMatch(c -> c <= ' ')) {
            f.text.setLength(0);
        }
    }

    private static void flushText(Frame f) {
        if (f.text != null && !f.text.isEmpty()) {
            FeatureMapUtil.addText(((AnyType) f.object).getMixed(), f.text.toString());
            f.text.setLength(0);
        }
    }

    private void resolve(Function<String, EObject> outside) throws UnreadableException {
        for (Pending p : pending) {
            for (String id : p.ids.split(" ")) {
                EObject target = ids.get(id);
                if (target == null) {
                    target = outside.apply(id);
                }
                if (target == null || !p.feature.reference.getEReferenceType().isInstance(target)) {
                    throw new UnreadableException(Kind.UNREADABLE, "xml.dangling", p.line, p.feature.feature.getName(), id);
                }
                if (p.feature.many) {
                    list((InternalEObject) p.owner, p.feature).add(target);
                } else {
                    ((InternalEObject) p.owner).eSet(p.feature.id, target);
                }
            }
        }
    }
}
