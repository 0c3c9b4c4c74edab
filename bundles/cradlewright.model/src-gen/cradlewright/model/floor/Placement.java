/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.Named;

import cradlewright.model.vehicle.Visit;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where a visit stands.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.Placement#getVisit <em>Visit</em>}</li>
 *   <li>{@link cradlewright.model.floor.Placement#getPlace <em>Place</em>}</li>
 *   <li>{@link cradlewright.model.floor.Placement#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.floor.Placement#getHeading <em>Heading</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.floor.FloorPackage#getPlacement()
 * @model
 * @generated
 */
public interface Placement extends Named {
	/**
	 * Returns the value of the '<em><b>Visit</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Visit</em>' reference.
	 * @see #setVisit(Visit)
	 * @see cradlewright.model.floor.FloorPackage#getPlacement_Visit()
	 * @model
	 * @generated
	 */
	Visit getVisit();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Placement#getVisit <em>Visit</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Visit</em>' reference.
	 * @see #getVisit()
	 * @generated
	 */
	void setVisit(Visit value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' reference.
	 * @see #setPlace(Place)
	 * @see cradlewright.model.floor.FloorPackage#getPlacement_Place()
	 * @model
	 * @generated
	 */
	Place getPlace();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Placement#getPlace <em>Place</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' reference.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.floor.FloorPackage#getPlacement_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Placement#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Heading</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heading</em>' attribute.
	 * @see #setHeading(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getPlacement_Heading()
	 * @model dataType="cradlewright.model.base.Angle"
	 * @generated
	 */
	Measured getHeading();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Placement#getHeading <em>Heading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heading</em>' attribute.
	 * @see #getHeading()
	 * @generated
	 */
	void setHeading(Measured value);

} // Placement
