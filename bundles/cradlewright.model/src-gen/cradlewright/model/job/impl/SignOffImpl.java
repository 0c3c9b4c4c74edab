/**
 */
package cradlewright.model.job.impl;

import cradlewright.model.base.impl.IdentifiedImpl;

import cradlewright.model.job.JobPackage;
import cradlewright.model.job.SignOff;

import cradlewright.model.vehicle.Visit;

import java.time.LocalDateTime;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getBy <em>By</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getAt <em>At</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getDigest <em>Digest</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getVisit <em>Visit</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getProgramVersion <em>Program Version</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.SignOffImpl#getFindingsText <em>Findings Text</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SignOffImpl extends IdentifiedImpl implements SignOff {
	/**
	 * The default value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected static final String BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected String by = BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDateTime AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected LocalDateTime at = AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDigest() <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDigest()
	 * @generated
	 * @ordered
	 */
	protected static final String DIGEST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDigest() <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDigest()
	 * @generated
	 * @ordered
	 */
	protected String digest = DIGEST_EDEFAULT;

	/**
	 * The cached value of the '{@link #getVisit() <em>Visit</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisit()
	 * @generated
	 * @ordered
	 */
	protected Visit visit;

	/**
	 * The default value of the '{@link #getProgramVersion() <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgramVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String PROGRAM_VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProgramVersion() <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgramVersion()
	 * @generated
	 * @ordered
	 */
	protected String programVersion = PROGRAM_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFindingsText() <em>Findings Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFindingsText()
	 * @generated
	 * @ordered
	 */
	protected static final String FINDINGS_TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFindingsText() <em>Findings Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFindingsText()
	 * @generated
	 * @ordered
	 */
	protected String findingsText = FINDINGS_TEXT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SignOffImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return JobPackage.Literals.SIGN_OFF;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBy() {
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(String newBy) {
		String oldBy = by;
		by = newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDateTime getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(LocalDateTime newAt) {
		LocalDateTime oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDigest() {
		return digest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDigest(String newDigest) {
		String oldDigest = digest;
		digest = newDigest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__DIGEST, oldDigest, digest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Visit getVisit() {
		if (visit != null && visit.eIsProxy()) {
			InternalEObject oldVisit = (InternalEObject)visit;
			visit = (Visit)eResolveProxy(oldVisit);
			if (visit != oldVisit) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, JobPackage.SIGN_OFF__VISIT, oldVisit, visit));
			}
		}
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Visit basicGetVisit() {
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVisit(Visit newVisit) {
		Visit oldVisit = visit;
		visit = newVisit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__VISIT, oldVisit, visit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProgramVersion() {
		return programVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProgramVersion(String newProgramVersion) {
		String oldProgramVersion = programVersion;
		programVersion = newProgramVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__PROGRAM_VERSION, oldProgramVersion, programVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFindingsText() {
		return findingsText;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFindingsText(String newFindingsText) {
		String oldFindingsText = findingsText;
		findingsText = newFindingsText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__FINDINGS_TEXT, oldFindingsText, findingsText));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case JobPackage.SIGN_OFF__BY:
				return getBy();
			case JobPackage.SIGN_OFF__AT:
				return getAt();
			case JobPackage.SIGN_OFF__DIGEST:
				return getDigest();
			case JobPackage.SIGN_OFF__VISIT:
				if (resolve) return getVisit();
				return basicGetVisit();
			case JobPackage.SIGN_OFF__PROGRAM_VERSION:
				return getProgramVersion();
			case JobPackage.SIGN_OFF__FINDINGS_TEXT:
				return getFindingsText();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case JobPackage.SIGN_OFF__BY:
				setBy((String)newValue);
				return;
			case JobPackage.SIGN_OFF__AT:
				setAt((LocalDateTime)newValue);
				return;
			case JobPackage.SIGN_OFF__DIGEST:
				setDigest((String)newValue);
				return;
			case JobPackage.SIGN_OFF__VISIT:
				setVisit((Visit)newValue);
				return;
			case JobPackage.SIGN_OFF__PROGRAM_VERSION:
				setProgramVersion((String)newValue);
				return;
			case JobPackage.SIGN_OFF__FINDINGS_TEXT:
				setFindingsText((String)newValue);
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
			case JobPackage.SIGN_OFF__BY:
				setBy(BY_EDEFAULT);
				return;
			case JobPackage.SIGN_OFF__AT:
				setAt(AT_EDEFAULT);
				return;
			case JobPackage.SIGN_OFF__DIGEST:
				setDigest(DIGEST_EDEFAULT);
				return;
			case JobPackage.SIGN_OFF__VISIT:
				setVisit((Visit)null);
				return;
			case JobPackage.SIGN_OFF__PROGRAM_VERSION:
				setProgramVersion(PROGRAM_VERSION_EDEFAULT);
				return;
			case JobPackage.SIGN_OFF__FINDINGS_TEXT:
				setFindingsText(FINDINGS_TEXT_EDEFAULT);
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
			case JobPackage.SIGN_OFF__BY:
				return BY_EDEFAULT == null ? by != null : !BY_EDEFAULT.equals(by);
			case JobPackage.SIGN_OFF__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case JobPackage.SIGN_OFF__DIGEST:
				return DIGEST_EDEFAULT == null ? digest != null : !DIGEST_EDEFAULT.equals(digest);
			case JobPackage.SIGN_OFF__VISIT:
				return visit != null;
			case JobPackage.SIGN_OFF__PROGRAM_VERSION:
				return PROGRAM_VERSION_EDEFAULT == null ? programVersion != null : !PROGRAM_VERSION_EDEFAULT.equals(programVersion);
			case JobPackage.SIGN_OFF__FINDINGS_TEXT:
				return FINDINGS_TEXT_EDEFAULT == null ? findingsText != null : !FINDINGS_TEXT_EDEFAULT.equals(findingsText);
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
		result.append(" (by: ");
		result.append(by);
		result.append(", at: ");
		result.append(at);
		result.append(", digest: ");
		result.append(digest);
		result.append(", programVersion: ");
		result.append(programVersion);
		result.append(", findingsText: ");
		result.append(findingsText);
		result.append(')');
		return result.toString();
	}

} //SignOffImpl
