/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import cradlewright.model.fixture.Setup;

import cradlewright.model.vehicle.Part;

import cradlewright.quantity.Measured;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Operation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One step of a job; half-way stages follow from what comes off and goes on.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Operation#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getTakesOff <em>Takes Off</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getPutsOn <em>Puts On</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getSetup <em>Setup</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getNeeds <em>Needs</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getBest <em>Best</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getLikely <em>Likely</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getWorst <em>Worst</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getStarted <em>Started</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#isDone <em>Done</em>}</li>
 *   <li>{@link cradlewright.model.job.Operation#getAfter <em>After</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getOperation()
 * @model
 * @generated
 */
public interface Operation extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lift off a chassis or stands, drop onto a chassis, roll through a door, turn over, cut metal out; not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(OperationKind)
	 * @see cradlewright.model.job.JobPackage#getOperation_Kind()
	 * @model dataType="cradlewright.model.job.OperationKindObject"
	 * @generated
	 */
	OperationKind getKind();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OperationKind value);

	/**
	 * Returns the value of the '<em><b>Takes Off</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Part}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Takes Off</em>' reference list.
	 * @see cradlewright.model.job.JobPackage#getOperation_TakesOff()
	 * @model
	 * @generated
	 */
	EList<Part> getTakesOff();

	/**
	 * Returns the value of the '<em><b>Puts On</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.vehicle.Part}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Puts On</em>' reference list.
	 * @see cradlewright.model.job.JobPackage#getOperation_PutsOn()
	 * @model
	 * @generated
	 */
	EList<Part> getPutsOn();

	/**
	 * Returns the value of the '<em><b>Setup</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setup</em>' reference.
	 * @see #setSetup(Setup)
	 * @see cradlewright.model.job.JobPackage#getOperation_Setup()
	 * @model
	 * @generated
	 */
	Setup getSetup();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getSetup <em>Setup</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Setup</em>' reference.
	 * @see #getSetup()
	 * @generated
	 */
	void setSetup(Setup value);

	/**
	 * Returns the value of the '<em><b>Needs</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Needs</em>' attribute.
	 * @see #setNeeds(String)
	 * @see cradlewright.model.job.JobPackage#getOperation_Needs()
	 * @model
	 * @generated
	 */
	String getNeeds();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getNeeds <em>Needs</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Needs</em>' attribute.
	 * @see #getNeeds()
	 * @generated
	 */
	void setNeeds(String value);

	/**
	 * Returns the value of the '<em><b>Best</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Best</em>' attribute.
	 * @see #setBest(Measured)
	 * @see cradlewright.model.job.JobPackage#getOperation_Best()
	 * @model dataType="cradlewright.model.base.Hours"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getBest();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getBest <em>Best</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Best</em>' attribute.
	 * @see #getBest()
	 * @generated
	 */
	void setBest(Measured value);

	/**
	 * Returns the value of the '<em><b>Likely</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Likely</em>' attribute.
	 * @see #setLikely(Measured)
	 * @see cradlewright.model.job.JobPackage#getOperation_Likely()
	 * @model dataType="cradlewright.model.base.Hours"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getLikely();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getLikely <em>Likely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Likely</em>' attribute.
	 * @see #getLikely()
	 * @generated
	 */
	void setLikely(Measured value);

	/**
	 * Returns the value of the '<em><b>Worst</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Worst</em>' attribute.
	 * @see #setWorst(Measured)
	 * @see cradlewright.model.job.JobPackage#getOperation_Worst()
	 * @model dataType="cradlewright.model.base.Hours"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getWorst();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getWorst <em>Worst</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Worst</em>' attribute.
	 * @see #getWorst()
	 * @generated
	 */
	void setWorst(Measured value);

	/**
	 * Returns the value of the '<em><b>Started</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day on which the work began; not begun when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Started</em>' attribute.
	 * @see #setStarted(LocalDate)
	 * @see cradlewright.model.job.JobPackage#getOperation_Started()
	 * @model dataType="cradlewright.model.base.Date"
	 * @generated
	 */
	LocalDate getStarted();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#getStarted <em>Started</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Started</em>' attribute.
	 * @see #getStarted()
	 * @generated
	 */
	void setStarted(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Done</em>' attribute.
	 * @see #setDone(boolean)
	 * @see cradlewright.model.job.JobPackage#getOperation_Done()
	 * @model
	 * @generated
	 */
	boolean isDone();

	/**
	 * Sets the value of the '{@link cradlewright.model.job.Operation#isDone <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Done</em>' attribute.
	 * @see #isDone()
	 * @generated
	 */
	void setDone(boolean value);

	/**
	 * Returns the value of the '<em><b>After</b></em>' reference list.
	 * The list contents are of type {@link cradlewright.model.job.Operation}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Operations that must be done before this one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>After</em>' reference list.
	 * @see cradlewright.model.job.JobPackage#getOperation_After()
	 * @model annotation="urn:cradlewright:rules cycles='refused'"
	 * @generated
	 */
	EList<Operation> getAfter();

} // Operation
