/**
 */
package garboard.model.provider;


import garboard.model.FuelSupply;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;

import garboard.quantity.Length;

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
 * This is the item provider adapter for a {@link garboard.model.FuelSupply} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class FuelSupplyItemProvider 
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
	public FuelSupplyItemProvider(AdapterFactory adapterFactory) {
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

			addEngineInletHeightPropertyDescriptor(object);
			addHighestLinePointPropertyDescriptor(object);
			addLowestLinePointPropertyDescriptor(object);
			addPumpFlowPropertyDescriptor(object);
			addElectricPumpPropertyDescriptor(object);
			addPumpStopsWithEnginePropertyDescriptor(object);
			addPumpWithinReachOfEnginePropertyDescriptor(object);
			addAntiSiphonPropertyDescriptor(object);
			addAntiSiphonCrackingPressurePropertyDescriptor(object);
			addTankShutOffPropertyDescriptor(object);
			addTankShutOffReachableFromOutsidePropertyDescriptor(object);
			addEngineShutOffPropertyDescriptor(object);
			addLineLengthTankToEnginePropertyDescriptor(object);
			addOwnPickUpPropertyDescriptor(object);
			addPickUpClearancePropertyDescriptor(object);
			addPickUpScreenPropertyDescriptor(object);
			addReturnToTankInUsePropertyDescriptor(object);
			addReturnCanDeadHeadPropertyDescriptor(object);
			addFlexibleLastLinkPropertyDescriptor(object);
			addRigidLineSupportDistancePropertyDescriptor(object);
			addFlexibleHoseSpillVolumePropertyDescriptor(object);
			addLeakTestPressurePropertyDescriptor(object);
			addLeakTestHeldPropertyDescriptor(object);
			addGroundResistancePropertyDescriptor(object);
			addFillHoseClampsPropertyDescriptor(object);
			addFillClampBandWidthPropertyDescriptor(object);
			addVentFlameArresterPropertyDescriptor(object);
			addCleanVacuumAtPumpPropertyDescriptor(object);
			addVacuumAtPumpNowPropertyDescriptor(object);
			addFeedPressurePropertyDescriptor(object);
			addRailPressurePropertyDescriptor(object);
			addPlannedRunTimePropertyDescriptor(object);
			addPlannedLoadPowerPropertyDescriptor(object);
			addBackfireFlameArresterPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Engine Inlet Height feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEngineInletHeightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_engineInletHeight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_engineInletHeight_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__ENGINE_INLET_HEIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Highest Line Point feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHighestLinePointPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_highestLinePoint_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_highestLinePoint_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__HIGHEST_LINE_POINT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Lowest Line Point feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLowestLinePointPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_lowestLinePoint_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_lowestLinePoint_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__LOWEST_LINE_POINT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Pump Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPumpFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_pumpFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_pumpFlow_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PUMP_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Electric Pump feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addElectricPumpPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_electricPump_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_electricPump_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__ELECTRIC_PUMP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Pump Stops With Engine feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPumpStopsWithEnginePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_pumpStopsWithEngine_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_pumpStopsWithEngine_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Pump Within Reach Of Engine feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPumpWithinReachOfEnginePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_pumpWithinReachOfEngine_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_pumpWithinReachOfEngine_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Anti Siphon feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAntiSiphonPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_antiSiphon_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_antiSiphon_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Anti Siphon Cracking Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAntiSiphonCrackingPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_antiSiphonCrackingPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_antiSiphonCrackingPressure_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Tank Shut Off feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTankShutOffPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_tankShutOff_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_tankShutOff_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__TANK_SHUT_OFF,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Tank Shut Off Reachable From Outside feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTankShutOffReachableFromOutsidePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_tankShutOffReachableFromOutside_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_tankShutOffReachableFromOutside_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Engine Shut Off feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEngineShutOffPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_engineShutOff_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_engineShutOff_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__ENGINE_SHUT_OFF,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Line Length Tank To Engine feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLineLengthTankToEnginePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_lineLengthTankToEngine_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_lineLengthTankToEngine_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Own Pick Up feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOwnPickUpPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_ownPickUp_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_ownPickUp_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__OWN_PICK_UP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Pick Up Clearance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPickUpClearancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_pickUpClearance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_pickUpClearance_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PICK_UP_CLEARANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Pick Up Screen feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPickUpScreenPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_pickUpScreen_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_pickUpScreen_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PICK_UP_SCREEN,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Return To Tank In Use feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addReturnToTankInUsePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_returnToTankInUse_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_returnToTankInUse_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Return Can Dead Head feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addReturnCanDeadHeadPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_returnCanDeadHead_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_returnCanDeadHead_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Flexible Last Link feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFlexibleLastLinkPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_flexibleLastLink_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_flexibleLastLink_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__FLEXIBLE_LAST_LINK,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rigid Line Support Distance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRigidLineSupportDistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_rigidLineSupportDistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_rigidLineSupportDistance_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Flexible Hose Spill Volume feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFlexibleHoseSpillVolumePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_flexibleHoseSpillVolume_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_flexibleHoseSpillVolume_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leak Test Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLeakTestPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_leakTestPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_leakTestPressure_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__LEAK_TEST_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leak Test Held feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLeakTestHeldPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_leakTestHeld_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_leakTestHeld_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__LEAK_TEST_HELD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ground Resistance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGroundResistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_groundResistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_groundResistance_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__GROUND_RESISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fill Hose Clamps feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFillHoseClampsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_fillHoseClamps_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_fillHoseClamps_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__FILL_HOSE_CLAMPS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fill Clamp Band Width feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFillClampBandWidthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_fillClampBandWidth_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_fillClampBandWidth_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vent Flame Arrester feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVentFlameArresterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_ventFlameArrester_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_ventFlameArrester_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__VENT_FLAME_ARRESTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clean Vacuum At Pump feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCleanVacuumAtPumpPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_cleanVacuumAtPump_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_cleanVacuumAtPump_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vacuum At Pump Now feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVacuumAtPumpNowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_vacuumAtPumpNow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_vacuumAtPumpNow_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Feed Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFeedPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_feedPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_feedPressure_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__FEED_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rail Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRailPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_railPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_railPressure_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__RAIL_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Planned Run Time feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPlannedRunTimePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_plannedRunTime_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_plannedRunTime_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PLANNED_RUN_TIME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Planned Load Power feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPlannedLoadPowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_plannedLoadPower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_plannedLoadPower_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__PLANNED_LOAD_POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Backfire Flame Arrester feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBackfireFlameArresterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSupply_backfireFlameArrester_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSupply_backfireFlameArrester_feature", "_UI_FuelSupply_type"),
				 GarboardPackage.Literals.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER,
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
			childrenFeatures.add(GarboardPackage.Literals.FUEL_SUPPLY__TANK);
			childrenFeatures.add(GarboardPackage.Literals.FUEL_SUPPLY__LINES);
			childrenFeatures.add(GarboardPackage.Literals.FUEL_SUPPLY__SEPARATOR);
			childrenFeatures.add(GarboardPackage.Literals.FUEL_SUPPLY__PUMP_POSITION);
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
		Length labelValue = ((FuelSupply)object).getEngineInletHeight();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_FuelSupply_type") :
			getString("_UI_FuelSupply_type") + " " + label;
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

		switch (notification.getFeatureID(FuelSupply.class)) {
			case GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT:
			case GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT:
			case GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT:
			case GarboardPackage.FUEL_SUPPLY__PUMP_FLOW:
			case GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP:
			case GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE:
			case GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE:
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON:
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE:
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF:
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE:
			case GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF:
			case GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE:
			case GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP:
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE:
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN:
			case GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE:
			case GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD:
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK:
			case GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE:
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME:
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE:
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD:
			case GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE:
			case GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS:
			case GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH:
			case GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER:
			case GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP:
			case GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW:
			case GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE:
			case GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE:
			case GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME:
			case GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER:
			case GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.FUEL_SUPPLY__TANK:
			case GarboardPackage.FUEL_SUPPLY__LINES:
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
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
				(GarboardPackage.Literals.FUEL_SUPPLY__TANK,
				 GarboardFactory.eINSTANCE.createFuelTank()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.FUEL_SUPPLY__LINES,
				 GarboardFactory.eINSTANCE.createFuelLineRun()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.FUEL_SUPPLY__SEPARATOR,
				 GarboardFactory.eINSTANCE.createFuelSeparator()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.FUEL_SUPPLY__PUMP_POSITION,
				 GarboardFactory.eINSTANCE.createPoint()));
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
