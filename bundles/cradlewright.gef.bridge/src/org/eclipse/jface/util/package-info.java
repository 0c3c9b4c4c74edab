/** The assertions that the diagram library calls under a name which the platform has given up. */
package org.eclipse.jface.util;
