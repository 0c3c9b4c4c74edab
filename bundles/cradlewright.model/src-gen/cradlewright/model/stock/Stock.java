/**
 */
package cradlewright.model.stock;

import cradlewright.model.base.FileRoot;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Root of the stock file.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.Stock#getItems <em>Items</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getStock()
 * @model
 * @generated
 */
public interface Stock extends FileRoot {
	/**
	 * Returns the value of the '<em><b>Items</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.stock.StockItem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Items</em>' containment reference list.
	 * @see cradlewright.model.stock.StockPackage#getStock_Items()
	 * @model containment="true"
	 * @generated
	 */
	EList<StockItem> getItems();

} // Stock
