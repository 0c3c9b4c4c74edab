/** Space frames of Timoshenko members: stiffness, loads, member forces, free bodies condensed to their contacts. */
package cradlewright.mechanics.frame;
