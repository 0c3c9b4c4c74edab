/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.vehicle.*;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class VehicleFactoryImpl extends EFactoryImpl implements VehicleFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static VehicleFactory init() {
		try {
			VehicleFactory theVehicleFactory = (VehicleFactory)EPackage.Registry.INSTANCE.getEFactory(VehiclePackage.eNS_URI);
			if (theVehicleFactory != null) {
				return theVehicleFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new VehicleFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public VehicleFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case VehiclePackage.CAR: return createCar();
			case VehiclePackage.MARK: return createMark();
			case VehiclePackage.PIECE: return createPiece();
			case VehiclePackage.PART: return createPart();
			case VehiclePackage.MOUNT: return createMount();
			case VehiclePackage.SHIM_STACK: return createShimStack();
			case VehiclePackage.SHIM: return createShim();
			case VehiclePackage.LIFT_POINT: return createLiftPoint();
			case VehiclePackage.WORK_POINT: return createWorkPoint();
			case VehiclePackage.CUT_ZONE: return createCutZone();
			case VehiclePackage.TEMPORARY_LOAD: return createTemporaryLoad();
			case VehiclePackage.BRACE: return createBrace();
			case VehiclePackage.APERTURE_READING: return createApertureReading();
			case VehiclePackage.STAGE: return createStage();
			case VehiclePackage.VISIT: return createVisit();
			case VehiclePackage.WEIGHING: return createWeighing();
			case VehiclePackage.WEIGHING_READING: return createWeighingReading();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case VehiclePackage.CONSTRUCTION:
				return createConstructionFromString(eDataType, initialValue);
			case VehiclePackage.PIECE_KIND:
				return createPieceKindFromString(eDataType, initialValue);
			case VehiclePackage.MOUNT_STATE:
				return createMountStateFromString(eDataType, initialValue);
			case VehiclePackage.WORK_KIND:
				return createWorkKindFromString(eDataType, initialValue);
			case VehiclePackage.LOAD_KIND:
				return createLoadKindFromString(eDataType, initialValue);
			case VehiclePackage.CONSTRUCTION_OBJECT:
				return createConstructionObjectFromString(eDataType, initialValue);
			case VehiclePackage.PIECE_KIND_OBJECT:
				return createPieceKindObjectFromString(eDataType, initialValue);
			case VehiclePackage.MOUNT_STATE_OBJECT:
				return createMountStateObjectFromString(eDataType, initialValue);
			case VehiclePackage.WORK_KIND_OBJECT:
				return createWorkKindObjectFromString(eDataType, initialValue);
			case VehiclePackage.LOAD_KIND_OBJECT:
				return createLoadKindObjectFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case VehiclePackage.CONSTRUCTION:
				return convertConstructionToString(eDataType, instanceValue);
			case VehiclePackage.PIECE_KIND:
				return convertPieceKindToString(eDataType, instanceValue);
			case VehiclePackage.MOUNT_STATE:
				return convertMountStateToString(eDataType, instanceValue);
			case VehiclePackage.WORK_KIND:
				return convertWorkKindToString(eDataType, instanceValue);
			case VehiclePackage.LOAD_KIND:
				return convertLoadKindToString(eDataType, instanceValue);
			case VehiclePackage.CONSTRUCTION_OBJECT:
				return convertConstructionObjectToString(eDataType, instanceValue);
			case VehiclePackage.PIECE_KIND_OBJECT:
				return convertPieceKindObjectToString(eDataType, instanceValue);
			case VehiclePackage.MOUNT_STATE_OBJECT:
				return convertMountStateObjectToString(eDataType, instanceValue);
			case VehiclePackage.WORK_KIND_OBJECT:
				return convertWorkKindObjectToString(eDataType, instanceValue);
			case VehiclePackage.LOAD_KIND_OBJECT:
				return convertLoadKindObjectToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Car createCar() {
		CarImpl car = new CarImpl();
		return car;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mark createMark() {
		MarkImpl mark = new MarkImpl();
		return mark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece createPiece() {
		PieceImpl piece = new PieceImpl();
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Part createPart() {
		PartImpl part = new PartImpl();
		return part;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mount createMount() {
		MountImpl mount = new MountImpl();
		return mount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimStack createShimStack() {
		ShimStackImpl shimStack = new ShimStackImpl();
		return shimStack;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Shim createShim() {
		ShimImpl shim = new ShimImpl();
		return shim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LiftPoint createLiftPoint() {
		LiftPointImpl liftPoint = new LiftPointImpl();
		return liftPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WorkPoint createWorkPoint() {
		WorkPointImpl workPoint = new WorkPointImpl();
		return workPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CutZone createCutZone() {
		CutZoneImpl cutZone = new CutZoneImpl();
		return cutZone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TemporaryLoad createTemporaryLoad() {
		TemporaryLoadImpl temporaryLoad = new TemporaryLoadImpl();
		return temporaryLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Brace createBrace() {
		BraceImpl brace = new BraceImpl();
		return brace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ApertureReading createApertureReading() {
		ApertureReadingImpl apertureReading = new ApertureReadingImpl();
		return apertureReading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage createStage() {
		StageImpl stage = new StageImpl();
		return stage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Visit createVisit() {
		VisitImpl visit = new VisitImpl();
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Weighing createWeighing() {
		WeighingImpl weighing = new WeighingImpl();
		return weighing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WeighingReading createWeighingReading() {
		WeighingReadingImpl weighingReading = new WeighingReadingImpl();
		return weighingReading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Construction createConstructionFromString(EDataType eDataType, String initialValue) {
		Construction result = Construction.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConstructionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PieceKind createPieceKindFromString(EDataType eDataType, String initialValue) {
		PieceKind result = PieceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPieceKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MountState createMountStateFromString(EDataType eDataType, String initialValue) {
		MountState result = MountState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMountStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WorkKind createWorkKindFromString(EDataType eDataType, String initialValue) {
		WorkKind result = WorkKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWorkKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LoadKind createLoadKindFromString(EDataType eDataType, String initialValue) {
		LoadKind result = LoadKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLoadKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Construction createConstructionObjectFromString(EDataType eDataType, String initialValue) {
		return createConstructionFromString(VehiclePackage.Literals.CONSTRUCTION, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConstructionObjectToString(EDataType eDataType, Object instanceValue) {
		return convertConstructionToString(VehiclePackage.Literals.CONSTRUCTION, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PieceKind createPieceKindObjectFromString(EDataType eDataType, String initialValue) {
		return createPieceKindFromString(VehiclePackage.Literals.PIECE_KIND, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPieceKindObjectToString(EDataType eDataType, Object instanceValue) {
		return convertPieceKindToString(VehiclePackage.Literals.PIECE_KIND, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MountState createMountStateObjectFromString(EDataType eDataType, String initialValue) {
		return createMountStateFromString(VehiclePackage.Literals.MOUNT_STATE, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMountStateObjectToString(EDataType eDataType, Object instanceValue) {
		return convertMountStateToString(VehiclePackage.Literals.MOUNT_STATE, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WorkKind createWorkKindObjectFromString(EDataType eDataType, String initialValue) {
		return createWorkKindFromString(VehiclePackage.Literals.WORK_KIND, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWorkKindObjectToString(EDataType eDataType, Object instanceValue) {
		return convertWorkKindToString(VehiclePackage.Literals.WORK_KIND, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LoadKind createLoadKindObjectFromString(EDataType eDataType, String initialValue) {
		return createLoadKindFromString(VehiclePackage.Literals.LOAD_KIND, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLoadKindObjectToString(EDataType eDataType, Object instanceValue) {
		return convertLoadKindToString(VehiclePackage.Literals.LOAD_KIND, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VehiclePackage getVehiclePackage() {
		return (VehiclePackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static VehiclePackage getPackage() {
		return VehiclePackage.eINSTANCE;
	}

} //VehicleFactoryImpl
