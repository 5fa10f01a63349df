package org.flexwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Generates the model code of all bundles that have a {@code model/*.genmodel}. It works on a scratch copy and leaves
 * the bundles alone. Bundles may use each other's packages; their order does not matter.
 */
public final class ModelGenerator {

    private static final String GENMODEL = ".genmodel";

    private final Path bundles;

    /** @param bundles the folder that holds the bundles, one folder each */
    public ModelGenerator(Path bundles) {
        this.bundles = bundles;
    }

    /**
     * Generates into copies of the model bundles below {@code scratch}.
     *
     * @throws IllegalStateException if a model is not valid; its message names the model and what is wrong
     */
    public List<ModelCode> generate(Path scratch) throws IOException {
        List<Path> genmodels = genmodels();
        Set<String> names = new LinkedHashSet<>();
        for (Path genmodel : genmodels) {
            String bundle = genmodel.getName(0).toString();
            if (!names.add(bundle)) {
                throw new IllegalStateException("Bundle " + bundle + " has more than one .genmodel; one is allowed.");
            }
            Path copy = scratch.resolve(bundle);
            Trees.copy(bundles.resolve(bundle).resolve("model"), copy.resolve("model"));
            EcorePlugin.getPlatformResourceMap().put(bundle, URI.createFileURI(copy + "/"));
        }
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        List<ModelCode> result = new ArrayList<>();
        for (Path genmodel : genmodels) {
            generateOne(genmodel);
            String bundle = genmodel.getName(0).toString();
            result.add(new ModelCode(bundle, scratch.resolve(bundle)));
        }
        return result;
    }

    /** Paths like {@code bundle/model/name.genmodel}, sorted. */
    private List<Path> genmodels() throws IOException {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> list = Files.list(bundles)) {
            for (Path folder : list.sorted().map(bundle -> bundle.resolve("model")).filter(Files::isDirectory).toList()) {
                try (Stream<Path> models = Files.list(folder)) {
                    models.filter(file -> file.toString().endsWith(GENMODEL)).sorted().map(bundles::relativize)
                            .forEach(found::add);
                }
            }
        }
        return found;
    }

    private static void generateOne(Path path) {
        String name = path.toString().replace('\\', '/');
        GenModel model = (GenModel) resources().getResource(URI.createPlatformResourceURI(name, true), true)
                .getContents().get(0);
        reconcile(model, new LinkedHashSet<>());
        model.setCanGenerate(true);
        model.setValidateModel(true);
        check(name, model.diagnose());
        Generator generator = new Generator();
        generator.setInput(model);
        check(name, generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
    }

    /** Fills in what a genmodel leaves out, in the models it uses first, since their classes are asked for by it. */
    private static void reconcile(GenModel model, Set<GenModel> seen) {
        if (!seen.add(model)) {
            return;
        }
        for (GenPackage used : model.getUsedGenPackages()) {
            reconcile(used.getGenModel(), seen);
        }
        model.reconcile();
    }

    private static ResourceSet resources() {
        ResourceSet set = new ResourceSetImpl();
        set.getPackageRegistry().put(EcorePackage.eNS_URI, EcorePackage.eINSTANCE);
        set.getPackageRegistry().put(GenModelPackage.eNS_URI, GenModelPackage.eINSTANCE);
        for (String extension : List.of("ecore", "genmodel")) {
            set.getResourceFactoryRegistry().getExtensionToFactoryMap().put(extension, new EcoreResourceFactoryImpl());
        }
        return set;
    }

    private static void check(String name, Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            StringBuilder text = new StringBuilder(name).append(": ");
            describe(diagnostic, text);
            throw new IllegalStateException(text.toString());
        }
    }

    private static void describe(Diagnostic diagnostic, StringBuilder text) {
        text.append(diagnostic.getMessage());
        for (Diagnostic child : diagnostic.getChildren()) {
            text.append("; ");
            describe(child, text);
        }
    }
}
