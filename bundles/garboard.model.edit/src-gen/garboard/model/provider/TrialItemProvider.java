/**
 */
package garboard.model.provider;


import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Trial;

import java.time.LocalDate;

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
 * This is the item provider adapter for a {@link garboard.model.Trial} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class TrialItemProvider 
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
	public TrialItemProvider(AdapterFactory adapterFactory) {
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

			addDatePropertyDescriptor(object);
			addPlacePropertyDescriptor(object);
			addLocationPropertyDescriptor(object);
			addPeoplePropertyDescriptor(object);
			addSeaTemperaturePropertyDescriptor(object);
			addOutsideTemperaturePropertyDescriptor(object);
			addBarometricPressurePropertyDescriptor(object);
			addRelativeHumidityPropertyDescriptor(object);
			addHeadOfWaterPropertyDescriptor(object);
			addCoolantLevelColdPropertyDescriptor(object);
			addCoolantLevelHotPropertyDescriptor(object);
			addCoolantLevelColdAgainPropertyDescriptor(object);
			addLeaksColdPropertyDescriptor(object);
			addLeaksHotPropertyDescriptor(object);
			addWaterAtOutletAfterPropertyDescriptor(object);
			addOilPressureAfterPropertyDescriptor(object);
			addMufflerLevelCheckedPropertyDescriptor(object);
			addRemarksPropertyDescriptor(object);
			addCarbonMonoxideCabinPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Date feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDatePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_date_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_date_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__DATE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Place feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPlacePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_place_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_place_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__PLACE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Location feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLocationPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_location_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_location_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__LOCATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the People feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPeoplePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_people_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_people_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__PEOPLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sea Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSeaTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_seaTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_seaTemperature_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__SEA_TEMPERATURE,
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
				 getString("_UI_Trial_outsideTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_outsideTemperature_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__OUTSIDE_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Barometric Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBarometricPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_barometricPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_barometricPressure_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__BAROMETRIC_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Relative Humidity feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRelativeHumidityPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_relativeHumidity_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_relativeHumidity_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__RELATIVE_HUMIDITY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Head Of Water feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHeadOfWaterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_headOfWater_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_headOfWater_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__HEAD_OF_WATER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coolant Level Cold feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoolantLevelColdPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_coolantLevelCold_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_coolantLevelCold_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__COOLANT_LEVEL_COLD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coolant Level Hot feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoolantLevelHotPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_coolantLevelHot_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_coolantLevelHot_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__COOLANT_LEVEL_HOT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coolant Level Cold Again feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoolantLevelColdAgainPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_coolantLevelColdAgain_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_coolantLevelColdAgain_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__COOLANT_LEVEL_COLD_AGAIN,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leaks Cold feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLeaksColdPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_leaksCold_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_leaksCold_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__LEAKS_COLD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leaks Hot feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLeaksHotPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_leaksHot_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_leaksHot_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__LEAKS_HOT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Water At Outlet After feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWaterAtOutletAfterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_waterAtOutletAfter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_waterAtOutletAfter_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__WATER_AT_OUTLET_AFTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Oil Pressure After feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOilPressureAfterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_oilPressureAfter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_oilPressureAfter_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__OIL_PRESSURE_AFTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Muffler Level Checked feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMufflerLevelCheckedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_mufflerLevelChecked_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_mufflerLevelChecked_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__MUFFLER_LEVEL_CHECKED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Remarks feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRemarksPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_remarks_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_remarks_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__REMARKS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide Cabin feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideCabinPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Trial_carbonMonoxideCabin_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Trial_carbonMonoxideCabin_feature", "_UI_Trial_type"),
				 GarboardPackage.Literals.TRIAL__CARBON_MONOXIDE_CABIN,
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
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__PROCEDURE);
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__PRIMING);
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__ATTEMPTS);
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__LOAD_STEPS);
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__SHUTDOWN_TESTS);
			childrenFeatures.add(GarboardPackage.Literals.TRIAL__SEA_RUN);
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
		LocalDate labelValue = ((Trial)object).getDate();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_Trial_type") :
			getString("_UI_Trial_type") + " " + label;
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

		switch (notification.getFeatureID(Trial.class)) {
			case GarboardPackage.TRIAL__DATE:
			case GarboardPackage.TRIAL__PLACE:
			case GarboardPackage.TRIAL__LOCATION:
			case GarboardPackage.TRIAL__PEOPLE:
			case GarboardPackage.TRIAL__SEA_TEMPERATURE:
			case GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE:
			case GarboardPackage.TRIAL__BAROMETRIC_PRESSURE:
			case GarboardPackage.TRIAL__RELATIVE_HUMIDITY:
			case GarboardPackage.TRIAL__HEAD_OF_WATER:
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD:
			case GarboardPackage.TRIAL__COOLANT_LEVEL_HOT:
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN:
			case GarboardPackage.TRIAL__LEAKS_COLD:
			case GarboardPackage.TRIAL__LEAKS_HOT:
			case GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER:
			case GarboardPackage.TRIAL__OIL_PRESSURE_AFTER:
			case GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED:
			case GarboardPackage.TRIAL__REMARKS:
			case GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.TRIAL__PROCEDURE:
			case GarboardPackage.TRIAL__PRIMING:
			case GarboardPackage.TRIAL__ATTEMPTS:
			case GarboardPackage.TRIAL__LOAD_STEPS:
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
			case GarboardPackage.TRIAL__SEA_RUN:
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
				(GarboardPackage.Literals.TRIAL__PROCEDURE,
				 GarboardFactory.eINSTANCE.createProcedureStep()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.TRIAL__PRIMING,
				 GarboardFactory.eINSTANCE.createFuelPriming()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.TRIAL__ATTEMPTS,
				 GarboardFactory.eINSTANCE.createCrankingAttempt()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.TRIAL__LOAD_STEPS,
				 GarboardFactory.eINSTANCE.createLoadStep()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.TRIAL__SHUTDOWN_TESTS,
				 GarboardFactory.eINSTANCE.createAlarmDevice()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.TRIAL__SEA_RUN,
				 GarboardFactory.eINSTANCE.createSeaRun()));
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
