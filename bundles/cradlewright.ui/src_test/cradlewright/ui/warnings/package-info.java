/** Tests of gathering answers. */
package cradlewright.ui.warnings;
