/**
 */
package cradlewright.model.base;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Hold</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How a support holds what stands on it.
 * <!-- end-model-doc -->
 * @see cradlewright.model.base.BasePackage#getHold()
 * @model
 * @generated
 */
public enum Hold implements Enumerator {
	/**
	 * The '<em><b>RESTS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RESTS_VALUE
	 * @generated
	 * @ordered
	 */
	RESTS(0, "RESTS", "rests"),

	/**
	 * The '<em><b>PINNED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PINNED_VALUE
	 * @generated
	 * @ordered
	 */
	PINNED(1, "PINNED", "pinned"),

	/**
	 * The '<em><b>BOLTED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BOLTED_VALUE
	 * @generated
	 * @ordered
	 */
	BOLTED(2, "BOLTED", "bolted");

	/**
	 * The '<em><b>RESTS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RESTS
	 * @model literal="rests"
	 * @generated
	 * @ordered
	 */
	public static final int RESTS_VALUE = 0;

	/**
	 * The '<em><b>PINNED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PINNED
	 * @model literal="pinned"
	 * @generated
	 * @ordered
	 */
	public static final int PINNED_VALUE = 1;

	/**
	 * The '<em><b>BOLTED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BOLTED
	 * @model literal="bolted"
	 * @generated
	 * @ordered
	 */
	public static final int BOLTED_VALUE = 2;

	/**
	 * An array of all the '<em><b>Hold</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Hold[] VALUES_ARRAY =
		new Hold[] {
			RESTS,
			PINNED,
			BOLTED,
		};

	/**
	 * A public read-only list of all the '<em><b>Hold</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Hold> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Hold</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hold get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Hold result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hold</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hold getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Hold result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hold</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hold get(int value) {
		switch (value) {
			case RESTS_VALUE: return RESTS;
			case PINNED_VALUE: return PINNED;
			case BOLTED_VALUE: return BOLTED;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private Hold(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //Hold
