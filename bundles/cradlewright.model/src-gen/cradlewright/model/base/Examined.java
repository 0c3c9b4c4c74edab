/**
 */
package cradlewright.model.base;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Examined</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something with a tag that somebody examines every so often.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.Examined#getTag <em>Tag</em>}</li>
 *   <li>{@link cradlewright.model.base.Examined#getLastExamined <em>Last Examined</em>}</li>
 *   <li>{@link cradlewright.model.base.Examined#getExaminationDue <em>Examination Due</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.base.BasePackage#getExamined()
 * @model abstract="true"
 * @generated
 */
public interface Examined extends Named {
	/**
	 * Returns the value of the '<em><b>Tag</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number on the tag.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tag</em>' attribute.
	 * @see #setTag(String)
	 * @see cradlewright.model.base.BasePackage#getExamined_Tag()
	 * @model
	 * @generated
	 */
	String getTag();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Examined#getTag <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tag</em>' attribute.
	 * @see #getTag()
	 * @generated
	 */
	void setTag(String value);

	/**
	 * Returns the value of the '<em><b>Last Examined</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Last Examined</em>' attribute.
	 * @see #setLastExamined(LocalDate)
	 * @see cradlewright.model.base.BasePackage#getExamined_LastExamined()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getLastExamined();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Examined#getLastExamined <em>Last Examined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Examined</em>' attribute.
	 * @see #getLastExamined()
	 * @generated
	 */
	void setLastExamined(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Examination Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When the next examination is due; not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Examination Due</em>' attribute.
	 * @see #setExaminationDue(LocalDate)
	 * @see cradlewright.model.base.BasePackage#getExamined_ExaminationDue()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getExaminationDue();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Examined#getExaminationDue <em>Examination Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Examination Due</em>' attribute.
	 * @see #getExaminationDue()
	 * @generated
	 */
	void setExaminationDue(LocalDate value);

} // Examined
