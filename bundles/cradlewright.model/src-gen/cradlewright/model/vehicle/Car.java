/**
 */
package cradlewright.model.vehicle;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Named;

import cradlewright.model.fixture.Setup;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Car</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Root of a car file; positions are in the axes of its marks.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.Car#getConstruction <em>Construction</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getMarks <em>Marks</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getPieces <em>Pieces</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getMounts <em>Mounts</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getLiftPoints <em>Lift Points</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getWorkPoints <em>Work Points</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getCutZones <em>Cut Zones</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getTemporaryLoads <em>Temporary Loads</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getBraces <em>Braces</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getApertureReadings <em>Aperture Readings</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getStages <em>Stages</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getSetups <em>Setups</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getVisits <em>Visits</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.Car#getWeighings <em>Weighings</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.vehicle.VehiclePackage#getCar()
 * @model
 * @generated
 */
public interface Car extends FileRoot, Named {
	/**
	 * Returns the value of the '<em><b>Construction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Construction</em>' attribute.
	 * @see #setConstruction(Construction)
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Construction()
	 * @model dataType="cradlewright.model.vehicle.ConstructionObject"
	 * @generated
	 */
	Construction getConstruction();

	/**
	 * Sets the value of the '{@link cradlewright.model.vehicle.Car#getConstruction <em>Construction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Construction</em>' attribute.
	 * @see #getConstruction()
	 * @generated
	 */
	void setConstruction(Construction value);

	/**
	 * Returns the value of the '<em><b>Marks</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Mark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Marks</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Marks()
	 * @model containment="true"
	 * @generated
	 */
	EList<Mark> getMarks();

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Piece}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pieces</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Pieces()
	 * @model containment="true"
	 * @generated
	 */
	EList<Piece> getPieces();

	/**
	 * Returns the value of the '<em><b>Mounts</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Mount}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mounts</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Mounts()
	 * @model containment="true"
	 * @generated
	 */
	EList<Mount> getMounts();

	/**
	 * Returns the value of the '<em><b>Lift Points</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.LiftPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lift Points</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_LiftPoints()
	 * @model containment="true"
	 * @generated
	 */
	EList<LiftPoint> getLiftPoints();

	/**
	 * Returns the value of the '<em><b>Work Points</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.WorkPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Work Points</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_WorkPoints()
	 * @model containment="true"
	 * @generated
	 */
	EList<WorkPoint> getWorkPoints();

	/**
	 * Returns the value of the '<em><b>Cut Zones</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.CutZone}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cut Zones</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_CutZones()
	 * @model containment="true"
	 * @generated
	 */
	EList<CutZone> getCutZones();

	/**
	 * Returns the value of the '<em><b>Temporary Loads</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.TemporaryLoad}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temporary Loads</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_TemporaryLoads()
	 * @model containment="true"
	 * @generated
	 */
	EList<TemporaryLoad> getTemporaryLoads();

	/**
	 * Returns the value of the '<em><b>Braces</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Brace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Braces</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Braces()
	 * @model containment="true"
	 * @generated
	 */
	EList<Brace> getBraces();

	/**
	 * Returns the value of the '<em><b>Aperture Readings</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.ApertureReading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aperture Readings</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_ApertureReadings()
	 * @model containment="true"
	 * @generated
	 */
	EList<ApertureReading> getApertureReadings();

	/**
	 * Returns the value of the '<em><b>Stages</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stages</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Stages()
	 * @model containment="true"
	 * @generated
	 */
	EList<Stage> getStages();

	/**
	 * Returns the value of the '<em><b>Setups</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.fixture.Setup}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setups</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Setups()
	 * @model containment="true"
	 * @generated
	 */
	EList<Setup> getSetups();

	/**
	 * Returns the value of the '<em><b>Visits</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Visit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Visits</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Visits()
	 * @model containment="true"
	 * @generated
	 */
	EList<Visit> getVisits();

	/**
	 * Returns the value of the '<em><b>Weighings</b></em>' containment reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Weighing}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weighings</em>' containment reference list.
	 * @see cradlewright.model.vehicle.VehiclePackage#getCar_Weighings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Weighing> getWeighings();

} // Car
