/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stage</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Which parts are on.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Stage#getOn <em>On</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Stage#getLoads <em>Loads</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getStage()
 * @model
 * @generated
 */
public interface Stage extends Named {
	/**
	 * Returns the value of the '<em><b>On</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Part}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On</em>' reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getStage_On()
	 * @model
	 * @generated
	 */
	EList<Part> getOn();

	/**
	 * Returns the value of the '<em><b>Loads</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.TemporaryLoad}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Loads</em>' reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getStage_Loads()
	 * @model
	 * @generated
	 */
	EList<TemporaryLoad> getLoads();

} // Stage
