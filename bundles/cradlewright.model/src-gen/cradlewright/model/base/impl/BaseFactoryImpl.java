/**
 */
package cradlewright.model.base.impl;

import cradlewright.model.base.*;

import cradlewright.model.value.StoredText;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.time.LocalDate;
import java.time.LocalDateTime;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class BaseFactoryImpl extends EFactoryImpl implements BaseFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static BaseFactory init() {
		try {
			BaseFactory theBaseFactory = (BaseFactory)EPackage.Registry.INSTANCE.getEFactory(BasePackage.eNS_URI);
			if (theBaseFactory != null) {
				return theBaseFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new BaseFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BaseFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case BasePackage.SHOP: return createShop();
			case BasePackage.SETTINGS: return createSettings();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case BasePackage.UNITS:
				return createUnitsFromString(eDataType, initialValue);
			case BasePackage.CONDITION:
				return createConditionFromString(eDataType, initialValue);
			case BasePackage.HOLD:
				return createHoldFromString(eDataType, initialValue);
			case BasePackage.BASIS:
				return createBasisFromString(eDataType, initialValue);
			case BasePackage.MASS:
				return createMassFromString(eDataType, initialValue);
			case BasePackage.LENGTH:
				return createLengthFromString(eDataType, initialValue);
			case BasePackage.FORCE:
				return createForceFromString(eDataType, initialValue);
			case BasePackage.MOMENT:
				return createMomentFromString(eDataType, initialValue);
			case BasePackage.STRESS:
				return createStressFromString(eDataType, initialValue);
			case BasePackage.STIFFNESS:
				return createStiffnessFromString(eDataType, initialValue);
			case BasePackage.TORSIONAL_STIFFNESS:
				return createTorsionalStiffnessFromString(eDataType, initialValue);
			case BasePackage.BENDING_STIFFNESS:
				return createBendingStiffnessFromString(eDataType, initialValue);
			case BasePackage.ANGLE:
				return createAngleFromString(eDataType, initialValue);
			case BasePackage.HOURS:
				return createHoursFromString(eDataType, initialValue);
			case BasePackage.RATIO:
				return createRatioFromString(eDataType, initialValue);
			case BasePackage.TEMPERATURE:
				return createTemperatureFromString(eDataType, initialValue);
			case BasePackage.DENSITY:
				return createDensityFromString(eDataType, initialValue);
			case BasePackage.SUBGRADE_MODULUS:
				return createSubgradeModulusFromString(eDataType, initialValue);
			case BasePackage.SPEED:
				return createSpeedFromString(eDataType, initialValue);
			case BasePackage.AREA:
				return createAreaFromString(eDataType, initialValue);
			case BasePackage.POSITION:
				return createPositionFromString(eDataType, initialValue);
			case BasePackage.DIRECTION:
				return createDirectionFromString(eDataType, initialValue);
			case BasePackage.DATE:
				return createDateFromString(eDataType, initialValue);
			case BasePackage.LOCAL_MOMENT:
				return createLocalMomentFromString(eDataType, initialValue);
			case BasePackage.ID:
				return createIdFromString(eDataType, initialValue);
			case BasePackage.UNITS_OBJECT:
				return createUnitsObjectFromString(eDataType, initialValue);
			case BasePackage.CONDITION_OBJECT:
				return createConditionObjectFromString(eDataType, initialValue);
			case BasePackage.HOLD_OBJECT:
				return createHoldObjectFromString(eDataType, initialValue);
			case BasePackage.BASIS_OBJECT:
				return createBasisObjectFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case BasePackage.UNITS:
				return convertUnitsToString(eDataType, instanceValue);
			case BasePackage.CONDITION:
				return convertConditionToString(eDataType, instanceValue);
			case BasePackage.HOLD:
				return convertHoldToString(eDataType, instanceValue);
			case BasePackage.BASIS:
				return convertBasisToString(eDataType, instanceValue);
			case BasePackage.MASS:
				return convertMassToString(eDataType, instanceValue);
			case BasePackage.LENGTH:
				return convertLengthToString(eDataType, instanceValue);
			case BasePackage.FORCE:
				return convertForceToString(eDataType, instanceValue);
			case BasePackage.MOMENT:
				return convertMomentToString(eDataType, instanceValue);
			case BasePackage.STRESS:
				return convertStressToString(eDataType, instanceValue);
			case BasePackage.STIFFNESS:
				return convertStiffnessToString(eDataType, instanceValue);
			case BasePackage.TORSIONAL_STIFFNESS:
				return convertTorsionalStiffnessToString(eDataType, instanceValue);
			case BasePackage.BENDING_STIFFNESS:
				return convertBendingStiffnessToString(eDataType, instanceValue);
			case BasePackage.ANGLE:
				return convertAngleToString(eDataType, instanceValue);
			case BasePackage.HOURS:
				return convertHoursToString(eDataType, instanceValue);
			case BasePackage.RATIO:
				return convertRatioToString(eDataType, instanceValue);
			case BasePackage.TEMPERATURE:
				return convertTemperatureToString(eDataType, instanceValue);
			case BasePackage.DENSITY:
				return convertDensityToString(eDataType, instanceValue);
			case BasePackage.SUBGRADE_MODULUS:
				return convertSubgradeModulusToString(eDataType, instanceValue);
			case BasePackage.SPEED:
				return convertSpeedToString(eDataType, instanceValue);
			case BasePackage.AREA:
				return convertAreaToString(eDataType, instanceValue);
			case BasePackage.POSITION:
				return convertPositionToString(eDataType, instanceValue);
			case BasePackage.DIRECTION:
				return convertDirectionToString(eDataType, instanceValue);
			case BasePackage.DATE:
				return convertDateToString(eDataType, instanceValue);
			case BasePackage.LOCAL_MOMENT:
				return convertLocalMomentToString(eDataType, instanceValue);
			case BasePackage.ID:
				return convertIdToString(eDataType, instanceValue);
			case BasePackage.UNITS_OBJECT:
				return convertUnitsObjectToString(eDataType, instanceValue);
			case BasePackage.CONDITION_OBJECT:
				return convertConditionObjectToString(eDataType, instanceValue);
			case BasePackage.HOLD_OBJECT:
				return convertHoldObjectToString(eDataType, instanceValue);
			case BasePackage.BASIS_OBJECT:
				return convertBasisObjectToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Shop createShop() {
		ShopImpl shop = new ShopImpl();
		return shop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Settings createSettings() {
		SettingsImpl settings = new SettingsImpl();
		return settings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Units createUnitsFromString(EDataType eDataType, String initialValue) {
		Units result = Units.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitsToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Condition createConditionFromString(EDataType eDataType, String initialValue) {
		Condition result = Condition.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConditionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Hold createHoldFromString(EDataType eDataType, String initialValue) {
		Hold result = Hold.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHoldToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Basis createBasisFromString(EDataType eDataType, String initialValue) {
		Basis result = Basis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBasisToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createMass(final String it) {
		return StoredText.measured(it, Dimension.MASS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createMassFromString(EDataType eDataType, String initialValue) {
		return createMass(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMass(final Measured it) {
		return StoredText.text(it, Dimension.MASS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMassToString(EDataType eDataType, Object instanceValue) {
		return convertMass((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createLength(final String it) {
		return StoredText.measured(it, Dimension.LENGTH);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createLengthFromString(EDataType eDataType, String initialValue) {
		return createLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLength(final Measured it) {
		return StoredText.text(it, Dimension.LENGTH);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthToString(EDataType eDataType, Object instanceValue) {
		return convertLength((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createForce(final String it) {
		return StoredText.measured(it, Dimension.FORCE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createForceFromString(EDataType eDataType, String initialValue) {
		return createForce(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertForce(final Measured it) {
		return StoredText.text(it, Dimension.FORCE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertForceToString(EDataType eDataType, Object instanceValue) {
		return convertForce((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createMoment(final String it) {
		return StoredText.measured(it, Dimension.MOMENT);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createMomentFromString(EDataType eDataType, String initialValue) {
		return createMoment(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMoment(final Measured it) {
		return StoredText.text(it, Dimension.MOMENT);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMomentToString(EDataType eDataType, Object instanceValue) {
		return convertMoment((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createStress(final String it) {
		return StoredText.measured(it, Dimension.STRESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createStressFromString(EDataType eDataType, String initialValue) {
		return createStress(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStress(final Measured it) {
		return StoredText.text(it, Dimension.STRESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStressToString(EDataType eDataType, Object instanceValue) {
		return convertStress((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createStiffness(final String it) {
		return StoredText.measured(it, Dimension.STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createStiffnessFromString(EDataType eDataType, String initialValue) {
		return createStiffness(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStiffness(final Measured it) {
		return StoredText.text(it, Dimension.STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStiffnessToString(EDataType eDataType, Object instanceValue) {
		return convertStiffness((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createTorsionalStiffness(final String it) {
		return StoredText.measured(it, Dimension.TORSIONAL_STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createTorsionalStiffnessFromString(EDataType eDataType, String initialValue) {
		return createTorsionalStiffness(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTorsionalStiffness(final Measured it) {
		return StoredText.text(it, Dimension.TORSIONAL_STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTorsionalStiffnessToString(EDataType eDataType, Object instanceValue) {
		return convertTorsionalStiffness((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createBendingStiffness(final String it) {
		return StoredText.measured(it, Dimension.BENDING_STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createBendingStiffnessFromString(EDataType eDataType, String initialValue) {
		return createBendingStiffness(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBendingStiffness(final Measured it) {
		return StoredText.text(it, Dimension.BENDING_STIFFNESS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBendingStiffnessToString(EDataType eDataType, Object instanceValue) {
		return convertBendingStiffness((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createAngle(final String it) {
		return StoredText.measured(it, Dimension.ANGLE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createAngleFromString(EDataType eDataType, String initialValue) {
		return createAngle(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAngle(final Measured it) {
		return StoredText.text(it, Dimension.ANGLE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAngleToString(EDataType eDataType, Object instanceValue) {
		return convertAngle((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createHours(final String it) {
		return StoredText.measured(it, Dimension.TIME);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createHoursFromString(EDataType eDataType, String initialValue) {
		return createHours(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHours(final Measured it) {
		return StoredText.text(it, Dimension.TIME);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHoursToString(EDataType eDataType, Object instanceValue) {
		return convertHours((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createRatio(final String it) {
		return StoredText.measured(it, Dimension.RATIO);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createRatioFromString(EDataType eDataType, String initialValue) {
		return createRatio(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRatio(final Measured it) {
		return StoredText.text(it, Dimension.RATIO);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRatioToString(EDataType eDataType, Object instanceValue) {
		return convertRatio((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createTemperature(final String it) {
		return StoredText.measured(it, Dimension.TEMPERATURE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createTemperatureFromString(EDataType eDataType, String initialValue) {
		return createTemperature(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperature(final Measured it) {
		return StoredText.text(it, Dimension.TEMPERATURE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperatureToString(EDataType eDataType, Object instanceValue) {
		return convertTemperature((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createDensity(final String it) {
		return StoredText.measured(it, Dimension.DENSITY);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createDensityFromString(EDataType eDataType, String initialValue) {
		return createDensity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDensity(final Measured it) {
		return StoredText.text(it, Dimension.DENSITY);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDensityToString(EDataType eDataType, Object instanceValue) {
		return convertDensity((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createSubgradeModulus(final String it) {
		return StoredText.measured(it, Dimension.SUBGRADE_MODULUS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createSubgradeModulusFromString(EDataType eDataType, String initialValue) {
		return createSubgradeModulus(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSubgradeModulus(final Measured it) {
		return StoredText.text(it, Dimension.SUBGRADE_MODULUS);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSubgradeModulusToString(EDataType eDataType, Object instanceValue) {
		return convertSubgradeModulus((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createSpeed(final String it) {
		return StoredText.measured(it, Dimension.SPEED);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createSpeedFromString(EDataType eDataType, String initialValue) {
		return createSpeed(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpeed(final Measured it) {
		return StoredText.text(it, Dimension.SPEED);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpeedToString(EDataType eDataType, Object instanceValue) {
		return convertSpeed((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createArea(final String it) {
		return StoredText.measured(it, Dimension.AREA);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measured createAreaFromString(EDataType eDataType, String initialValue) {
		return createArea(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertArea(final Measured it) {
		return StoredText.text(it, Dimension.AREA);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAreaToString(EDataType eDataType, Object instanceValue) {
		return convertArea((Measured)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Position createPosition(final String it) {
		return StoredText.position(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Position createPositionFromString(EDataType eDataType, String initialValue) {
		return createPosition(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPosition(final Position it) {
		return StoredText.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPositionToString(EDataType eDataType, Object instanceValue) {
		return convertPosition((Position)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Direction createDirection(final String it) {
		return StoredText.direction(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Direction createDirectionFromString(EDataType eDataType, String initialValue) {
		return createDirection(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDirection(final Direction it) {
		return StoredText.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDirectionToString(EDataType eDataType, Object instanceValue) {
		return convertDirection((Direction)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDate(final String it) {
		return StoredText.date(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDateFromString(EDataType eDataType, String initialValue) {
		return createDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDate(final LocalDate it) {
		return StoredText.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateToString(EDataType eDataType, Object instanceValue) {
		return convertDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDateTime createLocalMoment(final String it) {
		return StoredText.moment(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDateTime createLocalMomentFromString(EDataType eDataType, String initialValue) {
		return createLocalMoment(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLocalMoment(final LocalDateTime it) {
		return StoredText.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLocalMomentToString(EDataType eDataType, Object instanceValue) {
		return convertLocalMoment((LocalDateTime)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String createIdFromString(EDataType eDataType, String initialValue) {
		return (String)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIdToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Units createUnitsObjectFromString(EDataType eDataType, String initialValue) {
		return createUnitsFromString(BasePackage.Literals.UNITS, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitsObjectToString(EDataType eDataType, Object instanceValue) {
		return convertUnitsToString(BasePackage.Literals.UNITS, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Condition createConditionObjectFromString(EDataType eDataType, String initialValue) {
		return createConditionFromString(BasePackage.Literals.CONDITION, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConditionObjectToString(EDataType eDataType, Object instanceValue) {
		return convertConditionToString(BasePackage.Literals.CONDITION, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Hold createHoldObjectFromString(EDataType eDataType, String initialValue) {
		return createHoldFromString(BasePackage.Literals.HOLD, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHoldObjectToString(EDataType eDataType, Object instanceValue) {
		return convertHoldToString(BasePackage.Literals.HOLD, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Basis createBasisObjectFromString(EDataType eDataType, String initialValue) {
		return createBasisFromString(BasePackage.Literals.BASIS, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBasisObjectToString(EDataType eDataType, Object instanceValue) {
		return convertBasisToString(BasePackage.Literals.BASIS, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BasePackage getBasePackage() {
		return (BasePackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static BasePackage getPackage() {
		return BasePackage.eINSTANCE;
	}

} //BaseFactoryImpl
