package cradlewright.analysis.load;

import java.util.OptionalDouble;

/**
 * By how much a support may sink at rest until it carries nothing; empty where no sinking that matters takes its load off.
 *
 * @param contactId the support
 * @param stiff with the stiffest shell that the files allow, m
 * @param soft with the softest shell that the files allow, m
 */
public record LiftOff(String contactId, OptionalDouble stiff, OptionalDouble soft) {
}
