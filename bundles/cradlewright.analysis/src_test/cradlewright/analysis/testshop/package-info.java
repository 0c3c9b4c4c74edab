/** Small shops for the tests of the checks. */
package cradlewright.analysis.testshop;
