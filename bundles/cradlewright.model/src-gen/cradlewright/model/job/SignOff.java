/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Identified;

import cradlewright.model.vehicle.Visit;

import java.time.LocalDateTime;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Somebody's word that it was right as it stood; appended, never edited.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.SignOff#getBy <em>By</em>}</li>
 *   <li>{@link cradlewright.model.job.SignOff#getAt <em>At</em>}</li>
 *   <li>{@link cradlewright.model.job.SignOff#getDigest <em>Digest</em>}</li>
 *   <li>{@link cradlewright.model.job.SignOff#getVisit <em>Visit</em>}</li>
 *   <li>{@link cradlewright.model.job.SignOff#getProgramVersion <em>Program Version</em>}</li>
 *   <li>{@link cradlewright.model.job.SignOff#getFindingsText <em>Findings Text</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getSignOff()
 * @model
 * @generated
 */
public interface SignOff extends Identified {
	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see cradlewright.model.job.JobPackage#getSignOff_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(LocalDateTime)
	 * @see cradlewright.model.job.JobPackage#getSignOff_At()
	 * @model dataType="cradlewright.model.base.LocalMoment"
	 * @generated
	 */
	LocalDateTime getAt();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(LocalDateTime value);

	/**
	 * Returns the value of the '<em><b>Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the inputs; the sign-off lapses when it changes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Digest</em>' attribute.
	 * @see #setDigest(String)
	 * @see cradlewright.model.job.JobPackage#getSignOff_Digest()
	 * @model
	 * @generated
	 */
	String getDigest();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getDigest <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Digest</em>' attribute.
	 * @see #getDigest()
	 * @generated
	 */
	void setDigest(String value);

	/**
	 * Returns the value of the '<em><b>Visit</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The visit that was signed for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Visit</em>' reference.
	 * @see #setVisit(Visit)
	 * @see cradlewright.model.job.JobPackage#getSignOff_Visit()
	 * @model
	 * @generated
	 */
	Visit getVisit();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getVisit <em>Visit</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Visit</em>' reference.
	 * @see #getVisit()
	 * @generated
	 */
	void setVisit(Visit value);

	/**
	 * Returns the value of the '<em><b>Program Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Program Version</em>' attribute.
	 * @see #setProgramVersion(String)
	 * @see cradlewright.model.job.JobPackage#getSignOff_ProgramVersion()
	 * @model
	 * @generated
	 */
	String getProgramVersion();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getProgramVersion <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Program Version</em>' attribute.
	 * @see #getProgramVersion()
	 * @generated
	 */
	void setProgramVersion(String value);

	/**
	 * Returns the value of the '<em><b>Findings Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Findings Text</em>' attribute.
	 * @see #setFindingsText(String)
	 * @see cradlewright.model.job.JobPackage#getSignOff_FindingsText()
	 * @model
	 * @generated
	 */
	String getFindingsText();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.SignOff#getFindingsText <em>Findings Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Findings Text</em>' attribute.
	 * @see #getFindingsText()
	 * @generated
	 */
	void setFindingsText(String value);

} // SignOff
