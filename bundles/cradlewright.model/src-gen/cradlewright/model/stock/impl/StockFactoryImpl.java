/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.*;

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
public class StockFactoryImpl extends EFactoryImpl implements StockFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static StockFactory init() {
		try {
			StockFactory theStockFactory = (StockFactory)EPackage.Registry.INSTANCE.getEFactory(StockPackage.eNS_URI);
			if (theStockFactory != null) {
				return theStockFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new StockFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StockFactoryImpl() {
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
			case StockPackage.STOCK: return createStock();
			case StockPackage.STEEL: return createSteel();
			case StockPackage.TIMBER: return createTimber();
			case StockPackage.SHEET: return createSheet();
			case StockPackage.FOLDED_SECTION: return createFoldedSection();
			case StockPackage.HOLLOW_SECTION: return createHollowSection();
			case StockPackage.ROUND_TUBE: return createRoundTube();
			case StockPackage.FLAT_BAR: return createFlatBar();
			case StockPackage.TEE_SECTION: return createTeeSection();
			case StockPackage.TIMBER_RAIL: return createTimberRail();
			case StockPackage.BOLT_TYPE: return createBoltType();
			case StockPackage.CASTOR_TYPE: return createCastorType();
			case StockPackage.PAD_TYPE: return createPadType();
			case StockPackage.SHIM_TYPE: return createShimType();
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
			case StockPackage.FOLD_SHAPE:
				return createFoldShapeFromString(eDataType, initialValue);
			case StockPackage.TREAD:
				return createTreadFromString(eDataType, initialValue);
			case StockPackage.PAD_MATERIAL:
				return createPadMaterialFromString(eDataType, initialValue);
			case StockPackage.FOLD_SHAPE_OBJECT:
				return createFoldShapeObjectFromString(eDataType, initialValue);
			case StockPackage.TREAD_OBJECT:
				return createTreadObjectFromString(eDataType, initialValue);
			case StockPackage.PAD_MATERIAL_OBJECT:
				return createPadMaterialObjectFromString(eDataType, initialValue);
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
			case StockPackage.FOLD_SHAPE:
				return convertFoldShapeToString(eDataType, instanceValue);
			case StockPackage.TREAD:
				return convertTreadToString(eDataType, instanceValue);
			case StockPackage.PAD_MATERIAL:
				return convertPadMaterialToString(eDataType, instanceValue);
			case StockPackage.FOLD_SHAPE_OBJECT:
				return convertFoldShapeObjectToString(eDataType, instanceValue);
			case StockPackage.TREAD_OBJECT:
				return convertTreadObjectToString(eDataType, instanceValue);
			case StockPackage.PAD_MATERIAL_OBJECT:
				return convertPadMaterialObjectToString(eDataType, instanceValue);
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
	public Stock createStock() {
		StockImpl stock = new StockImpl();
		return stock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Steel createSteel() {
		SteelImpl steel = new SteelImpl();
		return steel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Timber createTimber() {
		TimberImpl timber = new TimberImpl();
		return timber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sheet createSheet() {
		SheetImpl sheet = new SheetImpl();
		return sheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FoldedSection createFoldedSection() {
		FoldedSectionImpl foldedSection = new FoldedSectionImpl();
		return foldedSection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HollowSection createHollowSection() {
		HollowSectionImpl hollowSection = new HollowSectionImpl();
		return hollowSection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoundTube createRoundTube() {
		RoundTubeImpl roundTube = new RoundTubeImpl();
		return roundTube;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FlatBar createFlatBar() {
		FlatBarImpl flatBar = new FlatBarImpl();
		return flatBar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TeeSection createTeeSection() {
		TeeSectionImpl teeSection = new TeeSectionImpl();
		return teeSection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimberRail createTimberRail() {
		TimberRailImpl timberRail = new TimberRailImpl();
		return timberRail;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BoltType createBoltType() {
		BoltTypeImpl boltType = new BoltTypeImpl();
		return boltType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CastorType createCastorType() {
		CastorTypeImpl castorType = new CastorTypeImpl();
		return castorType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PadType createPadType() {
		PadTypeImpl padType = new PadTypeImpl();
		return padType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShimType createShimType() {
		ShimTypeImpl shimType = new ShimTypeImpl();
		return shimType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FoldShape createFoldShapeFromString(EDataType eDataType, String initialValue) {
		FoldShape result = FoldShape.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFoldShapeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Tread createTreadFromString(EDataType eDataType, String initialValue) {
		Tread result = Tread.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTreadToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PadMaterial createPadMaterialFromString(EDataType eDataType, String initialValue) {
		PadMaterial result = PadMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPadMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FoldShape createFoldShapeObjectFromString(EDataType eDataType, String initialValue) {
		return createFoldShapeFromString(StockPackage.Literals.FOLD_SHAPE, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFoldShapeObjectToString(EDataType eDataType, Object instanceValue) {
		return convertFoldShapeToString(StockPackage.Literals.FOLD_SHAPE, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Tread createTreadObjectFromString(EDataType eDataType, String initialValue) {
		return createTreadFromString(StockPackage.Literals.TREAD, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTreadObjectToString(EDataType eDataType, Object instanceValue) {
		return convertTreadToString(StockPackage.Literals.TREAD, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PadMaterial createPadMaterialObjectFromString(EDataType eDataType, String initialValue) {
		return createPadMaterialFromString(StockPackage.Literals.PAD_MATERIAL, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPadMaterialObjectToString(EDataType eDataType, Object instanceValue) {
		return convertPadMaterialToString(StockPackage.Literals.PAD_MATERIAL, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockPackage getStockPackage() {
		return (StockPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static StockPackage getPackage() {
		return StockPackage.eINSTANCE;
	}

} //StockFactoryImpl
