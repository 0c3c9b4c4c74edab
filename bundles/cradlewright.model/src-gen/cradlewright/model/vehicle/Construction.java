/**
 */
package cradlewright.model.vehicle;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Construction</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see cradlewright.model.vehicle.VehiclePackage#getConstruction()
 * @model
 * @generated
 */
public enum Construction implements Enumerator {
	/**
	 * The '<em><b>SEPARATE CHASSIS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATE_CHASSIS_VALUE
	 * @generated
	 * @ordered
	 */
	SEPARATE_CHASSIS(0, "SEPARATE_CHASSIS", "separate chassis"),

	/**
	 * The '<em><b>INTEGRAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTEGRAL_VALUE
	 * @generated
	 * @ordered
	 */
	INTEGRAL(1, "INTEGRAL", "integral");

	/**
	 * The '<em><b>SEPARATE CHASSIS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATE_CHASSIS
	 * @model literal="separate chassis"
	 * @generated
	 * @ordered
	 */
	public static final int SEPARATE_CHASSIS_VALUE = 0;

	/**
	 * The '<em><b>INTEGRAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTEGRAL
	 * @model literal="integral"
	 * @generated
	 * @ordered
	 */
	public static final int INTEGRAL_VALUE = 1;

	/**
	 * An array of all the '<em><b>Construction</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Construction[] VALUES_ARRAY =
		new Construction[] {
			SEPARATE_CHASSIS,
			INTEGRAL,
		};

	/**
	 * A public read-only list of all the '<em><b>Construction</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Construction> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Construction</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Construction get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Construction result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Construction</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Construction getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Construction result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Construction</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Construction get(int value) {
		switch (value) {
			case SEPARATE_CHASSIS_VALUE: return SEPARATE_CHASSIS;
			case INTEGRAL_VALUE: return INTEGRAL;
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
	private Construction(int value, String name, String literal) {
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
	
} //Construction
