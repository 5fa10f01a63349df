package org.flexwright.workbench;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the program was started with.
 *
 * @param open    folder of the project to open, if one was named
 * @param trouble one sentence about an argument that was not understood, or empty
 */
record StartArguments(Optional<Path> open, String trouble) {

    /** Reads the arguments; other programs' arguments are passed over. */
    static StartArguments of(String[] arguments) {
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i].equals("--open")) {
                if (i + 1 == arguments.length) {
                    return new StartArguments(Optional.empty(), "After --open comes the folder of a project, its name ends in .flexwright.");
                }
                try {
                    return new StartArguments(Optional.of(Path.of(arguments[i + 1]).toAbsolutePath().normalize()), "");
                } catch (InvalidPathException e) {
                    return new StartArguments(Optional.empty(), "After --open comes a folder; \"" + arguments[i + 1] + "\" cannot be one.");
                }
            }
        }
        return new StartArguments(Optional.empty(), "");
    }
}
