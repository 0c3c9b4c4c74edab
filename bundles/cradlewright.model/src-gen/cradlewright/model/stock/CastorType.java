/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Castor Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.CastorType#getRatedLoad <em>Rated Load</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getWheelDiameter <em>Wheel Diameter</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getLead <em>Lead</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getTread <em>Tread</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getContactArea <em>Contact Area</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getStiffness <em>Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getTemperatureLimit <em>Temperature Limit</em>}</li>
 *   <li>{@link cradlewright.model.stock.CastorType#getMass <em>Mass</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getCastorType()
 * @model
 * @generated
 */
public interface CastorType extends StockItem {
	/**
	 * Returns the value of the '<em><b>Rated Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Load</em>' attribute.
	 * @see #setRatedLoad(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_RatedLoad()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getRatedLoad();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getRatedLoad <em>Rated Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Load</em>' attribute.
	 * @see #getRatedLoad()
	 * @generated
	 */
	void setRatedLoad(Measured value);

	/**
	 * Returns the value of the '<em><b>Wheel Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Wheel Diameter</em>' attribute.
	 * @see #setWheelDiameter(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_WheelDiameter()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWheelDiameter();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getWheelDiameter <em>Wheel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wheel Diameter</em>' attribute.
	 * @see #getWheelDiameter()
	 * @generated
	 */
	void setWheelDiameter(Measured value);

	/**
	 * Returns the value of the '<em><b>Lead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the wheel stands off the swivel axis.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lead</em>' attribute.
	 * @see #setLead(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_Lead()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getLead();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getLead <em>Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lead</em>' attribute.
	 * @see #getLead()
	 * @generated
	 */
	void setLead(Measured value);

	/**
	 * Returns the value of the '<em><b>Tread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tread</em>' attribute.
	 * @see #setTread(Tread)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_Tread()
	 * @model dataType="cradlewright.model.stock.TreadObject"
	 * @generated
	 */
	Tread getTread();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getTread <em>Tread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tread</em>' attribute.
	 * @see #getTread()
	 * @generated
	 */
	void setTread(Tread value);

	/**
	 * Returns the value of the '<em><b>Contact Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contact Area</em>' attribute.
	 * @see #setContactArea(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_ContactArea()
	 * @model dataType="cradlewright.model.base.Area"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getContactArea();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getContactArea <em>Contact Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact Area</em>' attribute.
	 * @see #getContactArea()
	 * @generated
	 */
	void setContactArea(Measured value);

	/**
	 * Returns the value of the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stiffness</em>' attribute.
	 * @see #setStiffness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_Stiffness()
	 * @model dataType="cradlewright.model.base.Stiffness"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getStiffness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getStiffness <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stiffness</em>' attribute.
	 * @see #getStiffness()
	 * @generated
	 */
	void setStiffness(Measured value);

	/**
	 * Returns the value of the '<em><b>Temperature Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature Limit</em>' attribute.
	 * @see #setTemperatureLimit(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_TemperatureLimit()
	 * @model dataType="cradlewright.model.base.Temperature"
	 * @generated
	 */
	Measured getTemperatureLimit();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getTemperatureLimit <em>Temperature Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature Limit</em>' attribute.
	 * @see #getTemperatureLimit()
	 * @generated
	 */
	void setTemperatureLimit(Measured value);

	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(Measured)
	 * @see cradlewright.model.stock.StockPackage#getCastorType_Mass()
	 * @model dataType="cradlewright.model.base.Mass"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getMass();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.CastorType#getMass <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass</em>' attribute.
	 * @see #getMass()
	 * @generated
	 */
	void setMass(Measured value);

} // CastorType
