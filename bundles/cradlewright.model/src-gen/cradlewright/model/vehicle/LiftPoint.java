/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Basis;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lift Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where the car may be lifted.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getCondition <em>Condition</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getSheetThickness <em>Sheet Thickness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getLookedAt <em>Looked At</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.LiftPoint#getBasis <em>Basis</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint()
 * @model
 * @generated
 */
public interface LiftPoint extends Named {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Condition</em>' attribute.
	 * @see #setCondition(Condition)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_Condition()
	 * @model dataType="cradlewright.model.base.ConditionObject"
	 * @generated
	 */
	Condition getCondition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getCondition <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Condition</em>' attribute.
	 * @see #getCondition()
	 * @generated
	 */
	void setCondition(Condition value);

	/**
	 * Returns the value of the '<em><b>Sheet Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Thickness</em>' attribute.
	 * @see #setSheetThickness(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_SheetThickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getSheetThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getSheetThickness <em>Sheet Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Thickness</em>' attribute.
	 * @see #getSheetThickness()
	 * @generated
	 */
	void setSheetThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Looked At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Looked At</em>' attribute.
	 * @see #setLookedAt(LocalDate)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_LookedAt()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getLookedAt();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getLookedAt <em>Looked At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Looked At</em>' attribute.
	 * @see #getLookedAt()
	 * @generated
	 */
	void setLookedAt(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Capacity</em>' attribute.
	 * @see #setCapacity(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_Capacity()
	 * @model dataType="cradlewright.model.base.Force"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getCapacity();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getCapacity <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capacity</em>' attribute.
	 * @see #getCapacity()
	 * @generated
	 */
	void setCapacity(Measured value);

	/**
	 * Returns the value of the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Basis</em>' attribute.
	 * @see #setBasis(Basis)
	 * @see cradlewright.model.vehicle.VehiclePackage#getLiftPoint_Basis()
	 * @model dataType="cradlewright.model.base.BasisObject"
	 * @generated
	 */
	Basis getBasis();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.LiftPoint#getBasis <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basis</em>' attribute.
	 * @see #getBasis()
	 * @generated
	 */
	void setBasis(Basis value);

} // LiftPoint
