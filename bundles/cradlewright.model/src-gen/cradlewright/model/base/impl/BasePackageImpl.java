/**
 */
package cradlewright.model.base.impl;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Basis;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Examined;
import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Hold;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import cradlewright.model.base.Settings;
import cradlewright.model.base.Shop;
import cradlewright.model.base.Units;

import cradlewright.model.fixture.FixturePackage;

import cradlewright.model.fixture.impl.FixturePackageImpl;

import cradlewright.model.floor.FloorPackage;

import cradlewright.model.floor.impl.FloorPackageImpl;

import cradlewright.model.job.JobPackage;

import cradlewright.model.job.impl.JobPackageImpl;

import cradlewright.model.stock.StockPackage;

import cradlewright.model.stock.impl.StockPackageImpl;

import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.model.vehicle.impl.VehiclePackageImpl;

import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.time.LocalDate;
import java.time.LocalDateTime;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class BasePackageImpl extends EPackageImpl implements BasePackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fileRootEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass identifiedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass namedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass examinedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shopEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass settingsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum unitsEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum conditionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum holdEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum basisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType massEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType forceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType momentEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType stressEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType stiffnessEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType torsionalStiffnessEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType bendingStiffnessEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType angleEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType hoursEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType ratioEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType temperatureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType densityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType subgradeModulusEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType speedEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType areaEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType positionEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType directionEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType localMomentEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType idEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType unitsObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType conditionObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType holdObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType basisObjectEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see cradlewright.model.base.BasePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private BasePackageImpl() {
		super(eNS_URI, BaseFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link BasePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static BasePackage init() {
		if (isInited) return (BasePackage)EPackage.Registry.INSTANCE.getEPackage(BasePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredBasePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		BasePackageImpl theBasePackage = registeredBasePackage instanceof BasePackageImpl ? (BasePackageImpl)registeredBasePackage : new BasePackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(StockPackage.eNS_URI);
		StockPackageImpl theStockPackage = (StockPackageImpl)(registeredPackage instanceof StockPackageImpl ? registeredPackage : StockPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(VehiclePackage.eNS_URI);
		VehiclePackageImpl theVehiclePackage = (VehiclePackageImpl)(registeredPackage instanceof VehiclePackageImpl ? registeredPackage : VehiclePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FixturePackage.eNS_URI);
		FixturePackageImpl theFixturePackage = (FixturePackageImpl)(registeredPackage instanceof FixturePackageImpl ? registeredPackage : FixturePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FloorPackage.eNS_URI);
		FloorPackageImpl theFloorPackage = (FloorPackageImpl)(registeredPackage instanceof FloorPackageImpl ? registeredPackage : FloorPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(JobPackage.eNS_URI);
		JobPackageImpl theJobPackage = (JobPackageImpl)(registeredPackage instanceof JobPackageImpl ? registeredPackage : JobPackage.eINSTANCE);

		// Create package meta-data objects
		theBasePackage.createPackageContents();
		theStockPackage.createPackageContents();
		theVehiclePackage.createPackageContents();
		theFixturePackage.createPackageContents();
		theFloorPackage.createPackageContents();
		theJobPackage.createPackageContents();

		// Initialize created meta-data
		theBasePackage.initializePackageContents();
		theStockPackage.initializePackageContents();
		theVehiclePackage.initializePackageContents();
		theFixturePackage.initializePackageContents();
		theFloorPackage.initializePackageContents();
		theJobPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theBasePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(BasePackage.eNS_URI, theBasePackage);
		return theBasePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFileRoot() {
		return fileRootEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFileRoot_Schema() {
		return (EAttribute)fileRootEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFileRoot_Draft() {
		return (EAttribute)fileRootEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIdentified() {
		return identifiedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIdentified_Id() {
		return (EAttribute)identifiedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNamed() {
		return namedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Name() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Note() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExamined() {
		return examinedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExamined_Tag() {
		return (EAttribute)examinedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExamined_LastExamined() {
		return (EAttribute)examinedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExamined_ExaminationDue() {
		return (EAttribute)examinedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShop() {
		return shopEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShop_Zone() {
		return (EAttribute)shopEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShop_Units() {
		return (EAttribute)shopEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShop_Settings() {
		return (EReference)shopEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSettings() {
		return settingsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_PersonMass() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_LeanForce() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_BarForce() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_RequiredRatio() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_TightMargin() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_JointFactor() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_StepHeight() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_FloorUnevenness() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_Slope() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_WalkingSpeed() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_FrictionLow() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_FrictionHigh() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_StoringTolerance() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_WorkingTolerance() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSettings_WeldingTolerance() {
		return (EAttribute)settingsEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getUnits() {
		return unitsEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCondition() {
		return conditionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHold() {
		return holdEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBasis() {
		return basisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMass() {
		return massEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLength() {
		return lengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getForce() {
		return forceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMoment() {
		return momentEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getStress() {
		return stressEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getStiffness() {
		return stiffnessEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTorsionalStiffness() {
		return torsionalStiffnessEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getBendingStiffness() {
		return bendingStiffnessEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getAngle() {
		return angleEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getHours() {
		return hoursEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRatio() {
		return ratioEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTemperature() {
		return temperatureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDensity() {
		return densityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSubgradeModulus() {
		return subgradeModulusEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSpeed() {
		return speedEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getArea() {
		return areaEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPosition() {
		return positionEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDirection() {
		return directionEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDate() {
		return dateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLocalMoment() {
		return localMomentEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getId() {
		return idEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getUnitsObject() {
		return unitsObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getConditionObject() {
		return conditionObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getHoldObject() {
		return holdObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getBasisObject() {
		return basisObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BaseFactory getBaseFactory() {
		return (BaseFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		fileRootEClass = createEClass(FILE_ROOT);
		createEAttribute(fileRootEClass, FILE_ROOT__SCHEMA);
		createEAttribute(fileRootEClass, FILE_ROOT__DRAFT);

		identifiedEClass = createEClass(IDENTIFIED);
		createEAttribute(identifiedEClass, IDENTIFIED__ID);

		namedEClass = createEClass(NAMED);
		createEAttribute(namedEClass, NAMED__NAME);
		createEAttribute(namedEClass, NAMED__NOTE);

		examinedEClass = createEClass(EXAMINED);
		createEAttribute(examinedEClass, EXAMINED__TAG);
		createEAttribute(examinedEClass, EXAMINED__LAST_EXAMINED);
		createEAttribute(examinedEClass, EXAMINED__EXAMINATION_DUE);

		shopEClass = createEClass(SHOP);
		createEAttribute(shopEClass, SHOP__ZONE);
		createEAttribute(shopEClass, SHOP__UNITS);
		createEReference(shopEClass, SHOP__SETTINGS);

		settingsEClass = createEClass(SETTINGS);
		createEAttribute(settingsEClass, SETTINGS__PERSON_MASS);
		createEAttribute(settingsEClass, SETTINGS__LEAN_FORCE);
		createEAttribute(settingsEClass, SETTINGS__BAR_FORCE);
		createEAttribute(settingsEClass, SETTINGS__REQUIRED_RATIO);
		createEAttribute(settingsEClass, SETTINGS__TIGHT_MARGIN);
		createEAttribute(settingsEClass, SETTINGS__JOINT_FACTOR);
		createEAttribute(settingsEClass, SETTINGS__STEP_HEIGHT);
		createEAttribute(settingsEClass, SETTINGS__FLOOR_UNEVENNESS);
		createEAttribute(settingsEClass, SETTINGS__SLOPE);
		createEAttribute(settingsEClass, SETTINGS__WALKING_SPEED);
		createEAttribute(settingsEClass, SETTINGS__FRICTION_LOW);
		createEAttribute(settingsEClass, SETTINGS__FRICTION_HIGH);
		createEAttribute(settingsEClass, SETTINGS__STORING_TOLERANCE);
		createEAttribute(settingsEClass, SETTINGS__WORKING_TOLERANCE);
		createEAttribute(settingsEClass, SETTINGS__WELDING_TOLERANCE);

		// Create enums
		unitsEEnum = createEEnum(UNITS);
		conditionEEnum = createEEnum(CONDITION);
		holdEEnum = createEEnum(HOLD);
		basisEEnum = createEEnum(BASIS);

		// Create data types
		massEDataType = createEDataType(MASS);
		lengthEDataType = createEDataType(LENGTH);
		forceEDataType = createEDataType(FORCE);
		momentEDataType = createEDataType(MOMENT);
		stressEDataType = createEDataType(STRESS);
		stiffnessEDataType = createEDataType(STIFFNESS);
		torsionalStiffnessEDataType = createEDataType(TORSIONAL_STIFFNESS);
		bendingStiffnessEDataType = createEDataType(BENDING_STIFFNESS);
		angleEDataType = createEDataType(ANGLE);
		hoursEDataType = createEDataType(HOURS);
		ratioEDataType = createEDataType(RATIO);
		temperatureEDataType = createEDataType(TEMPERATURE);
		densityEDataType = createEDataType(DENSITY);
		subgradeModulusEDataType = createEDataType(SUBGRADE_MODULUS);
		speedEDataType = createEDataType(SPEED);
		areaEDataType = createEDataType(AREA);
		positionEDataType = createEDataType(POSITION);
		directionEDataType = createEDataType(DIRECTION);
		dateEDataType = createEDataType(DATE);
		localMomentEDataType = createEDataType(LOCAL_MOMENT);
		idEDataType = createEDataType(ID);
		unitsObjectEDataType = createEDataType(UNITS_OBJECT);
		conditionObjectEDataType = createEDataType(CONDITION_OBJECT);
		holdObjectEDataType = createEDataType(HOLD_OBJECT);
		basisObjectEDataType = createEDataType(BASIS_OBJECT);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		namedEClass.getESuperTypes().add(this.getIdentified());
		examinedEClass.getESuperTypes().add(this.getNamed());
		shopEClass.getESuperTypes().add(this.getFileRoot());
		shopEClass.getESuperTypes().add(this.getNamed());

		// Initialize classes and features; add operations and parameters
		initEClass(fileRootEClass, FileRoot.class, "FileRoot", IS_ABSTRACT, IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFileRoot_Schema(), ecorePackage.getEInt(), "schema", null, 1, 1, FileRoot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFileRoot_Draft(), ecorePackage.getEBoolean(), "draft", null, 0, 1, FileRoot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(identifiedEClass, Identified.class, "Identified", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIdentified_Id(), this.getId(), "id", null, 0, 1, Identified.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(namedEClass, Named.class, "Named", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNamed_Name(), ecorePackage.getEString(), "name", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNamed_Note(), ecorePackage.getEString(), "note", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(examinedEClass, Examined.class, "Examined", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExamined_Tag(), ecorePackage.getEString(), "tag", null, 0, 1, Examined.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExamined_LastExamined(), this.getDate(), "lastExamined", null, 0, 1, Examined.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExamined_ExaminationDue(), this.getDate(), "examinationDue", null, 0, 1, Examined.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shopEClass, Shop.class, "Shop", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShop_Zone(), ecorePackage.getEString(), "zone", null, 0, 1, Shop.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShop_Units(), this.getUnitsObject(), "units", null, 0, 1, Shop.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getShop_Settings(), this.getSettings(), null, "settings", null, 0, 1, Shop.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(settingsEClass, Settings.class, "Settings", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSettings_PersonMass(), this.getMass(), "personMass", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_LeanForce(), this.getForce(), "leanForce", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_BarForce(), this.getForce(), "barForce", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_RequiredRatio(), this.getRatio(), "requiredRatio", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_TightMargin(), this.getRatio(), "tightMargin", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_JointFactor(), this.getRatio(), "jointFactor", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_StepHeight(), this.getLength(), "stepHeight", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_FloorUnevenness(), this.getLength(), "floorUnevenness", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_Slope(), this.getAngle(), "slope", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_WalkingSpeed(), this.getSpeed(), "walkingSpeed", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_FrictionLow(), this.getRatio(), "frictionLow", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_FrictionHigh(), this.getRatio(), "frictionHigh", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_StoringTolerance(), this.getLength(), "storingTolerance", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_WorkingTolerance(), this.getLength(), "workingTolerance", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSettings_WeldingTolerance(), this.getLength(), "weldingTolerance", null, 0, 1, Settings.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(unitsEEnum, Units.class, "Units");
		addEEnumLiteral(unitsEEnum, Units.METRIC);
		addEEnumLiteral(unitsEEnum, Units.INCH);

		initEEnum(conditionEEnum, Condition.class, "Condition");
		addEEnumLiteral(conditionEEnum, Condition.SOUND);
		addEEnumLiteral(conditionEEnum, Condition.THIN);
		addEEnumLiteral(conditionEEnum, Condition.HOLED);
		addEEnumLiteral(conditionEEnum, Condition.REPAIRED);
		addEEnumLiteral(conditionEEnum, Condition.NOT_LOOKED_AT);

		initEEnum(holdEEnum, Hold.class, "Hold");
		addEEnumLiteral(holdEEnum, Hold.RESTS);
		addEEnumLiteral(holdEEnum, Hold.PINNED);
		addEEnumLiteral(holdEEnum, Hold.BOLTED);

		initEEnum(basisEEnum, Basis.class, "Basis");
		addEEnumLiteral(basisEEnum, Basis.WORKING_LOAD_LIMIT);
		addEEnumLiteral(basisEEnum, Basis.RATED_LOAD);
		addEEnumLiteral(basisEEnum, Basis.DESIGN_RESISTANCE);

		// Initialize data types
		initEDataType(massEDataType, Measured.class, "Mass", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(lengthEDataType, Measured.class, "Length", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(forceEDataType, Measured.class, "Force", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(momentEDataType, Measured.class, "Moment", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(stressEDataType, Measured.class, "Stress", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(stiffnessEDataType, Measured.class, "Stiffness", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(torsionalStiffnessEDataType, Measured.class, "TorsionalStiffness", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(bendingStiffnessEDataType, Measured.class, "BendingStiffness", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(angleEDataType, Measured.class, "Angle", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(hoursEDataType, Measured.class, "Hours", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(ratioEDataType, Measured.class, "Ratio", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(temperatureEDataType, Measured.class, "Temperature", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(densityEDataType, Measured.class, "Density", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(subgradeModulusEDataType, Measured.class, "SubgradeModulus", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(speedEDataType, Measured.class, "Speed", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(areaEDataType, Measured.class, "Area", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(positionEDataType, Position.class, "Position", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(directionEDataType, Direction.class, "Direction", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dateEDataType, LocalDate.class, "Date", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(localMomentEDataType, LocalDateTime.class, "LocalMoment", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(idEDataType, String.class, "Id", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(unitsObjectEDataType, Units.class, "UnitsObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(conditionObjectEDataType, Condition.class, "ConditionObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(holdObjectEDataType, Hold.class, "HoldObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(basisObjectEDataType, Basis.class, "BasisObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// urn:cradlewright:rules
		createUrncradlewrightrulesAnnotations();
		// http:///org/eclipse/emf/ecore/util/ExtendedMetaData
		createExtendedMetaDataAnnotations();
	}

	/**
	 * Initializes the annotations for <b>urn:cradlewright:rules</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createUrncradlewrightrulesAnnotations() {
		String source = "urn:cradlewright:rules";
		addAnnotation
		  (massEDataType,
		   source,
		   new String[] {
			   "dimension", "MASS",
			   "most", "100000"
		   });
		addAnnotation
		  (lengthEDataType,
		   source,
		   new String[] {
			   "dimension", "LENGTH",
			   "most", "1000000"
		   });
		addAnnotation
		  (forceEDataType,
		   source,
		   new String[] {
			   "dimension", "FORCE",
			   "most", "10000000"
		   });
		addAnnotation
		  (momentEDataType,
		   source,
		   new String[] {
			   "dimension", "MOMENT",
			   "most", "100000000"
		   });
		addAnnotation
		  (stressEDataType,
		   source,
		   new String[] {
			   "dimension", "STRESS",
			   "most", "1000000"
		   });
		addAnnotation
		  (stiffnessEDataType,
		   source,
		   new String[] {
			   "dimension", "STIFFNESS",
			   "most", "1000000000000"
		   });
		addAnnotation
		  (torsionalStiffnessEDataType,
		   source,
		   new String[] {
			   "dimension", "TORSIONAL_STIFFNESS",
			   "most", "1000000000"
		   });
		addAnnotation
		  (bendingStiffnessEDataType,
		   source,
		   new String[] {
			   "dimension", "BENDING_STIFFNESS",
			   "most", "1000000000000"
		   });
		addAnnotation
		  (angleEDataType,
		   source,
		   new String[] {
			   "dimension", "ANGLE",
			   "most", "360"
		   });
		addAnnotation
		  (hoursEDataType,
		   source,
		   new String[] {
			   "dimension", "TIME",
			   "most", "100000"
		   });
		addAnnotation
		  (ratioEDataType,
		   source,
		   new String[] {
			   "dimension", "RATIO",
			   "most", "10000"
		   });
		addAnnotation
		  (temperatureEDataType,
		   source,
		   new String[] {
			   "dimension", "TEMPERATURE",
			   "most", "2000"
		   });
		addAnnotation
		  (densityEDataType,
		   source,
		   new String[] {
			   "dimension", "DENSITY",
			   "most", "30000"
		   });
		addAnnotation
		  (subgradeModulusEDataType,
		   source,
		   new String[] {
			   "dimension", "SUBGRADE_MODULUS",
			   "most", "1000"
		   });
		addAnnotation
		  (speedEDataType,
		   source,
		   new String[] {
			   "dimension", "SPEED",
			   "most", "100"
		   });
		addAnnotation
		  (areaEDataType,
		   source,
		   new String[] {
			   "dimension", "AREA",
			   "most", "1000000000"
		   });
		addAnnotation
		  (positionEDataType,
		   source,
		   new String[] {
			   "most", "1000000"
		   });
		addAnnotation
		  (getSettings_PersonMass(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_LeanForce(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_BarForce(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_RequiredRatio(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_TightMargin(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_JointFactor(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_StepHeight(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_FloorUnevenness(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_Slope(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_WalkingSpeed(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_FrictionLow(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_FrictionHigh(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getSettings_StoringTolerance(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_WorkingTolerance(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSettings_WeldingTolerance(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
	}

	/**
	 * Initializes the annotations for <b>http:///org/eclipse/emf/ecore/util/ExtendedMetaData</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createExtendedMetaDataAnnotations() {
		String source = "http:///org/eclipse/emf/ecore/util/ExtendedMetaData";
		addAnnotation
		  (unitsObjectEDataType,
		   source,
		   new String[] {
			   "name", "Units:Object",
			   "baseType", "Units"
		   });
		addAnnotation
		  (conditionObjectEDataType,
		   source,
		   new String[] {
			   "name", "Condition:Object",
			   "baseType", "Condition"
		   });
		addAnnotation
		  (holdObjectEDataType,
		   source,
		   new String[] {
			   "name", "Hold:Object",
			   "baseType", "Hold"
		   });
		addAnnotation
		  (basisObjectEDataType,
		   source,
		   new String[] {
			   "name", "Basis:Object",
			   "baseType", "Basis"
		   });
	}

} //BasePackageImpl
