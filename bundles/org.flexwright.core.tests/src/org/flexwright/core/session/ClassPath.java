package org.flexwright.core.session;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMIResource;
import org.flexwright.model.ModelPackage;
import org.flexwright.quantity.QuantityKind;

/** The class path of a program without OSGi that a test starts and kills: where the classes in use came from. */
public final class ClassPath {
    private ClassPath() {
    }

    /** Where these classes, the model and EMF are. */
    public static String of(Class<?>... used) {
        List<Class<?>> all = new ArrayList<>(List.of(used));
        all.addAll(List.of(ModelPackage.class, QuantityKind.class, EObject.class, URI.class, XMIResource.class));
        Set<String> places = new LinkedHashSet<>();
        all.forEach(c -> places.addAll(places(c)));
        return places.stream().collect(Collectors.joining(File.pathSeparator));
    }

    private static List<String> places(Class<?> c) {
        try {
            Path place = Path.of(c.getProtectionDomain().getCodeSource().getLocation().toURI());
            // a bundle taken from its project has its classes in a folder below
            return List.of(place.toString(), place.resolve("target/classes").toString(), place.resolve("bin").toString());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
