/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.stock.ShimType;

import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Shim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.ShimImpl#getShim <em>Shim</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ShimImpl#getLoose <em>Loose</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ShimImpl#getCount <em>Count</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ShimImpl extends MinimalEObjectImpl.Container implements Shim {
	/**
	 * The cached value of the '{@link #getShim() <em>Shim</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShim()
	 * @generated
	 * @ordered
	 */
	protected ShimType shim;

	/**
	 * The default value of the '{@link #getLoose() <em>Loose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoose()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LOOSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLoose() <em>Loose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoose()
	 * @generated
	 * @ordered
	 */
	protected Measured loose = LOOSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected static final Integer COUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected Integer count = COUNT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ShimImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.SHIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimType getShim() {
		if (shim != null && shim.eIsProxy()) {
			InternalEObject oldShim = (InternalEObject)shim;
			shim = (ShimType)eResolveProxy(oldShim);
			if (shim != oldShim) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, VehiclePackage.SHIM__SHIM, oldShim, shim));
			}
		}
		return shim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ShimType basicGetShim() {
		return shim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShim(ShimType newShim) {
		ShimType oldShim = shim;
		shim = newShim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.SHIM__SHIM, oldShim, shim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLoose() {
		return loose;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLoose(Measured newLoose) {
		Measured oldLoose = loose;
		loose = newLoose;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.SHIM__LOOSE, oldLoose, loose));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCount() {
		return count;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(Integer newCount) {
		Integer oldCount = count;
		count = newCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.SHIM__COUNT, oldCount, count));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.SHIM__SHIM:
				if (resolve) return getShim();
				return basicGetShim();
			case VehiclePackage.SHIM__LOOSE:
				return getLoose();
			case VehiclePackage.SHIM__COUNT:
				return getCount();
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
			case VehiclePackage.SHIM__SHIM:
				setShim((ShimType)newValue);
				return;
			case VehiclePackage.SHIM__LOOSE:
				setLoose((Measured)newValue);
				return;
			case VehiclePackage.SHIM__COUNT:
				setCount((Integer)newValue);
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
			case VehiclePackage.SHIM__SHIM:
				setShim((ShimType)null);
				return;
			case VehiclePackage.SHIM__LOOSE:
				setLoose(LOOSE_EDEFAULT);
				return;
			case VehiclePackage.SHIM__COUNT:
				setCount(COUNT_EDEFAULT);
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
			case VehiclePackage.SHIM__SHIM:
				return shim != null;
			case VehiclePackage.SHIM__LOOSE:
				return LOOSE_EDEFAULT == null ? loose != null : !LOOSE_EDEFAULT.equals(loose);
			case VehiclePackage.SHIM__COUNT:
				return COUNT_EDEFAULT == null ? count != null : !COUNT_EDEFAULT.equals(count);
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
		result.append(" (loose: ");
		result.append(loose);
		result.append(", count: ");
		result.append(count);
		result.append(')');
		return result.toString();
	}

} //ShimImpl
