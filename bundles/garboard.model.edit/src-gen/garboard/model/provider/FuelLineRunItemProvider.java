/**
 */
package garboard.model.provider;


import garboard.model.FuelLineRun;
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
 * This is the item provider adapter for a {@link garboard.model.FuelLineRun} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class FuelLineRunItemProvider extends ItemItemProvider {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FuelLineRunItemProvider(AdapterFactory adapterFactory) {
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
			addKindPropertyDescriptor(object);
			addBorePropertyDescriptor(object);
			addLengthPropertyDescriptor(object);
			addMarkingPropertyDescriptor(object);
			addWorkingPressurePropertyDescriptor(object);
			addClampsPerEndPropertyDescriptor(object);
			addBarbedEndsPropertyDescriptor(object);
			addInEngineSpacePropertyDescriptor(object);
			addInstalledOnPropertyDescriptor(object);
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
				 getString("_UI_FuelLineRun_name_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_name_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__NAME,
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
				 getString("_UI_FuelLineRun_function_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_function_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION,
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
				 getString("_UI_FuelLineRun_kind_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_kind_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__KIND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBorePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelLineRun_bore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_bore_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__BORE,
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
				 getString("_UI_FuelLineRun_length_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_length_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Marking feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMarkingPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelLineRun_marking_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_marking_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__MARKING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Working Pressure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWorkingPressurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelLineRun_workingPressure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_workingPressure_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__WORKING_PRESSURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clamps Per End feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClampsPerEndPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelLineRun_clampsPerEnd_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_clampsPerEnd_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__CLAMPS_PER_END,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Barbed Ends feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBarbedEndsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelLineRun_barbedEnds_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_barbedEnds_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__BARBED_ENDS,
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
				 getString("_UI_FuelLineRun_inEngineSpace_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_inEngineSpace_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__IN_ENGINE_SPACE,
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
				 getString("_UI_FuelLineRun_installedOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelLineRun_installedOn_feature", "_UI_FuelLineRun_type"),
				 GarboardPackage.Literals.FUEL_LINE_RUN__INSTALLED_ON,
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
		String label = ((FuelLineRun)object).getName();
		return label == null || label.length() == 0 ?
			getString("_UI_FuelLineRun_type") :
			getString("_UI_FuelLineRun_type") + " " + label;
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

		switch (notification.getFeatureID(FuelLineRun.class)) {
			case GarboardPackage.FUEL_LINE_RUN__NAME:
			case GarboardPackage.FUEL_LINE_RUN__FUNCTION:
			case GarboardPackage.FUEL_LINE_RUN__KIND:
			case GarboardPackage.FUEL_LINE_RUN__BORE:
			case GarboardPackage.FUEL_LINE_RUN__LENGTH:
			case GarboardPackage.FUEL_LINE_RUN__MARKING:
			case GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE:
			case GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END:
			case GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS:
			case GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE:
			case GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON:
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
