/** What a check is and what it answers: verdict, reason, what it rests on, what to do. */
package cradlewright.analysis.check;
