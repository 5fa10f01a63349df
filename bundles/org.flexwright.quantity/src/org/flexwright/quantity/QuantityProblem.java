package org.flexwright.quantity;

import java.util.List;
import java.util.ResourceBundle;

/** What can be wrong with a typed quantity. The sentences stand in {@code messages.properties} under the constant's name. */
public enum QuantityProblem {
	/** Nothing was typed. Arguments: the kind, an example. */
	BLANK,
	/** It does not start with a number. Arguments: typed, the kind, an example. */
	NO_NUMBER,
	/** More characters than any quantity has. Arguments: how it begins, the most allowed, an example. */
	TOO_LONG,
	/** NaN, infinity or a number too large. Arguments: typed. */
	NOT_FINITE,
	/** A fraction over zero. Arguments: typed. */
	ZERO_DENOMINATOR,
	/** Grouped digits, or point and comma together. Arguments: typed, what is meant perhaps. */
	GROUPED_DIGITS,
	/** A comma that could be a decimal or a thousands mark. Arguments: typed, both readings. */
	AMBIGUOUS_COMMA,
	/** The unit is missing and there is no default. Arguments: typed, the kind, an example, the units. */
	NO_UNIT,
	/** The unit is known nowhere. Arguments: typed, the unit, the kind, the units. */
	UNKNOWN_UNIT,
	/** The unit belongs to another kind. Arguments: typed, the unit, the kind found, the kind asked for, the units. */
	WRONG_KIND,
	/** A Shore scale in place of another. Arguments: typed, the kind found, the kind asked for. */
	OTHER_SCALE,
	/** Not a whole number. Arguments: typed, the kind. */
	NOT_WHOLE,
	/** Below what can exist. Arguments: typed, the lowest. */
	TOO_LOW,
	/** One currency asked for another. Arguments: typed, the currency asked for. */
	CURRENCY;

	private static final ResourceBundle SENTENCES = ResourceBundle.getBundle("org.flexwright.quantity.messages");

	QuantityException with(String... arguments) {
		String sentence = SENTENCES.getString(name());
		for (int i = 0; i < arguments.length; i++) {
			sentence = sentence.replace("{" + i + "}", arguments[i]);
		}
		return new QuantityException(this, sentence, List.of(arguments));
	}
}
