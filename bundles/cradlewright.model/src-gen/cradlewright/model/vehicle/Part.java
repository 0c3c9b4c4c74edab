/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Part</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of the parts list.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Part#getMass <em>Mass</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Part#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Part#getTemperatureLimit <em>Temperature Limit</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getPart()
 * @model
 * @generated
 */
public interface Part extends Named {
	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPart_Mass()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getMass();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Part#getMass <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass</em>' attribute.
	 * @see #getMass()
	 * @generated
	 */
	void setMass(Measured value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Balance point of the part in the axes of the marks, for every stage.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPart_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Part#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature Limit</em>' attribute.
	 * @see #setTemperatureLimit(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPart_TemperatureLimit()
	 * @model dataType="cradlewright.model.base.Temperature"
	 * @generated
	 */
	Measured getTemperatureLimit();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Part#getTemperatureLimit <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature Limit</em>' attribute.
	 * @see #getTemperatureLimit()
	 * @generated
	 */
	void setTemperatureLimit(Measured value);

} // Part
