/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Calendar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * When somebody works; the shop's own when no person is named.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Calendar#getPerson <em>Person</em>}</li>
 *   <li>{@link cradlewright.model.job.Calendar#getHoursADay <em>Hours ADay</em>}</li>
 *   <li>{@link cradlewright.model.job.Calendar#getDaysOff <em>Days Off</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getCalendar()
 * @model
 * @generated
 */
public interface Calendar extends Named {
	/**
	 * Returns the value of the '<em><b>Person</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' reference.
	 * @see #setPerson(Person)
	 * @see cradlewright.model.job.JobPackage#getCalendar_Person()
	 * @model
	 * @generated
	 */
	Person getPerson();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Calendar#getPerson <em>Person</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' reference.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(Person value);

	/**
	 * Returns the value of the '<em><b>Hours ADay</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hours ADay</em>' attribute.
	 * @see #setHoursADay(Measured)
	 * @see cradlewright.model.job.JobPackage#getCalendar_HoursADay()
	 * @model dataType="cradlewright.model.base.Hours"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getHoursADay();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Calendar#getHoursADay <em>Hours ADay</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hours ADay</em>' attribute.
	 * @see #getHoursADay()
	 * @generated
	 */
	void setHoursADay(Measured value);

	/**
	 * Returns the value of the '<em><b>Days Off</b></em>' attribute list.
	 * The list contents are of type {@link java.time.LocalDate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Days Off</em>' attribute list.
	 * @see cradlewright.model.job.JobPackage#getCalendar_DaysOff()
	 * @model unique="false" dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	EList<LocalDate> getDaysOff();

} // Calendar
