package org.flexwright.cli;

/** The words of the call are wrong: one sentence says what and what is allowed. Ends with status 2. */
final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UsageException(String sentence) {
        super(sentence);
    }
}
