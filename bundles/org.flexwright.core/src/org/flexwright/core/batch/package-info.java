/** Making so many of a recipe: pots or runs, lots, the order of work, spares, checks, cost. Everything is computed from the model; only {@code Batches} writes. */
package org.flexwright.core.batch;
