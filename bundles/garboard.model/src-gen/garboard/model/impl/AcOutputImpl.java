/**
 */
package garboard.model.impl;

import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.ElectricalLoad;
import garboard.model.GarboardPackage;
import garboard.model.NeutralBond;
import garboard.model.ProtectionKind;
import garboard.model.TestResult;
import garboard.model.TransferSwitch;
import garboard.model.TripCurve;

import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.Length;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

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
 * An implementation of the model object '<em><b>Ac Output</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getTransfer <em>Transfer</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectionDevice <em>Protection Device</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectionRating <em>Protection Rating</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getTripCurve <em>Trip Curve</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectionPoles <em>Protection Poles</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectionDistance <em>Protection Distance</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getResidualCurrentDevice <em>Residual Current Device</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getResidualTripCurrent <em>Residual Trip Current</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getResidualTripTime <em>Residual Trip Time</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getOutputCable <em>Output Cable</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getNeutralBond <em>Neutral Bond</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectiveConductorSize <em>Protective Conductor Size</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getProtectiveConductorResistance <em>Protective Conductor Resistance</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getNeutralGroundConductorSize <em>Neutral Ground Conductor Size</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getInsulationResistance <em>Insulation Resistance</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getInsulationTemperature <em>Insulation Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getPolarityIndicator <em>Polarity Indicator</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getPolarityTested <em>Polarity Tested</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getVoltmeter <em>Voltmeter</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getAmmeter <em>Ammeter</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getFrequencyMeter <em>Frequency Meter</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getNamePlateReadable <em>Name Plate Readable</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getEarthedPartsBonded <em>Earthed Parts Bonded</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getGroundDetection <em>Ground Detection</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getLoads <em>Loads</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getNoLoadVoltage <em>No Load Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getNoLoadFrequency <em>No Load Frequency</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getLegACurrent <em>Leg ACurrent</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getLegBCurrent <em>Leg BCurrent</em>}</li>
 *   <li>{@link garboard.model.impl.AcOutputImpl#getShoreInletResidualDevice <em>Shore Inlet Residual Device</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AcOutputImpl extends MinimalEObjectImpl.Container implements AcOutput {
	/**
	 * The cached value of the '{@link #getTransfer() <em>Transfer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransfer()
	 * @generated
	 * @ordered
	 */
	protected TransferSwitch transfer;

	/**
	 * The default value of the '{@link #getProtectionDevice() <em>Protection Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDevice()
	 * @generated
	 * @ordered
	 */
	protected static final ProtectionKind PROTECTION_DEVICE_EDEFAULT = ProtectionKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getProtectionDevice() <em>Protection Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDevice()
	 * @generated
	 * @ordered
	 */
	protected ProtectionKind protectionDevice = PROTECTION_DEVICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectionRating() <em>Protection Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionRating()
	 * @generated
	 * @ordered
	 */
	protected static final Current PROTECTION_RATING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectionRating() <em>Protection Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionRating()
	 * @generated
	 * @ordered
	 */
	protected Current protectionRating = PROTECTION_RATING_EDEFAULT;

	/**
	 * The default value of the '{@link #getTripCurve() <em>Trip Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTripCurve()
	 * @generated
	 * @ordered
	 */
	protected static final TripCurve TRIP_CURVE_EDEFAULT = TripCurve.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getTripCurve() <em>Trip Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTripCurve()
	 * @generated
	 * @ordered
	 */
	protected TripCurve tripCurve = TRIP_CURVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectionPoles() <em>Protection Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionPoles()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PROTECTION_POLES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectionPoles() <em>Protection Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionPoles()
	 * @generated
	 * @ordered
	 */
	protected Integer protectionPoles = PROTECTION_POLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectionDistance() <em>Protection Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDistance()
	 * @generated
	 * @ordered
	 */
	protected static final Length PROTECTION_DISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectionDistance() <em>Protection Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDistance()
	 * @generated
	 * @ordered
	 */
	protected Length protectionDistance = PROTECTION_DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getResidualCurrentDevice() <em>Residual Current Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualCurrentDevice()
	 * @generated
	 * @ordered
	 */
	protected static final Answer RESIDUAL_CURRENT_DEVICE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getResidualCurrentDevice() <em>Residual Current Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualCurrentDevice()
	 * @generated
	 * @ordered
	 */
	protected Answer residualCurrentDevice = RESIDUAL_CURRENT_DEVICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getResidualTripCurrent() <em>Residual Trip Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualTripCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current RESIDUAL_TRIP_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getResidualTripCurrent() <em>Residual Trip Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualTripCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current residualTripCurrent = RESIDUAL_TRIP_CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getResidualTripTime() <em>Residual Trip Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualTripTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan RESIDUAL_TRIP_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getResidualTripTime() <em>Residual Trip Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidualTripTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan residualTripTime = RESIDUAL_TRIP_TIME_EDEFAULT;

	/**
	 * The cached value of the '{@link #getOutputCable() <em>Output Cable</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutputCable()
	 * @generated
	 * @ordered
	 */
	protected CableRun outputCable;

	/**
	 * The default value of the '{@link #getNeutralBond() <em>Neutral Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeutralBond()
	 * @generated
	 * @ordered
	 */
	protected static final NeutralBond NEUTRAL_BOND_EDEFAULT = NeutralBond.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getNeutralBond() <em>Neutral Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeutralBond()
	 * @generated
	 * @ordered
	 */
	protected NeutralBond neutralBond = NEUTRAL_BOND_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectiveConductorSize() <em>Protective Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectiveConductorSize()
	 * @generated
	 * @ordered
	 */
	protected static final String PROTECTIVE_CONDUCTOR_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectiveConductorSize() <em>Protective Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectiveConductorSize()
	 * @generated
	 * @ordered
	 */
	protected String protectiveConductorSize = PROTECTIVE_CONDUCTOR_SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectiveConductorResistance() <em>Protective Conductor Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectiveConductorResistance()
	 * @generated
	 * @ordered
	 */
	protected static final Resistance PROTECTIVE_CONDUCTOR_RESISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectiveConductorResistance() <em>Protective Conductor Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectiveConductorResistance()
	 * @generated
	 * @ordered
	 */
	protected Resistance protectiveConductorResistance = PROTECTIVE_CONDUCTOR_RESISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNeutralGroundConductorSize() <em>Neutral Ground Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeutralGroundConductorSize()
	 * @generated
	 * @ordered
	 */
	protected static final String NEUTRAL_GROUND_CONDUCTOR_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNeutralGroundConductorSize() <em>Neutral Ground Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeutralGroundConductorSize()
	 * @generated
	 * @ordered
	 */
	protected String neutralGroundConductorSize = NEUTRAL_GROUND_CONDUCTOR_SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsulationResistance() <em>Insulation Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulationResistance()
	 * @generated
	 * @ordered
	 */
	protected static final Resistance INSULATION_RESISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInsulationResistance() <em>Insulation Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulationResistance()
	 * @generated
	 * @ordered
	 */
	protected Resistance insulationResistance = INSULATION_RESISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsulationTemperature() <em>Insulation Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulationTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature INSULATION_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInsulationTemperature() <em>Insulation Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulationTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature insulationTemperature = INSULATION_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPolarityIndicator() <em>Polarity Indicator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPolarityIndicator()
	 * @generated
	 * @ordered
	 */
	protected static final Answer POLARITY_INDICATOR_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPolarityIndicator() <em>Polarity Indicator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPolarityIndicator()
	 * @generated
	 * @ordered
	 */
	protected Answer polarityIndicator = POLARITY_INDICATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getPolarityTested() <em>Polarity Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPolarityTested()
	 * @generated
	 * @ordered
	 */
	protected static final TestResult POLARITY_TESTED_EDEFAULT = TestResult.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPolarityTested() <em>Polarity Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPolarityTested()
	 * @generated
	 * @ordered
	 */
	protected TestResult polarityTested = POLARITY_TESTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getVoltmeter() <em>Voltmeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltmeter()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VOLTMETER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVoltmeter() <em>Voltmeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltmeter()
	 * @generated
	 * @ordered
	 */
	protected Answer voltmeter = VOLTMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getAmmeter() <em>Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmmeter()
	 * @generated
	 * @ordered
	 */
	protected static final Answer AMMETER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAmmeter() <em>Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmmeter()
	 * @generated
	 * @ordered
	 */
	protected Answer ammeter = AMMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrequencyMeter() <em>Frequency Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrequencyMeter()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FREQUENCY_METER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFrequencyMeter() <em>Frequency Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrequencyMeter()
	 * @generated
	 * @ordered
	 */
	protected Answer frequencyMeter = FREQUENCY_METER_EDEFAULT;

	/**
	 * The default value of the '{@link #getNamePlateReadable() <em>Name Plate Readable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNamePlateReadable()
	 * @generated
	 * @ordered
	 */
	protected static final Answer NAME_PLATE_READABLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getNamePlateReadable() <em>Name Plate Readable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNamePlateReadable()
	 * @generated
	 * @ordered
	 */
	protected Answer namePlateReadable = NAME_PLATE_READABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEarthedPartsBonded() <em>Earthed Parts Bonded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEarthedPartsBonded()
	 * @generated
	 * @ordered
	 */
	protected static final Answer EARTHED_PARTS_BONDED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getEarthedPartsBonded() <em>Earthed Parts Bonded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEarthedPartsBonded()
	 * @generated
	 * @ordered
	 */
	protected Answer earthedPartsBonded = EARTHED_PARTS_BONDED_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroundDetection() <em>Ground Detection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundDetection()
	 * @generated
	 * @ordered
	 */
	protected static final Answer GROUND_DETECTION_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getGroundDetection() <em>Ground Detection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundDetection()
	 * @generated
	 * @ordered
	 */
	protected Answer groundDetection = GROUND_DETECTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLoads() <em>Loads</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoads()
	 * @generated
	 * @ordered
	 */
	protected EList<ElectricalLoad> loads;

	/**
	 * The default value of the '{@link #getNoLoadVoltage() <em>No Load Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoLoadVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage NO_LOAD_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNoLoadVoltage() <em>No Load Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoLoadVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage noLoadVoltage = NO_LOAD_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNoLoadFrequency() <em>No Load Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoLoadFrequency()
	 * @generated
	 * @ordered
	 */
	protected static final Frequency NO_LOAD_FREQUENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNoLoadFrequency() <em>No Load Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoLoadFrequency()
	 * @generated
	 * @ordered
	 */
	protected Frequency noLoadFrequency = NO_LOAD_FREQUENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLegACurrent() <em>Leg ACurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegACurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current LEG_ACURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLegACurrent() <em>Leg ACurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegACurrent()
	 * @generated
	 * @ordered
	 */
	protected Current legACurrent = LEG_ACURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLegBCurrent() <em>Leg BCurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegBCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current LEG_BCURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLegBCurrent() <em>Leg BCurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegBCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current legBCurrent = LEG_BCURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getShoreInletResidualDevice() <em>Shore Inlet Residual Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShoreInletResidualDevice()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SHORE_INLET_RESIDUAL_DEVICE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getShoreInletResidualDevice() <em>Shore Inlet Residual Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShoreInletResidualDevice()
	 * @generated
	 * @ordered
	 */
	protected Answer shoreInletResidualDevice = SHORE_INLET_RESIDUAL_DEVICE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AcOutputImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.AC_OUTPUT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TransferSwitch getTransfer() {
		return transfer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetTransfer(TransferSwitch newTransfer, NotificationChain msgs) {
		TransferSwitch oldTransfer = transfer;
		transfer = newTransfer;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__TRANSFER, oldTransfer, newTransfer);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTransfer(TransferSwitch newTransfer) {
		if (newTransfer != transfer) {
			NotificationChain msgs = null;
			if (transfer != null)
				msgs = ((InternalEObject)transfer).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.AC_OUTPUT__TRANSFER, null, msgs);
			if (newTransfer != null)
				msgs = ((InternalEObject)newTransfer).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.AC_OUTPUT__TRANSFER, null, msgs);
			msgs = basicSetTransfer(newTransfer, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__TRANSFER, newTransfer, newTransfer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProtectionKind getProtectionDevice() {
		return protectionDevice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionDevice(ProtectionKind newProtectionDevice) {
		ProtectionKind oldProtectionDevice = protectionDevice;
		protectionDevice = newProtectionDevice == null ? PROTECTION_DEVICE_EDEFAULT : newProtectionDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE, oldProtectionDevice, protectionDevice));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getProtectionRating() {
		return protectionRating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionRating(Current newProtectionRating) {
		Current oldProtectionRating = protectionRating;
		protectionRating = newProtectionRating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTION_RATING, oldProtectionRating, protectionRating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TripCurve getTripCurve() {
		return tripCurve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTripCurve(TripCurve newTripCurve) {
		TripCurve oldTripCurve = tripCurve;
		tripCurve = newTripCurve == null ? TRIP_CURVE_EDEFAULT : newTripCurve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__TRIP_CURVE, oldTripCurve, tripCurve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getProtectionPoles() {
		return protectionPoles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionPoles(Integer newProtectionPoles) {
		Integer oldProtectionPoles = protectionPoles;
		protectionPoles = newProtectionPoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTION_POLES, oldProtectionPoles, protectionPoles));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getProtectionDistance() {
		return protectionDistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionDistance(Length newProtectionDistance) {
		Length oldProtectionDistance = protectionDistance;
		protectionDistance = newProtectionDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE, oldProtectionDistance, protectionDistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getResidualCurrentDevice() {
		return residualCurrentDevice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidualCurrentDevice(Answer newResidualCurrentDevice) {
		Answer oldResidualCurrentDevice = residualCurrentDevice;
		residualCurrentDevice = newResidualCurrentDevice == null ? RESIDUAL_CURRENT_DEVICE_EDEFAULT : newResidualCurrentDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE, oldResidualCurrentDevice, residualCurrentDevice));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getResidualTripCurrent() {
		return residualTripCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidualTripCurrent(Current newResidualTripCurrent) {
		Current oldResidualTripCurrent = residualTripCurrent;
		residualTripCurrent = newResidualTripCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT, oldResidualTripCurrent, residualTripCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getResidualTripTime() {
		return residualTripTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidualTripTime(TimeSpan newResidualTripTime) {
		TimeSpan oldResidualTripTime = residualTripTime;
		residualTripTime = newResidualTripTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME, oldResidualTripTime, residualTripTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CableRun getOutputCable() {
		return outputCable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOutputCable(CableRun newOutputCable, NotificationChain msgs) {
		CableRun oldOutputCable = outputCable;
		outputCable = newOutputCable;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__OUTPUT_CABLE, oldOutputCable, newOutputCable);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutputCable(CableRun newOutputCable) {
		if (newOutputCable != outputCable) {
			NotificationChain msgs = null;
			if (outputCable != null)
				msgs = ((InternalEObject)outputCable).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.AC_OUTPUT__OUTPUT_CABLE, null, msgs);
			if (newOutputCable != null)
				msgs = ((InternalEObject)newOutputCable).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.AC_OUTPUT__OUTPUT_CABLE, null, msgs);
			msgs = basicSetOutputCable(newOutputCable, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__OUTPUT_CABLE, newOutputCable, newOutputCable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NeutralBond getNeutralBond() {
		return neutralBond;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeutralBond(NeutralBond newNeutralBond) {
		NeutralBond oldNeutralBond = neutralBond;
		neutralBond = newNeutralBond == null ? NEUTRAL_BOND_EDEFAULT : newNeutralBond;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__NEUTRAL_BOND, oldNeutralBond, neutralBond));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProtectiveConductorSize() {
		return protectiveConductorSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectiveConductorSize(String newProtectiveConductorSize) {
		String oldProtectiveConductorSize = protectiveConductorSize;
		protectiveConductorSize = newProtectiveConductorSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE, oldProtectiveConductorSize, protectiveConductorSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Resistance getProtectiveConductorResistance() {
		return protectiveConductorResistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectiveConductorResistance(Resistance newProtectiveConductorResistance) {
		Resistance oldProtectiveConductorResistance = protectiveConductorResistance;
		protectiveConductorResistance = newProtectiveConductorResistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE, oldProtectiveConductorResistance, protectiveConductorResistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNeutralGroundConductorSize() {
		return neutralGroundConductorSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeutralGroundConductorSize(String newNeutralGroundConductorSize) {
		String oldNeutralGroundConductorSize = neutralGroundConductorSize;
		neutralGroundConductorSize = newNeutralGroundConductorSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE, oldNeutralGroundConductorSize, neutralGroundConductorSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Resistance getInsulationResistance() {
		return insulationResistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsulationResistance(Resistance newInsulationResistance) {
		Resistance oldInsulationResistance = insulationResistance;
		insulationResistance = newInsulationResistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE, oldInsulationResistance, insulationResistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getInsulationTemperature() {
		return insulationTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsulationTemperature(Temperature newInsulationTemperature) {
		Temperature oldInsulationTemperature = insulationTemperature;
		insulationTemperature = newInsulationTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE, oldInsulationTemperature, insulationTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPolarityIndicator() {
		return polarityIndicator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPolarityIndicator(Answer newPolarityIndicator) {
		Answer oldPolarityIndicator = polarityIndicator;
		polarityIndicator = newPolarityIndicator == null ? POLARITY_INDICATOR_EDEFAULT : newPolarityIndicator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR, oldPolarityIndicator, polarityIndicator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestResult getPolarityTested() {
		return polarityTested;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPolarityTested(TestResult newPolarityTested) {
		TestResult oldPolarityTested = polarityTested;
		polarityTested = newPolarityTested == null ? POLARITY_TESTED_EDEFAULT : newPolarityTested;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__POLARITY_TESTED, oldPolarityTested, polarityTested));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVoltmeter() {
		return voltmeter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVoltmeter(Answer newVoltmeter) {
		Answer oldVoltmeter = voltmeter;
		voltmeter = newVoltmeter == null ? VOLTMETER_EDEFAULT : newVoltmeter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__VOLTMETER, oldVoltmeter, voltmeter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAmmeter() {
		return ammeter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmmeter(Answer newAmmeter) {
		Answer oldAmmeter = ammeter;
		ammeter = newAmmeter == null ? AMMETER_EDEFAULT : newAmmeter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__AMMETER, oldAmmeter, ammeter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFrequencyMeter() {
		return frequencyMeter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrequencyMeter(Answer newFrequencyMeter) {
		Answer oldFrequencyMeter = frequencyMeter;
		frequencyMeter = newFrequencyMeter == null ? FREQUENCY_METER_EDEFAULT : newFrequencyMeter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__FREQUENCY_METER, oldFrequencyMeter, frequencyMeter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getNamePlateReadable() {
		return namePlateReadable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNamePlateReadable(Answer newNamePlateReadable) {
		Answer oldNamePlateReadable = namePlateReadable;
		namePlateReadable = newNamePlateReadable == null ? NAME_PLATE_READABLE_EDEFAULT : newNamePlateReadable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE, oldNamePlateReadable, namePlateReadable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getEarthedPartsBonded() {
		return earthedPartsBonded;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEarthedPartsBonded(Answer newEarthedPartsBonded) {
		Answer oldEarthedPartsBonded = earthedPartsBonded;
		earthedPartsBonded = newEarthedPartsBonded == null ? EARTHED_PARTS_BONDED_EDEFAULT : newEarthedPartsBonded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED, oldEarthedPartsBonded, earthedPartsBonded));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getGroundDetection() {
		return groundDetection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroundDetection(Answer newGroundDetection) {
		Answer oldGroundDetection = groundDetection;
		groundDetection = newGroundDetection == null ? GROUND_DETECTION_EDEFAULT : newGroundDetection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__GROUND_DETECTION, oldGroundDetection, groundDetection));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ElectricalLoad> getLoads() {
		if (loads == null) {
			loads = new EObjectContainmentEList<ElectricalLoad>(ElectricalLoad.class, this, GarboardPackage.AC_OUTPUT__LOADS);
		}
		return loads;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getNoLoadVoltage() {
		return noLoadVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNoLoadVoltage(Voltage newNoLoadVoltage) {
		Voltage oldNoLoadVoltage = noLoadVoltage;
		noLoadVoltage = newNoLoadVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE, oldNoLoadVoltage, noLoadVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Frequency getNoLoadFrequency() {
		return noLoadFrequency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNoLoadFrequency(Frequency newNoLoadFrequency) {
		Frequency oldNoLoadFrequency = noLoadFrequency;
		noLoadFrequency = newNoLoadFrequency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY, oldNoLoadFrequency, noLoadFrequency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getLegACurrent() {
		return legACurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLegACurrent(Current newLegACurrent) {
		Current oldLegACurrent = legACurrent;
		legACurrent = newLegACurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__LEG_ACURRENT, oldLegACurrent, legACurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getLegBCurrent() {
		return legBCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLegBCurrent(Current newLegBCurrent) {
		Current oldLegBCurrent = legBCurrent;
		legBCurrent = newLegBCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__LEG_BCURRENT, oldLegBCurrent, legBCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getShoreInletResidualDevice() {
		return shoreInletResidualDevice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShoreInletResidualDevice(Answer newShoreInletResidualDevice) {
		Answer oldShoreInletResidualDevice = shoreInletResidualDevice;
		shoreInletResidualDevice = newShoreInletResidualDevice == null ? SHORE_INLET_RESIDUAL_DEVICE_EDEFAULT : newShoreInletResidualDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE, oldShoreInletResidualDevice, shoreInletResidualDevice));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.AC_OUTPUT__TRANSFER:
				return basicSetTransfer(null, msgs);
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
				return basicSetOutputCable(null, msgs);
			case GarboardPackage.AC_OUTPUT__LOADS:
				return ((InternalEList<?>)getLoads()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.AC_OUTPUT__TRANSFER:
				return getTransfer();
			case GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE:
				return getProtectionDevice();
			case GarboardPackage.AC_OUTPUT__PROTECTION_RATING:
				return getProtectionRating();
			case GarboardPackage.AC_OUTPUT__TRIP_CURVE:
				return getTripCurve();
			case GarboardPackage.AC_OUTPUT__PROTECTION_POLES:
				return getProtectionPoles();
			case GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE:
				return getProtectionDistance();
			case GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE:
				return getResidualCurrentDevice();
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT:
				return getResidualTripCurrent();
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME:
				return getResidualTripTime();
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
				return getOutputCable();
			case GarboardPackage.AC_OUTPUT__NEUTRAL_BOND:
				return getNeutralBond();
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE:
				return getProtectiveConductorSize();
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE:
				return getProtectiveConductorResistance();
			case GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE:
				return getNeutralGroundConductorSize();
			case GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE:
				return getInsulationResistance();
			case GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE:
				return getInsulationTemperature();
			case GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR:
				return getPolarityIndicator();
			case GarboardPackage.AC_OUTPUT__POLARITY_TESTED:
				return getPolarityTested();
			case GarboardPackage.AC_OUTPUT__VOLTMETER:
				return getVoltmeter();
			case GarboardPackage.AC_OUTPUT__AMMETER:
				return getAmmeter();
			case GarboardPackage.AC_OUTPUT__FREQUENCY_METER:
				return getFrequencyMeter();
			case GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE:
				return getNamePlateReadable();
			case GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED:
				return getEarthedPartsBonded();
			case GarboardPackage.AC_OUTPUT__GROUND_DETECTION:
				return getGroundDetection();
			case GarboardPackage.AC_OUTPUT__LOADS:
				return getLoads();
			case GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE:
				return getNoLoadVoltage();
			case GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY:
				return getNoLoadFrequency();
			case GarboardPackage.AC_OUTPUT__LEG_ACURRENT:
				return getLegACurrent();
			case GarboardPackage.AC_OUTPUT__LEG_BCURRENT:
				return getLegBCurrent();
			case GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE:
				return getShoreInletResidualDevice();
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
			case GarboardPackage.AC_OUTPUT__TRANSFER:
				setTransfer((TransferSwitch)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE:
				setProtectionDevice((ProtectionKind)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_RATING:
				setProtectionRating((Current)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__TRIP_CURVE:
				setTripCurve((TripCurve)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_POLES:
				setProtectionPoles((Integer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE:
				setProtectionDistance((Length)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE:
				setResidualCurrentDevice((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT:
				setResidualTripCurrent((Current)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME:
				setResidualTripTime((TimeSpan)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
				setOutputCable((CableRun)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__NEUTRAL_BOND:
				setNeutralBond((NeutralBond)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE:
				setProtectiveConductorSize((String)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE:
				setProtectiveConductorResistance((Resistance)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE:
				setNeutralGroundConductorSize((String)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE:
				setInsulationResistance((Resistance)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE:
				setInsulationTemperature((Temperature)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR:
				setPolarityIndicator((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__POLARITY_TESTED:
				setPolarityTested((TestResult)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__VOLTMETER:
				setVoltmeter((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__AMMETER:
				setAmmeter((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__FREQUENCY_METER:
				setFrequencyMeter((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE:
				setNamePlateReadable((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED:
				setEarthedPartsBonded((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__GROUND_DETECTION:
				setGroundDetection((Answer)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__LOADS:
				getLoads().clear();
				getLoads().addAll((Collection<? extends ElectricalLoad>)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE:
				setNoLoadVoltage((Voltage)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY:
				setNoLoadFrequency((Frequency)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__LEG_ACURRENT:
				setLegACurrent((Current)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__LEG_BCURRENT:
				setLegBCurrent((Current)newValue);
				return;
			case GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE:
				setShoreInletResidualDevice((Answer)newValue);
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
			case GarboardPackage.AC_OUTPUT__TRANSFER:
				setTransfer((TransferSwitch)null);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE:
				setProtectionDevice(PROTECTION_DEVICE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_RATING:
				setProtectionRating(PROTECTION_RATING_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__TRIP_CURVE:
				setTripCurve(TRIP_CURVE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_POLES:
				setProtectionPoles(PROTECTION_POLES_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE:
				setProtectionDistance(PROTECTION_DISTANCE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE:
				setResidualCurrentDevice(RESIDUAL_CURRENT_DEVICE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT:
				setResidualTripCurrent(RESIDUAL_TRIP_CURRENT_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME:
				setResidualTripTime(RESIDUAL_TRIP_TIME_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
				setOutputCable((CableRun)null);
				return;
			case GarboardPackage.AC_OUTPUT__NEUTRAL_BOND:
				setNeutralBond(NEUTRAL_BOND_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE:
				setProtectiveConductorSize(PROTECTIVE_CONDUCTOR_SIZE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE:
				setProtectiveConductorResistance(PROTECTIVE_CONDUCTOR_RESISTANCE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE:
				setNeutralGroundConductorSize(NEUTRAL_GROUND_CONDUCTOR_SIZE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE:
				setInsulationResistance(INSULATION_RESISTANCE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE:
				setInsulationTemperature(INSULATION_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR:
				setPolarityIndicator(POLARITY_INDICATOR_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__POLARITY_TESTED:
				setPolarityTested(POLARITY_TESTED_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__VOLTMETER:
				setVoltmeter(VOLTMETER_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__AMMETER:
				setAmmeter(AMMETER_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__FREQUENCY_METER:
				setFrequencyMeter(FREQUENCY_METER_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE:
				setNamePlateReadable(NAME_PLATE_READABLE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED:
				setEarthedPartsBonded(EARTHED_PARTS_BONDED_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__GROUND_DETECTION:
				setGroundDetection(GROUND_DETECTION_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__LOADS:
				getLoads().clear();
				return;
			case GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE:
				setNoLoadVoltage(NO_LOAD_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY:
				setNoLoadFrequency(NO_LOAD_FREQUENCY_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__LEG_ACURRENT:
				setLegACurrent(LEG_ACURRENT_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__LEG_BCURRENT:
				setLegBCurrent(LEG_BCURRENT_EDEFAULT);
				return;
			case GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE:
				setShoreInletResidualDevice(SHORE_INLET_RESIDUAL_DEVICE_EDEFAULT);
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
			case GarboardPackage.AC_OUTPUT__TRANSFER:
				return transfer != null;
			case GarboardPackage.AC_OUTPUT__PROTECTION_DEVICE:
				return protectionDevice != PROTECTION_DEVICE_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__PROTECTION_RATING:
				return PROTECTION_RATING_EDEFAULT == null ? protectionRating != null : !PROTECTION_RATING_EDEFAULT.equals(protectionRating);
			case GarboardPackage.AC_OUTPUT__TRIP_CURVE:
				return tripCurve != TRIP_CURVE_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__PROTECTION_POLES:
				return PROTECTION_POLES_EDEFAULT == null ? protectionPoles != null : !PROTECTION_POLES_EDEFAULT.equals(protectionPoles);
			case GarboardPackage.AC_OUTPUT__PROTECTION_DISTANCE:
				return PROTECTION_DISTANCE_EDEFAULT == null ? protectionDistance != null : !PROTECTION_DISTANCE_EDEFAULT.equals(protectionDistance);
			case GarboardPackage.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE:
				return residualCurrentDevice != RESIDUAL_CURRENT_DEVICE_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_CURRENT:
				return RESIDUAL_TRIP_CURRENT_EDEFAULT == null ? residualTripCurrent != null : !RESIDUAL_TRIP_CURRENT_EDEFAULT.equals(residualTripCurrent);
			case GarboardPackage.AC_OUTPUT__RESIDUAL_TRIP_TIME:
				return RESIDUAL_TRIP_TIME_EDEFAULT == null ? residualTripTime != null : !RESIDUAL_TRIP_TIME_EDEFAULT.equals(residualTripTime);
			case GarboardPackage.AC_OUTPUT__OUTPUT_CABLE:
				return outputCable != null;
			case GarboardPackage.AC_OUTPUT__NEUTRAL_BOND:
				return neutralBond != NEUTRAL_BOND_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE:
				return PROTECTIVE_CONDUCTOR_SIZE_EDEFAULT == null ? protectiveConductorSize != null : !PROTECTIVE_CONDUCTOR_SIZE_EDEFAULT.equals(protectiveConductorSize);
			case GarboardPackage.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE:
				return PROTECTIVE_CONDUCTOR_RESISTANCE_EDEFAULT == null ? protectiveConductorResistance != null : !PROTECTIVE_CONDUCTOR_RESISTANCE_EDEFAULT.equals(protectiveConductorResistance);
			case GarboardPackage.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE:
				return NEUTRAL_GROUND_CONDUCTOR_SIZE_EDEFAULT == null ? neutralGroundConductorSize != null : !NEUTRAL_GROUND_CONDUCTOR_SIZE_EDEFAULT.equals(neutralGroundConductorSize);
			case GarboardPackage.AC_OUTPUT__INSULATION_RESISTANCE:
				return INSULATION_RESISTANCE_EDEFAULT == null ? insulationResistance != null : !INSULATION_RESISTANCE_EDEFAULT.equals(insulationResistance);
			case GarboardPackage.AC_OUTPUT__INSULATION_TEMPERATURE:
				return INSULATION_TEMPERATURE_EDEFAULT == null ? insulationTemperature != null : !INSULATION_TEMPERATURE_EDEFAULT.equals(insulationTemperature);
			case GarboardPackage.AC_OUTPUT__POLARITY_INDICATOR:
				return polarityIndicator != POLARITY_INDICATOR_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__POLARITY_TESTED:
				return polarityTested != POLARITY_TESTED_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__VOLTMETER:
				return voltmeter != VOLTMETER_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__AMMETER:
				return ammeter != AMMETER_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__FREQUENCY_METER:
				return frequencyMeter != FREQUENCY_METER_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__NAME_PLATE_READABLE:
				return namePlateReadable != NAME_PLATE_READABLE_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__EARTHED_PARTS_BONDED:
				return earthedPartsBonded != EARTHED_PARTS_BONDED_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__GROUND_DETECTION:
				return groundDetection != GROUND_DETECTION_EDEFAULT;
			case GarboardPackage.AC_OUTPUT__LOADS:
				return loads != null && !loads.isEmpty();
			case GarboardPackage.AC_OUTPUT__NO_LOAD_VOLTAGE:
				return NO_LOAD_VOLTAGE_EDEFAULT == null ? noLoadVoltage != null : !NO_LOAD_VOLTAGE_EDEFAULT.equals(noLoadVoltage);
			case GarboardPackage.AC_OUTPUT__NO_LOAD_FREQUENCY:
				return NO_LOAD_FREQUENCY_EDEFAULT == null ? noLoadFrequency != null : !NO_LOAD_FREQUENCY_EDEFAULT.equals(noLoadFrequency);
			case GarboardPackage.AC_OUTPUT__LEG_ACURRENT:
				return LEG_ACURRENT_EDEFAULT == null ? legACurrent != null : !LEG_ACURRENT_EDEFAULT.equals(legACurrent);
			case GarboardPackage.AC_OUTPUT__LEG_BCURRENT:
				return LEG_BCURRENT_EDEFAULT == null ? legBCurrent != null : !LEG_BCURRENT_EDEFAULT.equals(legBCurrent);
			case GarboardPackage.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE:
				return shoreInletResidualDevice != SHORE_INLET_RESIDUAL_DEVICE_EDEFAULT;
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
		result.append(" (protectionDevice: ");
		result.append(protectionDevice);
		result.append(", protectionRating: ");
		result.append(protectionRating);
		result.append(", tripCurve: ");
		result.append(tripCurve);
		result.append(", protectionPoles: ");
		result.append(protectionPoles);
		result.append(", protectionDistance: ");
		result.append(protectionDistance);
		result.append(", residualCurrentDevice: ");
		result.append(residualCurrentDevice);
		result.append(", residualTripCurrent: ");
		result.append(residualTripCurrent);
		result.append(", residualTripTime: ");
		result.append(residualTripTime);
		result.append(", neutralBond: ");
		result.append(neutralBond);
		result.append(", protectiveConductorSize: ");
		result.append(protectiveConductorSize);
		result.append(", protectiveConductorResistance: ");
		result.append(protectiveConductorResistance);
		result.append(", neutralGroundConductorSize: ");
		result.append(neutralGroundConductorSize);
		result.append(", insulationResistance: ");
		result.append(insulationResistance);
		result.append(", insulationTemperature: ");
		result.append(insulationTemperature);
		result.append(", polarityIndicator: ");
		result.append(polarityIndicator);
		result.append(", polarityTested: ");
		result.append(polarityTested);
		result.append(", voltmeter: ");
		result.append(voltmeter);
		result.append(", ammeter: ");
		result.append(ammeter);
		result.append(", frequencyMeter: ");
		result.append(frequencyMeter);
		result.append(", namePlateReadable: ");
		result.append(namePlateReadable);
		result.append(", earthedPartsBonded: ");
		result.append(earthedPartsBonded);
		result.append(", groundDetection: ");
		result.append(groundDetection);
		result.append(", noLoadVoltage: ");
		result.append(noLoadVoltage);
		result.append(", noLoadFrequency: ");
		result.append(noLoadFrequency);
		result.append(", legACurrent: ");
		result.append(legACurrent);
		result.append(", legBCurrent: ");
		result.append(legBCurrent);
		result.append(", shoreInletResidualDevice: ");
		result.append(shoreInletResidualDevice);
		result.append(')');
		return result.toString();
	}

} //AcOutputImpl
