/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.Sheet;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.StockPackage;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.SheetImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.SheetImpl#getSteel <em>Steel</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SheetImpl extends StockItemImpl implements Sheet {
	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured thickness = THICKNESS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSteel() <em>Steel</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSteel()
	 * @generated
	 * @ordered
	 */
	protected Steel steel;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Measured newThickness) {
		Measured oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHEET__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Steel getSteel() {
		if (steel != null && steel.eIsProxy()) {
			InternalEObject oldSteel = (InternalEObject)steel;
			steel = (Steel)eResolveProxy(oldSteel);
			if (steel != oldSteel) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, StockPackage.SHEET__STEEL, oldSteel, steel));
			}
		}
		return steel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Steel basicGetSteel() {
		return steel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSteel(Steel newSteel) {
		Steel oldSteel = steel;
		steel = newSteel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHEET__STEEL, oldSteel, steel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.SHEET__THICKNESS:
				return getThickness();
			case StockPackage.SHEET__STEEL:
				if (resolve) return getSteel();
				return basicGetSteel();
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
			case StockPackage.SHEET__THICKNESS:
				setThickness((Measured)newValue);
				return;
			case StockPackage.SHEET__STEEL:
				setSteel((Steel)newValue);
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
			case StockPackage.SHEET__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case StockPackage.SHEET__STEEL:
				setSteel((Steel)null);
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
			case StockPackage.SHEET__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case StockPackage.SHEET__STEEL:
				return steel != null;
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
		result.append(" (thickness: ");
		result.append(thickness);
		result.append(')');
		return result.toString();
	}

} //SheetImpl
