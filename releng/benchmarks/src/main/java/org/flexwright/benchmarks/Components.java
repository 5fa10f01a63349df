package org.flexwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.jar.Manifest;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.core.property.PropertySet;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.registry.Registries;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** The registries without OSGi: every component on the class path that needs no service is made with {@code new}. */
final class Components {

    private final List<Object> made = new ArrayList<>();

    private Components() {
    }

    static Registries registries() throws IOException, ReflectiveOperationException {
        Components components = new Components();
        Enumeration<URL> manifests = Components.class.getClassLoader().getResources("META-INF/MANIFEST.MF");
        while (manifests.hasMoreElements()) {
            URL manifest = manifests.nextElement();
            try (InputStream in = manifest.openStream()) {
                String listed = new Manifest(in).getMainAttributes().getValue("Service-Component");
                if (listed != null) {
                    for (String entry : listed.split("\\s*,\\s*")) {
                        components.make(new URL(manifest, "../" + entry));
                    }
                }
            }
        }
        List<Calculation<?, ?>> calculations = new ArrayList<>();
        components.of(Calculation.class).forEach(calculation -> calculations.add(calculation));
        return new Registries(calculations, components.of(StepKind.class), components.of(ProcessKind.class),
                components.of(FindingRule.class), components.of(PropertySet.class), components.of(PropertyEstimator.class), List.of(), components.of(RecordingKind.class));
    }

    private void make(URL description) throws IOException, ReflectiveOperationException {
        Document document;
        try (InputStream in = description.openStream()) {
            document = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(in);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IOException(description + " cannot be read: " + e.getMessage(), e);
        }
        String name = ((Element) document.getElementsByTagName("implementation").item(0)).getAttribute("class");
        if (name.startsWith("org.flexwright.") && document.getElementsByTagName("reference").getLength() == 0) {
            made.add(Class.forName(name).getDeclaredConstructor().newInstance());
        }
    }

    private <T> List<T> of(Class<T> type) {
        return made.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
