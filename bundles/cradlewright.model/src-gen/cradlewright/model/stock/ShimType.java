/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shim Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.ShimType#getMaterial <em>Material</em>}</li>
 *   <li>{@link cradlewright.model.stock.ShimType#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.ShimType#getLength <em>Length</em>}</li>
 *   <li>{@link cradlewright.model.stock.ShimType#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.ShimType#getOnHand <em>On Hand</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getShimType()
 * @model
 * @generated
 */
public interface ShimType extends StockItem {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(String)
	 * @see cradlewright.model.stock.StockPackage#getShimType_Material()
	 * @model
	 * @generated
	 */
	String getMaterial();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.ShimType#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(String value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getShimType_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.ShimType#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Measured)
	 * @see cradlewright.model.stock.StockPackage#getShimType_Length()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getLength();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.ShimType#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Measured value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Measured)
	 * @see cradlewright.model.stock.StockPackage#getShimType_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.ShimType#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>On Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pieces on the shelf; not counted when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>On Hand</em>' attribute.
	 * @see #setOnHand(Integer)
	 * @see cradlewright.model.stock.StockPackage#getShimType_OnHand()
	 * @model annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Integer getOnHand();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.ShimType#getOnHand <em>On Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On Hand</em>' attribute.
	 * @see #getOnHand()
	 * @generated
	 */
	void setOnHand(Integer value);

} // ShimType
