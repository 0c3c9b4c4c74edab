/** Makes the verification report, and tests that it is whole and that every library is accounted for. */
package cradlewright.verification;
