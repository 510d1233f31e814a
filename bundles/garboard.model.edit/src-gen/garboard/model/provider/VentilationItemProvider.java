/**
 */
package garboard.model.provider;


import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Ventilation;

import garboard.quantity.Volume;

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
 * This is the item provider adapter for a {@link garboard.model.Ventilation} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class VentilationItemProvider 
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
	public VentilationItemProvider(AdapterFactory adapterFactory) {
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

			addNetVolumePropertyDescriptor(object);
			addGrossVolumePropertyDescriptor(object);
			addOpenAreaToAtmospherePropertyDescriptor(object);
			addConnectedOpeningFractionPropertyDescriptor(object);
			addCompartmentHeightPropertyDescriptor(object);
			addBilgeWaterHeightPropertyDescriptor(object);
			addBlowerRatedFlowPropertyDescriptor(object);
			addBlowerMeasuredFlowPropertyDescriptor(object);
			addBlowerLabelAtEachStartPropertyDescriptor(object);
			addBlowerInterlockedPropertyDescriptor(object);
			addBlowerIgnitionProtectedPropertyDescriptor(object);
			addSealedFromAccommodationPropertyDescriptor(object);
			addSupplyFromOutsidePropertyDescriptor(object);
			addSupplyAreaTotalPropertyDescriptor(object);
			addExhaustAreaTotalPropertyDescriptor(object);
			addNaturalDraughtPropertyDescriptor(object);
			addOutsideTemperaturePropertyDescriptor(object);
			addCompartmentTemperaturePropertyDescriptor(object);
			addAirInletTemperaturePropertyDescriptor(object);
			addDepressionPropertyDescriptor(object);
			addDesignAmbientPropertyDescriptor(object);
			addDuctsLowAndHighPropertyDescriptor(object);
			addClearOfExhaustOutletPropertyDescriptor(object);
			addIgnitionProtectedComponentsPropertyDescriptor(object);
			addCrankingMotorFittedPropertyDescriptor(object);
			addFanFlowPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Net Volume feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNetVolumePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_netVolume_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_netVolume_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__NET_VOLUME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Gross Volume feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGrossVolumePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_grossVolume_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_grossVolume_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__GROSS_VOLUME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Open Area To Atmosphere feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addOpenAreaToAtmospherePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_openAreaToAtmosphere_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_openAreaToAtmosphere_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__OPEN_AREA_TO_ATMOSPHERE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Connected Opening Fraction feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConnectedOpeningFractionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_connectedOpeningFraction_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_connectedOpeningFraction_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__CONNECTED_OPENING_FRACTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Compartment Height feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCompartmentHeightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_compartmentHeight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_compartmentHeight_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__COMPARTMENT_HEIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Bilge Water Height feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBilgeWaterHeightPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_bilgeWaterHeight_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_bilgeWaterHeight_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BILGE_WATER_HEIGHT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blower Rated Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlowerRatedFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_blowerRatedFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_blowerRatedFlow_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BLOWER_RATED_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blower Measured Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlowerMeasuredFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_blowerMeasuredFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_blowerMeasuredFlow_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BLOWER_MEASURED_FLOW,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blower Label At Each Start feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlowerLabelAtEachStartPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_blowerLabelAtEachStart_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_blowerLabelAtEachStart_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BLOWER_LABEL_AT_EACH_START,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blower Interlocked feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlowerInterlockedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_blowerInterlocked_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_blowerInterlocked_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BLOWER_INTERLOCKED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Blower Ignition Protected feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addBlowerIgnitionProtectedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_blowerIgnitionProtected_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_blowerIgnitionProtected_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__BLOWER_IGNITION_PROTECTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Sealed From Accommodation feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSealedFromAccommodationPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_sealedFromAccommodation_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_sealedFromAccommodation_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__SEALED_FROM_ACCOMMODATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Supply From Outside feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSupplyFromOutsidePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_supplyFromOutside_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_supplyFromOutside_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__SUPPLY_FROM_OUTSIDE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Supply Area Total feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSupplyAreaTotalPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_supplyAreaTotal_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_supplyAreaTotal_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__SUPPLY_AREA_TOTAL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Exhaust Area Total feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addExhaustAreaTotalPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_exhaustAreaTotal_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_exhaustAreaTotal_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__EXHAUST_AREA_TOTAL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Natural Draught feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNaturalDraughtPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_naturalDraught_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_naturalDraught_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__NATURAL_DRAUGHT,
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
				 getString("_UI_Ventilation_outsideTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_outsideTemperature_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__OUTSIDE_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Compartment Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCompartmentTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_compartmentTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_compartmentTemperature_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__COMPARTMENT_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Air Inlet Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAirInletTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_airInletTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_airInletTemperature_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__AIR_INLET_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Depression feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDepressionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_depression_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_depression_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__DEPRESSION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Design Ambient feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDesignAmbientPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_designAmbient_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_designAmbient_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ducts Low And High feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDuctsLowAndHighPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_ductsLowAndHigh_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_ductsLowAndHigh_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__DUCTS_LOW_AND_HIGH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Clear Of Exhaust Outlet feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addClearOfExhaustOutletPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_clearOfExhaustOutlet_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_clearOfExhaustOutlet_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__CLEAR_OF_EXHAUST_OUTLET,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ignition Protected Components feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addIgnitionProtectedComponentsPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_ignitionProtectedComponents_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_ignitionProtectedComponents_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__IGNITION_PROTECTED_COMPONENTS,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Cranking Motor Fitted feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCrankingMotorFittedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_crankingMotorFitted_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_crankingMotorFitted_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__CRANKING_MOTOR_FITTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Fan Flow feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFanFlowPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_Ventilation_fanFlow_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_Ventilation_fanFlow_feature", "_UI_Ventilation_type"),
				 GarboardPackage.Literals.VENTILATION__FAN_FLOW,
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
			childrenFeatures.add(GarboardPackage.Literals.VENTILATION__DUCTS);
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
		Volume labelValue = ((Ventilation)object).getNetVolume();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_Ventilation_type") :
			getString("_UI_Ventilation_type") + " " + label;
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

		switch (notification.getFeatureID(Ventilation.class)) {
			case GarboardPackage.VENTILATION__NET_VOLUME:
			case GarboardPackage.VENTILATION__GROSS_VOLUME:
			case GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE:
			case GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION:
			case GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT:
			case GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT:
			case GarboardPackage.VENTILATION__BLOWER_RATED_FLOW:
			case GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW:
			case GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START:
			case GarboardPackage.VENTILATION__BLOWER_INTERLOCKED:
			case GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED:
			case GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION:
			case GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE:
			case GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL:
			case GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL:
			case GarboardPackage.VENTILATION__NATURAL_DRAUGHT:
			case GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE:
			case GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE:
			case GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE:
			case GarboardPackage.VENTILATION__DEPRESSION:
			case GarboardPackage.VENTILATION__DESIGN_AMBIENT:
			case GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH:
			case GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET:
			case GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS:
			case GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED:
			case GarboardPackage.VENTILATION__FAN_FLOW:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.VENTILATION__DUCTS:
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
				(GarboardPackage.Literals.VENTILATION__DUCTS,
				 GarboardFactory.eINSTANCE.createAirDuct()));
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
