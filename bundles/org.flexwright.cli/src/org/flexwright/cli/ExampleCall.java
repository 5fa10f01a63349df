package org.flexwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

import org.flexwright.example.ExampleProject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The invented example, built by code. */
@Command(name = "example", description = "Build the invented example project in a new folder.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright example tactile-dome.flexwright" })
final class ExampleCall extends Call {
    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "Folder to make; tactile-dome.flexwright when left out.")
    Path folder = Path.of(ExampleProject.FOLDER_NAME);

    @Override
    protected Reply reply(CliServices services) {
        ExampleProject example = new ExampleProject(services.registries(), services.programVersion());
        if (!example.possible()) {
            throw new CliException("The example needs the routes moulding, vat print and filament, and at least one of them is not here.", null);
        }
        Path target = services.workingFolder().resolve(folder);
        if (Files.exists(target)) {
            throw new CliException("There is something at " + folder + " already: name a folder that does not exist yet.", null);
        }
        example.build(target);
        return new Reply("example").words("folder", folder.toString());
    }
}
