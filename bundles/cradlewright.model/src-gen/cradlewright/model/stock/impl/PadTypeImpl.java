/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.PadMaterial;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.StockPackage;

import cradlewright.quantity.Measured;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pad Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getLength <em>Length</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getModulus <em>Modulus</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getStiffness <em>Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getStressLimit <em>Stress Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getStrainLimit <em>Strain Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.PadTypeImpl#getTemperatureLimit <em>Temperature Limit</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PadTypeImpl extends StockItemImpl implements PadType {
	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final PadMaterial MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected PadMaterial material = MATERIAL_EDEFAULT;

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
	 * The default value of the '{@link #getModulus() <em>Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModulus()
	 * @generated
	 * @ordered
	 */
	protected static final Measured MODULUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getModulus() <em>Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModulus()
	 * @generated
	 * @ordered
	 */
	protected Measured modulus = MODULUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STIFFNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected Measured stiffness = STIFFNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getStressLimit() <em>Stress Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStressLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STRESS_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStressLimit() <em>Stress Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStressLimit()
	 * @generated
	 * @ordered
	 */
	protected Measured stressLimit = STRESS_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getStrainLimit() <em>Strain Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrainLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Measured STRAIN_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStrainLimit() <em>Strain Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrainLimit()
	 * @generated
	 * @ordered
	 */
	protected Measured strainLimit = STRAIN_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperatureLimit() <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Measured TEMPERATURE_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemperatureLimit() <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureLimit()
	 * @generated
	 * @ordered
	 */
	protected Measured temperatureLimit = TEMPERATURE_LIMIT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PadTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.PAD_TYPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PadMaterial getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(PadMaterial newMaterial) {
		PadMaterial oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__MATERIAL, oldMaterial, material));
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
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__LENGTH, oldLength, length));
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
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__WIDTH, oldWidth, width));
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
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getModulus() {
		return modulus;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setModulus(Measured newModulus) {
		Measured oldModulus = modulus;
		modulus = newModulus;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__MODULUS, oldModulus, modulus));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStiffness() {
		return stiffness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStiffness(Measured newStiffness) {
		Measured oldStiffness = stiffness;
		stiffness = newStiffness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__STIFFNESS, oldStiffness, stiffness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStressLimit() {
		return stressLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStressLimit(Measured newStressLimit) {
		Measured oldStressLimit = stressLimit;
		stressLimit = newStressLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__STRESS_LIMIT, oldStressLimit, stressLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getStrainLimit() {
		return strainLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrainLimit(Measured newStrainLimit) {
		Measured oldStrainLimit = strainLimit;
		strainLimit = newStrainLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__STRAIN_LIMIT, oldStrainLimit, strainLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getTemperatureLimit() {
		return temperatureLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperatureLimit(Measured newTemperatureLimit) {
		Measured oldTemperatureLimit = temperatureLimit;
		temperatureLimit = newTemperatureLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.PAD_TYPE__TEMPERATURE_LIMIT, oldTemperatureLimit, temperatureLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.PAD_TYPE__MATERIAL:
				return getMaterial();
			case StockPackage.PAD_TYPE__LENGTH:
				return getLength();
			case StockPackage.PAD_TYPE__WIDTH:
				return getWidth();
			case StockPackage.PAD_TYPE__THICKNESS:
				return getThickness();
			case StockPackage.PAD_TYPE__MODULUS:
				return getModulus();
			case StockPackage.PAD_TYPE__STIFFNESS:
				return getStiffness();
			case StockPackage.PAD_TYPE__STRESS_LIMIT:
				return getStressLimit();
			case StockPackage.PAD_TYPE__STRAIN_LIMIT:
				return getStrainLimit();
			case StockPackage.PAD_TYPE__TEMPERATURE_LIMIT:
				return getTemperatureLimit();
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
			case StockPackage.PAD_TYPE__MATERIAL:
				setMaterial((PadMaterial)newValue);
				return;
			case StockPackage.PAD_TYPE__LENGTH:
				setLength((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__WIDTH:
				setWidth((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__THICKNESS:
				setThickness((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__MODULUS:
				setModulus((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__STIFFNESS:
				setStiffness((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__STRESS_LIMIT:
				setStressLimit((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__STRAIN_LIMIT:
				setStrainLimit((Measured)newValue);
				return;
			case StockPackage.PAD_TYPE__TEMPERATURE_LIMIT:
				setTemperatureLimit((Measured)newValue);
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
			case StockPackage.PAD_TYPE__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__MODULUS:
				setModulus(MODULUS_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__STIFFNESS:
				setStiffness(STIFFNESS_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__STRESS_LIMIT:
				setStressLimit(STRESS_LIMIT_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__STRAIN_LIMIT:
				setStrainLimit(STRAIN_LIMIT_EDEFAULT);
				return;
			case StockPackage.PAD_TYPE__TEMPERATURE_LIMIT:
				setTemperatureLimit(TEMPERATURE_LIMIT_EDEFAULT);
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
			case StockPackage.PAD_TYPE__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case StockPackage.PAD_TYPE__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case StockPackage.PAD_TYPE__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case StockPackage.PAD_TYPE__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case StockPackage.PAD_TYPE__MODULUS:
				return MODULUS_EDEFAULT == null ? modulus != null : !MODULUS_EDEFAULT.equals(modulus);
			case StockPackage.PAD_TYPE__STIFFNESS:
				return STIFFNESS_EDEFAULT == null ? stiffness != null : !STIFFNESS_EDEFAULT.equals(stiffness);
			case StockPackage.PAD_TYPE__STRESS_LIMIT:
				return STRESS_LIMIT_EDEFAULT == null ? stressLimit != null : !STRESS_LIMIT_EDEFAULT.equals(stressLimit);
			case StockPackage.PAD_TYPE__STRAIN_LIMIT:
				return STRAIN_LIMIT_EDEFAULT == null ? strainLimit != null : !STRAIN_LIMIT_EDEFAULT.equals(strainLimit);
			case StockPackage.PAD_TYPE__TEMPERATURE_LIMIT:
				return TEMPERATURE_LIMIT_EDEFAULT == null ? temperatureLimit != null : !TEMPERATURE_LIMIT_EDEFAULT.equals(temperatureLimit);
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
		result.append(", length: ");
		result.append(length);
		result.append(", width: ");
		result.append(width);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", modulus: ");
		result.append(modulus);
		result.append(", stiffness: ");
		result.append(stiffness);
		result.append(", stressLimit: ");
		result.append(stressLimit);
		result.append(", strainLimit: ");
		result.append(strainLimit);
		result.append(", temperatureLimit: ");
		result.append(temperatureLimit);
		result.append(')');
		return result.toString();
	}

} //PadTypeImpl
