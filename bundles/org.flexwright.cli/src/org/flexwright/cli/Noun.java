package org.flexwright.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A noun alone is wrong usage: it names its verbs. */
abstract class Noun implements Runnable {
    @Spec
    CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do with " + spec.name() + ": one of "
                + String.join(", ", spec.subcommands().keySet()) + ".");
    }
}
