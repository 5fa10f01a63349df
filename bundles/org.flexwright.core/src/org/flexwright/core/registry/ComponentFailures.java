package org.flexwright.core.registry;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Message;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;

/** Asks the component runtime which of our components broke while starting. */
@Component(service = ActivationFailures.class)
public final class ComponentFailures implements ActivationFailures {
    /** Longest part of the runtime's report that still reads as a sentence. */
    private static final int LONGEST = 200;

    private final ServiceComponentRuntime runtime;

    /** Made by the component runtime itself. */
    @Activate
    public ComponentFailures(@Reference ServiceComponentRuntime runtime) {
        this.runtime = runtime;
    }

    @Override
    public List<Failure> now() {
        List<Failure> failures = new ArrayList<>();
        for (ComponentDescriptionDTO component : runtime.getComponentDescriptionDTOs()) {
            for (ComponentConfigurationDTO configuration : runtime.getComponentConfigurationDTOs(component)) {
                if (configuration.state == ComponentConfigurationDTO.FAILED_ACTIVATION) {
                    failures.add(new Failure(component.name, Message.of(ComponentFailures.class, "notStarted", reason(configuration.failure)).text(),
                            component.bundle.symbolicName));
                }
            }
        }
        return failures;
    }

    /** The last cause names what is wrong; the rest of the stack is for the log. */
    private static String reason(String report) {
        String text = report == null ? "" : report;
        int cause = text.lastIndexOf("Caused by: ");
        String line = (cause >= 0 ? text.substring(cause + "Caused by: ".length()) : text).lines().findFirst().orElse("");
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }
}
