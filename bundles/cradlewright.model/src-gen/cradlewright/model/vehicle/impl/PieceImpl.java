/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.PieceKind;
import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Piece</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.PieceImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PieceImpl#getTorsionalStiffness <em>Torsional Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PieceImpl#getBendingStiffness <em>Bending Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PieceImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.PieceImpl#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PieceImpl extends NamedImpl implements Piece {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final PieceKind KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected PieceKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getTorsionalStiffness() <em>Torsional Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTorsionalStiffness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured TORSIONAL_STIFFNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTorsionalStiffness() <em>Torsional Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTorsionalStiffness()
	 * @generated
	 * @ordered
	 */
	protected Measured torsionalStiffness = TORSIONAL_STIFFNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBendingStiffness() <em>Bending Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendingStiffness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured BENDING_STIFFNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBendingStiffness() <em>Bending Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendingStiffness()
	 * @generated
	 * @ordered
	 */
	protected Measured bendingStiffness = BENDING_STIFFNESS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getOutline() <em>Outline</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected EList<Position> outline;

	/**
	 * The cached value of the '{@link #getParts() <em>Parts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected EList<Part> parts;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.PIECE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PieceKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(PieceKind newKind) {
		PieceKind oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PIECE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getTorsionalStiffness() {
		return torsionalStiffness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTorsionalStiffness(Measured newTorsionalStiffness) {
		Measured oldTorsionalStiffness = torsionalStiffness;
		torsionalStiffness = newTorsionalStiffness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PIECE__TORSIONAL_STIFFNESS, oldTorsionalStiffness, torsionalStiffness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getBendingStiffness() {
		return bendingStiffness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBendingStiffness(Measured newBendingStiffness) {
		Measured oldBendingStiffness = bendingStiffness;
		bendingStiffness = newBendingStiffness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.PIECE__BENDING_STIFFNESS, oldBendingStiffness, bendingStiffness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Position> getOutline() {
		if (outline == null) {
			outline = new EDataTypeEList<Position>(Position.class, this, VehiclePackage.PIECE__OUTLINE);
		}
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Part> getParts() {
		if (parts == null) {
			parts = new EObjectContainmentEList<Part>(Part.class, this, VehiclePackage.PIECE__PARTS);
		}
		return parts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case VehiclePackage.PIECE__PARTS:
				return ((InternalEList<?>)getParts()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.PIECE__KIND:
				return getKind();
			case VehiclePackage.PIECE__TORSIONAL_STIFFNESS:
				return getTorsionalStiffness();
			case VehiclePackage.PIECE__BENDING_STIFFNESS:
				return getBendingStiffness();
			case VehiclePackage.PIECE__OUTLINE:
				return getOutline();
			case VehiclePackage.PIECE__PARTS:
				return getParts();
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
			case VehiclePackage.PIECE__KIND:
				setKind((PieceKind)newValue);
				return;
			case VehiclePackage.PIECE__TORSIONAL_STIFFNESS:
				setTorsionalStiffness((Measured)newValue);
				return;
			case VehiclePackage.PIECE__BENDING_STIFFNESS:
				setBendingStiffness((Measured)newValue);
				return;
			case VehiclePackage.PIECE__OUTLINE:
				getOutline().clear();
				getOutline().addAll((Collection<? extends Position>)newValue);
				return;
			case VehiclePackage.PIECE__PARTS:
				getParts().clear();
				getParts().addAll((Collection<? extends Part>)newValue);
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
			case VehiclePackage.PIECE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case VehiclePackage.PIECE__TORSIONAL_STIFFNESS:
				setTorsionalStiffness(TORSIONAL_STIFFNESS_EDEFAULT);
				return;
			case VehiclePackage.PIECE__BENDING_STIFFNESS:
				setBendingStiffness(BENDING_STIFFNESS_EDEFAULT);
				return;
			case VehiclePackage.PIECE__OUTLINE:
				getOutline().clear();
				return;
			case VehiclePackage.PIECE__PARTS:
				getParts().clear();
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
			case VehiclePackage.PIECE__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case VehiclePackage.PIECE__TORSIONAL_STIFFNESS:
				return TORSIONAL_STIFFNESS_EDEFAULT == null ? torsionalStiffness != null : !TORSIONAL_STIFFNESS_EDEFAULT.equals(torsionalStiffness);
			case VehiclePackage.PIECE__BENDING_STIFFNESS:
				return BENDING_STIFFNESS_EDEFAULT == null ? bendingStiffness != null : !BENDING_STIFFNESS_EDEFAULT.equals(bendingStiffness);
			case VehiclePackage.PIECE__OUTLINE:
				return outline != null && !outline.isEmpty();
			case VehiclePackage.PIECE__PARTS:
				return parts != null && !parts.isEmpty();
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", torsionalStiffness: ");
		result.append(torsionalStiffness);
		result.append(", bendingStiffness: ");
		result.append(bendingStiffness);
		result.append(", outline: ");
		result.append(outline);
		result.append(')');
		return result.toString();
	}

} //PieceImpl
