/**
 */
package cradlewright.model.base;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Condition</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * State of the sheet at a point.
 * <!-- end-model-doc -->
 * @see cradlewright.model.base.BasePackage#getCondition()
 * @model
 * @generated
 */
public enum Condition implements Enumerator {
	/**
	 * The '<em><b>SOUND</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOUND_VALUE
	 * @generated
	 * @ordered
	 */
	SOUND(0, "SOUND", "sound"),

	/**
	 * The '<em><b>THIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THIN_VALUE
	 * @generated
	 * @ordered
	 */
	THIN(1, "THIN", "thin"),

	/**
	 * The '<em><b>HOLED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOLED_VALUE
	 * @generated
	 * @ordered
	 */
	HOLED(2, "HOLED", "holed"),

	/**
	 * The '<em><b>REPAIRED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REPAIRED_VALUE
	 * @generated
	 * @ordered
	 */
	REPAIRED(3, "REPAIRED", "repaired"),

	/**
	 * The '<em><b>NOT LOOKED AT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_LOOKED_AT_VALUE
	 * @generated
	 * @ordered
	 */
	NOT_LOOKED_AT(4, "NOT_LOOKED_AT", "not looked at");

	/**
	 * The '<em><b>SOUND</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOUND
	 * @model literal="sound"
	 * @generated
	 * @ordered
	 */
	public static final int SOUND_VALUE = 0;

	/**
	 * The '<em><b>THIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THIN
	 * @model literal="thin"
	 * @generated
	 * @ordered
	 */
	public static final int THIN_VALUE = 1;

	/**
	 * The '<em><b>HOLED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOLED
	 * @model literal="holed"
	 * @generated
	 * @ordered
	 */
	public static final int HOLED_VALUE = 2;

	/**
	 * The '<em><b>REPAIRED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REPAIRED
	 * @model literal="repaired"
	 * @generated
	 * @ordered
	 */
	public static final int REPAIRED_VALUE = 3;

	/**
	 * The '<em><b>NOT LOOKED AT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_LOOKED_AT
	 * @model literal="not looked at"
	 * @generated
	 * @ordered
	 */
	public static final int NOT_LOOKED_AT_VALUE = 4;

	/**
	 * An array of all the '<em><b>Condition</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Condition[] VALUES_ARRAY =
		new Condition[] {
			SOUND,
			THIN,
			HOLED,
			REPAIRED,
			NOT_LOOKED_AT,
		};

	/**
	 * A public read-only list of all the '<em><b>Condition</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Condition> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Condition</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Condition get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Condition result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Condition</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Condition getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Condition result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Condition</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Condition get(int value) {
		switch (value) {
			case SOUND_VALUE: return SOUND;
			case THIN_VALUE: return THIN;
			case HOLED_VALUE: return HOLED;
			case REPAIRED_VALUE: return REPAIRED;
			case NOT_LOOKED_AT_VALUE: return NOT_LOOKED_AT;
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
	private Condition(int value, String name, String literal) {
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
	
} //Condition
