/** Whether axle stands and trestles take what rests on them. */
package cradlewright.analysis.checks.stand;
