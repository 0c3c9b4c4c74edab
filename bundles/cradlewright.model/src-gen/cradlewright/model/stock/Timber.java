/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Timber</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A strength class of timber.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.Timber#getStrengthClass <em>Strength Class</em>}</li>
 *   <li>{@link cradlewright.model.stock.Timber#getFmk <em>Fmk</em>}</li>
 *   <li>{@link cradlewright.model.stock.Timber#getFvk <em>Fvk</em>}</li>
 *   <li>{@link cradlewright.model.stock.Timber#getDensity <em>Density</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getTimber()
 * @model
 * @generated
 */
public interface Timber extends StockItem {
	/**
	 * Returns the value of the '<em><b>Strength Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strength Class</em>' attribute.
	 * @see #setStrengthClass(String)
	 * @see cradlewright.model.stock.StockPackage#getTimber_StrengthClass()
	 * @model
	 * @generated
	 */
	String getStrengthClass();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Timber#getStrengthClass <em>Strength Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strength Class</em>' attribute.
	 * @see #getStrengthClass()
	 * @generated
	 */
	void setStrengthClass(String value);

	/**
	 * Returns the value of the '<em><b>Fmk</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Characteristic bending strength.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fmk</em>' attribute.
	 * @see #setFmk(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTimber_Fmk()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFmk();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Timber#getFmk <em>Fmk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fmk</em>' attribute.
	 * @see #getFmk()
	 * @generated
	 */
	void setFmk(Measured value);

	/**
	 * Returns the value of the '<em><b>Fvk</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Characteristic shear strength.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fvk</em>' attribute.
	 * @see #setFvk(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTimber_Fvk()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFvk();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Timber#getFvk <em>Fvk</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fvk</em>' attribute.
	 * @see #getFvk()
	 * @generated
	 */
	void setFvk(Measured value);

	/**
	 * Returns the value of the '<em><b>Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Density</em>' attribute.
	 * @see #setDensity(Measured)
	 * @see cradlewright.model.stock.StockPackage#getTimber_Density()
	 * @model dataType="cradlewright.model.base.Density"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getDensity();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Timber#getDensity <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density</em>' attribute.
	 * @see #getDensity()
	 * @generated
	 */
	void setDensity(Measured value);

} // Timber
