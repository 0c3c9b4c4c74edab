/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.StockPackage;
import cradlewright.model.stock.TeeSection;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tee Section</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.TeeSectionImpl#getFlangeWidth <em>Flange Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TeeSectionImpl#getFlangeThickness <em>Flange Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TeeSectionImpl#getWebHeight <em>Web Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.TeeSectionImpl#getWebThickness <em>Web Thickness</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TeeSectionImpl extends SectionImpl implements TeeSection {
	/**
	 * The default value of the '{@link #getFlangeWidth() <em>Flange Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlangeWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FLANGE_WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlangeWidth() <em>Flange Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlangeWidth()
	 * @generated
	 * @ordered
	 */
	protected Measured flangeWidth = FLANGE_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlangeThickness() <em>Flange Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlangeThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured FLANGE_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlangeThickness() <em>Flange Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlangeThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured flangeThickness = FLANGE_THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWebHeight() <em>Web Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWebHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WEB_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWebHeight() <em>Web Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWebHeight()
	 * @generated
	 * @ordered
	 */
	protected Measured webHeight = WEB_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWebThickness() <em>Web Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWebThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WEB_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWebThickness() <em>Web Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWebThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured webThickness = WEB_THICKNESS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TeeSectionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.TEE_SECTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFlangeWidth() {
		return flangeWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlangeWidth(Measured newFlangeWidth) {
		Measured oldFlangeWidth = flangeWidth;
		flangeWidth = newFlangeWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TEE_SECTION__FLANGE_WIDTH, oldFlangeWidth, flangeWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getFlangeThickness() {
		return flangeThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlangeThickness(Measured newFlangeThickness) {
		Measured oldFlangeThickness = flangeThickness;
		flangeThickness = newFlangeThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TEE_SECTION__FLANGE_THICKNESS, oldFlangeThickness, flangeThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWebHeight() {
		return webHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWebHeight(Measured newWebHeight) {
		Measured oldWebHeight = webHeight;
		webHeight = newWebHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TEE_SECTION__WEB_HEIGHT, oldWebHeight, webHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWebThickness() {
		return webThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWebThickness(Measured newWebThickness) {
		Measured oldWebThickness = webThickness;
		webThickness = newWebThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.TEE_SECTION__WEB_THICKNESS, oldWebThickness, webThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.TEE_SECTION__FLANGE_WIDTH:
				return getFlangeWidth();
			case StockPackage.TEE_SECTION__FLANGE_THICKNESS:
				return getFlangeThickness();
			case StockPackage.TEE_SECTION__WEB_HEIGHT:
				return getWebHeight();
			case StockPackage.TEE_SECTION__WEB_THICKNESS:
				return getWebThickness();
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
			case StockPackage.TEE_SECTION__FLANGE_WIDTH:
				setFlangeWidth((Measured)newValue);
				return;
			case StockPackage.TEE_SECTION__FLANGE_THICKNESS:
				setFlangeThickness((Measured)newValue);
				return;
			case StockPackage.TEE_SECTION__WEB_HEIGHT:
				setWebHeight((Measured)newValue);
				return;
			case StockPackage.TEE_SECTION__WEB_THICKNESS:
				setWebThickness((Measured)newValue);
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
			case StockPackage.TEE_SECTION__FLANGE_WIDTH:
				setFlangeWidth(FLANGE_WIDTH_EDEFAULT);
				return;
			case StockPackage.TEE_SECTION__FLANGE_THICKNESS:
				setFlangeThickness(FLANGE_THICKNESS_EDEFAULT);
				return;
			case StockPackage.TEE_SECTION__WEB_HEIGHT:
				setWebHeight(WEB_HEIGHT_EDEFAULT);
				return;
			case StockPackage.TEE_SECTION__WEB_THICKNESS:
				setWebThickness(WEB_THICKNESS_EDEFAULT);
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
			case StockPackage.TEE_SECTION__FLANGE_WIDTH:
				return FLANGE_WIDTH_EDEFAULT == null ? flangeWidth != null : !FLANGE_WIDTH_EDEFAULT.equals(flangeWidth);
			case StockPackage.TEE_SECTION__FLANGE_THICKNESS:
				return FLANGE_THICKNESS_EDEFAULT == null ? flangeThickness != null : !FLANGE_THICKNESS_EDEFAULT.equals(flangeThickness);
			case StockPackage.TEE_SECTION__WEB_HEIGHT:
				return WEB_HEIGHT_EDEFAULT == null ? webHeight != null : !WEB_HEIGHT_EDEFAULT.equals(webHeight);
			case StockPackage.TEE_SECTION__WEB_THICKNESS:
				return WEB_THICKNESS_EDEFAULT == null ? webThickness != null : !WEB_THICKNESS_EDEFAULT.equals(webThickness);
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
		result.append(" (flangeWidth: ");
		result.append(flangeWidth);
		result.append(", flangeThickness: ");
		result.append(flangeThickness);
		result.append(", webHeight: ");
		result.append(webHeight);
		result.append(", webThickness: ");
		result.append(webThickness);
		result.append(')');
		return result.toString();
	}

} //TeeSectionImpl
