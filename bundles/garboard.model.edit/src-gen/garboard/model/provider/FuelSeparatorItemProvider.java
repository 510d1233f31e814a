/**
 */
package garboard.model.provider;


import garboard.model.FuelSeparator;
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
 * This is the item provider adapter for a {@link garboard.model.FuelSeparator} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class FuelSeparatorItemProvider 
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
	public FuelSeparatorItemProvider(AdapterFactory adapterFactory) {
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

			addMakerPropertyDescriptor(object);
			addRatedFlowPropertyDescriptor(object);
			addFinenessPropertyDescriptor(object);
			addOnEngineFinenessPropertyDescriptor(object);
			addBowlPropertyDescriptor(object);
			addClearanceBelowPropertyDescriptor(object);
			addFixedToStructurePropertyDescriptor(object);
			addHighestPointOfLinePropertyDescriptor(object);
			addFireTestedPropertyDescriptor(object);
			addWaterAlarmPropertyDescriptor(object);
			addElementChangedOnPropertyDescriptor(object);
			addBypassOrSparePropertyDescriptor(object);
			addWaterFoundPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Maker feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMakerPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_maker_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_maker_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__MAKER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rated Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRatedFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_ratedFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_ratedFlow_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__RATED_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fineness feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFinenessPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_fineness_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_fineness_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__FINENESS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the On Engine Fineness feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOnEngineFinenessPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_onEngineFineness_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_onEngineFineness_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__ON_ENGINE_FINENESS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bowl feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBowlPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_bowl_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_bowl_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__BOWL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clearance Below feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClearanceBelowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_clearanceBelow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_clearanceBelow_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__CLEARANCE_BELOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fixed To Structure feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFixedToStructurePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_fixedToStructure_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_fixedToStructure_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__FIXED_TO_STRUCTURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Highest Point Of Line feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHighestPointOfLinePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_highestPointOfLine_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_highestPointOfLine_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fire Tested feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFireTestedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_fireTested_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_fireTested_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__FIRE_TESTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Water Alarm feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWaterAlarmPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_waterAlarm_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_waterAlarm_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__WATER_ALARM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Element Changed On feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addElementChangedOnPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_elementChangedOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_elementChangedOn_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__ELEMENT_CHANGED_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bypass Or Spare feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBypassOrSparePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_bypassOrSpare_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_bypassOrSpare_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__BYPASS_OR_SPARE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Water Found feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWaterFoundPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FuelSeparator_waterFound_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_FuelSeparator_waterFound_feature", "_UI_FuelSeparator_type"),
				 GarboardPackage.Literals.FUEL_SEPARATOR__WATER_FOUND,
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
			childrenFeatures.add(GarboardPackage.Literals.FUEL_SEPARATOR__POSITION);
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
		String label = ((FuelSeparator)object).getMaker();
		return label == null || label.length() == 0 ?
			getString("_UI_FuelSeparator_type") :
			getString("_UI_FuelSeparator_type") + " " + label;
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

		switch (notification.getFeatureID(FuelSeparator.class)) {
			case GarboardPackage.FUEL_SEPARATOR__MAKER:
			case GarboardPackage.FUEL_SEPARATOR__RATED_FLOW:
			case GarboardPackage.FUEL_SEPARATOR__FINENESS:
			case GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS:
			case GarboardPackage.FUEL_SEPARATOR__BOWL:
			case GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW:
			case GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE:
			case GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE:
			case GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED:
			case GarboardPackage.FUEL_SEPARATOR__WATER_ALARM:
			case GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON:
			case GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE:
			case GarboardPackage.FUEL_SEPARATOR__WATER_FOUND:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
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
				(GarboardPackage.Literals.FUEL_SEPARATOR__POSITION,
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
