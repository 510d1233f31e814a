/**
 */
package garboard.model.provider;


import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;

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
 * This is the item provider adapter for a {@link garboard.model.AlarmsAndSafety} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class AlarmsAndSafetyItemProvider 
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
	public AlarmsAndSafetyItemProvider(AdapterFactory adapterFactory) {
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

			addCarbonMonoxideInEverySpacePropertyDescriptor(object);
			addCarbonMonoxideMarkedPropertyDescriptor(object);
			addCarbonMonoxideExpiryPropertyDescriptor(object);
			addCarbonMonoxideAlwaysPoweredPropertyDescriptor(object);
			addHabitableSpacesPropertyDescriptor(object);
			addCarbonMonoxideAlarmsPropertyDescriptor(object);
			addVapourDetectorPropertyDescriptor(object);
			addVapourSensorLowPropertyDescriptor(object);
			addVapourBeforeStartPropertyDescriptor(object);
			addFireExtinguisherPropertyDescriptor(object);
			addFixedFireSystemPropertyDescriptor(object);
			addFireSystemStopsSetPropertyDescriptor(object);
			addFireDischargePortPropertyDescriptor(object);
			addRemoteStopPropertyDescriptor(object);
			addWarningLabelsPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide In Every Space feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideInEverySpacePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_carbonMonoxideInEverySpace_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_carbonMonoxideInEverySpace_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide Marked feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideMarkedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_carbonMonoxideMarked_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_carbonMonoxideMarked_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide Expiry feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideExpiryPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_carbonMonoxideExpiry_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_carbonMonoxideExpiry_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide Always Powered feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideAlwaysPoweredPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_carbonMonoxideAlwaysPowered_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_carbonMonoxideAlwaysPowered_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Habitable Spaces feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHabitableSpacesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_habitableSpaces_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_habitableSpaces_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__HABITABLE_SPACES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Carbon Monoxide Alarms feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCarbonMonoxideAlarmsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_carbonMonoxideAlarms_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_carbonMonoxideAlarms_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vapour Detector feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVapourDetectorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_vapourDetector_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_vapourDetector_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_DETECTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vapour Sensor Low feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVapourSensorLowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_vapourSensorLow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_vapourSensorLow_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Vapour Before Start feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVapourBeforeStartPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_vapourBeforeStart_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_vapourBeforeStart_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fire Extinguisher feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFireExtinguisherPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_fireExtinguisher_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_fireExtinguisher_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fixed Fire System feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFixedFireSystemPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_fixedFireSystem_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_fixedFireSystem_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fire System Stops Set feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFireSystemStopsSetPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_fireSystemStopsSet_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_fireSystemStopsSet_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fire Discharge Port feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFireDischargePortPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_fireDischargePort_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_fireDischargePort_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Remote Stop feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRemoteStopPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_remoteStop_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_remoteStop_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__REMOTE_STOP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Warning Labels feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWarningLabelsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AlarmsAndSafety_warningLabels_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AlarmsAndSafety_warningLabels_feature", "_UI_AlarmsAndSafety_type"),
				 GarboardPackage.Literals.ALARMS_AND_SAFETY__WARNING_LABELS,
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
			childrenFeatures.add(GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS);
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
		Answer labelValue = ((AlarmsAndSafety)object).getCarbonMonoxideInEverySpace();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_AlarmsAndSafety_type") :
			getString("_UI_AlarmsAndSafety_type") + " " + label;
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

		switch (notification.getFeatureID(AlarmsAndSafety.class)) {
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE:
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED:
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY:
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED:
			case GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES:
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS:
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR:
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW:
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START:
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER:
			case GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM:
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET:
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT:
			case GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP:
			case GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
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
				(GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS,
				 GarboardFactory.eINSTANCE.createAlarmDevice()));
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
