/**
 */
package cradlewright.model.stock;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Tread</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Tread of a castor wheel.
 * <!-- end-model-doc -->
 * @see cradlewright.model.stock.StockPackage#getTread()
 * @model
 * @generated
 */
public enum Tread implements Enumerator {
	/**
	 * The '<em><b>RUBBER SOFT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RUBBER_SOFT_VALUE
	 * @generated
	 * @ordered
	 */
	RUBBER_SOFT(0, "RUBBER_SOFT", "soft rubber"),

	/**
	 * The '<em><b>RUBBER HARD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RUBBER_HARD_VALUE
	 * @generated
	 * @ordered
	 */
	RUBBER_HARD(1, "RUBBER_HARD", "hard rubber"),

	/**
	 * The '<em><b>POLYURETHANE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYURETHANE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYURETHANE(2, "POLYURETHANE", "polyurethane"),

	/**
	 * The '<em><b>POLYAMIDE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYAMIDE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYAMIDE(3, "POLYAMIDE", "polyamide"),

	/**
	 * The '<em><b>STEEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	STEEL(4, "STEEL", "steel");

	/**
	 * The '<em><b>RUBBER SOFT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RUBBER_SOFT
	 * @model literal="soft rubber"
	 * @generated
	 * @ordered
	 */
	public static final int RUBBER_SOFT_VALUE = 0;

	/**
	 * The '<em><b>RUBBER HARD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RUBBER_HARD
	 * @model literal="hard rubber"
	 * @generated
	 * @ordered
	 */
	public static final int RUBBER_HARD_VALUE = 1;

	/**
	 * The '<em><b>POLYURETHANE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYURETHANE
	 * @model literal="polyurethane"
	 * @generated
	 * @ordered
	 */
	public static final int POLYURETHANE_VALUE = 2;

	/**
	 * The '<em><b>POLYAMIDE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYAMIDE
	 * @model literal="polyamide"
	 * @generated
	 * @ordered
	 */
	public static final int POLYAMIDE_VALUE = 3;

	/**
	 * The '<em><b>STEEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL
	 * @model literal="steel"
	 * @generated
	 * @ordered
	 */
	public static final int STEEL_VALUE = 4;

	/**
	 * An array of all the '<em><b>Tread</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Tread[] VALUES_ARRAY =
		new Tread[] {
			RUBBER_SOFT,
			RUBBER_HARD,
			POLYURETHANE,
			POLYAMIDE,
			STEEL,
		};

	/**
	 * A public read-only list of all the '<em><b>Tread</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Tread> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Tread</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Tread get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Tread result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tread</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Tread getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Tread result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tread</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Tread get(int value) {
		switch (value) {
			case RUBBER_SOFT_VALUE: return RUBBER_SOFT;
			case RUBBER_HARD_VALUE: return RUBBER_HARD;
			case POLYURETHANE_VALUE: return POLYURETHANE;
			case POLYAMIDE_VALUE: return POLYAMIDE;
			case STEEL_VALUE: return STEEL;
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
	private Tread(int value, String name, String literal) {
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
	
} //Tread
