/** Changes numbers in the mechanics sources, one at a time, to see whether the tests notice. */
package cradlewright.verification;
