/**
 */
package cradlewright.model.base;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shop</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The shop itself and its settings.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.Shop#getZone <em>Zone</em>}</li>
 *   <li>{@link cradlewright.model.base.Shop#getUnits <em>Units</em>}</li>
 *   <li>{@link cradlewright.model.base.Shop#getSettings <em>Settings</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.base.BasePackage#getShop()
 * @model
 * @generated
 */
public interface Shop extends FileRoot, Named {
	/**
	 * Returns the value of the '<em><b>Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time zone of all local moments in the files, by its tz database name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Zone</em>' attribute.
	 * @see #setZone(String)
	 * @see cradlewright.model.base.BasePackage#getShop_Zone()
	 * @model
	 * @generated
	 */
	String getZone();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Shop#getZone <em>Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zone</em>' attribute.
	 * @see #getZone()
	 * @generated
	 */
	void setZone(String value);

	/**
	 * Returns the value of the '<em><b>Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Units</em>' attribute.
	 * @see #setUnits(Units)
	 * @see cradlewright.model.base.BasePackage#getShop_Units()
	 * @model dataType="cradlewright.model.base.UnitsObject"
	 * @generated
	 */
	Units getUnits();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Shop#getUnits <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Units</em>' attribute.
	 * @see #getUnits()
	 * @generated
	 */
	void setUnits(Units value);

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' containment reference.
	 * @see #setSettings(Settings)
	 * @see cradlewright.model.base.BasePackage#getShop_Settings()
	 * @model containment="true"
	 * @generated
	 */
	Settings getSettings();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Shop#getSettings <em>Settings</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Settings</em>' containment reference.
	 * @see #getSettings()
	 * @generated
	 */
	void setSettings(Settings value);

} // Shop
