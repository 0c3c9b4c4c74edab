/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.base.BasePackage;

import cradlewright.model.base.impl.BasePackageImpl;

import cradlewright.model.fixture.FixturePackage;

import cradlewright.model.fixture.impl.FixturePackageImpl;

import cradlewright.model.floor.FloorPackage;

import cradlewright.model.floor.impl.FloorPackageImpl;

import cradlewright.model.job.JobPackage;

import cradlewright.model.job.impl.JobPackageImpl;

import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.FlatBar;
import cradlewright.model.stock.FoldShape;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.HollowSection;
import cradlewright.model.stock.PadMaterial;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.RoundTube;
import cradlewright.model.stock.Section;
import cradlewright.model.stock.Sheet;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.stock.StockItem;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.stock.TeeSection;
import cradlewright.model.stock.Timber;
import cradlewright.model.stock.TimberRail;
import cradlewright.model.stock.Tread;

import cradlewright.model.vehicle.VehiclePackage;

import cradlewright.model.vehicle.impl.VehiclePackageImpl;

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
public class StockPackageImpl extends EPackageImpl implements StockPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockItemEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass steelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass timberEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sheetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass foldedSectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass hollowSectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roundTubeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass flatBarEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass teeSectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass timberRailEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass boltTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass castorTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass padTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shimTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum foldShapeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum treadEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum padMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType foldShapeObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType treadObjectEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType padMaterialObjectEDataType = null;

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
	 * @see cradlewright.model.stock.StockPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private StockPackageImpl() {
		super(eNS_URI, StockFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link StockPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static StockPackage init() {
		if (isInited) return (StockPackage)EPackage.Registry.INSTANCE.getEPackage(StockPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredStockPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		StockPackageImpl theStockPackage = registeredStockPackage instanceof StockPackageImpl ? (StockPackageImpl)registeredStockPackage : new StockPackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(BasePackage.eNS_URI);
		BasePackageImpl theBasePackage = (BasePackageImpl)(registeredPackage instanceof BasePackageImpl ? registeredPackage : BasePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(VehiclePackage.eNS_URI);
		VehiclePackageImpl theVehiclePackage = (VehiclePackageImpl)(registeredPackage instanceof VehiclePackageImpl ? registeredPackage : VehiclePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FixturePackage.eNS_URI);
		FixturePackageImpl theFixturePackage = (FixturePackageImpl)(registeredPackage instanceof FixturePackageImpl ? registeredPackage : FixturePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FloorPackage.eNS_URI);
		FloorPackageImpl theFloorPackage = (FloorPackageImpl)(registeredPackage instanceof FloorPackageImpl ? registeredPackage : FloorPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(JobPackage.eNS_URI);
		JobPackageImpl theJobPackage = (JobPackageImpl)(registeredPackage instanceof JobPackageImpl ? registeredPackage : JobPackage.eINSTANCE);

		// Create package meta-data objects
		theStockPackage.createPackageContents();
		theBasePackage.createPackageContents();
		theVehiclePackage.createPackageContents();
		theFixturePackage.createPackageContents();
		theFloorPackage.createPackageContents();
		theJobPackage.createPackageContents();

		// Initialize created meta-data
		theStockPackage.initializePackageContents();
		theBasePackage.initializePackageContents();
		theVehiclePackage.initializePackageContents();
		theFixturePackage.initializePackageContents();
		theFloorPackage.initializePackageContents();
		theJobPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theStockPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(StockPackage.eNS_URI, theStockPackage);
		return theStockPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStock() {
		return stockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStock_Items() {
		return (EReference)stockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockItem() {
		return stockItemEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Source() {
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSteel() {
		return steelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSteel_Grade() {
		return (EAttribute)steelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSteel_Fy() {
		return (EAttribute)steelEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSteel_Fu() {
		return (EAttribute)steelEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTimber() {
		return timberEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimber_StrengthClass() {
		return (EAttribute)timberEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimber_Fmk() {
		return (EAttribute)timberEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimber_Fvk() {
		return (EAttribute)timberEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimber_Density() {
		return (EAttribute)timberEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSheet() {
		return sheetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_Thickness() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheet_Steel() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSection() {
		return sectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFoldedSection() {
		return foldedSectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Shape() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Height() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Width() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Lip() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Thickness() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_InsideRadius() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFoldedSection_Points() {
		return (EAttribute)foldedSectionEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHollowSection() {
		return hollowSectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHollowSection_Height() {
		return (EAttribute)hollowSectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHollowSection_Width() {
		return (EAttribute)hollowSectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHollowSection_Thickness() {
		return (EAttribute)hollowSectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoundTube() {
		return roundTubeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundTube_Diameter() {
		return (EAttribute)roundTubeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundTube_Thickness() {
		return (EAttribute)roundTubeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFlatBar() {
		return flatBarEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlatBar_Height() {
		return (EAttribute)flatBarEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlatBar_Width() {
		return (EAttribute)flatBarEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTeeSection() {
		return teeSectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTeeSection_FlangeWidth() {
		return (EAttribute)teeSectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTeeSection_FlangeThickness() {
		return (EAttribute)teeSectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTeeSection_WebHeight() {
		return (EAttribute)teeSectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTeeSection_WebThickness() {
		return (EAttribute)teeSectionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTimberRail() {
		return timberRailEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimberRail_Height() {
		return (EAttribute)timberRailEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTimberRail_Width() {
		return (EAttribute)timberRailEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTimberRail_Timber() {
		return (EReference)timberRailEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBoltType() {
		return boltTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBoltType_Size() {
		return (EAttribute)boltTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBoltType_Grade() {
		return (EAttribute)boltTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBoltType_ThreadsInShear() {
		return (EAttribute)boltTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCastorType() {
		return castorTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_RatedLoad() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_WheelDiameter() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_Lead() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_Tread() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_ContactArea() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_Stiffness() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_TemperatureLimit() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCastorType_Mass() {
		return (EAttribute)castorTypeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPadType() {
		return padTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Material() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Length() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Width() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Thickness() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Modulus() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_Stiffness() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_StressLimit() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_StrainLimit() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPadType_TemperatureLimit() {
		return (EAttribute)padTypeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShimType() {
		return shimTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShimType_Material() {
		return (EAttribute)shimTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShimType_Thickness() {
		return (EAttribute)shimTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShimType_Length() {
		return (EAttribute)shimTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShimType_Width() {
		return (EAttribute)shimTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShimType_OnHand() {
		return (EAttribute)shimTypeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFoldShape() {
		return foldShapeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTread() {
		return treadEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPadMaterial() {
		return padMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFoldShapeObject() {
		return foldShapeObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTreadObject() {
		return treadObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPadMaterialObject() {
		return padMaterialObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockFactory getStockFactory() {
		return (StockFactory)getEFactoryInstance();
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
		stockEClass = createEClass(STOCK);
		createEReference(stockEClass, STOCK__ITEMS);

		stockItemEClass = createEClass(STOCK_ITEM);
		createEAttribute(stockItemEClass, STOCK_ITEM__SOURCE);

		steelEClass = createEClass(STEEL);
		createEAttribute(steelEClass, STEEL__GRADE);
		createEAttribute(steelEClass, STEEL__FY);
		createEAttribute(steelEClass, STEEL__FU);

		timberEClass = createEClass(TIMBER);
		createEAttribute(timberEClass, TIMBER__STRENGTH_CLASS);
		createEAttribute(timberEClass, TIMBER__FMK);
		createEAttribute(timberEClass, TIMBER__FVK);
		createEAttribute(timberEClass, TIMBER__DENSITY);

		sheetEClass = createEClass(SHEET);
		createEAttribute(sheetEClass, SHEET__THICKNESS);
		createEReference(sheetEClass, SHEET__STEEL);

		sectionEClass = createEClass(SECTION);

		foldedSectionEClass = createEClass(FOLDED_SECTION);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__SHAPE);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__HEIGHT);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__WIDTH);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__LIP);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__THICKNESS);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__INSIDE_RADIUS);
		createEAttribute(foldedSectionEClass, FOLDED_SECTION__POINTS);

		hollowSectionEClass = createEClass(HOLLOW_SECTION);
		createEAttribute(hollowSectionEClass, HOLLOW_SECTION__HEIGHT);
		createEAttribute(hollowSectionEClass, HOLLOW_SECTION__WIDTH);
		createEAttribute(hollowSectionEClass, HOLLOW_SECTION__THICKNESS);

		roundTubeEClass = createEClass(ROUND_TUBE);
		createEAttribute(roundTubeEClass, ROUND_TUBE__DIAMETER);
		createEAttribute(roundTubeEClass, ROUND_TUBE__THICKNESS);

		flatBarEClass = createEClass(FLAT_BAR);
		createEAttribute(flatBarEClass, FLAT_BAR__HEIGHT);
		createEAttribute(flatBarEClass, FLAT_BAR__WIDTH);

		teeSectionEClass = createEClass(TEE_SECTION);
		createEAttribute(teeSectionEClass, TEE_SECTION__FLANGE_WIDTH);
		createEAttribute(teeSectionEClass, TEE_SECTION__FLANGE_THICKNESS);
		createEAttribute(teeSectionEClass, TEE_SECTION__WEB_HEIGHT);
		createEAttribute(teeSectionEClass, TEE_SECTION__WEB_THICKNESS);

		timberRailEClass = createEClass(TIMBER_RAIL);
		createEAttribute(timberRailEClass, TIMBER_RAIL__HEIGHT);
		createEAttribute(timberRailEClass, TIMBER_RAIL__WIDTH);
		createEReference(timberRailEClass, TIMBER_RAIL__TIMBER);

		boltTypeEClass = createEClass(BOLT_TYPE);
		createEAttribute(boltTypeEClass, BOLT_TYPE__SIZE);
		createEAttribute(boltTypeEClass, BOLT_TYPE__GRADE);
		createEAttribute(boltTypeEClass, BOLT_TYPE__THREADS_IN_SHEAR);

		castorTypeEClass = createEClass(CASTOR_TYPE);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__RATED_LOAD);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__WHEEL_DIAMETER);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__LEAD);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__TREAD);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__CONTACT_AREA);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__STIFFNESS);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__TEMPERATURE_LIMIT);
		createEAttribute(castorTypeEClass, CASTOR_TYPE__MASS);

		padTypeEClass = createEClass(PAD_TYPE);
		createEAttribute(padTypeEClass, PAD_TYPE__MATERIAL);
		createEAttribute(padTypeEClass, PAD_TYPE__LENGTH);
		createEAttribute(padTypeEClass, PAD_TYPE__WIDTH);
		createEAttribute(padTypeEClass, PAD_TYPE__THICKNESS);
		createEAttribute(padTypeEClass, PAD_TYPE__MODULUS);
		createEAttribute(padTypeEClass, PAD_TYPE__STIFFNESS);
		createEAttribute(padTypeEClass, PAD_TYPE__STRESS_LIMIT);
		createEAttribute(padTypeEClass, PAD_TYPE__STRAIN_LIMIT);
		createEAttribute(padTypeEClass, PAD_TYPE__TEMPERATURE_LIMIT);

		shimTypeEClass = createEClass(SHIM_TYPE);
		createEAttribute(shimTypeEClass, SHIM_TYPE__MATERIAL);
		createEAttribute(shimTypeEClass, SHIM_TYPE__THICKNESS);
		createEAttribute(shimTypeEClass, SHIM_TYPE__LENGTH);
		createEAttribute(shimTypeEClass, SHIM_TYPE__WIDTH);
		createEAttribute(shimTypeEClass, SHIM_TYPE__ON_HAND);

		// Create enums
		foldShapeEEnum = createEEnum(FOLD_SHAPE);
		treadEEnum = createEEnum(TREAD);
		padMaterialEEnum = createEEnum(PAD_MATERIAL);

		// Create data types
		foldShapeObjectEDataType = createEDataType(FOLD_SHAPE_OBJECT);
		treadObjectEDataType = createEDataType(TREAD_OBJECT);
		padMaterialObjectEDataType = createEDataType(PAD_MATERIAL_OBJECT);
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

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		stockEClass.getESuperTypes().add(theBasePackage.getFileRoot());
		stockItemEClass.getESuperTypes().add(theBasePackage.getNamed());
		steelEClass.getESuperTypes().add(this.getStockItem());
		timberEClass.getESuperTypes().add(this.getStockItem());
		sheetEClass.getESuperTypes().add(this.getStockItem());
		sectionEClass.getESuperTypes().add(this.getStockItem());
		foldedSectionEClass.getESuperTypes().add(this.getSection());
		hollowSectionEClass.getESuperTypes().add(this.getSection());
		roundTubeEClass.getESuperTypes().add(this.getSection());
		flatBarEClass.getESuperTypes().add(this.getSection());
		teeSectionEClass.getESuperTypes().add(this.getSection());
		timberRailEClass.getESuperTypes().add(this.getSection());
		boltTypeEClass.getESuperTypes().add(this.getStockItem());
		castorTypeEClass.getESuperTypes().add(this.getStockItem());
		padTypeEClass.getESuperTypes().add(this.getStockItem());
		shimTypeEClass.getESuperTypes().add(this.getStockItem());

		// Initialize classes and features; add operations and parameters
		initEClass(stockEClass, Stock.class, "Stock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStock_Items(), this.getStockItem(), null, "items", null, 0, -1, Stock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stockItemEClass, StockItem.class, "StockItem", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStockItem_Source(), ecorePackage.getEString(), "source", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(steelEClass, Steel.class, "Steel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSteel_Grade(), ecorePackage.getEString(), "grade", null, 0, 1, Steel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSteel_Fy(), theBasePackage.getStress(), "fy", null, 0, 1, Steel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSteel_Fu(), theBasePackage.getStress(), "fu", null, 0, 1, Steel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(timberEClass, Timber.class, "Timber", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTimber_StrengthClass(), ecorePackage.getEString(), "strengthClass", null, 0, 1, Timber.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTimber_Fmk(), theBasePackage.getStress(), "fmk", null, 0, 1, Timber.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTimber_Fvk(), theBasePackage.getStress(), "fvk", null, 0, 1, Timber.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTimber_Density(), theBasePackage.getDensity(), "density", null, 0, 1, Timber.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sheetEClass, Sheet.class, "Sheet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSheet_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Steel(), this.getSteel(), null, "steel", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sectionEClass, Section.class, "Section", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(foldedSectionEClass, FoldedSection.class, "FoldedSection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFoldedSection_Shape(), this.getFoldShapeObject(), "shape", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_Height(), theBasePackage.getLength(), "height", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_Width(), theBasePackage.getLength(), "width", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_Lip(), theBasePackage.getLength(), "lip", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_InsideRadius(), theBasePackage.getLength(), "insideRadius", null, 0, 1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFoldedSection_Points(), theBasePackage.getPosition(), "points", null, 0, -1, FoldedSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(hollowSectionEClass, HollowSection.class, "HollowSection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHollowSection_Height(), theBasePackage.getLength(), "height", null, 0, 1, HollowSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHollowSection_Width(), theBasePackage.getLength(), "width", null, 0, 1, HollowSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHollowSection_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, HollowSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roundTubeEClass, RoundTube.class, "RoundTube", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRoundTube_Diameter(), theBasePackage.getLength(), "diameter", null, 0, 1, RoundTube.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoundTube_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, RoundTube.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(flatBarEClass, FlatBar.class, "FlatBar", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFlatBar_Height(), theBasePackage.getLength(), "height", null, 0, 1, FlatBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlatBar_Width(), theBasePackage.getLength(), "width", null, 0, 1, FlatBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(teeSectionEClass, TeeSection.class, "TeeSection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTeeSection_FlangeWidth(), theBasePackage.getLength(), "flangeWidth", null, 0, 1, TeeSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTeeSection_FlangeThickness(), theBasePackage.getLength(), "flangeThickness", null, 0, 1, TeeSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTeeSection_WebHeight(), theBasePackage.getLength(), "webHeight", null, 0, 1, TeeSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTeeSection_WebThickness(), theBasePackage.getLength(), "webThickness", null, 0, 1, TeeSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(timberRailEClass, TimberRail.class, "TimberRail", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTimberRail_Height(), theBasePackage.getLength(), "height", null, 0, 1, TimberRail.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTimberRail_Width(), theBasePackage.getLength(), "width", null, 0, 1, TimberRail.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTimberRail_Timber(), this.getTimber(), null, "timber", null, 0, 1, TimberRail.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(boltTypeEClass, BoltType.class, "BoltType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBoltType_Size(), ecorePackage.getEString(), "size", null, 0, 1, BoltType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBoltType_Grade(), ecorePackage.getEString(), "grade", null, 0, 1, BoltType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBoltType_ThreadsInShear(), ecorePackage.getEBooleanObject(), "threadsInShear", null, 0, 1, BoltType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(castorTypeEClass, CastorType.class, "CastorType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCastorType_RatedLoad(), theBasePackage.getMass(), "ratedLoad", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_WheelDiameter(), theBasePackage.getLength(), "wheelDiameter", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_Lead(), theBasePackage.getLength(), "lead", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_Tread(), this.getTreadObject(), "tread", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_ContactArea(), theBasePackage.getArea(), "contactArea", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_Stiffness(), theBasePackage.getStiffness(), "stiffness", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_TemperatureLimit(), theBasePackage.getTemperature(), "temperatureLimit", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCastorType_Mass(), theBasePackage.getMass(), "mass", null, 0, 1, CastorType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(padTypeEClass, PadType.class, "PadType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPadType_Material(), this.getPadMaterialObject(), "material", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_Length(), theBasePackage.getLength(), "length", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_Width(), theBasePackage.getLength(), "width", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_Modulus(), theBasePackage.getStress(), "modulus", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_Stiffness(), theBasePackage.getStiffness(), "stiffness", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_StressLimit(), theBasePackage.getStress(), "stressLimit", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_StrainLimit(), theBasePackage.getRatio(), "strainLimit", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPadType_TemperatureLimit(), theBasePackage.getTemperature(), "temperatureLimit", null, 0, 1, PadType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shimTypeEClass, ShimType.class, "ShimType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShimType_Material(), ecorePackage.getEString(), "material", null, 0, 1, ShimType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShimType_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, ShimType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShimType_Length(), theBasePackage.getLength(), "length", null, 0, 1, ShimType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShimType_Width(), theBasePackage.getLength(), "width", null, 0, 1, ShimType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShimType_OnHand(), ecorePackage.getEIntegerObject(), "onHand", null, 0, 1, ShimType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(foldShapeEEnum, FoldShape.class, "FoldShape");
		addEEnumLiteral(foldShapeEEnum, FoldShape.CHANNEL);
		addEEnumLiteral(foldShapeEEnum, FoldShape.LIPPED_CHANNEL);
		addEEnumLiteral(foldShapeEEnum, FoldShape.ANGLE);
		addEEnumLiteral(foldShapeEEnum, FoldShape.ZED);
		addEEnumLiteral(foldShapeEEnum, FoldShape.HAT);
		addEEnumLiteral(foldShapeEEnum, FoldShape.POLYLINE);

		initEEnum(treadEEnum, Tread.class, "Tread");
		addEEnumLiteral(treadEEnum, Tread.RUBBER_SOFT);
		addEEnumLiteral(treadEEnum, Tread.RUBBER_HARD);
		addEEnumLiteral(treadEEnum, Tread.POLYURETHANE);
		addEEnumLiteral(treadEEnum, Tread.POLYAMIDE);
		addEEnumLiteral(treadEEnum, Tread.STEEL);

		initEEnum(padMaterialEEnum, PadMaterial.class, "PadMaterial");
		addEEnumLiteral(padMaterialEEnum, PadMaterial.CORK);
		addEEnumLiteral(padMaterialEEnum, PadMaterial.RUBBER);
		addEEnumLiteral(padMaterialEEnum, PadMaterial.FELT);
		addEEnumLiteral(padMaterialEEnum, PadMaterial.OTHER);

		// Initialize data types
		initEDataType(foldShapeObjectEDataType, FoldShape.class, "FoldShapeObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(treadObjectEDataType, Tread.class, "TreadObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);
		initEDataType(padMaterialObjectEDataType, PadMaterial.class, "PadMaterialObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);

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
		  (foldShapeObjectEDataType,
		   source,
		   new String[] {
			   "name", "FoldShape:Object",
			   "baseType", "FoldShape"
		   });
		addAnnotation
		  (treadObjectEDataType,
		   source,
		   new String[] {
			   "name", "Tread:Object",
			   "baseType", "Tread"
		   });
		addAnnotation
		  (padMaterialObjectEDataType,
		   source,
		   new String[] {
			   "name", "PadMaterial:Object",
			   "baseType", "PadMaterial"
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
		  (getSteel_Fy(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSteel_Fu(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTimber_Fmk(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTimber_Fvk(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTimber_Density(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSheet_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFoldedSection_Height(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFoldedSection_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFoldedSection_Lip(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFoldedSection_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFoldedSection_InsideRadius(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getHollowSection_Height(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getHollowSection_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getHollowSection_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getRoundTube_Diameter(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getRoundTube_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFlatBar_Height(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getFlatBar_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTeeSection_FlangeWidth(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTeeSection_FlangeThickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTeeSection_WebHeight(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTeeSection_WebThickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTimberRail_Height(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getTimberRail_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getCastorType_RatedLoad(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getCastorType_WheelDiameter(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getCastorType_Lead(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getCastorType_ContactArea(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getCastorType_Stiffness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getCastorType_Mass(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_Length(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_Modulus(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_Stiffness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_StressLimit(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPadType_StrainLimit(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getShimType_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getShimType_Length(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getShimType_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getShimType_OnHand(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
	}

} //StockPackageImpl
