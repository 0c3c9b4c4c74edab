/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Part</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.PartImpl#getMass <em>Mass</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PartImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PartImpl#getTemperatureLimit <em>Temperature Limit</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PartImpl extends NamedImpl implements Part {
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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PartImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.PART;
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PART__MASS, oldMass, mass));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PART__POSITION, oldPosition, position));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PART__TEMPERATURE_LIMIT, oldTemperatureLimit, temperatureLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.PART__MASS:
				return getMass();
			case VehiclePackage.PART__POSITION:
				return getPosition();
			case VehiclePackage.PART__TEMPERATURE_LIMIT:
				return getTemperatureLimit();
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
			case VehiclePackage.PART__MASS:
				setMass((Measured)newValue);
				return;
			case VehiclePackage.PART__POSITION:
				setPosition((Position)newValue);
				return;
			case VehiclePackage.PART__TEMPERATURE_LIMIT:
				setTemperatureLimit((Measured)newValue);
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
			case VehiclePackage.PART__MASS:
				setMass(MASS_EDEFAULT);
				return;
			case VehiclePackage.PART__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case VehiclePackage.PART__TEMPERATURE_LIMIT:
				setTemperatureLimit(TEMPERATURE_LIMIT_EDEFAULT);
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
			case VehiclePackage.PART__MASS:
				return MASS_EDEFAULT == null ? mass != null : !MASS_EDEFAULT.equals(mass);
			case VehiclePackage.PART__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case VehiclePackage.PART__TEMPERATURE_LIMIT:
				return TEMPERATURE_LIMIT_EDEFAULT == null ? temperatureLimit != null : !TEMPERATURE_LIMIT_EDEFAULT.equals(temperatureLimit);
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
		result.append(" (mass: ");
		result.append(mass);
		result.append(", position: ");
		result.append(position);
		result.append(", temperatureLimit: ");
		result.append(temperatureLimit);
		result.append(')');
		return result.toString();
	}

} //PartImpl
