/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Steel</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A steel grade with its strengths.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.Steel#getGrade <em>Grade</em>}</li>
 *   <li>{@link cradlewright.model.stock.Steel#getFy <em>Fy</em>}</li>
 *   <li>{@link cradlewright.model.stock.Steel#getFu <em>Fu</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getSteel()
 * @model
 * @generated
 */
public interface Steel extends StockItem {
	/**
	 * Returns the value of the '<em><b>Grade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grade</em>' attribute.
	 * @see #setGrade(String)
	 * @see cradlewright.model.stock.StockPackage#getSteel_Grade()
	 * @model
	 * @generated
	 */
	String getGrade();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Steel#getGrade <em>Grade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grade</em>' attribute.
	 * @see #getGrade()
	 * @generated
	 */
	void setGrade(String value);

	/**
	 * Returns the value of the '<em><b>Fy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Yield strength.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fy</em>' attribute.
	 * @see #setFy(Measured)
	 * @see cradlewright.model.stock.StockPackage#getSteel_Fy()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFy();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Steel#getFy <em>Fy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fy</em>' attribute.
	 * @see #getFy()
	 * @generated
	 */
	void setFy(Measured value);

	/**
	 * Returns the value of the '<em><b>Fu</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ultimate strength.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fu</em>' attribute.
	 * @see #setFu(Measured)
	 * @see cradlewright.model.stock.StockPackage#getSteel_Fu()
	 * @model dataType="cradlewright.model.base.Stress"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getFu();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.Steel#getFu <em>Fu</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fu</em>' attribute.
	 * @see #getFu()
	 * @generated
	 */
	void setFu(Measured value);

} // Steel
