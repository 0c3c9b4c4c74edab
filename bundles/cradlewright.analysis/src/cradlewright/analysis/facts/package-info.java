/** The shop as immutable records in SI units: what checks, solvers and reports read instead of the editable model. */
package cradlewright.analysis.facts;
