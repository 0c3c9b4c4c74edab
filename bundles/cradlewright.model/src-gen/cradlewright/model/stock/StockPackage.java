/**
 */
package cradlewright.model.stock;

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
 * What the shop keeps: steel, sections, bolts, castors, pads and shims, copied from catalogues with their source.
 * <!-- end-model-doc -->
 * @see cradlewright.model.stock.StockFactory
 * @model kind="package"
 * @generated
 */
public interface StockPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "stock";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:cradlewright:stock";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "stock";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	StockPackage eINSTANCE = cradlewright.model.stock.impl.StockPackageImpl.init();

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.StockImpl <em>Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.StockImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getStock()
	 * @generated
	 */
	int STOCK = 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK__SCHEMA = BasePackage.FILE_ROOT__SCHEMA;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK__DRAFT = BasePackage.FILE_ROOT__DRAFT;

	/**
	 * The feature id for the '<em><b>Items</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK__ITEMS = BasePackage.FILE_ROOT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_FEATURE_COUNT = BasePackage.FILE_ROOT_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.StockItemImpl <em>Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.StockItemImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getStockItem()
	 * @generated
	 */
	int STOCK_ITEM = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__SOURCE = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.SteelImpl <em>Steel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.SteelImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getSteel()
	 * @generated
	 */
	int STEEL = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Grade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__GRADE = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Fy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__FY = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fu</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL__FU = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Steel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEEL_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.TimberImpl <em>Timber</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.TimberImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getTimber()
	 * @generated
	 */
	int TIMBER = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Strength Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__STRENGTH_CLASS = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Fmk</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__FMK = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fvk</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__FVK = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER__DENSITY = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Timber</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.SheetImpl <em>Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.SheetImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getSheet()
	 * @generated
	 */
	int SHEET = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__THICKNESS = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Steel</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__STEEL = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.SectionImpl <em>Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.SectionImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getSection()
	 * @generated
	 */
	int SECTION = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SECTION__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SECTION__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SECTION__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SECTION__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The number of structural features of the '<em>Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SECTION_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.FoldedSectionImpl <em>Folded Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.FoldedSectionImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldedSection()
	 * @generated
	 */
	int FOLDED_SECTION = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__SHAPE = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__HEIGHT = SECTION_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__WIDTH = SECTION_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Lip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__LIP = SECTION_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__THICKNESS = SECTION_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Inside Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__INSIDE_RADIUS = SECTION_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Points</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION__POINTS = SECTION_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Folded Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FOLDED_SECTION_FEATURE_COUNT = SECTION_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.HollowSectionImpl <em>Hollow Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.HollowSectionImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getHollowSection()
	 * @generated
	 */
	int HOLLOW_SECTION = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__HEIGHT = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__WIDTH = SECTION_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION__THICKNESS = SECTION_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Hollow Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLLOW_SECTION_FEATURE_COUNT = SECTION_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.RoundTubeImpl <em>Round Tube</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.RoundTubeImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getRoundTube()
	 * @generated
	 */
	int ROUND_TUBE = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__DIAMETER = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE__THICKNESS = SECTION_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Round Tube</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TUBE_FEATURE_COUNT = SECTION_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.FlatBarImpl <em>Flat Bar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.FlatBarImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getFlatBar()
	 * @generated
	 */
	int FLAT_BAR = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__HEIGHT = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR__WIDTH = SECTION_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Flat Bar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAT_BAR_FEATURE_COUNT = SECTION_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.TeeSectionImpl <em>Tee Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.TeeSectionImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getTeeSection()
	 * @generated
	 */
	int TEE_SECTION = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Flange Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__FLANGE_WIDTH = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Flange Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__FLANGE_THICKNESS = SECTION_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Web Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__WEB_HEIGHT = SECTION_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Web Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION__WEB_THICKNESS = SECTION_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Tee Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEE_SECTION_FEATURE_COUNT = SECTION_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.TimberRailImpl <em>Timber Rail</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.TimberRailImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getTimberRail()
	 * @generated
	 */
	int TIMBER_RAIL = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__ID = SECTION__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__NAME = SECTION__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__NOTE = SECTION__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__SOURCE = SECTION__SOURCE;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__HEIGHT = SECTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__WIDTH = SECTION_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Timber</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL__TIMBER = SECTION_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Timber Rail</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TIMBER_RAIL_FEATURE_COUNT = SECTION_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.BoltTypeImpl <em>Bolt Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.BoltTypeImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getBoltType()
	 * @generated
	 */
	int BOLT_TYPE = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__SIZE = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Grade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__GRADE = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Threads In Shear</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE__THREADS_IN_SHEAR = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Bolt Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOLT_TYPE_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.CastorTypeImpl <em>Castor Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.CastorTypeImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getCastorType()
	 * @generated
	 */
	int CASTOR_TYPE = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Rated Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__RATED_LOAD = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wheel Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__WHEEL_DIAMETER = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__LEAD = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Tread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__TREAD = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Contact Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__CONTACT_AREA = STOCK_ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__STIFFNESS = STOCK_ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__TEMPERATURE_LIMIT = STOCK_ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE__MASS = STOCK_ITEM_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Castor Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASTOR_TYPE_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.PadTypeImpl <em>Pad Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.PadTypeImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadType()
	 * @generated
	 */
	int PAD_TYPE = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__MATERIAL = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__LENGTH = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__WIDTH = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__THICKNESS = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Modulus</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__MODULUS = STOCK_ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__STIFFNESS = STOCK_ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Stress Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__STRESS_LIMIT = STOCK_ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Strain Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__STRAIN_LIMIT = STOCK_ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE__TEMPERATURE_LIMIT = STOCK_ITEM_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Pad Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAD_TYPE_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 9;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.impl.ShimTypeImpl <em>Shim Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.impl.ShimTypeImpl
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getShimType()
	 * @generated
	 */
	int SHIM_TYPE = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__ID = STOCK_ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__NAME = STOCK_ITEM__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__NOTE = STOCK_ITEM__NOTE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__SOURCE = STOCK_ITEM__SOURCE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__MATERIAL = STOCK_ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__THICKNESS = STOCK_ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__LENGTH = STOCK_ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__WIDTH = STOCK_ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>On Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE__ON_HAND = STOCK_ITEM_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Shim Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHIM_TYPE_FEATURE_COUNT = STOCK_ITEM_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.FoldShape <em>Fold Shape</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.FoldShape
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldShape()
	 * @generated
	 */
	int FOLD_SHAPE = 16;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.Tread <em>Tread</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.Tread
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getTread()
	 * @generated
	 */
	int TREAD = 17;

	/**
	 * The meta object id for the '{@link cradlewright.model.stock.PadMaterial <em>Pad Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.PadMaterial
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadMaterial()
	 * @generated
	 */
	int PAD_MATERIAL = 18;

	/**
	 * The meta object id for the '<em>Fold Shape Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.FoldShape
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldShapeObject()
	 * @generated
	 */
	int FOLD_SHAPE_OBJECT = 19;

	/**
	 * The meta object id for the '<em>Tread Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.Tread
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getTreadObject()
	 * @generated
	 */
	int TREAD_OBJECT = 20;

	/**
	 * The meta object id for the '<em>Pad Material Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.stock.PadMaterial
	 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadMaterialObject()
	 * @generated
	 */
	int PAD_MATERIAL_OBJECT = 21;


	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.Stock <em>Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock</em>'.
	 * @see cradlewright.model.stock.Stock
	 * @generated
	 */
	EClass getStock();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.stock.Stock#getItems <em>Items</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Items</em>'.
	 * @see cradlewright.model.stock.Stock#getItems()
	 * @see #getStock()
	 * @generated
	 */
	EReference getStock_Items();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.StockItem <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Item</em>'.
	 * @see cradlewright.model.stock.StockItem
	 * @generated
	 */
	EClass getStockItem();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.StockItem#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see cradlewright.model.stock.StockItem#getSource()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Source();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.Steel <em>Steel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Steel</em>'.
	 * @see cradlewright.model.stock.Steel
	 * @generated
	 */
	EClass getSteel();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Steel#getGrade <em>Grade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grade</em>'.
	 * @see cradlewright.model.stock.Steel#getGrade()
	 * @see #getSteel()
	 * @generated
	 */
	EAttribute getSteel_Grade();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Steel#getFy <em>Fy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fy</em>'.
	 * @see cradlewright.model.stock.Steel#getFy()
	 * @see #getSteel()
	 * @generated
	 */
	EAttribute getSteel_Fy();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Steel#getFu <em>Fu</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fu</em>'.
	 * @see cradlewright.model.stock.Steel#getFu()
	 * @see #getSteel()
	 * @generated
	 */
	EAttribute getSteel_Fu();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.Timber <em>Timber</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Timber</em>'.
	 * @see cradlewright.model.stock.Timber
	 * @generated
	 */
	EClass getTimber();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Timber#getStrengthClass <em>Strength Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strength Class</em>'.
	 * @see cradlewright.model.stock.Timber#getStrengthClass()
	 * @see #getTimber()
	 * @generated
	 */
	EAttribute getTimber_StrengthClass();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Timber#getFmk <em>Fmk</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fmk</em>'.
	 * @see cradlewright.model.stock.Timber#getFmk()
	 * @see #getTimber()
	 * @generated
	 */
	EAttribute getTimber_Fmk();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Timber#getFvk <em>Fvk</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fvk</em>'.
	 * @see cradlewright.model.stock.Timber#getFvk()
	 * @see #getTimber()
	 * @generated
	 */
	EAttribute getTimber_Fvk();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Timber#getDensity <em>Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density</em>'.
	 * @see cradlewright.model.stock.Timber#getDensity()
	 * @see #getTimber()
	 * @generated
	 */
	EAttribute getTimber_Density();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.Sheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet</em>'.
	 * @see cradlewright.model.stock.Sheet
	 * @generated
	 */
	EClass getSheet();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.Sheet#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.Sheet#getThickness()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_Thickness();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.stock.Sheet#getSteel <em>Steel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Steel</em>'.
	 * @see cradlewright.model.stock.Sheet#getSteel()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Steel();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.Section <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Section</em>'.
	 * @see cradlewright.model.stock.Section
	 * @generated
	 */
	EClass getSection();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.FoldedSection <em>Folded Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Folded Section</em>'.
	 * @see cradlewright.model.stock.FoldedSection
	 * @generated
	 */
	EClass getFoldedSection();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getShape <em>Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shape</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getShape()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Shape();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getHeight()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Height();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getWidth()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getLip <em>Lip</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lip</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getLip()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Lip();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getThickness()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FoldedSection#getInsideRadius <em>Inside Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inside Radius</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getInsideRadius()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_InsideRadius();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.stock.FoldedSection#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Points</em>'.
	 * @see cradlewright.model.stock.FoldedSection#getPoints()
	 * @see #getFoldedSection()
	 * @generated
	 */
	EAttribute getFoldedSection_Points();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.HollowSection <em>Hollow Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hollow Section</em>'.
	 * @see cradlewright.model.stock.HollowSection
	 * @generated
	 */
	EClass getHollowSection();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.HollowSection#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see cradlewright.model.stock.HollowSection#getHeight()
	 * @see #getHollowSection()
	 * @generated
	 */
	EAttribute getHollowSection_Height();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.HollowSection#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.HollowSection#getWidth()
	 * @see #getHollowSection()
	 * @generated
	 */
	EAttribute getHollowSection_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.HollowSection#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.HollowSection#getThickness()
	 * @see #getHollowSection()
	 * @generated
	 */
	EAttribute getHollowSection_Thickness();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.RoundTube <em>Round Tube</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Round Tube</em>'.
	 * @see cradlewright.model.stock.RoundTube
	 * @generated
	 */
	EClass getRoundTube();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.RoundTube#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see cradlewright.model.stock.RoundTube#getDiameter()
	 * @see #getRoundTube()
	 * @generated
	 */
	EAttribute getRoundTube_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.RoundTube#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.RoundTube#getThickness()
	 * @see #getRoundTube()
	 * @generated
	 */
	EAttribute getRoundTube_Thickness();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.FlatBar <em>Flat Bar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Flat Bar</em>'.
	 * @see cradlewright.model.stock.FlatBar
	 * @generated
	 */
	EClass getFlatBar();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FlatBar#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see cradlewright.model.stock.FlatBar#getHeight()
	 * @see #getFlatBar()
	 * @generated
	 */
	EAttribute getFlatBar_Height();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.FlatBar#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.FlatBar#getWidth()
	 * @see #getFlatBar()
	 * @generated
	 */
	EAttribute getFlatBar_Width();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.TeeSection <em>Tee Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tee Section</em>'.
	 * @see cradlewright.model.stock.TeeSection
	 * @generated
	 */
	EClass getTeeSection();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TeeSection#getFlangeWidth <em>Flange Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flange Width</em>'.
	 * @see cradlewright.model.stock.TeeSection#getFlangeWidth()
	 * @see #getTeeSection()
	 * @generated
	 */
	EAttribute getTeeSection_FlangeWidth();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TeeSection#getFlangeThickness <em>Flange Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flange Thickness</em>'.
	 * @see cradlewright.model.stock.TeeSection#getFlangeThickness()
	 * @see #getTeeSection()
	 * @generated
	 */
	EAttribute getTeeSection_FlangeThickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TeeSection#getWebHeight <em>Web Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Web Height</em>'.
	 * @see cradlewright.model.stock.TeeSection#getWebHeight()
	 * @see #getTeeSection()
	 * @generated
	 */
	EAttribute getTeeSection_WebHeight();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TeeSection#getWebThickness <em>Web Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Web Thickness</em>'.
	 * @see cradlewright.model.stock.TeeSection#getWebThickness()
	 * @see #getTeeSection()
	 * @generated
	 */
	EAttribute getTeeSection_WebThickness();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.TimberRail <em>Timber Rail</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Timber Rail</em>'.
	 * @see cradlewright.model.stock.TimberRail
	 * @generated
	 */
	EClass getTimberRail();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TimberRail#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see cradlewright.model.stock.TimberRail#getHeight()
	 * @see #getTimberRail()
	 * @generated
	 */
	EAttribute getTimberRail_Height();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.TimberRail#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.TimberRail#getWidth()
	 * @see #getTimberRail()
	 * @generated
	 */
	EAttribute getTimberRail_Width();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.stock.TimberRail#getTimber <em>Timber</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Timber</em>'.
	 * @see cradlewright.model.stock.TimberRail#getTimber()
	 * @see #getTimberRail()
	 * @generated
	 */
	EReference getTimberRail_Timber();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.BoltType <em>Bolt Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bolt Type</em>'.
	 * @see cradlewright.model.stock.BoltType
	 * @generated
	 */
	EClass getBoltType();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.BoltType#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see cradlewright.model.stock.BoltType#getSize()
	 * @see #getBoltType()
	 * @generated
	 */
	EAttribute getBoltType_Size();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.BoltType#getGrade <em>Grade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grade</em>'.
	 * @see cradlewright.model.stock.BoltType#getGrade()
	 * @see #getBoltType()
	 * @generated
	 */
	EAttribute getBoltType_Grade();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.BoltType#getThreadsInShear <em>Threads In Shear</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Threads In Shear</em>'.
	 * @see cradlewright.model.stock.BoltType#getThreadsInShear()
	 * @see #getBoltType()
	 * @generated
	 */
	EAttribute getBoltType_ThreadsInShear();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.CastorType <em>Castor Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Castor Type</em>'.
	 * @see cradlewright.model.stock.CastorType
	 * @generated
	 */
	EClass getCastorType();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getRatedLoad <em>Rated Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Load</em>'.
	 * @see cradlewright.model.stock.CastorType#getRatedLoad()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_RatedLoad();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getWheelDiameter <em>Wheel Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wheel Diameter</em>'.
	 * @see cradlewright.model.stock.CastorType#getWheelDiameter()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_WheelDiameter();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getLead <em>Lead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lead</em>'.
	 * @see cradlewright.model.stock.CastorType#getLead()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_Lead();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getTread <em>Tread</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tread</em>'.
	 * @see cradlewright.model.stock.CastorType#getTread()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_Tread();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getContactArea <em>Contact Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact Area</em>'.
	 * @see cradlewright.model.stock.CastorType#getContactArea()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_ContactArea();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getStiffness <em>Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stiffness</em>'.
	 * @see cradlewright.model.stock.CastorType#getStiffness()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_Stiffness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getTemperatureLimit <em>Temperature Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature Limit</em>'.
	 * @see cradlewright.model.stock.CastorType#getTemperatureLimit()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_TemperatureLimit();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.CastorType#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see cradlewright.model.stock.CastorType#getMass()
	 * @see #getCastorType()
	 * @generated
	 */
	EAttribute getCastorType_Mass();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.PadType <em>Pad Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pad Type</em>'.
	 * @see cradlewright.model.stock.PadType
	 * @generated
	 */
	EClass getPadType();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see cradlewright.model.stock.PadType#getMaterial()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Material();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see cradlewright.model.stock.PadType#getLength()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Length();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.PadType#getWidth()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.PadType#getThickness()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getModulus <em>Modulus</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Modulus</em>'.
	 * @see cradlewright.model.stock.PadType#getModulus()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Modulus();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getStiffness <em>Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stiffness</em>'.
	 * @see cradlewright.model.stock.PadType#getStiffness()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_Stiffness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getStressLimit <em>Stress Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stress Limit</em>'.
	 * @see cradlewright.model.stock.PadType#getStressLimit()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_StressLimit();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getStrainLimit <em>Strain Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strain Limit</em>'.
	 * @see cradlewright.model.stock.PadType#getStrainLimit()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_StrainLimit();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.PadType#getTemperatureLimit <em>Temperature Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature Limit</em>'.
	 * @see cradlewright.model.stock.PadType#getTemperatureLimit()
	 * @see #getPadType()
	 * @generated
	 */
	EAttribute getPadType_TemperatureLimit();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.stock.ShimType <em>Shim Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shim Type</em>'.
	 * @see cradlewright.model.stock.ShimType
	 * @generated
	 */
	EClass getShimType();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.ShimType#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see cradlewright.model.stock.ShimType#getMaterial()
	 * @see #getShimType()
	 * @generated
	 */
	EAttribute getShimType_Material();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.ShimType#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see cradlewright.model.stock.ShimType#getThickness()
	 * @see #getShimType()
	 * @generated
	 */
	EAttribute getShimType_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.ShimType#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see cradlewright.model.stock.ShimType#getLength()
	 * @see #getShimType()
	 * @generated
	 */
	EAttribute getShimType_Length();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.ShimType#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see cradlewright.model.stock.ShimType#getWidth()
	 * @see #getShimType()
	 * @generated
	 */
	EAttribute getShimType_Width();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.stock.ShimType#getOnHand <em>On Hand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On Hand</em>'.
	 * @see cradlewright.model.stock.ShimType#getOnHand()
	 * @see #getShimType()
	 * @generated
	 */
	EAttribute getShimType_OnHand();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.stock.FoldShape <em>Fold Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fold Shape</em>'.
	 * @see cradlewright.model.stock.FoldShape
	 * @generated
	 */
	EEnum getFoldShape();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.stock.Tread <em>Tread</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tread</em>'.
	 * @see cradlewright.model.stock.Tread
	 * @generated
	 */
	EEnum getTread();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.stock.PadMaterial <em>Pad Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pad Material</em>'.
	 * @see cradlewright.model.stock.PadMaterial
	 * @generated
	 */
	EEnum getPadMaterial();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.stock.FoldShape <em>Fold Shape Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * FoldShape, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Fold Shape Object</em>'.
	 * @see cradlewright.model.stock.FoldShape
	 * @model instanceClass="cradlewright.model.stock.FoldShape"
	 *        extendedMetaData="name='FoldShape:Object' baseType='FoldShape'"
	 * @generated
	 */
	EDataType getFoldShapeObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.stock.Tread <em>Tread Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Tread, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Tread Object</em>'.
	 * @see cradlewright.model.stock.Tread
	 * @model instanceClass="cradlewright.model.stock.Tread"
	 *        extendedMetaData="name='Tread:Object' baseType='Tread'"
	 * @generated
	 */
	EDataType getTreadObject();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.stock.PadMaterial <em>Pad Material Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * PadMaterial, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Pad Material Object</em>'.
	 * @see cradlewright.model.stock.PadMaterial
	 * @model instanceClass="cradlewright.model.stock.PadMaterial"
	 *        extendedMetaData="name='PadMaterial:Object' baseType='PadMaterial'"
	 * @generated
	 */
	EDataType getPadMaterialObject();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	StockFactory getStockFactory();

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
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.StockImpl <em>Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.StockImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getStock()
		 * @generated
		 */
		EClass STOCK = eINSTANCE.getStock();

		/**
		 * The meta object literal for the '<em><b>Items</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK__ITEMS = eINSTANCE.getStock_Items();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.StockItemImpl <em>Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.StockItemImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getStockItem()
		 * @generated
		 */
		EClass STOCK_ITEM = eINSTANCE.getStockItem();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__SOURCE = eINSTANCE.getStockItem_Source();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.SteelImpl <em>Steel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.SteelImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getSteel()
		 * @generated
		 */
		EClass STEEL = eINSTANCE.getSteel();

		/**
		 * The meta object literal for the '<em><b>Grade</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEEL__GRADE = eINSTANCE.getSteel_Grade();

		/**
		 * The meta object literal for the '<em><b>Fy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEEL__FY = eINSTANCE.getSteel_Fy();

		/**
		 * The meta object literal for the '<em><b>Fu</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEEL__FU = eINSTANCE.getSteel_Fu();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.TimberImpl <em>Timber</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.TimberImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getTimber()
		 * @generated
		 */
		EClass TIMBER = eINSTANCE.getTimber();

		/**
		 * The meta object literal for the '<em><b>Strength Class</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER__STRENGTH_CLASS = eINSTANCE.getTimber_StrengthClass();

		/**
		 * The meta object literal for the '<em><b>Fmk</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER__FMK = eINSTANCE.getTimber_Fmk();

		/**
		 * The meta object literal for the '<em><b>Fvk</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER__FVK = eINSTANCE.getTimber_Fvk();

		/**
		 * The meta object literal for the '<em><b>Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER__DENSITY = eINSTANCE.getTimber_Density();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.SheetImpl <em>Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.SheetImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getSheet()
		 * @generated
		 */
		EClass SHEET = eINSTANCE.getSheet();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__THICKNESS = eINSTANCE.getSheet_Thickness();

		/**
		 * The meta object literal for the '<em><b>Steel</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__STEEL = eINSTANCE.getSheet_Steel();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.SectionImpl <em>Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.SectionImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getSection()
		 * @generated
		 */
		EClass SECTION = eINSTANCE.getSection();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.FoldedSectionImpl <em>Folded Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.FoldedSectionImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldedSection()
		 * @generated
		 */
		EClass FOLDED_SECTION = eINSTANCE.getFoldedSection();

		/**
		 * The meta object literal for the '<em><b>Shape</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__SHAPE = eINSTANCE.getFoldedSection_Shape();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__HEIGHT = eINSTANCE.getFoldedSection_Height();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__WIDTH = eINSTANCE.getFoldedSection_Width();

		/**
		 * The meta object literal for the '<em><b>Lip</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__LIP = eINSTANCE.getFoldedSection_Lip();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__THICKNESS = eINSTANCE.getFoldedSection_Thickness();

		/**
		 * The meta object literal for the '<em><b>Inside Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__INSIDE_RADIUS = eINSTANCE.getFoldedSection_InsideRadius();

		/**
		 * The meta object literal for the '<em><b>Points</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FOLDED_SECTION__POINTS = eINSTANCE.getFoldedSection_Points();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.HollowSectionImpl <em>Hollow Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.HollowSectionImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getHollowSection()
		 * @generated
		 */
		EClass HOLLOW_SECTION = eINSTANCE.getHollowSection();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLLOW_SECTION__HEIGHT = eINSTANCE.getHollowSection_Height();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLLOW_SECTION__WIDTH = eINSTANCE.getHollowSection_Width();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLLOW_SECTION__THICKNESS = eINSTANCE.getHollowSection_Thickness();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.RoundTubeImpl <em>Round Tube</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.RoundTubeImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getRoundTube()
		 * @generated
		 */
		EClass ROUND_TUBE = eINSTANCE.getRoundTube();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TUBE__DIAMETER = eINSTANCE.getRoundTube_Diameter();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TUBE__THICKNESS = eINSTANCE.getRoundTube_Thickness();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.FlatBarImpl <em>Flat Bar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.FlatBarImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getFlatBar()
		 * @generated
		 */
		EClass FLAT_BAR = eINSTANCE.getFlatBar();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAT_BAR__HEIGHT = eINSTANCE.getFlatBar_Height();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAT_BAR__WIDTH = eINSTANCE.getFlatBar_Width();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.TeeSectionImpl <em>Tee Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.TeeSectionImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getTeeSection()
		 * @generated
		 */
		EClass TEE_SECTION = eINSTANCE.getTeeSection();

		/**
		 * The meta object literal for the '<em><b>Flange Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEE_SECTION__FLANGE_WIDTH = eINSTANCE.getTeeSection_FlangeWidth();

		/**
		 * The meta object literal for the '<em><b>Flange Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEE_SECTION__FLANGE_THICKNESS = eINSTANCE.getTeeSection_FlangeThickness();

		/**
		 * The meta object literal for the '<em><b>Web Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEE_SECTION__WEB_HEIGHT = eINSTANCE.getTeeSection_WebHeight();

		/**
		 * The meta object literal for the '<em><b>Web Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEE_SECTION__WEB_THICKNESS = eINSTANCE.getTeeSection_WebThickness();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.TimberRailImpl <em>Timber Rail</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.TimberRailImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getTimberRail()
		 * @generated
		 */
		EClass TIMBER_RAIL = eINSTANCE.getTimberRail();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER_RAIL__HEIGHT = eINSTANCE.getTimberRail_Height();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TIMBER_RAIL__WIDTH = eINSTANCE.getTimberRail_Width();

		/**
		 * The meta object literal for the '<em><b>Timber</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TIMBER_RAIL__TIMBER = eINSTANCE.getTimberRail_Timber();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.BoltTypeImpl <em>Bolt Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.BoltTypeImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getBoltType()
		 * @generated
		 */
		EClass BOLT_TYPE = eINSTANCE.getBoltType();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOLT_TYPE__SIZE = eINSTANCE.getBoltType_Size();

		/**
		 * The meta object literal for the '<em><b>Grade</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOLT_TYPE__GRADE = eINSTANCE.getBoltType_Grade();

		/**
		 * The meta object literal for the '<em><b>Threads In Shear</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOLT_TYPE__THREADS_IN_SHEAR = eINSTANCE.getBoltType_ThreadsInShear();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.CastorTypeImpl <em>Castor Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.CastorTypeImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getCastorType()
		 * @generated
		 */
		EClass CASTOR_TYPE = eINSTANCE.getCastorType();

		/**
		 * The meta object literal for the '<em><b>Rated Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__RATED_LOAD = eINSTANCE.getCastorType_RatedLoad();

		/**
		 * The meta object literal for the '<em><b>Wheel Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__WHEEL_DIAMETER = eINSTANCE.getCastorType_WheelDiameter();

		/**
		 * The meta object literal for the '<em><b>Lead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__LEAD = eINSTANCE.getCastorType_Lead();

		/**
		 * The meta object literal for the '<em><b>Tread</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__TREAD = eINSTANCE.getCastorType_Tread();

		/**
		 * The meta object literal for the '<em><b>Contact Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__CONTACT_AREA = eINSTANCE.getCastorType_ContactArea();

		/**
		 * The meta object literal for the '<em><b>Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__STIFFNESS = eINSTANCE.getCastorType_Stiffness();

		/**
		 * The meta object literal for the '<em><b>Temperature Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__TEMPERATURE_LIMIT = eINSTANCE.getCastorType_TemperatureLimit();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASTOR_TYPE__MASS = eINSTANCE.getCastorType_Mass();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.PadTypeImpl <em>Pad Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.PadTypeImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadType()
		 * @generated
		 */
		EClass PAD_TYPE = eINSTANCE.getPadType();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__MATERIAL = eINSTANCE.getPadType_Material();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__LENGTH = eINSTANCE.getPadType_Length();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__WIDTH = eINSTANCE.getPadType_Width();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__THICKNESS = eINSTANCE.getPadType_Thickness();

		/**
		 * The meta object literal for the '<em><b>Modulus</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__MODULUS = eINSTANCE.getPadType_Modulus();

		/**
		 * The meta object literal for the '<em><b>Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__STIFFNESS = eINSTANCE.getPadType_Stiffness();

		/**
		 * The meta object literal for the '<em><b>Stress Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__STRESS_LIMIT = eINSTANCE.getPadType_StressLimit();

		/**
		 * The meta object literal for the '<em><b>Strain Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__STRAIN_LIMIT = eINSTANCE.getPadType_StrainLimit();

		/**
		 * The meta object literal for the '<em><b>Temperature Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAD_TYPE__TEMPERATURE_LIMIT = eINSTANCE.getPadType_TemperatureLimit();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.impl.ShimTypeImpl <em>Shim Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.impl.ShimTypeImpl
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getShimType()
		 * @generated
		 */
		EClass SHIM_TYPE = eINSTANCE.getShimType();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM_TYPE__MATERIAL = eINSTANCE.getShimType_Material();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM_TYPE__THICKNESS = eINSTANCE.getShimType_Thickness();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM_TYPE__LENGTH = eINSTANCE.getShimType_Length();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM_TYPE__WIDTH = eINSTANCE.getShimType_Width();

		/**
		 * The meta object literal for the '<em><b>On Hand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHIM_TYPE__ON_HAND = eINSTANCE.getShimType_OnHand();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.FoldShape <em>Fold Shape</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.FoldShape
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldShape()
		 * @generated
		 */
		EEnum FOLD_SHAPE = eINSTANCE.getFoldShape();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.Tread <em>Tread</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.Tread
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getTread()
		 * @generated
		 */
		EEnum TREAD = eINSTANCE.getTread();

		/**
		 * The meta object literal for the '{@link cradlewright.model.stock.PadMaterial <em>Pad Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.PadMaterial
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadMaterial()
		 * @generated
		 */
		EEnum PAD_MATERIAL = eINSTANCE.getPadMaterial();

		/**
		 * The meta object literal for the '<em>Fold Shape Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.FoldShape
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getFoldShapeObject()
		 * @generated
		 */
		EDataType FOLD_SHAPE_OBJECT = eINSTANCE.getFoldShapeObject();

		/**
		 * The meta object literal for the '<em>Tread Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.Tread
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getTreadObject()
		 * @generated
		 */
		EDataType TREAD_OBJECT = eINSTANCE.getTreadObject();

		/**
		 * The meta object literal for the '<em>Pad Material Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.stock.PadMaterial
		 * @see cradlewright.model.stock.impl.StockPackageImpl#getPadMaterialObject()
		 * @generated
		 */
		EDataType PAD_MATERIAL_OBJECT = eINSTANCE.getPadMaterialObject();

	}

} //StockPackage
