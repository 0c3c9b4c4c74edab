/**
 */
package cradlewright.model.job.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.fixture.Setup;

import cradlewright.model.job.JobPackage;
import cradlewright.model.job.Operation;
import cradlewright.model.job.OperationKind;

import cradlewright.model.vehicle.Part;

import cradlewright.quantity.Measured;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Operation</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getTakesOff <em>Takes Off</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getPutsOn <em>Puts On</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getSetup <em>Setup</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getNeeds <em>Needs</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getBest <em>Best</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getLikely <em>Likely</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getWorst <em>Worst</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getStarted <em>Started</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#isDone <em>Done</em>}</li>
 *   <li>{@link cradlewright.model.job.impl.OperationImpl#getAfter <em>After</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OperationImpl extends NamedImpl implements Operation {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final OperationKind KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected OperationKind kind = KIND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTakesOff() <em>Takes Off</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakesOff()
	 * @generated
	 * @ordered
	 */
	protected EList<Part> takesOff;

	/**
	 * The cached value of the '{@link #getPutsOn() <em>Puts On</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPutsOn()
	 * @generated
	 * @ordered
	 */
	protected EList<Part> putsOn;

	/**
	 * The cached value of the '{@link #getSetup() <em>Setup</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetup()
	 * @generated
	 * @ordered
	 */
	protected Setup setup;

	/**
	 * The default value of the '{@link #getNeeds() <em>Needs</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeeds()
	 * @generated
	 * @ordered
	 */
	protected static final String NEEDS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNeeds() <em>Needs</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeeds()
	 * @generated
	 * @ordered
	 */
	protected String needs = NEEDS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBest() <em>Best</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBest()
	 * @generated
	 * @ordered
	 */
	protected static final Measured BEST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBest() <em>Best</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBest()
	 * @generated
	 * @ordered
	 */
	protected Measured best = BEST_EDEFAULT;

	/**
	 * The default value of the '{@link #getLikely() <em>Likely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLikely()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LIKELY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLikely() <em>Likely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLikely()
	 * @generated
	 * @ordered
	 */
	protected Measured likely = LIKELY_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorst() <em>Worst</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorst()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WORST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorst() <em>Worst</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorst()
	 * @generated
	 * @ordered
	 */
	protected Measured worst = WORST_EDEFAULT;

	/**
	 * The default value of the '{@link #getStarted() <em>Started</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarted()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate STARTED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStarted() <em>Started</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarted()
	 * @generated
	 * @ordered
	 */
	protected LocalDate started = STARTED_EDEFAULT;

	/**
	 * The default value of the '{@link #isDone() <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDone()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DONE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDone() <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDone()
	 * @generated
	 * @ordered
	 */
	protected boolean done = DONE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAfter() <em>After</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAfter()
	 * @generated
	 * @ordered
	 */
	protected EList<Operation> after;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OperationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return JobPackage.Literals.OPERATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OperationKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(OperationKind newKind) {
		OperationKind oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Part> getTakesOff() {
		if (takesOff == null) {
			takesOff = new EObjectResolvingEList<Part>(Part.class, this, JobPackage.OPERATION__TAKES_OFF);
		}
		return takesOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Part> getPutsOn() {
		if (putsOn == null) {
			putsOn = new EObjectResolvingEList<Part>(Part.class, this, JobPackage.OPERATION__PUTS_ON);
		}
		return putsOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Setup getSetup() {
		if (setup != null && setup.eIsProxy()) {
			InternalEObject oldSetup = (InternalEObject)setup;
			setup = (Setup)eResolveProxy(oldSetup);
			if (setup != oldSetup) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, JobPackage.OPERATION__SETUP, oldSetup, setup));
			}
		}
		return setup;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Setup basicGetSetup() {
		return setup;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSetup(Setup newSetup) {
		Setup oldSetup = setup;
		setup = newSetup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__SETUP, oldSetup, setup));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNeeds() {
		return needs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeeds(String newNeeds) {
		String oldNeeds = needs;
		needs = newNeeds;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__NEEDS, oldNeeds, needs));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getBest() {
		return best;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBest(Measured newBest) {
		Measured oldBest = best;
		best = newBest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__BEST, oldBest, best));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLikely() {
		return likely;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLikely(Measured newLikely) {
		Measured oldLikely = likely;
		likely = newLikely;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__LIKELY, oldLikely, likely));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWorst() {
		return worst;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorst(Measured newWorst) {
		Measured oldWorst = worst;
		worst = newWorst;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__WORST, oldWorst, worst));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getStarted() {
		return started;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStarted(LocalDate newStarted) {
		LocalDate oldStarted = started;
		started = newStarted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__STARTED, oldStarted, started));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDone() {
		return done;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDone(boolean newDone) {
		boolean oldDone = done;
		done = newDone;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.OPERATION__DONE, oldDone, done));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Operation> getAfter() {
		if (after == null) {
			after = new EObjectResolvingEList<Operation>(Operation.class, this, JobPackage.OPERATION__AFTER);
		}
		return after;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case JobPackage.OPERATION__KIND:
				return getKind();
			case JobPackage.OPERATION__TAKES_OFF:
				return getTakesOff();
			case JobPackage.OPERATION__PUTS_ON:
				return getPutsOn();
			case JobPackage.OPERATION__SETUP:
				if (resolve) return getSetup();
				return basicGetSetup();
			case JobPackage.OPERATION__NEEDS:
				return getNeeds();
			case JobPackage.OPERATION__BEST:
				return getBest();
			case JobPackage.OPERATION__LIKELY:
				return getLikely();
			case JobPackage.OPERATION__WORST:
				return getWorst();
			case JobPackage.OPERATION__STARTED:
				return getStarted();
			case JobPackage.OPERATION__DONE:
				return isDone();
			case JobPackage.OPERATION__AFTER:
				return getAfter();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case JobPackage.OPERATION__KIND:
				setKind((OperationKind)newValue);
				return;
			case JobPackage.OPERATION__TAKES_OFF:
				getTakesOff().clear();
				getTakesOff().addAll((Collection<? extends Part>)newValue);
				return;
			case JobPackage.OPERATION__PUTS_ON:
				getPutsOn().clear();
				getPutsOn().addAll((Collection<? extends Part>)newValue);
				return;
			case JobPackage.OPERATION__SETUP:
				setSetup((Setup)newValue);
				return;
			case JobPackage.OPERATION__NEEDS:
				setNeeds((String)newValue);
				return;
			case JobPackage.OPERATION__BEST:
				setBest((Measured)newValue);
				return;
			case JobPackage.OPERATION__LIKELY:
				setLikely((Measured)newValue);
				return;
			case JobPackage.OPERATION__WORST:
				setWorst((Measured)newValue);
				return;
			case JobPackage.OPERATION__STARTED:
				setStarted((LocalDate)newValue);
				return;
			case JobPackage.OPERATION__DONE:
				setDone((Boolean)newValue);
				return;
			case JobPackage.OPERATION__AFTER:
				getAfter().clear();
				getAfter().addAll((Collection<? extends Operation>)newValue);
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
			case JobPackage.OPERATION__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case JobPackage.OPERATION__TAKES_OFF:
				getTakesOff().clear();
				return;
			case JobPackage.OPERATION__PUTS_ON:
				getPutsOn().clear();
				return;
			case JobPackage.OPERATION__SETUP:
				setSetup((Setup)null);
				return;
			case JobPackage.OPERATION__NEEDS:
				setNeeds(NEEDS_EDEFAULT);
				return;
			case JobPackage.OPERATION__BEST:
				setBest(BEST_EDEFAULT);
				return;
			case JobPackage.OPERATION__LIKELY:
				setLikely(LIKELY_EDEFAULT);
				return;
			case JobPackage.OPERATION__WORST:
				setWorst(WORST_EDEFAULT);
				return;
			case JobPackage.OPERATION__STARTED:
				setStarted(STARTED_EDEFAULT);
				return;
			case JobPackage.OPERATION__DONE:
				setDone(DONE_EDEFAULT);
				return;
			case JobPackage.OPERATION__AFTER:
				getAfter().clear();
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
			case JobPackage.OPERATION__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case JobPackage.OPERATION__TAKES_OFF:
				return takesOff != null && !takesOff.isEmpty();
			case JobPackage.OPERATION__PUTS_ON:
				return putsOn != null && !putsOn.isEmpty();
			case JobPackage.OPERATION__SETUP:
				return setup != null;
			case JobPackage.OPERATION__NEEDS:
				return NEEDS_EDEFAULT == null ? needs != null : !NEEDS_EDEFAULT.equals(needs);
			case JobPackage.OPERATION__BEST:
				return BEST_EDEFAULT == null ? best != null : !BEST_EDEFAULT.equals(best);
			case JobPackage.OPERATION__LIKELY:
				return LIKELY_EDEFAULT == null ? likely != null : !LIKELY_EDEFAULT.equals(likely);
			case JobPackage.OPERATION__WORST:
				return WORST_EDEFAULT == null ? worst != null : !WORST_EDEFAULT.equals(worst);
			case JobPackage.OPERATION__STARTED:
				return STARTED_EDEFAULT == null ? started != null : !STARTED_EDEFAULT.equals(started);
			case JobPackage.OPERATION__DONE:
				return done != DONE_EDEFAULT;
			case JobPackage.OPERATION__AFTER:
				return after != null && !after.isEmpty();
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", needs: ");
		result.append(needs);
		result.append(", best: ");
		result.append(best);
		result.append(", likely: ");
		result.append(likely);
		result.append(", worst: ");
		result.append(worst);
		result.append(", started: ");
		result.append(started);
		result.append(", done: ");
		result.append(done);
		result.append(')');
		return result.toString();
	}

} //OperationImpl
