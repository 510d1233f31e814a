/**
 */
package garboard.model.provider;


import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EStructuralFeature;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ViewerNotification;

/**
 * This is the item provider adapter for a {@link garboard.model.ExhaustSectionRun} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class ExhaustSectionRunItemProvider extends ItemItemProvider {
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ExhaustSectionRunItemProvider(AdapterFactory adapterFactory) {
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
			addSectionPropertyDescriptor(object);
			addStandardPropertyDescriptor(object);
			addBorePropertyDescriptor(object);
			addLengthPropertyDescriptor(object);
			addRisePropertyDescriptor(object);
			addFallPropertyDescriptor(object);
			addSlopesBackToMufflerPropertyDescriptor(object);
			addClampsPerEndPropertyDescriptor(object);
			addClampBandWidthPropertyDescriptor(object);
			addSupportSpacingPropertyDescriptor(object);
			addSagFreePropertyDescriptor(object);
			addInstalledOnPropertyDescriptor(object);
			addGasTemperaturePropertyDescriptor(object);
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
				 getString("_UI_ExhaustSectionRun_name_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_name_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__NAME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Section feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSectionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_section_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_section_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Standard feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addStandardPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_standard_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_standard_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__STANDARD,
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
				 getString("_UI_ExhaustSectionRun_bore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_bore_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE,
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
				 getString("_UI_ExhaustSectionRun_length_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_length_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rise feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRisePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_rise_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_rise_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__RISE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fall feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFallPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_fall_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_fall_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__FALL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Slopes Back To Muffler feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSlopesBackToMufflerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_slopesBackToMuffler_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_slopesBackToMuffler_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER,
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
				 getString("_UI_ExhaustSectionRun_clampsPerEnd_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_clampsPerEnd_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__CLAMPS_PER_END,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clamp Band Width feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClampBandWidthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_clampBandWidth_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_clampBandWidth_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH,
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
				 getString("_UI_ExhaustSectionRun_supportSpacing_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_supportSpacing_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__SUPPORT_SPACING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sag Free feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSagFreePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_sagFree_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_sagFree_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__SAG_FREE,
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
				 getString("_UI_ExhaustSectionRun_installedOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_installedOn_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__INSTALLED_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Gas Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGasTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_ExhaustSectionRun_gasTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_ExhaustSectionRun_gasTemperature_feature", "_UI_ExhaustSectionRun_type"),
				 GarboardPackage.Literals.EXHAUST_SECTION_RUN__GAS_TEMPERATURE,
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
			childrenFeatures.add(GarboardPackage.Literals.EXHAUST_SECTION_RUN__BENDS);
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
		String label = ((ExhaustSectionRun)object).getName();
		return label == null || label.length() == 0 ?
			getString("_UI_ExhaustSectionRun_type") :
			getString("_UI_ExhaustSectionRun_type") + " " + label;
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

		switch (notification.getFeatureID(ExhaustSectionRun.class)) {
			case GarboardPackage.EXHAUST_SECTION_RUN__NAME:
			case GarboardPackage.EXHAUST_SECTION_RUN__SECTION:
			case GarboardPackage.EXHAUST_SECTION_RUN__STANDARD:
			case GarboardPackage.EXHAUST_SECTION_RUN__BORE:
			case GarboardPackage.EXHAUST_SECTION_RUN__LENGTH:
			case GarboardPackage.EXHAUST_SECTION_RUN__RISE:
			case GarboardPackage.EXHAUST_SECTION_RUN__FALL:
			case GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER:
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END:
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH:
			case GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING:
			case GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE:
			case GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON:
			case GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
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
				(GarboardPackage.Literals.EXHAUST_SECTION_RUN__BENDS,
				 GarboardFactory.eINSTANCE.createExhaustBend()));
	}

}
