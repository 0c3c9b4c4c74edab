/**
 */
package cradlewright.model.stock;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fold Shape</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Outline of a folded section.
 * <!-- end-model-doc -->
 * @see cradlewright.model.stock.StockPackage#getFoldShape()
 * @model
 * @generated
 */
public enum FoldShape implements Enumerator {
	/**
	 * The '<em><b>CHANNEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHANNEL_VALUE
	 * @generated
	 * @ordered
	 */
	CHANNEL(0, "CHANNEL", "channel"),

	/**
	 * The '<em><b>LIPPED CHANNEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIPPED_CHANNEL_VALUE
	 * @generated
	 * @ordered
	 */
	LIPPED_CHANNEL(1, "LIPPED_CHANNEL", "lipped channel"),

	/**
	 * The '<em><b>ANGLE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANGLE_VALUE
	 * @generated
	 * @ordered
	 */
	ANGLE(2, "ANGLE", "angle"),

	/**
	 * The '<em><b>ZED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ZED_VALUE
	 * @generated
	 * @ordered
	 */
	ZED(3, "ZED", "zed"),

	/**
	 * The '<em><b>HAT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAT_VALUE
	 * @generated
	 * @ordered
	 */
	HAT(4, "HAT", "hat"),

	/**
	 * The '<em><b>POLYLINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYLINE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYLINE(5, "POLYLINE", "polyline");

	/**
	 * The '<em><b>CHANNEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHANNEL
	 * @model literal="channel"
	 * @generated
	 * @ordered
	 */
	public static final int CHANNEL_VALUE = 0;

	/**
	 * The '<em><b>LIPPED CHANNEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIPPED_CHANNEL
	 * @model literal="lipped channel"
	 * @generated
	 * @ordered
	 */
	public static final int LIPPED_CHANNEL_VALUE = 1;

	/**
	 * The '<em><b>ANGLE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANGLE
	 * @model literal="angle"
	 * @generated
	 * @ordered
	 */
	public static final int ANGLE_VALUE = 2;

	/**
	 * The '<em><b>ZED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ZED
	 * @model literal="zed"
	 * @generated
	 * @ordered
	 */
	public static final int ZED_VALUE = 3;

	/**
	 * The '<em><b>HAT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAT
	 * @model literal="hat"
	 * @generated
	 * @ordered
	 */
	public static final int HAT_VALUE = 4;

	/**
	 * The '<em><b>POLYLINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYLINE
	 * @model literal="polyline"
	 * @generated
	 * @ordered
	 */
	public static final int POLYLINE_VALUE = 5;

	/**
	 * An array of all the '<em><b>Fold Shape</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FoldShape[] VALUES_ARRAY =
		new FoldShape[] {
			CHANNEL,
			LIPPED_CHANNEL,
			ANGLE,
			ZED,
			HAT,
			POLYLINE,
		};

	/**
	 * A public read-only list of all the '<em><b>Fold Shape</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FoldShape> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fold Shape</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FoldShape get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FoldShape result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fold Shape</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FoldShape getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FoldShape result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fold Shape</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FoldShape get(int value) {
		switch (value) {
			case CHANNEL_VALUE: return CHANNEL;
			case LIPPED_CHANNEL_VALUE: return LIPPED_CHANNEL;
			case ANGLE_VALUE: return ANGLE;
			case ZED_VALUE: return ZED;
			case HAT_VALUE: return HAT;
			case POLYLINE_VALUE: return POLYLINE;
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
	private FoldShape(int value, String name, String literal) {
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
	
} //FoldShape
