/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Timber Rail</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Solid rectangular timber.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.TimberRail#getHeight <em>Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.TimberRail#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.TimberRail#getTimber <em>Timber</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getTimberRail()
 * @model
 * @generated
 */
public interface TimberRail extends Section {
	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTimberRail_Height()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getHeight();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TimberRail#getHeight <em>Height</em>}' attribute.
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
	 * @see cradlewright.model.stock.StockPackage#getTimberRail_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TimberRail#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>Timber</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Timber</em>' reference.
	 * @see #setTimber(Timber)
	 * @see cradlewright.model.stock.StockPackage#getTimberRail_Timber()
	 * @model
	 * @generated
	 */
	Timber getTimber();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.TimberRail#getTimber <em>Timber</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Timber</em>' reference.
	 * @see #getTimber()
	 * @generated
	 */
	void setTimber(Timber value);

} // TimberRail
