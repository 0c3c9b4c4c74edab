/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Position;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cut Zone</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.CutZoneImpl#getLow <em>Low</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CutZoneImpl#getHigh <em>High</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CutZoneImpl#isPlanned <em>Planned</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CutZoneImpl#getBraces <em>Braces</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CutZoneImpl extends NamedImpl implements CutZone {
	/**
	 * The default value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected static final Position LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected Position low = LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Position HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected Position high = HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #isPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPlanned()
	 * @generated
	 * @ordered
	 */
	protected static final boolean PLANNED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPlanned()
	 * @generated
	 * @ordered
	 */
	protected boolean planned = PLANNED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBraces() <em>Braces</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBraces()
	 * @generated
	 * @ordered
	 */
	protected EList<Brace> braces;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CutZoneImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.CUT_ZONE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Position getLow() {
		return low;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Position newLow) {
		Position oldLow = low;
		low = newLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CUT_ZONE__LOW, oldLow, low));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Position getHigh() {
		return high;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Position newHigh) {
		Position oldHigh = high;
		high = newHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CUT_ZONE__HIGH, oldHigh, high));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isPlanned() {
		return planned;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanned(boolean newPlanned) {
		boolean oldPlanned = planned;
		planned = newPlanned;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CUT_ZONE__PLANNED, oldPlanned, planned));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Brace> getBraces() {
		if (braces == null) {
			braces = new EObjectResolvingEList<Brace>(Brace.class, this, VehiclePackage.CUT_ZONE__BRACES);
		}
		return braces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.CUT_ZONE__LOW:
				return getLow();
			case VehiclePackage.CUT_ZONE__HIGH:
				return getHigh();
			case VehiclePackage.CUT_ZONE__PLANNED:
				return isPlanned();
			case VehiclePackage.CUT_ZONE__BRACES:
				return getBraces();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case VehiclePackage.CUT_ZONE__LOW:
				setLow((Position)newValue);
				return;
			case VehiclePackage.CUT_ZONE__HIGH:
				setHigh((Position)newValue);
				return;
			case VehiclePackage.CUT_ZONE__PLANNED:
				setPlanned((Boolean)newValue);
				return;
			case VehiclePackage.CUT_ZONE__BRACES:
				getBraces().clear();
				getBraces().addAll((Collection<? extends Brace>)newValue);
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
			case VehiclePackage.CUT_ZONE__LOW:
				setLow(LOW_EDEFAULT);
				return;
			case VehiclePackage.CUT_ZONE__HIGH:
				setHigh(HIGH_EDEFAULT);
				return;
			case VehiclePackage.CUT_ZONE__PLANNED:
				setPlanned(PLANNED_EDEFAULT);
				return;
			case VehiclePackage.CUT_ZONE__BRACES:
				getBraces().clear();
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
			case VehiclePackage.CUT_ZONE__LOW:
				return LOW_EDEFAULT == null ? low != null : !LOW_EDEFAULT.equals(low);
			case VehiclePackage.CUT_ZONE__HIGH:
				return HIGH_EDEFAULT == null ? high != null : !HIGH_EDEFAULT.equals(high);
			case VehiclePackage.CUT_ZONE__PLANNED:
				return planned != PLANNED_EDEFAULT;
			case VehiclePackage.CUT_ZONE__BRACES:
				return braces != null && !braces.isEmpty();
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
		result.append(" (low: ");
		result.append(low);
		result.append(", high: ");
		result.append(high);
		result.append(", planned: ");
		result.append(planned);
		result.append(')');
		return result.toString();
	}

} //CutZoneImpl
