/** What the answers would be after a change that is only thought of: nothing of it reaches the files. */
package cradlewright.analysis.change;
