/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;

import cradlewright.model.fixture.Setup;

import cradlewright.model.vehicle.ApertureReading;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Construction;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mark;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.model.vehicle.Visit;
import cradlewright.model.vehicle.Weighing;
import cradlewright.model.vehicle.WorkPoint;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Car</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getSchema <em>Schema</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#isDraft <em>Draft</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getId <em>Id</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getName <em>Name</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getNote <em>Note</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getConstruction <em>Construction</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getMarks <em>Marks</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getMounts <em>Mounts</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getLiftPoints <em>Lift Points</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getWorkPoints <em>Work Points</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getCutZones <em>Cut Zones</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getTemporaryLoads <em>Temporary Loads</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getBraces <em>Braces</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getApertureReadings <em>Aperture Readings</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getStages <em>Stages</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getSetups <em>Setups</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getVisits <em>Visits</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.CarImpl#getWeighings <em>Weighings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CarImpl extends MinimalEObjectImpl.Container implements Car {
	/**
	 * The default value of the '{@link #getSchema() <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchema()
	 * @generated
	 * @ordered
	 */
	protected static final int SCHEMA_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getSchema() <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchema()
	 * @generated
	 * @ordered
	 */
	protected int schema = SCHEMA_EDEFAULT;

	/**
	 * The default value of the '{@link #isDraft() <em>Draft</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDraft()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DRAFT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDraft() <em>Draft</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDraft()
	 * @generated
	 * @ordered
	 */
	protected boolean draft = DRAFT_EDEFAULT;

	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getConstruction() <em>Construction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConstruction()
	 * @generated
	 * @ordered
	 */
	protected static final Construction CONSTRUCTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConstruction() <em>Construction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConstruction()
	 * @generated
	 * @ordered
	 */
	protected Construction construction = CONSTRUCTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMarks() <em>Marks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarks()
	 * @generated
	 * @ordered
	 */
	protected EList<Mark> marks;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> pieces;

	/**
	 * The cached value of the '{@link #getMounts() <em>Mounts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMounts()
	 * @generated
	 * @ordered
	 */
	protected EList<Mount> mounts;

	/**
	 * The cached value of the '{@link #getLiftPoints() <em>Lift Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiftPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<LiftPoint> liftPoints;

	/**
	 * The cached value of the '{@link #getWorkPoints() <em>Work Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<WorkPoint> workPoints;

	/**
	 * The cached value of the '{@link #getCutZones() <em>Cut Zones</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutZones()
	 * @generated
	 * @ordered
	 */
	protected EList<CutZone> cutZones;

	/**
	 * The cached value of the '{@link #getTemporaryLoads() <em>Temporary Loads</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemporaryLoads()
	 * @generated
	 * @ordered
	 */
	protected EList<TemporaryLoad> temporaryLoads;

	/**
	 * The cached value of the '{@link #getBraces() <em>Braces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBraces()
	 * @generated
	 * @ordered
	 */
	protected EList<Brace> braces;

	/**
	 * The cached value of the '{@link #getApertureReadings() <em>Aperture Readings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApertureReadings()
	 * @generated
	 * @ordered
	 */
	protected EList<ApertureReading> apertureReadings;

	/**
	 * The cached value of the '{@link #getStages() <em>Stages</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStages()
	 * @generated
	 * @ordered
	 */
	protected EList<Stage> stages;

	/**
	 * The cached value of the '{@link #getSetups() <em>Setups</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetups()
	 * @generated
	 * @ordered
	 */
	protected EList<Setup> setups;

	/**
	 * The cached value of the '{@link #getVisits() <em>Visits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisits()
	 * @generated
	 * @ordered
	 */
	protected EList<Visit> visits;

	/**
	 * The cached value of the '{@link #getWeighings() <em>Weighings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeighings()
	 * @generated
	 * @ordered
	 */
	protected EList<Weighing> weighings;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CarImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.CAR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSchema() {
		return schema;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchema(int newSchema) {
		int oldSchema = schema;
		schema = newSchema;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__SCHEMA, oldSchema, schema));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDraft() {
		return draft;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDraft(boolean newDraft) {
		boolean oldDraft = draft;
		draft = newDraft;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__DRAFT, oldDraft, draft));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId() {
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId) {
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Construction getConstruction() {
		return construction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConstruction(Construction newConstruction) {
		Construction oldConstruction = construction;
		construction = newConstruction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VehiclePackage.CAR__CONSTRUCTION, oldConstruction, construction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Mark> getMarks() {
		if (marks == null) {
			marks = new EObjectContainmentEList<Mark>(Mark.class, this, VehiclePackage.CAR__MARKS);
		}
		return marks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getPieces() {
		if (pieces == null) {
			pieces = new EObjectContainmentEList<Piece>(Piece.class, this, VehiclePackage.CAR__PIECES);
		}
		return pieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Mount> getMounts() {
		if (mounts == null) {
			mounts = new EObjectContainmentEList<Mount>(Mount.class, this, VehiclePackage.CAR__MOUNTS);
		}
		return mounts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LiftPoint> getLiftPoints() {
		if (liftPoints == null) {
			liftPoints = new EObjectContainmentEList<LiftPoint>(LiftPoint.class, this, VehiclePackage.CAR__LIFT_POINTS);
		}
		return liftPoints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<WorkPoint> getWorkPoints() {
		if (workPoints == null) {
			workPoints = new EObjectContainmentEList<WorkPoint>(WorkPoint.class, this, VehiclePackage.CAR__WORK_POINTS);
		}
		return workPoints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CutZone> getCutZones() {
		if (cutZones == null) {
			cutZones = new EObjectContainmentEList<CutZone>(CutZone.class, this, VehiclePackage.CAR__CUT_ZONES);
		}
		return cutZones;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TemporaryLoad> getTemporaryLoads() {
		if (temporaryLoads == null) {
			temporaryLoads = new EObjectContainmentEList<TemporaryLoad>(TemporaryLoad.class, this, VehiclePackage.CAR__TEMPORARY_LOADS);
		}
		return temporaryLoads;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Brace> getBraces() {
		if (braces == null) {
			braces = new EObjectContainmentEList<Brace>(Brace.class, this, VehiclePackage.CAR__BRACES);
		}
		return braces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ApertureReading> getApertureReadings() {
		if (apertureReadings == null) {
			apertureReadings = new EObjectContainmentEList<ApertureReading>(ApertureReading.class, this, VehiclePackage.CAR__APERTURE_READINGS);
		}
		return apertureReadings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Stage> getStages() {
		if (stages == null) {
			stages = new EObjectContainmentEList<Stage>(Stage.class, this, VehiclePackage.CAR__STAGES);
		}
		return stages;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Setup> getSetups() {
		if (setups == null) {
			setups = new EObjectContainmentEList<Setup>(Setup.class, this, VehiclePackage.CAR__SETUPS);
		}
		return setups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Visit> getVisits() {
		if (visits == null) {
			visits = new EObjectContainmentEList<Visit>(Visit.class, this, VehiclePackage.CAR__VISITS);
		}
		return visits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Weighing> getWeighings() {
		if (weighings == null) {
			weighings = new EObjectContainmentEList<Weighing>(Weighing.class, this, VehiclePackage.CAR__WEIGHINGS);
		}
		return weighings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case VehiclePackage.CAR__MARKS:
				return ((InternalEList<?>)getMarks()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__PIECES:
				return ((InternalEList<?>)getPieces()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__MOUNTS:
				return ((InternalEList<?>)getMounts()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__LIFT_POINTS:
				return ((InternalEList<?>)getLiftPoints()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__WORK_POINTS:
				return ((InternalEList<?>)getWorkPoints()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__CUT_ZONES:
				return ((InternalEList<?>)getCutZones()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__TEMPORARY_LOADS:
				return ((InternalEList<?>)getTemporaryLoads()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__BRACES:
				return ((InternalEList<?>)getBraces()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__APERTURE_READINGS:
				return ((InternalEList<?>)getApertureReadings()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__STAGES:
				return ((InternalEList<?>)getStages()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__SETUPS:
				return ((InternalEList<?>)getSetups()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__VISITS:
				return ((InternalEList<?>)getVisits()).basicRemove(otherEnd, msgs);
			case VehiclePackage.CAR__WEIGHINGS:
				return ((InternalEList<?>)getWeighings()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.CAR__SCHEMA:
				return getSchema();
			case VehiclePackage.CAR__DRAFT:
				return isDraft();
			case VehiclePackage.CAR__ID:
				return getId();
			case VehiclePackage.CAR__NAME:
				return getName();
			case VehiclePackage.CAR__NOTE:
				return getNote();
			case VehiclePackage.CAR__CONSTRUCTION:
				return getConstruction();
			case VehiclePackage.CAR__MARKS:
				return getMarks();
			case VehiclePackage.CAR__PIECES:
				return getPieces();
			case VehiclePackage.CAR__MOUNTS:
				return getMounts();
			case VehiclePackage.CAR__LIFT_POINTS:
				return getLiftPoints();
			case VehiclePackage.CAR__WORK_POINTS:
				return getWorkPoints();
			case VehiclePackage.CAR__CUT_ZONES:
				return getCutZones();
			case VehiclePackage.CAR__TEMPORARY_LOADS:
				return getTemporaryLoads();
			case VehiclePackage.CAR__BRACES:
				return getBraces();
			case VehiclePackage.CAR__APERTURE_READINGS:
				return getApertureReadings();
			case VehiclePackage.CAR__STAGES:
				return getStages();
			case VehiclePackage.CAR__SETUPS:
				return getSetups();
			case VehiclePackage.CAR__VISITS:
				return getVisits();
			case VehiclePackage.CAR__WEIGHINGS:
				return getWeighings();
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
			case VehiclePackage.CAR__SCHEMA:
				setSchema((Integer)newValue);
				return;
			case VehiclePackage.CAR__DRAFT:
				setDraft((Boolean)newValue);
				return;
			case VehiclePackage.CAR__ID:
				setId((String)newValue);
				return;
			case VehiclePackage.CAR__NAME:
				setName((String)newValue);
				return;
			case VehiclePackage.CAR__NOTE:
				setNote((String)newValue);
				return;
			case VehiclePackage.CAR__CONSTRUCTION:
				setConstruction((Construction)newValue);
				return;
			case VehiclePackage.CAR__MARKS:
				getMarks().clear();
				getMarks().addAll((Collection<? extends Mark>)newValue);
				return;
			case VehiclePackage.CAR__PIECES:
				getPieces().clear();
				getPieces().addAll((Collection<? extends Piece>)newValue);
				return;
			case VehiclePackage.CAR__MOUNTS:
				getMounts().clear();
				getMounts().addAll((Collection<? extends Mount>)newValue);
				return;
			case VehiclePackage.CAR__LIFT_POINTS:
				getLiftPoints().clear();
				getLiftPoints().addAll((Collection<? extends LiftPoint>)newValue);
				return;
			case VehiclePackage.CAR__WORK_POINTS:
				getWorkPoints().clear();
				getWorkPoints().addAll((Collection<? extends WorkPoint>)newValue);
				return;
			case VehiclePackage.CAR__CUT_ZONES:
				getCutZones().clear();
				getCutZones().addAll((Collection<? extends CutZone>)newValue);
				return;
			case VehiclePackage.CAR__TEMPORARY_LOADS:
				getTemporaryLoads().clear();
				getTemporaryLoads().addAll((Collection<? extends TemporaryLoad>)newValue);
				return;
			case VehiclePackage.CAR__BRACES:
				getBraces().clear();
				getBraces().addAll((Collection<? extends Brace>)newValue);
				return;
			case VehiclePackage.CAR__APERTURE_READINGS:
				getApertureReadings().clear();
				getApertureReadings().addAll((Collection<? extends ApertureReading>)newValue);
				return;
			case VehiclePackage.CAR__STAGES:
				getStages().clear();
				getStages().addAll((Collection<? extends Stage>)newValue);
				return;
			case VehiclePackage.CAR__SETUPS:
				getSetups().clear();
				getSetups().addAll((Collection<? extends Setup>)newValue);
				return;
			case VehiclePackage.CAR__VISITS:
				getVisits().clear();
				getVisits().addAll((Collection<? extends Visit>)newValue);
				return;
			case VehiclePackage.CAR__WEIGHINGS:
				getWeighings().clear();
				getWeighings().addAll((Collection<? extends Weighing>)newValue);
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
			case VehiclePackage.CAR__SCHEMA:
				setSchema(SCHEMA_EDEFAULT);
				return;
			case VehiclePackage.CAR__DRAFT:
				setDraft(DRAFT_EDEFAULT);
				return;
			case VehiclePackage.CAR__ID:
				setId(ID_EDEFAULT);
				return;
			case VehiclePackage.CAR__NAME:
				setName(NAME_EDEFAULT);
				return;
			case VehiclePackage.CAR__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case VehiclePackage.CAR__CONSTRUCTION:
				setConstruction(CONSTRUCTION_EDEFAULT);
				return;
			case VehiclePackage.CAR__MARKS:
				getMarks().clear();
				return;
			case VehiclePackage.CAR__PIECES:
				getPieces().clear();
				return;
			case VehiclePackage.CAR__MOUNTS:
				getMounts().clear();
				return;
			case VehiclePackage.CAR__LIFT_POINTS:
				getLiftPoints().clear();
				return;
			case VehiclePackage.CAR__WORK_POINTS:
				getWorkPoints().clear();
				return;
			case VehiclePackage.CAR__CUT_ZONES:
				getCutZones().clear();
				return;
			case VehiclePackage.CAR__TEMPORARY_LOADS:
				getTemporaryLoads().clear();
				return;
			case VehiclePackage.CAR__BRACES:
				getBraces().clear();
				return;
			case VehiclePackage.CAR__APERTURE_READINGS:
				getApertureReadings().clear();
				return;
			case VehiclePackage.CAR__STAGES:
				getStages().clear();
				return;
			case VehiclePackage.CAR__SETUPS:
				getSetups().clear();
				return;
			case VehiclePackage.CAR__VISITS:
				getVisits().clear();
				return;
			case VehiclePackage.CAR__WEIGHINGS:
				getWeighings().clear();
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
			case VehiclePackage.CAR__SCHEMA:
				return schema != SCHEMA_EDEFAULT;
			case VehiclePackage.CAR__DRAFT:
				return draft != DRAFT_EDEFAULT;
			case VehiclePackage.CAR__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case VehiclePackage.CAR__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case VehiclePackage.CAR__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case VehiclePackage.CAR__CONSTRUCTION:
				return CONSTRUCTION_EDEFAULT == null ? construction != null : !CONSTRUCTION_EDEFAULT.equals(construction);
			case VehiclePackage.CAR__MARKS:
				return marks != null && !marks.isEmpty();
			case VehiclePackage.CAR__PIECES:
				return pieces != null && !pieces.isEmpty();
			case VehiclePackage.CAR__MOUNTS:
				return mounts != null && !mounts.isEmpty();
			case VehiclePackage.CAR__LIFT_POINTS:
				return liftPoints != null && !liftPoints.isEmpty();
			case VehiclePackage.CAR__WORK_POINTS:
				return workPoints != null && !workPoints.isEmpty();
			case VehiclePackage.CAR__CUT_ZONES:
				return cutZones != null && !cutZones.isEmpty();
			case VehiclePackage.CAR__TEMPORARY_LOADS:
				return temporaryLoads != null && !temporaryLoads.isEmpty();
			case VehiclePackage.CAR__BRACES:
				return braces != null && !braces.isEmpty();
			case VehiclePackage.CAR__APERTURE_READINGS:
				return apertureReadings != null && !apertureReadings.isEmpty();
			case VehiclePackage.CAR__STAGES:
				return stages != null && !stages.isEmpty();
			case VehiclePackage.CAR__SETUPS:
				return setups != null && !setups.isEmpty();
			case VehiclePackage.CAR__VISITS:
				return visits != null && !visits.isEmpty();
			case VehiclePackage.CAR__WEIGHINGS:
				return weighings != null && !weighings.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass) {
		if (baseClass == Identified.class) {
			switch (derivedFeatureID) {
				case VehiclePackage.CAR__ID: return BasePackage.IDENTIFIED__ID;
				default: return -1;
			}
		}
		if (baseClass == Named.class) {
			switch (derivedFeatureID) {
				case VehiclePackage.CAR__NAME: return BasePackage.NAMED__NAME;
				case VehiclePackage.CAR__NOTE: return BasePackage.NAMED__NOTE;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass) {
		if (baseClass == Identified.class) {
			switch (baseFeatureID) {
				case BasePackage.IDENTIFIED__ID: return VehiclePackage.CAR__ID;
				default: return -1;
			}
		}
		if (baseClass == Named.class) {
			switch (baseFeatureID) {
				case BasePackage.NAMED__NAME: return VehiclePackage.CAR__NAME;
				case BasePackage.NAMED__NOTE: return VehiclePackage.CAR__NOTE;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
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
		result.append(" (schema: ");
		result.append(schema);
		result.append(", draft: ");
		result.append(draft);
		result.append(", id: ");
		result.append(id);
		result.append(", name: ");
		result.append(name);
		result.append(", note: ");
		result.append(note);
		result.append(", construction: ");
		result.append(construction);
		result.append(')');
		return result.toString();
	}

} //CarImpl
