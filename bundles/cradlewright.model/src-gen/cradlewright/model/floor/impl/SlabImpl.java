/**
 */
package cradlewright.model.floor.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.floor.FloorPackage;
import cradlewright.model.floor.Slab;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Slab</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getFck <em>Fck</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getFabric <em>Fabric</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getSubgrade <em>Subgrade</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getDailyWheelLoad <em>Daily Wheel Load</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getDailyWheelContact <em>Daily Wheel Contact</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.SlabImpl#getSuspended <em>Suspended</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SlabImpl extends NamedImpl implements Slab {
	/**
	 * The cached value of the '{@link #getOutline() <em>Outline</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected EList<Position> outline;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured thickness = THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFck() <em>Fck</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFck()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FCK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFck() <em>Fck</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFck()
	 * @generated
	 * @ordered
	 */
	protected Measured fck = FCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getFabric() <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFabric()
	 * @generated
	 * @ordered
	 */
	protected static final String FABRIC_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFabric() <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFabric()
	 * @generated
	 * @ordered
	 */
	protected String fabric = FABRIC_EDEFAULT;

	/**
	 * The default value of the '{@link #getSubgrade() <em>Subgrade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubgrade()
	 * @generated
	 * @ordered
	 */
	protected static final Measured SUBGRADE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSubgrade() <em>Subgrade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubgrade()
	 * @generated
	 * @ordered
	 */
	protected Measured subgrade = SUBGRADE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDailyWheelLoad() <em>Daily Wheel Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDailyWheelLoad()
	 * @generated
	 * @ordered
	 */
	protected static final Measured DAILY_WHEEL_LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDailyWheelLoad() <em>Daily Wheel Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDailyWheelLoad()
	 * @generated
	 * @ordered
	 */
	protected Measured dailyWheelLoad = DAILY_WHEEL_LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getDailyWheelContact() <em>Daily Wheel Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDailyWheelContact()
	 * @generated
	 * @ordered
	 */
	protected static final Measured DAILY_WHEEL_CONTACT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDailyWheelContact() <em>Daily Wheel Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDailyWheelContact()
	 * @generated
	 * @ordered
	 */
	protected Measured dailyWheelContact = DAILY_WHEEL_CONTACT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSuspended() <em>Suspended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuspended()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean SUSPENDED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSuspended() <em>Suspended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuspended()
	 * @generated
	 * @ordered
	 */
	protected Boolean suspended = SUSPENDED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SlabImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FloorPackage.Literals.SLAB;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Position> getOutline() {
		if (outline == null) {
			outline = new EDataTypeEList<Position>(Position.class, this, FloorPackage.SLAB__OUTLINE);
		}
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Measured newThickness) {
		Measured oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFck() {
		return fck;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFck(Measured newFck) {
		Measured oldFck = fck;
		fck = newFck;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__FCK, oldFck, fck));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFabric() {
		return fabric;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFabric(String newFabric) {
		String oldFabric = fabric;
		fabric = newFabric;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__FABRIC, oldFabric, fabric));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getSubgrade() {
		return subgrade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSubgrade(Measured newSubgrade) {
		Measured oldSubgrade = subgrade;
		subgrade = newSubgrade;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__SUBGRADE, oldSubgrade, subgrade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getDailyWheelLoad() {
		return dailyWheelLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDailyWheelLoad(Measured newDailyWheelLoad) {
		Measured oldDailyWheelLoad = dailyWheelLoad;
		dailyWheelLoad = newDailyWheelLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__DAILY_WHEEL_LOAD, oldDailyWheelLoad, dailyWheelLoad));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getDailyWheelContact() {
		return dailyWheelContact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDailyWheelContact(Measured newDailyWheelContact) {
		Measured oldDailyWheelContact = dailyWheelContact;
		dailyWheelContact = newDailyWheelContact;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__DAILY_WHEEL_CONTACT, oldDailyWheelContact, dailyWheelContact));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getSuspended() {
		return suspended;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSuspended(Boolean newSuspended) {
		Boolean oldSuspended = suspended;
		suspended = newSuspended;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.SLAB__SUSPENDED, oldSuspended, suspended));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FloorPackage.SLAB__OUTLINE:
				return getOutline();
			case FloorPackage.SLAB__THICKNESS:
				return getThickness();
			case FloorPackage.SLAB__FCK:
				return getFck();
			case FloorPackage.SLAB__FABRIC:
				return getFabric();
			case FloorPackage.SLAB__SUBGRADE:
				return getSubgrade();
			case FloorPackage.SLAB__DAILY_WHEEL_LOAD:
				return getDailyWheelLoad();
			case FloorPackage.SLAB__DAILY_WHEEL_CONTACT:
				return getDailyWheelContact();
			case FloorPackage.SLAB__SUSPENDED:
				return getSuspended();
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
			case FloorPackage.SLAB__OUTLINE:
				getOutline().clear();
				getOutline().addAll((Collection<? extends Position>)newValue);
				return;
			case FloorPackage.SLAB__THICKNESS:
				setThickness((Measured)newValue);
				return;
			case FloorPackage.SLAB__FCK:
				setFck((Measured)newValue);
				return;
			case FloorPackage.SLAB__FABRIC:
				setFabric((String)newValue);
				return;
			case FloorPackage.SLAB__SUBGRADE:
				setSubgrade((Measured)newValue);
				return;
			case FloorPackage.SLAB__DAILY_WHEEL_LOAD:
				setDailyWheelLoad((Measured)newValue);
				return;
			case FloorPackage.SLAB__DAILY_WHEEL_CONTACT:
				setDailyWheelContact((Measured)newValue);
				return;
			case FloorPackage.SLAB__SUSPENDED:
				setSuspended((Boolean)newValue);
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
			case FloorPackage.SLAB__OUTLINE:
				getOutline().clear();
				return;
			case FloorPackage.SLAB__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case FloorPackage.SLAB__FCK:
				setFck(FCK_EDEFAULT);
				return;
			case FloorPackage.SLAB__FABRIC:
				setFabric(FABRIC_EDEFAULT);
				return;
			case FloorPackage.SLAB__SUBGRADE:
				setSubgrade(SUBGRADE_EDEFAULT);
				return;
			case FloorPackage.SLAB__DAILY_WHEEL_LOAD:
				setDailyWheelLoad(DAILY_WHEEL_LOAD_EDEFAULT);
				return;
			case FloorPackage.SLAB__DAILY_WHEEL_CONTACT:
				setDailyWheelContact(DAILY_WHEEL_CONTACT_EDEFAULT);
				return;
			case FloorPackage.SLAB__SUSPENDED:
				setSuspended(SUSPENDED_EDEFAULT);
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
			case FloorPackage.SLAB__OUTLINE:
				return outline != null && !outline.isEmpty();
			case FloorPackage.SLAB__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case FloorPackage.SLAB__FCK:
				return FCK_EDEFAULT == null ? fck != null : !FCK_EDEFAULT.equals(fck);
			case FloorPackage.SLAB__FABRIC:
				return FABRIC_EDEFAULT == null ? fabric != null : !FABRIC_EDEFAULT.equals(fabric);
			case FloorPackage.SLAB__SUBGRADE:
				return SUBGRADE_EDEFAULT == null ? subgrade != null : !SUBGRADE_EDEFAULT.equals(subgrade);
			case FloorPackage.SLAB__DAILY_WHEEL_LOAD:
				return DAILY_WHEEL_LOAD_EDEFAULT == null ? dailyWheelLoad != null : !DAILY_WHEEL_LOAD_EDEFAULT.equals(dailyWheelLoad);
			case FloorPackage.SLAB__DAILY_WHEEL_CONTACT:
				return DAILY_WHEEL_CONTACT_EDEFAULT == null ? dailyWheelContact != null : !DAILY_WHEEL_CONTACT_EDEFAULT.equals(dailyWheelContact);
			case FloorPackage.SLAB__SUSPENDED:
				return SUSPENDED_EDEFAULT == null ? suspended != null : !SUSPENDED_EDEFAULT.equals(suspended);
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
		result.append(" (outline: ");
		result.append(outline);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", fck: ");
		result.append(fck);
		result.append(", fabric: ");
		result.append(fabric);
		result.append(", subgrade: ");
		result.append(subgrade);
		result.append(", dailyWheelLoad: ");
		result.append(dailyWheelLoad);
		result.append(", dailyWheelContact: ");
		result.append(dailyWheelContact);
		result.append(", suspended: ");
		result.append(suspended);
		result.append(')');
		return result.toString();
	}

} //SlabImpl
