/**
 */
package cradlewright.model.job.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.job.Calendar;
import cradlewright.model.job.JobPackage;
import cradlewright.model.job.Person;

import cradlewright.quantity.Measured;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Calendar</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.impl.CalendarImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.CalendarImpl#getHoursADay <em>Hours ADay</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.CalendarImpl#getDaysOff <em>Days Off</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CalendarImpl extends NamedImpl implements Calendar {
	/**
	 * The cached value of the '{@link #getPerson() <em>Person</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerson()
	 * @generated
	 * @ordered
	 */
	protected Person person;

	/**
	 * The default value of the '{@link #getHoursADay() <em>Hours ADay</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoursADay()
	 * @generated
	 * @ordered
	 */
	protected static final Measured HOURS_ADAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHoursADay() <em>Hours ADay</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoursADay()
	 * @generated
	 * @ordered
	 */
	protected Measured hoursADay = HOURS_ADAY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getDaysOff() <em>Days Off</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysOff()
	 * @generated
	 * @ordered
	 */
	protected EList<LocalDate> daysOff;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CalendarImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return JobPackage.Literals.CALENDAR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getPerson() {
		if (person != null && person.eIsProxy()) {
			InternalEObject oldPerson = (InternalEObject)person;
			person = (Person)eResolveProxy(oldPerson);
			if (person != oldPerson) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, JobPackage.CALENDAR__PERSON, oldPerson, person));
			}
		}
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetPerson() {
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerson(Person newPerson) {
		Person oldPerson = person;
		person = newPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.CALENDAR__PERSON, oldPerson, person));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getHoursADay() {
		return hoursADay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoursADay(Measured newHoursADay) {
		Measured oldHoursADay = hoursADay;
		hoursADay = newHoursADay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.CALENDAR__HOURS_ADAY, oldHoursADay, hoursADay));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LocalDate> getDaysOff() {
		if (daysOff == null) {
			daysOff = new EDataTypeEList<LocalDate>(LocalDate.class, this, JobPackage.CALENDAR__DAYS_OFF);
		}
		return daysOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case JobPackage.CALENDAR__PERSON:
				if (resolve) return getPerson();
				return basicGetPerson();
			case JobPackage.CALENDAR__HOURS_ADAY:
				return getHoursADay();
			case JobPackage.CALENDAR__DAYS_OFF:
				return getDaysOff();
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
			case JobPackage.CALENDAR__PERSON:
				setPerson((Person)newValue);
				return;
			case JobPackage.CALENDAR__HOURS_ADAY:
				setHoursADay((Measured)newValue);
				return;
			case JobPackage.CALENDAR__DAYS_OFF:
				getDaysOff().clear();
				getDaysOff().addAll((Collection<? extends LocalDate>)newValue);
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
			case JobPackage.CALENDAR__PERSON:
				setPerson((Person)null);
				return;
			case JobPackage.CALENDAR__HOURS_ADAY:
				setHoursADay(HOURS_ADAY_EDEFAULT);
				return;
			case JobPackage.CALENDAR__DAYS_OFF:
				getDaysOff().clear();
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
			case JobPackage.CALENDAR__PERSON:
				return person != null;
			case JobPackage.CALENDAR__HOURS_ADAY:
				return HOURS_ADAY_EDEFAULT == null ? hoursADay != null : !HOURS_ADAY_EDEFAULT.equals(hoursADay);
			case JobPackage.CALENDAR__DAYS_OFF:
				return daysOff != null && !daysOff.isEmpty();
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
		result.append(" (hoursADay: ");
		result.append(hoursADay);
		result.append(", daysOff: ");
		result.append(daysOff);
		result.append(')');
		return result.toString();
	}

} //CalendarImpl
