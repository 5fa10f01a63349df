/** What the plugins registered, without duplicates, and what failed and why. */
package org.flexwright.core.registry;
