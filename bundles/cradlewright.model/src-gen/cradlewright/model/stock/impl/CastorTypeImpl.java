/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.stock.Tread;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Castor Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getRatedLoad <em>Rated Load</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getWheelDiameter <em>Wheel Diameter</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getLead <em>Lead</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getTread <em>Tread</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getContactArea <em>Contact Area</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getStiffness <em>Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getTemperatureLimit <em>Temperature Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.CastorTypeImpl#getMass <em>Mass</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CastorTypeImpl extends StockItemImpl implements CastorType {
	/**
	 * The default value of the '{@link #getRatedLoad() <em>Rated Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedLoad()
	 * @generated
	 * @ordered
	 */
	protected static final Measured RATED_LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedLoad() <em>Rated Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedLoad()
	 * @generated
	 * @ordered
	 */
	protected Measured ratedLoad = RATED_LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getWheelDiameter() <em>Wheel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWheelDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WHEEL_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWheelDiameter() <em>Wheel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWheelDiameter()
	 * @generated
	 * @ordered
	 */
	protected Measured wheelDiameter = WHEEL_DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLead() <em>Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLead()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LEAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLead() <em>Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLead()
	 * @generated
	 * @ordered
	 */
	protected Measured lead = LEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getTread() <em>Tread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTread()
	 * @generated
	 * @ordered
	 */
	protected static final Tread TREAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTread() <em>Tread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTread()
	 * @generated
	 * @ordered
	 */
	protected Tread tread = TREAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getContactArea() <em>Contact Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContactArea()
	 * @generated
	 * @ordered
	 */
	protected static final Measured CONTACT_AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContactArea() <em>Contact Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContactArea()
	 * @generated
	 * @ordered
	 */
	protected Measured contactArea = CONTACT_AREA_EDEFAULT;

	/**
	 * The default value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STIFFNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected Measured stiffness = STIFFNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperatureLimit() <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Measured TEMPERATURE_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemperatureLimit() <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureLimit()
	 * @generated
	 * @ordered
	 */
	protected Measured temperatureLimit = TEMPERATURE_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected static final Measured MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected Measured mass = MASS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CastorTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.CASTOR_TYPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getRatedLoad() {
		return ratedLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedLoad(Measured newRatedLoad) {
		Measured oldRatedLoad = ratedLoad;
		ratedLoad = newRatedLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__RATED_LOAD, oldRatedLoad, ratedLoad));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWheelDiameter() {
		return wheelDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWheelDiameter(Measured newWheelDiameter) {
		Measured oldWheelDiameter = wheelDiameter;
		wheelDiameter = newWheelDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__WHEEL_DIAMETER, oldWheelDiameter, wheelDiameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLead() {
		return lead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLead(Measured newLead) {
		Measured oldLead = lead;
		lead = newLead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__LEAD, oldLead, lead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tread getTread() {
		return tread;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTread(Tread newTread) {
		Tread oldTread = tread;
		tread = newTread;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__TREAD, oldTread, tread));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getContactArea() {
		return contactArea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContactArea(Measured newContactArea) {
		Measured oldContactArea = contactArea;
		contactArea = newContactArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__CONTACT_AREA, oldContactArea, contactArea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStiffness() {
		return stiffness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStiffness(Measured newStiffness) {
		Measured oldStiffness = stiffness;
		stiffness = newStiffness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__STIFFNESS, oldStiffness, stiffness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getTemperatureLimit() {
		return temperatureLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperatureLimit(Measured newTemperatureLimit) {
		Measured oldTemperatureLimit = temperatureLimit;
		temperatureLimit = newTemperatureLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__TEMPERATURE_LIMIT, oldTemperatureLimit, temperatureLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getMass() {
		return mass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMass(Measured newMass) {
		Measured oldMass = mass;
		mass = newMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.CASTOR_TYPE__MASS, oldMass, mass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.CASTOR_TYPE__RATED_LOAD:
				return getRatedLoad();
			case StockPackage.CASTOR_TYPE__WHEEL_DIAMETER:
				return getWheelDiameter();
			case StockPackage.CASTOR_TYPE__LEAD:
				return getLead();
			case StockPackage.CASTOR_TYPE__TREAD:
				return getTread();
			case StockPackage.CASTOR_TYPE__CONTACT_AREA:
				return getContactArea();
			case StockPackage.CASTOR_TYPE__STIFFNESS:
				return getStiffness();
			case StockPackage.CASTOR_TYPE__TEMPERATURE_LIMIT:
				return getTemperatureLimit();
			case StockPackage.CASTOR_TYPE__MASS:
				return getMass();
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
			case StockPackage.CASTOR_TYPE__RATED_LOAD:
				setRatedLoad((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__WHEEL_DIAMETER:
				setWheelDiameter((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__LEAD:
				setLead((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__TREAD:
				setTread((Tread)newValue);
				return;
			case StockPackage.CASTOR_TYPE__CONTACT_AREA:
				setContactArea((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__STIFFNESS:
				setStiffness((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__TEMPERATURE_LIMIT:
				setTemperatureLimit((Measured)newValue);
				return;
			case StockPackage.CASTOR_TYPE__MASS:
				setMass((Measured)newValue);
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
			case StockPackage.CASTOR_TYPE__RATED_LOAD:
				setRatedLoad(RATED_LOAD_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__WHEEL_DIAMETER:
				setWheelDiameter(WHEEL_DIAMETER_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__LEAD:
				setLead(LEAD_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__TREAD:
				setTread(TREAD_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__CONTACT_AREA:
				setContactArea(CONTACT_AREA_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__STIFFNESS:
				setStiffness(STIFFNESS_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__TEMPERATURE_LIMIT:
				setTemperatureLimit(TEMPERATURE_LIMIT_EDEFAULT);
				return;
			case StockPackage.CASTOR_TYPE__MASS:
				setMass(MASS_EDEFAULT);
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
			case StockPackage.CASTOR_TYPE__RATED_LOAD:
				return RATED_LOAD_EDEFAULT == null ? ratedLoad != null : !RATED_LOAD_EDEFAULT.equals(ratedLoad);
			case StockPackage.CASTOR_TYPE__WHEEL_DIAMETER:
				return WHEEL_DIAMETER_EDEFAULT == null ? wheelDiameter != null : !WHEEL_DIAMETER_EDEFAULT.equals(wheelDiameter);
			case StockPackage.CASTOR_TYPE__LEAD:
				return LEAD_EDEFAULT == null ? lead != null : !LEAD_EDEFAULT.equals(lead);
			case StockPackage.CASTOR_TYPE__TREAD:
				return TREAD_EDEFAULT == null ? tread != null : !TREAD_EDEFAULT.equals(tread);
			case StockPackage.CASTOR_TYPE__CONTACT_AREA:
				return CONTACT_AREA_EDEFAULT == null ? contactArea != null : !CONTACT_AREA_EDEFAULT.equals(contactArea);
			case StockPackage.CASTOR_TYPE__STIFFNESS:
				return STIFFNESS_EDEFAULT == null ? stiffness != null : !STIFFNESS_EDEFAULT.equals(stiffness);
			case StockPackage.CASTOR_TYPE__TEMPERATURE_LIMIT:
				return TEMPERATURE_LIMIT_EDEFAULT == null ? temperatureLimit != null : !TEMPERATURE_LIMIT_EDEFAULT.equals(temperatureLimit);
			case StockPackage.CASTOR_TYPE__MASS:
				return MASS_EDEFAULT == null ? mass != null : !MASS_EDEFAULT.equals(mass);
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
		result.append(" (ratedLoad: ");
		result.append(ratedLoad);
		result.append(", wheelDiameter: ");
		result.append(wheelDiameter);
		result.append(", lead: ");
		result.append(lead);
		result.append(", tread: ");
		result.append(tread);
		result.append(", contactArea: ");
		result.append(contactArea);
		result.append(", stiffness: ");
		result.append(stiffness);
		result.append(", temperatureLimit: ");
		result.append(temperatureLimit);
		result.append(", mass: ");
		result.append(mass);
		result.append(')');
		return result.toString();
	}

} //CastorTypeImpl
