/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Flat Bar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.FlatBar#getHeight <em>Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.FlatBar#getWidth <em>Width</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getFlatBar()
 * @model
 * @generated
 */
public interface FlatBar extends Section {
	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFlatBar_Height()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getHeight();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FlatBar#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Measured value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFlatBar_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FlatBar#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

} // FlatBar
