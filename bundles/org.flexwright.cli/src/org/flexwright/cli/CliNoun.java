package org.flexwright.cli;

/**
 * A noun a plugin adds to the command line. Register it as an OSGi service; the object returned is a picocli command whose
 * subcommands extend {@link Call}.
 */
public interface CliNoun {
    /** A fresh command object, annotated with {@code picocli.CommandLine.Command}. */
    Object command();
}
