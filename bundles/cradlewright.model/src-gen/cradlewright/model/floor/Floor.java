/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Named;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Floor</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Root of the floor file; positions are in the axes of the shop.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.Floor#getSlabs <em>Slabs</em>}</li>
 *   <li>{@link cradlewright.model.floor.Floor#getPlaces <em>Places</em>}</li>
 *   <li>{@link cradlewright.model.floor.Floor#getDoors <em>Doors</em>}</li>
 *   <li>{@link cradlewright.model.floor.Floor#getColumns <em>Columns</em>}</li>
 *   <li>{@link cradlewright.model.floor.Floor#getPlacements <em>Placements</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.floor.FloorPackage#getFloor()
 * @model
 * @generated
 */
public interface Floor extends FileRoot, Named {
	/**
	 * Returns the value of the '<em><b>Slabs</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.floor.Slab}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slabs</em>' containment reference list.
	 * @see cradlewright.model.floor.FloorPackage#getFloor_Slabs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Slab> getSlabs();

	/**
	 * Returns the value of the '<em><b>Places</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.floor.Place}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Places</em>' containment reference list.
	 * @see cradlewright.model.floor.FloorPackage#getFloor_Places()
	 * @model containment="true"
	 * @generated
	 */
	EList<Place> getPlaces();

	/**
	 * Returns the value of the '<em><b>Doors</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.floor.Door}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Doors</em>' containment reference list.
	 * @see cradlewright.model.floor.FloorPackage#getFloor_Doors()
	 * @model containment="true"
	 * @generated
	 */
	EList<Door> getDoors();

	/**
	 * Returns the value of the '<em><b>Columns</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.floor.Column}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Columns</em>' containment reference list.
	 * @see cradlewright.model.floor.FloorPackage#getFloor_Columns()
	 * @model containment="true"
	 * @generated
	 */
	EList<Column> getColumns();

	/**
	 * Returns the value of the '<em><b>Placements</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.floor.Placement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Placements</em>' containment reference list.
	 * @see cradlewright.model.floor.FloorPackage#getFloor_Placements()
	 * @model containment="true"
	 * @generated
	 */
	EList<Placement> getPlacements();

} // Floor
