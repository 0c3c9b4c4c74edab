/**
 */
package cradlewright.model.vehicle;

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
 * One car: its pieces, parts, mounts, stages and what was measured on it.
 * <!-- end-model-doc -->
 * @see cradlewright.model.vehicle.VehicleFactory
 * @model kind="package"
 * @generated
 */
public interface VehiclePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "vehicle";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:cradlewright:vehicle";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "vehicle";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	VehiclePackage eINSTANCE = cradlewright.model.vehicle.impl.VehiclePackageImpl.init();

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.CarImpl <em>Car</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.CarImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getCar()
	 * @generated
	 */
	int CAR = 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__SCHEMA = BasePackage.FILE_ROOT__SCHEMA;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__DRAFT = BasePackage.FILE_ROOT__DRAFT;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__ID = BasePackage.FILE_ROOT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__NAME = BasePackage.FILE_ROOT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__NOTE = BasePackage.FILE_ROOT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Construction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__CONSTRUCTION = BasePackage.FILE_ROOT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Marks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__MARKS = BasePackage.FILE_ROOT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__PIECES = BasePackage.FILE_ROOT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Mounts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__MOUNTS = BasePackage.FILE_ROOT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Lift Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__LIFT_POINTS = BasePackage.FILE_ROOT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Work Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__WORK_POINTS = BasePackage.FILE_ROOT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Cut Zones</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__CUT_ZONES = BasePackage.FILE_ROOT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Temporary Loads</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__TEMPORARY_LOADS = BasePackage.FILE_ROOT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Braces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__BRACES = BasePackage.FILE_ROOT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Aperture Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__APERTURE_READINGS = BasePackage.FILE_ROOT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Stages</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__STAGES = BasePackage.FILE_ROOT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Setups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__SETUPS = BasePackage.FILE_ROOT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Visits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__VISITS = BasePackage.FILE_ROOT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Weighings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR__WEIGHINGS = BasePackage.FILE_ROOT_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Car</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CAR_FEATURE_COUNT = BasePackage.FILE_ROOT_FEATURE_COUNT + 17;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.MarkImpl <em>Mark</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.MarkImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMark()
	 * @generated
	 */
	int MARK = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARK__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARK__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARK__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARK__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Mark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARK_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.PieceImpl <em>Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.PieceImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPiece()
	 * @generated
	 */
	int PIECE = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__KIND = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Torsional Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__TORSIONAL_STIFFNESS = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bending Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__BENDING_STIFFNESS = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__OUTLINE = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__PARTS = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.PartImpl <em>Part</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.PartImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPart()
	 * @generated
	 */
	int PART = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__MASS = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__POSITION = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__TEMPERATURE_LIMIT = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.MountImpl <em>Mount</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.MountImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMount()
	 * @generated
	 */
	int MOUNT = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__CONDITION = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sheet Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__SHEET_THICKNESS = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bolt</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__BOLT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Bolt Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__BOLT_COUNT = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__STATE = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>As Found</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__AS_FOUND = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>On Dolly</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__ON_DOLLY = BasePackage.NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>As Built</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT__AS_BUILT = BasePackage.NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Mount</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 9;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.ShimStackImpl <em>Shim Stack</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.ShimStackImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getShimStack()
	 * @generated
	 */
	int SHIM_STACK = 5;

	/**
	 * The feature id for the '<em><b>Shims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_STACK__SHIMS = 0;

	/**
	 * The number of structural features of the '<em>Shim Stack</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_STACK_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.ShimImpl <em>Shim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.ShimImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getShim()
	 * @generated
	 */
	int SHIM = 6;

	/**
	 * The feature id for the '<em><b>Shim</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM__SHIM = 0;

	/**
	 * The feature id for the '<em><b>Loose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM__LOOSE = 1;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM__COUNT = 2;

	/**
	 * The number of structural features of the '<em>Shim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_FEATURE_COUNT = 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.LiftPointImpl <em>Lift Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.LiftPointImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLiftPoint()
	 * @generated
	 */
	int LIFT_POINT = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__CONDITION = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sheet Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__SHEET_THICKNESS = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Looked At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__LOOKED_AT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__CAPACITY = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT__BASIS = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Lift Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIFT_POINT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.WorkPointImpl <em>Work Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.WorkPointImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkPoint()
	 * @generated
	 */
	int WORK_POINT = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__POSITION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__DIRECTION = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT__KIND = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Work Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_POINT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.CutZoneImpl <em>Cut Zone</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.CutZoneImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getCutZone()
	 * @generated
	 */
	int CUT_ZONE = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__LOW = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__HIGH = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__PLANNED = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Braces</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE__BRACES = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Cut Zone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_ZONE_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.TemporaryLoadImpl <em>Temporary Load</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.TemporaryLoadImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getTemporaryLoad()
	 * @generated
	 */
	int TEMPORARY_LOAD = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__KIND = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__MASS = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD__POSITION = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Temporary Load</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEMPORARY_LOAD_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.BraceImpl <em>Brace</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.BraceImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getBrace()
	 * @generated
	 */
	int BRACE = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__FROM = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__TO = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fitted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE__FITTED = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Brace</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRACE_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.ApertureReadingImpl <em>Aperture Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.ApertureReadingImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getApertureReading()
	 * @generated
	 */
	int APERTURE_READING = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__ID = BasePackage.IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Aperture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__APERTURE = BasePackage.IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__AT = BasePackage.IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__BY = BasePackage.IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Diagonals</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__DIAGONALS = BasePackage.IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Gaps</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING__GAPS = BasePackage.IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Aperture Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APERTURE_READING_FEATURE_COUNT = BasePackage.IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.StageImpl <em>Stage</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.StageImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getStage()
	 * @generated
	 */
	int STAGE = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>On</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__ON = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Loads</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__LOADS = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Stage</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.VisitImpl <em>Visit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.VisitImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getVisit()
	 * @generated
	 */
	int VISIT = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__STAGE = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Setup</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__SETUP = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__FROM = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__TO = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__CURRENT = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Visit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.WeighingImpl <em>Weighing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.WeighingImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWeighing()
	 * @generated
	 */
	int WEIGHING = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__ID = BasePackage.IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__AT = BasePackage.IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__METHOD = BasePackage.IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__BY = BasePackage.IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__STAGE = BasePackage.IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__READINGS = BasePackage.IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Weighing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_FEATURE_COUNT = BasePackage.IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.impl.WeighingReadingImpl <em>Weighing Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.impl.WeighingReadingImpl
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWeighingReading()
	 * @generated
	 */
	int WEIGHING_READING = 16;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_READING__POSITION = 0;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_READING__MASS = 1;

	/**
	 * The number of structural features of the '<em>Weighing Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_READING_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.Construction <em>Construction</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.Construction
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getConstruction()
	 * @generated
	 */
	int CONSTRUCTION = 17;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.PieceKind <em>Piece Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.PieceKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPieceKind()
	 * @generated
	 */
	int PIECE_KIND = 18;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.MountState <em>Mount State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.MountState
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMountState()
	 * @generated
	 */
	int MOUNT_STATE = 19;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.WorkKind <em>Work Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.WorkKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkKind()
	 * @generated
	 */
	int WORK_KIND = 20;

	/**
	 * The meta object id for the '{@link cradlewright.model.vehicle.LoadKind <em>Load Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.LoadKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLoadKind()
	 * @generated
	 */
	int LOAD_KIND = 21;

	/**
	 * The meta object id for the '<em>Construction Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.Construction
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getConstructionObject()
	 * @generated
	 */
	int CONSTRUCTION_OBJECT = 22;

	/**
	 * The meta object id for the '<em>Piece Kind Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.PieceKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPieceKindObject()
	 * @generated
	 */
	int PIECE_KIND_OBJECT = 23;

	/**
	 * The meta object id for the '<em>Mount State Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.MountState
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMountStateObject()
	 * @generated
	 */
	int MOUNT_STATE_OBJECT = 24;

	/**
	 * The meta object id for the '<em>Work Kind Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.WorkKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkKindObject()
	 * @generated
	 */
	int WORK_KIND_OBJECT = 25;

	/**
	 * The meta object id for the '<em>Load Kind Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.vehicle.LoadKind
	 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLoadKindObject()
	 * @generated
	 */
	int LOAD_KIND_OBJECT = 26;


	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Car <em>Car</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Car</em>'.
	 * @see cradlewright.model.vehicle.Car
	 * @generated
	 */
	EClass getCar();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Car#getConstruction <em>Construction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Construction</em>'.
	 * @see cradlewright.model.vehicle.Car#getConstruction()
	 * @see #getCar()
	 * @generated
	 */
	EAttribute getCar_Construction();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getMarks <em>Marks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Marks</em>'.
	 * @see cradlewright.model.vehicle.Car#getMarks()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Marks();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see cradlewright.model.vehicle.Car#getPieces()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Pieces();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getMounts <em>Mounts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Mounts</em>'.
	 * @see cradlewright.model.vehicle.Car#getMounts()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Mounts();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getLiftPoints <em>Lift Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lift Points</em>'.
	 * @see cradlewright.model.vehicle.Car#getLiftPoints()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_LiftPoints();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getWorkPoints <em>Work Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Work Points</em>'.
	 * @see cradlewright.model.vehicle.Car#getWorkPoints()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_WorkPoints();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getCutZones <em>Cut Zones</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Cut Zones</em>'.
	 * @see cradlewright.model.vehicle.Car#getCutZones()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_CutZones();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getTemporaryLoads <em>Temporary Loads</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Temporary Loads</em>'.
	 * @see cradlewright.model.vehicle.Car#getTemporaryLoads()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_TemporaryLoads();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getBraces <em>Braces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Braces</em>'.
	 * @see cradlewright.model.vehicle.Car#getBraces()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Braces();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getApertureReadings <em>Aperture Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Aperture Readings</em>'.
	 * @see cradlewright.model.vehicle.Car#getApertureReadings()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_ApertureReadings();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getStages <em>Stages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stages</em>'.
	 * @see cradlewright.model.vehicle.Car#getStages()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Stages();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getSetups <em>Setups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Setups</em>'.
	 * @see cradlewright.model.vehicle.Car#getSetups()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Setups();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getVisits <em>Visits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Visits</em>'.
	 * @see cradlewright.model.vehicle.Car#getVisits()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Visits();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Car#getWeighings <em>Weighings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Weighings</em>'.
	 * @see cradlewright.model.vehicle.Car#getWeighings()
	 * @see #getCar()
	 * @generated
	 */
	EReference getCar_Weighings();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Mark <em>Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mark</em>'.
	 * @see cradlewright.model.vehicle.Mark
	 * @generated
	 */
	EClass getMark();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mark#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.Mark#getPosition()
	 * @see #getMark()
	 * @generated
	 */
	EAttribute getMark_Position();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Piece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Piece</em>'.
	 * @see cradlewright.model.vehicle.Piece
	 * @generated
	 */
	EClass getPiece();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Piece#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see cradlewright.model.vehicle.Piece#getKind()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Kind();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Piece#getTorsionalStiffness <em>Torsional Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Torsional Stiffness</em>'.
	 * @see cradlewright.model.vehicle.Piece#getTorsionalStiffness()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_TorsionalStiffness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Piece#getBendingStiffness <em>Bending Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bending Stiffness</em>'.
	 * @see cradlewright.model.vehicle.Piece#getBendingStiffness()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_BendingStiffness();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.vehicle.Piece#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Outline</em>'.
	 * @see cradlewright.model.vehicle.Piece#getOutline()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Outline();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Piece#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Parts</em>'.
	 * @see cradlewright.model.vehicle.Piece#getParts()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Parts();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Part <em>Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Part</em>'.
	 * @see cradlewright.model.vehicle.Part
	 * @generated
	 */
	EClass getPart();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Part#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see cradlewright.model.vehicle.Part#getMass()
	 * @see #getPart()
	 * @generated
	 */
	EAttribute getPart_Mass();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Part#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.Part#getPosition()
	 * @see #getPart()
	 * @generated
	 */
	EAttribute getPart_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Part#getTemperatureLimit <em>Temperature Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature Limit</em>'.
	 * @see cradlewright.model.vehicle.Part#getTemperatureLimit()
	 * @see #getPart()
	 * @generated
	 */
	EAttribute getPart_TemperatureLimit();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Mount <em>Mount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mount</em>'.
	 * @see cradlewright.model.vehicle.Mount
	 * @generated
	 */
	EClass getMount();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mount#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.Mount#getPosition()
	 * @see #getMount()
	 * @generated
	 */
	EAttribute getMount_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mount#getCondition <em>Condition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Condition</em>'.
	 * @see cradlewright.model.vehicle.Mount#getCondition()
	 * @see #getMount()
	 * @generated
	 */
	EAttribute getMount_Condition();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mount#getSheetThickness <em>Sheet Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Thickness</em>'.
	 * @see cradlewright.model.vehicle.Mount#getSheetThickness()
	 * @see #getMount()
	 * @generated
	 */
	EAttribute getMount_SheetThickness();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.vehicle.Mount#getBolt <em>Bolt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Bolt</em>'.
	 * @see cradlewright.model.vehicle.Mount#getBolt()
	 * @see #getMount()
	 * @generated
	 */
	EReference getMount_Bolt();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mount#getBoltCount <em>Bolt Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bolt Count</em>'.
	 * @see cradlewright.model.vehicle.Mount#getBoltCount()
	 * @see #getMount()
	 * @generated
	 */
	EAttribute getMount_BoltCount();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Mount#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see cradlewright.model.vehicle.Mount#getState()
	 * @see #getMount()
	 * @generated
	 */
	EAttribute getMount_State();

	/**
	 * Returns the meta object for the containment reference '{@link cradlewright.model.vehicle.Mount#getAsFound <em>As Found</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>As Found</em>'.
	 * @see cradlewright.model.vehicle.Mount#getAsFound()
	 * @see #getMount()
	 * @generated
	 */
	EReference getMount_AsFound();

	/**
	 * Returns the meta object for the containment reference '{@link cradlewright.model.vehicle.Mount#getOnDolly <em>On Dolly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>On Dolly</em>'.
	 * @see cradlewright.model.vehicle.Mount#getOnDolly()
	 * @see #getMount()
	 * @generated
	 */
	EReference getMount_OnDolly();

	/**
	 * Returns the meta object for the containment reference '{@link cradlewright.model.vehicle.Mount#getAsBuilt <em>As Built</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>As Built</em>'.
	 * @see cradlewright.model.vehicle.Mount#getAsBuilt()
	 * @see #getMount()
	 * @generated
	 */
	EReference getMount_AsBuilt();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.ShimStack <em>Shim Stack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shim Stack</em>'.
	 * @see cradlewright.model.vehicle.ShimStack
	 * @generated
	 */
	EClass getShimStack();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.ShimStack#getShims <em>Shims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Shims</em>'.
	 * @see cradlewright.model.vehicle.ShimStack#getShims()
	 * @see #getShimStack()
	 * @generated
	 */
	EReference getShimStack_Shims();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Shim <em>Shim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shim</em>'.
	 * @see cradlewright.model.vehicle.Shim
	 * @generated
	 */
	EClass getShim();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.vehicle.Shim#getShim <em>Shim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Shim</em>'.
	 * @see cradlewright.model.vehicle.Shim#getShim()
	 * @see #getShim()
	 * @generated
	 */
	EReference getShim_Shim();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Shim#getLoose <em>Loose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Loose</em>'.
	 * @see cradlewright.model.vehicle.Shim#getLoose()
	 * @see #getShim()
	 * @generated
	 */
	EAttribute getShim_Loose();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Shim#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see cradlewright.model.vehicle.Shim#getCount()
	 * @see #getShim()
	 * @generated
	 */
	EAttribute getShim_Count();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.LiftPoint <em>Lift Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lift Point</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint
	 * @generated
	 */
	EClass getLiftPoint();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getPosition()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getCondition <em>Condition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Condition</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getCondition()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_Condition();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getSheetThickness <em>Sheet Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Thickness</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getSheetThickness()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_SheetThickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getLookedAt <em>Looked At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Looked At</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getLookedAt()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_LookedAt();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getCapacity <em>Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capacity</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getCapacity()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_Capacity();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.LiftPoint#getBasis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basis</em>'.
	 * @see cradlewright.model.vehicle.LiftPoint#getBasis()
	 * @see #getLiftPoint()
	 * @generated
	 */
	EAttribute getLiftPoint_Basis();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.WorkPoint <em>Work Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Work Point</em>'.
	 * @see cradlewright.model.vehicle.WorkPoint
	 * @generated
	 */
	EClass getWorkPoint();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.WorkPoint#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.WorkPoint#getPosition()
	 * @see #getWorkPoint()
	 * @generated
	 */
	EAttribute getWorkPoint_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.WorkPoint#getDirection <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Direction</em>'.
	 * @see cradlewright.model.vehicle.WorkPoint#getDirection()
	 * @see #getWorkPoint()
	 * @generated
	 */
	EAttribute getWorkPoint_Direction();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.WorkPoint#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see cradlewright.model.vehicle.WorkPoint#getKind()
	 * @see #getWorkPoint()
	 * @generated
	 */
	EAttribute getWorkPoint_Kind();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.CutZone <em>Cut Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cut Zone</em>'.
	 * @see cradlewright.model.vehicle.CutZone
	 * @generated
	 */
	EClass getCutZone();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.CutZone#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see cradlewright.model.vehicle.CutZone#getLow()
	 * @see #getCutZone()
	 * @generated
	 */
	EAttribute getCutZone_Low();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.CutZone#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see cradlewright.model.vehicle.CutZone#getHigh()
	 * @see #getCutZone()
	 * @generated
	 */
	EAttribute getCutZone_High();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.CutZone#isPlanned <em>Planned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned</em>'.
	 * @see cradlewright.model.vehicle.CutZone#isPlanned()
	 * @see #getCutZone()
	 * @generated
	 */
	EAttribute getCutZone_Planned();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.vehicle.CutZone#getBraces <em>Braces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Braces</em>'.
	 * @see cradlewright.model.vehicle.CutZone#getBraces()
	 * @see #getCutZone()
	 * @generated
	 */
	EReference getCutZone_Braces();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.TemporaryLoad <em>Temporary Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Temporary Load</em>'.
	 * @see cradlewright.model.vehicle.TemporaryLoad
	 * @generated
	 */
	EClass getTemporaryLoad();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.TemporaryLoad#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see cradlewright.model.vehicle.TemporaryLoad#getKind()
	 * @see #getTemporaryLoad()
	 * @generated
	 */
	EAttribute getTemporaryLoad_Kind();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.TemporaryLoad#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see cradlewright.model.vehicle.TemporaryLoad#getMass()
	 * @see #getTemporaryLoad()
	 * @generated
	 */
	EAttribute getTemporaryLoad_Mass();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.TemporaryLoad#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.TemporaryLoad#getPosition()
	 * @see #getTemporaryLoad()
	 * @generated
	 */
	EAttribute getTemporaryLoad_Position();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Brace <em>Brace</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Brace</em>'.
	 * @see cradlewright.model.vehicle.Brace
	 * @generated
	 */
	EClass getBrace();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Brace#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see cradlewright.model.vehicle.Brace#getFrom()
	 * @see #getBrace()
	 * @generated
	 */
	EAttribute getBrace_From();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Brace#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see cradlewright.model.vehicle.Brace#getTo()
	 * @see #getBrace()
	 * @generated
	 */
	EAttribute getBrace_To();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Brace#isFitted <em>Fitted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fitted</em>'.
	 * @see cradlewright.model.vehicle.Brace#isFitted()
	 * @see #getBrace()
	 * @generated
	 */
	EAttribute getBrace_Fitted();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.ApertureReading <em>Aperture Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Aperture Reading</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading
	 * @generated
	 */
	EClass getApertureReading();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.ApertureReading#getAperture <em>Aperture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aperture</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading#getAperture()
	 * @see #getApertureReading()
	 * @generated
	 */
	EAttribute getApertureReading_Aperture();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.ApertureReading#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading#getAt()
	 * @see #getApertureReading()
	 * @generated
	 */
	EAttribute getApertureReading_At();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.ApertureReading#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading#getBy()
	 * @see #getApertureReading()
	 * @generated
	 */
	EAttribute getApertureReading_By();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.vehicle.ApertureReading#getDiagonals <em>Diagonals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Diagonals</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading#getDiagonals()
	 * @see #getApertureReading()
	 * @generated
	 */
	EAttribute getApertureReading_Diagonals();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.vehicle.ApertureReading#getGaps <em>Gaps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Gaps</em>'.
	 * @see cradlewright.model.vehicle.ApertureReading#getGaps()
	 * @see #getApertureReading()
	 * @generated
	 */
	EAttribute getApertureReading_Gaps();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stage</em>'.
	 * @see cradlewright.model.vehicle.Stage
	 * @generated
	 */
	EClass getStage();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.vehicle.Stage#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>On</em>'.
	 * @see cradlewright.model.vehicle.Stage#getOn()
	 * @see #getStage()
	 * @generated
	 */
	EReference getStage_On();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.vehicle.Stage#getLoads <em>Loads</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Loads</em>'.
	 * @see cradlewright.model.vehicle.Stage#getLoads()
	 * @see #getStage()
	 * @generated
	 */
	EReference getStage_Loads();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Visit <em>Visit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Visit</em>'.
	 * @see cradlewright.model.vehicle.Visit
	 * @generated
	 */
	EClass getVisit();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.vehicle.Visit#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Stage</em>'.
	 * @see cradlewright.model.vehicle.Visit#getStage()
	 * @see #getVisit()
	 * @generated
	 */
	EReference getVisit_Stage();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.vehicle.Visit#getSetup <em>Setup</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Setup</em>'.
	 * @see cradlewright.model.vehicle.Visit#getSetup()
	 * @see #getVisit()
	 * @generated
	 */
	EReference getVisit_Setup();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Visit#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see cradlewright.model.vehicle.Visit#getFrom()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_From();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Visit#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see cradlewright.model.vehicle.Visit#getTo()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_To();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Visit#getCurrent <em>Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current</em>'.
	 * @see cradlewright.model.vehicle.Visit#getCurrent()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_Current();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.Weighing <em>Weighing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Weighing</em>'.
	 * @see cradlewright.model.vehicle.Weighing
	 * @generated
	 */
	EClass getWeighing();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Weighing#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see cradlewright.model.vehicle.Weighing#getAt()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_At();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Weighing#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see cradlewright.model.vehicle.Weighing#getMethod()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_Method();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.Weighing#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see cradlewright.model.vehicle.Weighing#getBy()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_By();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.vehicle.Weighing#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Stage</em>'.
	 * @see cradlewright.model.vehicle.Weighing#getStage()
	 * @see #getWeighing()
	 * @generated
	 */
	EReference getWeighing_Stage();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.vehicle.Weighing#getReadings <em>Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Readings</em>'.
	 * @see cradlewright.model.vehicle.Weighing#getReadings()
	 * @see #getWeighing()
	 * @generated
	 */
	EReference getWeighing_Readings();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.vehicle.WeighingReading <em>Weighing Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Weighing Reading</em>'.
	 * @see cradlewright.model.vehicle.WeighingReading
	 * @generated
	 */
	EClass getWeighingReading();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.WeighingReading#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see cradlewright.model.vehicle.WeighingReading#getPosition()
	 * @see #getWeighingReading()
	 * @generated
	 */
	EAttribute getWeighingReading_Position();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.vehicle.WeighingReading#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see cradlewright.model.vehicle.WeighingReading#getMass()
	 * @see #getWeighingReading()
	 * @generated
	 */
	EAttribute getWeighingReading_Mass();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.vehicle.Construction <em>Construction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Construction</em>'.
	 * @see cradlewright.model.vehicle.Construction
	 * @generated
	 */
	EEnum getConstruction();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.vehicle.PieceKind <em>Piece Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Piece Kind</em>'.
	 * @see cradlewright.model.vehicle.PieceKind
	 * @generated
	 */
	EEnum getPieceKind();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.vehicle.MountState <em>Mount State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mount State</em>'.
	 * @see cradlewright.model.vehicle.MountState
	 * @generated
	 */
	EEnum getMountState();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.vehicle.WorkKind <em>Work Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Work Kind</em>'.
	 * @see cradlewright.model.vehicle.WorkKind
	 * @generated
	 */
	EEnum getWorkKind();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.vehicle.LoadKind <em>Load Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Load Kind</em>'.
	 * @see cradlewright.model.vehicle.LoadKind
	 * @generated
	 */
	EEnum getLoadKind();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.vehicle.Construction <em>Construction Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Construction, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Construction Object</em>'.
	 * @see cradlewright.model.vehicle.Construction
	 * @model instanceClass="cradlewright.model.vehicle.Construction"
	 *        extendedMetaData="name='Construction:Object' baseType='Construction'"
	 * @generated
	 */
	EDataType getConstructionObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.vehicle.PieceKind <em>Piece Kind Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * PieceKind, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Piece Kind Object</em>'.
	 * @see cradlewright.model.vehicle.PieceKind
	 * @model instanceClass="cradlewright.model.vehicle.PieceKind"
	 *        extendedMetaData="name='PieceKind:Object' baseType='PieceKind'"
	 * @generated
	 */
	EDataType getPieceKindObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.vehicle.MountState <em>Mount State Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * MountState, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Mount State Object</em>'.
	 * @see cradlewright.model.vehicle.MountState
	 * @model instanceClass="cradlewright.model.vehicle.MountState"
	 *        extendedMetaData="name='MountState:Object' baseType='MountState'"
	 * @generated
	 */
	EDataType getMountStateObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.vehicle.WorkKind <em>Work Kind Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * WorkKind, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Work Kind Object</em>'.
	 * @see cradlewright.model.vehicle.WorkKind
	 * @model instanceClass="cradlewright.model.vehicle.WorkKind"
	 *        extendedMetaData="name='WorkKind:Object' baseType='WorkKind'"
	 * @generated
	 */
	EDataType getWorkKindObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.vehicle.LoadKind <em>Load Kind Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * LoadKind, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Load Kind Object</em>'.
	 * @see cradlewright.model.vehicle.LoadKind
	 * @model instanceClass="cradlewright.model.vehicle.LoadKind"
	 *        extendedMetaData="name='LoadKind:Object' baseType='LoadKind'"
	 * @generated
	 */
	EDataType getLoadKindObject();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	VehicleFactory getVehicleFactory();

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
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.CarImpl <em>Car</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.CarImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getCar()
		 * @generated
		 */
		EClass CAR = eINSTANCE.getCar();

		/**
		 * The meta object literal for the '<em><b>Construction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CAR__CONSTRUCTION = eINSTANCE.getCar_Construction();

		/**
		 * The meta object literal for the '<em><b>Marks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__MARKS = eINSTANCE.getCar_Marks();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__PIECES = eINSTANCE.getCar_Pieces();

		/**
		 * The meta object literal for the '<em><b>Mounts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__MOUNTS = eINSTANCE.getCar_Mounts();

		/**
		 * The meta object literal for the '<em><b>Lift Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__LIFT_POINTS = eINSTANCE.getCar_LiftPoints();

		/**
		 * The meta object literal for the '<em><b>Work Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__WORK_POINTS = eINSTANCE.getCar_WorkPoints();

		/**
		 * The meta object literal for the '<em><b>Cut Zones</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__CUT_ZONES = eINSTANCE.getCar_CutZones();

		/**
		 * The meta object literal for the '<em><b>Temporary Loads</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__TEMPORARY_LOADS = eINSTANCE.getCar_TemporaryLoads();

		/**
		 * The meta object literal for the '<em><b>Braces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__BRACES = eINSTANCE.getCar_Braces();

		/**
		 * The meta object literal for the '<em><b>Aperture Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__APERTURE_READINGS = eINSTANCE.getCar_ApertureReadings();

		/**
		 * The meta object literal for the '<em><b>Stages</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__STAGES = eINSTANCE.getCar_Stages();

		/**
		 * The meta object literal for the '<em><b>Setups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__SETUPS = eINSTANCE.getCar_Setups();

		/**
		 * The meta object literal for the '<em><b>Visits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__VISITS = eINSTANCE.getCar_Visits();

		/**
		 * The meta object literal for the '<em><b>Weighings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CAR__WEIGHINGS = eINSTANCE.getCar_Weighings();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.MarkImpl <em>Mark</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.MarkImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMark()
		 * @generated
		 */
		EClass MARK = eINSTANCE.getMark();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARK__POSITION = eINSTANCE.getMark_Position();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.PieceImpl <em>Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.PieceImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPiece()
		 * @generated
		 */
		EClass PIECE = eINSTANCE.getPiece();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__KIND = eINSTANCE.getPiece_Kind();

		/**
		 * The meta object literal for the '<em><b>Torsional Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__TORSIONAL_STIFFNESS = eINSTANCE.getPiece_TorsionalStiffness();

		/**
		 * The meta object literal for the '<em><b>Bending Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__BENDING_STIFFNESS = eINSTANCE.getPiece_BendingStiffness();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__OUTLINE = eINSTANCE.getPiece_Outline();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__PARTS = eINSTANCE.getPiece_Parts();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.PartImpl <em>Part</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.PartImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPart()
		 * @generated
		 */
		EClass PART = eINSTANCE.getPart();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PART__MASS = eINSTANCE.getPart_Mass();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PART__POSITION = eINSTANCE.getPart_Position();

		/**
		 * The meta object literal for the '<em><b>Temperature Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PART__TEMPERATURE_LIMIT = eINSTANCE.getPart_TemperatureLimit();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.MountImpl <em>Mount</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.MountImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMount()
		 * @generated
		 */
		EClass MOUNT = eINSTANCE.getMount();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNT__POSITION = eINSTANCE.getMount_Position();

		/**
		 * The meta object literal for the '<em><b>Condition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNT__CONDITION = eINSTANCE.getMount_Condition();

		/**
		 * The meta object literal for the '<em><b>Sheet Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNT__SHEET_THICKNESS = eINSTANCE.getMount_SheetThickness();

		/**
		 * The meta object literal for the '<em><b>Bolt</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOUNT__BOLT = eINSTANCE.getMount_Bolt();

		/**
		 * The meta object literal for the '<em><b>Bolt Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNT__BOLT_COUNT = eINSTANCE.getMount_BoltCount();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNT__STATE = eINSTANCE.getMount_State();

		/**
		 * The meta object literal for the '<em><b>As Found</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOUNT__AS_FOUND = eINSTANCE.getMount_AsFound();

		/**
		 * The meta object literal for the '<em><b>On Dolly</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOUNT__ON_DOLLY = eINSTANCE.getMount_OnDolly();

		/**
		 * The meta object literal for the '<em><b>As Built</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOUNT__AS_BUILT = eINSTANCE.getMount_AsBuilt();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.ShimStackImpl <em>Shim Stack</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.ShimStackImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getShimStack()
		 * @generated
		 */
		EClass SHIM_STACK = eINSTANCE.getShimStack();

		/**
		 * The meta object literal for the '<em><b>Shims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHIM_STACK__SHIMS = eINSTANCE.getShimStack_Shims();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.ShimImpl <em>Shim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.ShimImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getShim()
		 * @generated
		 */
		EClass SHIM = eINSTANCE.getShim();

		/**
		 * The meta object literal for the '<em><b>Shim</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHIM__SHIM = eINSTANCE.getShim_Shim();

		/**
		 * The meta object literal for the '<em><b>Loose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM__LOOSE = eINSTANCE.getShim_Loose();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM__COUNT = eINSTANCE.getShim_Count();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.LiftPointImpl <em>Lift Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.LiftPointImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLiftPoint()
		 * @generated
		 */
		EClass LIFT_POINT = eINSTANCE.getLiftPoint();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__POSITION = eINSTANCE.getLiftPoint_Position();

		/**
		 * The meta object literal for the '<em><b>Condition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__CONDITION = eINSTANCE.getLiftPoint_Condition();

		/**
		 * The meta object literal for the '<em><b>Sheet Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__SHEET_THICKNESS = eINSTANCE.getLiftPoint_SheetThickness();

		/**
		 * The meta object literal for the '<em><b>Looked At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__LOOKED_AT = eINSTANCE.getLiftPoint_LookedAt();

		/**
		 * The meta object literal for the '<em><b>Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__CAPACITY = eINSTANCE.getLiftPoint_Capacity();

		/**
		 * The meta object literal for the '<em><b>Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIFT_POINT__BASIS = eINSTANCE.getLiftPoint_Basis();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.WorkPointImpl <em>Work Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.WorkPointImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkPoint()
		 * @generated
		 */
		EClass WORK_POINT = eINSTANCE.getWorkPoint();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_POINT__POSITION = eINSTANCE.getWorkPoint_Position();

		/**
		 * The meta object literal for the '<em><b>Direction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_POINT__DIRECTION = eINSTANCE.getWorkPoint_Direction();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_POINT__KIND = eINSTANCE.getWorkPoint_Kind();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.CutZoneImpl <em>Cut Zone</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.CutZoneImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getCutZone()
		 * @generated
		 */
		EClass CUT_ZONE = eINSTANCE.getCutZone();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_ZONE__LOW = eINSTANCE.getCutZone_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_ZONE__HIGH = eINSTANCE.getCutZone_High();

		/**
		 * The meta object literal for the '<em><b>Planned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_ZONE__PLANNED = eINSTANCE.getCutZone_Planned();

		/**
		 * The meta object literal for the '<em><b>Braces</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CUT_ZONE__BRACES = eINSTANCE.getCutZone_Braces();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.TemporaryLoadImpl <em>Temporary Load</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.TemporaryLoadImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getTemporaryLoad()
		 * @generated
		 */
		EClass TEMPORARY_LOAD = eINSTANCE.getTemporaryLoad();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEMPORARY_LOAD__KIND = eINSTANCE.getTemporaryLoad_Kind();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEMPORARY_LOAD__MASS = eINSTANCE.getTemporaryLoad_Mass();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEMPORARY_LOAD__POSITION = eINSTANCE.getTemporaryLoad_Position();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.BraceImpl <em>Brace</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.BraceImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getBrace()
		 * @generated
		 */
		EClass BRACE = eINSTANCE.getBrace();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRACE__FROM = eINSTANCE.getBrace_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRACE__TO = eINSTANCE.getBrace_To();

		/**
		 * The meta object literal for the '<em><b>Fitted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRACE__FITTED = eINSTANCE.getBrace_Fitted();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.ApertureReadingImpl <em>Aperture Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.ApertureReadingImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getApertureReading()
		 * @generated
		 */
		EClass APERTURE_READING = eINSTANCE.getApertureReading();

		/**
		 * The meta object literal for the '<em><b>Aperture</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APERTURE_READING__APERTURE = eINSTANCE.getApertureReading_Aperture();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APERTURE_READING__AT = eINSTANCE.getApertureReading_At();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APERTURE_READING__BY = eINSTANCE.getApertureReading_By();

		/**
		 * The meta object literal for the '<em><b>Diagonals</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APERTURE_READING__DIAGONALS = eINSTANCE.getApertureReading_Diagonals();

		/**
		 * The meta object literal for the '<em><b>Gaps</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APERTURE_READING__GAPS = eINSTANCE.getApertureReading_Gaps();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.StageImpl <em>Stage</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.StageImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getStage()
		 * @generated
		 */
		EClass STAGE = eINSTANCE.getStage();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STAGE__ON = eINSTANCE.getStage_On();

		/**
		 * The meta object literal for the '<em><b>Loads</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STAGE__LOADS = eINSTANCE.getStage_Loads();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.VisitImpl <em>Visit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.VisitImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getVisit()
		 * @generated
		 */
		EClass VISIT = eINSTANCE.getVisit();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VISIT__STAGE = eINSTANCE.getVisit_Stage();

		/**
		 * The meta object literal for the '<em><b>Setup</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VISIT__SETUP = eINSTANCE.getVisit_Setup();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__FROM = eINSTANCE.getVisit_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__TO = eINSTANCE.getVisit_To();

		/**
		 * The meta object literal for the '<em><b>Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__CURRENT = eINSTANCE.getVisit_Current();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.WeighingImpl <em>Weighing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.WeighingImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWeighing()
		 * @generated
		 */
		EClass WEIGHING = eINSTANCE.getWeighing();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__AT = eINSTANCE.getWeighing_At();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__METHOD = eINSTANCE.getWeighing_Method();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__BY = eINSTANCE.getWeighing_By();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WEIGHING__STAGE = eINSTANCE.getWeighing_Stage();

		/**
		 * The meta object literal for the '<em><b>Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WEIGHING__READINGS = eINSTANCE.getWeighing_Readings();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.impl.WeighingReadingImpl <em>Weighing Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.impl.WeighingReadingImpl
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWeighingReading()
		 * @generated
		 */
		EClass WEIGHING_READING = eINSTANCE.getWeighingReading();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING_READING__POSITION = eINSTANCE.getWeighingReading_Position();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING_READING__MASS = eINSTANCE.getWeighingReading_Mass();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.Construction <em>Construction</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.Construction
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getConstruction()
		 * @generated
		 */
		EEnum CONSTRUCTION = eINSTANCE.getConstruction();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.PieceKind <em>Piece Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.PieceKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPieceKind()
		 * @generated
		 */
		EEnum PIECE_KIND = eINSTANCE.getPieceKind();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.MountState <em>Mount State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.MountState
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMountState()
		 * @generated
		 */
		EEnum MOUNT_STATE = eINSTANCE.getMountState();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.WorkKind <em>Work Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.WorkKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkKind()
		 * @generated
		 */
		EEnum WORK_KIND = eINSTANCE.getWorkKind();

		/**
		 * The meta object literal for the '{@link cradlewright.model.vehicle.LoadKind <em>Load Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.LoadKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLoadKind()
		 * @generated
		 */
		EEnum LOAD_KIND = eINSTANCE.getLoadKind();

		/**
		 * The meta object literal for the '<em>Construction Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.Construction
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getConstructionObject()
		 * @generated
		 */
		EDataType CONSTRUCTION_OBJECT = eINSTANCE.getConstructionObject();

		/**
		 * The meta object literal for the '<em>Piece Kind Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.PieceKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getPieceKindObject()
		 * @generated
		 */
		EDataType PIECE_KIND_OBJECT = eINSTANCE.getPieceKindObject();

		/**
		 * The meta object literal for the '<em>Mount State Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.MountState
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getMountStateObject()
		 * @generated
		 */
		EDataType MOUNT_STATE_OBJECT = eINSTANCE.getMountStateObject();

		/**
		 * The meta object literal for the '<em>Work Kind Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.WorkKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getWorkKindObject()
		 * @generated
		 */
		EDataType WORK_KIND_OBJECT = eINSTANCE.getWorkKindObject();

		/**
		 * The meta object literal for the '<em>Load Kind Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.vehicle.LoadKind
		 * @see cradlewright.model.vehicle.impl.VehiclePackageImpl#getLoadKindObject()
		 * @generated
		 */
		EDataType LOAD_KIND_OBJECT = eINSTANCE.getLoadKindObject();

	}

} //VehiclePackage
