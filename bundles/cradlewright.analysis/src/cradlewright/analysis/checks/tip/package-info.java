/** Whether a car on its supports or on its dolly falls over when it is pushed, stands on a slope or is stopped dead. */
package cradlewright.analysis.checks.tip;
