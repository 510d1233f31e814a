/**
 */
package garboard.model.provider;


import garboard.model.GarboardPackage;
import garboard.model.Reading;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ViewerNotification;

/**
 * This is the item provider adapter for a {@link garboard.model.Reading} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class ReadingItemProvider extends ItemItemProvider {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ReadingItemProvider(AdapterFactory adapterFactory) {
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

			addAtPropertyDescriptor(object);
			addVoltage1PropertyDescriptor(object);
			addVoltage2PropertyDescriptor(object);
			addVoltage3PropertyDescriptor(object);
			addCurrent1PropertyDescriptor(object);
			addCurrent2PropertyDescriptor(object);
			addCurrent3PropertyDescriptor(object);
			addFrequencyPropertyDescriptor(object);
			addPowerPropertyDescriptor(object);
			addPowerFactorPropertyDescriptor(object);
			addOilPressurePropertyDescriptor(object);
			addCoolantTemperaturePropertyDescriptor(object);
			addRawWaterInPropertyDescriptor(object);
			addRawWaterOutPropertyDescriptor(object);
			addExhaustMixedPropertyDescriptor(object);
			addExhaustDryPropertyDescriptor(object);
			addBackPressurePropertyDescriptor(object);
			addCompartmentTemperaturePropertyDescriptor(object);
			addOutsideTemperaturePropertyDescriptor(object);
			addCompartmentDepressionPropertyDescriptor(object);
			addFuelVacuumPropertyDescriptor(object);
			addRawWaterVacuumPropertyDescriptor(object);
			addRawWaterFlowPropertyDescriptor(object);
			addBatteryVoltagePropertyDescriptor(object);
			addChargeCurrentPropertyDescriptor(object);
			addCarbonMonoxidePropertyDescriptor(object);
			addSmokePropertyDescriptor(object);
			addNotePropertyDescriptor(object);
			addInstrumentsPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the At feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAtPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_at_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_at_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__AT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Voltage1 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVoltage1PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_voltage1_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_voltage1_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__VOLTAGE1,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Voltage2 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVoltage2PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_voltage2_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_voltage2_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__VOLTAGE2,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Voltage3 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVoltage3PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_voltage3_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_voltage3_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__VOLTAGE3,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Current1 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCurrent1PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_current1_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_current1_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__CURRENT1,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Current2 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCurrent2PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_current2_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_current2_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__CURRENT2,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Current3 feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCurrent3PropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_current3_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_current3_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__CURRENT3,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Frequency feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFrequencyPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_frequency_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_frequency_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__FREQUENCY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_power_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_power_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Power Factor feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPowerFactorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_powerFactor_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_powerFactor_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__POWER_FACTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Oil Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOilPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_oilPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_oilPressure_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__OIL_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coolant Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoolantTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_coolantTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_coolantTemperature_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__COOLANT_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Raw Water In feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRawWaterInPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_rawWaterIn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_rawWaterIn_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__RAW_WATER_IN,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Raw Water Out feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRawWaterOutPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_rawWaterOut_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_rawWaterOut_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__RAW_WATER_OUT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exhaust Mixed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExhaustMixedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_exhaustMixed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_exhaustMixed_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__EXHAUST_MIXED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exhaust Dry feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExhaustDryPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_exhaustDry_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_exhaustDry_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__EXHAUST_DRY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Back Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBackPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_backPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_backPressure_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__BACK_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Compartment Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCompartmentTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_compartmentTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_compartmentTemperature_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__COMPARTMENT_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Outside Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOutsideTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_outsideTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_outsideTemperature_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__OUTSIDE_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Compartment Depression feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCompartmentDepressionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_compartmentDepression_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_compartmentDepression_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__COMPARTMENT_DEPRESSION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fuel Vacuum feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFuelVacuumPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_fuelVacuum_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_fuelVacuum_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__FUEL_VACUUM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Raw Water Vacuum feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRawWaterVacuumPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_rawWaterVacuum_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_rawWaterVacuum_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__RAW_WATER_VACUUM,
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
				 getString("_UI_Reading_rawWaterFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_rawWaterFlow_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__RAW_WATER_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Battery Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBatteryVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_batteryVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_batteryVoltage_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__BATTERY_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Charge Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChargeCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_chargeCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_chargeCurrent_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__CHARGE_CURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxidePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_carbonMonoxide_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_carbonMonoxide_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__CARBON_MONOXIDE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Smoke feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSmokePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_smoke_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_smoke_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__SMOKE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Note feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNotePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_note_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_note_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__NOTE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Instruments feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInstrumentsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Reading_instruments_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Reading_instruments_feature", "_UI_Reading_type"),
				 GarboardPackage.Literals.READING__INSTRUMENTS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
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
		String label = ((Reading)object).getId();
		return label == null || label.length() == 0 ?
			getString("_UI_Reading_type") :
			getString("_UI_Reading_type") + " " + label;
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

		switch (notification.getFeatureID(Reading.class)) {
			case GarboardPackage.READING__AT:
			case GarboardPackage.READING__VOLTAGE1:
			case GarboardPackage.READING__VOLTAGE2:
			case GarboardPackage.READING__VOLTAGE3:
			case GarboardPackage.READING__CURRENT1:
			case GarboardPackage.READING__CURRENT2:
			case GarboardPackage.READING__CURRENT3:
			case GarboardPackage.READING__FREQUENCY:
			case GarboardPackage.READING__POWER:
			case GarboardPackage.READING__POWER_FACTOR:
			case GarboardPackage.READING__OIL_PRESSURE:
			case GarboardPackage.READING__COOLANT_TEMPERATURE:
			case GarboardPackage.READING__RAW_WATER_IN:
			case GarboardPackage.READING__RAW_WATER_OUT:
			case GarboardPackage.READING__EXHAUST_MIXED:
			case GarboardPackage.READING__EXHAUST_DRY:
			case GarboardPackage.READING__BACK_PRESSURE:
			case GarboardPackage.READING__COMPARTMENT_TEMPERATURE:
			case GarboardPackage.READING__OUTSIDE_TEMPERATURE:
			case GarboardPackage.READING__COMPARTMENT_DEPRESSION:
			case GarboardPackage.READING__FUEL_VACUUM:
			case GarboardPackage.READING__RAW_WATER_VACUUM:
			case GarboardPackage.READING__RAW_WATER_FLOW:
			case GarboardPackage.READING__BATTERY_VOLTAGE:
			case GarboardPackage.READING__CHARGE_CURRENT:
			case GarboardPackage.READING__CARBON_MONOXIDE:
			case GarboardPackage.READING__SMOKE:
			case GarboardPackage.READING__NOTE:
			case GarboardPackage.READING__INSTRUMENTS:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
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
	}

}
