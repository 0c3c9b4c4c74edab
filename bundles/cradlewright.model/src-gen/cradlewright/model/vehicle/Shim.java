/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.stock.ShimType;

import cradlewright.quantity.Measured;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Equal shims lying on each other: pieces of a kind in stock, or loose ones by thickness.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Shim#getShim <em>Shim</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Shim#getLoose <em>Loose</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Shim#getCount <em>Count</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getShim()
 * @model
 * @generated
 */
public interface Shim extends EObject {
	/**
	 * Returns the value of the '<em><b>Shim</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shim</em>' reference.
	 * @see #setShim(ShimType)
	 * @see cradlewright.model.vehicle.VehiclePackage#getShim_Shim()
	 * @model
	 * @generated
	 */
	ShimType getShim();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Shim#getShim <em>Shim</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shim</em>' reference.
	 * @see #getShim()
	 * @generated
	 */
	void setShim(ShimType value);

	/**
	 * Returns the value of the '<em><b>Loose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness of one loose piece.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Loose</em>' attribute.
	 * @see #setLoose(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getShim_Loose()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getLoose();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Shim#getLoose <em>Loose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Loose</em>' attribute.
	 * @see #getLoose()
	 * @generated
	 */
	void setLoose(Measured value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Integer)
	 * @see cradlewright.model.vehicle.VehiclePackage#getShim_Count()
	 * @model annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Integer getCount();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Shim#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Integer value);

} // Shim
