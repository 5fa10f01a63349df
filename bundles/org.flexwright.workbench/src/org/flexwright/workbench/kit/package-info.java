/** Building blocks of every screen: colours, type, spacing, fields, findings, verdicts, strips and charts. */
package org.flexwright.workbench.kit;
