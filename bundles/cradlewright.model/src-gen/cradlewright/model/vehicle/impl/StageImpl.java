/**
 */
package cradlewright.model.vehicle.impl;

import cradlewright.model.base.impl.NamedImpl;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehiclePackage;

import java.util.Collection;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stage</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.vehicle.impl.StageImpl#getOn <em>On</em>}</li>
 *   <li>{@link cradlewright.model.vehicle.impl.StageImpl#getLoads <em>Loads</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StageImpl extends NamedImpl implements Stage {
	/**
	 * The cached value of the '{@link #getOn() <em>On</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected EList<Part> on;

	/**
	 * The cached value of the '{@link #getLoads() <em>Loads</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoads()
	 * @generated
	 * @ordered
	 */
	protected EList<TemporaryLoad> loads;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StageImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VehiclePackage.Literals.STAGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Part> getOn() {
		if (on == null) {
			on = new EObjectResolvingEList<Part>(Part.class, this, VehiclePackage.STAGE__ON);
		}
		return on;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TemporaryLoad> getLoads() {
		if (loads == null) {
			loads = new EObjectResolvingEList<TemporaryLoad>(TemporaryLoad.class, this, VehiclePackage.STAGE__LOADS);
		}
		return loads;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VehiclePackage.STAGE__ON:
				return getOn();
			case VehiclePackage.STAGE__LOADS:
				return getLoads();
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
			case VehiclePackage.STAGE__ON:
				getOn().clear();
				getOn().addAll((Collection<? extends Part>)newValue);
				return;
			case VehiclePackage.STAGE__LOADS:
				getLoads().clear();
				getLoads().addAll((Collection<? extends TemporaryLoad>)newValue);
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
			case VehiclePackage.STAGE__ON:
				getOn().clear();
				return;
			case VehiclePackage.STAGE__LOADS:
				getLoads().clear();
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
			case VehiclePackage.STAGE__ON:
				return on != null && !on.isEmpty();
			case VehiclePackage.STAGE__LOADS:
				return loads != null && !loads.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //StageImpl
