/**
 */
package garboard.model.provider;


import garboard.model.ElectricalLoad;
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
 * This is the item provider adapter for a {@link garboard.model.ElectricalLoad} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class ElectricalLoadItemProvider extends ItemItemProvider {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ElectricalLoadItemProvider(AdapterFactory adapterFactory) {
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
			addKindPropertyDescriptor(object);
			addPowerPropertyDescriptor(object);
			addEfficiencyPropertyDescriptor(object);
			addPowerFactorPropertyDescriptor(object);
			addDemandFactorPropertyDescriptor(object);
			addGroupPropertyDescriptor(object);
			addExclusiveWithPropertyDescriptor(object);
			addPhasePropertyDescriptor(object);
			addMotorHorsepowerPropertyDescriptor(object);
			addCodeLetterPropertyDescriptor(object);
			addLockedRotorCurrentPropertyDescriptor(object);
			addStartingPropertyDescriptor(object);
			addVoltagePropertyDescriptor(object);
			addConditionPropertyDescriptor(object);
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
				 getString("_UI_ElectricalLoad_name_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_name_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__NAME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Kind feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addKindPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_kind_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_kind_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__KIND,
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
				 getString("_UI_ElectricalLoad_power_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_power_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__POWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Efficiency feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEfficiencyPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_efficiency_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_efficiency_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__EFFICIENCY,
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
				 getString("_UI_ElectricalLoad_powerFactor_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_powerFactor_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__POWER_FACTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Demand Factor feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDemandFactorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_demandFactor_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_demandFactor_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__DEMAND_FACTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Group feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGroupPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_group_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_group_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__GROUP,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exclusive With feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExclusiveWithPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_exclusiveWith_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_exclusiveWith_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__EXCLUSIVE_WITH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Phase feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPhasePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_phase_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_phase_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__PHASE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Motor Horsepower feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMotorHorsepowerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_motorHorsepower_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_motorHorsepower_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__MOTOR_HORSEPOWER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Code Letter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCodeLetterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_codeLetter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_codeLetter_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__CODE_LETTER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Locked Rotor Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLockedRotorCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_lockedRotorCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_lockedRotorCurrent_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Starting feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addStartingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_starting_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_starting_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__STARTING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_voltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_voltage_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Condition feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConditionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ElectricalLoad_condition_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ElectricalLoad_condition_feature", "_UI_ElectricalLoad_type"),
				 GarboardPackage.Literals.ELECTRICAL_LOAD__CONDITION,
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
		String label = ((ElectricalLoad)object).getName();
		return label == null || label.length() == 0 ?
			getString("_UI_ElectricalLoad_type") :
			getString("_UI_ElectricalLoad_type") + " " + label;
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

		switch (notification.getFeatureID(ElectricalLoad.class)) {
			case GarboardPackage.ELECTRICAL_LOAD__NAME:
			case GarboardPackage.ELECTRICAL_LOAD__KIND:
			case GarboardPackage.ELECTRICAL_LOAD__POWER:
			case GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY:
			case GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR:
			case GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR:
			case GarboardPackage.ELECTRICAL_LOAD__GROUP:
			case GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH:
			case GarboardPackage.ELECTRICAL_LOAD__PHASE:
			case GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER:
			case GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER:
			case GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT:
			case GarboardPackage.ELECTRICAL_LOAD__STARTING:
			case GarboardPackage.ELECTRICAL_LOAD__VOLTAGE:
			case GarboardPackage.ELECTRICAL_LOAD__CONDITION:
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
