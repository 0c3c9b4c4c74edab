/**
 */
package cradlewright.model.base.impl;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Examined;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Examined</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.impl.ExaminedImpl#getTag <em>Tag</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.ExaminedImpl#getLastExamined <em>Last Examined</em>}</li>
 *   <li>{@link cradlewright.model.base.impl.ExaminedImpl#getExaminationDue <em>Examination Due</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class ExaminedImpl extends NamedImpl implements Examined {
	/**
	 * The default value of the '{@link #getTag() <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTag()
	 * @generated
	 * @ordered
	 */
	protected static final String TAG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTag() <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTag()
	 * @generated
	 * @ordered
	 */
	protected String tag = TAG_EDEFAULT;

	/**
	 * The default value of the '{@link #getLastExamined() <em>Last Examined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastExamined()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate LAST_EXAMINED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLastExamined() <em>Last Examined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastExamined()
	 * @generated
	 * @ordered
	 */
	protected LocalDate lastExamined = LAST_EXAMINED_EDEFAULT;

	/**
	 * The default value of the '{@link #getExaminationDue() <em>Examination Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExaminationDue()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate EXAMINATION_DUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExaminationDue() <em>Examination Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExaminationDue()
	 * @generated
	 * @ordered
	 */
	protected LocalDate examinationDue = EXAMINATION_DUE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExaminedImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BasePackage.Literals.EXAMINED;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTag() {
		return tag;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTag(String newTag) {
		String oldTag = tag;
		tag = newTag;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.EXAMINED__TAG, oldTag, tag));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastExamined() {
		return lastExamined;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastExamined(LocalDate newLastExamined) {
		LocalDate oldLastExamined = lastExamined;
		lastExamined = newLastExamined;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.EXAMINED__LAST_EXAMINED, oldLastExamined, lastExamined));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getExaminationDue() {
		return examinationDue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExaminationDue(LocalDate newExaminationDue) {
		LocalDate oldExaminationDue = examinationDue;
		examinationDue = newExaminationDue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BasePackage.EXAMINED__EXAMINATION_DUE, oldExaminationDue, examinationDue));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BasePackage.EXAMINED__TAG:
				return getTag();
			case BasePackage.EXAMINED__LAST_EXAMINED:
				return getLastExamined();
			case BasePackage.EXAMINED__EXAMINATION_DUE:
				return getExaminationDue();
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
			case BasePackage.EXAMINED__TAG:
				setTag((String)newValue);
				return;
			case BasePackage.EXAMINED__LAST_EXAMINED:
				setLastExamined((LocalDate)newValue);
				return;
			case BasePackage.EXAMINED__EXAMINATION_DUE:
				setExaminationDue((LocalDate)newValue);
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
			case BasePackage.EXAMINED__TAG:
				setTag(TAG_EDEFAULT);
				return;
			case BasePackage.EXAMINED__LAST_EXAMINED:
				setLastExamined(LAST_EXAMINED_EDEFAULT);
				return;
			case BasePackage.EXAMINED__EXAMINATION_DUE:
				setExaminationDue(EXAMINATION_DUE_EDEFAULT);
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
			case BasePackage.EXAMINED__TAG:
				return TAG_EDEFAULT == null ? tag != null : !TAG_EDEFAULT.equals(tag);
			case BasePackage.EXAMINED__LAST_EXAMINED:
				return LAST_EXAMINED_EDEFAULT == null ? lastExamined != null : !LAST_EXAMINED_EDEFAULT.equals(lastExamined);
			case BasePackage.EXAMINED__EXAMINATION_DUE:
				return EXAMINATION_DUE_EDEFAULT == null ? examinationDue != null : !EXAMINATION_DUE_EDEFAULT.equals(examinationDue);
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
		result.append(" (tag: ");
		result.append(tag);
		result.append(", lastExamined: ");
		result.append(lastExamined);
		result.append(", examinationDue: ");
		result.append(examinationDue);
		result.append(')');
		return result.toString();
	}

} //ExaminedImpl
