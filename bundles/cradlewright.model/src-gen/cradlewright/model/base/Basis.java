/**
 */
package cradlewright.model.base;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Basis</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a load that something may carry is rated by.
 * <!-- end-model-doc -->
 * @see cradlewright.model.base.BasePackage#getBasis()
 * @model
 * @generated
 */
public enum Basis implements Enumerator {
	/**
	 * The '<em><b>WORKING LOAD LIMIT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING_LOAD_LIMIT_VALUE
	 * @generated
	 * @ordered
	 */
	WORKING_LOAD_LIMIT(0, "WORKING_LOAD_LIMIT", "working load limit"),

	/**
	 * The '<em><b>RATED LOAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RATED_LOAD_VALUE
	 * @generated
	 * @ordered
	 */
	RATED_LOAD(1, "RATED_LOAD", "rated load"),

	/**
	 * The '<em><b>DESIGN RESISTANCE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DESIGN_RESISTANCE_VALUE
	 * @generated
	 * @ordered
	 */
	DESIGN_RESISTANCE(2, "DESIGN_RESISTANCE", "design resistance");

	/**
	 * The '<em><b>WORKING LOAD LIMIT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING_LOAD_LIMIT
	 * @model literal="working load limit"
	 * @generated
	 * @ordered
	 */
	public static final int WORKING_LOAD_LIMIT_VALUE = 0;

	/**
	 * The '<em><b>RATED LOAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RATED_LOAD
	 * @model literal="rated load"
	 * @generated
	 * @ordered
	 */
	public static final int RATED_LOAD_VALUE = 1;

	/**
	 * The '<em><b>DESIGN RESISTANCE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DESIGN_RESISTANCE
	 * @model literal="design resistance"
	 * @generated
	 * @ordered
	 */
	public static final int DESIGN_RESISTANCE_VALUE = 2;

	/**
	 * An array of all the '<em><b>Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Basis[] VALUES_ARRAY =
		new Basis[] {
			WORKING_LOAD_LIMIT,
			RATED_LOAD,
			DESIGN_RESISTANCE,
		};

	/**
	 * A public read-only list of all the '<em><b>Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Basis> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Basis</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Basis get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Basis result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Basis</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Basis getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Basis result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Basis</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Basis get(int value) {
		switch (value) {
			case WORKING_LOAD_LIMIT_VALUE: return WORKING_LOAD_LIMIT;
			case RATED_LOAD_VALUE: return RATED_LOAD;
			case DESIGN_RESISTANCE_VALUE: return DESIGN_RESISTANCE;
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
	private Basis(int value, String name, String literal) {
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
	
} //Basis
