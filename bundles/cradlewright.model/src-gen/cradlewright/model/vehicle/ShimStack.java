/**
 */
package cradlewright.model.vehicle;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shim Stack</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Shims at one support from the bottom up; their order is a fact.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.ShimStack#getShims <em>Shims</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getShimStack()
 * @model
 * @generated
 */
public interface ShimStack extends EObject {
	/**
	 * Returns the value of the '<em><b>Shims</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Shim}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shims</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getShimStack_Shims()
	 * @model containment="true"
	 * @generated
	 */
	EList<Shim> getShims();

} // ShimStack
