/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hold Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Work stops here until somebody signs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.HoldPoint#getOperation <em>Operation</em>}</li>
 *   <li>{@link cradlewright.model.job.HoldPoint#getText <em>Text</em>}</li>
 *   <li>{@link cradlewright.model.job.HoldPoint#getSignOffs <em>Sign Offs</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getHoldPoint()
 * @model
 * @generated
 */
public interface HoldPoint extends Named {
	/**
	 * Returns the value of the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Operation</em>' reference.
	 * @see #setOperation(Operation)
	 * @see cradlewright.model.job.JobPackage#getHoldPoint_Operation()
	 * @model
	 * @generated
	 */
	Operation getOperation();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.HoldPoint#getOperation <em>Operation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Operation</em>' reference.
	 * @see #getOperation()
	 * @generated
	 */
	void setOperation(Operation value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see cradlewright.model.job.JobPackage#getHoldPoint_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.HoldPoint#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Sign Offs</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.job.SignOff}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sign Offs</em>' containment reference list.
	 * @see cradlewright.model.job.JobPackage#getHoldPoint_SignOffs()
	 * @model containment="true"
	 * @generated
	 */
	EList<SignOff> getSignOffs();

} // HoldPoint
