/** All answers of the checks, gathered and filtered, with an explanation of the selected one beside them. */
package cradlewright.ui.warnings;
