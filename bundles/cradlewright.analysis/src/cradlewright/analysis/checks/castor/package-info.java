/** Whether the castors under a dolly carry, roll, stay and climb as they must. */
package cradlewright.analysis.checks.castor;
