/** The example project. */
package org.flexwright.example;
