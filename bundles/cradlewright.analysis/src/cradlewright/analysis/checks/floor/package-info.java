/** Whether the floor takes what castors put on it. */
package cradlewright.analysis.checks.floor;
