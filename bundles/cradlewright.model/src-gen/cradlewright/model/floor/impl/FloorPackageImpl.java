/**
 */
package cradlewright.model.floor.impl;

import cradlewright.model.base.BasePackage;

import cradlewright.model.base.impl.BasePackageImpl;

import cradlewright.model.fixture.FixturePackage;

import cradlewright.model.fixture.impl.FixturePackageImpl;

import cradlewright.model.floor.Column;
import cradlewright.model.floor.Door;
import cradlewright.model.floor.Floor;
import cradlewright.model.floor.FloorFactory;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.PlaceKind;
import cradlewright.model.floor.Placement;
import cradlewright.model.floor.Slab;

import cradlewright.model.job.JobPackage;

import cradlewright.model.job.impl.JobPackageImpl;

import cradlewright.model.stock.StockPackage;

import cradlewright.model.stock.impl.StockPackageImpl;

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
public class FloorPackageImpl extends EPackageImpl implements FloorPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass floorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass slabEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass doorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass columnEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum placeKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType placeKindObjectEDataType = null;

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
	 * @see cradlewright.model.floor.FloorPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private FloorPackageImpl() {
		super(eNS_URI, FloorFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link FloorPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static FloorPackage init() {
		if (isInited) return (FloorPackage)EPackage.Registry.INSTANCE.getEPackage(FloorPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredFloorPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		FloorPackageImpl theFloorPackage = registeredFloorPackage instanceof FloorPackageImpl ? (FloorPackageImpl)registeredFloorPackage : new FloorPackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(BasePackage.eNS_URI);
		BasePackageImpl theBasePackage = (BasePackageImpl)(registeredPackage instanceof BasePackageImpl ? registeredPackage : BasePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(StockPackage.eNS_URI);
		StockPackageImpl theStockPackage = (StockPackageImpl)(registeredPackage instanceof StockPackageImpl ? registeredPackage : StockPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(VehiclePackage.eNS_URI);
		VehiclePackageImpl theVehiclePackage = (VehiclePackageImpl)(registeredPackage instanceof VehiclePackageImpl ? registeredPackage : VehiclePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(FixturePackage.eNS_URI);
		FixturePackageImpl theFixturePackage = (FixturePackageImpl)(registeredPackage instanceof FixturePackageImpl ? registeredPackage : FixturePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(JobPackage.eNS_URI);
		JobPackageImpl theJobPackage = (JobPackageImpl)(registeredPackage instanceof JobPackageImpl ? registeredPackage : JobPackage.eINSTANCE);

		// Create package meta-data objects
		theFloorPackage.createPackageContents();
		theBasePackage.createPackageContents();
		theStockPackage.createPackageContents();
		theVehiclePackage.createPackageContents();
		theFixturePackage.createPackageContents();
		theJobPackage.createPackageContents();

		// Initialize created meta-data
		theFloorPackage.initializePackageContents();
		theBasePackage.initializePackageContents();
		theStockPackage.initializePackageContents();
		theVehiclePackage.initializePackageContents();
		theFixturePackage.initializePackageContents();
		theJobPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theFloorPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(FloorPackage.eNS_URI, theFloorPackage);
		return theFloorPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFloor() {
		return floorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFloor_Slabs() {
		return (EReference)floorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFloor_Places() {
		return (EReference)floorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFloor_Doors() {
		return (EReference)floorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFloor_Columns() {
		return (EReference)floorEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFloor_Placements() {
		return (EReference)floorEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSlab() {
		return slabEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Outline() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Thickness() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Fck() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Fabric() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Subgrade() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_DailyWheelLoad() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_DailyWheelContact() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSlab_Suspended() {
		return (EAttribute)slabEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlace() {
		return placeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_Kind() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_Position() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlace_Slab() {
		return (EReference)placeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_Outdoors() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_Fall() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_Temperature() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_SteepestStep() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDoor() {
		return doorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDoor_Position() {
		return (EAttribute)doorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDoor_Width() {
		return (EAttribute)doorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDoor_Height() {
		return (EAttribute)doorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getColumn() {
		return columnEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColumn_Position() {
		return (EAttribute)columnEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColumn_Width() {
		return (EAttribute)columnEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColumn_Depth() {
		return (EAttribute)columnEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlacement() {
		return placementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlacement_Visit() {
		return (EReference)placementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlacement_Place() {
		return (EReference)placementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_Position() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_Heading() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPlaceKind() {
		return placeKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPlaceKindObject() {
		return placeKindObjectEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FloorFactory getFloorFactory() {
		return (FloorFactory)getEFactoryInstance();
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
		floorEClass = createEClass(FLOOR);
		createEReference(floorEClass, FLOOR__SLABS);
		createEReference(floorEClass, FLOOR__PLACES);
		createEReference(floorEClass, FLOOR__DOORS);
		createEReference(floorEClass, FLOOR__COLUMNS);
		createEReference(floorEClass, FLOOR__PLACEMENTS);

		slabEClass = createEClass(SLAB);
		createEAttribute(slabEClass, SLAB__OUTLINE);
		createEAttribute(slabEClass, SLAB__THICKNESS);
		createEAttribute(slabEClass, SLAB__FCK);
		createEAttribute(slabEClass, SLAB__FABRIC);
		createEAttribute(slabEClass, SLAB__SUBGRADE);
		createEAttribute(slabEClass, SLAB__DAILY_WHEEL_LOAD);
		createEAttribute(slabEClass, SLAB__DAILY_WHEEL_CONTACT);
		createEAttribute(slabEClass, SLAB__SUSPENDED);

		placeEClass = createEClass(PLACE);
		createEAttribute(placeEClass, PLACE__KIND);
		createEAttribute(placeEClass, PLACE__POSITION);
		createEReference(placeEClass, PLACE__SLAB);
		createEAttribute(placeEClass, PLACE__OUTDOORS);
		createEAttribute(placeEClass, PLACE__FALL);
		createEAttribute(placeEClass, PLACE__TEMPERATURE);
		createEAttribute(placeEClass, PLACE__STEEPEST_STEP);

		doorEClass = createEClass(DOOR);
		createEAttribute(doorEClass, DOOR__POSITION);
		createEAttribute(doorEClass, DOOR__WIDTH);
		createEAttribute(doorEClass, DOOR__HEIGHT);

		columnEClass = createEClass(COLUMN);
		createEAttribute(columnEClass, COLUMN__POSITION);
		createEAttribute(columnEClass, COLUMN__WIDTH);
		createEAttribute(columnEClass, COLUMN__DEPTH);

		placementEClass = createEClass(PLACEMENT);
		createEReference(placementEClass, PLACEMENT__VISIT);
		createEReference(placementEClass, PLACEMENT__PLACE);
		createEAttribute(placementEClass, PLACEMENT__POSITION);
		createEAttribute(placementEClass, PLACEMENT__HEADING);

		// Create enums
		placeKindEEnum = createEEnum(PLACE_KIND);

		// Create data types
		placeKindObjectEDataType = createEDataType(PLACE_KIND_OBJECT);
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
		VehiclePackage theVehiclePackage = (VehiclePackage)EPackage.Registry.INSTANCE.getEPackage(VehiclePackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		floorEClass.getESuperTypes().add(theBasePackage.getFileRoot());
		floorEClass.getESuperTypes().add(theBasePackage.getNamed());
		slabEClass.getESuperTypes().add(theBasePackage.getNamed());
		placeEClass.getESuperTypes().add(theBasePackage.getNamed());
		doorEClass.getESuperTypes().add(theBasePackage.getNamed());
		columnEClass.getESuperTypes().add(theBasePackage.getNamed());
		placementEClass.getESuperTypes().add(theBasePackage.getNamed());

		// Initialize classes and features; add operations and parameters
		initEClass(floorEClass, Floor.class, "Floor", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFloor_Slabs(), this.getSlab(), null, "slabs", null, 0, -1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFloor_Places(), this.getPlace(), null, "places", null, 0, -1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFloor_Doors(), this.getDoor(), null, "doors", null, 0, -1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFloor_Columns(), this.getColumn(), null, "columns", null, 0, -1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFloor_Placements(), this.getPlacement(), null, "placements", null, 0, -1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(slabEClass, Slab.class, "Slab", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSlab_Outline(), theBasePackage.getPosition(), "outline", null, 0, -1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_Thickness(), theBasePackage.getLength(), "thickness", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_Fck(), theBasePackage.getStress(), "fck", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_Fabric(), ecorePackage.getEString(), "fabric", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_Subgrade(), theBasePackage.getSubgradeModulus(), "subgrade", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_DailyWheelLoad(), theBasePackage.getMass(), "dailyWheelLoad", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_DailyWheelContact(), theBasePackage.getArea(), "dailyWheelContact", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSlab_Suspended(), ecorePackage.getEBooleanObject(), "suspended", null, 0, 1, Slab.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placeEClass, Place.class, "Place", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlace_Kind(), this.getPlaceKindObject(), "kind", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPlace_Slab(), this.getSlab(), null, "slab", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_Outdoors(), ecorePackage.getEBooleanObject(), "outdoors", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_Fall(), theBasePackage.getRatio(), "fall", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_Temperature(), theBasePackage.getTemperature(), "temperature", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_SteepestStep(), theBasePackage.getLength(), "steepestStep", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(doorEClass, Door.class, "Door", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDoor_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Door.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDoor_Width(), theBasePackage.getLength(), "width", null, 0, 1, Door.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDoor_Height(), theBasePackage.getLength(), "height", null, 0, 1, Door.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(columnEClass, Column.class, "Column", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getColumn_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Column.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getColumn_Width(), theBasePackage.getLength(), "width", null, 0, 1, Column.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getColumn_Depth(), theBasePackage.getLength(), "depth", null, 0, 1, Column.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placementEClass, Placement.class, "Placement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPlacement_Visit(), theVehiclePackage.getVisit(), null, "visit", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPlacement_Place(), this.getPlace(), null, "place", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Position(), theBasePackage.getPosition(), "position", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Heading(), theBasePackage.getAngle(), "heading", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(placeKindEEnum, PlaceKind.class, "PlaceKind");
		addEEnumLiteral(placeKindEEnum, PlaceKind.BAY);
		addEEnumLiteral(placeKindEEnum, PlaceKind.RACK);
		addEEnumLiteral(placeKindEEnum, PlaceKind.YARD);
		addEEnumLiteral(placeKindEEnum, PlaceKind.BOOTH);
		addEEnumLiteral(placeKindEEnum, PlaceKind.AWAY);

		// Initialize data types
		initEDataType(placeKindObjectEDataType, PlaceKind.class, "PlaceKindObject", IS_SERIALIZABLE, IS_GENERATED_INSTANCE_CLASS);

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
		  (placeKindObjectEDataType,
		   source,
		   new String[] {
			   "name", "PlaceKind:Object",
			   "baseType", "PlaceKind"
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
		  (getSlab_Thickness(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSlab_Fck(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSlab_Subgrade(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSlab_DailyWheelLoad(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getSlab_DailyWheelContact(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getPlace_Fall(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getPlace_SteepestStep(),
		   source,
		   new String[] {
			   "sign", "not negative"
		   });
		addAnnotation
		  (getDoor_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getDoor_Height(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getColumn_Width(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
		addAnnotation
		  (getColumn_Depth(),
		   source,
		   new String[] {
			   "sign", "positive"
		   });
	}

} //FloorPackageImpl
