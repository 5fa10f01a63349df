package org.flexwright.workbench.bench;

import java.util.List;

import org.flexwright.workbench.bench.Choices.Choice;

/** The balance at the bench: which one, what it shows now, and what of it may be taken. */
final class BalanceDesk {

    private Runnable listener = () -> { };
    private String refusal = "";

    void listen(Runnable changed) {
        listener = changed;
    }

    boolean connected() {
        return false;
    }

    String name() {
        return "none";
    }

    /** What it shows now, for the number field; empty when nothing. */
    String live() {
        return "";
    }

    /** A steady reading that may be taken, with its unit; empty when there is none. */
    String steady() {
        return "";
    }

    /** What a line typed means, as a field reads it; empty when it is refused. */
    String read(String typed) {
        refusal = "";
        return typed;
    }

    String refusal() {
        return refusal;
    }

    List<Choice> offered(Runnable then) {
        return List.of(new Choice("None: type or tap", then));
    }

    void close() {
    }
}
