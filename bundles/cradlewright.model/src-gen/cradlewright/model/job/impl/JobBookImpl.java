/**
 */
package cradlewright.model.job.impl;

import cradlewright.model.job.Booking;
import cradlewright.model.job.Calendar;
import cradlewright.model.job.HoldPoint;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobPackage;
import cradlewright.model.job.Person;
import cradlewright.model.job.Wait;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Book</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getSchema <em>Schema</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#isDraft <em>Draft</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getJobs <em>Jobs</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getPeople <em>People</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getBookings <em>Bookings</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getHoldPoints <em>Hold Points</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.JobBookImpl#getWaits <em>Waits</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JobBookImpl extends MinimalEObjectImpl.Container implements JobBook {
	/**
	 * The default value of the '{@link #getSchema() <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchema()
	 * @generated
	 * @ordered
	 */
	protected static final int SCHEMA_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getSchema() <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchema()
	 * @generated
	 * @ordered
	 */
	protected int schema = SCHEMA_EDEFAULT;

	/**
	 * The default value of the '{@link #isDraft() <em>Draft</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDraft()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DRAFT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDraft() <em>Draft</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDraft()
	 * @generated
	 * @ordered
	 */
	protected boolean draft = DRAFT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getJobs() <em>Jobs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJobs()
	 * @generated
	 * @ordered
	 */
	protected EList<Job> jobs;

	/**
	 * The cached value of the '{@link #getPeople() <em>People</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected EList<Person> people;

	/**
	 * The cached value of the '{@link #getBookings() <em>Bookings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBookings()
	 * @generated
	 * @ordered
	 */
	protected EList<Booking> bookings;

	/**
	 * The cached value of the '{@link #getHoldPoints() <em>Hold Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoldPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<HoldPoint> holdPoints;

	/**
	 * The cached value of the '{@link #getCalendars() <em>Calendars</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalendars()
	 * @generated
	 * @ordered
	 */
	protected EList<Calendar> calendars;

	/**
	 * The cached value of the '{@link #getWaits() <em>Waits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaits()
	 * @generated
	 * @ordered
	 */
	protected EList<Wait> waits;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JobBookImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return JobPackage.Literals.JOB_BOOK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSchema() {
		return schema;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchema(int newSchema) {
		int oldSchema = schema;
		schema = newSchema;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB_BOOK__SCHEMA, oldSchema, schema));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDraft() {
		return draft;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDraft(boolean newDraft) {
		boolean oldDraft = draft;
		draft = newDraft;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB_BOOK__DRAFT, oldDraft, draft));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Job> getJobs() {
		if (jobs == null) {
			jobs = new EObjectContainmentEList<Job>(Job.class, this, JobPackage.JOB_BOOK__JOBS);
		}
		return jobs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Person> getPeople() {
		if (people == null) {
			people = new EObjectContainmentEList<Person>(Person.class, this, JobPackage.JOB_BOOK__PEOPLE);
		}
		return people;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Booking> getBookings() {
		if (bookings == null) {
			bookings = new EObjectContainmentEList<Booking>(Booking.class, this, JobPackage.JOB_BOOK__BOOKINGS);
		}
		return bookings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<HoldPoint> getHoldPoints() {
		if (holdPoints == null) {
			holdPoints = new EObjectContainmentEList<HoldPoint>(HoldPoint.class, this, JobPackage.JOB_BOOK__HOLD_POINTS);
		}
		return holdPoints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Calendar> getCalendars() {
		if (calendars == null) {
			calendars = new EObjectContainmentEList<Calendar>(Calendar.class, this, JobPackage.JOB_BOOK__CALENDARS);
		}
		return calendars;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Wait> getWaits() {
		if (waits == null) {
			waits = new EObjectContainmentEList<Wait>(Wait.class, this, JobPackage.JOB_BOOK__WAITS);
		}
		return waits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case JobPackage.JOB_BOOK__JOBS:
				return ((InternalEList<?>)getJobs()).basicRemove(otherEnd, msgs);
			case JobPackage.JOB_BOOK__PEOPLE:
				return ((InternalEList<?>)getPeople()).basicRemove(otherEnd, msgs);
			case JobPackage.JOB_BOOK__BOOKINGS:
				return ((InternalEList<?>)getBookings()).basicRemove(otherEnd, msgs);
			case JobPackage.JOB_BOOK__HOLD_POINTS:
				return ((InternalEList<?>)getHoldPoints()).basicRemove(otherEnd, msgs);
			case JobPackage.JOB_BOOK__CALENDARS:
				return ((InternalEList<?>)getCalendars()).basicRemove(otherEnd, msgs);
			case JobPackage.JOB_BOOK__WAITS:
				return ((InternalEList<?>)getWaits()).basicRemove(otherEnd, msgs);
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
			case JobPackage.JOB_BOOK__SCHEMA:
				return getSchema();
			case JobPackage.JOB_BOOK__DRAFT:
				return isDraft();
			case JobPackage.JOB_BOOK__JOBS:
				return getJobs();
			case JobPackage.JOB_BOOK__PEOPLE:
				return getPeople();
			case JobPackage.JOB_BOOK__BOOKINGS:
				return getBookings();
			case JobPackage.JOB_BOOK__HOLD_POINTS:
				return getHoldPoints();
			case JobPackage.JOB_BOOK__CALENDARS:
				return getCalendars();
			case JobPackage.JOB_BOOK__WAITS:
				return getWaits();
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
			case JobPackage.JOB_BOOK__SCHEMA:
				setSchema((Integer)newValue);
				return;
			case JobPackage.JOB_BOOK__DRAFT:
				setDraft((Boolean)newValue);
				return;
			case JobPackage.JOB_BOOK__JOBS:
				getJobs().clear();
				getJobs().addAll((Collection<? extends Job>)newValue);
				return;
			case JobPackage.JOB_BOOK__PEOPLE:
				getPeople().clear();
				getPeople().addAll((Collection<? extends Person>)newValue);
				return;
			case JobPackage.JOB_BOOK__BOOKINGS:
				getBookings().clear();
				getBookings().addAll((Collection<? extends Booking>)newValue);
				return;
			case JobPackage.JOB_BOOK__HOLD_POINTS:
				getHoldPoints().clear();
				getHoldPoints().addAll((Collection<? extends HoldPoint>)newValue);
				return;
			case JobPackage.JOB_BOOK__CALENDARS:
				getCalendars().clear();
				getCalendars().addAll((Collection<? extends Calendar>)newValue);
				return;
			case JobPackage.JOB_BOOK__WAITS:
				getWaits().clear();
				getWaits().addAll((Collection<? extends Wait>)newValue);
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
			case JobPackage.JOB_BOOK__SCHEMA:
				setSchema(SCHEMA_EDEFAULT);
				return;
			case JobPackage.JOB_BOOK__DRAFT:
				setDraft(DRAFT_EDEFAULT);
				return;
			case JobPackage.JOB_BOOK__JOBS:
				getJobs().clear();
				return;
			case JobPackage.JOB_BOOK__PEOPLE:
				getPeople().clear();
				return;
			case JobPackage.JOB_BOOK__BOOKINGS:
				getBookings().clear();
				return;
			case JobPackage.JOB_BOOK__HOLD_POINTS:
				getHoldPoints().clear();
				return;
			case JobPackage.JOB_BOOK__CALENDARS:
				getCalendars().clear();
				return;
			case JobPackage.JOB_BOOK__WAITS:
				getWaits().clear();
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
			case JobPackage.JOB_BOOK__SCHEMA:
				return schema != SCHEMA_EDEFAULT;
			case JobPackage.JOB_BOOK__DRAFT:
				return draft != DRAFT_EDEFAULT;
			case JobPackage.JOB_BOOK__JOBS:
				return jobs != null && !jobs.isEmpty();
			case JobPackage.JOB_BOOK__PEOPLE:
				return people != null && !people.isEmpty();
			case JobPackage.JOB_BOOK__BOOKINGS:
				return bookings != null && !bookings.isEmpty();
			case JobPackage.JOB_BOOK__HOLD_POINTS:
				return holdPoints != null && !holdPoints.isEmpty();
			case JobPackage.JOB_BOOK__CALENDARS:
				return calendars != null && !calendars.isEmpty();
			case JobPackage.JOB_BOOK__WAITS:
				return waits != null && !waits.isEmpty();
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
		result.append(" (schema: ");
		result.append(schema);
		result.append(", draft: ");
		result.append(draft);
		result.append(')');
		return result.toString();
	}

} //JobBookImpl
