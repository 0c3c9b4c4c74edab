/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.StockPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bolt Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.BoltTypeImpl#getSize <em>Size</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.BoltTypeImpl#getGrade <em>Grade</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.BoltTypeImpl#getThreadsInShear <em>Threads In Shear</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BoltTypeImpl extends StockItemImpl implements BoltType {
	/**
	 * The default value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected static final String SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected String size = SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrade() <em>Grade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrade()
	 * @generated
	 * @ordered
	 */
	protected static final String GRADE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrade() <em>Grade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrade()
	 * @generated
	 * @ordered
	 */
	protected String grade = GRADE_EDEFAULT;

	/**
	 * The default value of the '{@link #getThreadsInShear() <em>Threads In Shear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadsInShear()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean THREADS_IN_SHEAR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThreadsInShear() <em>Threads In Shear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadsInShear()
	 * @generated
	 * @ordered
	 */
	protected Boolean threadsInShear = THREADS_IN_SHEAR_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BoltTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.BOLT_TYPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSize() {
		return size;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSize(String newSize) {
		String oldSize = size;
		size = newSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.BOLT_TYPE__SIZE, oldSize, size));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGrade() {
		return grade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrade(String newGrade) {
		String oldGrade = grade;
		grade = newGrade;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.BOLT_TYPE__GRADE, oldGrade, grade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getThreadsInShear() {
		return threadsInShear;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreadsInShear(Boolean newThreadsInShear) {
		Boolean oldThreadsInShear = threadsInShear;
		threadsInShear = newThreadsInShear;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.BOLT_TYPE__THREADS_IN_SHEAR, oldThreadsInShear, threadsInShear));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.BOLT_TYPE__SIZE:
				return getSize();
			case StockPackage.BOLT_TYPE__GRADE:
				return getGrade();
			case StockPackage.BOLT_TYPE__THREADS_IN_SHEAR:
				return getThreadsInShear();
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
			case StockPackage.BOLT_TYPE__SIZE:
				setSize((String)newValue);
				return;
			case StockPackage.BOLT_TYPE__GRADE:
				setGrade((String)newValue);
				return;
			case StockPackage.BOLT_TYPE__THREADS_IN_SHEAR:
				setThreadsInShear((Boolean)newValue);
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
			case StockPackage.BOLT_TYPE__SIZE:
				setSize(SIZE_EDEFAULT);
				return;
			case StockPackage.BOLT_TYPE__GRADE:
				setGrade(GRADE_EDEFAULT);
				return;
			case StockPackage.BOLT_TYPE__THREADS_IN_SHEAR:
				setThreadsInShear(THREADS_IN_SHEAR_EDEFAULT);
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
			case StockPackage.BOLT_TYPE__SIZE:
				return SIZE_EDEFAULT == null ? size != null : !SIZE_EDEFAULT.equals(size);
			case StockPackage.BOLT_TYPE__GRADE:
				return GRADE_EDEFAULT == null ? grade != null : !GRADE_EDEFAULT.equals(grade);
			case StockPackage.BOLT_TYPE__THREADS_IN_SHEAR:
				return THREADS_IN_SHEAR_EDEFAULT == null ? threadsInShear != null : !THREADS_IN_SHEAR_EDEFAULT.equals(threadsInShear);
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
		result.append(" (size: ");
		result.append(size);
		result.append(", grade: ");
		result.append(grade);
		result.append(", threadsInShear: ");
		result.append(threadsInShear);
		result.append(')');
		return result.toString();
	}

} //BoltTypeImpl
