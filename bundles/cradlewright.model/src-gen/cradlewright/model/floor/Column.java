/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Column</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Column of the building.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.Column#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.floor.Column#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.floor.Column#getDepth <em>Depth</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.floor.FloorPackage#getColumn()
 * @model
 * @generated
 */
public interface Column extends Named {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.floor.FloorPackage#getColumn_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Column#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getColumn_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Column#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getColumn_Depth()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getDepth();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Column#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Measured value);

} // Column
