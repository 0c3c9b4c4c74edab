/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Brace</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Bar that keeps an opening in shape.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Brace#getFrom <em>From</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Brace#getTo <em>To</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Brace#isFitted <em>Fitted</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getBrace()
 * @model
 * @generated
 */
public interface Brace extends Named {
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getBrace_From()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getFrom();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Brace#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Position value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getBrace_To()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getTo();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Brace#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Position value);

	/**
	 * Returns the value of the '<em><b>Fitted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fitted</em>' attribute.
	 * @see #setFitted(boolean)
	 * @see cradlewright.model.vehicle.VehiclePackage#getBrace_Fitted()
	 * @model
	 * @generated
	 */
	boolean isFitted();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Brace#isFitted <em>Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fitted</em>' attribute.
	 * @see #isFitted()
	 * @generated
	 */
	void setFitted(boolean value);

} // Brace
