/**
 */
package cradlewright.model.stock;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Section</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Cross-section of a member; height along its local up direction.
 * <!-- end-model-doc -->
 *
 *
 * @see cradlewright.model.stock.StockPackage#getSection()
 * @model abstract="true"
 * @generated
 */
public interface Section extends StockItem {
} // Section
