package org.eclipse.jface.util;

/** Passes the assertions of the diagram library on to those of the platform. */
public final class Assert {

    private Assert() {
    }

    /** Throws IllegalArgumentException when the expression is false; returns true. */
    public static boolean isLegal(boolean expression) {
        return org.eclipse.core.runtime.Assert.isLegal(expression);
    }

    /** Throws an unchecked exception when the object is null. */
    public static void isNotNull(Object object) {
        org.eclipse.core.runtime.Assert.isNotNull(object);
    }

    /** Throws an unchecked exception with the message when the object is null. */
    public static void isNotNull(Object object, String message) {
        org.eclipse.core.runtime.Assert.isNotNull(object, message);
    }

    /** Throws an unchecked exception when the expression is false; returns true. */
    public static boolean isTrue(boolean expression) {
        return org.eclipse.core.runtime.Assert.isTrue(expression);
    }

    /** Throws an unchecked exception with the message when the expression is false; returns true. */
    public static boolean isTrue(boolean expression, String message) {
        return org.eclipse.core.runtime.Assert.isTrue(expression, message);
    }
}
