/**
 */
package cradlewright.model.floor;

import cradlewright.model.base.BasePackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The floor of the shop, its places and what stands where.
 * <!-- end-model-doc -->
 * @see cradlewright.model.floor.FloorFactory
 * @model kind="package"
 * @generated
 */
public interface FloorPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "floor";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:cradlewright:floor";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "floor";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	FloorPackage eINSTANCE = cradlewright.model.floor.impl.FloorPackageImpl.init();

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.FloorImpl <em>Floor</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.FloorImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getFloor()
	 * @generated
	 */
	int FLOOR = 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__SCHEMA = BasePackage.FILE_ROOT__SCHEMA;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__DRAFT = BasePackage.FILE_ROOT__DRAFT;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__ID = BasePackage.FILE_ROOT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__NAME = BasePackage.FILE_ROOT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__NOTE = BasePackage.FILE_ROOT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Slabs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__SLABS = BasePackage.FILE_ROOT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Places</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__PLACES = BasePackage.FILE_ROOT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Doors</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__DOORS = BasePackage.FILE_ROOT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Columns</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__COLUMNS = BasePackage.FILE_ROOT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Placements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__PLACEMENTS = BasePackage.FILE_ROOT_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Floor</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR_FEATURE_COUNT = BasePackage.FILE_ROOT_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.SlabImpl <em>Slab</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.SlabImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getSlab()
	 * @generated
	 */
	int SLAB = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__OUTLINE = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__THICKNESS = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fck</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__FCK = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Fabric</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__FABRIC = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Subgrade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__SUBGRADE = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Daily Wheel Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__DAILY_WHEEL_LOAD = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Daily Wheel Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__DAILY_WHEEL_CONTACT = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Suspended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB__SUSPENDED = BasePackage.NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Slab</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SLAB_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.PlaceImpl <em>Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.PlaceImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlace()
	 * @generated
	 */
	int PLACE = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__KIND = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__POSITION = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Slab</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__SLAB = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Outdoors</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__OUTDOORS = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__FALL = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__TEMPERATURE = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Steepest Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__STEEPEST_STEP = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.DoorImpl <em>Door</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.DoorImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getDoor()
	 * @generated
	 */
	int DOOR = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__WIDTH = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR__HEIGHT = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Door</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOOR_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.ColumnImpl <em>Column</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.ColumnImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getColumn()
	 * @generated
	 */
	int COLUMN = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__WIDTH = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN__DEPTH = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Column</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLUMN_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.impl.PlacementImpl <em>Placement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.impl.PlacementImpl
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlacement()
	 * @generated
	 */
	int PLACEMENT = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Visit</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__VISIT = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Place</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__PLACE = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__POSITION = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Heading</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__HEADING = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Placement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link cradlewright.model.floor.PlaceKind <em>Place Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.PlaceKind
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlaceKind()
	 * @generated
	 */
	int PLACE_KIND = 6;

	/**
	 * The meta object id for the '<em>Place Kind Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.floor.PlaceKind
	 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlaceKindObject()
	 * @generated
	 */
	int PLACE_KIND_OBJECT = 7;


	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Floor <em>Floor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Floor</em>'.
	 * @see cradlewright.model.floor.Floor
	 * @generated
	 */
	EClass getFloor();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.floor.Floor#getSlabs <em>Slabs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Slabs</em>'.
	 * @see cradlewright.model.floor.Floor#getSlabs()
	 * @see #getFloor()
	 * @generated
	 */
	EReference getFloor_Slabs();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.floor.Floor#getPlaces <em>Places</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Places</em>'.
	 * @see cradlewright.model.floor.Floor#getPlaces()
	 * @see #getFloor()
	 * @generated
	 */
	EReference getFloor_Places();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.floor.Floor#getDoors <em>Doors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Doors</em>'.
	 * @see cradlewright.model.floor.Floor#getDoors()
	 * @see #getFloor()
	 * @generated
	 */
	EReference getFloor_Doors();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.floor.Floor#getColumns <em>Columns</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Columns</em>'.
	 * @see cradlewright.model.floor.Floor#getColumns()
	 * @see #getFloor()
	 * @generated
	 */
	EReference getFloor_Columns();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.floor.Floor#getPlacements <em>Placements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Placements</em>'.
	 * @see cradlewright.model.floor.Floor#getPlacements()
	 * @see #getFloor()
	 * @generated
	 */
	EReference getFloor_Placements();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Slab <em>Slab</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Slab</em>'.
	 * @see cradlewright.model.floor.Slab
	 * @generated
	 */
	EClass getSlab();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.floor.Slab#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Outline</em>'.
	 * @see cradlewright.model.floor.Slab#getOutline()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Outline();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.floor.Slab#getThickness()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getFck <em>Fck</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fck</em>'.
	 * @see cradlewright.model.floor.Slab#getFck()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Fck();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getFabric <em>Fabric</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fabric</em>'.
	 * @see cradlewright.model.floor.Slab#getFabric()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Fabric();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getSubgrade <em>Subgrade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subgrade</em>'.
	 * @see cradlewright.model.floor.Slab#getSubgrade()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Subgrade();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getDailyWheelLoad <em>Daily Wheel Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Daily Wheel Load</em>'.
	 * @see cradlewright.model.floor.Slab#getDailyWheelLoad()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_DailyWheelLoad();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getDailyWheelContact <em>Daily Wheel Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Daily Wheel Contact</em>'.
	 * @see cradlewright.model.floor.Slab#getDailyWheelContact()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_DailyWheelContact();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Slab#getSuspended <em>Suspended</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Suspended</em>'.
	 * @see cradlewright.model.floor.Slab#getSuspended()
	 * @see #getSlab()
	 * @generated
	 */
	EAttribute getSlab_Suspended();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Place <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Place</em>'.
	 * @see cradlewright.model.floor.Place
	 * @generated
	 */
	EClass getPlace();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see cradlewright.model.floor.Place#getKind()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_Kind();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.floor.Place#getPosition()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_Position();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.floor.Place#getSlab <em>Slab</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Slab</em>'.
	 * @see cradlewright.model.floor.Place#getSlab()
	 * @see #getPlace()
	 * @generated
	 */
	EReference getPlace_Slab();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getOutdoors <em>Outdoors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outdoors</em>'.
	 * @see cradlewright.model.floor.Place#getOutdoors()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_Outdoors();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getFall <em>Fall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fall</em>'.
	 * @see cradlewright.model.floor.Place#getFall()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_Fall();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getTemperature <em>Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature</em>'.
	 * @see cradlewright.model.floor.Place#getTemperature()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_Temperature();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Place#getSteepestStep <em>Steepest Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Steepest Step</em>'.
	 * @see cradlewright.model.floor.Place#getSteepestStep()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_SteepestStep();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Door <em>Door</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Door</em>'.
	 * @see cradlewright.model.floor.Door
	 * @generated
	 */
	EClass getDoor();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Door#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.floor.Door#getPosition()
	 * @see #getDoor()
	 * @generated
	 */
	EAttribute getDoor_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Door#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.floor.Door#getWidth()
	 * @see #getDoor()
	 * @generated
	 */
	EAttribute getDoor_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Door#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see cradlewright.model.floor.Door#getHeight()
	 * @see #getDoor()
	 * @generated
	 */
	EAttribute getDoor_Height();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Column <em>Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Column</em>'.
	 * @see cradlewright.model.floor.Column
	 * @generated
	 */
	EClass getColumn();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Column#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.floor.Column#getPosition()
	 * @see #getColumn()
	 * @generated
	 */
	EAttribute getColumn_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Column#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.floor.Column#getWidth()
	 * @see #getColumn()
	 * @generated
	 */
	EAttribute getColumn_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Column#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see cradlewright.model.floor.Column#getDepth()
	 * @see #getColumn()
	 * @generated
	 */
	EAttribute getColumn_Depth();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.floor.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placement</em>'.
	 * @see cradlewright.model.floor.Placement
	 * @generated
	 */
	EClass getPlacement();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.floor.Placement#getVisit <em>Visit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Visit</em>'.
	 * @see cradlewright.model.floor.Placement#getVisit()
	 * @see #getPlacement()
	 * @generated
	 */
	EReference getPlacement_Visit();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.floor.Placement#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Place</em>'.
	 * @see cradlewright.model.floor.Placement#getPlace()
	 * @see #getPlacement()
	 * @generated
	 */
	EReference getPlacement_Place();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Placement#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.floor.Placement#getPosition()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.floor.Placement#getHeading <em>Heading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heading</em>'.
	 * @see cradlewright.model.floor.Placement#getHeading()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_Heading();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.floor.PlaceKind <em>Place Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Place Kind</em>'.
	 * @see cradlewright.model.floor.PlaceKind
	 * @generated
	 */
	EEnum getPlaceKind();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.floor.PlaceKind <em>Place Kind Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * PlaceKind, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Place Kind Object</em>'.
	 * @see cradlewright.model.floor.PlaceKind
	 * @model instanceClass="cradlewright.model.floor.PlaceKind"
	 *        extendedMetaData="name='PlaceKind:Object' baseType='PlaceKind'"
	 * @generated
	 */
	EDataType getPlaceKindObject();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	FloorFactory getFloorFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.FloorImpl <em>Floor</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.FloorImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getFloor()
		 * @generated
		 */
		EClass FLOOR = eINSTANCE.getFloor();

		/**
		 * The meta object literal for the '<em><b>Slabs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FLOOR__SLABS = eINSTANCE.getFloor_Slabs();

		/**
		 * The meta object literal for the '<em><b>Places</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FLOOR__PLACES = eINSTANCE.getFloor_Places();

		/**
		 * The meta object literal for the '<em><b>Doors</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FLOOR__DOORS = eINSTANCE.getFloor_Doors();

		/**
		 * The meta object literal for the '<em><b>Columns</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FLOOR__COLUMNS = eINSTANCE.getFloor_Columns();

		/**
		 * The meta object literal for the '<em><b>Placements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FLOOR__PLACEMENTS = eINSTANCE.getFloor_Placements();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.SlabImpl <em>Slab</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.SlabImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getSlab()
		 * @generated
		 */
		EClass SLAB = eINSTANCE.getSlab();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__OUTLINE = eINSTANCE.getSlab_Outline();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__THICKNESS = eINSTANCE.getSlab_Thickness();

		/**
		 * The meta object literal for the '<em><b>Fck</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__FCK = eINSTANCE.getSlab_Fck();

		/**
		 * The meta object literal for the '<em><b>Fabric</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__FABRIC = eINSTANCE.getSlab_Fabric();

		/**
		 * The meta object literal for the '<em><b>Subgrade</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__SUBGRADE = eINSTANCE.getSlab_Subgrade();

		/**
		 * The meta object literal for the '<em><b>Daily Wheel Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__DAILY_WHEEL_LOAD = eINSTANCE.getSlab_DailyWheelLoad();

		/**
		 * The meta object literal for the '<em><b>Daily Wheel Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__DAILY_WHEEL_CONTACT = eINSTANCE.getSlab_DailyWheelContact();

		/**
		 * The meta object literal for the '<em><b>Suspended</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SLAB__SUSPENDED = eINSTANCE.getSlab_Suspended();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.PlaceImpl <em>Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.PlaceImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlace()
		 * @generated
		 */
		EClass PLACE = eINSTANCE.getPlace();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__KIND = eINSTANCE.getPlace_Kind();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__POSITION = eINSTANCE.getPlace_Position();

		/**
		 * The meta object literal for the '<em><b>Slab</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLACE__SLAB = eINSTANCE.getPlace_Slab();

		/**
		 * The meta object literal for the '<em><b>Outdoors</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__OUTDOORS = eINSTANCE.getPlace_Outdoors();

		/**
		 * The meta object literal for the '<em><b>Fall</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__FALL = eINSTANCE.getPlace_Fall();

		/**
		 * The meta object literal for the '<em><b>Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__TEMPERATURE = eINSTANCE.getPlace_Temperature();

		/**
		 * The meta object literal for the '<em><b>Steepest Step</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__STEEPEST_STEP = eINSTANCE.getPlace_SteepestStep();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.DoorImpl <em>Door</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.DoorImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getDoor()
		 * @generated
		 */
		EClass DOOR = eINSTANCE.getDoor();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOOR__POSITION = eINSTANCE.getDoor_Position();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOOR__WIDTH = eINSTANCE.getDoor_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOOR__HEIGHT = eINSTANCE.getDoor_Height();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.ColumnImpl <em>Column</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.ColumnImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getColumn()
		 * @generated
		 */
		EClass COLUMN = eINSTANCE.getColumn();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLUMN__POSITION = eINSTANCE.getColumn_Position();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLUMN__WIDTH = eINSTANCE.getColumn_Width();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLUMN__DEPTH = eINSTANCE.getColumn_Depth();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.impl.PlacementImpl <em>Placement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.impl.PlacementImpl
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlacement()
		 * @generated
		 */
		EClass PLACEMENT = eINSTANCE.getPlacement();

		/**
		 * The meta object literal for the '<em><b>Visit</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLACEMENT__VISIT = eINSTANCE.getPlacement_Visit();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLACEMENT__PLACE = eINSTANCE.getPlacement_Place();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__POSITION = eINSTANCE.getPlacement_Position();

		/**
		 * The meta object literal for the '<em><b>Heading</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__HEADING = eINSTANCE.getPlacement_Heading();

		/**
		 * The meta object literal for the '{@link cradlewright.model.floor.PlaceKind <em>Place Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.PlaceKind
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlaceKind()
		 * @generated
		 */
		EEnum PLACE_KIND = eINSTANCE.getPlaceKind();

		/**
		 * The meta object literal for the '<em>Place Kind Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.floor.PlaceKind
		 * @see cradlewright.model.floor.impl.FloorPackageImpl#getPlaceKindObject()
		 * @generated
		 */
		EDataType PLACE_KIND_OBJECT = eINSTANCE.getPlaceKindObject();

	}

} //FloorPackage
