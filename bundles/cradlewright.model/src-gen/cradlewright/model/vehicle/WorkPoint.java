/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Direction;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Work Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where people lean, pull or stand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.WorkPoint#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.WorkPoint#getDirection <em>Direction</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.WorkPoint#getKind <em>Kind</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getWorkPoint()
 * @model
 * @generated
 */
public interface WorkPoint extends Named {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWorkPoint_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.WorkPoint#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Direction</em>' attribute.
	 * @see #setDirection(Direction)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWorkPoint_Direction()
	 * @model dataType="cradlewright.model.base.Direction"
	 * @generated
	 */
	Direction getDirection();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.WorkPoint#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Direction</em>' attribute.
	 * @see #getDirection()
	 * @generated
	 */
	void setDirection(Direction value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(WorkKind)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWorkPoint_Kind()
	 * @model dataType="cradlewright.model.vehicle.WorkKindObject"
	 * @generated
	 */
	WorkKind getKind();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.WorkPoint#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(WorkKind value);

} // WorkPoint
