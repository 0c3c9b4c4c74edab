/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.BasePackage;

import cradlewright.model.base.impl.BasePackageImpl;

import cradlewright.model.fixture.FixturePackage;

import cradlewright.model.fixture.impl.FixturePackageImpl;

import cradlewright.model.floor.FloorPackage;

import cradlewright.model.floor.impl.FloorPackageImpl;

import cradlewright.model.job.JobPackage;

import cradlewright.model.job.impl.JobPackageImpl;

import cradlewright.model.stock.StockPackage;

import cradlewright.model.stock.impl.StockPackageImpl;

import cradlewright.model.vehicle.ApertureReading;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Construction;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.LoadKind;
import cradlewright.model.vehicle.Mark;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.PieceKind;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.model.vehicle.Visit;
import cradlewright.model.vehicle.Weighing;
import cradlewright.model.vehicle.WeighingReading;
import cradlewright.model.vehicle.WorkKind;
import cradlewright.model.vehicle.WorkPoint;

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
public class VehiclePackageImpl extends EPackageImpl implements VehiclePackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass carEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass markEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pieceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass partEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mountEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shimStackEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass liftPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass workPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cutZoneEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass temporaryLoadEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass braceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass apertureReadingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stageEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass visitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass weighingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass weighingReadingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum constructionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pieceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mountStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum workKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum loadKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType constructionObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pieceKindObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType mountStateObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType workKindObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType loadKindObjectEDataType = null;

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
	 * @see cradlewright.model.vehicle.VehiclePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private VehiclePackageImpl() {
		super(eNS_URI, VehicleFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link VehiclePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static VehiclePackage init() {
		if (isInited) return (VehiclePackage)EPackage.Registry.INSTANCE.getEPackage(VehiclePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredVehiclePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		VehiclePackageImpl theVehiclePackage = registeredVehiclePackage instanceof VehiclePackageImpl ? (VehiclePackageImpl)registeredVehiclePackage : new VehiclePackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(BasePackage.eNS_URI);
		BasePackageImpl theBasePackage = (BasePackageImpl)(registeredPackage instanceof BasePackageImpl ? registeredPackage : BasePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(StockPackage.eNS_URI);
		StockPackageImpl theStockPackage = (StockPackageImpl)(registeredPackage instanceof StockPackageImpl ? registeredPackage : StockPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FixturePackage.eNS_URI);
		FixturePackageImpl theFixturePackage = (FixturePackageImpl)(registeredPackage instanceof FixturePackageImpl ? registeredPackage : FixturePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FloorPackage.eNS_URI);
		FloorPackageImpl theFloorPackage = (FloorPackageImpl)(registeredPackage instanceof FloorPackageImpl ? registeredPackage : FloorPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(JobPackage.eNS_URI);
		JobPackageImpl theJobPackage = (JobPackageImpl)(registeredPackage instanceof JobPackageImpl ? registeredPackage : JobPackage.eINSTANCE);

		// Create package meta-data objects
		theVehiclePackage.createPackageContents();
		theBasePackage.createPackageContents();
		theStockPackage.createPackageContents();
		theFixturePackage.createPackageContents();
		theFloorPackage.createPackageContents();
		theJobPackage.createPackageContents();

		// Initialize created meta-data
		theVehiclePackage.initializePackageContents();
		theBasePackage.initializePackageContents();
		theStockPackage.initializePackageContents();
		theFixturePackage.initializePackageContents();
		theFloorPackage.initializePackageContents();
		theJobPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theVehiclePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(VehiclePackage.eNS_URI, theVehiclePackage);
		return theVehiclePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCar() {
		return carEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCar_Construction() {
		return (EAttribute)carEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Marks() {
		return (EReference)carEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Pieces() {
		return (EReference)carEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Mounts() {
		return (EReference)carEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_LiftPoints() {
		return (EReference)carEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_WorkPoints() {
		return (EReference)carEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_CutZones() {
		return (EReference)carEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_TemporaryLoads() {
		return (EReference)carEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Braces() {
		return (EReference)carEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_ApertureReadings() {
		return (EReference)carEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Stages() {
		return (EReference)carEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Setups() {
		return (EReference)carEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Visits() {
		return (EReference)carEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCar_Weighings() {
		return (EReference)carEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMark() {
		return markEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMark_Position() {
		return (EAttribute)markEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPiece() {
		return pieceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Kind() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_TorsionalStiffness() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_BendingStiffness() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Outline() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Parts() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPart() {
		return partEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPart_Mass() {
		return (EAttribute)partEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPart_Position() {
		return (EAttribute)partEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPart_TemperatureLimit() {
		return (EAttribute)partEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMount() {
		return mountEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMount_Position() {
		return (EAttribute)mountEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMount_Condition() {
		return (EAttribute)mountEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMount_SheetThickness() {
		return (EAttribute)mountEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMount_Bolt() {
		return (EReference)mountEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMount_BoltCount() {
		return (EAttribute)mountEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMount_State() {
		return (EAttribute)mountEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMount_AsFound() {
		return (EReference)mountEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMount_OnDolly() {
		return (EReference)mountEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMount_AsBuilt() {
		return (EReference)mountEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShimStack() {
		return shimStackEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShimStack_Shims() {
		return (EReference)shimStackEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShim() {
		return shimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShim_Shim() {
		return (EReference)shimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShim_Loose() {
		return (EAttribute)shimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShim_Count() {
		return (EAttribute)shimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLiftPoint() {
		return liftPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_Position() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_Condition() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_SheetThickness() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_LookedAt() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_Capacity() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLiftPoint_Basis() {
		return (EAttribute)liftPointEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWorkPoint() {
		return workPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWorkPoint_Position() {
		return (EAttribute)workPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWorkPoint_Direction() {
		return (EAttribute)workPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWorkPoint_Kind() {
		return (EAttribute)workPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCutZone() {
		return cutZoneEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutZone_Low() {
		return (EAttribute)cutZoneEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutZone_High() {
		return (EAttribute)cutZoneEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutZone_Planned() {
		return (EAttribute)cutZoneEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCutZone_Braces() {
		return (EReference)cutZoneEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTemporaryLoad() {
		return temporaryLoadEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTemporaryLoad_Kind() {
		return (EAttribute)temporaryLoadEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTemporaryLoad_Mass() {
		return (EAttribute)temporaryLoadEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTemporaryLoad_Position() {
		return (EAttribute)temporaryLoadEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBrace() {
		return braceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrace_From() {
		return (EAttribute)braceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrace_To() {
		return (EAttribute)braceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrace_Fitted() {
		return (EAttribute)braceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApertureReading() {
		return apertureReadingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApertureReading_Aperture() {
		return (EAttribute)apertureReadingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApertureReading_At() {
		return (EAttribute)apertureReadingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApertureReading_By() {
		return (EAttribute)apertureReadingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApertureReading_Diagonals() {
		return (EAttribute)apertureReadingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApertureReading_Gaps() {
		return (EAttribute)apertureReadingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStage() {
		return stageEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStage_On() {
		return (EReference)stageEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStage_Loads() {
		return (EReference)stageEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVisit() {
		return visitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getVisit_Stage() {
		return (EReference)visitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getVisit_Setup() {
		return (EReference)visitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVisit_From() {
		return (EAttribute)visitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVisit_To() {
		return (EAttribute)visitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVisit_Current() {
		return (EAttribute)visitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWeighing() {
		return weighingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_At() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_Method() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_By() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWeighing_Stage() {
		return (EReference)weighingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWeighing_Readings() {
		return (EReference)weighingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWeighingReading() {
		return weighingReadingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighingReading_Position() {
		return (EAttribute)weighingReadingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighingReading_Mass() {
		return (EAttribute)weighingReadingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getConstruction() {
		return constructionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPieceKind() {
		return pieceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMountState() {
		return mountStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWorkKind() {
		return workKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLoadKind() {
		return loadKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getConstructionObject() {
		return constructionObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPieceKindObject() {
		return pieceKindObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMountStateObject() {
		return mountStateObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getWorkKindObject() {
		return workKindObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLoadKindObject() {
		return loadKindObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VehicleFactory getVehicleFactory() {
		return (VehicleFactory)getEFactoryInstance();
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
		carEClass = createEClass(CAR);
		createEAttribute(carEClass, CAR__CONSTRUCTION);
		createEReference(carEClass, CAR__MARKS);
		createEReference(carEClass, CAR__PIECES);
		createEReference(carEClass, CAR__MOUNTS);
		createEReference(carEClass, CAR__LIFT_POINTS);
		createEReference(carEClass, CAR__WORK_POINTS);
		createEReference(carEClass, CAR__CUT_ZONES);
		createEReference(carEClass, CAR__TEMPORARY_LOADS);
		createEReference(carEClass, CAR__BRACES);
		createEReference(carEClass, CAR__APERTURE_READINGS);
		createEReference(carEClass, CAR__STAGES);
		createEReference(carEClass, CAR__SETUPS);
		createEReference(carEClass, CAR__VISITS);
		createEReference(carEClass, CAR__WEIGHINGS);

		markEClass = createEClass(MARK);
		createEAttribute(markEClass, MARK__POSITION);

		pieceEClass = createEClass(PIECE);
		createEAttribute(pieceEClass, PIECE__KIND);
		createEAttribute(pieceEClass, PIECE__TORSIONAL_STIFFNESS);
		createEAttribute(pieceEClass, PIECE__BENDING_STIFFNESS);
		createEAttribute(pieceEClass, PIECE__OUTLINE);
		createEReference(pieceEClass, PIECE__PARTS);

		partEClass = createEClass(PART);
		createEAttribute(partEClass, PART__MASS);
		createEAttribute(partEClass, PART__POSITION);
		createEAttribute(partEClass, PART__TEMPERATURE_LIMIT);

		mountEClass = createEClass(MOUNT);
		createEAttribute(mountEClass, MOUNT__POSITION);
		createEAttribute(mountEClass, MOUNT__CONDITION);
		createEAttribute(mountEClass, MOUNT__SHEET_THICKNESS);
		createEReference(mountEClass, MOUNT__BOLT);
		createEAttribute(mountEClass, MOUNT__BOLT_COUNT);
		createEAttribute(mountEClass, MOUNT__STATE);
		createEReference(mountEClass, MOUNT__AS_FOUND);
		createEReference(mountEClass, MOUNT__ON_DOLLY);
		createEReference(mountEClass, MOUNT__AS_BUILT);

		shimStackEClass = createEClass(SHIM_STACK);
		createEReference(shimStackEClass, SHIM_STACK__SHIMS);

		shimEClass = createEClass(SHIM);
		createEReference(shimEClass, SHIM__SHIM);
		createEAttribute(shimEClass, SHIM__LOOSE);
		createEAttribute(shimEClass, SHIM__COUNT);

		liftPointEClass = createEClass(LIFT_POINT);
		createEAttribute(liftPointEClass, LIFT_POINT__POSITION);
		createEAttribute(liftPointEClass, LIFT_POINT__CONDITION);
		createEAttribute(liftPointEClass, LIFT_POINT__SHEET_THICKNESS);
		createEAttribute(liftPointEClass, LIFT_POINT__LOOKED_AT);
		createEAttribute(liftPointEClass, LIFT_POINT__CAPACITY);
		createEAttribute(liftPointEClass, LIFT_POINT__BASIS);

		workPointEClass = createEClass(WORK_POINT);
		createEAttribute(workPointEClass, WORK_POINT__POSITION);
		createEAttribute(workPointEClass, WORK_POINT__DIRECTION);
		createEAttribute(workPointEClass, WORK_POINT__KIND);

		cutZoneEClass = createEClass(CUT_ZONE);
		createEAttribute(cutZoneEClass, CUT_ZONE__LOW);
		createEAttribute(cutZoneEClass, CUT_ZONE__HIGH);
		createEAttribute(cutZoneEClass, CUT_ZONE__PLANNED);
		createEReference(cutZoneEClass, CUT_ZONE__BRACES);

		temporaryLoadEClass = createEClass(TEMPORARY_LOAD);
		createEAttribute(temporaryLoadEClass, TEMPORARY_LOAD__KIND);
		createEAttribute(temporaryLoadEClass, TEMPORARY_LOAD__MASS);
		createEAttribute(temporaryLoadEClass, TEMPORARY_LOAD__POSITION);

		braceEClass = createEClass(BRACE);
		createEAttribute(braceEClass, BRACE__FROM);
		createEAttribute(braceEClass, BRACE__TO);
		createEAttribute(braceEClass, BRACE__FITTED);

		apertureReadingEClass = createEClass(APERTURE_READING);
		createEAttribute(apertureReadingEClass, APERTURE_READING__APERTURE);
		createEAttribute(apertureReadingEClass, APERTURE_READING__AT);
		createEAttribute(apertureReadingEClass, APERTURE_READING__BY);
		createEAttribute(apertureReadingEClass, APERTURE_READING__DIAGONALS);
		createEAttribute(apertureReadingEClass, APERTURE_READING__GAPS);

		stageEClass = createEClass(STAGE);
		createEReference(stageEClass, STAGE__ON);
		createEReference(stageEClass, STAGE__LOADS);

		visitEClass = createEClass(VISIT);
		createEReference(visitEClass, VISIT__STAGE);
		createEReference(visitEClass, VISIT__SETUP);
		createEAttribute(visitEClass, VISIT__FROM);
		createEAttribute(visitEClass, VISIT__TO);
		createEAttribute(visitEClass, VISIT__CURRENT);

		weighingEClass = createEClass(WEIGHING);
		createEAttribute(weighingEClass, WEIGHING__AT);
		createEAttribute(weighingEClass, WEIGHING__METHOD);
		createEAttribute(weighingEClass, WEIGHING__BY);
		createEReference(weighingEClass, WEIGHING__STAGE);
		createEReference(weighingEClass, WEIGHING__READINGS);

		weighingReadingEClass = createEClass(WEIGHING_READING);
		createEAttribute(weighingReadingEClass, WEIGHING_READING__POSITION);
		createEAttribute(weighingReadingEClass, WEIGHING_READING__MASS);

		// Create enums
		constructionEEnum = createEEnum(CONSTRUCTION);
		pieceKindEEnum = createEEnum(PIECE_KIND);
		mountStateEEnum = createEEnum(MOUNT_STATE);
		workKindEEnum = createEEnum(WORK_KIND);
		loadKindEEnum = createEEnum(LOAD_KIND);

		// Create data types
		constructionObjectEDataType = createEDataType(CONSTRUCTION_OBJECT);
		pieceKindObjectEDataType = createEDataType(PIECE_KIND_OBJECT);
		mountStateObjectEDataType = createEDataType(MOUNT_STATE_OBJECT);
		workKindObjectEDataType = createEDataType(WORK_KIND_OBJECT);
		loadKindObjectEDataType = createEDataType(LOAD_KIND_OBJECT);
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

		// Obtain other dependent packages
		BasePackage theBasePackage = (BasePackage)EPackage.Registry.INSTANCE.getEPackage(BasePackage.eNS_URI);
		FixturePackage theFixturePackage = (FixturePackage)EPackage.Registry.INSTANCE.getEPackage(FixturePackage.eNS_URI);
		StockPackage theStockPackage = (StockPackage)EPackage.Registry.INSTANCE.getEPackage(StockPackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		carEClass.getESuperTypes().add(theBasePackage.getFileRoot());
		carEClass.getESuperTypes().add(theBasePackage.getNamed());
		markEClass.getESuperTypes().add(theBasePackage.getNamed());
		pieceEClass.getESuperTypes().add(theBasePackage.getNamed());
		partEClass.getESuperTypes().add(theBasePackage.getNamed());
		mountEClass.getESuperTypes().add(theBasePackage.getNamed());
		liftPointEClass.getESuperTypes().add(theBasePackage.getNamed());
		workPointEClass.getESuperTypes().add(theBasePackage.getNamed());
		cutZoneEClass.getESuperTypes().add(theBasePackage.getNamed());
		temporaryLoadEClass.getESuperTypes().add(theBasePackage.getNamed());
		braceEClass.getESuperTypes().add(theBasePackage.getNamed());
		apertureReadingEClass.getESuperTypes().add(theBasePackage.getIdentified());
		stageEClass.getESuperTypes().add(theBasePackage.getNamed());
		visitEClass.getESuperTypes().add(theBasePackage.getNamed());
		weighingEClass.getESuperTypes().add(theBasePackage.getIdentified());

		// Initialize classes and features; add operations and parameters
		initEClass(carEClass, Car.class, "Car", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCar_Construction(), this.getConstructionObject(), "construction", null, 0, 1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Marks(), this.getMark(), null, "marks", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Pieces(), this.getPiece(), null, "pieces", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Mounts(), this.getMount(), null, "mounts", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_LiftPoints(), this.getLiftPoint(), null, "liftPoints", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_WorkPoints(), this.getWorkPoint(), null, "workPoints", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_CutZones(), this.getCutZone(), null, "cutZones", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_TemporaryLoads(), this.getTemporaryLoad(), null, "temporaryLoads", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Braces(), this.getBrace(), null, "braces", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_ApertureReadings(), this.getApertureReading(), null, "apertureReadings", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Stages(), this.getStage(), null, "stages", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Setups(), theFixturePackage.getSetup(), null, "setups", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Visits(), this.getVisit(), null, "visits", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCar_Weighings(), this.getWeighing(), null, "weighings", null, 0, -1, Car.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(markEClass, Mark.class, "Mark", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMark_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Mark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pieceEClass, Piece.class, "Piece", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPiece_Kind(), this.getPieceKindObject(), "kind", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_TorsionalStiffness(), theBasePackage.getTorsionalStiffness(), "torsionalStiffness", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_BendingStiffness(), theBasePackage.getBendingStiffness(), "bendingStiffness", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Outline(), theBasePackage.getPosition(), "outline", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_Parts(), this.getPart(), null, "parts", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(partEClass, Part.class, "Part", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPart_Mass(), theBasePackage.getMass(), "mass", null, 0, 1, Part.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPart_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Part.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPart_TemperatureLimit(), theBasePackage.getTemperature(), "temperatureLimit", null, 0, 1, Part.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mountEClass, Mount.class, "Mount", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMount_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMount_Condition(), theBasePackage.getConditionObject(), "condition", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMount_SheetThickness(), theBasePackage.getLength(), "sheetThickness", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMount_Bolt(), theStockPackage.getBoltType(), null, "bolt", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMount_BoltCount(), ecorePackage.getEIntegerObject(), "boltCount", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMount_State(), this.getMountStateObject(), "state", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMount_AsFound(), this.getShimStack(), null, "asFound", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMount_OnDolly(), this.getShimStack(), null, "onDolly", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMount_AsBuilt(), this.getShimStack(), null, "asBuilt", null, 0, 1, Mount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shimStackEClass, ShimStack.class, "ShimStack", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getShimStack_Shims(), this.getShim(), null, "shims", null, 0, -1, ShimStack.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shimEClass, Shim.class, "Shim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getShim_Shim(), theStockPackage.getShimType(), null, "shim", null, 0, 1, Shim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShim_Loose(), theBasePackage.getLength(), "loose", null, 0, 1, Shim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShim_Count(), ecorePackage.getEIntegerObject(), "count", null, 0, 1, Shim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(liftPointEClass, LiftPoint.class, "LiftPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLiftPoint_Position(), theBasePackage.getPosition(), "position", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLiftPoint_Condition(), theBasePackage.getConditionObject(), "condition", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLiftPoint_SheetThickness(), theBasePackage.getLength(), "sheetThickness", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLiftPoint_LookedAt(), theBasePackage.getDate(), "lookedAt", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLiftPoint_Capacity(), theBasePackage.getForce(), "capacity", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLiftPoint_Basis(), theBasePackage.getBasisObject(), "basis", null, 0, 1, LiftPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(workPointEClass, WorkPoint.class, "WorkPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWorkPoint_Position(), theBasePackage.getPosition(), "position", null, 0, 1, WorkPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWorkPoint_Direction(), theBasePackage.getDirection(), "direction", null, 0, 1, WorkPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWorkPoint_Kind(), this.getWorkKindObject(), "kind", null, 0, 1, WorkPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cutZoneEClass, CutZone.class, "CutZone", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCutZone_Low(), theBasePackage.getPosition(), "low", null, 0, 1, CutZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutZone_High(), theBasePackage.getPosition(), "high", null, 0, 1, CutZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutZone_Planned(), ecorePackage.getEBoolean(), "planned", null, 0, 1, CutZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCutZone_Braces(), this.getBrace(), null, "braces", null, 0, -1, CutZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(temporaryLoadEClass, TemporaryLoad.class, "TemporaryLoad", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTemporaryLoad_Kind(), this.getLoadKindObject(), "kind", null, 0, 1, TemporaryLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTemporaryLoad_Mass(), theBasePackage.getMass(), "mass", null, 0, 1, TemporaryLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTemporaryLoad_Position(), theBasePackage.getPosition(), "position", null, 0, 1, TemporaryLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(braceEClass, Brace.class, "Brace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBrace_From(), theBasePackage.getPosition(), "from", null, 0, 1, Brace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrace_To(), theBasePackage.getPosition(), "to", null, 0, 1, Brace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrace_Fitted(), ecorePackage.getEBoolean(), "fitted", null, 0, 1, Brace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(apertureReadingEClass, ApertureReading.class, "ApertureReading", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getApertureReading_Aperture(), ecorePackage.getEString(), "aperture", null, 0, 1, ApertureReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApertureReading_At(), theBasePackage.getLocalMoment(), "at", null, 0, 1, ApertureReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApertureReading_By(), ecorePackage.getEString(), "by", null, 0, 1, ApertureReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApertureReading_Diagonals(), theBasePackage.getLength(), "diagonals", null, 0, -1, ApertureReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApertureReading_Gaps(), theBasePackage.getLength(), "gaps", null, 0, -1, ApertureReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stageEClass, Stage.class, "Stage", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStage_On(), this.getPart(), null, "on", null, 0, -1, Stage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStage_Loads(), this.getTemporaryLoad(), null, "loads", null, 0, -1, Stage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(visitEClass, Visit.class, "Visit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getVisit_Stage(), this.getStage(), null, "stage", null, 0, 1, Visit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getVisit_Setup(), theFixturePackage.getSetup(), null, "setup", null, 0, 1, Visit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVisit_From(), theBasePackage.getDate(), "from", null, 0, 1, Visit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVisit_To(), theBasePackage.getDate(), "to", null, 0, 1, Visit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVisit_Current(), ecorePackage.getEBooleanObject(), "current", null, 0, 1, Visit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(weighingEClass, Weighing.class, "Weighing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWeighing_At(), theBasePackage.getLocalMoment(), "at", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_Method(), ecorePackage.getEString(), "method", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_By(), ecorePackage.getEString(), "by", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWeighing_Stage(), this.getStage(), null, "stage", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWeighing_Readings(), this.getWeighingReading(), null, "readings", null, 0, -1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(weighingReadingEClass, WeighingReading.class, "WeighingReading", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWeighingReading_Position(), theBasePackage.getPosition(), "position", null, 0, 1, WeighingReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighingReading_Mass(), theBasePackage.getMass(), "mass", null, 0, 1, WeighingReading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(constructionEEnum, Construction.class, "Construction");
		addEEnumLiteral(constructionEEnum, Construction.SEPARATE_CHASSIS);
		addEEnumLiteral(constructionEEnum, Construction.INTEGRAL);

		initEEnum(pieceKindEEnum, PieceKind.class, "PieceKind");
		addEEnumLiteral(pieceKindEEnum, PieceKind.SHELL);
		addEEnumLiteral(pieceKindEEnum, PieceKind.CHASSIS);
		addEEnumLiteral(pieceKindEEnum, PieceKind.ENGINE);
		addEEnumLiteral(pieceKindEEnum, PieceKind.BOX);
		addEEnumLiteral(pieceKindEEnum, PieceKind.OTHER);

		initEEnum(mountStateEEnum, MountState.class, "MountState");
		addEEnumLiteral(mountStateEEnum, MountState.FAST);
		addEEnumLiteral(mountStateEEnum, MountState.FREE);

		initEEnum(workKindEEnum, WorkKind.class, "WorkKind");
		addEEnumLiteral(workKindEEnum, WorkKind.LEAN);
		addEEnumLiteral(workKindEEnum, WorkKind.BAR);
		addEEnumLiteral(workKindEEnum, WorkKind.STAND_ON);

		initEEnum(loadKindEEnum, LoadKind.class, "LoadKind");
		addEEnumLiteral(loadKindEEnum, LoadKind.PEOPLE);
		addEEnumLiteral(loadKindEEnum, LoadKind.BOX);
		addEEnumLiteral(loadKindEEnum, LoadKind.BRACE);
		addEEnumLiteral(loadKindEEnum, LoadKind.TOOLS);

		// Initialize data types
		initEDataType(constructionObjectEDataType, Construction.class, "ConstructionObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pieceKindObjectEDataType, PieceKind.class, "PieceKindObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(mountStateObjectEDataType, MountState.class, "MountStateObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(workKindObjectEDataType, WorkKind.class, "WorkKindObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(loadKindObjectEDataType, LoadKind.class, "LoadKindObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// http:///org/eclipse/emf/ecore/util/ExtendedMetaData
		createExtendedMetaDataAnnotations();
		// urn:cradlewright:rules
		createUrncradlewrightrulesAnnotations();
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
		  (constructionObjectEDataType,
		   source,
		   new String[] {
			   "name", "Construction:Object",
			   "baseType", "Construction"
		   });
		addAnnotation
		  (pieceKindObjectEDataType,
		   source,
		   new String[] {
			   "name", "PieceKind:Object",
			   "baseType", "PieceKind"
		   });
		addAnnotation
		  (mountStateObjectEDataType,
		   source,
		   new String[] {
			   "name", "MountState:Object",
			   "baseType", "MountState"
		   });
		addAnnotation
		  (workKindObjectEDataType,
		   source,
		   new String[] {
			   "name", "WorkKind:Object",
			   "baseType", "WorkKind"
		   });
		addAnnotation
		  (loadKindObjectEDataType,
		   source,
		   new String[] {
			   "name", "LoadKind:Object",
			   "baseType", "LoadKind"
		   });
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
		  (getPiece_TorsionalStiffness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPiece_BendingStiffness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPart_Mass(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getMount_SheetThickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getMount_BoltCount(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getShim_Loose(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getShim_Count(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getLiftPoint_SheetThickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getLiftPoint_Capacity(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTemporaryLoad_Mass(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getApertureReading_Diagonals(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getApertureReading_Gaps(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getWeighingReading_Mass(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
	}

} //VehiclePackageImpl
