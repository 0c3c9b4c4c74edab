/**
 */
package cradlewright.model.floor.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.floor.FloorPackage;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.Placement;

import cradlewright.model.vehicle.Visit;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.impl.PlacementImpl#getVisit <em>Visit</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlacementImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlacementImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.PlacementImpl#getHeading <em>Heading</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlacementImpl extends NamedImpl implements Placement {
	/**
	 * The cached value of the '{@link #getVisit() <em>Visit</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisit()
	 * @generated
	 * @ordered
	 */
	protected Visit visit;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected Place place;

	/**
	 * The default value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected static final Position POSITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Position position = POSITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeading() <em>Heading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeading()
	 * @generated
	 * @ordered
	 */
	protected static final Measured HEADING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeading() <em>Heading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeading()
	 * @generated
	 * @ordered
	 */
	protected Measured heading = HEADING_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlacementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FloorPackage.Literals.PLACEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Visit getVisit() {
		if (visit != null && visit.eIsProxy()) {
			InternalEObject oldVisit = (InternalEObject)visit;
			visit = (Visit)eResolveProxy(oldVisit);
			if (visit != oldVisit) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, FloorPackage.PLACEMENT__VISIT, oldVisit, visit));
			}
		}
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Visit basicGetVisit() {
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVisit(Visit newVisit) {
		Visit oldVisit = visit;
		visit = newVisit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACEMENT__VISIT, oldVisit, visit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getPlace() {
		if (place != null && place.eIsProxy()) {
			InternalEObject oldPlace = (InternalEObject)place;
			place = (Place)eResolveProxy(oldPlace);
			if (place != oldPlace) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, FloorPackage.PLACEMENT__PLACE, oldPlace, place));
			}
		}
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Place basicGetPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(Place newPlace) {
		Place oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACEMENT__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Position getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Position newPosition) {
		Position oldPosition = position;
		position = newPosition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACEMENT__POSITION, oldPosition, position));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getHeading() {
		return heading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeading(Measured newHeading) {
		Measured oldHeading = heading;
		heading = newHeading;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.PLACEMENT__HEADING, oldHeading, heading));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FloorPackage.PLACEMENT__VISIT:
				if (resolve) return getVisit();
				return basicGetVisit();
			case FloorPackage.PLACEMENT__PLACE:
				if (resolve) return getPlace();
				return basicGetPlace();
			case FloorPackage.PLACEMENT__POSITION:
				return getPosition();
			case FloorPackage.PLACEMENT__HEADING:
				return getHeading();
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
			case FloorPackage.PLACEMENT__VISIT:
				setVisit((Visit)newValue);
				return;
			case FloorPackage.PLACEMENT__PLACE:
				setPlace((Place)newValue);
				return;
			case FloorPackage.PLACEMENT__POSITION:
				setPosition((Position)newValue);
				return;
			case FloorPackage.PLACEMENT__HEADING:
				setHeading((Measured)newValue);
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
			case FloorPackage.PLACEMENT__VISIT:
				setVisit((Visit)null);
				return;
			case FloorPackage.PLACEMENT__PLACE:
				setPlace((Place)null);
				return;
			case FloorPackage.PLACEMENT__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case FloorPackage.PLACEMENT__HEADING:
				setHeading(HEADING_EDEFAULT);
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
			case FloorPackage.PLACEMENT__VISIT:
				return visit != null;
			case FloorPackage.PLACEMENT__PLACE:
				return place != null;
			case FloorPackage.PLACEMENT__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case FloorPackage.PLACEMENT__HEADING:
				return HEADING_EDEFAULT == null ? heading != null : !HEADING_EDEFAULT.equals(heading);
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
		result.append(" (position: ");
		result.append(position);
		result.append(", heading: ");
		result.append(heading);
		result.append(')');
		return result.toString();
	}

} //PlacementImpl
