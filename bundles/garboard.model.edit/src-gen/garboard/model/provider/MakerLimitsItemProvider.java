/**
 */
package garboard.model.provider;


import garboard.model.GarboardPackage;
import garboard.model.MakerLimits;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.ResourceLocator;

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
 * This is the item provider adapter for a {@link garboard.model.MakerLimits} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class MakerLimitsItemProvider 
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
	public MakerLimitsItemProvider(AdapterFactory adapterFactory) {
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

			addDocumentPropertyDescriptor(object);
			addDocumentPagePropertyDescriptor(object);
			addMaximumBackPressurePropertyDescriptor(object);
			addMaximumLiftHeightPropertyDescriptor(object);
			addMinimumSiphonBreakHeightPropertyDescriptor(object);
			addMinimumSiphonClearanceHeeledPropertyDescriptor(object);
			addSiphonBreakNeededBelowPropertyDescriptor(object);
			addMinimumInjectionDropPropertyDescriptor(object);
			addMinimumExhaustFallPropertyDescriptor(object);
			addMinimumExhaustBorePropertyDescriptor(object);
			addMaximumExhaustLengthPropertyDescriptor(object);
			addMinimumMufflerVolumePropertyDescriptor(object);
			addMinimumRawWaterFlowPropertyDescriptor(object);
			addMaximumRawWaterSuctionHeadPropertyDescriptor(object);
			addMaximumRawWaterVacuumPropertyDescriptor(object);
			addMaximumRawWaterInletPressurePropertyDescriptor(object);
			addMinimumRawWaterHoseBorePropertyDescriptor(object);
			addMaximumFuelLiftPropertyDescriptor(object);
			addMaximumFuelVacuumPropertyDescriptor(object);
			addMinimumFuelLineBorePropertyDescriptor(object);
			addRequiredSeparatorFlowPropertyDescriptor(object);
			addFilterFinenessPropertyDescriptor(object);
			addMinimumBatteryCcAPropertyDescriptor(object);
			addMinimumBatteryCapacityPropertyDescriptor(object);
			addBatteryCrankingDefinitionPropertyDescriptor(object);
			addMaximumCrankingCircuitResistancePropertyDescriptor(object);
			addMinimumCrankingVoltagePropertyDescriptor(object);
			addFeedPressureLowPropertyDescriptor(object);
			addFeedPressureHighPropertyDescriptor(object);
			addRailPressureLowPropertyDescriptor(object);
			addRailPressureHighPropertyDescriptor(object);
			addMaximumCrankTimePropertyDescriptor(object);
			addMaximumTotalCrankTimePropertyDescriptor(object);
			addMaximumCompartmentTemperaturePropertyDescriptor(object);
			addMaximumCompartmentRisePropertyDescriptor(object);
			addMaximumDepressionPropertyDescriptor(object);
			addMaximumHeelPropertyDescriptor(object);
			addMaximumTrimPropertyDescriptor(object);
			addMaximumCoolantTemperaturePropertyDescriptor(object);
			addMinimumOilPressurePropertyDescriptor(object);
			addMaximumExhaustTemperaturePropertyDescriptor(object);
			addMinimumVentilationAreaPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Document feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDocumentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_document_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_document_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__DOCUMENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Document Page feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDocumentPagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_documentPage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_documentPage_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__DOCUMENT_PAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Back Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumBackPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumBackPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumBackPressure_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Lift Height feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumLiftHeightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumLiftHeight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumLiftHeight_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Siphon Break Height feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumSiphonBreakHeightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumSiphonBreakHeight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumSiphonBreakHeight_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Siphon Clearance Heeled feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumSiphonClearanceHeeledPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumSiphonClearanceHeeled_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumSiphonClearanceHeeled_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Siphon Break Needed Below feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSiphonBreakNeededBelowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_siphonBreakNeededBelow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_siphonBreakNeededBelow_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Injection Drop feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumInjectionDropPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumInjectionDrop_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumInjectionDrop_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_INJECTION_DROP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Exhaust Fall feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumExhaustFallPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumExhaustFall_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumExhaustFall_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_EXHAUST_FALL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Exhaust Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumExhaustBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumExhaustBore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumExhaustBore_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_EXHAUST_BORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Exhaust Length feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumExhaustLengthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumExhaustLength_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumExhaustLength_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Muffler Volume feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumMufflerVolumePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumMufflerVolume_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumMufflerVolume_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Raw Water Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumRawWaterFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumRawWaterFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumRawWaterFlow_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Raw Water Suction Head feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumRawWaterSuctionHeadPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumRawWaterSuctionHead_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumRawWaterSuctionHead_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Raw Water Vacuum feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumRawWaterVacuumPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumRawWaterVacuum_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumRawWaterVacuum_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Raw Water Inlet Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumRawWaterInletPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumRawWaterInletPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumRawWaterInletPressure_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Raw Water Hose Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumRawWaterHoseBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumRawWaterHoseBore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumRawWaterHoseBore_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Fuel Lift feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumFuelLiftPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumFuelLift_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumFuelLift_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_FUEL_LIFT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Fuel Vacuum feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumFuelVacuumPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumFuelVacuum_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumFuelVacuum_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Fuel Line Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumFuelLineBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumFuelLineBore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumFuelLineBore_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Required Separator Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRequiredSeparatorFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_requiredSeparatorFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_requiredSeparatorFlow_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Filter Fineness feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFilterFinenessPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_filterFineness_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_filterFineness_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__FILTER_FINENESS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Battery Cc A feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumBatteryCcAPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumBatteryCcA_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumBatteryCcA_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_BATTERY_CC_A,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Battery Capacity feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumBatteryCapacityPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumBatteryCapacity_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumBatteryCapacity_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Battery Cranking Definition feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBatteryCrankingDefinitionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_batteryCrankingDefinition_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_batteryCrankingDefinition_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Cranking Circuit Resistance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumCrankingCircuitResistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumCrankingCircuitResistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumCrankingCircuitResistance_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Cranking Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumCrankingVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumCrankingVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumCrankingVoltage_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Feed Pressure Low feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFeedPressureLowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_feedPressureLow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_feedPressureLow_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__FEED_PRESSURE_LOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Feed Pressure High feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFeedPressureHighPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_feedPressureHigh_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_feedPressureHigh_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__FEED_PRESSURE_HIGH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rail Pressure Low feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRailPressureLowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_railPressureLow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_railPressureLow_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__RAIL_PRESSURE_LOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rail Pressure High feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRailPressureHighPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_railPressureHigh_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_railPressureHigh_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__RAIL_PRESSURE_HIGH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Crank Time feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumCrankTimePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumCrankTime_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumCrankTime_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_CRANK_TIME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Total Crank Time feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumTotalCrankTimePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumTotalCrankTime_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumTotalCrankTime_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Compartment Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumCompartmentTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumCompartmentTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumCompartmentTemperature_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Compartment Rise feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumCompartmentRisePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumCompartmentRise_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumCompartmentRise_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Depression feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumDepressionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumDepression_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumDepression_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_DEPRESSION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Heel feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumHeelPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumHeel_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumHeel_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_HEEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Trim feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumTrimPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumTrim_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumTrim_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_TRIM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Coolant Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumCoolantTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumCoolantTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumCoolantTemperature_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Oil Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumOilPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumOilPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumOilPressure_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_OIL_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Maximum Exhaust Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMaximumExhaustTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_maximumExhaustTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_maximumExhaustTemperature_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Minimum Ventilation Area feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMinimumVentilationAreaPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_MakerLimits_minimumVentilationArea_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_MakerLimits_minimumVentilationArea_feature", "_UI_MakerLimits_type"),
				 GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_VENTILATION_AREA,
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
		String label = ((MakerLimits)object).getDocument();
		return label == null || label.length() == 0 ?
			getString("_UI_MakerLimits_type") :
			getString("_UI_MakerLimits_type") + " " + label;
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

		switch (notification.getFeatureID(MakerLimits.class)) {
			case GarboardPackage.MAKER_LIMITS__DOCUMENT:
			case GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED:
			case GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE:
			case GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW:
			case GarboardPackage.MAKER_LIMITS__FILTER_FINENESS:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY:
			case GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE:
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW:
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH:
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW:
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE:
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE:
			case GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA:
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
