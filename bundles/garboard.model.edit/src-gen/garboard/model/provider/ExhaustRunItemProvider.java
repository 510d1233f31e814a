/**
 */
package garboard.model.provider;


import garboard.model.ExhaustRun;
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
 * This is the item provider adapter for a {@link garboard.model.ExhaustRun} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class ExhaustRunItemProvider 
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
	public ExhaustRunItemProvider(AdapterFactory adapterFactory) {
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

			addTurbineOutletPortBorePropertyDescriptor(object);
			addOwnSystemPropertyDescriptor(object);
			addGasTightPropertyDescriptor(object);
			addDryPartsLaggedPropertyDescriptor(object);
			addDryPartSurfaceTemperaturePropertyDescriptor(object);
			addWeightOnManifoldPropertyDescriptor(object);
			addTemperatureAlarmPropertyDescriptor(object);
			addTemperatureAlarmSettingPropertyDescriptor(object);
			addTestTapFittedPropertyDescriptor(object);
			addTestTapDistancePropertyDescriptor(object);
			addMeasuredBackPressurePropertyDescriptor(object);
			addMeasuredBackPressureLoadPropertyDescriptor(object);
			addBaselineBackPressurePropertyDescriptor(object);
			addSilencerLossPropertyDescriptor(object);
			addWaterFullLengthPropertyDescriptor(object);
			addBulkheadsSealedPropertyDescriptor(object);
			addJointsAccessiblePropertyDescriptor(object);
			addClearOfCombustiblesPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Turbine Outlet Port Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTurbineOutletPortBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_turbineOutletPortBore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_turbineOutletPortBore_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Own System feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOwnSystemPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_ownSystem_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_ownSystem_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__OWN_SYSTEM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Gas Tight feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGasTightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_gasTight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_gasTight_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__GAS_TIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Dry Parts Lagged feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDryPartsLaggedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_dryPartsLagged_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_dryPartsLagged_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__DRY_PARTS_LAGGED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Dry Part Surface Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDryPartSurfaceTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_dryPartSurfaceTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_dryPartSurfaceTemperature_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Weight On Manifold feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWeightOnManifoldPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_weightOnManifold_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_weightOnManifold_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__WEIGHT_ON_MANIFOLD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Temperature Alarm feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTemperatureAlarmPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_temperatureAlarm_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_temperatureAlarm_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Temperature Alarm Setting feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTemperatureAlarmSettingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_temperatureAlarmSetting_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_temperatureAlarmSetting_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Test Tap Fitted feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTestTapFittedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_testTapFitted_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_testTapFitted_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_FITTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Test Tap Distance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTestTapDistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_testTapDistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_testTapDistance_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_DISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Back Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredBackPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_measuredBackPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_measuredBackPressure_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Back Pressure Load feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredBackPressureLoadPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_measuredBackPressureLoad_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_measuredBackPressureLoad_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Baseline Back Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBaselineBackPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_baselineBackPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_baselineBackPressure_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__BASELINE_BACK_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Silencer Loss feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSilencerLossPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_silencerLoss_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_silencerLoss_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__SILENCER_LOSS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Water Full Length feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWaterFullLengthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_waterFullLength_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_waterFullLength_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__WATER_FULL_LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bulkheads Sealed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBulkheadsSealedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_bulkheadsSealed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_bulkheadsSealed_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__BULKHEADS_SEALED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Joints Accessible feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addJointsAccessiblePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_jointsAccessible_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_jointsAccessible_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__JOINTS_ACCESSIBLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clear Of Combustibles feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClearOfCombustiblesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustRun_clearOfCombustibles_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustRun_clearOfCombustibles_feature", "_UI_ExhaustRun_type"),
				 GarboardPackage.Literals.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES,
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
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__PATH);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__SECTIONS);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__MUFFLER);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__RISER);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__CREST);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__OUTLET);
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_RUN__SEPARATOR_DRAIN);
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
		Length labelValue = ((ExhaustRun)object).getTurbineOutletPortBore();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_ExhaustRun_type") :
			getString("_UI_ExhaustRun_type") + " " + label;
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

		switch (notification.getFeatureID(ExhaustRun.class)) {
			case GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE:
			case GarboardPackage.EXHAUST_RUN__OWN_SYSTEM:
			case GarboardPackage.EXHAUST_RUN__GAS_TIGHT:
			case GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED:
			case GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE:
			case GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD:
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM:
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING:
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED:
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE:
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE:
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD:
			case GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE:
			case GarboardPackage.EXHAUST_RUN__SILENCER_LOSS:
			case GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH:
			case GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED:
			case GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE:
			case GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.EXHAUST_RUN__PATH:
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
			case GarboardPackage.EXHAUST_RUN__RISER:
			case GarboardPackage.EXHAUST_RUN__CREST:
			case GarboardPackage.EXHAUST_RUN__OUTLET:
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
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
				(GarboardPackage.Literals.EXHAUST_RUN__PATH,
				 GarboardFactory.eINSTANCE.createExhaustPoint()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__SECTIONS,
				 GarboardFactory.eINSTANCE.createExhaustSectionRun()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__MUFFLER,
				 GarboardFactory.eINSTANCE.createMuffler()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__RISER,
				 GarboardFactory.eINSTANCE.createRiser()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__CREST,
				 GarboardFactory.eINSTANCE.createExhaustCrest()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__OUTLET,
				 GarboardFactory.eINSTANCE.createExhaustOutlet()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.EXHAUST_RUN__SEPARATOR_DRAIN,
				 GarboardFactory.eINSTANCE.createSeparatorDrain()));
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
