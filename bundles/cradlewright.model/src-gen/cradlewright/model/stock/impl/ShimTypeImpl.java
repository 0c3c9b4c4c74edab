/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.StockPackage;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Shim Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.ShimTypeImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.ShimTypeImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.ShimTypeImpl#getLength <em>Length</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.ShimTypeImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.ShimTypeImpl#getOnHand <em>On Hand</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ShimTypeImpl extends StockItemImpl implements ShimType {
	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final String MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected String material = MATERIAL_EDEFAULT;

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
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Measured length = LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected Measured width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getOnHand() <em>On Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnHand()
	 * @generated
	 * @ordered
	 */
	protected static final Integer ON_HAND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOnHand() <em>On Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnHand()
	 * @generated
	 * @ordered
	 */
	protected Integer onHand = ON_HAND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ShimTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.SHIM_TYPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(String newMaterial) {
		String oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHIM_TYPE__MATERIAL, oldMaterial, material));
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
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHIM_TYPE__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Measured newLength) {
		Measured oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHIM_TYPE__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Measured newWidth) {
		Measured oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHIM_TYPE__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getOnHand() {
		return onHand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnHand(Integer newOnHand) {
		Integer oldOnHand = onHand;
		onHand = newOnHand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.SHIM_TYPE__ON_HAND, oldOnHand, onHand));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.SHIM_TYPE__MATERIAL:
				return getMaterial();
			case StockPackage.SHIM_TYPE__THICKNESS:
				return getThickness();
			case StockPackage.SHIM_TYPE__LENGTH:
				return getLength();
			case StockPackage.SHIM_TYPE__WIDTH:
				return getWidth();
			case StockPackage.SHIM_TYPE__ON_HAND:
				return getOnHand();
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
			case StockPackage.SHIM_TYPE__MATERIAL:
				setMaterial((String)newValue);
				return;
			case StockPackage.SHIM_TYPE__THICKNESS:
				setThickness((Measured)newValue);
				return;
			case StockPackage.SHIM_TYPE__LENGTH:
				setLength((Measured)newValue);
				return;
			case StockPackage.SHIM_TYPE__WIDTH:
				setWidth((Measured)newValue);
				return;
			case StockPackage.SHIM_TYPE__ON_HAND:
				setOnHand((Integer)newValue);
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
			case StockPackage.SHIM_TYPE__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case StockPackage.SHIM_TYPE__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case StockPackage.SHIM_TYPE__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case StockPackage.SHIM_TYPE__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case StockPackage.SHIM_TYPE__ON_HAND:
				setOnHand(ON_HAND_EDEFAULT);
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
			case StockPackage.SHIM_TYPE__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case StockPackage.SHIM_TYPE__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case StockPackage.SHIM_TYPE__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case StockPackage.SHIM_TYPE__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case StockPackage.SHIM_TYPE__ON_HAND:
				return ON_HAND_EDEFAULT == null ? onHand != null : !ON_HAND_EDEFAULT.equals(onHand);
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
		result.append(" (material: ");
		result.append(material);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", length: ");
		result.append(length);
		result.append(", width: ");
		result.append(width);
		result.append(", onHand: ");
		result.append(onHand);
		result.append(')');
		return result.toString();
	}

} //ShimTypeImpl
