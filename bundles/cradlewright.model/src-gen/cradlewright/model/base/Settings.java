/**
 */
package cradlewright.model.base;

import cradlewright.quantity.Measured;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Settings</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the shop decided itself; where one is missing, common practice stands in and is named.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.Settings#getPersonMass <em>Person Mass</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getLeanForce <em>Lean Force</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getBarForce <em>Bar Force</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getRequiredRatio <em>Required Ratio</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getTightMargin <em>Tight Margin</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getJointFactor <em>Joint Factor</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getStepHeight <em>Step Height</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getFloorUnevenness <em>Floor Unevenness</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getSlope <em>Slope</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getWalkingSpeed <em>Walking Speed</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getFrictionLow <em>Friction Low</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getFrictionHigh <em>Friction High</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getStoringTolerance <em>Storing Tolerance</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getWorkingTolerance <em>Working Tolerance</em>}</li>
 *   <li>{@link cradlewright.model.base.Settings#getWeldingTolerance <em>Welding Tolerance</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.base.BasePackage#getSettings()
 * @model
 * @generated
 */
public interface Settings extends EObject {
	/**
	 * Returns the value of the '<em><b>Person Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One person with tools.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person Mass</em>' attribute.
	 * @see #setPersonMass(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_PersonMass()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getPersonMass();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getPersonMass <em>Person Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person Mass</em>' attribute.
	 * @see #getPersonMass()
	 * @generated
	 */
	void setPersonMass(Measured value);

	/**
	 * Returns the value of the '<em><b>Lean Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Somebody leans on an end.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lean Force</em>' attribute.
	 * @see #setLeanForce(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_LeanForce()
	 * @model dataType="cradlewright.model.base.Force"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getLeanForce();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getLeanForce <em>Lean Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lean Force</em>' attribute.
	 * @see #getLeanForce()
	 * @generated
	 */
	void setLeanForce(Measured value);

	/**
	 * Returns the value of the '<em><b>Bar Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Somebody pulls on a bar.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bar Force</em>' attribute.
	 * @see #setBarForce(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_BarForce()
	 * @model dataType="cradlewright.model.base.Force"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getBarForce();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getBarForce <em>Bar Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bar Force</em>' attribute.
	 * @see #getBarForce()
	 * @generated
	 */
	void setBarForce(Measured value);

	/**
	 * Returns the value of the '<em><b>Required Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By how much what steadies must exceed what upsets.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Required Ratio</em>' attribute.
	 * @see #setRequiredRatio(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_RequiredRatio()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getRequiredRatio();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getRequiredRatio <em>Required Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Required Ratio</em>' attribute.
	 * @see #getRequiredRatio()
	 * @generated
	 */
	void setRequiredRatio(Measured value);

	/**
	 * Returns the value of the '<em><b>Tight Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of capacity below which a verdict is TIGHT.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tight Margin</em>' attribute.
	 * @see #setTightMargin(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_TightMargin()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getTightMargin();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getTightMargin <em>Tight Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tight Margin</em>' attribute.
	 * @see #getTightMargin()
	 * @generated
	 */
	void setTightMargin(Measured value);

	/**
	 * Returns the value of the '<em><b>Joint Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Factor on the load of a castor that rolls over a joint of the floor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Joint Factor</em>' attribute.
	 * @see #setJointFactor(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_JointFactor()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getJointFactor();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getJointFactor <em>Joint Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Joint Factor</em>' attribute.
	 * @see #getJointFactor()
	 * @generated
	 */
	void setJointFactor(Measured value);

	/**
	 * Returns the value of the '<em><b>Step Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step Height</em>' attribute.
	 * @see #setStepHeight(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_StepHeight()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getStepHeight();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getStepHeight <em>Step Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step Height</em>' attribute.
	 * @see #getStepHeight()
	 * @generated
	 */
	void setStepHeight(Measured value);

	/**
	 * Returns the value of the '<em><b>Floor Unevenness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Floor Unevenness</em>' attribute.
	 * @see #setFloorUnevenness(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_FloorUnevenness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getFloorUnevenness();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getFloorUnevenness <em>Floor Unevenness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Floor Unevenness</em>' attribute.
	 * @see #getFloorUnevenness()
	 * @generated
	 */
	void setFloorUnevenness(Measured value);

	/**
	 * Returns the value of the '<em><b>Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slope</em>' attribute.
	 * @see #setSlope(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_Slope()
	 * @model dataType="cradlewright.model.base.Angle"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getSlope();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getSlope <em>Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope</em>' attribute.
	 * @see #getSlope()
	 * @generated
	 */
	void setSlope(Measured value);

	/**
	 * Returns the value of the '<em><b>Walking Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Walking Speed</em>' attribute.
	 * @see #setWalkingSpeed(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_WalkingSpeed()
	 * @model dataType="cradlewright.model.base.Speed"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWalkingSpeed();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getWalkingSpeed <em>Walking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Walking Speed</em>' attribute.
	 * @see #getWalkingSpeed()
	 * @generated
	 */
	void setWalkingSpeed(Measured value);

	/**
	 * Returns the value of the '<em><b>Friction Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Friction Low</em>' attribute.
	 * @see #setFrictionLow(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_FrictionLow()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getFrictionLow();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getFrictionLow <em>Friction Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Friction Low</em>' attribute.
	 * @see #getFrictionLow()
	 * @generated
	 */
	void setFrictionLow(Measured value);

	/**
	 * Returns the value of the '<em><b>Friction High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Friction High</em>' attribute.
	 * @see #setFrictionHigh(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_FrictionHigh()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getFrictionHigh();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getFrictionHigh <em>Friction High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Friction High</em>' attribute.
	 * @see #getFrictionHigh()
	 * @generated
	 */
	void setFrictionHigh(Measured value);

	/**
	 * Returns the value of the '<em><b>Storing Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the shell may be out of shape where it is only stored.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Storing Tolerance</em>' attribute.
	 * @see #setStoringTolerance(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_StoringTolerance()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getStoringTolerance();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getStoringTolerance <em>Storing Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Storing Tolerance</em>' attribute.
	 * @see #getStoringTolerance()
	 * @generated
	 */
	void setStoringTolerance(Measured value);

	/**
	 * Returns the value of the '<em><b>Working Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Working Tolerance</em>' attribute.
	 * @see #setWorkingTolerance(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_WorkingTolerance()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWorkingTolerance();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getWorkingTolerance <em>Working Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Tolerance</em>' attribute.
	 * @see #getWorkingTolerance()
	 * @generated
	 */
	void setWorkingTolerance(Measured value);

	/**
	 * Returns the value of the '<em><b>Welding Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Welding Tolerance</em>' attribute.
	 * @see #setWeldingTolerance(Measured)
	 * @see cradlewright.model.base.BasePackage#getSettings_WeldingTolerance()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWeldingTolerance();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Settings#getWeldingTolerance <em>Welding Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Welding Tolerance</em>' attribute.
	 * @see #getWeldingTolerance()
	 * @generated
	 */
	void setWeldingTolerance(Measured value);

} // Settings
