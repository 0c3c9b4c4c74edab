/**
 */
package cradlewright.model.base.impl;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Settings;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Settings</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getPersonMass <em>Person Mass</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getLeanForce <em>Lean Force</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getBarForce <em>Bar Force</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getRequiredRatio <em>Required Ratio</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getTightMargin <em>Tight Margin</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getJointFactor <em>Joint Factor</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getStepHeight <em>Step Height</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getFloorUnevenness <em>Floor Unevenness</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getSlope <em>Slope</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getWalkingSpeed <em>Walking Speed</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getFrictionLow <em>Friction Low</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getFrictionHigh <em>Friction High</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getStoringTolerance <em>Storing Tolerance</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getWorkingTolerance <em>Working Tolerance</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.SettingsImpl#getWeldingTolerance <em>Welding Tolerance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SettingsImpl extends MinimalEObjectImpl.Container implements Settings {
	/**
	 * The default value of the '{@link #getPersonMass() <em>Person Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPersonMass()
	 * @generated
	 * @ordered
	 */
	protected static final Measured PERSON_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPersonMass() <em>Person Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPersonMass()
	 * @generated
	 * @ordered
	 */
	protected Measured personMass = PERSON_MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeanForce() <em>Lean Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeanForce()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LEAN_FORCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeanForce() <em>Lean Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeanForce()
	 * @generated
	 * @ordered
	 */
	protected Measured leanForce = LEAN_FORCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBarForce() <em>Bar Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarForce()
	 * @generated
	 * @ordered
	 */
	protected static final Measured BAR_FORCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBarForce() <em>Bar Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarForce()
	 * @generated
	 * @ordered
	 */
	protected Measured barForce = BAR_FORCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRequiredRatio() <em>Required Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequiredRatio()
	 * @generated
	 * @ordered
	 */
	protected static final Measured REQUIRED_RATIO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRequiredRatio() <em>Required Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequiredRatio()
	 * @generated
	 * @ordered
	 */
	protected Measured requiredRatio = REQUIRED_RATIO_EDEFAULT;

	/**
	 * The default value of the '{@link #getTightMargin() <em>Tight Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightMargin()
	 * @generated
	 * @ordered
	 */
	protected static final Measured TIGHT_MARGIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTightMargin() <em>Tight Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightMargin()
	 * @generated
	 * @ordered
	 */
	protected Measured tightMargin = TIGHT_MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getJointFactor() <em>Joint Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJointFactor()
	 * @generated
	 * @ordered
	 */
	protected static final Measured JOINT_FACTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getJointFactor() <em>Joint Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJointFactor()
	 * @generated
	 * @ordered
	 */
	protected Measured jointFactor = JOINT_FACTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getStepHeight() <em>Step Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStepHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STEP_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStepHeight() <em>Step Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStepHeight()
	 * @generated
	 * @ordered
	 */
	protected Measured stepHeight = STEP_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFloorUnevenness() <em>Floor Unevenness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloorUnevenness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FLOOR_UNEVENNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFloorUnevenness() <em>Floor Unevenness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloorUnevenness()
	 * @generated
	 * @ordered
	 */
	protected Measured floorUnevenness = FLOOR_UNEVENNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getSlope() <em>Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlope()
	 * @generated
	 * @ordered
	 */
	protected static final Measured SLOPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSlope() <em>Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlope()
	 * @generated
	 * @ordered
	 */
	protected Measured slope = SLOPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWalkingSpeed() <em>Walking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalkingSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WALKING_SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWalkingSpeed() <em>Walking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalkingSpeed()
	 * @generated
	 * @ordered
	 */
	protected Measured walkingSpeed = WALKING_SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrictionLow() <em>Friction Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrictionLow()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FRICTION_LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrictionLow() <em>Friction Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrictionLow()
	 * @generated
	 * @ordered
	 */
	protected Measured frictionLow = FRICTION_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrictionHigh() <em>Friction High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrictionHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FRICTION_HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrictionHigh() <em>Friction High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrictionHigh()
	 * @generated
	 * @ordered
	 */
	protected Measured frictionHigh = FRICTION_HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getStoringTolerance() <em>Storing Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoringTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STORING_TOLERANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStoringTolerance() <em>Storing Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoringTolerance()
	 * @generated
	 * @ordered
	 */
	protected Measured storingTolerance = STORING_TOLERANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTolerance() <em>Working Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WORKING_TOLERANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTolerance() <em>Working Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTolerance()
	 * @generated
	 * @ordered
	 */
	protected Measured workingTolerance = WORKING_TOLERANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeldingTolerance() <em>Welding Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeldingTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WELDING_TOLERANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeldingTolerance() <em>Welding Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeldingTolerance()
	 * @generated
	 * @ordered
	 */
	protected Measured weldingTolerance = WELDING_TOLERANCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SettingsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BasePackage.Literals.SETTINGS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getPersonMass() {
		return personMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPersonMass(Measured newPersonMass) {
		Measured oldPersonMass = personMass;
		personMass = newPersonMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__PERSON_MASS, oldPersonMass, personMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLeanForce() {
		return leanForce;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeanForce(Measured newLeanForce) {
		Measured oldLeanForce = leanForce;
		leanForce = newLeanForce;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__LEAN_FORCE, oldLeanForce, leanForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getBarForce() {
		return barForce;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBarForce(Measured newBarForce) {
		Measured oldBarForce = barForce;
		barForce = newBarForce;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__BAR_FORCE, oldBarForce, barForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getRequiredRatio() {
		return requiredRatio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRequiredRatio(Measured newRequiredRatio) {
		Measured oldRequiredRatio = requiredRatio;
		requiredRatio = newRequiredRatio;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__REQUIRED_RATIO, oldRequiredRatio, requiredRatio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getTightMargin() {
		return tightMargin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTightMargin(Measured newTightMargin) {
		Measured oldTightMargin = tightMargin;
		tightMargin = newTightMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__TIGHT_MARGIN, oldTightMargin, tightMargin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getJointFactor() {
		return jointFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJointFactor(Measured newJointFactor) {
		Measured oldJointFactor = jointFactor;
		jointFactor = newJointFactor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__JOINT_FACTOR, oldJointFactor, jointFactor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStepHeight() {
		return stepHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStepHeight(Measured newStepHeight) {
		Measured oldStepHeight = stepHeight;
		stepHeight = newStepHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__STEP_HEIGHT, oldStepHeight, stepHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFloorUnevenness() {
		return floorUnevenness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFloorUnevenness(Measured newFloorUnevenness) {
		Measured oldFloorUnevenness = floorUnevenness;
		floorUnevenness = newFloorUnevenness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__FLOOR_UNEVENNESS, oldFloorUnevenness, floorUnevenness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getSlope() {
		return slope;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlope(Measured newSlope) {
		Measured oldSlope = slope;
		slope = newSlope;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__SLOPE, oldSlope, slope));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWalkingSpeed() {
		return walkingSpeed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWalkingSpeed(Measured newWalkingSpeed) {
		Measured oldWalkingSpeed = walkingSpeed;
		walkingSpeed = newWalkingSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__WALKING_SPEED, oldWalkingSpeed, walkingSpeed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFrictionLow() {
		return frictionLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrictionLow(Measured newFrictionLow) {
		Measured oldFrictionLow = frictionLow;
		frictionLow = newFrictionLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__FRICTION_LOW, oldFrictionLow, frictionLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFrictionHigh() {
		return frictionHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrictionHigh(Measured newFrictionHigh) {
		Measured oldFrictionHigh = frictionHigh;
		frictionHigh = newFrictionHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__FRICTION_HIGH, oldFrictionHigh, frictionHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStoringTolerance() {
		return storingTolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStoringTolerance(Measured newStoringTolerance) {
		Measured oldStoringTolerance = storingTolerance;
		storingTolerance = newStoringTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__STORING_TOLERANCE, oldStoringTolerance, storingTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWorkingTolerance() {
		return workingTolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTolerance(Measured newWorkingTolerance) {
		Measured oldWorkingTolerance = workingTolerance;
		workingTolerance = newWorkingTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__WORKING_TOLERANCE, oldWorkingTolerance, workingTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWeldingTolerance() {
		return weldingTolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeldingTolerance(Measured newWeldingTolerance) {
		Measured oldWeldingTolerance = weldingTolerance;
		weldingTolerance = newWeldingTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.SETTINGS__WELDING_TOLERANCE, oldWeldingTolerance, weldingTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BasePackage.SETTINGS__PERSON_MASS:
				return getPersonMass();
			case BasePackage.SETTINGS__LEAN_FORCE:
				return getLeanForce();
			case BasePackage.SETTINGS__BAR_FORCE:
				return getBarForce();
			case BasePackage.SETTINGS__REQUIRED_RATIO:
				return getRequiredRatio();
			case BasePackage.SETTINGS__TIGHT_MARGIN:
				return getTightMargin();
			case BasePackage.SETTINGS__JOINT_FACTOR:
				return getJointFactor();
			case BasePackage.SETTINGS__STEP_HEIGHT:
				return getStepHeight();
			case BasePackage.SETTINGS__FLOOR_UNEVENNESS:
				return getFloorUnevenness();
			case BasePackage.SETTINGS__SLOPE:
				return getSlope();
			case BasePackage.SETTINGS__WALKING_SPEED:
				return getWalkingSpeed();
			case BasePackage.SETTINGS__FRICTION_LOW:
				return getFrictionLow();
			case BasePackage.SETTINGS__FRICTION_HIGH:
				return getFrictionHigh();
			case BasePackage.SETTINGS__STORING_TOLERANCE:
				return getStoringTolerance();
			case BasePackage.SETTINGS__WORKING_TOLERANCE:
				return getWorkingTolerance();
			case BasePackage.SETTINGS__WELDING_TOLERANCE:
				return getWeldingTolerance();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case BasePackage.SETTINGS__PERSON_MASS:
				setPersonMass((Measured)newValue);
				return;
			case BasePackage.SETTINGS__LEAN_FORCE:
				setLeanForce((Measured)newValue);
				return;
			case BasePackage.SETTINGS__BAR_FORCE:
				setBarForce((Measured)newValue);
				return;
			case BasePackage.SETTINGS__REQUIRED_RATIO:
				setRequiredRatio((Measured)newValue);
				return;
			case BasePackage.SETTINGS__TIGHT_MARGIN:
				setTightMargin((Measured)newValue);
				return;
			case BasePackage.SETTINGS__JOINT_FACTOR:
				setJointFactor((Measured)newValue);
				return;
			case BasePackage.SETTINGS__STEP_HEIGHT:
				setStepHeight((Measured)newValue);
				return;
			case BasePackage.SETTINGS__FLOOR_UNEVENNESS:
				setFloorUnevenness((Measured)newValue);
				return;
			case BasePackage.SETTINGS__SLOPE:
				setSlope((Measured)newValue);
				return;
			case BasePackage.SETTINGS__WALKING_SPEED:
				setWalkingSpeed((Measured)newValue);
				return;
			case BasePackage.SETTINGS__FRICTION_LOW:
				setFrictionLow((Measured)newValue);
				return;
			case BasePackage.SETTINGS__FRICTION_HIGH:
				setFrictionHigh((Measured)newValue);
				return;
			case BasePackage.SETTINGS__STORING_TOLERANCE:
				setStoringTolerance((Measured)newValue);
				return;
			case BasePackage.SETTINGS__WORKING_TOLERANCE:
				setWorkingTolerance((Measured)newValue);
				return;
			case BasePackage.SETTINGS__WELDING_TOLERANCE:
				setWeldingTolerance((Measured)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case BasePackage.SETTINGS__PERSON_MASS:
				setPersonMass(PERSON_MASS_EDEFAULT);
				return;
			case BasePackage.SETTINGS__LEAN_FORCE:
				setLeanForce(LEAN_FORCE_EDEFAULT);
				return;
			case BasePackage.SETTINGS__BAR_FORCE:
				setBarForce(BAR_FORCE_EDEFAULT);
				return;
			case BasePackage.SETTINGS__REQUIRED_RATIO:
				setRequiredRatio(REQUIRED_RATIO_EDEFAULT);
				return;
			case BasePackage.SETTINGS__TIGHT_MARGIN:
				setTightMargin(TIGHT_MARGIN_EDEFAULT);
				return;
			case BasePackage.SETTINGS__JOINT_FACTOR:
				setJointFactor(JOINT_FACTOR_EDEFAULT);
				return;
			case BasePackage.SETTINGS__STEP_HEIGHT:
				setStepHeight(STEP_HEIGHT_EDEFAULT);
				return;
			case BasePackage.SETTINGS__FLOOR_UNEVENNESS:
				setFloorUnevenness(FLOOR_UNEVENNESS_EDEFAULT);
				return;
			case BasePackage.SETTINGS__SLOPE:
				setSlope(SLOPE_EDEFAULT);
				return;
			case BasePackage.SETTINGS__WALKING_SPEED:
				setWalkingSpeed(WALKING_SPEED_EDEFAULT);
				return;
			case BasePackage.SETTINGS__FRICTION_LOW:
				setFrictionLow(FRICTION_LOW_EDEFAULT);
				return;
			case BasePackage.SETTINGS__FRICTION_HIGH:
				setFrictionHigh(FRICTION_HIGH_EDEFAULT);
				return;
			case BasePackage.SETTINGS__STORING_TOLERANCE:
				setStoringTolerance(STORING_TOLERANCE_EDEFAULT);
				return;
			case BasePackage.SETTINGS__WORKING_TOLERANCE:
				setWorkingTolerance(WORKING_TOLERANCE_EDEFAULT);
				return;
			case BasePackage.SETTINGS__WELDING_TOLERANCE:
				setWeldingTolerance(WELDING_TOLERANCE_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case BasePackage.SETTINGS__PERSON_MASS:
				return PERSON_MASS_EDEFAULT == null ? personMass != null : !PERSON_MASS_EDEFAULT.equals(personMass);
			case BasePackage.SETTINGS__LEAN_FORCE:
				return LEAN_FORCE_EDEFAULT == null ? leanForce != null : !LEAN_FORCE_EDEFAULT.equals(leanForce);
			case BasePackage.SETTINGS__BAR_FORCE:
				return BAR_FORCE_EDEFAULT == null ? barForce != null : !BAR_FORCE_EDEFAULT.equals(barForce);
			case BasePackage.SETTINGS__REQUIRED_RATIO:
				return REQUIRED_RATIO_EDEFAULT == null ? requiredRatio != null : !REQUIRED_RATIO_EDEFAULT.equals(requiredRatio);
			case BasePackage.SETTINGS__TIGHT_MARGIN:
				return TIGHT_MARGIN_EDEFAULT == null ? tightMargin != null : !TIGHT_MARGIN_EDEFAULT.equals(tightMargin);
			case BasePackage.SETTINGS__JOINT_FACTOR:
				return JOINT_FACTOR_EDEFAULT == null ? jointFactor != null : !JOINT_FACTOR_EDEFAULT.equals(jointFactor);
			case BasePackage.SETTINGS__STEP_HEIGHT:
				return STEP_HEIGHT_EDEFAULT == null ? stepHeight != null : !STEP_HEIGHT_EDEFAULT.equals(stepHeight);
			case BasePackage.SETTINGS__FLOOR_UNEVENNESS:
				return FLOOR_UNEVENNESS_EDEFAULT == null ? floorUnevenness != null : !FLOOR_UNEVENNESS_EDEFAULT.equals(floorUnevenness);
			case BasePackage.SETTINGS__SLOPE:
				return SLOPE_EDEFAULT == null ? slope != null : !SLOPE_EDEFAULT.equals(slope);
			case BasePackage.SETTINGS__WALKING_SPEED:
				return WALKING_SPEED_EDEFAULT == null ? walkingSpeed != null : !WALKING_SPEED_EDEFAULT.equals(walkingSpeed);
			case BasePackage.SETTINGS__FRICTION_LOW:
				return FRICTION_LOW_EDEFAULT == null ? frictionLow != null : !FRICTION_LOW_EDEFAULT.equals(frictionLow);
			case BasePackage.SETTINGS__FRICTION_HIGH:
				return FRICTION_HIGH_EDEFAULT == null ? frictionHigh != null : !FRICTION_HIGH_EDEFAULT.equals(frictionHigh);
			case BasePackage.SETTINGS__STORING_TOLERANCE:
				return STORING_TOLERANCE_EDEFAULT == null ? storingTolerance != null : !STORING_TOLERANCE_EDEFAULT.equals(storingTolerance);
			case BasePackage.SETTINGS__WORKING_TOLERANCE:
				return WORKING_TOLERANCE_EDEFAULT == null ? workingTolerance != null : !WORKING_TOLERANCE_EDEFAULT.equals(workingTolerance);
			case BasePackage.SETTINGS__WELDING_TOLERANCE:
				return WELDING_TOLERANCE_EDEFAULT == null ? weldingTolerance != null : !WELDING_TOLERANCE_EDEFAULT.equals(weldingTolerance);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (personMass: ");
		result.append(personMass);
		result.append(", leanForce: ");
		result.append(leanForce);
		result.append(", barForce: ");
		result.append(barForce);
		result.append(", requiredRatio: ");
		result.append(requiredRatio);
		result.append(", tightMargin: ");
		result.append(tightMargin);
		result.append(", jointFactor: ");
		result.append(jointFactor);
		result.append(", stepHeight: ");
		result.append(stepHeight);
		result.append(", floorUnevenness: ");
		result.append(floorUnevenness);
		result.append(", slope: ");
		result.append(slope);
		result.append(", walkingSpeed: ");
		result.append(walkingSpeed);
		result.append(", frictionLow: ");
		result.append(frictionLow);
		result.append(", frictionHigh: ");
		result.append(frictionHigh);
		result.append(", storingTolerance: ");
		result.append(storingTolerance);
		result.append(", workingTolerance: ");
		result.append(workingTolerance);
		result.append(", weldingTolerance: ");
		result.append(weldingTolerance);
		result.append(')');
		return result.toString();
	}

} //SettingsImpl
