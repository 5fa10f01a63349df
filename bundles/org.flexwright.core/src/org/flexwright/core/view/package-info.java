/** Table, comparison and plot models that screens, reports and the command line only draw. */
package org.flexwright.core.view;
