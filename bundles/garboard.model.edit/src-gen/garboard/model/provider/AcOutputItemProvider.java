/**
 */
package garboard.model.provider;


import garboard.model.AcOutput;
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
 * This is the item provider adapter for a {@link garboard.model.AcOutput} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class AcOutputItemProvider 
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
	public AcOutputItemProvider(AdapterFactory adapterFactory) {
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

			addProtectionDevicePropertyDescriptor(object);
			addProtectionRatingPropertyDescriptor(object);
			addTripCurvePropertyDescriptor(object);
			addProtectionPolesPropertyDescriptor(object);
			addProtectionDistancePropertyDescriptor(object);
			addResidualCurrentDevicePropertyDescriptor(object);
			addResidualTripCurrentPropertyDescriptor(object);
			addResidualTripTimePropertyDescriptor(object);
			addNeutralBondPropertyDescriptor(object);
			addProtectiveConductorSizePropertyDescriptor(object);
			addProtectiveConductorResistancePropertyDescriptor(object);
			addNeutralGroundConductorSizePropertyDescriptor(object);
			addInsulationResistancePropertyDescriptor(object);
			addInsulationTemperaturePropertyDescriptor(object);
			addPolarityIndicatorPropertyDescriptor(object);
			addPolarityTestedPropertyDescriptor(object);
			addVoltmeterPropertyDescriptor(object);
			addAmmeterPropertyDescriptor(object);
			addFrequencyMeterPropertyDescriptor(object);
			addNamePlateReadablePropertyDescriptor(object);
			addEarthedPartsBondedPropertyDescriptor(object);
			addGroundDetectionPropertyDescriptor(object);
			addNoLoadVoltagePropertyDescriptor(object);
			addNoLoadFrequencyPropertyDescriptor(object);
			addLegACurrentPropertyDescriptor(object);
			addLegBCurrentPropertyDescriptor(object);
			addShoreInletResidualDevicePropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Protection Device feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionDevicePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_protectionDevice_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectionDevice_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE,
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
				 getString("_UI_AcOutput_protectionRating_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectionRating_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Trip Curve feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTripCurvePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_tripCurve_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_tripCurve_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__TRIP_CURVE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection Poles feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionPolesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_protectionPoles_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectionPoles_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTION_POLES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protection Distance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectionDistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_protectionDistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectionDistance_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Residual Current Device feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addResidualCurrentDevicePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_residualCurrentDevice_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_residualCurrentDevice_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Residual Trip Current feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addResidualTripCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_residualTripCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_residualTripCurrent_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_TRIP_CURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Residual Trip Time feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addResidualTripTimePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_residualTripTime_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_residualTripTime_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_TRIP_TIME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Neutral Bond feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNeutralBondPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_neutralBond_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_neutralBond_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protective Conductor Size feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectiveConductorSizePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_protectiveConductorSize_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectiveConductorSize_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Protective Conductor Resistance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addProtectiveConductorResistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_protectiveConductorResistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_protectiveConductorResistance_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Neutral Ground Conductor Size feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNeutralGroundConductorSizePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_neutralGroundConductorSize_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_neutralGroundConductorSize_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Insulation Resistance feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInsulationResistancePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_insulationResistance_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_insulationResistance_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__INSULATION_RESISTANCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Insulation Temperature feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addInsulationTemperaturePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_insulationTemperature_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_insulationTemperature_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__INSULATION_TEMPERATURE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Polarity Indicator feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPolarityIndicatorPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_polarityIndicator_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_polarityIndicator_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__POLARITY_INDICATOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Polarity Tested feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPolarityTestedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_polarityTested_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_polarityTested_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__POLARITY_TESTED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Voltmeter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addVoltmeterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_voltmeter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_voltmeter_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__VOLTMETER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ammeter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAmmeterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_ammeter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_ammeter_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__AMMETER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Frequency Meter feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFrequencyMeterPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_frequencyMeter_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_frequencyMeter_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__FREQUENCY_METER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Name Plate Readable feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNamePlateReadablePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_namePlateReadable_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_namePlateReadable_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__NAME_PLATE_READABLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Earthed Parts Bonded feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEarthedPartsBondedPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_earthedPartsBonded_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_earthedPartsBonded_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__EARTHED_PARTS_BONDED,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Ground Detection feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addGroundDetectionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_groundDetection_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_groundDetection_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__GROUND_DETECTION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the No Load Voltage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNoLoadVoltagePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_noLoadVoltage_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_noLoadVoltage_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__NO_LOAD_VOLTAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the No Load Frequency feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNoLoadFrequencyPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_noLoadFrequency_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_noLoadFrequency_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__NO_LOAD_FREQUENCY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leg ACurrent feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLegACurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_legACurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_legACurrent_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__LEG_ACURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Leg BCurrent feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLegBCurrentPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_legBCurrent_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_legBCurrent_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__LEG_BCURRENT,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Shore Inlet Residual Device feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addShoreInletResidualDevicePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_AcOutput_shoreInletResidualDevice_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_AcOutput_shoreInletResidualDevice_feature", "_UI_AcOutput_type"),
				 GarboardPackage.Literals.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE,
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
			childrenFeatures.add(GarboardPackage.Literals.AC_OUTPUT__TRANSFER);
			childrenFeatures.add(GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE);
			childrenFeatures.add(GarboardPackage.Literals.AC_OUTPUT__LOADS);
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
		Answer labelValue = ((AcOutput)object).getNamePlateReadable();
		String label = labelValue == null ? null : labelValue.toString();
		return label == null || label.length() == 0 ?
			getString("_UI_AcOutput_type") :
			getString("_UI_AcOutput_type") + " " + label;
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

		switch (notification.getFeatureID(AcOutput.class)) {
			case GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE:
			case GarboardPackage.AC_OUTPUT__PROTECTION_RATING:
			case GarboardPackage.AC_OUTPUT__TRIP_CURVE:
			case GarboardPackage.AC_OUTPUT__PROTECTION_POLES:
			case GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE:
			case GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE:
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT:
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME:
			case GarboardPackage.AC_OUTPUT__NEUTRAL_BOND:
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE:
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE:
			case GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE:
			case GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE:
			case GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE:
			case GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR:
			case GarboardPackage.AC_OUTPUT__POLARITY_TESTED:
			case GarboardPackage.AC_OUTPUT__VOLTMETER:
			case GarboardPackage.AC_OUTPUT__AMMETER:
			case GarboardPackage.AC_OUTPUT__FREQUENCY_METER:
			case GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE:
			case GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED:
			case GarboardPackage.AC_OUTPUT__GROUND_DETECTION:
			case GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE:
			case GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY:
			case GarboardPackage.AC_OUTPUT__LEG_ACURRENT:
			case GarboardPackage.AC_OUTPUT__LEG_BCURRENT:
			case GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.AC_OUTPUT__TRANSFER:
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
			case GarboardPackage.AC_OUTPUT__LOADS:
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
				(GarboardPackage.Literals.AC_OUTPUT__TRANSFER,
				 GarboardFactory.eINSTANCE.createTransferSwitch()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE,
				 GarboardFactory.eINSTANCE.createCableRun()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.AC_OUTPUT__LOADS,
				 GarboardFactory.eINSTANCE.createElectricalLoad()));
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
