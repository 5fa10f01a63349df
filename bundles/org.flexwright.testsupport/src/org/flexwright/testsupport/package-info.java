/** What tests share: comparing with the printed figures of the reference sheets, and the page that shows the outcome. For tests only. */
package org.flexwright.testsupport;
