/**
 */
package cradlewright.model.vehicle;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Weighing Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one scale showed, and where it stood.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.WeighingReading#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.WeighingReading#getMass <em>Mass</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getWeighingReading()
 * @model
 * @generated
 */
public interface WeighingReading extends EObject {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighingReading_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.WeighingReading#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighingReading_Mass()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getMass();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.WeighingReading#getMass <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass</em>' attribute.
	 * @see #getMass()
	 * @generated
	 */
	void setMass(Measured value);

} // WeighingReading
