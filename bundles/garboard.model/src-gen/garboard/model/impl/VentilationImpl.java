/**
 */
package garboard.model.impl;

import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Ventilation;

import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Ventilation</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.VentilationImpl#getNetVolume <em>Net Volume</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getGrossVolume <em>Gross Volume</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getOpenAreaToAtmosphere <em>Open Area To Atmosphere</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getConnectedOpeningFraction <em>Connected Opening Fraction</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getCompartmentHeight <em>Compartment Height</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBilgeWaterHeight <em>Bilge Water Height</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getDucts <em>Ducts</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBlowerRatedFlow <em>Blower Rated Flow</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBlowerMeasuredFlow <em>Blower Measured Flow</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBlowerLabelAtEachStart <em>Blower Label At Each Start</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBlowerInterlocked <em>Blower Interlocked</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getBlowerIgnitionProtected <em>Blower Ignition Protected</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getSealedFromAccommodation <em>Sealed From Accommodation</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getSupplyFromOutside <em>Supply From Outside</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getSupplyAreaTotal <em>Supply Area Total</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getExhaustAreaTotal <em>Exhaust Area Total</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getNaturalDraught <em>Natural Draught</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getCompartmentTemperature <em>Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getAirInletTemperature <em>Air Inlet Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getDepression <em>Depression</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getDesignAmbient <em>Design Ambient</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getDuctsLowAndHigh <em>Ducts Low And High</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getClearOfExhaustOutlet <em>Clear Of Exhaust Outlet</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getIgnitionProtectedComponents <em>Ignition Protected Components</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getCrankingMotorFitted <em>Cranking Motor Fitted</em>}</li>
 *   <li>{@link garboard.model.impl.VentilationImpl#getFanFlow <em>Fan Flow</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VentilationImpl extends MinimalEObjectImpl.Container implements Ventilation {
	/**
	 * The default value of the '{@link #getNetVolume() <em>Net Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNetVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Volume NET_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNetVolume() <em>Net Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNetVolume()
	 * @generated
	 * @ordered
	 */
	protected Volume netVolume = NET_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrossVolume() <em>Gross Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrossVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Volume GROSS_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrossVolume() <em>Gross Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrossVolume()
	 * @generated
	 * @ordered
	 */
	protected Volume grossVolume = GROSS_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenAreaToAtmosphere() <em>Open Area To Atmosphere</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenAreaToAtmosphere()
	 * @generated
	 * @ordered
	 */
	protected static final Area OPEN_AREA_TO_ATMOSPHERE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenAreaToAtmosphere() <em>Open Area To Atmosphere</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenAreaToAtmosphere()
	 * @generated
	 * @ordered
	 */
	protected Area openAreaToAtmosphere = OPEN_AREA_TO_ATMOSPHERE_EDEFAULT;

	/**
	 * The default value of the '{@link #getConnectedOpeningFraction() <em>Connected Opening Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConnectedOpeningFraction()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio CONNECTED_OPENING_FRACTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConnectedOpeningFraction() <em>Connected Opening Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConnectedOpeningFraction()
	 * @generated
	 * @ordered
	 */
	protected Ratio connectedOpeningFraction = CONNECTED_OPENING_FRACTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getCompartmentHeight() <em>Compartment Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length COMPARTMENT_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCompartmentHeight() <em>Compartment Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentHeight()
	 * @generated
	 * @ordered
	 */
	protected Length compartmentHeight = COMPARTMENT_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getBilgeWaterHeight() <em>Bilge Water Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBilgeWaterHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length BILGE_WATER_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBilgeWaterHeight() <em>Bilge Water Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBilgeWaterHeight()
	 * @generated
	 * @ordered
	 */
	protected Length bilgeWaterHeight = BILGE_WATER_HEIGHT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getDucts() <em>Ducts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDucts()
	 * @generated
	 * @ordered
	 */
	protected EList<AirDuct> ducts;

	/**
	 * The default value of the '{@link #getBlowerRatedFlow() <em>Blower Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow BLOWER_RATED_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlowerRatedFlow() <em>Blower Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow blowerRatedFlow = BLOWER_RATED_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlowerMeasuredFlow() <em>Blower Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerMeasuredFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow BLOWER_MEASURED_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlowerMeasuredFlow() <em>Blower Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerMeasuredFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow blowerMeasuredFlow = BLOWER_MEASURED_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlowerLabelAtEachStart() <em>Blower Label At Each Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerLabelAtEachStart()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BLOWER_LABEL_AT_EACH_START_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBlowerLabelAtEachStart() <em>Blower Label At Each Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerLabelAtEachStart()
	 * @generated
	 * @ordered
	 */
	protected Answer blowerLabelAtEachStart = BLOWER_LABEL_AT_EACH_START_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlowerInterlocked() <em>Blower Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerInterlocked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BLOWER_INTERLOCKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBlowerInterlocked() <em>Blower Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerInterlocked()
	 * @generated
	 * @ordered
	 */
	protected Answer blowerInterlocked = BLOWER_INTERLOCKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlowerIgnitionProtected() <em>Blower Ignition Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerIgnitionProtected()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BLOWER_IGNITION_PROTECTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBlowerIgnitionProtected() <em>Blower Ignition Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlowerIgnitionProtected()
	 * @generated
	 * @ordered
	 */
	protected Answer blowerIgnitionProtected = BLOWER_IGNITION_PROTECTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getSealedFromAccommodation() <em>Sealed From Accommodation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSealedFromAccommodation()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SEALED_FROM_ACCOMMODATION_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSealedFromAccommodation() <em>Sealed From Accommodation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSealedFromAccommodation()
	 * @generated
	 * @ordered
	 */
	protected Answer sealedFromAccommodation = SEALED_FROM_ACCOMMODATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupplyFromOutside() <em>Supply From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplyFromOutside()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SUPPLY_FROM_OUTSIDE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSupplyFromOutside() <em>Supply From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplyFromOutside()
	 * @generated
	 * @ordered
	 */
	protected Answer supplyFromOutside = SUPPLY_FROM_OUTSIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupplyAreaTotal() <em>Supply Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplyAreaTotal()
	 * @generated
	 * @ordered
	 */
	protected static final Area SUPPLY_AREA_TOTAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupplyAreaTotal() <em>Supply Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplyAreaTotal()
	 * @generated
	 * @ordered
	 */
	protected Area supplyAreaTotal = SUPPLY_AREA_TOTAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getExhaustAreaTotal() <em>Exhaust Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustAreaTotal()
	 * @generated
	 * @ordered
	 */
	protected static final Area EXHAUST_AREA_TOTAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExhaustAreaTotal() <em>Exhaust Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustAreaTotal()
	 * @generated
	 * @ordered
	 */
	protected Area exhaustAreaTotal = EXHAUST_AREA_TOTAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getNaturalDraught() <em>Natural Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNaturalDraught()
	 * @generated
	 * @ordered
	 */
	protected static final Answer NATURAL_DRAUGHT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getNaturalDraught() <em>Natural Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNaturalDraught()
	 * @generated
	 * @ordered
	 */
	protected Answer naturalDraught = NATURAL_DRAUGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature OUTSIDE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature outsideTemperature = OUTSIDE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCompartmentTemperature() <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature COMPARTMENT_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCompartmentTemperature() <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature compartmentTemperature = COMPARTMENT_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAirInletTemperature() <em>Air Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirInletTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature AIR_INLET_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAirInletTemperature() <em>Air Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirInletTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature airInletTemperature = AIR_INLET_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDepression() <em>Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepression()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference DEPRESSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDepression() <em>Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepression()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference depression = DEPRESSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignAmbient() <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignAmbient()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature DESIGN_AMBIENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignAmbient() <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignAmbient()
	 * @generated
	 * @ordered
	 */
	protected Temperature designAmbient = DESIGN_AMBIENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDuctsLowAndHigh() <em>Ducts Low And High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDuctsLowAndHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DUCTS_LOW_AND_HIGH_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDuctsLowAndHigh() <em>Ducts Low And High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDuctsLowAndHigh()
	 * @generated
	 * @ordered
	 */
	protected Answer ductsLowAndHigh = DUCTS_LOW_AND_HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearOfExhaustOutlet() <em>Clear Of Exhaust Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearOfExhaustOutlet()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CLEAR_OF_EXHAUST_OUTLET_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getClearOfExhaustOutlet() <em>Clear Of Exhaust Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearOfExhaustOutlet()
	 * @generated
	 * @ordered
	 */
	protected Answer clearOfExhaustOutlet = CLEAR_OF_EXHAUST_OUTLET_EDEFAULT;

	/**
	 * The default value of the '{@link #getIgnitionProtectedComponents() <em>Ignition Protected Components</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIgnitionProtectedComponents()
	 * @generated
	 * @ordered
	 */
	protected static final Answer IGNITION_PROTECTED_COMPONENTS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getIgnitionProtectedComponents() <em>Ignition Protected Components</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIgnitionProtectedComponents()
	 * @generated
	 * @ordered
	 */
	protected Answer ignitionProtectedComponents = IGNITION_PROTECTED_COMPONENTS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrankingMotorFitted() <em>Cranking Motor Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingMotorFitted()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CRANKING_MOTOR_FITTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCrankingMotorFitted() <em>Cranking Motor Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingMotorFitted()
	 * @generated
	 * @ordered
	 */
	protected Answer crankingMotorFitted = CRANKING_MOTOR_FITTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getFanFlow() <em>Fan Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow FAN_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFanFlow() <em>Fan Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow fanFlow = FAN_FLOW_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VentilationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.VENTILATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getNetVolume() {
		return netVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNetVolume(Volume newNetVolume) {
		Volume oldNetVolume = netVolume;
		netVolume = newNetVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__NET_VOLUME, oldNetVolume, netVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getGrossVolume() {
		return grossVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrossVolume(Volume newGrossVolume) {
		Volume oldGrossVolume = grossVolume;
		grossVolume = newGrossVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__GROSS_VOLUME, oldGrossVolume, grossVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getOpenAreaToAtmosphere() {
		return openAreaToAtmosphere;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenAreaToAtmosphere(Area newOpenAreaToAtmosphere) {
		Area oldOpenAreaToAtmosphere = openAreaToAtmosphere;
		openAreaToAtmosphere = newOpenAreaToAtmosphere;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE, oldOpenAreaToAtmosphere, openAreaToAtmosphere));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getConnectedOpeningFraction() {
		return connectedOpeningFraction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConnectedOpeningFraction(Ratio newConnectedOpeningFraction) {
		Ratio oldConnectedOpeningFraction = connectedOpeningFraction;
		connectedOpeningFraction = newConnectedOpeningFraction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION, oldConnectedOpeningFraction, connectedOpeningFraction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getCompartmentHeight() {
		return compartmentHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCompartmentHeight(Length newCompartmentHeight) {
		Length oldCompartmentHeight = compartmentHeight;
		compartmentHeight = newCompartmentHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT, oldCompartmentHeight, compartmentHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBilgeWaterHeight() {
		return bilgeWaterHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBilgeWaterHeight(Length newBilgeWaterHeight) {
		Length oldBilgeWaterHeight = bilgeWaterHeight;
		bilgeWaterHeight = newBilgeWaterHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT, oldBilgeWaterHeight, bilgeWaterHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AirDuct> getDucts() {
		if (ducts == null) {
			ducts = new EObjectContainmentEList<AirDuct>(AirDuct.class, this, GarboardPackage.VENTILATION__DUCTS);
		}
		return ducts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getBlowerRatedFlow() {
		return blowerRatedFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlowerRatedFlow(VolumeFlow newBlowerRatedFlow) {
		VolumeFlow oldBlowerRatedFlow = blowerRatedFlow;
		blowerRatedFlow = newBlowerRatedFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BLOWER_RATED_FLOW, oldBlowerRatedFlow, blowerRatedFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getBlowerMeasuredFlow() {
		return blowerMeasuredFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlowerMeasuredFlow(VolumeFlow newBlowerMeasuredFlow) {
		VolumeFlow oldBlowerMeasuredFlow = blowerMeasuredFlow;
		blowerMeasuredFlow = newBlowerMeasuredFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW, oldBlowerMeasuredFlow, blowerMeasuredFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBlowerLabelAtEachStart() {
		return blowerLabelAtEachStart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlowerLabelAtEachStart(Answer newBlowerLabelAtEachStart) {
		Answer oldBlowerLabelAtEachStart = blowerLabelAtEachStart;
		blowerLabelAtEachStart = newBlowerLabelAtEachStart == null ? BLOWER_LABEL_AT_EACH_START_EDEFAULT : newBlowerLabelAtEachStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START, oldBlowerLabelAtEachStart, blowerLabelAtEachStart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBlowerInterlocked() {
		return blowerInterlocked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlowerInterlocked(Answer newBlowerInterlocked) {
		Answer oldBlowerInterlocked = blowerInterlocked;
		blowerInterlocked = newBlowerInterlocked == null ? BLOWER_INTERLOCKED_EDEFAULT : newBlowerInterlocked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BLOWER_INTERLOCKED, oldBlowerInterlocked, blowerInterlocked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBlowerIgnitionProtected() {
		return blowerIgnitionProtected;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlowerIgnitionProtected(Answer newBlowerIgnitionProtected) {
		Answer oldBlowerIgnitionProtected = blowerIgnitionProtected;
		blowerIgnitionProtected = newBlowerIgnitionProtected == null ? BLOWER_IGNITION_PROTECTED_EDEFAULT : newBlowerIgnitionProtected;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED, oldBlowerIgnitionProtected, blowerIgnitionProtected));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSealedFromAccommodation() {
		return sealedFromAccommodation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSealedFromAccommodation(Answer newSealedFromAccommodation) {
		Answer oldSealedFromAccommodation = sealedFromAccommodation;
		sealedFromAccommodation = newSealedFromAccommodation == null ? SEALED_FROM_ACCOMMODATION_EDEFAULT : newSealedFromAccommodation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION, oldSealedFromAccommodation, sealedFromAccommodation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSupplyFromOutside() {
		return supplyFromOutside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplyFromOutside(Answer newSupplyFromOutside) {
		Answer oldSupplyFromOutside = supplyFromOutside;
		supplyFromOutside = newSupplyFromOutside == null ? SUPPLY_FROM_OUTSIDE_EDEFAULT : newSupplyFromOutside;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE, oldSupplyFromOutside, supplyFromOutside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getSupplyAreaTotal() {
		return supplyAreaTotal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplyAreaTotal(Area newSupplyAreaTotal) {
		Area oldSupplyAreaTotal = supplyAreaTotal;
		supplyAreaTotal = newSupplyAreaTotal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL, oldSupplyAreaTotal, supplyAreaTotal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getExhaustAreaTotal() {
		return exhaustAreaTotal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExhaustAreaTotal(Area newExhaustAreaTotal) {
		Area oldExhaustAreaTotal = exhaustAreaTotal;
		exhaustAreaTotal = newExhaustAreaTotal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL, oldExhaustAreaTotal, exhaustAreaTotal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getNaturalDraught() {
		return naturalDraught;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNaturalDraught(Answer newNaturalDraught) {
		Answer oldNaturalDraught = naturalDraught;
		naturalDraught = newNaturalDraught == null ? NATURAL_DRAUGHT_EDEFAULT : newNaturalDraught;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__NATURAL_DRAUGHT, oldNaturalDraught, naturalDraught));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getOutsideTemperature() {
		return outsideTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutsideTemperature(Temperature newOutsideTemperature) {
		Temperature oldOutsideTemperature = outsideTemperature;
		outsideTemperature = newOutsideTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE, oldOutsideTemperature, outsideTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getCompartmentTemperature() {
		return compartmentTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCompartmentTemperature(Temperature newCompartmentTemperature) {
		Temperature oldCompartmentTemperature = compartmentTemperature;
		compartmentTemperature = newCompartmentTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE, oldCompartmentTemperature, compartmentTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getAirInletTemperature() {
		return airInletTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAirInletTemperature(Temperature newAirInletTemperature) {
		Temperature oldAirInletTemperature = airInletTemperature;
		airInletTemperature = newAirInletTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE, oldAirInletTemperature, airInletTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getDepression() {
		return depression;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepression(PressureDifference newDepression) {
		PressureDifference oldDepression = depression;
		depression = newDepression;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__DEPRESSION, oldDepression, depression));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getDesignAmbient() {
		return designAmbient;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignAmbient(Temperature newDesignAmbient) {
		Temperature oldDesignAmbient = designAmbient;
		designAmbient = newDesignAmbient;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__DESIGN_AMBIENT, oldDesignAmbient, designAmbient));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDuctsLowAndHigh() {
		return ductsLowAndHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDuctsLowAndHigh(Answer newDuctsLowAndHigh) {
		Answer oldDuctsLowAndHigh = ductsLowAndHigh;
		ductsLowAndHigh = newDuctsLowAndHigh == null ? DUCTS_LOW_AND_HIGH_EDEFAULT : newDuctsLowAndHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH, oldDuctsLowAndHigh, ductsLowAndHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getClearOfExhaustOutlet() {
		return clearOfExhaustOutlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearOfExhaustOutlet(Answer newClearOfExhaustOutlet) {
		Answer oldClearOfExhaustOutlet = clearOfExhaustOutlet;
		clearOfExhaustOutlet = newClearOfExhaustOutlet == null ? CLEAR_OF_EXHAUST_OUTLET_EDEFAULT : newClearOfExhaustOutlet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET, oldClearOfExhaustOutlet, clearOfExhaustOutlet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getIgnitionProtectedComponents() {
		return ignitionProtectedComponents;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIgnitionProtectedComponents(Answer newIgnitionProtectedComponents) {
		Answer oldIgnitionProtectedComponents = ignitionProtectedComponents;
		ignitionProtectedComponents = newIgnitionProtectedComponents == null ? IGNITION_PROTECTED_COMPONENTS_EDEFAULT : newIgnitionProtectedComponents;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS, oldIgnitionProtectedComponents, ignitionProtectedComponents));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCrankingMotorFitted() {
		return crankingMotorFitted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingMotorFitted(Answer newCrankingMotorFitted) {
		Answer oldCrankingMotorFitted = crankingMotorFitted;
		crankingMotorFitted = newCrankingMotorFitted == null ? CRANKING_MOTOR_FITTED_EDEFAULT : newCrankingMotorFitted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED, oldCrankingMotorFitted, crankingMotorFitted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getFanFlow() {
		return fanFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFanFlow(VolumeFlow newFanFlow) {
		VolumeFlow oldFanFlow = fanFlow;
		fanFlow = newFanFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VENTILATION__FAN_FLOW, oldFanFlow, fanFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.VENTILATION__DUCTS:
				return ((InternalEList<?>)getDucts()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.VENTILATION__NET_VOLUME:
				return getNetVolume();
			case GarboardPackage.VENTILATION__GROSS_VOLUME:
				return getGrossVolume();
			case GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE:
				return getOpenAreaToAtmosphere();
			case GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION:
				return getConnectedOpeningFraction();
			case GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT:
				return getCompartmentHeight();
			case GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT:
				return getBilgeWaterHeight();
			case GarboardPackage.VENTILATION__DUCTS:
				return getDucts();
			case GarboardPackage.VENTILATION__BLOWER_RATED_FLOW:
				return getBlowerRatedFlow();
			case GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW:
				return getBlowerMeasuredFlow();
			case GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START:
				return getBlowerLabelAtEachStart();
			case GarboardPackage.VENTILATION__BLOWER_INTERLOCKED:
				return getBlowerInterlocked();
			case GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED:
				return getBlowerIgnitionProtected();
			case GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION:
				return getSealedFromAccommodation();
			case GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE:
				return getSupplyFromOutside();
			case GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL:
				return getSupplyAreaTotal();
			case GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL:
				return getExhaustAreaTotal();
			case GarboardPackage.VENTILATION__NATURAL_DRAUGHT:
				return getNaturalDraught();
			case GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE:
				return getOutsideTemperature();
			case GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE:
				return getCompartmentTemperature();
			case GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE:
				return getAirInletTemperature();
			case GarboardPackage.VENTILATION__DEPRESSION:
				return getDepression();
			case GarboardPackage.VENTILATION__DESIGN_AMBIENT:
				return getDesignAmbient();
			case GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH:
				return getDuctsLowAndHigh();
			case GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET:
				return getClearOfExhaustOutlet();
			case GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS:
				return getIgnitionProtectedComponents();
			case GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED:
				return getCrankingMotorFitted();
			case GarboardPackage.VENTILATION__FAN_FLOW:
				return getFanFlow();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.VENTILATION__NET_VOLUME:
				setNetVolume((Volume)newValue);
				return;
			case GarboardPackage.VENTILATION__GROSS_VOLUME:
				setGrossVolume((Volume)newValue);
				return;
			case GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE:
				setOpenAreaToAtmosphere((Area)newValue);
				return;
			case GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION:
				setConnectedOpeningFraction((Ratio)newValue);
				return;
			case GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT:
				setCompartmentHeight((Length)newValue);
				return;
			case GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT:
				setBilgeWaterHeight((Length)newValue);
				return;
			case GarboardPackage.VENTILATION__DUCTS:
				getDucts().clear();
				getDucts().addAll((Collection<? extends AirDuct>)newValue);
				return;
			case GarboardPackage.VENTILATION__BLOWER_RATED_FLOW:
				setBlowerRatedFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW:
				setBlowerMeasuredFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START:
				setBlowerLabelAtEachStart((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__BLOWER_INTERLOCKED:
				setBlowerInterlocked((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED:
				setBlowerIgnitionProtected((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION:
				setSealedFromAccommodation((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE:
				setSupplyFromOutside((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL:
				setSupplyAreaTotal((Area)newValue);
				return;
			case GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL:
				setExhaustAreaTotal((Area)newValue);
				return;
			case GarboardPackage.VENTILATION__NATURAL_DRAUGHT:
				setNaturalDraught((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE:
				setOutsideTemperature((Temperature)newValue);
				return;
			case GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE:
				setCompartmentTemperature((Temperature)newValue);
				return;
			case GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE:
				setAirInletTemperature((Temperature)newValue);
				return;
			case GarboardPackage.VENTILATION__DEPRESSION:
				setDepression((PressureDifference)newValue);
				return;
			case GarboardPackage.VENTILATION__DESIGN_AMBIENT:
				setDesignAmbient((Temperature)newValue);
				return;
			case GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH:
				setDuctsLowAndHigh((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET:
				setClearOfExhaustOutlet((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS:
				setIgnitionProtectedComponents((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED:
				setCrankingMotorFitted((Answer)newValue);
				return;
			case GarboardPackage.VENTILATION__FAN_FLOW:
				setFanFlow((VolumeFlow)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.VENTILATION__NET_VOLUME:
				setNetVolume(NET_VOLUME_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__GROSS_VOLUME:
				setGrossVolume(GROSS_VOLUME_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE:
				setOpenAreaToAtmosphere(OPEN_AREA_TO_ATMOSPHERE_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION:
				setConnectedOpeningFraction(CONNECTED_OPENING_FRACTION_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT:
				setCompartmentHeight(COMPARTMENT_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT:
				setBilgeWaterHeight(BILGE_WATER_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__DUCTS:
				getDucts().clear();
				return;
			case GarboardPackage.VENTILATION__BLOWER_RATED_FLOW:
				setBlowerRatedFlow(BLOWER_RATED_FLOW_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW:
				setBlowerMeasuredFlow(BLOWER_MEASURED_FLOW_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START:
				setBlowerLabelAtEachStart(BLOWER_LABEL_AT_EACH_START_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__BLOWER_INTERLOCKED:
				setBlowerInterlocked(BLOWER_INTERLOCKED_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED:
				setBlowerIgnitionProtected(BLOWER_IGNITION_PROTECTED_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION:
				setSealedFromAccommodation(SEALED_FROM_ACCOMMODATION_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE:
				setSupplyFromOutside(SUPPLY_FROM_OUTSIDE_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL:
				setSupplyAreaTotal(SUPPLY_AREA_TOTAL_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL:
				setExhaustAreaTotal(EXHAUST_AREA_TOTAL_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__NATURAL_DRAUGHT:
				setNaturalDraught(NATURAL_DRAUGHT_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE:
				setOutsideTemperature(OUTSIDE_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE:
				setCompartmentTemperature(COMPARTMENT_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE:
				setAirInletTemperature(AIR_INLET_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__DEPRESSION:
				setDepression(DEPRESSION_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__DESIGN_AMBIENT:
				setDesignAmbient(DESIGN_AMBIENT_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH:
				setDuctsLowAndHigh(DUCTS_LOW_AND_HIGH_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET:
				setClearOfExhaustOutlet(CLEAR_OF_EXHAUST_OUTLET_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS:
				setIgnitionProtectedComponents(IGNITION_PROTECTED_COMPONENTS_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED:
				setCrankingMotorFitted(CRANKING_MOTOR_FITTED_EDEFAULT);
				return;
			case GarboardPackage.VENTILATION__FAN_FLOW:
				setFanFlow(FAN_FLOW_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.VENTILATION__NET_VOLUME:
				return NET_VOLUME_EDEFAULT == null ? netVolume != null : !NET_VOLUME_EDEFAULT.equals(netVolume);
			case GarboardPackage.VENTILATION__GROSS_VOLUME:
				return GROSS_VOLUME_EDEFAULT == null ? grossVolume != null : !GROSS_VOLUME_EDEFAULT.equals(grossVolume);
			case GarboardPackage.VENTILATION__OPEN_AREA_TO_ATMOSPHERE:
				return OPEN_AREA_TO_ATMOSPHERE_EDEFAULT == null ? openAreaToAtmosphere != null : !OPEN_AREA_TO_ATMOSPHERE_EDEFAULT.equals(openAreaToAtmosphere);
			case GarboardPackage.VENTILATION__CONNECTED_OPENING_FRACTION:
				return CONNECTED_OPENING_FRACTION_EDEFAULT == null ? connectedOpeningFraction != null : !CONNECTED_OPENING_FRACTION_EDEFAULT.equals(connectedOpeningFraction);
			case GarboardPackage.VENTILATION__COMPARTMENT_HEIGHT:
				return COMPARTMENT_HEIGHT_EDEFAULT == null ? compartmentHeight != null : !COMPARTMENT_HEIGHT_EDEFAULT.equals(compartmentHeight);
			case GarboardPackage.VENTILATION__BILGE_WATER_HEIGHT:
				return BILGE_WATER_HEIGHT_EDEFAULT == null ? bilgeWaterHeight != null : !BILGE_WATER_HEIGHT_EDEFAULT.equals(bilgeWaterHeight);
			case GarboardPackage.VENTILATION__DUCTS:
				return ducts != null && !ducts.isEmpty();
			case GarboardPackage.VENTILATION__BLOWER_RATED_FLOW:
				return BLOWER_RATED_FLOW_EDEFAULT == null ? blowerRatedFlow != null : !BLOWER_RATED_FLOW_EDEFAULT.equals(blowerRatedFlow);
			case GarboardPackage.VENTILATION__BLOWER_MEASURED_FLOW:
				return BLOWER_MEASURED_FLOW_EDEFAULT == null ? blowerMeasuredFlow != null : !BLOWER_MEASURED_FLOW_EDEFAULT.equals(blowerMeasuredFlow);
			case GarboardPackage.VENTILATION__BLOWER_LABEL_AT_EACH_START:
				return blowerLabelAtEachStart != BLOWER_LABEL_AT_EACH_START_EDEFAULT;
			case GarboardPackage.VENTILATION__BLOWER_INTERLOCKED:
				return blowerInterlocked != BLOWER_INTERLOCKED_EDEFAULT;
			case GarboardPackage.VENTILATION__BLOWER_IGNITION_PROTECTED:
				return blowerIgnitionProtected != BLOWER_IGNITION_PROTECTED_EDEFAULT;
			case GarboardPackage.VENTILATION__SEALED_FROM_ACCOMMODATION:
				return sealedFromAccommodation != SEALED_FROM_ACCOMMODATION_EDEFAULT;
			case GarboardPackage.VENTILATION__SUPPLY_FROM_OUTSIDE:
				return supplyFromOutside != SUPPLY_FROM_OUTSIDE_EDEFAULT;
			case GarboardPackage.VENTILATION__SUPPLY_AREA_TOTAL:
				return SUPPLY_AREA_TOTAL_EDEFAULT == null ? supplyAreaTotal != null : !SUPPLY_AREA_TOTAL_EDEFAULT.equals(supplyAreaTotal);
			case GarboardPackage.VENTILATION__EXHAUST_AREA_TOTAL:
				return EXHAUST_AREA_TOTAL_EDEFAULT == null ? exhaustAreaTotal != null : !EXHAUST_AREA_TOTAL_EDEFAULT.equals(exhaustAreaTotal);
			case GarboardPackage.VENTILATION__NATURAL_DRAUGHT:
				return naturalDraught != NATURAL_DRAUGHT_EDEFAULT;
			case GarboardPackage.VENTILATION__OUTSIDE_TEMPERATURE:
				return OUTSIDE_TEMPERATURE_EDEFAULT == null ? outsideTemperature != null : !OUTSIDE_TEMPERATURE_EDEFAULT.equals(outsideTemperature);
			case GarboardPackage.VENTILATION__COMPARTMENT_TEMPERATURE:
				return COMPARTMENT_TEMPERATURE_EDEFAULT == null ? compartmentTemperature != null : !COMPARTMENT_TEMPERATURE_EDEFAULT.equals(compartmentTemperature);
			case GarboardPackage.VENTILATION__AIR_INLET_TEMPERATURE:
				return AIR_INLET_TEMPERATURE_EDEFAULT == null ? airInletTemperature != null : !AIR_INLET_TEMPERATURE_EDEFAULT.equals(airInletTemperature);
			case GarboardPackage.VENTILATION__DEPRESSION:
				return DEPRESSION_EDEFAULT == null ? depression != null : !DEPRESSION_EDEFAULT.equals(depression);
			case GarboardPackage.VENTILATION__DESIGN_AMBIENT:
				return DESIGN_AMBIENT_EDEFAULT == null ? designAmbient != null : !DESIGN_AMBIENT_EDEFAULT.equals(designAmbient);
			case GarboardPackage.VENTILATION__DUCTS_LOW_AND_HIGH:
				return ductsLowAndHigh != DUCTS_LOW_AND_HIGH_EDEFAULT;
			case GarboardPackage.VENTILATION__CLEAR_OF_EXHAUST_OUTLET:
				return clearOfExhaustOutlet != CLEAR_OF_EXHAUST_OUTLET_EDEFAULT;
			case GarboardPackage.VENTILATION__IGNITION_PROTECTED_COMPONENTS:
				return ignitionProtectedComponents != IGNITION_PROTECTED_COMPONENTS_EDEFAULT;
			case GarboardPackage.VENTILATION__CRANKING_MOTOR_FITTED:
				return crankingMotorFitted != CRANKING_MOTOR_FITTED_EDEFAULT;
			case GarboardPackage.VENTILATION__FAN_FLOW:
				return FAN_FLOW_EDEFAULT == null ? fanFlow != null : !FAN_FLOW_EDEFAULT.equals(fanFlow);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (netVolume: ");
		result.append(netVolume);
		result.append(", grossVolume: ");
		result.append(grossVolume);
		result.append(", openAreaToAtmosphere: ");
		result.append(openAreaToAtmosphere);
		result.append(", connectedOpeningFraction: ");
		result.append(connectedOpeningFraction);
		result.append(", compartmentHeight: ");
		result.append(compartmentHeight);
		result.append(", bilgeWaterHeight: ");
		result.append(bilgeWaterHeight);
		result.append(", blowerRatedFlow: ");
		result.append(blowerRatedFlow);
		result.append(", blowerMeasuredFlow: ");
		result.append(blowerMeasuredFlow);
		result.append(", blowerLabelAtEachStart: ");
		result.append(blowerLabelAtEachStart);
		result.append(", blowerInterlocked: ");
		result.append(blowerInterlocked);
		result.append(", blowerIgnitionProtected: ");
		result.append(blowerIgnitionProtected);
		result.append(", sealedFromAccommodation: ");
		result.append(sealedFromAccommodation);
		result.append(", supplyFromOutside: ");
		result.append(supplyFromOutside);
		result.append(", supplyAreaTotal: ");
		result.append(supplyAreaTotal);
		result.append(", exhaustAreaTotal: ");
		result.append(exhaustAreaTotal);
		result.append(", naturalDraught: ");
		result.append(naturalDraught);
		result.append(", outsideTemperature: ");
		result.append(outsideTemperature);
		result.append(", compartmentTemperature: ");
		result.append(compartmentTemperature);
		result.append(", airInletTemperature: ");
		result.append(airInletTemperature);
		result.append(", depression: ");
		result.append(depression);
		result.append(", designAmbient: ");
		result.append(designAmbient);
		result.append(", ductsLowAndHigh: ");
		result.append(ductsLowAndHigh);
		result.append(", clearOfExhaustOutlet: ");
		result.append(clearOfExhaustOutlet);
		result.append(", ignitionProtectedComponents: ");
		result.append(ignitionProtectedComponents);
		result.append(", crankingMotorFitted: ");
		result.append(crankingMotorFitted);
		result.append(", fanFlow: ");
		result.append(fanFlow);
		result.append(')');
		return result.toString();
	}

} //VentilationImpl
