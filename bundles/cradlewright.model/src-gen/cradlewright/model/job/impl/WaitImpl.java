/**
 */
package cradlewright.model.job.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.job.JobPackage;
import cradlewright.model.job.Operation;
import cradlewright.model.job.Wait;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Wait</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.impl.WaitImpl#getOperation <em>Operation</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.WaitImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.WaitImpl#getSince <em>Since</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.WaitImpl#getUntil <em>Until</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.WaitImpl#getEnded <em>Ended</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaitImpl extends NamedImpl implements Wait {
	/**
	 * The cached value of the '{@link #getOperation() <em>Operation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOperation()
	 * @generated
	 * @ordered
	 */
	protected Operation operation;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * The default value of the '{@link #getSince() <em>Since</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSince()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SINCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSince() <em>Since</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSince()
	 * @generated
	 * @ordered
	 */
	protected LocalDate since = SINCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getUntil() <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUntil()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate UNTIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUntil() <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUntil()
	 * @generated
	 * @ordered
	 */
	protected LocalDate until = UNTIL_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ENDED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected LocalDate ended = ENDED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WaitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return JobPackage.Literals.WAIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Operation getOperation() {
		if (operation != null && operation.eIsProxy()) {
			InternalEObject oldOperation = (InternalEObject)operation;
			operation = (Operation)eResolveProxy(oldOperation);
			if (operation != oldOperation) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, JobPackage.WAIT__OPERATION, oldOperation, operation));
			}
		}
		return operation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Operation basicGetOperation() {
		return operation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOperation(Operation newOperation) {
		Operation oldOperation = operation;
		operation = newOperation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIT__OPERATION, oldOperation, operation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIT__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getSince() {
		return since;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSince(LocalDate newSince) {
		LocalDate oldSince = since;
		since = newSince;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIT__SINCE, oldSince, since));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getUntil() {
		return until;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUntil(LocalDate newUntil) {
		LocalDate oldUntil = until;
		until = newUntil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIT__UNTIL, oldUntil, until));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getEnded() {
		return ended;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnded(LocalDate newEnded) {
		LocalDate oldEnded = ended;
		ended = newEnded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIT__ENDED, oldEnded, ended));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case JobPackage.WAIT__OPERATION:
				if (resolve) return getOperation();
				return basicGetOperation();
			case JobPackage.WAIT__REASON:
				return getReason();
			case JobPackage.WAIT__SINCE:
				return getSince();
			case JobPackage.WAIT__UNTIL:
				return getUntil();
			case JobPackage.WAIT__ENDED:
				return getEnded();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case JobPackage.WAIT__OPERATION:
				setOperation((Operation)newValue);
				return;
			case JobPackage.WAIT__REASON:
				setReason((String)newValue);
				return;
			case JobPackage.WAIT__SINCE:
				setSince((LocalDate)newValue);
				return;
			case JobPackage.WAIT__UNTIL:
				setUntil((LocalDate)newValue);
				return;
			case JobPackage.WAIT__ENDED:
				setEnded((LocalDate)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case JobPackage.WAIT__OPERATION:
				setOperation((Operation)null);
				return;
			case JobPackage.WAIT__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case JobPackage.WAIT__SINCE:
				setSince(SINCE_EDEFAULT);
				return;
			case JobPackage.WAIT__UNTIL:
				setUntil(UNTIL_EDEFAULT);
				return;
			case JobPackage.WAIT__ENDED:
				setEnded(ENDED_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case JobPackage.WAIT__OPERATION:
				return operation != null;
			case JobPackage.WAIT__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case JobPackage.WAIT__SINCE:
				return SINCE_EDEFAULT == null ? since != null : !SINCE_EDEFAULT.equals(since);
			case JobPackage.WAIT__UNTIL:
				return UNTIL_EDEFAULT == null ? until != null : !UNTIL_EDEFAULT.equals(until);
			case JobPackage.WAIT__ENDED:
				return ENDED_EDEFAULT == null ? ended != null : !ENDED_EDEFAULT.equals(ended);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (reason: ");
		result.append(reason);
		result.append(", since: ");
		result.append(since);
		result.append(", until: ");
		result.append(until);
		result.append(", ended: ");
		result.append(ended);
		result.append(')');
		return result.toString();
	}

} //WaitImpl
