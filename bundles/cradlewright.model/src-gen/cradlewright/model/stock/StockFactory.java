/**
 */
package cradlewright.model.stock;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see cradlewright.model.stock.StockPackage
 * @generated
 */
public interface StockFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	StockFactory eINSTANCE = cradlewright.model.stock.impl.StockFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stock</em>'.
	 * @generated
	 */
	Stock createStock();

	/**
	 * Returns a new object of class '<em>Steel</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Steel</em>'.
	 * @generated
	 */
	Steel createSteel();

	/**
	 * Returns a new object of class '<em>Timber</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Timber</em>'.
	 * @generated
	 */
	Timber createTimber();

	/**
	 * Returns a new object of class '<em>Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sheet</em>'.
	 * @generated
	 */
	Sheet createSheet();

	/**
	 * Returns a new object of class '<em>Folded Section</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Folded Section</em>'.
	 * @generated
	 */
	FoldedSection createFoldedSection();

	/**
	 * Returns a new object of class '<em>Hollow Section</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Hollow Section</em>'.
	 * @generated
	 */
	HollowSection createHollowSection();

	/**
	 * Returns a new object of class '<em>Round Tube</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Round Tube</em>'.
	 * @generated
	 */
	RoundTube createRoundTube();

	/**
	 * Returns a new object of class '<em>Flat Bar</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Flat Bar</em>'.
	 * @generated
	 */
	FlatBar createFlatBar();

	/**
	 * Returns a new object of class '<em>Tee Section</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tee Section</em>'.
	 * @generated
	 */
	TeeSection createTeeSection();

	/**
	 * Returns a new object of class '<em>Timber Rail</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Timber Rail</em>'.
	 * @generated
	 */
	TimberRail createTimberRail();

	/**
	 * Returns a new object of class '<em>Bolt Type</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bolt Type</em>'.
	 * @generated
	 */
	BoltType createBoltType();

	/**
	 * Returns a new object of class '<em>Castor Type</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Castor Type</em>'.
	 * @generated
	 */
	CastorType createCastorType();

	/**
	 * Returns a new object of class '<em>Pad Type</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pad Type</em>'.
	 * @generated
	 */
	PadType createPadType();

	/**
	 * Returns a new object of class '<em>Shim Type</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Shim Type</em>'.
	 * @generated
	 */
	ShimType createShimType();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	StockPackage getStockPackage();

} //StockFactory
