/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.impl.IdentifiedImpl;

import cradlewright.model.vehicle.ApertureReading;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;

import java.time.LocalDateTime;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Aperture Reading</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.ApertureReadingImpl#getAperture <em>Aperture</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ApertureReadingImpl#getAt <em>At</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ApertureReadingImpl#getBy <em>By</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ApertureReadingImpl#getDiagonals <em>Diagonals</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.ApertureReadingImpl#getGaps <em>Gaps</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ApertureReadingImpl extends IdentifiedImpl implements ApertureReading {
	/**
	 * The default value of the '{@link #getAperture() <em>Aperture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAperture()
	 * @generated
	 * @ordered
	 */
	protected static final String APERTURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAperture() <em>Aperture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAperture()
	 * @generated
	 * @ordered
	 */
	protected String aperture = APERTURE_EDEFAULT;

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
	 * The cached value of the '{@link #getDiagonals() <em>Diagonals</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonals()
	 * @generated
	 * @ordered
	 */
	protected EList<Measured> diagonals;

	/**
	 * The cached value of the '{@link #getGaps() <em>Gaps</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGaps()
	 * @generated
	 * @ordered
	 */
	protected EList<Measured> gaps;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ApertureReadingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.APERTURE_READING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAperture() {
		return aperture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAperture(String newAperture) {
		String oldAperture = aperture;
		aperture = newAperture;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.APERTURE_READING__APERTURE, oldAperture, aperture));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.APERTURE_READING__AT, oldAt, at));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.APERTURE_READING__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Measured> getDiagonals() {
		if (diagonals == null) {
			diagonals = new EDataTypeEList<Measured>(Measured.class, this, VehiclePackage.APERTURE_READING__DIAGONALS);
		}
		return diagonals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Measured> getGaps() {
		if (gaps == null) {
			gaps = new EDataTypeEList<Measured>(Measured.class, this, VehiclePackage.APERTURE_READING__GAPS);
		}
		return gaps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.APERTURE_READING__APERTURE:
				return getAperture();
			case VehiclePackage.APERTURE_READING__AT:
				return getAt();
			case VehiclePackage.APERTURE_READING__BY:
				return getBy();
			case VehiclePackage.APERTURE_READING__DIAGONALS:
				return getDiagonals();
			case VehiclePackage.APERTURE_READING__GAPS:
				return getGaps();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case VehiclePackage.APERTURE_READING__APERTURE:
				setAperture((String)newValue);
				return;
			case VehiclePackage.APERTURE_READING__AT:
				setAt((LocalDateTime)newValue);
				return;
			case VehiclePackage.APERTURE_READING__BY:
				setBy((String)newValue);
				return;
			case VehiclePackage.APERTURE_READING__DIAGONALS:
				getDiagonals().clear();
				getDiagonals().addAll((Collection<? extends Measured>)newValue);
				return;
			case VehiclePackage.APERTURE_READING__GAPS:
				getGaps().clear();
				getGaps().addAll((Collection<? extends Measured>)newValue);
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
			case VehiclePackage.APERTURE_READING__APERTURE:
				setAperture(APERTURE_EDEFAULT);
				return;
			case VehiclePackage.APERTURE_READING__AT:
				setAt(AT_EDEFAULT);
				return;
			case VehiclePackage.APERTURE_READING__BY:
				setBy(BY_EDEFAULT);
				return;
			case VehiclePackage.APERTURE_READING__DIAGONALS:
				getDiagonals().clear();
				return;
			case VehiclePackage.APERTURE_READING__GAPS:
				getGaps().clear();
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
			case VehiclePackage.APERTURE_READING__APERTURE:
				return APERTURE_EDEFAULT == null ? aperture != null : !APERTURE_EDEFAULT.equals(aperture);
			case VehiclePackage.APERTURE_READING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case VehiclePackage.APERTURE_READING__BY:
				return BY_EDEFAULT == null ? by != null : !BY_EDEFAULT.equals(by);
			case VehiclePackage.APERTURE_READING__DIAGONALS:
				return diagonals != null && !diagonals.isEmpty();
			case VehiclePackage.APERTURE_READING__GAPS:
				return gaps != null && !gaps.isEmpty();
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
		result.append(" (aperture: ");
		result.append(aperture);
		result.append(", at: ");
		result.append(at);
		result.append(", by: ");
		result.append(by);
		result.append(", diagonals: ");
		result.append(diagonals);
		result.append(", gaps: ");
		result.append(gaps);
		result.append(')');
		return result.toString();
	}

} //ApertureReadingImpl
