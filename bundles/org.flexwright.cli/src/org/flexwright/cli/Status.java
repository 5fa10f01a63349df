package org.flexwright.cli;

/** Exit statuses of the command line. */
final class Status {
    static final int FINE = 0;
    static final int FINDINGS = 1;
    static final int USAGE = 2;
    static final int STORE = 3;

    private Status() {
    }
}
