/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Temporary Load</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is in or on the shell for a while.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.TemporaryLoad#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.TemporaryLoad#getMass <em>Mass</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.TemporaryLoad#getPosition <em>Position</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getTemporaryLoad()
 * @model
 * @generated
 */
public interface TemporaryLoad extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(LoadKind)
	 * @see cradlewright.model.vehicle.VehiclePackage#getTemporaryLoad_Kind()
	 * @model dataType="cradlewright.model.vehicle.LoadKindObject"
	 * @generated
	 */
	LoadKind getKind();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.TemporaryLoad#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(LoadKind value);

	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getTemporaryLoad_Mass()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getMass();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.TemporaryLoad#getMass <em>Mass</em>}' attribute.
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
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getTemporaryLoad_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.TemporaryLoad#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

} // TemporaryLoad
