/** Situations in words, what every support, castor and member carries in them, and how a piece hangs from one hook. */
package cradlewright.analysis.load;
