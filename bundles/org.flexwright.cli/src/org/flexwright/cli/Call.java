package org.flexwright.cli;

import java.util.concurrent.Callable;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * One verb. A subclass says what it does in {@link #reply}; printing, {@code --json}, {@code --help} and exit statuses are done here
 * and in {@link Cli}.
 */
public abstract class Call implements Callable<Integer> {
    @Spec
    CommandSpec spec;

    @Option(names = "--json", description = "Print one JSON object instead of text.")
    boolean json;

    /** Does it. Throws {@link UsageException}, StoreException or QuantityException with one sentence when it cannot. */
    protected abstract Reply reply(CliServices services);

    @Override
    public final Integer call() {
        Cli cli = Cli.of(spec);
        Reply reply;
        try {
            reply = reply(cli.services());
        } catch (LinkageError e) {
            throw new IllegalStateException("A plugin does not fit the others.", e);
        }
        cli.print(reply, json);
        return reply.status();
    }

    /** Id of this call in the reply: {@code noun.verb}. */
    protected final String id() {
        return spec.parent().name() + "." + spec.name();
    }
}
