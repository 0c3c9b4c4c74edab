/**
 */
package cradlewright.model.base;

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
 * What every file of a shop shares: data types, names and the settings of the shop.
 * <!-- end-model-doc -->
 * @see cradlewright.model.base.BaseFactory
 * @model kind="package"
 * @generated
 */
public interface BasePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "base";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:cradlewright:base";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "base";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	BasePackage eINSTANCE = cradlewright.model.base.impl.BasePackageImpl.init();

	/**
	 * The meta object id for the '{@link cradlewright.model.base.FileRoot <em>File Root</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.FileRoot
	 * @see cradlewright.model.base.impl.BasePackageImpl#getFileRoot()
	 * @generated
	 */
	int FILE_ROOT = 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILE_ROOT__SCHEMA = 0;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILE_ROOT__DRAFT = 1;

	/**
	 * The number of structural features of the '<em>File Root</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILE_ROOT_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.impl.IdentifiedImpl <em>Identified</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.impl.IdentifiedImpl
	 * @see cradlewright.model.base.impl.BasePackageImpl#getIdentified()
	 * @generated
	 */
	int IDENTIFIED = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED__ID = 0;

	/**
	 * The number of structural features of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.impl.NamedImpl <em>Named</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.impl.NamedImpl
	 * @see cradlewright.model.base.impl.BasePackageImpl#getNamed()
	 * @generated
	 */
	int NAMED = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NOTE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.impl.ExaminedImpl <em>Examined</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.impl.ExaminedImpl
	 * @see cradlewright.model.base.impl.BasePackageImpl#getExamined()
	 * @generated
	 */
	int EXAMINED = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Tag</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__TAG = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Last Examined</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__LAST_EXAMINED = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Examination Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED__EXAMINATION_DUE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Examined</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXAMINED_FEATURE_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.impl.ShopImpl <em>Shop</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.impl.ShopImpl
	 * @see cradlewright.model.base.impl.BasePackageImpl#getShop()
	 * @generated
	 */
	int SHOP = 4;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__SCHEMA = FILE_ROOT__SCHEMA;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__DRAFT = FILE_ROOT__DRAFT;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__ID = FILE_ROOT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__NAME = FILE_ROOT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__NOTE = FILE_ROOT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__ZONE = FILE_ROOT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__UNITS = FILE_ROOT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP__SETTINGS = FILE_ROOT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Shop</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHOP_FEATURE_COUNT = FILE_ROOT_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.impl.SettingsImpl <em>Settings</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.impl.SettingsImpl
	 * @see cradlewright.model.base.impl.BasePackageImpl#getSettings()
	 * @generated
	 */
	int SETTINGS = 5;

	/**
	 * The feature id for the '<em><b>Person Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__PERSON_MASS = 0;

	/**
	 * The feature id for the '<em><b>Lean Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__LEAN_FORCE = 1;

	/**
	 * The feature id for the '<em><b>Bar Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__BAR_FORCE = 2;

	/**
	 * The feature id for the '<em><b>Required Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__REQUIRED_RATIO = 3;

	/**
	 * The feature id for the '<em><b>Tight Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__TIGHT_MARGIN = 4;

	/**
	 * The feature id for the '<em><b>Joint Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__JOINT_FACTOR = 5;

	/**
	 * The feature id for the '<em><b>Step Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__STEP_HEIGHT = 6;

	/**
	 * The feature id for the '<em><b>Floor Unevenness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__FLOOR_UNEVENNESS = 7;

	/**
	 * The feature id for the '<em><b>Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__SLOPE = 8;

	/**
	 * The feature id for the '<em><b>Walking Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__WALKING_SPEED = 9;

	/**
	 * The feature id for the '<em><b>Friction Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__FRICTION_LOW = 10;

	/**
	 * The feature id for the '<em><b>Friction High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__FRICTION_HIGH = 11;

	/**
	 * The feature id for the '<em><b>Storing Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__STORING_TOLERANCE = 12;

	/**
	 * The feature id for the '<em><b>Working Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__WORKING_TOLERANCE = 13;

	/**
	 * The feature id for the '<em><b>Welding Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS__WELDING_TOLERANCE = 14;

	/**
	 * The number of structural features of the '<em>Settings</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTINGS_FEATURE_COUNT = 15;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.Units <em>Units</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Units
	 * @see cradlewright.model.base.impl.BasePackageImpl#getUnits()
	 * @generated
	 */
	int UNITS = 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.Condition <em>Condition</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Condition
	 * @see cradlewright.model.base.impl.BasePackageImpl#getCondition()
	 * @generated
	 */
	int CONDITION = 7;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.Hold <em>Hold</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Hold
	 * @see cradlewright.model.base.impl.BasePackageImpl#getHold()
	 * @generated
	 */
	int HOLD = 8;

	/**
	 * The meta object id for the '{@link cradlewright.model.base.Basis <em>Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Basis
	 * @see cradlewright.model.base.impl.BasePackageImpl#getBasis()
	 * @generated
	 */
	int BASIS = 9;

	/**
	 * The meta object id for the '<em>Mass</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getMass()
	 * @generated
	 */
	int MASS = 10;

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 11;

	/**
	 * The meta object id for the '<em>Force</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getForce()
	 * @generated
	 */
	int FORCE = 12;

	/**
	 * The meta object id for the '<em>Moment</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getMoment()
	 * @generated
	 */
	int MOMENT = 13;

	/**
	 * The meta object id for the '<em>Stress</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getStress()
	 * @generated
	 */
	int STRESS = 14;

	/**
	 * The meta object id for the '<em>Stiffness</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getStiffness()
	 * @generated
	 */
	int STIFFNESS = 15;

	/**
	 * The meta object id for the '<em>Torsional Stiffness</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getTorsionalStiffness()
	 * @generated
	 */
	int TORSIONAL_STIFFNESS = 16;

	/**
	 * The meta object id for the '<em>Bending Stiffness</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getBendingStiffness()
	 * @generated
	 */
	int BENDING_STIFFNESS = 17;

	/**
	 * The meta object id for the '<em>Angle</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getAngle()
	 * @generated
	 */
	int ANGLE = 18;

	/**
	 * The meta object id for the '<em>Hours</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getHours()
	 * @generated
	 */
	int HOURS = 19;

	/**
	 * The meta object id for the '<em>Ratio</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getRatio()
	 * @generated
	 */
	int RATIO = 20;

	/**
	 * The meta object id for the '<em>Temperature</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getTemperature()
	 * @generated
	 */
	int TEMPERATURE = 21;

	/**
	 * The meta object id for the '<em>Density</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getDensity()
	 * @generated
	 */
	int DENSITY = 22;

	/**
	 * The meta object id for the '<em>Subgrade Modulus</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getSubgradeModulus()
	 * @generated
	 */
	int SUBGRADE_MODULUS = 23;

	/**
	 * The meta object id for the '<em>Speed</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getSpeed()
	 * @generated
	 */
	int SPEED = 24;

	/**
	 * The meta object id for the '<em>Area</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Measured
	 * @see cradlewright.model.base.impl.BasePackageImpl#getArea()
	 * @generated
	 */
	int AREA = 25;

	/**
	 * The meta object id for the '<em>Position</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Position
	 * @see cradlewright.model.base.impl.BasePackageImpl#getPosition()
	 * @generated
	 */
	int POSITION = 26;

	/**
	 * The meta object id for the '<em>Direction</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.quantity.Direction
	 * @see cradlewright.model.base.impl.BasePackageImpl#getDirection()
	 * @generated
	 */
	int DIRECTION = 27;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see cradlewright.model.base.impl.BasePackageImpl#getDate()
	 * @generated
	 */
	int DATE = 28;

	/**
	 * The meta object id for the '<em>Local Moment</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDateTime
	 * @see cradlewright.model.base.impl.BasePackageImpl#getLocalMoment()
	 * @generated
	 */
	int LOCAL_MOMENT = 29;

	/**
	 * The meta object id for the '<em>Id</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.lang.String
	 * @see cradlewright.model.base.impl.BasePackageImpl#getId()
	 * @generated
	 */
	int ID = 30;

	/**
	 * The meta object id for the '<em>Units Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Units
	 * @see cradlewright.model.base.impl.BasePackageImpl#getUnitsObject()
	 * @generated
	 */
	int UNITS_OBJECT = 31;

	/**
	 * The meta object id for the '<em>Condition Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Condition
	 * @see cradlewright.model.base.impl.BasePackageImpl#getConditionObject()
	 * @generated
	 */
	int CONDITION_OBJECT = 32;

	/**
	 * The meta object id for the '<em>Hold Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Hold
	 * @see cradlewright.model.base.impl.BasePackageImpl#getHoldObject()
	 * @generated
	 */
	int HOLD_OBJECT = 33;

	/**
	 * The meta object id for the '<em>Basis Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.base.Basis
	 * @see cradlewright.model.base.impl.BasePackageImpl#getBasisObject()
	 * @generated
	 */
	int BASIS_OBJECT = 34;


	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.FileRoot <em>File Root</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>File Root</em>'.
	 * @see cradlewright.model.base.FileRoot
	 * @generated
	 */
	EClass getFileRoot();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.FileRoot#getSchema <em>Schema</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Schema</em>'.
	 * @see cradlewright.model.base.FileRoot#getSchema()
	 * @see #getFileRoot()
	 * @generated
	 */
	EAttribute getFileRoot_Schema();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.FileRoot#isDraft <em>Draft</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Draft</em>'.
	 * @see cradlewright.model.base.FileRoot#isDraft()
	 * @see #getFileRoot()
	 * @generated
	 */
	EAttribute getFileRoot_Draft();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Identified</em>'.
	 * @see cradlewright.model.base.Identified
	 * @generated
	 */
	EClass getIdentified();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Identified#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see cradlewright.model.base.Identified#getId()
	 * @see #getIdentified()
	 * @generated
	 */
	EAttribute getIdentified_Id();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Named</em>'.
	 * @see cradlewright.model.base.Named
	 * @generated
	 */
	EClass getNamed();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Named#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see cradlewright.model.base.Named#getName()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Name();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Named#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see cradlewright.model.base.Named#getNote()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Note();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.Examined <em>Examined</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Examined</em>'.
	 * @see cradlewright.model.base.Examined
	 * @generated
	 */
	EClass getExamined();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Examined#getTag <em>Tag</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tag</em>'.
	 * @see cradlewright.model.base.Examined#getTag()
	 * @see #getExamined()
	 * @generated
	 */
	EAttribute getExamined_Tag();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Examined#getLastExamined <em>Last Examined</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Examined</em>'.
	 * @see cradlewright.model.base.Examined#getLastExamined()
	 * @see #getExamined()
	 * @generated
	 */
	EAttribute getExamined_LastExamined();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Examined#getExaminationDue <em>Examination Due</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Examination Due</em>'.
	 * @see cradlewright.model.base.Examined#getExaminationDue()
	 * @see #getExamined()
	 * @generated
	 */
	EAttribute getExamined_ExaminationDue();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.Shop <em>Shop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shop</em>'.
	 * @see cradlewright.model.base.Shop
	 * @generated
	 */
	EClass getShop();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Shop#getZone <em>Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Zone</em>'.
	 * @see cradlewright.model.base.Shop#getZone()
	 * @see #getShop()
	 * @generated
	 */
	EAttribute getShop_Zone();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Shop#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Units</em>'.
	 * @see cradlewright.model.base.Shop#getUnits()
	 * @see #getShop()
	 * @generated
	 */
	EAttribute getShop_Units();

	/**
	 * Returns the meta object for the containment reference '{@link cradlewright.model.base.Shop#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Settings</em>'.
	 * @see cradlewright.model.base.Shop#getSettings()
	 * @see #getShop()
	 * @generated
	 */
	EReference getShop_Settings();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.base.Settings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Settings</em>'.
	 * @see cradlewright.model.base.Settings
	 * @generated
	 */
	EClass getSettings();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getPersonMass <em>Person Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person Mass</em>'.
	 * @see cradlewright.model.base.Settings#getPersonMass()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_PersonMass();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getLeanForce <em>Lean Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lean Force</em>'.
	 * @see cradlewright.model.base.Settings#getLeanForce()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_LeanForce();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getBarForce <em>Bar Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bar Force</em>'.
	 * @see cradlewright.model.base.Settings#getBarForce()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_BarForce();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getRequiredRatio <em>Required Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Required Ratio</em>'.
	 * @see cradlewright.model.base.Settings#getRequiredRatio()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_RequiredRatio();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getTightMargin <em>Tight Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tight Margin</em>'.
	 * @see cradlewright.model.base.Settings#getTightMargin()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_TightMargin();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getJointFactor <em>Joint Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Joint Factor</em>'.
	 * @see cradlewright.model.base.Settings#getJointFactor()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_JointFactor();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getStepHeight <em>Step Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Step Height</em>'.
	 * @see cradlewright.model.base.Settings#getStepHeight()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_StepHeight();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getFloorUnevenness <em>Floor Unevenness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Floor Unevenness</em>'.
	 * @see cradlewright.model.base.Settings#getFloorUnevenness()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_FloorUnevenness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getSlope <em>Slope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope</em>'.
	 * @see cradlewright.model.base.Settings#getSlope()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_Slope();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getWalkingSpeed <em>Walking Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Walking Speed</em>'.
	 * @see cradlewright.model.base.Settings#getWalkingSpeed()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_WalkingSpeed();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getFrictionLow <em>Friction Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Friction Low</em>'.
	 * @see cradlewright.model.base.Settings#getFrictionLow()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_FrictionLow();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getFrictionHigh <em>Friction High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Friction High</em>'.
	 * @see cradlewright.model.base.Settings#getFrictionHigh()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_FrictionHigh();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getStoringTolerance <em>Storing Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Storing Tolerance</em>'.
	 * @see cradlewright.model.base.Settings#getStoringTolerance()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_StoringTolerance();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getWorkingTolerance <em>Working Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Tolerance</em>'.
	 * @see cradlewright.model.base.Settings#getWorkingTolerance()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_WorkingTolerance();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.base.Settings#getWeldingTolerance <em>Welding Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Welding Tolerance</em>'.
	 * @see cradlewright.model.base.Settings#getWeldingTolerance()
	 * @see #getSettings()
	 * @generated
	 */
	EAttribute getSettings_WeldingTolerance();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.base.Units <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Units</em>'.
	 * @see cradlewright.model.base.Units
	 * @generated
	 */
	EEnum getUnits();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.base.Condition <em>Condition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Condition</em>'.
	 * @see cradlewright.model.base.Condition
	 * @generated
	 */
	EEnum getCondition();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.base.Hold <em>Hold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hold</em>'.
	 * @see cradlewright.model.base.Hold
	 * @generated
	 */
	EEnum getHold();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.base.Basis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Basis</em>'.
	 * @see cradlewright.model.base.Basis
	 * @generated
	 */
	EEnum getBasis();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * How much there is of a thing, in kg.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Mass</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='MASS' most='100000'"
	 * @generated
	 */
	EDataType getMass();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Length, width, height, thickness or gap, in mm.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='LENGTH' most='1000000'"
	 * @generated
	 */
	EDataType getLength();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Push, pull or weight as a force, in N.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Force</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='FORCE' most='10000000'"
	 * @generated
	 */
	EDataType getForce();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Moment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Force times lever arm, in N*m.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Moment</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='MOMENT' most='100000000'"
	 * @generated
	 */
	EDataType getMoment();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Stress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Force on an area, or a modulus of elasticity, in MPa.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Stress</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='STRESS' most='1000000'"
	 * @generated
	 */
	EDataType getStress();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Force per length of give, in N/m.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Stiffness</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='STIFFNESS' most='1000000000000'"
	 * @generated
	 */
	EDataType getStiffness();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Torsional Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Moment per angle of twist, in N*m/deg.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Torsional Stiffness</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='TORSIONAL_STIFFNESS' most='1000000000'"
	 * @generated
	 */
	EDataType getTorsionalStiffness();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Bending Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Modulus of elasticity times second moment of area, in N*m2.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Bending Stiffness</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='BENDING_STIFFNESS' most='1000000000000'"
	 * @generated
	 */
	EDataType getBendingStiffness();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Plane angle in degrees.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Angle</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='ANGLE' most='360'"
	 * @generated
	 */
	EDataType getAngle();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Work time in hours.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Hours</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='TIME' most='100000'"
	 * @generated
	 */
	EDataType getHours();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A number without a unit.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Ratio</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='RATIO' most='10000'"
	 * @generated
	 */
	EDataType getRatio();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Temperature in degrees Celsius.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Temperature</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='TEMPERATURE' most='2000'"
	 * @generated
	 */
	EDataType getTemperature();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Mass per volume in kg/m3.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Density</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='DENSITY' most='30000'"
	 * @generated
	 */
	EDataType getDensity();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Subgrade Modulus</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Pressure of the ground per depth of sinking in, in N/mm3.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Subgrade Modulus</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='SUBGRADE_MODULUS' most='1000'"
	 * @generated
	 */
	EDataType getSubgradeModulus();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Length per time in m/s.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Speed</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='SPEED' most='100'"
	 * @generated
	 */
	EDataType getSpeed();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Measured <em>Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Length times length in mm2.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Area</em>'.
	 * @see cradlewright.quantity.Measured
	 * @model instanceClass="cradlewright.quantity.Measured"
	 *        annotation="urn:cradlewright:rules dimension='AREA' most='1000000000'"
	 * @generated
	 */
	EDataType getArea();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Position <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A point in mm: x rearward, y to the right, z up.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Position</em>'.
	 * @see cradlewright.quantity.Position
	 * @model instanceClass="cradlewright.quantity.Position"
	 *        annotation="urn:cradlewright:rules most='1000000'"
	 * @generated
	 */
	EDataType getPosition();

	/**
	 * Returns the meta object for data type '{@link cradlewright.quantity.Direction <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A direction by its three components; the length does not matter.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Direction</em>'.
	 * @see cradlewright.quantity.Direction
	 * @model instanceClass="cradlewright.quantity.Direction"
	 * @generated
	 */
	EDataType getDirection();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A calendar day.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 * @generated
	 */
	EDataType getDate();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDateTime <em>Local Moment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A day with the time on the clock of the shop.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Local Moment</em>'.
	 * @see java.time.LocalDateTime
	 * @model instanceClass="java.time.LocalDateTime"
	 * @generated
	 */
	EDataType getLocalMoment();

	/**
	 * Returns the meta object for data type '{@link java.lang.String <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * At least 60 random bits as text, unique in the shop, never made from a name.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Id</em>'.
	 * @see java.lang.String
	 * @model instanceClass="java.lang.String"
	 * @generated
	 */
	EDataType getId();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.base.Units <em>Units Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Units, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Units Object</em>'.
	 * @see cradlewright.model.base.Units
	 * @model instanceClass="cradlewright.model.base.Units"
	 *        extendedMetaData="name='Units:Object' baseType='Units'"
	 * @generated
	 */
	EDataType getUnitsObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.base.Condition <em>Condition Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Condition, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Condition Object</em>'.
	 * @see cradlewright.model.base.Condition
	 * @model instanceClass="cradlewright.model.base.Condition"
	 *        extendedMetaData="name='Condition:Object' baseType='Condition'"
	 * @generated
	 */
	EDataType getConditionObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.base.Hold <em>Hold Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Hold, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Hold Object</em>'.
	 * @see cradlewright.model.base.Hold
	 * @model instanceClass="cradlewright.model.base.Hold"
	 *        extendedMetaData="name='Hold:Object' baseType='Hold'"
	 * @generated
	 */
	EDataType getHoldObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.base.Basis <em>Basis Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Basis, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Basis Object</em>'.
	 * @see cradlewright.model.base.Basis
	 * @model instanceClass="cradlewright.model.base.Basis"
	 *        extendedMetaData="name='Basis:Object' baseType='Basis'"
	 * @generated
	 */
	EDataType getBasisObject();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	BaseFactory getBaseFactory();

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
		 * The meta object literal for the '{@link cradlewright.model.base.FileRoot <em>File Root</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.FileRoot
		 * @see cradlewright.model.base.impl.BasePackageImpl#getFileRoot()
		 * @generated
		 */
		EClass FILE_ROOT = eINSTANCE.getFileRoot();

		/**
		 * The meta object literal for the '<em><b>Schema</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILE_ROOT__SCHEMA = eINSTANCE.getFileRoot_Schema();

		/**
		 * The meta object literal for the '<em><b>Draft</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILE_ROOT__DRAFT = eINSTANCE.getFileRoot_Draft();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.impl.IdentifiedImpl <em>Identified</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.impl.IdentifiedImpl
		 * @see cradlewright.model.base.impl.BasePackageImpl#getIdentified()
		 * @generated
		 */
		EClass IDENTIFIED = eINSTANCE.getIdentified();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IDENTIFIED__ID = eINSTANCE.getIdentified_Id();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.impl.NamedImpl <em>Named</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.impl.NamedImpl
		 * @see cradlewright.model.base.impl.BasePackageImpl#getNamed()
		 * @generated
		 */
		EClass NAMED = eINSTANCE.getNamed();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NAME = eINSTANCE.getNamed_Name();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NOTE = eINSTANCE.getNamed_Note();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.impl.ExaminedImpl <em>Examined</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.impl.ExaminedImpl
		 * @see cradlewright.model.base.impl.BasePackageImpl#getExamined()
		 * @generated
		 */
		EClass EXAMINED = eINSTANCE.getExamined();

		/**
		 * The meta object literal for the '<em><b>Tag</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXAMINED__TAG = eINSTANCE.getExamined_Tag();

		/**
		 * The meta object literal for the '<em><b>Last Examined</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXAMINED__LAST_EXAMINED = eINSTANCE.getExamined_LastExamined();

		/**
		 * The meta object literal for the '<em><b>Examination Due</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXAMINED__EXAMINATION_DUE = eINSTANCE.getExamined_ExaminationDue();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.impl.ShopImpl <em>Shop</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.impl.ShopImpl
		 * @see cradlewright.model.base.impl.BasePackageImpl#getShop()
		 * @generated
		 */
		EClass SHOP = eINSTANCE.getShop();

		/**
		 * The meta object literal for the '<em><b>Zone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHOP__ZONE = eINSTANCE.getShop_Zone();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHOP__UNITS = eINSTANCE.getShop_Units();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHOP__SETTINGS = eINSTANCE.getShop_Settings();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.impl.SettingsImpl <em>Settings</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.impl.SettingsImpl
		 * @see cradlewright.model.base.impl.BasePackageImpl#getSettings()
		 * @generated
		 */
		EClass SETTINGS = eINSTANCE.getSettings();

		/**
		 * The meta object literal for the '<em><b>Person Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__PERSON_MASS = eINSTANCE.getSettings_PersonMass();

		/**
		 * The meta object literal for the '<em><b>Lean Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__LEAN_FORCE = eINSTANCE.getSettings_LeanForce();

		/**
		 * The meta object literal for the '<em><b>Bar Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__BAR_FORCE = eINSTANCE.getSettings_BarForce();

		/**
		 * The meta object literal for the '<em><b>Required Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__REQUIRED_RATIO = eINSTANCE.getSettings_RequiredRatio();

		/**
		 * The meta object literal for the '<em><b>Tight Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__TIGHT_MARGIN = eINSTANCE.getSettings_TightMargin();

		/**
		 * The meta object literal for the '<em><b>Joint Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__JOINT_FACTOR = eINSTANCE.getSettings_JointFactor();

		/**
		 * The meta object literal for the '<em><b>Step Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__STEP_HEIGHT = eINSTANCE.getSettings_StepHeight();

		/**
		 * The meta object literal for the '<em><b>Floor Unevenness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__FLOOR_UNEVENNESS = eINSTANCE.getSettings_FloorUnevenness();

		/**
		 * The meta object literal for the '<em><b>Slope</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__SLOPE = eINSTANCE.getSettings_Slope();

		/**
		 * The meta object literal for the '<em><b>Walking Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__WALKING_SPEED = eINSTANCE.getSettings_WalkingSpeed();

		/**
		 * The meta object literal for the '<em><b>Friction Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__FRICTION_LOW = eINSTANCE.getSettings_FrictionLow();

		/**
		 * The meta object literal for the '<em><b>Friction High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__FRICTION_HIGH = eINSTANCE.getSettings_FrictionHigh();

		/**
		 * The meta object literal for the '<em><b>Storing Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__STORING_TOLERANCE = eINSTANCE.getSettings_StoringTolerance();

		/**
		 * The meta object literal for the '<em><b>Working Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__WORKING_TOLERANCE = eINSTANCE.getSettings_WorkingTolerance();

		/**
		 * The meta object literal for the '<em><b>Welding Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTINGS__WELDING_TOLERANCE = eINSTANCE.getSettings_WeldingTolerance();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.Units <em>Units</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Units
		 * @see cradlewright.model.base.impl.BasePackageImpl#getUnits()
		 * @generated
		 */
		EEnum UNITS = eINSTANCE.getUnits();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.Condition <em>Condition</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Condition
		 * @see cradlewright.model.base.impl.BasePackageImpl#getCondition()
		 * @generated
		 */
		EEnum CONDITION = eINSTANCE.getCondition();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.Hold <em>Hold</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Hold
		 * @see cradlewright.model.base.impl.BasePackageImpl#getHold()
		 * @generated
		 */
		EEnum HOLD = eINSTANCE.getHold();

		/**
		 * The meta object literal for the '{@link cradlewright.model.base.Basis <em>Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Basis
		 * @see cradlewright.model.base.impl.BasePackageImpl#getBasis()
		 * @generated
		 */
		EEnum BASIS = eINSTANCE.getBasis();

		/**
		 * The meta object literal for the '<em>Mass</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getMass()
		 * @generated
		 */
		EDataType MASS = eINSTANCE.getMass();

		/**
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

		/**
		 * The meta object literal for the '<em>Force</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getForce()
		 * @generated
		 */
		EDataType FORCE = eINSTANCE.getForce();

		/**
		 * The meta object literal for the '<em>Moment</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getMoment()
		 * @generated
		 */
		EDataType MOMENT = eINSTANCE.getMoment();

		/**
		 * The meta object literal for the '<em>Stress</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getStress()
		 * @generated
		 */
		EDataType STRESS = eINSTANCE.getStress();

		/**
		 * The meta object literal for the '<em>Stiffness</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getStiffness()
		 * @generated
		 */
		EDataType STIFFNESS = eINSTANCE.getStiffness();

		/**
		 * The meta object literal for the '<em>Torsional Stiffness</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getTorsionalStiffness()
		 * @generated
		 */
		EDataType TORSIONAL_STIFFNESS = eINSTANCE.getTorsionalStiffness();

		/**
		 * The meta object literal for the '<em>Bending Stiffness</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getBendingStiffness()
		 * @generated
		 */
		EDataType BENDING_STIFFNESS = eINSTANCE.getBendingStiffness();

		/**
		 * The meta object literal for the '<em>Angle</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getAngle()
		 * @generated
		 */
		EDataType ANGLE = eINSTANCE.getAngle();

		/**
		 * The meta object literal for the '<em>Hours</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getHours()
		 * @generated
		 */
		EDataType HOURS = eINSTANCE.getHours();

		/**
		 * The meta object literal for the '<em>Ratio</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getRatio()
		 * @generated
		 */
		EDataType RATIO = eINSTANCE.getRatio();

		/**
		 * The meta object literal for the '<em>Temperature</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getTemperature()
		 * @generated
		 */
		EDataType TEMPERATURE = eINSTANCE.getTemperature();

		/**
		 * The meta object literal for the '<em>Density</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getDensity()
		 * @generated
		 */
		EDataType DENSITY = eINSTANCE.getDensity();

		/**
		 * The meta object literal for the '<em>Subgrade Modulus</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getSubgradeModulus()
		 * @generated
		 */
		EDataType SUBGRADE_MODULUS = eINSTANCE.getSubgradeModulus();

		/**
		 * The meta object literal for the '<em>Speed</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getSpeed()
		 * @generated
		 */
		EDataType SPEED = eINSTANCE.getSpeed();

		/**
		 * The meta object literal for the '<em>Area</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Measured
		 * @see cradlewright.model.base.impl.BasePackageImpl#getArea()
		 * @generated
		 */
		EDataType AREA = eINSTANCE.getArea();

		/**
		 * The meta object literal for the '<em>Position</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Position
		 * @see cradlewright.model.base.impl.BasePackageImpl#getPosition()
		 * @generated
		 */
		EDataType POSITION = eINSTANCE.getPosition();

		/**
		 * The meta object literal for the '<em>Direction</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.quantity.Direction
		 * @see cradlewright.model.base.impl.BasePackageImpl#getDirection()
		 * @generated
		 */
		EDataType DIRECTION = eINSTANCE.getDirection();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see cradlewright.model.base.impl.BasePackageImpl#getDate()
		 * @generated
		 */
		EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Local Moment</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDateTime
		 * @see cradlewright.model.base.impl.BasePackageImpl#getLocalMoment()
		 * @generated
		 */
		EDataType LOCAL_MOMENT = eINSTANCE.getLocalMoment();

		/**
		 * The meta object literal for the '<em>Id</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.lang.String
		 * @see cradlewright.model.base.impl.BasePackageImpl#getId()
		 * @generated
		 */
		EDataType ID = eINSTANCE.getId();

		/**
		 * The meta object literal for the '<em>Units Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Units
		 * @see cradlewright.model.base.impl.BasePackageImpl#getUnitsObject()
		 * @generated
		 */
		EDataType UNITS_OBJECT = eINSTANCE.getUnitsObject();

		/**
		 * The meta object literal for the '<em>Condition Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Condition
		 * @see cradlewright.model.base.impl.BasePackageImpl#getConditionObject()
		 * @generated
		 */
		EDataType CONDITION_OBJECT = eINSTANCE.getConditionObject();

		/**
		 * The meta object literal for the '<em>Hold Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Hold
		 * @see cradlewright.model.base.impl.BasePackageImpl#getHoldObject()
		 * @generated
		 */
		EDataType HOLD_OBJECT = eINSTANCE.getHoldObject();

		/**
		 * The meta object literal for the '<em>Basis Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.base.Basis
		 * @see cradlewright.model.base.impl.BasePackageImpl#getBasisObject()
		 * @generated
		 */
		EDataType BASIS_OBJECT = eINSTANCE.getBasisObject();

	}

} //BasePackage
