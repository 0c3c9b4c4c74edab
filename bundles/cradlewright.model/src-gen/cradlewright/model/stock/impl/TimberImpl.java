/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.StockPackage;
import cradlewright.model.stock.Timber;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Timber</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.TimberImpl#getStrengthClass <em>Strength Class</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TimberImpl#getFmk <em>Fmk</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TimberImpl#getFvk <em>Fvk</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TimberImpl#getDensity <em>Density</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TimberImpl extends StockItemImpl implements Timber {
	/**
	 * The default value of the '{@link #getStrengthClass() <em>Strength Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrengthClass()
	 * @generated
	 * @ordered
	 */
	protected static final String STRENGTH_CLASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStrengthClass() <em>Strength Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrengthClass()
	 * @generated
	 * @ordered
	 */
	protected String strengthClass = STRENGTH_CLASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFmk() <em>Fmk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFmk()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FMK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFmk() <em>Fmk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFmk()
	 * @generated
	 * @ordered
	 */
	protected Measured fmk = FMK_EDEFAULT;

	/**
	 * The default value of the '{@link #getFvk() <em>Fvk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFvk()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FVK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFvk() <em>Fvk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFvk()
	 * @generated
	 * @ordered
	 */
	protected Measured fvk = FVK_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensity() <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensity()
	 * @generated
	 * @ordered
	 */
	protected static final Measured DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDensity() <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensity()
	 * @generated
	 * @ordered
	 */
	protected Measured density = DENSITY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TimberImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.TIMBER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStrengthClass() {
		return strengthClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrengthClass(String newStrengthClass) {
		String oldStrengthClass = strengthClass;
		strengthClass = newStrengthClass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TIMBER__STRENGTH_CLASS, oldStrengthClass, strengthClass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFmk() {
		return fmk;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFmk(Measured newFmk) {
		Measured oldFmk = fmk;
		fmk = newFmk;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TIMBER__FMK, oldFmk, fmk));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFvk() {
		return fvk;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFvk(Measured newFvk) {
		Measured oldFvk = fvk;
		fvk = newFvk;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TIMBER__FVK, oldFvk, fvk));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getDensity() {
		return density;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensity(Measured newDensity) {
		Measured oldDensity = density;
		density = newDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TIMBER__DENSITY, oldDensity, density));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.TIMBER__STRENGTH_CLASS:
				return getStrengthClass();
			case StockPackage.TIMBER__FMK:
				return getFmk();
			case StockPackage.TIMBER__FVK:
				return getFvk();
			case StockPackage.TIMBER__DENSITY:
				return getDensity();
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
			case StockPackage.TIMBER__STRENGTH_CLASS:
				setStrengthClass((String)newValue);
				return;
			case StockPackage.TIMBER__FMK:
				setFmk((Measured)newValue);
				return;
			case StockPackage.TIMBER__FVK:
				setFvk((Measured)newValue);
				return;
			case StockPackage.TIMBER__DENSITY:
				setDensity((Measured)newValue);
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
			case StockPackage.TIMBER__STRENGTH_CLASS:
				setStrengthClass(STRENGTH_CLASS_EDEFAULT);
				return;
			case StockPackage.TIMBER__FMK:
				setFmk(FMK_EDEFAULT);
				return;
			case StockPackage.TIMBER__FVK:
				setFvk(FVK_EDEFAULT);
				return;
			case StockPackage.TIMBER__DENSITY:
				setDensity(DENSITY_EDEFAULT);
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
			case StockPackage.TIMBER__STRENGTH_CLASS:
				return STRENGTH_CLASS_EDEFAULT == null ? strengthClass != null : !STRENGTH_CLASS_EDEFAULT.equals(strengthClass);
			case StockPackage.TIMBER__FMK:
				return FMK_EDEFAULT == null ? fmk != null : !FMK_EDEFAULT.equals(fmk);
			case StockPackage.TIMBER__FVK:
				return FVK_EDEFAULT == null ? fvk != null : !FVK_EDEFAULT.equals(fvk);
			case StockPackage.TIMBER__DENSITY:
				return DENSITY_EDEFAULT == null ? density != null : !DENSITY_EDEFAULT.equals(density);
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
		result.append(" (strengthClass: ");
		result.append(strengthClass);
		result.append(", fmk: ");
		result.append(fmk);
		result.append(", fvk: ");
		result.append(fvk);
		result.append(", density: ");
		result.append(density);
		result.append(')');
		return result.toString();
	}

} //TimberImpl
