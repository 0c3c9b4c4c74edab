/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wait</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What an operation waits for.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Wait#getOperation <em>Operation</em>}</li>
 *   <li>{@link cradlewright.model.job.Wait#getReason <em>Reason</em>}</li>
 *   <li>{@link cradlewright.model.job.Wait#getSince <em>Since</em>}</li>
 *   <li>{@link cradlewright.model.job.Wait#getUntil <em>Until</em>}</li>
 *   <li>{@link cradlewright.model.job.Wait#getEnded <em>Ended</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getWait()
 * @model
 * @generated
 */
public interface Wait extends Named {
	/**
	 * Returns the value of the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Operation</em>' reference.
	 * @see #setOperation(Operation)
	 * @see cradlewright.model.job.JobPackage#getWait_Operation()
	 * @model
	 * @generated
	 */
	Operation getOperation();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Wait#getOperation <em>Operation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Operation</em>' reference.
	 * @see #getOperation()
	 * @generated
	 */
	void setOperation(Operation value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see cradlewright.model.job.JobPackage#getWait_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Wait#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Since</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Since</em>' attribute.
	 * @see #setSince(LocalDate)
	 * @see cradlewright.model.job.JobPackage#getWait_Since()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getSince();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Wait#getSince <em>Since</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Since</em>' attribute.
	 * @see #getSince()
	 * @generated
	 */
	void setSince(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Until</em>' attribute.
	 * @see #setUntil(LocalDate)
	 * @see cradlewright.model.job.JobPackage#getWait_Until()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getUntil();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Wait#getUntil <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Until</em>' attribute.
	 * @see #getUntil()
	 * @generated
	 */
	void setUntil(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Ended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day on which the waiting ended; still waiting when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ended</em>' attribute.
	 * @see #setEnded(LocalDate)
	 * @see cradlewright.model.job.JobPackage#getWait_Ended()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getEnded();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Wait#getEnded <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended</em>' attribute.
	 * @see #getEnded()
	 * @generated
	 */
	void setEnded(LocalDate value);

} // Wait
