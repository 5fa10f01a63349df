/** The project's first page: the job, the needs, what comes next. */
package org.flexwright.workbench.overview;
