/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Sheet that parts are cut from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.Sheet#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.Sheet#getSteel <em>Steel</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getSheet()
 * @model
 * @generated
 */
public interface Sheet extends StockItem {
	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getSheet_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Sheet#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Steel</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Steel</em>' reference.
	 * @see #setSteel(Steel)
	 * @see cradlewright.model.stock.StockPackage#getSheet_Steel()
	 * @model
	 * @generated
	 */
	Steel getSteel();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Sheet#getSteel <em>Steel</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Steel</em>' reference.
	 * @see #getSteel()
	 * @generated
	 */
	void setSteel(Steel value);

} // Sheet
