/**
 */
package cradlewright.model.job;

import cradlewright.model.base.FileRoot;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Book</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Root of the file of jobs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.JobBook#getJobs <em>Jobs</em>}</li>
 *   <li>{@link cradlewright.model.job.JobBook#getPeople <em>People</em>}</li>
 *   <li>{@link cradlewright.model.job.JobBook#getBookings <em>Bookings</em>}</li>
 *   <li>{@link cradlewright.model.job.JobBook#getHoldPoints <em>Hold Points</em>}</li>
 *   <li>{@link cradlewright.model.job.JobBook#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link cradlewright.model.job.JobBook#getWaits <em>Waits</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getJobBook()
 * @model
 * @generated
 */
public interface JobBook extends FileRoot {
	/**
	 * Returns the value of the '<em><b>Jobs</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Job}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Jobs</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_Jobs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Job> getJobs();

	/**
	 * Returns the value of the '<em><b>People</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Person}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>People</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_People()
	 * @model containment="true"
	 * @generated
	 */
	EList<Person> getPeople();

	/**
	 * Returns the value of the '<em><b>Bookings</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Booking}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bookings</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_Bookings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Booking> getBookings();

	/**
	 * Returns the value of the '<em><b>Hold Points</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.HoldPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hold Points</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_HoldPoints()
	 * @model containment="true"
	 * @generated
	 */
	EList<HoldPoint> getHoldPoints();

	/**
	 * Returns the value of the '<em><b>Calendars</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Calendar}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calendars</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_Calendars()
	 * @model containment="true"
	 * @generated
	 */
	EList<Calendar> getCalendars();

	/**
	 * Returns the value of the '<em><b>Waits</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Wait}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Waits</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJobBook_Waits()
	 * @model containment="true"
	 * @generated
	 */
	EList<Wait> getWaits();

} // JobBook
