/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import cradlewright.model.vehicle.Car;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Job</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Job#getCar <em>Car</em>}</li>
 *   <li>{@link cradlewright.model.job.Job#getDue <em>Due</em>}</li>
 *   <li>{@link cradlewright.model.job.Job#getOperations <em>Operations</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getJob()
 * @model
 * @generated
 */
public interface Job extends Named {
	/**
	 * Returns the value of the '<em><b>Car</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Car</em>' reference.
	 * @see #setCar(Car)
	 * @see cradlewright.model.job.JobPackage#getJob_Car()
	 * @model
	 * @generated
	 */
	Car getCar();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Job#getCar <em>Car</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Car</em>' reference.
	 * @see #getCar()
	 * @generated
	 */
	void setCar(Car value);

	/**
	 * Returns the value of the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Due</em>' attribute.
	 * @see #setDue(LocalDate)
	 * @see cradlewright.model.job.JobPackage#getJob_Due()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getDue();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Job#getDue <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Due</em>' attribute.
	 * @see #getDue()
	 * @generated
	 */
	void setDue(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Operations</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.Operation}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Operations</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getJob_Operations()
	 * @model containment="true"
	 * @generated
	 */
	EList<Operation> getOperations();

} // Job
