/**
 */
package garboard.model.provider;


import garboard.model.BatteryChemistry;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.StartingBattery;

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
 * This is the item provider adapter for a {@link garboard.model.StartingBattery} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class StartingBatteryItemProvider 
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
	public StartingBatteryItemProvider(AdapterFactory adapterFactory) {
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

			addChemistryPropertyDescriptor(object);
			addBlockVoltagePropertyDescriptor(object);
			addBlocksInSeriesPropertyDescriptor(object);
			addStringsInParallelPropertyDescriptor(object);
			addBlockCapacityPropertyDescriptor(object);
			addBlockCrankingRatingPropertyDescriptor(object);
			addCrankingRatingDefinitionPropertyDescriptor(object);
			addInstalledOnPropertyDescriptor(object);
			addBlockMassPropertyDescriptor(object);
			addBatteryTemperaturePropertyDescriptor(object);
			addRestTimePropertyDescriptor(object);
			addRestedVoltagePropertyDescriptor(object);
			addColdestStartPropertyDescriptor(object);
			addDedicatedToGeneratorPropertyDescriptor(object);
			addIsolatingSwitchPropertyDescriptor(object);
			addIsolatingSwitchReachablePropertyDescriptor(object);
			addEmergencyCrossConnectPropertyDescriptor(object);
			addSecuredPropertyDescriptor(object);
			addMovementUnderTestPropertyDescriptor(object);
			addTrayOrBoxPropertyDescriptor(object);
			addPositiveTerminalCoveredPropertyDescriptor(object);
			addTerminalsPropertyDescriptor(object);
			addVentedOverboardPropertyDescriptor(object);
			addVentilationAreaEachWayPropertyDescriptor(object);
			addDistanceToStarterPropertyDescriptor(object);
			addFuelPartsWithinReachPropertyDescriptor(object);
			addDielectricShieldPropertyDescriptor(object);
			addAboveOrBelowFuelFittingsPropertyDescriptor(object);
			addHighAboveBilgePropertyDescriptor(object);
			addChargerRatedCurrentPropertyDescriptor(object);
			addChargerVoltagePropertyDescriptor(object);
			addChargingVoltageRunningPropertyDescriptor(object);
			addChargerAmmeterPropertyDescriptor(object);
			addSameTypeAndAgePropertyDescriptor(object);
			addCrankingVoltageAtPostsPropertyDescriptor(object);
			addCrankingVoltageAtStarterPropertyDescriptor(object);
			addBlocksMixedPropertyDescriptor(object);
			addEmergencySourcePropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Chemistry feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChemistryPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_chemistry_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_chemistry_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CHEMISTRY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Block Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlockVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blockVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blockVoltage_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCK_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blocks In Series feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlocksInSeriesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blocksInSeries_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blocksInSeries_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_IN_SERIES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Strings In Parallel feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addStringsInParallelPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_stringsInParallel_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_stringsInParallel_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Block Capacity feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlockCapacityPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blockCapacity_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blockCapacity_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CAPACITY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Block Cranking Rating feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlockCrankingRatingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blockCrankingRating_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blockCrankingRating_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CRANKING_RATING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Rating Definition feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingRatingDefinitionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_crankingRatingDefinition_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_crankingRatingDefinition_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CRANKING_RATING_DEFINITION,
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
				 getString("_UI_StartingBattery_installedOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_installedOn_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__INSTALLED_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Block Mass feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlockMassPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blockMass_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blockMass_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCK_MASS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Battery Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBatteryTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_batteryTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_batteryTemperature_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rest Time feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRestTimePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_restTime_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_restTime_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__REST_TIME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rested Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRestedVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_restedVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_restedVoltage_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coldest Start feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addColdestStartPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_coldestStart_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_coldestStart_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__COLDEST_START,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Dedicated To Generator feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDedicatedToGeneratorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_dedicatedToGenerator_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_dedicatedToGenerator_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__DEDICATED_TO_GENERATOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Isolating Switch feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addIsolatingSwitchPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_isolatingSwitch_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_isolatingSwitch_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Isolating Switch Reachable feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addIsolatingSwitchReachablePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_isolatingSwitchReachable_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_isolatingSwitchReachable_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Emergency Cross Connect feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEmergencyCrossConnectPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_emergencyCrossConnect_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_emergencyCrossConnect_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Secured feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSecuredPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_secured_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_secured_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__SECURED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Movement Under Test feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMovementUnderTestPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_movementUnderTest_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_movementUnderTest_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__MOVEMENT_UNDER_TEST,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Tray Or Box feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTrayOrBoxPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_trayOrBox_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_trayOrBox_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__TRAY_OR_BOX,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Positive Terminal Covered feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPositiveTerminalCoveredPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_positiveTerminalCovered_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_positiveTerminalCovered_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Terminals feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTerminalsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_terminals_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_terminals_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__TERMINALS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vented Overboard feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVentedOverboardPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_ventedOverboard_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_ventedOverboard_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__VENTED_OVERBOARD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ventilation Area Each Way feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVentilationAreaEachWayPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_ventilationAreaEachWay_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_ventilationAreaEachWay_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Distance To Starter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDistanceToStarterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_distanceToStarter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_distanceToStarter_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__DISTANCE_TO_STARTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fuel Parts Within Reach feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFuelPartsWithinReachPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_fuelPartsWithinReach_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_fuelPartsWithinReach_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Dielectric Shield feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDielectricShieldPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_dielectricShield_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_dielectricShield_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__DIELECTRIC_SHIELD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Above Or Below Fuel Fittings feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAboveOrBelowFuelFittingsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_aboveOrBelowFuelFittings_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_aboveOrBelowFuelFittings_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the High Above Bilge feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHighAboveBilgePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_highAboveBilge_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_highAboveBilge_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__HIGH_ABOVE_BILGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Charger Rated Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChargerRatedCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_chargerRatedCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_chargerRatedCurrent_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CHARGER_RATED_CURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Charger Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChargerVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_chargerVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_chargerVoltage_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CHARGER_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Charging Voltage Running feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChargingVoltageRunningPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_chargingVoltageRunning_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_chargingVoltageRunning_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Charger Ammeter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChargerAmmeterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_chargerAmmeter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_chargerAmmeter_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CHARGER_AMMETER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Same Type And Age feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSameTypeAndAgePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_sameTypeAndAge_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_sameTypeAndAge_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__SAME_TYPE_AND_AGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Voltage At Posts feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingVoltageAtPostsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_crankingVoltageAtPosts_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_crankingVoltageAtPosts_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Voltage At Starter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingVoltageAtStarterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_crankingVoltageAtStarter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_crankingVoltageAtStarter_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blocks Mixed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlocksMixedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_blocksMixed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_blocksMixed_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_MIXED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Emergency Source feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEmergencySourcePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_StartingBattery_emergencySource_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_StartingBattery_emergencySource_feature", "_UI_StartingBattery_type"),
				 GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_SOURCE,
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
			childrenFeatures.add(GarboardPackage.Literals.STARTING_BATTERY__BLOCKS);
			childrenFeatures.add(GarboardPackage.Literals.STARTING_BATTERY__CABLES);
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
		BatteryChemistry labelValue = ((StartingBattery)object).getChemistry();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_StartingBattery_type") :
			getString("_UI_StartingBattery_type") + " " + label;
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

		switch (notification.getFeatureID(StartingBattery.class)) {
			case GarboardPackage.STARTING_BATTERY__CHEMISTRY:
			case GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE:
			case GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES:
			case GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL:
			case GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY:
			case GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING:
			case GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION:
			case GarboardPackage.STARTING_BATTERY__INSTALLED_ON:
			case GarboardPackage.STARTING_BATTERY__BLOCK_MASS:
			case GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE:
			case GarboardPackage.STARTING_BATTERY__REST_TIME:
			case GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE:
			case GarboardPackage.STARTING_BATTERY__COLDEST_START:
			case GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR:
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH:
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE:
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT:
			case GarboardPackage.STARTING_BATTERY__SECURED:
			case GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST:
			case GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX:
			case GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED:
			case GarboardPackage.STARTING_BATTERY__TERMINALS:
			case GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD:
			case GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY:
			case GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER:
			case GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH:
			case GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD:
			case GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS:
			case GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE:
			case GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT:
			case GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE:
			case GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING:
			case GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER:
			case GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE:
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS:
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER:
			case GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED:
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
			case GarboardPackage.STARTING_BATTERY__CABLES:
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
				(GarboardPackage.Literals.STARTING_BATTERY__BLOCKS,
				 GarboardFactory.eINSTANCE.createBatteryBlock()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.STARTING_BATTERY__CABLES,
				 GarboardFactory.eINSTANCE.createCableRun()));
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
