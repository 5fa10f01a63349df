package org.flexwright.core.search;

/** A term and where the words behind it begin. */
record Parsed(Term term, int next) {
}
