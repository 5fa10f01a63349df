/** Photos: taken into documents, and searched for label codes. */
package org.flexwright.report.photo;
