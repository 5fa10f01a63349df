/** Reports about a project. */
package org.flexwright.report;
