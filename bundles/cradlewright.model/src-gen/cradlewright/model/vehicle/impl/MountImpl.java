/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.Condition;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.stock.BoltType;

import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mount</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getCondition <em>Condition</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getSheetThickness <em>Sheet Thickness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getBolt <em>Bolt</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getBoltCount <em>Bolt Count</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getState <em>State</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getAsFound <em>As Found</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getOnDolly <em>On Dolly</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.MountImpl#getAsBuilt <em>As Built</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MountImpl extends NamedImpl implements Mount {
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
	 * The default value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected static final Condition CONDITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected Condition condition = CONDITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetThickness() <em>Sheet Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured SHEET_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetThickness() <em>Sheet Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured sheetThickness = SHEET_THICKNESS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBolt() <em>Bolt</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBolt()
	 * @generated
	 * @ordered
	 */
	protected BoltType bolt;

	/**
	 * The default value of the '{@link #getBoltCount() <em>Bolt Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoltCount()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BOLT_COUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBoltCount() <em>Bolt Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoltCount()
	 * @generated
	 * @ordered
	 */
	protected Integer boltCount = BOLT_COUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final MountState STATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected MountState state = STATE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAsFound() <em>As Found</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsFound()
	 * @generated
	 * @ordered
	 */
	protected ShimStack asFound;

	/**
	 * The cached value of the '{@link #getOnDolly() <em>On Dolly</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnDolly()
	 * @generated
	 * @ordered
	 */
	protected ShimStack onDolly;

	/**
	 * The cached value of the '{@link #getAsBuilt() <em>As Built</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsBuilt()
	 * @generated
	 * @ordered
	 */
	protected ShimStack asBuilt;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MountImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.MOUNT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__POSITION, oldPosition, position));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Condition getCondition() {
		return condition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCondition(Condition newCondition) {
		Condition oldCondition = condition;
		condition = newCondition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__CONDITION, oldCondition, condition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getSheetThickness() {
		return sheetThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetThickness(Measured newSheetThickness) {
		Measured oldSheetThickness = sheetThickness;
		sheetThickness = newSheetThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__SHEET_THICKNESS, oldSheetThickness, sheetThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BoltType getBolt() {
		if (bolt != null && bolt.eIsProxy()) {
			InternalEObject oldBolt = (InternalEObject)bolt;
			bolt = (BoltType)eResolveProxy(oldBolt);
			if (bolt != oldBolt) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, VehiclePackage.MOUNT__BOLT, oldBolt, bolt));
			}
		}
		return bolt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BoltType basicGetBolt() {
		return bolt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBolt(BoltType newBolt) {
		BoltType oldBolt = bolt;
		bolt = newBolt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__BOLT, oldBolt, bolt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBoltCount() {
		return boltCount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBoltCount(Integer newBoltCount) {
		Integer oldBoltCount = boltCount;
		boltCount = newBoltCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__BOLT_COUNT, oldBoltCount, boltCount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MountState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(MountState newState) {
		MountState oldState = state;
		state = newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimStack getAsFound() {
		return asFound;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAsFound(ShimStack newAsFound, NotificationChain msgs) {
		ShimStack oldAsFound = asFound;
		asFound = newAsFound;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__AS_FOUND, oldAsFound, newAsFound);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAsFound(ShimStack newAsFound) {
		if (newAsFound != asFound) {
			NotificationChain msgs = null;
			if (asFound != null)
				msgs = ((InternalEObject)asFound).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__AS_FOUND, null, msgs);
			if (newAsFound != null)
				msgs = ((InternalEObject)newAsFound).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__AS_FOUND, null, msgs);
			msgs = basicSetAsFound(newAsFound, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__AS_FOUND, newAsFound, newAsFound));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimStack getOnDolly() {
		return onDolly;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOnDolly(ShimStack newOnDolly, NotificationChain msgs) {
		ShimStack oldOnDolly = onDolly;
		onDolly = newOnDolly;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__ON_DOLLY, oldOnDolly, newOnDolly);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnDolly(ShimStack newOnDolly) {
		if (newOnDolly != onDolly) {
			NotificationChain msgs = null;
			if (onDolly != null)
				msgs = ((InternalEObject)onDolly).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__ON_DOLLY, null, msgs);
			if (newOnDolly != null)
				msgs = ((InternalEObject)newOnDolly).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__ON_DOLLY, null, msgs);
			msgs = basicSetOnDolly(newOnDolly, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__ON_DOLLY, newOnDolly, newOnDolly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimStack getAsBuilt() {
		return asBuilt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAsBuilt(ShimStack newAsBuilt, NotificationChain msgs) {
		ShimStack oldAsBuilt = asBuilt;
		asBuilt = newAsBuilt;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__AS_BUILT, oldAsBuilt, newAsBuilt);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAsBuilt(ShimStack newAsBuilt) {
		if (newAsBuilt != asBuilt) {
			NotificationChain msgs = null;
			if (asBuilt != null)
				msgs = ((InternalEObject)asBuilt).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__AS_BUILT, null, msgs);
			if (newAsBuilt != null)
				msgs = ((InternalEObject)newAsBuilt).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - VehiclePackage.MOUNT__AS_BUILT, null, msgs);
			msgs = basicSetAsBuilt(newAsBuilt, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.MOUNT__AS_BUILT, newAsBuilt, newAsBuilt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case VehiclePackage.MOUNT__AS_FOUND:
				return basicSetAsFound(null, msgs);
			case VehiclePackage.MOUNT__ON_DOLLY:
				return basicSetOnDolly(null, msgs);
			case VehiclePackage.MOUNT__AS_BUILT:
				return basicSetAsBuilt(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.MOUNT__POSITION:
				return getPosition();
			case VehiclePackage.MOUNT__CONDITION:
				return getCondition();
			case VehiclePackage.MOUNT__SHEET_THICKNESS:
				return getSheetThickness();
			case VehiclePackage.MOUNT__BOLT:
				if (resolve) return getBolt();
				return basicGetBolt();
			case VehiclePackage.MOUNT__BOLT_COUNT:
				return getBoltCount();
			case VehiclePackage.MOUNT__STATE:
				return getState();
			case VehiclePackage.MOUNT__AS_FOUND:
				return getAsFound();
			case VehiclePackage.MOUNT__ON_DOLLY:
				return getOnDolly();
			case VehiclePackage.MOUNT__AS_BUILT:
				return getAsBuilt();
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
			case VehiclePackage.MOUNT__POSITION:
				setPosition((Position)newValue);
				return;
			case VehiclePackage.MOUNT__CONDITION:
				setCondition((Condition)newValue);
				return;
			case VehiclePackage.MOUNT__SHEET_THICKNESS:
				setSheetThickness((Measured)newValue);
				return;
			case VehiclePackage.MOUNT__BOLT:
				setBolt((BoltType)newValue);
				return;
			case VehiclePackage.MOUNT__BOLT_COUNT:
				setBoltCount((Integer)newValue);
				return;
			case VehiclePackage.MOUNT__STATE:
				setState((MountState)newValue);
				return;
			case VehiclePackage.MOUNT__AS_FOUND:
				setAsFound((ShimStack)newValue);
				return;
			case VehiclePackage.MOUNT__ON_DOLLY:
				setOnDolly((ShimStack)newValue);
				return;
			case VehiclePackage.MOUNT__AS_BUILT:
				setAsBuilt((ShimStack)newValue);
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
			case VehiclePackage.MOUNT__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case VehiclePackage.MOUNT__CONDITION:
				setCondition(CONDITION_EDEFAULT);
				return;
			case VehiclePackage.MOUNT__SHEET_THICKNESS:
				setSheetThickness(SHEET_THICKNESS_EDEFAULT);
				return;
			case VehiclePackage.MOUNT__BOLT:
				setBolt((BoltType)null);
				return;
			case VehiclePackage.MOUNT__BOLT_COUNT:
				setBoltCount(BOLT_COUNT_EDEFAULT);
				return;
			case VehiclePackage.MOUNT__STATE:
				setState(STATE_EDEFAULT);
				return;
			case VehiclePackage.MOUNT__AS_FOUND:
				setAsFound((ShimStack)null);
				return;
			case VehiclePackage.MOUNT__ON_DOLLY:
				setOnDolly((ShimStack)null);
				return;
			case VehiclePackage.MOUNT__AS_BUILT:
				setAsBuilt((ShimStack)null);
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
			case VehiclePackage.MOUNT__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case VehiclePackage.MOUNT__CONDITION:
				return CONDITION_EDEFAULT == null ? condition != null : !CONDITION_EDEFAULT.equals(condition);
			case VehiclePackage.MOUNT__SHEET_THICKNESS:
				return SHEET_THICKNESS_EDEFAULT == null ? sheetThickness != null : !SHEET_THICKNESS_EDEFAULT.equals(sheetThickness);
			case VehiclePackage.MOUNT__BOLT:
				return bolt != null;
			case VehiclePackage.MOUNT__BOLT_COUNT:
				return BOLT_COUNT_EDEFAULT == null ? boltCount != null : !BOLT_COUNT_EDEFAULT.equals(boltCount);
			case VehiclePackage.MOUNT__STATE:
				return STATE_EDEFAULT == null ? state != null : !STATE_EDEFAULT.equals(state);
			case VehiclePackage.MOUNT__AS_FOUND:
				return asFound != null;
			case VehiclePackage.MOUNT__ON_DOLLY:
				return onDolly != null;
			case VehiclePackage.MOUNT__AS_BUILT:
				return asBuilt != null;
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
		result.append(" (position: ");
		result.append(position);
		result.append(", condition: ");
		result.append(condition);
		result.append(", sheetThickness: ");
		result.append(sheetThickness);
		result.append(", boltCount: ");
		result.append(boltCount);
		result.append(", state: ");
		result.append(state);
		result.append(')');
		return result.toString();
	}

} //MountImpl
