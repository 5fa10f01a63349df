/** Rules that need nothing but the core model. */
package org.flexwright.core.find.rules;
