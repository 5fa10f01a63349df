/** Session, store, registries, properties and findings that every capability builds on. */
package org.flexwright.core;
