package org.flexwright.numerics;

/** A computation that did not settle: the problem has no solution where it was looked for, or is too steep. */
public final class ConvergenceException extends RuntimeException {
	private static final long serialVersionUID = 1L;

	ConvergenceException(String message, Throwable cause) {
		super(message, cause);
	}
}
