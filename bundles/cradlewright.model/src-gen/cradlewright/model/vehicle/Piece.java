/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.Named;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the car comes apart into: each is booked, placed and weighed by itself.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Piece#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Piece#getTorsionalStiffness <em>Torsional Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Piece#getBendingStiffness <em>Bending Stiffness</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Piece#getOutline <em>Outline</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Piece#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getPiece()
 * @model
 * @generated
 */
public interface Piece extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(PieceKind)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPiece_Kind()
	 * @model dataType="cradlewright.model.vehicle.PieceKindObject"
	 * @generated
	 */
	PieceKind getKind();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Piece#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PieceKind value);

	/**
	 * Returns the value of the '<em><b>Torsional Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Torsional Stiffness</em>' attribute.
	 * @see #setTorsionalStiffness(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPiece_TorsionalStiffness()
	 * @model dataType="cradlewright.model.base.TorsionalStiffness"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getTorsionalStiffness();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Piece#getTorsionalStiffness <em>Torsional Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Torsional Stiffness</em>' attribute.
	 * @see #getTorsionalStiffness()
	 * @generated
	 */
	void setTorsionalStiffness(Measured value);

	/**
	 * Returns the value of the '<em><b>Bending Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bending Stiffness</em>' attribute.
	 * @see #setBendingStiffness(Measured)
	 * @see cradlewright.model.vehicle.VehiclePackage#getPiece_BendingStiffness()
	 * @model dataType="cradlewright.model.base.BendingStiffness"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getBendingStiffness();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Piece#getBendingStiffness <em>Bending Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bending Stiffness</em>' attribute.
	 * @see #getBendingStiffness()
	 * @generated
	 */
	void setBendingStiffness(Measured value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute list.
	 * The list contents are of type {@link cradlewright.quantity.Position}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Corners of the plan outline.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline</em>' attribute list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getPiece_Outline()
	 * @model unique="false" dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	EList<Position> getOutline();

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Part}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Parts</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getPiece_Parts()
	 * @model containment="true"
	 * @generated
	 */
	EList<Part> getParts();

} // Piece
