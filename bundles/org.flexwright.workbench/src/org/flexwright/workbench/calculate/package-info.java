/** Every calculation as a form: inputs at the left, results at the right as one types. */
package org.flexwright.workbench.calculate;
