/**
 */
package garboard.model.provider;


import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Mounting;

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
 * This is the item provider adapter for a {@link garboard.model.Mounting} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class MountingItemProvider 
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
	public MountingItemProvider(AdapterFactory adapterFactory) {
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

			addBedsRigidPropertyDescriptor(object);
			addMountsAlignedPropertyDescriptor(object);
			addClearanceAroundPropertyDescriptor(object);
			addFlexibleConnectionsPropertyDescriptor(object);
			addDripTrayPropertyDescriptor(object);
			addAccessForServicePropertyDescriptor(object);
			addBondingConductorPropertyDescriptor(object);
			addBondedToCommonGroundPropertyDescriptor(object);
			addCommonNegativeLinkPropertyDescriptor(object);
			addDcNegativeIsolatedPropertyDescriptor(object);
			addInstalledAngleForePropertyDescriptor(object);
			addInstalledAngleSidePropertyDescriptor(object);
			addHeightAboveBilgePropertyDescriptor(object);
			addAnodesFittedPropertyDescriptor(object);
			addLabelsPostedPropertyDescriptor(object);
			addRotatingPartsGuardedPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Beds Rigid feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBedsRigidPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_bedsRigid_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_bedsRigid_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__BEDS_RIGID,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Mounts Aligned feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMountsAlignedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_mountsAligned_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_mountsAligned_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__MOUNTS_ALIGNED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clearance Around feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClearanceAroundPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_clearanceAround_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_clearanceAround_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__CLEARANCE_AROUND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Flexible Connections feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFlexibleConnectionsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_flexibleConnections_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_flexibleConnections_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__FLEXIBLE_CONNECTIONS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Drip Tray feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDripTrayPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_dripTray_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_dripTray_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__DRIP_TRAY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Access For Service feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAccessForServicePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_accessForService_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_accessForService_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__ACCESS_FOR_SERVICE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bonding Conductor feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBondingConductorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_bondingConductor_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_bondingConductor_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__BONDING_CONDUCTOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bonded To Common Ground feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBondedToCommonGroundPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_bondedToCommonGround_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_bondedToCommonGround_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__BONDED_TO_COMMON_GROUND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Common Negative Link feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCommonNegativeLinkPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_commonNegativeLink_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_commonNegativeLink_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__COMMON_NEGATIVE_LINK,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Dc Negative Isolated feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDcNegativeIsolatedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_dcNegativeIsolated_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_dcNegativeIsolated_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__DC_NEGATIVE_ISOLATED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Installed Angle Fore feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInstalledAngleForePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_installedAngleFore_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_installedAngleFore_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__INSTALLED_ANGLE_FORE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Installed Angle Side feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInstalledAngleSidePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_installedAngleSide_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_installedAngleSide_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__INSTALLED_ANGLE_SIDE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Height Above Bilge feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHeightAboveBilgePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_heightAboveBilge_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_heightAboveBilge_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__HEIGHT_ABOVE_BILGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Anodes Fitted feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAnodesFittedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_anodesFitted_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_anodesFitted_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__ANODES_FITTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Labels Posted feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLabelsPostedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_labelsPosted_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_labelsPosted_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__LABELS_POSTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rotating Parts Guarded feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRotatingPartsGuardedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Mounting_rotatingPartsGuarded_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Mounting_rotatingPartsGuarded_feature", "_UI_Mounting_type"),
				 GarboardPackage.Literals.MOUNTING__ROTATING_PARTS_GUARDED,
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
		Answer labelValue = ((Mounting)object).getBedsRigid();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_Mounting_type") :
			getString("_UI_Mounting_type") + " " + label;
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

		switch (notification.getFeatureID(Mounting.class)) {
			case GarboardPackage.MOUNTING__BEDS_RIGID:
			case GarboardPackage.MOUNTING__MOUNTS_ALIGNED:
			case GarboardPackage.MOUNTING__CLEARANCE_AROUND:
			case GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS:
			case GarboardPackage.MOUNTING__DRIP_TRAY:
			case GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE:
			case GarboardPackage.MOUNTING__BONDING_CONDUCTOR:
			case GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND:
			case GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK:
			case GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED:
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE:
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE:
			case GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE:
			case GarboardPackage.MOUNTING__ANODES_FITTED:
			case GarboardPackage.MOUNTING__LABELS_POSTED:
			case GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED:
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
