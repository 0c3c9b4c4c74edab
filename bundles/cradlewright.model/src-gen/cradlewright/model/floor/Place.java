/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where something may stand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.Place#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getPosition <em>Position</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getSlab <em>Slab</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getOutdoors <em>Outdoors</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getFall <em>Fall</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getTemperature <em>Temperature</em>}</li>
 *   <li>{@link cradlewright.model.floor.Place#getSteepestStep <em>Steepest Step</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.floor.FloorPackage#getPlace()
 * @model
 * @generated
 */
public interface Place extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(PlaceKind)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Kind()
	 * @model dataType="cradlewright.model.floor.PlaceKindObject"
	 * @generated
	 */
	PlaceKind getKind();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PlaceKind value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Position)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Position()
	 * @model dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	Position getPosition();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Position value);

	/**
	 * Returns the value of the '<em><b>Slab</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slab</em>' reference.
	 * @see #setSlab(Slab)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Slab()
	 * @model
	 * @generated
	 */
	Slab getSlab();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getSlab <em>Slab</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slab</em>' reference.
	 * @see #getSlab()
	 * @generated
	 */
	void setSlab(Slab value);

	/**
	 * Returns the value of the '<em><b>Outdoors</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outdoors</em>' attribute.
	 * @see #setOutdoors(Boolean)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Outdoors()
	 * @model
	 * @generated
	 */
	Boolean getOutdoors();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getOutdoors <em>Outdoors</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outdoors</em>' attribute.
	 * @see #getOutdoors()
	 * @generated
	 */
	void setOutdoors(Boolean value);

	/**
	 * Returns the value of the '<em><b>Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fall of the surface, height over length.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fall</em>' attribute.
	 * @see #setFall(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Fall()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getFall();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getFall <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fall</em>' attribute.
	 * @see #getFall()
	 * @generated
	 */
	void setFall(Measured value);

	/**
	 * Returns the value of the '<em><b>Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest that a booth or the sun makes there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Temperature</em>' attribute.
	 * @see #setTemperature(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_Temperature()
	 * @model dataType="cradlewright.model.base.Temperature"
	 * @generated
	 */
	Measured getTemperature();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getTemperature <em>Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature</em>' attribute.
	 * @see #getTemperature()
	 * @generated
	 */
	void setTemperature(Measured value);

	/**
	 * Returns the value of the '<em><b>Steepest Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest step, joint or gap on the place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Steepest Step</em>' attribute.
	 * @see #setSteepestStep(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getPlace_SteepestStep()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getSteepestStep();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Place#getSteepestStep <em>Steepest Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Steepest Step</em>' attribute.
	 * @see #getSteepestStep()
	 * @generated
	 */
	void setSteepestStep(Measured value);

} // Place
