/**
 */
package garboard.model.provider;


import garboard.model.CommissioningRecord;
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
 * This is the item provider adapter for a {@link garboard.model.CommissioningRecord} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class CommissioningRecordItemProvider 
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
	public CommissioningRecordItemProvider(AdapterFactory adapterFactory) {
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

			addFormatVersionPropertyDescriptor(object);
			addRecordNumberPropertyDescriptor(object);
			addTitlePropertyDescriptor(object);
			addCreatedOnPropertyDescriptor(object);
			addPracticesPropertyDescriptor(object);
			addRemarksPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Format Version feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFormatVersionPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_formatVersion_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_formatVersion_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__FORMAT_VERSION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Record Number feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRecordNumberPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_recordNumber_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_recordNumber_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__RECORD_NUMBER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Title feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTitlePropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_title_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_title_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__TITLE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Created On feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCreatedOnPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_createdOn_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_createdOn_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__CREATED_ON,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Practices feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addPracticesPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_practices_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_practices_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__PRACTICES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Remarks feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRemarksPropertyDescriptor(Object object) {
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CommissioningRecord_remarks_feature"),
				 getString("_UI_PropertyDescriptor_description", "_UI_CommissioningRecord_remarks_feature", "_UI_CommissioningRecord_type"),
				 GarboardPackage.Literals.COMMISSIONING_RECORD__REMARKS,
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
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__INSTRUMENTS);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__PARTIES);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__VESSEL);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__GENERATOR_SET);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__STARTING_BATTERY);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__VENTILATION);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__MOUNTING);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__AC_OUTPUT);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__ALARMS);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__ACCEPTANCES);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__SIGNATURES);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__PHOTOGRAPHS);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__REVISIONS);
			childrenFeatures.add(GarboardPackage.Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES);
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
		String label = ((CommissioningRecord)object).getFormatVersion();
		return label == null || label.length() == 0 ?
			getString("_UI_CommissioningRecord_type") :
			getString("_UI_CommissioningRecord_type") + " " + label;
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

		switch (notification.getFeatureID(CommissioningRecord.class)) {
			case GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION:
			case GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER:
			case GarboardPackage.COMMISSIONING_RECORD__TITLE:
			case GarboardPackage.COMMISSIONING_RECORD__CREATED_ON:
			case GarboardPackage.COMMISSIONING_RECORD__PRACTICES:
			case GarboardPackage.COMMISSIONING_RECORD__REMARKS:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
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
				(GarboardPackage.Literals.COMMISSIONING_RECORD__INSTRUMENTS,
				 GarboardFactory.eINSTANCE.createInstrument()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__PARTIES,
				 GarboardFactory.eINSTANCE.createParty()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__VESSEL,
				 GarboardFactory.eINSTANCE.createVessel()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__GENERATOR_SET,
				 GarboardFactory.eINSTANCE.createGeneratorSet()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__STARTING_BATTERY,
				 GarboardFactory.eINSTANCE.createStartingBattery()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY,
				 GarboardFactory.eINSTANCE.createFuelSupply()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER,
				 GarboardFactory.eINSTANCE.createRawWaterCircuit()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST,
				 GarboardFactory.eINSTANCE.createExhaustRun()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__VENTILATION,
				 GarboardFactory.eINSTANCE.createVentilation()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__MOUNTING,
				 GarboardFactory.eINSTANCE.createMounting()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__AC_OUTPUT,
				 GarboardFactory.eINSTANCE.createAcOutput()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__ALARMS,
				 GarboardFactory.eINSTANCE.createAlarmsAndSafety()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS,
				 GarboardFactory.eINSTANCE.createInspectionAnswer()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL,
				 GarboardFactory.eINSTANCE.createTrial()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP,
				 GarboardFactory.eINSTANCE.createUpkeep()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__ACCEPTANCES,
				 GarboardFactory.eINSTANCE.createAcceptance()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__SIGNATURES,
				 GarboardFactory.eINSTANCE.createSignature()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__PHOTOGRAPHS,
				 GarboardFactory.eINSTANCE.createPhotograph()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__REVISIONS,
				 GarboardFactory.eINSTANCE.createRevision()));

		newChildDescriptors.add
			(createChildParameter
				(GarboardPackage.Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES,
				 GarboardFactory.eINSTANCE.createUnreadEntry()));
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
