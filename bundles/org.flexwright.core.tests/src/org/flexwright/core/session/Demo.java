package org.flexwright.core.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.ModelPackage;

/** A plugin's details package made for the tests, and stores that know it or not. */
public final class Demo {
    public static final String NS = "urn:flexwright:demo:1";
    public static final Instant NOW = Instant.parse("2026-03-01T09:30:00Z");

    public final EPackage ePackage = EcoreFactory.eINSTANCE.createEPackage();
    final EClass pour = EcoreFactory.eINSTANCE.createEClass();
    final EClass row = EcoreFactory.eINSTANCE.createEClass();
    final EClass special = EcoreFactory.eINSTANCE.createEClass();

    /** The package. */
    public Demo() {
        ePackage.setName("demo");
        ePackage.setNsPrefix("demo");
        ePackage.setNsURI(NS);
        pour.setName("Pour");
        row.setName("Row");
        special.setName("SpecialRow");
        special.getESuperTypes().add(row);
        ePackage.getEClassifiers().addAll(List.of(pour, row, special));
        attribute(pour, "planned", EcorePackage.Literals.EDOUBLE_OBJECT, false);
        attribute(pour, "actual", EcorePackage.Literals.EDOUBLE_OBJECT, false);
        attribute(pour, "words", EcorePackage.Literals.ESTRING, false);
        attribute(pour, "tags", EcorePackage.Literals.ESTRING, true);
        attribute(pour, "clear", EcorePackage.Literals.EBOOLEAN, false);
        reference(pour, "rows", row, true, true);
        reference(pour, "first", row, false, true);
        reference(pour, "grade", ModelPackage.Literals.MATERIAL_GRADE, false, false);
        reference(pour, "lots", ModelPackage.Literals.LOT, true, false);
        attribute(row, "value", EcorePackage.Literals.EDOUBLE_OBJECT, false);
        attribute(row, "at", ModelPackage.Literals.INSTANT, false);
        reference(row, "rows", row, true, true);
        attribute(special, "why", EcorePackage.Literals.ESTRING, false);
    }

    private static void attribute(EClass owner, String name, EClassifier type, boolean many) {
        EAttribute a = EcoreFactory.eINSTANCE.createEAttribute();
        add(owner, a, name, type, many);
    }

    private static void reference(EClass owner, String name, EClass type, boolean many, boolean contains) {
        EReference r = EcoreFactory.eINSTANCE.createEReference();
        r.setContainment(contains);
        add(owner, r, name, type, many);
    }

    private static void add(EClass owner, EStructuralFeature f, String name, EClassifier type, boolean many) {
        f.setName(name);
        f.setEType(type);
        f.setUpperBound(many ? -1 : 1);
        owner.getEStructuralFeatures().add(f);
    }

    public EObject newPour() {
        return EcoreUtil.create(pour);
    }

    EStructuralFeature feature(String name) {
        return pour.getEStructuralFeature(name);
    }

    public DetailsPackage here() {
        return new DetailsPackage(ePackage, "org.flexwright.demo", "1.2.3");
    }

    public StoreContext context() {
        return context(List.of(here()));
    }

    public static StoreContext context(List<DetailsPackage> packages) {
        return new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "Tester", "1.0.0", packages);
    }

    public ProjectStore store() {
        return new ProjectStore(context());
    }

    public ProjectStore storeWithoutPlugin() {
        return new ProjectStore(context(List.of()));
    }

    public static Path folder(Path parent) {
        return parent.resolve("Dome.flexwright");
    }
}
