package org.flexwright.core.session;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.Message;

/** What a project holds that this program does not know (details of absent plugins, entries of newer ones) as text, and back again. */
public final class UnknownText {
    private final Packages packages;

    UnknownText(Packages packages) {
        this.packages = packages;
    }

    /** True for details whose plugin is not here. */
    public static boolean isUnknown(EObject object) {
        return Packages.isStandIn(object);
    }

    /** Namespace and name of an unknown class, {@code urn:...#Name}. */
    public static String className(EObject unknown) {
        return unknown.eClass().getEPackage().getNsURI() + "#" + unknown.eClass().getName();
    }

    /** An unknown object as XML. */
    public String text(EObject unknown) {
        return ModelWriter.fragment(packages, List.of(unknown));
    }

    /** What a known object holds beside what is known of it, as XML; empty when there is nothing. */
    public Optional<String> beside(EObject known) {
        return Optional.ofNullable(UnknownFeatures.of(known)).map(any -> ModelWriter.fragment(packages, List.of(any)));
    }

    /** Reads what {@link #text} wrote. Throws {@link RefusedException} when it is something else. */
    public EObject read(String xml) {
        try {
            List<EObject> roots = ModelReader.fragment(packages, xml, id -> null).roots();
            if (roots.size() == 1 && isUnknown(roots.getFirst())) {
                return roots.getFirst();
            }
            throw new RefusedException(Message.of(ProjectStore.class, "unknown.other"));
        } catch (UnreadableException e) {
            throw new RefusedException(Message.of(ProjectStore.class, "unknown.unreadable", e.what().text()));
        }
    }

    /** Gives a known object what {@link #beside} wrote; what it held beside before is dropped. Throws {@link RefusedException}. */
    public void readBeside(EObject known, String xml) {
        AnyType content = UnknownFeatures.on(known);
        AnyType read = (AnyType) read(xml);
        content.getMixed().clear();
        content.getAnyAttribute().clear();
        content.getMixed().addAll(read.getMixed());
        content.getAnyAttribute().addAll(read.getAnyAttribute());
    }
}
