/** What can be measured or predicted, and how it compares. */
package org.flexwright.core.property;
