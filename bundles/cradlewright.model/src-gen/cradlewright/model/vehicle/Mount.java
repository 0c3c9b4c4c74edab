/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;

import cradlewright.model.stock.BoltType;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mount</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Body mount: where the shell meets the chassis.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Mount#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getCondition <em>Condition</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getSheetThickness <em>Sheet Thickness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getBolt <em>Bolt</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getBoltCount <em>Bolt Count</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getState <em>State</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getAsFound <em>As Found</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getOnDolly <em>On Dolly</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Mount#getAsBuilt <em>As Built</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getMount()
 * @model
 * @generated
 */
public interface Mount extends Named {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getPosition <em>Position</em>}' attribute.
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
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_Condition()
	 * @model dataType="cradlewright.model.base.ConditionObject"
	 * @generated
	 */
	Condition getCondition();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getCondition <em>Condition</em>}' attribute.
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
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_SheetThickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getSheetThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getSheetThickness <em>Sheet Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Thickness</em>' attribute.
	 * @see #getSheetThickness()
	 * @generated
	 */
	void setSheetThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Bolt</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bolt</em>' reference.
	 * @see #setBolt(BoltType)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_Bolt()
	 * @model
	 * @generated
	 */
	BoltType getBolt();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getBolt <em>Bolt</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bolt</em>' reference.
	 * @see #getBolt()
	 * @generated
	 */
	void setBolt(BoltType value);

	/**
	 * Returns the value of the '<em><b>Bolt Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bolt Count</em>' attribute.
	 * @see #setBoltCount(Integer)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_BoltCount()
	 * @model annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Integer getBoltCount();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getBoltCount <em>Bolt Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bolt Count</em>' attribute.
	 * @see #getBoltCount()
	 * @generated
	 */
	void setBoltCount(Integer value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fast or free; not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see #setState(MountState)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_State()
	 * @model dataType="cradlewright.model.vehicle.MountStateObject"
	 * @generated
	 */
	MountState getState();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see #getState()
	 * @generated
	 */
	void setState(MountState value);

	/**
	 * Returns the value of the '<em><b>As Found</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shims as found when taken apart.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>As Found</em>' containment reference.
	 * @see #setAsFound(ShimStack)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_AsFound()
	 * @model containment="true"
	 * @generated
	 */
	ShimStack getAsFound();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getAsFound <em>As Found</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>As Found</em>' containment reference.
	 * @see #getAsFound()
	 * @generated
	 */
	void setAsFound(ShimStack value);

	/**
	 * Returns the value of the '<em><b>On Dolly</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shims while on the dolly.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>On Dolly</em>' containment reference.
	 * @see #setOnDolly(ShimStack)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_OnDolly()
	 * @model containment="true"
	 * @generated
	 */
	ShimStack getOnDolly();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getOnDolly <em>On Dolly</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On Dolly</em>' containment reference.
	 * @see #getOnDolly()
	 * @generated
	 */
	void setOnDolly(ShimStack value);

	/**
	 * Returns the value of the '<em><b>As Built</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shims as put back together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>As Built</em>' containment reference.
	 * @see #setAsBuilt(ShimStack)
	 * @see cradlewright.model.vehicle.VehiclePackage#getMount_AsBuilt()
	 * @model containment="true"
	 * @generated
	 */
	ShimStack getAsBuilt();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Mount#getAsBuilt <em>As Built</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>As Built</em>' containment reference.
	 * @see #getAsBuilt()
	 * @generated
	 */
	void setAsBuilt(ShimStack value);

} // Mount
