/** Tests of looking supports up. */
package cradlewright.analysis.lookup;
