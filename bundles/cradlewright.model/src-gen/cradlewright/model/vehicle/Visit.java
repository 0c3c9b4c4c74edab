/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.model.fixture.Setup;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Visit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stage standing in a setup for a while.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Visit#getStage <em>Stage</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Visit#getSetup <em>Setup</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Visit#getFrom <em>From</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Visit#getTo <em>To</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Visit#getCurrent <em>Current</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getVisit()
 * @model
 * @generated
 */
public interface Visit extends Named {
	/**
	 * Returns the value of the '<em><b>Stage</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stage</em>' reference.
	 * @see #setStage(Stage)
	 * @see cradlewright.model.vehicle.VehiclePackage#getVisit_Stage()
	 * @model
	 * @generated
	 */
	Stage getStage();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Visit#getStage <em>Stage</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stage</em>' reference.
	 * @see #getStage()
	 * @generated
	 */
	void setStage(Stage value);

	/**
	 * Returns the value of the '<em><b>Setup</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setup</em>' reference.
	 * @see #setSetup(Setup)
	 * @see cradlewright.model.vehicle.VehiclePackage#getVisit_Setup()
	 * @model
	 * @generated
	 */
	Setup getSetup();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Visit#getSetup <em>Setup</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Setup</em>' reference.
	 * @see #getSetup()
	 * @generated
	 */
	void setSetup(Setup value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalDate)
	 * @see cradlewright.model.vehicle.VehiclePackage#getVisit_From()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getFrom();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Visit#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalDate value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(LocalDate)
	 * @see cradlewright.model.vehicle.VehiclePackage#getVisit_To()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getTo();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Visit#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the car stands so now; told from the dates when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Current</em>' attribute.
	 * @see #setCurrent(Boolean)
	 * @see cradlewright.model.vehicle.VehiclePackage#getVisit_Current()
	 * @model
	 * @generated
	 */
	Boolean getCurrent();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Visit#getCurrent <em>Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current</em>' attribute.
	 * @see #getCurrent()
	 * @generated
	 */
	void setCurrent(Boolean value);

} // Visit
