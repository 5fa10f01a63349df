package org.flexwright.cli;

/** A file or project cannot be read, written or locked: one sentence. Ends with status 3. */
final class CliException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CliException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
