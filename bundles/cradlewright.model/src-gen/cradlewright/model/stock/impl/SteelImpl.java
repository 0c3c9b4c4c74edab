/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.Steel;
import cradlewright.model.stock.StockPackage;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Steel</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.SteelImpl#getGrade <em>Grade</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.SteelImpl#getFy <em>Fy</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.SteelImpl#getFu <em>Fu</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SteelImpl extends StockItemImpl implements Steel {
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
	 * The default value of the '{@link #getFy() <em>Fy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFy()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFy() <em>Fy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFy()
	 * @generated
	 * @ordered
	 */
	protected Measured fy = FY_EDEFAULT;

	/**
	 * The default value of the '{@link #getFu() <em>Fu</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFu()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FU_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFu() <em>Fu</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFu()
	 * @generated
	 * @ordered
	 */
	protected Measured fu = FU_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SteelImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.STEEL;
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
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.STEEL__GRADE, oldGrade, grade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFy() {
		return fy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFy(Measured newFy) {
		Measured oldFy = fy;
		fy = newFy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.STEEL__FY, oldFy, fy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFu() {
		return fu;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFu(Measured newFu) {
		Measured oldFu = fu;
		fu = newFu;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.STEEL__FU, oldFu, fu));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.STEEL__GRADE:
				return getGrade();
			case StockPackage.STEEL__FY:
				return getFy();
			case StockPackage.STEEL__FU:
				return getFu();
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
			case StockPackage.STEEL__GRADE:
				setGrade((String)newValue);
				return;
			case StockPackage.STEEL__FY:
				setFy((Measured)newValue);
				return;
			case StockPackage.STEEL__FU:
				setFu((Measured)newValue);
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
			case StockPackage.STEEL__GRADE:
				setGrade(GRADE_EDEFAULT);
				return;
			case StockPackage.STEEL__FY:
				setFy(FY_EDEFAULT);
				return;
			case StockPackage.STEEL__FU:
				setFu(FU_EDEFAULT);
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
			case StockPackage.STEEL__GRADE:
				return GRADE_EDEFAULT == null ? grade != null : !GRADE_EDEFAULT.equals(grade);
			case StockPackage.STEEL__FY:
				return FY_EDEFAULT == null ? fy != null : !FY_EDEFAULT.equals(fy);
			case StockPackage.STEEL__FU:
				return FU_EDEFAULT == null ? fu != null : !FU_EDEFAULT.equals(fu);
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
		result.append(" (grade: ");
		result.append(grade);
		result.append(", fy: ");
		result.append(fy);
		result.append(", fu: ");
		result.append(fu);
		result.append(')');
		return result.toString();
	}

} //SteelImpl
