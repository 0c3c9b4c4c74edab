/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pad Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Soft pad between fixture and shell.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.PadType#getMaterial <em>Material</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getLength <em>Length</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getModulus <em>Modulus</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getStiffness <em>Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getStressLimit <em>Stress Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getStrainLimit <em>Strain Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.PadType#getTemperatureLimit <em>Temperature Limit</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getPadType()
 * @model
 * @generated
 */
public interface PadType extends StockItem {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(PadMaterial)
	 * @see cradlewright.model.stock.StockPackage#getPadType_Material()
	 * @model dataType="cradlewright.model.stock.PadMaterialObject"
	 * @generated
	 */
	PadMaterial getMaterial();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(PadMaterial value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_Length()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getLength();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getLength <em>Length</em>}' attribute.
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
	 * @see cradlewright.model.stock.StockPackage#getPadType_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Modulus</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Modulus in compression.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Modulus</em>' attribute.
	 * @see #setModulus(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_Modulus()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getModulus();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getModulus <em>Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Modulus</em>' attribute.
	 * @see #getModulus()
	 * @generated
	 */
	void setModulus(Measured value);

	/**
	 * Returns the value of the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Measured; goes before the one from modulus and size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stiffness</em>' attribute.
	 * @see #setStiffness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_Stiffness()
	 * @model dataType="cradlewright.model.base.Stiffness"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getStiffness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getStiffness <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stiffness</em>' attribute.
	 * @see #getStiffness()
	 * @generated
	 */
	void setStiffness(Measured value);

	/**
	 * Returns the value of the '<em><b>Stress Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stress Limit</em>' attribute.
	 * @see #setStressLimit(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_StressLimit()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getStressLimit();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getStressLimit <em>Stress Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stress Limit</em>' attribute.
	 * @see #getStressLimit()
	 * @generated
	 */
	void setStressLimit(Measured value);

	/**
	 * Returns the value of the '<em><b>Strain Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strain Limit</em>' attribute.
	 * @see #setStrainLimit(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_StrainLimit()
	 * @model dataType="cradlewright.model.base.Ratio"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getStrainLimit();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getStrainLimit <em>Strain Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strain Limit</em>' attribute.
	 * @see #getStrainLimit()
	 * @generated
	 */
	void setStrainLimit(Measured value);

	/**
	 * Returns the value of the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature Limit</em>' attribute.
	 * @see #setTemperatureLimit(Measured)
	 * @see cradlewright.model.stock.StockPackage#getPadType_TemperatureLimit()
	 * @model dataType="cradlewright.model.base.Temperature"
	 * @generated
	 */
	Measured getTemperatureLimit();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.PadType#getTemperatureLimit <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature Limit</em>' attribute.
	 * @see #getTemperatureLimit()
	 * @generated
	 */
	void setTemperatureLimit(Measured value);

} // PadType
