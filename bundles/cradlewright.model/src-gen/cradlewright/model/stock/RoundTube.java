/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Round Tube</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.RoundTube#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link cradlewright.model.stock.RoundTube#getThickness <em>Thickness</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getRoundTube()
 * @model
 * @generated
 */
public interface RoundTube extends Section {
	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Outside.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Measured)
	 * @see cradlewright.model.stock.StockPackage#getRoundTube_Diameter()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getDiameter();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.RoundTube#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Measured value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getRoundTube_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.RoundTube#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

} // RoundTube
