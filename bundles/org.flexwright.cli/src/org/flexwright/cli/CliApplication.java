package org.flexwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.flexwright.core.registry.Registries;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/** The command line as an application; its result is the exit status of the process. */
public final class CliApplication implements IApplication {

    @Override
    public Object start(IApplicationContext application) throws InvalidSyntaxException {
        application.applicationRunning();
        String[] args = (String[]) application.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        BundleContext bundles = FrameworkUtil.getBundle(CliApplication.class).getBundleContext();
        ServiceReference<Registries> registries = bundles.getServiceReference(Registries.class);
        try (PrintWriter out = writer(FileDescriptor.out); PrintWriter err = writer(FileDescriptor.err)) {
            if (registries == null) {
                err.println("The program is incomplete: its registries did not start. The details are in the log.");
                return Status.STORE;
            }
            CliServices services = new CliServices(bundles.getService(registries), Clock.systemUTC(), Path.of("").toAbsolutePath(),
                    System.getProperty("user.name", ""), bundles.getBundle().getVersion().toString(), nouns(bundles), CliApplication::log);
            return new Cli(services, out, err).run(List.of(args));
        }
    }

    private static String log(String what, Throwable problem) {
        ILog.get().error(what, problem);
        return Platform.getLogFileLocation().toOSString();
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), false);
    }

    private static List<CliNoun> nouns(BundleContext bundles) throws InvalidSyntaxException {
        List<CliNoun> nouns = new ArrayList<>();
        Collection<ServiceReference<CliNoun>> references = bundles.getServiceReferences(CliNoun.class, null);
        references.stream().sorted().forEach(reference -> nouns.add(bundles.getService(reference)));
        return nouns;
    }

    @Override
    public void stop() {
        // nothing runs beside start()
    }
}
