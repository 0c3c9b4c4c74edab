/**
 */
package cradlewright.model.floor;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Place Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see cradlewright.model.floor.FloorPackage#getPlaceKind()
 * @model
 * @generated
 */
public enum PlaceKind implements Enumerator {
	/**
	 * The '<em><b>BAY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAY_VALUE
	 * @generated
	 * @ordered
	 */
	BAY(0, "BAY", "bay"),

	/**
	 * The '<em><b>RACK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RACK_VALUE
	 * @generated
	 * @ordered
	 */
	RACK(1, "RACK", "rack"),

	/**
	 * The '<em><b>YARD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #YARD_VALUE
	 * @generated
	 * @ordered
	 */
	YARD(2, "YARD", "yard"),

	/**
	 * The '<em><b>BOOTH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BOOTH_VALUE
	 * @generated
	 * @ordered
	 */
	BOOTH(3, "BOOTH", "booth"),

	/**
	 * The '<em><b>AWAY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AWAY_VALUE
	 * @generated
	 * @ordered
	 */
	AWAY(4, "AWAY", "away");

	/**
	 * The '<em><b>BAY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAY
	 * @model literal="bay"
	 * @generated
	 * @ordered
	 */
	public static final int BAY_VALUE = 0;

	/**
	 * The '<em><b>RACK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RACK
	 * @model literal="rack"
	 * @generated
	 * @ordered
	 */
	public static final int RACK_VALUE = 1;

	/**
	 * The '<em><b>YARD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #YARD
	 * @model literal="yard"
	 * @generated
	 * @ordered
	 */
	public static final int YARD_VALUE = 2;

	/**
	 * The '<em><b>BOOTH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BOOTH
	 * @model literal="booth"
	 * @generated
	 * @ordered
	 */
	public static final int BOOTH_VALUE = 3;

	/**
	 * The '<em><b>AWAY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AWAY
	 * @model literal="away"
	 * @generated
	 * @ordered
	 */
	public static final int AWAY_VALUE = 4;

	/**
	 * An array of all the '<em><b>Place Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PlaceKind[] VALUES_ARRAY =
		new PlaceKind[] {
			BAY,
			RACK,
			YARD,
			BOOTH,
			AWAY,
		};

	/**
	 * A public read-only list of all the '<em><b>Place Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PlaceKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Place Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PlaceKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Place Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PlaceKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Place Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceKind get(int value) {
		switch (value) {
			case BAY_VALUE: return BAY;
			case RACK_VALUE: return RACK;
			case YARD_VALUE: return YARD;
			case BOOTH_VALUE: return BOOTH;
			case AWAY_VALUE: return AWAY;
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
	private PlaceKind(int value, String name, String literal) {
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
	
} //PlaceKind
