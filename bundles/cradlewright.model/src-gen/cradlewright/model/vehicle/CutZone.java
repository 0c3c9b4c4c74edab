/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Position;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cut Zone</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Box of the shell where metal is or will be cut out.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.CutZone#getLow <em>Low</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.CutZone#getHigh <em>High</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.CutZone#isPlanned <em>Planned</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.CutZone#getBraces <em>Braces</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getCutZone()
 * @model
 * @generated
 */
public interface CutZone extends Named {
	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Corner with the least x, y and z.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getCutZone_Low()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getLow();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.CutZone#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Position value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Corner with the largest x, y and z.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getCutZone_High()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getHigh();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.CutZone#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Position value);

	/**
	 * Returns the value of the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned</em>' attribute.
	 * @see #setPlanned(boolean)
	 * @see cradlewright.model.vehicle.VehiclePackage#getCutZone_Planned()
	 * @model
	 * @generated
	 */
	boolean isPlanned();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.CutZone#isPlanned <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned</em>' attribute.
	 * @see #isPlanned()
	 * @generated
	 */
	void setPlanned(boolean value);

	/**
	 * Returns the value of the '<em><b>Braces</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Brace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Braces that must be in before the cut.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Braces</em>' reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCutZone_Braces()
	 * @model
	 * @generated
	 */
	EList<Brace> getBraces();

} // CutZone
