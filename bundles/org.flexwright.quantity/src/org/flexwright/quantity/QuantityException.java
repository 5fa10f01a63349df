package org.flexwright.quantity;

import java.util.List;

/**
 * A text that is no quantity of the kind asked for. The message is one sentence fit to show: what was typed, what is
 * wrong, what is allowed.
 */
public final class QuantityException extends RuntimeException {
	private static final long serialVersionUID = 1L;

	private final transient List<String> arguments;
	private final QuantityProblem problem;

	QuantityException(QuantityProblem problem, String message, List<String> arguments) {
		super(message);
		this.problem = problem;
		this.arguments = List.copyOf(arguments);
	}

	/** What is wrong; the key of the sentence. */
	public QuantityProblem problem() {
		return problem;
	}

	/** The arguments of the sentence, in its order. */
	public List<String> arguments() {
		return arguments;
	}
}
