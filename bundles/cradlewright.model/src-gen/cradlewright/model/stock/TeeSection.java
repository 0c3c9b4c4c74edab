/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tee Section</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.TeeSection#getFlangeWidth <em>Flange Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.TeeSection#getFlangeThickness <em>Flange Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.TeeSection#getWebHeight <em>Web Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.TeeSection#getWebThickness <em>Web Thickness</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getTeeSection()
 * @model
 * @generated
 */
public interface TeeSection extends Section {
	/**
	 * Returns the value of the '<em><b>Flange Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flange Width</em>' attribute.
	 * @see #setFlangeWidth(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTeeSection_FlangeWidth()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFlangeWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TeeSection#getFlangeWidth <em>Flange Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flange Width</em>' attribute.
	 * @see #getFlangeWidth()
	 * @generated
	 */
	void setFlangeWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>Flange Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flange Thickness</em>' attribute.
	 * @see #setFlangeThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTeeSection_FlangeThickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFlangeThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TeeSection#getFlangeThickness <em>Flange Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flange Thickness</em>' attribute.
	 * @see #getFlangeThickness()
	 * @generated
	 */
	void setFlangeThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Web Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Web Height</em>' attribute.
	 * @see #setWebHeight(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTeeSection_WebHeight()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWebHeight();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TeeSection#getWebHeight <em>Web Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Web Height</em>' attribute.
	 * @see #getWebHeight()
	 * @generated
	 */
	void setWebHeight(Measured value);

	/**
	 * Returns the value of the '<em><b>Web Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Web Thickness</em>' attribute.
	 * @see #setWebThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTeeSection_WebThickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWebThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TeeSection#getWebThickness <em>Web Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Web Thickness</em>' attribute.
	 * @see #getWebThickness()
	 * @generated
	 */
	void setWebThickness(Measured value);

} // TeeSection
