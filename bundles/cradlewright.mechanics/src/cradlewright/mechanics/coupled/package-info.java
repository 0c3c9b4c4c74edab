/** Bodies (shell, chassis, dolly) joined through contacts and solved together, rigid or elastic. */
package cradlewright.mechanics.coupled;
