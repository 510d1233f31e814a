/**
 */
package garboard.model.provider;


import garboard.model.GarboardPackage;
import garboard.model.Vessel;

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
 * This is the item provider adapter for a {@link garboard.model.Vessel} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class VesselItemProvider 
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
	public VesselItemProvider(AdapterFactory adapterFactory) {
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
			addIdentificationPropertyDescriptor(object);
			addFlagPropertyDescriptor(object);
			addHullKindPropertyDescriptor(object);
			addHullMaterialPropertyDescriptor(object);
			addServicePropertyDescriptor(object);
			addBuiltOnPropertyDescriptor(object);
			addLengthOverallPropertyDescriptor(object);
			addWaterlineLengthPropertyDescriptor(object);
			addBeamPropertyDescriptor(object);
			addDraughtPropertyDescriptor(object);
			addFreeboardAmidshipsPropertyDescriptor(object);
			addPassengersPropertyDescriptor(object);
			addOvernightPassengersPropertyDescriptor(object);
			addSpeedPropertyDescriptor(object);
			addDesignHeelPropertyDescriptor(object);
			addDesignRollPropertyDescriptor(object);
			addDesignTrimPropertyDescriptor(object);
			addSinkagePropertyDescriptor(object);
			addGasolineEngineAboardPropertyDescriptor(object);
			addGasolineEnginesPropertyDescriptor(object);
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
				 getString("_UI_Vessel_name_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_name_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__NAME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Identification feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addIdentificationPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_identification_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_identification_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__IDENTIFICATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Flag feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFlagPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_flag_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_flag_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__FLAG,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Hull Kind feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHullKindPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_hullKind_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_hullKind_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__HULL_KIND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Hull Material feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addHullMaterialPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_hullMaterial_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_hullMaterial_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__HULL_MATERIAL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Service feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addServicePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_service_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_service_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__SERVICE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Built On feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBuiltOnPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_builtOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_builtOn_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__BUILT_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Length Overall feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLengthOverallPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_lengthOverall_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_lengthOverall_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__LENGTH_OVERALL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Waterline Length feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWaterlineLengthPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_waterlineLength_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_waterlineLength_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__WATERLINE_LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Beam feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBeamPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_beam_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_beam_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__BEAM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Draught feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDraughtPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_draught_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_draught_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__DRAUGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Freeboard Amidships feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFreeboardAmidshipsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_freeboardAmidships_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_freeboardAmidships_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__FREEBOARD_AMIDSHIPS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Passengers feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPassengersPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_passengers_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_passengers_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__PASSENGERS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Overnight Passengers feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOvernightPassengersPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_overnightPassengers_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_overnightPassengers_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__OVERNIGHT_PASSENGERS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Speed feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSpeedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_speed_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_speed_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__SPEED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Heel feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignHeelPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_designHeel_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_designHeel_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__DESIGN_HEEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Roll feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignRollPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_designRoll_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_designRoll_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__DESIGN_ROLL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Trim feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignTrimPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_designTrim_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_designTrim_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__DESIGN_TRIM,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sinkage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSinkagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_sinkage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_sinkage_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__SINKAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Gasoline Engine Aboard feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGasolineEngineAboardPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_gasolineEngineAboard_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_gasolineEngineAboard_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Gasoline Engines feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGasolineEnginesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Vessel_gasolineEngines_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Vessel_gasolineEngines_feature", "_UI_Vessel_type"),
				 GarboardPackage.Literals.VESSEL__GASOLINE_ENGINES,
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
		String label = ((Vessel)object).getName();
		return label == null || label.length() == 0 ?
			getString("_UI_Vessel_type") :
			getString("_UI_Vessel_type") + " " + label;
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

		switch (notification.getFeatureID(Vessel.class)) {
			case GarboardPackage.VESSEL__NAME:
			case GarboardPackage.VESSEL__IDENTIFICATION:
			case GarboardPackage.VESSEL__FLAG:
			case GarboardPackage.VESSEL__HULL_KIND:
			case GarboardPackage.VESSEL__HULL_MATERIAL:
			case GarboardPackage.VESSEL__SERVICE:
			case GarboardPackage.VESSEL__BUILT_ON:
			case GarboardPackage.VESSEL__LENGTH_OVERALL:
			case GarboardPackage.VESSEL__WATERLINE_LENGTH:
			case GarboardPackage.VESSEL__BEAM:
			case GarboardPackage.VESSEL__DRAUGHT:
			case GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS:
			case GarboardPackage.VESSEL__PASSENGERS:
			case GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS:
			case GarboardPackage.VESSEL__SPEED:
			case GarboardPackage.VESSEL__DESIGN_HEEL:
			case GarboardPackage.VESSEL__DESIGN_ROLL:
			case GarboardPackage.VESSEL__DESIGN_TRIM:
			case GarboardPackage.VESSEL__SINKAGE:
			case GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD:
			case GarboardPackage.VESSEL__GASOLINE_ENGINES:
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
