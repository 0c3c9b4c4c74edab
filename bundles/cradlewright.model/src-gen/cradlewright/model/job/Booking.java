/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Examined;
import cradlewright.model.base.Named;

import cradlewright.model.floor.Place;

import java.time.LocalDateTime;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Booking</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Who does what where, from when to when.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Booking#getOperation <em>Operation</em>}</li>
 *   <li>{@link cradlewright.model.job.Booking#getPerson <em>Person</em>}</li>
 *   <li>{@link cradlewright.model.job.Booking#getPlace <em>Place</em>}</li>
 *   <li>{@link cradlewright.model.job.Booking#getGear <em>Gear</em>}</li>
 *   <li>{@link cradlewright.model.job.Booking#getFrom <em>From</em>}</li>
 *   <li>{@link cradlewright.model.job.Booking#getTo <em>To</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getBooking()
 * @model
 * @generated
 */
public interface Booking extends Named {
	/**
	 * Returns the value of the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Operation</em>' reference.
	 * @see #setOperation(Operation)
	 * @see cradlewright.model.job.JobPackage#getBooking_Operation()
	 * @model
	 * @generated
	 */
	Operation getOperation();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getOperation <em>Operation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Operation</em>' reference.
	 * @see #getOperation()
	 * @generated
	 */
	void setOperation(Operation value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' reference.
	 * @see #setPerson(Person)
	 * @see cradlewright.model.job.JobPackage#getBooking_Person()
	 * @model
	 * @generated
	 */
	Person getPerson();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getPerson <em>Person</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' reference.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(Person value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' reference.
	 * @see #setPlace(Place)
	 * @see cradlewright.model.job.JobPackage#getBooking_Place()
	 * @model
	 * @generated
	 */
	Place getPlace();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getPlace <em>Place</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' reference.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Gear</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gear</em>' reference.
	 * @see #setGear(Examined)
	 * @see cradlewright.model.job.JobPackage#getBooking_Gear()
	 * @model
	 * @generated
	 */
	Examined getGear();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getGear <em>Gear</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gear</em>' reference.
	 * @see #getGear()
	 * @generated
	 */
	void setGear(Examined value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalDateTime)
	 * @see cradlewright.model.job.JobPackage#getBooking_From()
	 * @model dataType="cradlewright.model.base.LocalMoment"
	 * @generated
	 */
	LocalDateTime getFrom();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalDateTime value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(LocalDateTime)
	 * @see cradlewright.model.job.JobPackage#getBooking_To()
	 * @model dataType="cradlewright.model.base.LocalMoment"
	 * @generated
	 */
	LocalDateTime getTo();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Booking#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(LocalDateTime value);

} // Booking
