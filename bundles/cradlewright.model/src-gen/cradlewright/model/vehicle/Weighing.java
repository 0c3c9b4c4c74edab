/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Identified;

import java.time.LocalDateTime;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Weighing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Dated weighing; appended, never edited, never overwrites the parts list.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Weighing#getAt <em>At</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Weighing#getMethod <em>Method</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Weighing#getBy <em>By</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Weighing#getStage <em>Stage</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Weighing#getReadings <em>Readings</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing()
 * @model
 * @generated
 */
public interface Weighing extends Identified {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(LocalDateTime)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing_At()
	 * @model dataType="cradlewright.model.base.LocalMoment"
	 * @generated
	 */
	LocalDateTime getAt();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Weighing#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(LocalDateTime value);

	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing_Method()
	 * @model
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Weighing#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Weighing#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>Stage</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stage</em>' reference.
	 * @see #setStage(Stage)
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing_Stage()
	 * @model
	 * @generated
	 */
	Stage getStage();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Weighing#getStage <em>Stage</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stage</em>' reference.
	 * @see #getStage()
	 * @generated
	 */
	void setStage(Stage value);

	/**
	 * Returns the value of the '<em><b>Readings</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.WeighingReading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Readings</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getWeighing_Readings()
	 * @model containment="true"
	 * @generated
	 */
	EList<WeighingReading> getReadings();

} // Weighing
