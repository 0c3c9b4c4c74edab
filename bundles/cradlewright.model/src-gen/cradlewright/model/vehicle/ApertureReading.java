/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Identified;

import cradlewright.quantity.Measured;

import java.time.LocalDateTime;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Aperture Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Dated reading of an opening; appended, never edited.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.ApertureReading#getAperture <em>Aperture</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.ApertureReading#getAt <em>At</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.ApertureReading#getBy <em>By</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.ApertureReading#getDiagonals <em>Diagonals</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.ApertureReading#getGaps <em>Gaps</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading()
 * @model
 * @generated
 */
public interface ApertureReading extends Identified {
	/**
	 * Returns the value of the '<em><b>Aperture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aperture</em>' attribute.
	 * @see #setAperture(String)
	 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading_Aperture()
	 * @model
	 * @generated
	 */
	String getAperture();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.ApertureReading#getAperture <em>Aperture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aperture</em>' attribute.
	 * @see #getAperture()
	 * @generated
	 */
	void setAperture(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(LocalDateTime)
	 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading_At()
	 * @model dataType="cradlewright.model.base.LocalMoment"
	 * @generated
	 */
	LocalDateTime getAt();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.ApertureReading#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(LocalDateTime value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.ApertureReading#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>Diagonals</b></em>' attribute list.
	 * The list contents are of type {@link cradlewright.quantity.Measured}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the order of the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diagonals</em>' attribute list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading_Diagonals()
	 * @model unique="false" dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	EList<Measured> getDiagonals();

	/**
	 * Returns the value of the '<em><b>Gaps</b></em>' attribute list.
	 * The list contents are of type {@link cradlewright.quantity.Measured}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the order of the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gaps</em>' attribute list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getApertureReading_Gaps()
	 * @model unique="false" dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	EList<Measured> getGaps();

} // ApertureReading
