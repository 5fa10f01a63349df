package org.flexwright.core.session;

import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.BasicExtendedMetaData;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.ExtendedMetaData;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.model.ModelPackage;

/** The packages that are here, and stand-ins for those that are not: what is unknown is kept as {@link AnyType} under its own names. */
final class Packages {
    private static final String MODEL_PREFIX = "urn:flexwright:model:";

    private final Map<String, EPackage> known = new HashMap<>();
    private final Map<String, DetailsPackage> details = new LinkedHashMap<>();
    private final ExtendedMetaData standIns = new BasicExtendedMetaData();
    private final Map<EClass, ClassShape> shapes = new HashMap<>();

    Packages(List<DetailsPackage> packages) {
        known.put(ModelPackage.eNS_URI, ModelPackage.eINSTANCE);
        for (DetailsPackage p : packages) {
            known.put(p.ePackage().getNsURI(), p.ePackage());
            details.put(p.ePackage().getNsURI(), p);
        }
    }

    /** Version number of a namespace of the core model, or 0 when it is another namespace. */
    static int modelVersion(String nsURI) {
        if (nsURI == null || !nsURI.startsWith(MODEL_PREFIX)) {
            return 0;
        }
        try {
            return Math.max(0, Integer.parseInt(nsURI.substring(MODEL_PREFIX.length())));
        } catch (NumberFormatException notANumber) {
            return 0;
        }
    }

    /** Version number of the core model this program writes. */
    static int modelVersion() {
        return modelVersion(ModelPackage.eNS_URI);
    }

    /** The package with that namespace; a newer core model is read with the names this program knows. Null when it is not here. */
    EPackage find(String nsURI) {
        EPackage p = known.get(nsURI);
        return p == null && modelVersion(nsURI) > modelVersion() ? ModelPackage.eINSTANCE : p;
    }

    /** The plugin package of a namespace, or null for the core model and unknown ones. */
    DetailsPackage details(String nsURI) {
        return details.get(nsURI);
    }

    /** A stand-in object of an unknown class, remembering namespace, prefix and name. */
    AnyType standIn(String nsURI, String prefix, String name) {
        standInPackage(nsURI, prefix);
        return (AnyType) EcoreUtil.create((EClass) (EClassifier) standIns.demandType(nsURI, name));
    }

    /** A stand-in feature for an unknown attribute or element; {@code nsURI} null when it has no namespace. */
    EStructuralFeature standInFeature(String nsURI, String prefix, String name, boolean element) {
        if (nsURI != null) {
            standInPackage(nsURI, prefix);
        }
        return standIns.demandFeature(nsURI, name, element);
    }

    /** Namespace of a stand-in feature, null when it has none. */
    String namespace(EStructuralFeature standInFeature) {
        return standIns.getNamespace(standInFeature);
    }

    private void standInPackage(String nsURI, String prefix) {
        EPackage p = standIns.demandPackage(nsURI);
        if (!prefix.isEmpty()) {
            p.setNsPrefix(prefix);
        }
    }

    /** Prefix under which a stand-in's namespace is written. */
    String prefix(String nsURI) {
        EPackage p = known.get(nsURI);
        return p != null ? p.getNsPrefix() : standIns.demandPackage(nsURI).getNsPrefix();
    }

    /** True for an object whose class is not here. */
    static boolean isStandIn(EObject object) {
        return object instanceof AnyType;
    }

    /** How objects of a class are written and read. */
    ClassShape shape(EClass eClass) {
        return shapes.computeIfAbsent(eClass, ClassShape::new);
    }

    /** Features of a class sorted by how they stand in a file; worked out once a class because a file has many objects of few classes. */
    static final class ClassShape {
        final EClass eClass;
        final EAttribute idAttribute;
        final FeatureShape[] attributes;
        final FeatureShape[] elements;
        private final Map<String, FeatureShape> byName = new HashMap<>();

        ClassShape(EClass eClass) {
            this.eClass = eClass;
            idAttribute = eClass.getEIDAttribute();
            List<FeatureShape> all = eClass.getEAllStructuralFeatures().stream()
                    .filter(f -> !f.isTransient() && !f.isDerived() && !(f instanceof EReference r && r.isContainer()))
                    .map(f -> new FeatureShape(eClass, f)).toList();
            attributes = all.stream().filter(f -> !f.isElement()).toArray(FeatureShape[]::new);
            elements = all.stream().filter(FeatureShape::isElement).toArray(FeatureShape[]::new);
            all.forEach(f -> byName.put(f.feature.getName(), f));
        }

        FeatureShape feature(String name) {
            return byName.get(name);
        }
    }

    /** One feature as it stands in a file. */
    static final class FeatureShape {
        final EStructuralFeature feature;
        final int id;
        final boolean many;
        final EDataType dataType;
        final EReference reference;
        final boolean text;
        final boolean number;
        final boolean instant;
        /** Its name and what follows until the value. */
        final byte[] attributeStart;
        /** What begins its elements. */
        final byte[] elementStart;

        FeatureShape(EClass owner, EStructuralFeature feature) {
            this.feature = feature;
            id = owner.getFeatureID(feature);
            many = feature.isMany();
            dataType = feature instanceof EAttribute a ? a.getEAttributeType() : null;
            reference = feature instanceof EReference r ? r : null;
            Class<?> type = dataType == null ? null : dataType.getInstanceClass();
            text = type == String.class;
            number = type == Double.class || type == double.class;
            instant = type == Instant.class;
            attributeStart = XmlBytes.utf8(feature.getName() + "=\"");
            elementStart = XmlBytes.utf8("<" + feature.getName());
        }

        boolean isElement() {
            return reference != null ? reference.isContainment() : many;
        }

        boolean isChild() {
            return reference != null && reference.isContainment();
        }

        Object parse(String literal) {
            if (text) {
                return literal;
            }
            if (number) {
                return Double.valueOf(literal);
            }
            if (instant) {
                return InstantText.parse(literal);
            }
            return EcoreUtil.createFromString(dataType, literal);
        }

        String print(Object value) {
            if (text) {
                return (String) value;
            }
            if (instant) {
                return InstantText.print((Instant) value);
            }
            if (value instanceof Double d && !Double.isFinite(d)) {
                throw new IllegalArgumentException("The feature " + feature.getName() + " takes a number, not " + d + ".");
            }
            return number ? value.toString() : EcoreUtil.convertToString(dataType, value);
        }
    }
}
