/**
 */
package cradlewright.model.floor.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.floor.FloorPackage;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.PlaceKind;
import cradlewright.model.floor.Slab;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getSlab <em>Slab</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getOutdoors <em>Outdoors</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getFall <em>Fall</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getTemperature <em>Temperature</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlaceImpl#getSteepestStep <em>Steepest Step</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlaceImpl extends NamedImpl implements Place {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final PlaceKind KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected PlaceKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected static final Position POSITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Position position = POSITION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSlab() <em>Slab</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlab()
	 * @generated
	 * @ordered
	 */
	protected Slab slab;

	/**
	 * The default value of the '{@link #getOutdoors() <em>Outdoors</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutdoors()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean OUTDOORS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutdoors() <em>Outdoors</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutdoors()
	 * @generated
	 * @ordered
	 */
	protected Boolean outdoors = OUTDOORS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFall() <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFall()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FALL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFall() <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFall()
	 * @generated
	 * @ordered
	 */
	protected Measured fall = FALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperature() <em>Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Measured TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemperature() <em>Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperature()
	 * @generated
	 * @ordered
	 */
	protected Measured temperature = TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSteepestStep() <em>Steepest Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSteepestStep()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STEEPEST_STEP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSteepestStep() <em>Steepest Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSteepestStep()
	 * @generated
	 * @ordered
	 */
	protected Measured steepestStep = STEEPEST_STEP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlaceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FloorPackage.Literals.PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlaceKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(PlaceKind newKind) {
		PlaceKind oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Position getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Position newPosition) {
		Position oldPosition = position;
		position = newPosition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__POSITION, oldPosition, position));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Slab getSlab() {
		if (slab != null && slab.eIsProxy()) {
			InternalEObject oldSlab = (InternalEObject)slab;
			slab = (Slab)eResolveProxy(oldSlab);
			if (slab != oldSlab) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, FloorPackage.PLACE__SLAB, oldSlab, slab));
			}
		}
		return slab;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Slab basicGetSlab() {
		return slab;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlab(Slab newSlab) {
		Slab oldSlab = slab;
		slab = newSlab;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__SLAB, oldSlab, slab));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getOutdoors() {
		return outdoors;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutdoors(Boolean newOutdoors) {
		Boolean oldOutdoors = outdoors;
		outdoors = newOutdoors;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__OUTDOORS, oldOutdoors, outdoors));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFall() {
		return fall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFall(Measured newFall) {
		Measured oldFall = fall;
		fall = newFall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__FALL, oldFall, fall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getTemperature() {
		return temperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperature(Measured newTemperature) {
		Measured oldTemperature = temperature;
		temperature = newTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__TEMPERATURE, oldTemperature, temperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getSteepestStep() {
		return steepestStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSteepestStep(Measured newSteepestStep) {
		Measured oldSteepestStep = steepestStep;
		steepestStep = newSteepestStep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACE__STEEPEST_STEP, oldSteepestStep, steepestStep));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FloorPackage.PLACE__KIND:
				return getKind();
			case FloorPackage.PLACE__POSITION:
				return getPosition();
			case FloorPackage.PLACE__SLAB:
				if (resolve) return getSlab();
				return basicGetSlab();
			case FloorPackage.PLACE__OUTDOORS:
				return getOutdoors();
			case FloorPackage.PLACE__FALL:
				return getFall();
			case FloorPackage.PLACE__TEMPERATURE:
				return getTemperature();
			case FloorPackage.PLACE__STEEPEST_STEP:
				return getSteepestStep();
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
			case FloorPackage.PLACE__KIND:
				setKind((PlaceKind)newValue);
				return;
			case FloorPackage.PLACE__POSITION:
				setPosition((Position)newValue);
				return;
			case FloorPackage.PLACE__SLAB:
				setSlab((Slab)newValue);
				return;
			case FloorPackage.PLACE__OUTDOORS:
				setOutdoors((Boolean)newValue);
				return;
			case FloorPackage.PLACE__FALL:
				setFall((Measured)newValue);
				return;
			case FloorPackage.PLACE__TEMPERATURE:
				setTemperature((Measured)newValue);
				return;
			case FloorPackage.PLACE__STEEPEST_STEP:
				setSteepestStep((Measured)newValue);
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
			case FloorPackage.PLACE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case FloorPackage.PLACE__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case FloorPackage.PLACE__SLAB:
				setSlab((Slab)null);
				return;
			case FloorPackage.PLACE__OUTDOORS:
				setOutdoors(OUTDOORS_EDEFAULT);
				return;
			case FloorPackage.PLACE__FALL:
				setFall(FALL_EDEFAULT);
				return;
			case FloorPackage.PLACE__TEMPERATURE:
				setTemperature(TEMPERATURE_EDEFAULT);
				return;
			case FloorPackage.PLACE__STEEPEST_STEP:
				setSteepestStep(STEEPEST_STEP_EDEFAULT);
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
			case FloorPackage.PLACE__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case FloorPackage.PLACE__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case FloorPackage.PLACE__SLAB:
				return slab != null;
			case FloorPackage.PLACE__OUTDOORS:
				return OUTDOORS_EDEFAULT == null ? outdoors != null : !OUTDOORS_EDEFAULT.equals(outdoors);
			case FloorPackage.PLACE__FALL:
				return FALL_EDEFAULT == null ? fall != null : !FALL_EDEFAULT.equals(fall);
			case FloorPackage.PLACE__TEMPERATURE:
				return TEMPERATURE_EDEFAULT == null ? temperature != null : !TEMPERATURE_EDEFAULT.equals(temperature);
			case FloorPackage.PLACE__STEEPEST_STEP:
				return STEEPEST_STEP_EDEFAULT == null ? steepestStep != null : !STEEPEST_STEP_EDEFAULT.equals(steepestStep);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", position: ");
		result.append(position);
		result.append(", outdoors: ");
		result.append(outdoors);
		result.append(", fall: ");
		result.append(fall);
		result.append(", temperature: ");
		result.append(temperature);
		result.append(", steepestStep: ");
		result.append(steepestStep);
		result.append(')');
		return result.toString();
	}

} //PlaceImpl
