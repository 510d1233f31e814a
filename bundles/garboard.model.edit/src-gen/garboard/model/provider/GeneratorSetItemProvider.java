/**
 */
package garboard.model.provider;


import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.GeneratorSet;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.ResourceLocator;

import org.eclipse.emf.ecore.EStructuralFeature;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IEditingDomainItemProvider;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.emf.edit.provider.IStructuredItemContentProvider;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemProviderAdapter;
import org.eclipse.emf.edit.provider.ViewerNotification;

/**
 * This is the item provider adapter for a {@link garboard.model.GeneratorSet} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class GeneratorSetItemProvider 
	extends ItemProviderAdapter
	implements
		IEditingDomainItemProvider,
		IStructuredItemContentProvider,
		ITreeItemContentProvider,
		IItemLabelProvider,
		IItemPropertySource {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GeneratorSetItemProvider(AdapterFactory adapterFactory) {
		super(adapterFactory);
	}

	/**
	 * This returns the property descriptors for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<IItemPropertyDescriptor> getPropertyDescriptors(Object object) {
		if (itemPropertyDescriptors == null) {
			super.getPropertyDescriptors(object);

			addMakerPropertyDescriptor(object);
			addTypePropertyDescriptor(object);
			addSerialNumberPropertyDescriptor(object);
			addEngineSerialNumberPropertyDescriptor(object);
			addAlternatorSerialNumberPropertyDescriptor(object);
			addSoldOnPropertyDescriptor(object);
			addInstalledOnPropertyDescriptor(object);
			addHourMeterPropertyDescriptor(object);
			addFuelPropertyDescriptor(object);
			addFuelSystemPropertyDescriptor(object);
			addAspirationPropertyDescriptor(object);
			addCoolingPropertyDescriptor(object);
			addDutyRatingPropertyDescriptor(object);
			addRatedPowerPropertyDescriptor(object);
			addRatedApparentPowerPropertyDescriptor(object);
			addRatedPowerFactorPropertyDescriptor(object);
			addRatedVoltagePropertyDescriptor(object);
			addRatedFrequencyPropertyDescriptor(object);
			addPhasesPropertyDescriptor(object);
			addRatedSpeedPropertyDescriptor(object);
			addPolesPropertyDescriptor(object);
			addCrankingSpeedPropertyDescriptor(object);
			addShaftPowerPropertyDescriptor(object);
			addAlternatorEfficiencyPropertyDescriptor(object);
			addFuelConsumptionFullLoadPropertyDescriptor(object);
			addSpecificFuelConsumptionPropertyDescriptor(object);
			addAirFuelRatioPropertyDescriptor(object);
			addExhaustGasTemperaturePropertyDescriptor(object);
			addExhaustMassFlowPropertyDescriptor(object);
			addHeatToCoolantPropertyDescriptor(object);
			addHeatToCompartmentPropertyDescriptor(object);
			addCombustionAirFlowPropertyDescriptor(object);
			addRawWaterFlowPropertyDescriptor(object);
			addSystemVoltagePropertyDescriptor(object);
			addCrankingCurrentPropertyDescriptor(object);
			addStarterVoltagePropertyDescriptor(object);
			addInSoundShieldPropertyDescriptor(object);
			addOverloadDeclaredPropertyDescriptor(object);
			addEmissionLabelMarinePropertyDescriptor(object);
			addPerformanceClassPropertyDescriptor(object);
			addDesignAmbientPropertyDescriptor(object);
			addSubtransientReactancePropertyDescriptor(object);
			addTransientReactancePropertyDescriptor(object);
			addSustainedShortCircuitMultiplePropertyDescriptor(object);
			addAnnualHoursPropertyDescriptor(object);
			addPlateShowsDeratedPowerPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Maker feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMakerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_maker_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_maker_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__MAKER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Type feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTypePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_type_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_type_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__TYPE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Serial Number feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSerialNumberPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_serialNumber_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_serialNumber_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SERIAL_NUMBER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Engine Serial Number feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEngineSerialNumberPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_engineSerialNumber_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_engineSerialNumber_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__ENGINE_SERIAL_NUMBER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Alternator Serial Number feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAlternatorSerialNumberPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_alternatorSerialNumber_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_alternatorSerialNumber_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sold On feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSoldOnPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_soldOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_soldOn_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SOLD_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Installed On feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInstalledOnPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_installedOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_installedOn_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__INSTALLED_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Hour Meter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHourMeterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_hourMeter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_hourMeter_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__HOUR_METER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fuel feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFuelPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_fuel_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_fuel_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__FUEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fuel System feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFuelSystemPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_fuelSystem_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_fuelSystem_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__FUEL_SYSTEM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Aspiration feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAspirationPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_aspiration_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_aspiration_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__ASPIRATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cooling feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoolingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_cooling_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_cooling_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__COOLING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Duty Rating feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDutyRatingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_dutyRating_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_dutyRating_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__DUTY_RATING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedPower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedPower_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Apparent Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedApparentPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedApparentPower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedApparentPower_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Power Factor feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedPowerFactorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedPowerFactor_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedPowerFactor_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedVoltage_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Frequency feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedFrequencyPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedFrequency_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedFrequency_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_FREQUENCY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Phases feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPhasesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_phases_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_phases_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__PHASES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Speed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedSpeedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_ratedSpeed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_ratedSpeed_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RATED_SPEED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Poles feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPolesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_poles_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_poles_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__POLES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Speed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingSpeedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_crankingSpeed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_crankingSpeed_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__CRANKING_SPEED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Shaft Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addShaftPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_shaftPower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_shaftPower_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Alternator Efficiency feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAlternatorEfficiencyPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_alternatorEfficiency_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_alternatorEfficiency_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__ALTERNATOR_EFFICIENCY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fuel Consumption Full Load feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFuelConsumptionFullLoadPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_fuelConsumptionFullLoad_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_fuelConsumptionFullLoad_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Specific Fuel Consumption feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSpecificFuelConsumptionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_specificFuelConsumption_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_specificFuelConsumption_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Air Fuel Ratio feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAirFuelRatioPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_airFuelRatio_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_airFuelRatio_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__AIR_FUEL_RATIO,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exhaust Gas Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExhaustGasTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_exhaustGasTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_exhaustGasTemperature_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exhaust Mass Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExhaustMassFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_exhaustMassFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_exhaustMassFlow_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__EXHAUST_MASS_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Heat To Coolant feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHeatToCoolantPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_heatToCoolant_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_heatToCoolant_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__HEAT_TO_COOLANT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Heat To Compartment feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHeatToCompartmentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_heatToCompartment_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_heatToCompartment_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__HEAT_TO_COMPARTMENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Combustion Air Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCombustionAirFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_combustionAirFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_combustionAirFlow_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__COMBUSTION_AIR_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Raw Water Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRawWaterFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_rawWaterFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_rawWaterFlow_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__RAW_WATER_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the System Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSystemVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_systemVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_systemVoltage_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SYSTEM_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_crankingCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_crankingCurrent_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Starter Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addStarterVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_starterVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_starterVoltage_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__STARTER_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the In Sound Shield feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInSoundShieldPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_inSoundShield_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_inSoundShield_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__IN_SOUND_SHIELD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Overload Declared feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOverloadDeclaredPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_overloadDeclared_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_overloadDeclared_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__OVERLOAD_DECLARED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Emission Label Marine feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEmissionLabelMarinePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_emissionLabelMarine_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_emissionLabelMarine_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__EMISSION_LABEL_MARINE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Performance Class feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPerformanceClassPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_performanceClass_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_performanceClass_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__PERFORMANCE_CLASS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Ambient feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignAmbientPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_designAmbient_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_designAmbient_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__DESIGN_AMBIENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Subtransient Reactance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSubtransientReactancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_subtransientReactance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_subtransientReactance_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SUBTRANSIENT_REACTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Transient Reactance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTransientReactancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_transientReactance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_transientReactance_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__TRANSIENT_REACTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sustained Short Circuit Multiple feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSustainedShortCircuitMultiplePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_sustainedShortCircuitMultiple_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_sustainedShortCircuitMultiple_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Annual Hours feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAnnualHoursPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_annualHours_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_annualHours_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__ANNUAL_HOURS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Plate Shows Derated Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPlateShowsDeratedPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_GeneratorSet_plateShowsDeratedPower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_GeneratorSet_plateShowsDeratedPower_feature", "_UI_GeneratorSet_type"),
				 GarboardPackage.Literals.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This specifies how to implement {@link #getChildren} and is used to deduce an appropriate feature for an
	 * {@link org.eclipse.emf.edit.command.AddCommand}, {@link org.eclipse.emf.edit.command.RemoveCommand} or
	 * {@link org.eclipse.emf.edit.command.MoveCommand} in {@link #createCommand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Collection<? extends EStructuralFeature> getChildrenFeatures(Object object) {
		if (childrenFeatures == null) {
			super.getChildrenFeatures(object);
			childrenFeatures.add(GarboardPackage.Literals.GENERATOR_SET__MAKER_LIMITS);
		}
		return childrenFeatures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EStructuralFeature getChildFeature(Object object, Object child) {
		// Check the type of the specified child object and return the proper feature to use for
		// adding (see {@link AddCommand}) it as a child.

		return super.getChildFeature(object, child);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected boolean shouldComposeCreationImage() {
		return true;
	}

	/**
	 * This returns the label text for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText(Object object) {
		String label = ((GeneratorSet)object).getMaker();
		return label == null || label.length() == 0 ?
			getString("_UI_GeneratorSet_type") :
			getString("_UI_GeneratorSet_type") + " " + label;
	}


	/**
	 * This handles model notifications by calling {@link #updateChildren} to update any cached
	 * children and by creating a viewer notification, which it passes to {@link #fireNotifyChanged}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void notifyChanged(Notification notification) {
		updateChildren(notification);

		switch (notification.getFeatureID(GeneratorSet.class)) {
			case GarboardPackage.GENERATOR_SET__MAKER:
			case GarboardPackage.GENERATOR_SET__TYPE:
			case GarboardPackage.GENERATOR_SET__SERIAL_NUMBER:
			case GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER:
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER:
			case GarboardPackage.GENERATOR_SET__SOLD_ON:
			case GarboardPackage.GENERATOR_SET__INSTALLED_ON:
			case GarboardPackage.GENERATOR_SET__HOUR_METER:
			case GarboardPackage.GENERATOR_SET__FUEL:
			case GarboardPackage.GENERATOR_SET__FUEL_SYSTEM:
			case GarboardPackage.GENERATOR_SET__ASPIRATION:
			case GarboardPackage.GENERATOR_SET__COOLING:
			case GarboardPackage.GENERATOR_SET__DUTY_RATING:
			case GarboardPackage.GENERATOR_SET__RATED_POWER:
			case GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER:
			case GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR:
			case GarboardPackage.GENERATOR_SET__RATED_VOLTAGE:
			case GarboardPackage.GENERATOR_SET__RATED_FREQUENCY:
			case GarboardPackage.GENERATOR_SET__PHASES:
			case GarboardPackage.GENERATOR_SET__RATED_SPEED:
			case GarboardPackage.GENERATOR_SET__POLES:
			case GarboardPackage.GENERATOR_SET__CRANKING_SPEED:
			case GarboardPackage.GENERATOR_SET__SHAFT_POWER:
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY:
			case GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD:
			case GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION:
			case GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO:
			case GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE:
			case GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW:
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT:
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT:
			case GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW:
			case GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW:
			case GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE:
			case GarboardPackage.GENERATOR_SET__CRANKING_CURRENT:
			case GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE:
			case GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD:
			case GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED:
			case GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE:
			case GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS:
			case GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT:
			case GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE:
			case GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE:
			case GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE:
			case GarboardPackage.GENERATOR_SET__ANNUAL_HOURS:
			case GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), true, false));
				return;
		}
		super.notifyChanged(notification);
	}

	/**
	 * This adds {@link org.eclipse.emf.edit.command.CommandParameter}s describing the children
	 * that can be created under this object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected void collectNewChildDescriptors(Collection<Object> newChildDescriptors, Object object) {
		super.collectNewChildDescriptors(newChildDescriptors, object);

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.GENERATOR_SET__MAKER_LIMITS,
				 GarboardFactory.eINSTANCE.createMakerLimits()));
	}

	/**
	 * Return the resource locator for this item provider's resources.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResourceLocator getResourceLocator() {
		return GarboardEditPlugin.INSTANCE;
	}

}
