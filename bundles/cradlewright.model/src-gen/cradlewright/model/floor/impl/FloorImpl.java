/**
 */
package cradlewright.model.floor.impl;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;

import cradlewright.model.floor.Column;
import cradlewright.model.floor.Door;
import cradlewright.model.floor.Floor;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.Placement;
import cradlewright.model.floor.Slab;

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
 * An implementation of the model object '<em><b>Floor</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getSchema <em>Schema</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#isDraft <em>Draft</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getId <em>Id</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getName <em>Name</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getNote <em>Note</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getSlabs <em>Slabs</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getPlaces <em>Places</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getDoors <em>Doors</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getColumns <em>Columns</em>}</li>
 *   <li>{@link cradlewright.model.floor.impl.FloorImpl#getPlacements <em>Placements</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FloorImpl extends MinimalEObjectImpl.Container implements Floor {
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
	 * The cached value of the '{@link #getSlabs() <em>Slabs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlabs()
	 * @generated
	 * @ordered
	 */
	protected EList<Slab> slabs;

	/**
	 * The cached value of the '{@link #getPlaces() <em>Places</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlaces()
	 * @generated
	 * @ordered
	 */
	protected EList<Place> places;

	/**
	 * The cached value of the '{@link #getDoors() <em>Doors</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDoors()
	 * @generated
	 * @ordered
	 */
	protected EList<Door> doors;

	/**
	 * The cached value of the '{@link #getColumns() <em>Columns</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColumns()
	 * @generated
	 * @ordered
	 */
	protected EList<Column> columns;

	/**
	 * The cached value of the '{@link #getPlacements() <em>Placements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacements()
	 * @generated
	 * @ordered
	 */
	protected EList<Placement> placements;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FloorImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FloorPackage.Literals.FLOOR;
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
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.FLOOR__SCHEMA, oldSchema, schema));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.FLOOR__DRAFT, oldDraft, draft));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.FLOOR__ID, oldId, id));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.FLOOR__NAME, oldName, name));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FloorPackage.FLOOR__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Slab> getSlabs() {
		if (slabs == null) {
			slabs = new EObjectContainmentEList<Slab>(Slab.class, this, FloorPackage.FLOOR__SLABS);
		}
		return slabs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Place> getPlaces() {
		if (places == null) {
			places = new EObjectContainmentEList<Place>(Place.class, this, FloorPackage.FLOOR__PLACES);
		}
		return places;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Door> getDoors() {
		if (doors == null) {
			doors = new EObjectContainmentEList<Door>(Door.class, this, FloorPackage.FLOOR__DOORS);
		}
		return doors;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Column> getColumns() {
		if (columns == null) {
			columns = new EObjectContainmentEList<Column>(Column.class, this, FloorPackage.FLOOR__COLUMNS);
		}
		return columns;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Placement> getPlacements() {
		if (placements == null) {
			placements = new EObjectContainmentEList<Placement>(Placement.class, this, FloorPackage.FLOOR__PLACEMENTS);
		}
		return placements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FloorPackage.FLOOR__SLABS:
				return ((InternalEList<?>)getSlabs()).basicRemove(otherEnd, msgs);
			case FloorPackage.FLOOR__PLACES:
				return ((InternalEList<?>)getPlaces()).basicRemove(otherEnd, msgs);
			case FloorPackage.FLOOR__DOORS:
				return ((InternalEList<?>)getDoors()).basicRemove(otherEnd, msgs);
			case FloorPackage.FLOOR__COLUMNS:
				return ((InternalEList<?>)getColumns()).basicRemove(otherEnd, msgs);
			case FloorPackage.FLOOR__PLACEMENTS:
				return ((InternalEList<?>)getPlacements()).basicRemove(otherEnd, msgs);
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
			case FloorPackage.FLOOR__SCHEMA:
				return getSchema();
			case FloorPackage.FLOOR__DRAFT:
				return isDraft();
			case FloorPackage.FLOOR__ID:
				return getId();
			case FloorPackage.FLOOR__NAME:
				return getName();
			case FloorPackage.FLOOR__NOTE:
				return getNote();
			case FloorPackage.FLOOR__SLABS:
				return getSlabs();
			case FloorPackage.FLOOR__PLACES:
				return getPlaces();
			case FloorPackage.FLOOR__DOORS:
				return getDoors();
			case FloorPackage.FLOOR__COLUMNS:
				return getColumns();
			case FloorPackage.FLOOR__PLACEMENTS:
				return getPlacements();
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
			case FloorPackage.FLOOR__SCHEMA:
				setSchema((Integer)newValue);
				return;
			case FloorPackage.FLOOR__DRAFT:
				setDraft((Boolean)newValue);
				return;
			case FloorPackage.FLOOR__ID:
				setId((String)newValue);
				return;
			case FloorPackage.FLOOR__NAME:
				setName((String)newValue);
				return;
			case FloorPackage.FLOOR__NOTE:
				setNote((String)newValue);
				return;
			case FloorPackage.FLOOR__SLABS:
				getSlabs().clear();
				getSlabs().addAll((Collection<? extends Slab>)newValue);
				return;
			case FloorPackage.FLOOR__PLACES:
				getPlaces().clear();
				getPlaces().addAll((Collection<? extends Place>)newValue);
				return;
			case FloorPackage.FLOOR__DOORS:
				getDoors().clear();
				getDoors().addAll((Collection<? extends Door>)newValue);
				return;
			case FloorPackage.FLOOR__COLUMNS:
				getColumns().clear();
				getColumns().addAll((Collection<? extends Column>)newValue);
				return;
			case FloorPackage.FLOOR__PLACEMENTS:
				getPlacements().clear();
				getPlacements().addAll((Collection<? extends Placement>)newValue);
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
			case FloorPackage.FLOOR__SCHEMA:
				setSchema(SCHEMA_EDEFAULT);
				return;
			case FloorPackage.FLOOR__DRAFT:
				setDraft(DRAFT_EDEFAULT);
				return;
			case FloorPackage.FLOOR__ID:
				setId(ID_EDEFAULT);
				return;
			case FloorPackage.FLOOR__NAME:
				setName(NAME_EDEFAULT);
				return;
			case FloorPackage.FLOOR__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case FloorPackage.FLOOR__SLABS:
				getSlabs().clear();
				return;
			case FloorPackage.FLOOR__PLACES:
				getPlaces().clear();
				return;
			case FloorPackage.FLOOR__DOORS:
				getDoors().clear();
				return;
			case FloorPackage.FLOOR__COLUMNS:
				getColumns().clear();
				return;
			case FloorPackage.FLOOR__PLACEMENTS:
				getPlacements().clear();
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
			case FloorPackage.FLOOR__SCHEMA:
				return schema != SCHEMA_EDEFAULT;
			case FloorPackage.FLOOR__DRAFT:
				return draft != DRAFT_EDEFAULT;
			case FloorPackage.FLOOR__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case FloorPackage.FLOOR__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case FloorPackage.FLOOR__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case FloorPackage.FLOOR__SLABS:
				return slabs != null && !slabs.isEmpty();
			case FloorPackage.FLOOR__PLACES:
				return places != null && !places.isEmpty();
			case FloorPackage.FLOOR__DOORS:
				return doors != null && !doors.isEmpty();
			case FloorPackage.FLOOR__COLUMNS:
				return columns != null && !columns.isEmpty();
			case FloorPackage.FLOOR__PLACEMENTS:
				return placements != null && !placements.isEmpty();
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
				case FloorPackage.FLOOR__ID: return BasePackage.IDENTIFIED__ID;
				default: return -1;
			}
		}
		if (baseClass == Named.class) {
			switch (derivedFeatureID) {
				case FloorPackage.FLOOR__NAME: return BasePackage.NAMED__NAME;
				case FloorPackage.FLOOR__NOTE: return BasePackage.NAMED__NOTE;
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
				case BasePackage.IDENTIFIED__ID: return FloorPackage.FLOOR__ID;
				default: return -1;
			}
		}
		if (baseClass == Named.class) {
			switch (baseFeatureID) {
				case BasePackage.NAMED__NAME: return FloorPackage.FLOOR__NAME;
				case BasePackage.NAMED__NOTE: return FloorPackage.FLOOR__NOTE;
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
		result.append(')');
		return result.toString();
	}

} //FloorImpl
