/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.Basis;
import cradlewright.model.base.Condition;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lift Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getCondition <em>Condition</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getSheetThickness <em>Sheet Thickness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getLookedAt <em>Looked At</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.LiftPointImpl#getBasis <em>Basis</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LiftPointImpl extends NamedImpl implements LiftPoint {
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
	 * The default value of the '{@link #getLookedAt() <em>Looked At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLookedAt()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate LOOKED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLookedAt() <em>Looked At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLookedAt()
	 * @generated
	 * @ordered
	 */
	protected LocalDate lookedAt = LOOKED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCapacity() <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacity()
	 * @generated
	 * @ordered
	 */
	protected static final Measured CAPACITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCapacity() <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacity()
	 * @generated
	 * @ordered
	 */
	protected Measured capacity = CAPACITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected static final Basis BASIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected Basis basis = BASIS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LiftPointImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.LIFT_POINT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__POSITION, oldPosition, position));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__CONDITION, oldCondition, condition));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__SHEET_THICKNESS, oldSheetThickness, sheetThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLookedAt() {
		return lookedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLookedAt(LocalDate newLookedAt) {
		LocalDate oldLookedAt = lookedAt;
		lookedAt = newLookedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__LOOKED_AT, oldLookedAt, lookedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getCapacity() {
		return capacity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapacity(Measured newCapacity) {
		Measured oldCapacity = capacity;
		capacity = newCapacity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__CAPACITY, oldCapacity, capacity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Basis getBasis() {
		return basis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasis(Basis newBasis) {
		Basis oldBasis = basis;
		basis = newBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.LIFT_POINT__BASIS, oldBasis, basis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.LIFT_POINT__POSITION:
				return getPosition();
			case VehiclePackage.LIFT_POINT__CONDITION:
				return getCondition();
			case VehiclePackage.LIFT_POINT__SHEET_THICKNESS:
				return getSheetThickness();
			case VehiclePackage.LIFT_POINT__LOOKED_AT:
				return getLookedAt();
			case VehiclePackage.LIFT_POINT__CAPACITY:
				return getCapacity();
			case VehiclePackage.LIFT_POINT__BASIS:
				return getBasis();
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
			case VehiclePackage.LIFT_POINT__POSITION:
				setPosition((Position)newValue);
				return;
			case VehiclePackage.LIFT_POINT__CONDITION:
				setCondition((Condition)newValue);
				return;
			case VehiclePackage.LIFT_POINT__SHEET_THICKNESS:
				setSheetThickness((Measured)newValue);
				return;
			case VehiclePackage.LIFT_POINT__LOOKED_AT:
				setLookedAt((LocalDate)newValue);
				return;
			case VehiclePackage.LIFT_POINT__CAPACITY:
				setCapacity((Measured)newValue);
				return;
			case VehiclePackage.LIFT_POINT__BASIS:
				setBasis((Basis)newValue);
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
			case VehiclePackage.LIFT_POINT__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case VehiclePackage.LIFT_POINT__CONDITION:
				setCondition(CONDITION_EDEFAULT);
				return;
			case VehiclePackage.LIFT_POINT__SHEET_THICKNESS:
				setSheetThickness(SHEET_THICKNESS_EDEFAULT);
				return;
			case VehiclePackage.LIFT_POINT__LOOKED_AT:
				setLookedAt(LOOKED_AT_EDEFAULT);
				return;
			case VehiclePackage.LIFT_POINT__CAPACITY:
				setCapacity(CAPACITY_EDEFAULT);
				return;
			case VehiclePackage.LIFT_POINT__BASIS:
				setBasis(BASIS_EDEFAULT);
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
			case VehiclePackage.LIFT_POINT__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case VehiclePackage.LIFT_POINT__CONDITION:
				return CONDITION_EDEFAULT == null ? condition != null : !CONDITION_EDEFAULT.equals(condition);
			case VehiclePackage.LIFT_POINT__SHEET_THICKNESS:
				return SHEET_THICKNESS_EDEFAULT == null ? sheetThickness != null : !SHEET_THICKNESS_EDEFAULT.equals(sheetThickness);
			case VehiclePackage.LIFT_POINT__LOOKED_AT:
				return LOOKED_AT_EDEFAULT == null ? lookedAt != null : !LOOKED_AT_EDEFAULT.equals(lookedAt);
			case VehiclePackage.LIFT_POINT__CAPACITY:
				return CAPACITY_EDEFAULT == null ? capacity != null : !CAPACITY_EDEFAULT.equals(capacity);
			case VehiclePackage.LIFT_POINT__BASIS:
				return BASIS_EDEFAULT == null ? basis != null : !BASIS_EDEFAULT.equals(basis);
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
		result.append(", lookedAt: ");
		result.append(lookedAt);
		result.append(", capacity: ");
		result.append(capacity);
		result.append(", basis: ");
		result.append(basis);
		result.append(')');
		return result.toString();
	}

} //LiftPointImpl
