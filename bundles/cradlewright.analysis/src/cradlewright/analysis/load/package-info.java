/** Situations in words, and what every support, castor and member carries in them. */
package cradlewright.analysis.load;
