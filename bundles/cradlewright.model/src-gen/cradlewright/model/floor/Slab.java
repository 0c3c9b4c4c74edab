/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Slab</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.Slab#getOutline <em>Outline</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getFck <em>Fck</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getFabric <em>Fabric</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getSubgrade <em>Subgrade</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getDailyWheelLoad <em>Daily Wheel Load</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getDailyWheelContact <em>Daily Wheel Contact</em>}</li>
 *   <li>{@link cradlewright.model.floor.Slab#getSuspended <em>Suspended</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.floor.FloorPackage#getSlab()
 * @model
 * @generated
 */
public interface Slab extends Named {
	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute list.
	 * The list contents are of type {@link cradlewright.quantity.Position}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outline</em>' attribute list.
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Outline()
	 * @model unique="false" dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	EList<Position> getOutline();

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Fck</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Characteristic cylinder strength of the concrete.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fck</em>' attribute.
	 * @see #setFck(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Fck()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFck();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getFck <em>Fck</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fck</em>' attribute.
	 * @see #getFck()
	 * @generated
	 */
	void setFck(Measured value);

	/**
	 * Returns the value of the '<em><b>Fabric</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mesh in the slab, as on the drawing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fabric</em>' attribute.
	 * @see #setFabric(String)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Fabric()
	 * @model
	 * @generated
	 */
	String getFabric();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getFabric <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fabric</em>' attribute.
	 * @see #getFabric()
	 * @generated
	 */
	void setFabric(String value);

	/**
	 * Returns the value of the '<em><b>Subgrade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Subgrade</em>' attribute.
	 * @see #setSubgrade(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Subgrade()
	 * @model dataType="cradlewright.model.base.SubgradeModulus"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getSubgrade();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getSubgrade <em>Subgrade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subgrade</em>' attribute.
	 * @see #getSubgrade()
	 * @generated
	 */
	void setSubgrade(Measured value);

	/**
	 * Returns the value of the '<em><b>Daily Wheel Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heaviest wheel that stands there daily without harm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Daily Wheel Load</em>' attribute.
	 * @see #setDailyWheelLoad(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_DailyWheelLoad()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getDailyWheelLoad();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getDailyWheelLoad <em>Daily Wheel Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Daily Wheel Load</em>' attribute.
	 * @see #getDailyWheelLoad()
	 * @generated
	 */
	void setDailyWheelLoad(Measured value);

	/**
	 * Returns the value of the '<em><b>Daily Wheel Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Daily Wheel Contact</em>' attribute.
	 * @see #setDailyWheelContact(Measured)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_DailyWheelContact()
	 * @model dataType="cradlewright.model.base.Area"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getDailyWheelContact();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getDailyWheelContact <em>Daily Wheel Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Daily Wheel Contact</em>' attribute.
	 * @see #getDailyWheelContact()
	 * @generated
	 */
	void setDailyWheelContact(Measured value);

	/**
	 * Returns the value of the '<em><b>Suspended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether there is a cellar or void below; not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Suspended</em>' attribute.
	 * @see #setSuspended(Boolean)
	 * @see cradlewright.model.floor.FloorPackage#getSlab_Suspended()
	 * @model
	 * @generated
	 */
	Boolean getSuspended();

	/**
	 * Sets the value of the '{@link cradlewright.model.floor.Slab#getSuspended <em>Suspended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Suspended</em>' attribute.
	 * @see #getSuspended()
	 * @generated
	 */
	void setSuspended(Boolean value);

} // Slab
