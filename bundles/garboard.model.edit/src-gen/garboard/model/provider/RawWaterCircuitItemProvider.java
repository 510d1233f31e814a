/**
 */
package garboard.model.provider;


import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.RawWaterCircuit;

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
 * This is the item provider adapter for a {@link garboard.model.RawWaterCircuit} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class RawWaterCircuitItemProvider 
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
	public RawWaterCircuitItemProvider(AdapterFactory adapterFactory) {
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

			addSiphonBreakHoseBorePropertyDescriptor(object);
			addOwnIntakePropertyDescriptor(object);
			addDischargeAheadOfIntakePropertyDescriptor(object);
			addMeasuredFlowPropertyDescriptor(object);
			addMeasuredVacuumAtPumpPropertyDescriptor(object);
			addMeasuredInletTemperaturePropertyDescriptor(object);
			addMeasuredOverboardTemperaturePropertyDescriptor(object);
			addDesignSeaTemperaturePropertyDescriptor(object);
			addSeacockTagAtStartPanelPropertyDescriptor(object);
			addShutWhenNotInUsePropertyDescriptor(object);
			addWinteriseConnectionPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Siphon Break Hose Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSiphonBreakHoseBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_siphonBreakHoseBore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_siphonBreakHoseBore_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Own Intake feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOwnIntakePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_ownIntake_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_ownIntake_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__OWN_INTAKE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Discharge Ahead Of Intake feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDischargeAheadOfIntakePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_dischargeAheadOfIntake_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_dischargeAheadOfIntake_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_measuredFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_measuredFlow_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Vacuum At Pump feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredVacuumAtPumpPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_measuredVacuumAtPump_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_measuredVacuumAtPump_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Inlet Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredInletTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_measuredInletTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_measuredInletTemperature_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Overboard Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredOverboardTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_measuredOverboardTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_measuredOverboardTemperature_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Sea Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignSeaTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_designSeaTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_designSeaTemperature_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Seacock Tag At Start Panel feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSeacockTagAtStartPanelPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_seacockTagAtStartPanel_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_seacockTagAtStartPanel_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Shut When Not In Use feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addShutWhenNotInUsePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_shutWhenNotInUse_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_shutWhenNotInUse_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Winterise Connection feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWinteriseConnectionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RawWaterCircuit_winteriseConnection_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_RawWaterCircuit_winteriseConnection_feature", "_UI_RawWaterCircuit_type"),
				 GarboardPackage.Literals.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION,
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
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__PICK_UP);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__SEACOCK);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__STRAINER);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__PUMP);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK);
			childrenFeatures.add(GarboardPackage.Literals.RAW_WATER_CIRCUIT__INJECTION);
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
		Length labelValue = ((RawWaterCircuit)object).getSiphonBreakHoseBore();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_RawWaterCircuit_type") :
			getString("_UI_RawWaterCircuit_type") + " " + label;
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

		switch (notification.getFeatureID(RawWaterCircuit.class)) {
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE:
			case GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE:
			case GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE:
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW:
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP:
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE:
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE:
			case GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE:
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL:
			case GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE:
			case GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
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
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__PICK_UP,
				 GarboardFactory.eINSTANCE.createHullPickUp()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__SEACOCK,
				 GarboardFactory.eINSTANCE.createSeacock()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__STRAINER,
				 GarboardFactory.eINSTANCE.createWaterStrainer()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES,
				 GarboardFactory.eINSTANCE.createWaterHoseRun()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__PUMP,
				 GarboardFactory.eINSTANCE.createWaterPump()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK,
				 GarboardFactory.eINSTANCE.createSiphonBreak()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.RAW_WATER_CIRCUIT__INJECTION,
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
