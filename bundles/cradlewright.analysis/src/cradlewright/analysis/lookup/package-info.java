/** Everything that the files and the loads tell about one support, for whoever stands before it. */
package cradlewright.analysis.lookup;
