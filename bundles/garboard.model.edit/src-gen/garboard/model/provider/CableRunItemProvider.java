/**
 */
package garboard.model.provider;


import garboard.model.CableRun;
import garboard.model.GarboardPackage;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ViewerNotification;

/**
 * This is the item provider adapter for a {@link garboard.model.CableRun} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class CableRunItemProvider extends ItemItemProvider {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CableRunItemProvider(AdapterFactory adapterFactory) {
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

			addNamePropertyDescriptor(object);
			addFunctionPropertyDescriptor(object);
			addConductorSizePropertyDescriptor(object);
			addStrandClassPropertyDescriptor(object);
			addInsulationPropertyDescriptor(object);
			addLengthPropertyDescriptor(object);
			addCurrentPropertyDescriptor(object);
			addSystemVoltagePropertyDescriptor(object);
			addCriticalPropertyDescriptor(object);
			addInEngineSpacePropertyDescriptor(object);
			addConductorsInBundlePropertyDescriptor(object);
			addConductorTemperaturePropertyDescriptor(object);
			addProtectionPropertyDescriptor(object);
			addProtectionRatingPropertyDescriptor(object);
			addProtectionVoltageRatingPropertyDescriptor(object);
			addProtectionDistanceFromSourcePropertyDescriptor(object);
			addSheathedToProtectionPropertyDescriptor(object);
			addConnectedToBatteryTerminalPropertyDescriptor(object);
			addSupportSpacingPropertyDescriptor(object);
			addRingTerminalsPropertyDescriptor(object);
			addLugsOnStudPropertyDescriptor(object);
			addChafeProtectedPropertyDescriptor(object);
			addMultiStrandCopperPropertyDescriptor(object);
			addMeasuredDropPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Name feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNamePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_name_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_name_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__NAME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Function feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFunctionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_function_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_function_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__FUNCTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Conductor Size feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConductorSizePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_conductorSize_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_conductorSize_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Strand Class feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addStrandClassPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_strandClass_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_strandClass_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__STRAND_CLASS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Insulation feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInsulationPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_insulation_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_insulation_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__INSULATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Length feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLengthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_length_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_length_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_current_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_current_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CURRENT,
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
				 getString("_UI_CableRun_systemVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_systemVoltage_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__SYSTEM_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Critical feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCriticalPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_critical_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_critical_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CRITICAL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the In Engine Space feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInEngineSpacePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_inEngineSpace_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_inEngineSpace_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Conductors In Bundle feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConductorsInBundlePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_conductorsInBundle_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_conductorsInBundle_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CONDUCTORS_IN_BUNDLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Conductor Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConductorTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_conductorTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_conductorTemperature_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_protection_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_protection_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__PROTECTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection Rating feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionRatingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_protectionRating_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_protectionRating_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__PROTECTION_RATING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection Voltage Rating feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionVoltageRatingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_protectionVoltageRating_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_protectionVoltageRating_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__PROTECTION_VOLTAGE_RATING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection Distance From Source feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionDistanceFromSourcePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_protectionDistanceFromSource_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_protectionDistanceFromSource_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sheathed To Protection feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSheathedToProtectionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_sheathedToProtection_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_sheathedToProtection_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Connected To Battery Terminal feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConnectedToBatteryTerminalPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_connectedToBatteryTerminal_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_connectedToBatteryTerminal_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Support Spacing feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSupportSpacingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_supportSpacing_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_supportSpacing_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__SUPPORT_SPACING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ring Terminals feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRingTerminalsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_ringTerminals_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_ringTerminals_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__RING_TERMINALS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Lugs On Stud feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLugsOnStudPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_lugsOnStud_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_lugsOnStud_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__LUGS_ON_STUD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Chafe Protected feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addChafeProtectedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_chafeProtected_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_chafeProtected_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__CHAFE_PROTECTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Multi Strand Copper feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMultiStrandCopperPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_multiStrandCopper_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_multiStrandCopper_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__MULTI_STRAND_COPPER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Measured Drop feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMeasuredDropPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CableRun_measuredDrop_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CableRun_measuredDrop_feature", "_UI_CableRun_type"),
				 GarboardPackage.Literals.CABLE_RUN__MEASURED_DROP,
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
		String label = ((CableRun)object).getName();
		return label == null || label.length() == 0 ?
			getString("_UI_CableRun_type") :
			getString("_UI_CableRun_type") + " " + label;
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

		switch (notification.getFeatureID(CableRun.class)) {
			case GarboardPackage.CABLE_RUN__NAME:
			case GarboardPackage.CABLE_RUN__FUNCTION:
			case GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE:
			case GarboardPackage.CABLE_RUN__STRAND_CLASS:
			case GarboardPackage.CABLE_RUN__INSULATION:
			case GarboardPackage.CABLE_RUN__LENGTH:
			case GarboardPackage.CABLE_RUN__CURRENT:
			case GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE:
			case GarboardPackage.CABLE_RUN__CRITICAL:
			case GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE:
			case GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE:
			case GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE:
			case GarboardPackage.CABLE_RUN__PROTECTION:
			case GarboardPackage.CABLE_RUN__PROTECTION_RATING:
			case GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING:
			case GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE:
			case GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION:
			case GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL:
			case GarboardPackage.CABLE_RUN__SUPPORT_SPACING:
			case GarboardPackage.CABLE_RUN__RING_TERMINALS:
			case GarboardPackage.CABLE_RUN__LUGS_ON_STUD:
			case GarboardPackage.CABLE_RUN__CHAFE_PROTECTED:
			case GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER:
			case GarboardPackage.CABLE_RUN__MEASURED_DROP:
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
