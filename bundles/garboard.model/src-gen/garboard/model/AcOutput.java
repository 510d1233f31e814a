/**
 */
package garboard.model;

import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.Length;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ac Output</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.AcOutput#getTransfer <em>Transfer</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectionDevice <em>Protection Device</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectionRating <em>Protection Rating</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getTripCurve <em>Trip Curve</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectionPoles <em>Protection Poles</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectionDistance <em>Protection Distance</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getResidualCurrentDevice <em>Residual Current Device</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getResidualTripCurrent <em>Residual Trip Current</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getResidualTripTime <em>Residual Trip Time</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getOutputCable <em>Output Cable</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getNeutralBond <em>Neutral Bond</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectiveConductorSize <em>Protective Conductor Size</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getProtectiveConductorResistance <em>Protective Conductor Resistance</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getNeutralGroundConductorSize <em>Neutral Ground Conductor Size</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getInsulationResistance <em>Insulation Resistance</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getInsulationTemperature <em>Insulation Temperature</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getPolarityIndicator <em>Polarity Indicator</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getPolarityTested <em>Polarity Tested</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getVoltmeter <em>Voltmeter</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getAmmeter <em>Ammeter</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getFrequencyMeter <em>Frequency Meter</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getNamePlateReadable <em>Name Plate Readable</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getEarthedPartsBonded <em>Earthed Parts Bonded</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getGroundDetection <em>Ground Detection</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getLoads <em>Loads</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getNoLoadVoltage <em>No Load Voltage</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getNoLoadFrequency <em>No Load Frequency</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getLegACurrent <em>Leg ACurrent</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getLegBCurrent <em>Leg BCurrent</em>}</li>
 *   <li>{@link garboard.model.AcOutput#getShoreInletResidualDevice <em>Shore Inlet Residual Device</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getAcOutput()
 * @generated
 */
public interface AcOutput extends EObject {
	/**
	 * Returns the value of the '<em><b>Transfer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Transfer</em>' containment reference.
	 * @see #setTransfer(TransferSwitch)
	 * @see garboard.model.GarboardPackage#getAcOutput_Transfer()
	 * @generated
	 */
	TransferSwitch getTransfer();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getTransfer <em>Transfer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transfer</em>' containment reference.
	 * @see #getTransfer()
	 * @generated
	 */
	void setTransfer(TransferSwitch value);

	/**
	 * Returns the value of the '<em><b>Protection Device</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ProtectionKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Device</em>' attribute.
	 * @see garboard.model.ProtectionKind
	 * @see #setProtectionDevice(ProtectionKind)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectionDevice()
	 * @generated
	 */
	ProtectionKind getProtectionDevice();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectionDevice <em>Protection Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Device</em>' attribute.
	 * @see garboard.model.ProtectionKind
	 * @see #getProtectionDevice()
	 * @generated
	 */
	void setProtectionDevice(ProtectionKind value);

	/**
	 * Returns the value of the '<em><b>Protection Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Rating</em>' attribute.
	 * @see #setProtectionRating(Current)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectionRating()
	 * @generated
	 */
	Current getProtectionRating();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectionRating <em>Protection Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Rating</em>' attribute.
	 * @see #getProtectionRating()
	 * @generated
	 */
	void setProtectionRating(Current value);

	/**
	 * Returns the value of the '<em><b>Trip Curve</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TripCurve}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trip Curve</em>' attribute.
	 * @see garboard.model.TripCurve
	 * @see #setTripCurve(TripCurve)
	 * @see garboard.model.GarboardPackage#getAcOutput_TripCurve()
	 * @generated
	 */
	TripCurve getTripCurve();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getTripCurve <em>Trip Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trip Curve</em>' attribute.
	 * @see garboard.model.TripCurve
	 * @see #getTripCurve()
	 * @generated
	 */
	void setTripCurve(TripCurve value);

	/**
	 * Returns the value of the '<em><b>Protection Poles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Poles</em>' attribute.
	 * @see #setProtectionPoles(Integer)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectionPoles()
	 * @generated
	 */
	Integer getProtectionPoles();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectionPoles <em>Protection Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Poles</em>' attribute.
	 * @see #getProtectionPoles()
	 * @generated
	 */
	void setProtectionPoles(Integer value);

	/**
	 * Returns the value of the '<em><b>Protection Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Distance</em>' attribute.
	 * @see #setProtectionDistance(Length)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectionDistance()
	 * @generated
	 */
	Length getProtectionDistance();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectionDistance <em>Protection Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Distance</em>' attribute.
	 * @see #getProtectionDistance()
	 * @generated
	 */
	void setProtectionDistance(Length value);

	/**
	 * Returns the value of the '<em><b>Residual Current Device</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residual Current Device</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setResidualCurrentDevice(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_ResidualCurrentDevice()
	 * @generated
	 */
	Answer getResidualCurrentDevice();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getResidualCurrentDevice <em>Residual Current Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residual Current Device</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getResidualCurrentDevice()
	 * @generated
	 */
	void setResidualCurrentDevice(Answer value);

	/**
	 * Returns the value of the '<em><b>Residual Trip Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residual Trip Current</em>' attribute.
	 * @see #setResidualTripCurrent(Current)
	 * @see garboard.model.GarboardPackage#getAcOutput_ResidualTripCurrent()
	 * @generated
	 */
	Current getResidualTripCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getResidualTripCurrent <em>Residual Trip Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residual Trip Current</em>' attribute.
	 * @see #getResidualTripCurrent()
	 * @generated
	 */
	void setResidualTripCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Residual Trip Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residual Trip Time</em>' attribute.
	 * @see #setResidualTripTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getAcOutput_ResidualTripTime()
	 * @generated
	 */
	TimeSpan getResidualTripTime();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getResidualTripTime <em>Residual Trip Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residual Trip Time</em>' attribute.
	 * @see #getResidualTripTime()
	 * @generated
	 */
	void setResidualTripTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Output Cable</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Output Cable</em>' containment reference.
	 * @see #setOutputCable(CableRun)
	 * @see garboard.model.GarboardPackage#getAcOutput_OutputCable()
	 * @generated
	 */
	CableRun getOutputCable();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getOutputCable <em>Output Cable</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Output Cable</em>' containment reference.
	 * @see #getOutputCable()
	 * @generated
	 */
	void setOutputCable(CableRun value);

	/**
	 * Returns the value of the '<em><b>Neutral Bond</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.NeutralBond}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Neutral Bond</em>' attribute.
	 * @see garboard.model.NeutralBond
	 * @see #setNeutralBond(NeutralBond)
	 * @see garboard.model.GarboardPackage#getAcOutput_NeutralBond()
	 * @generated
	 */
	NeutralBond getNeutralBond();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getNeutralBond <em>Neutral Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Neutral Bond</em>' attribute.
	 * @see garboard.model.NeutralBond
	 * @see #getNeutralBond()
	 * @generated
	 */
	void setNeutralBond(NeutralBond value);

	/**
	 * Returns the value of the '<em><b>Protective Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protective Conductor Size</em>' attribute.
	 * @see #setProtectiveConductorSize(String)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectiveConductorSize()
	 * @generated
	 */
	String getProtectiveConductorSize();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectiveConductorSize <em>Protective Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protective Conductor Size</em>' attribute.
	 * @see #getProtectiveConductorSize()
	 * @generated
	 */
	void setProtectiveConductorSize(String value);

	/**
	 * Returns the value of the '<em><b>Protective Conductor Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protective Conductor Resistance</em>' attribute.
	 * @see #setProtectiveConductorResistance(Resistance)
	 * @see garboard.model.GarboardPackage#getAcOutput_ProtectiveConductorResistance()
	 * @generated
	 */
	Resistance getProtectiveConductorResistance();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getProtectiveConductorResistance <em>Protective Conductor Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protective Conductor Resistance</em>' attribute.
	 * @see #getProtectiveConductorResistance()
	 * @generated
	 */
	void setProtectiveConductorResistance(Resistance value);

	/**
	 * Returns the value of the '<em><b>Neutral Ground Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Neutral Ground Conductor Size</em>' attribute.
	 * @see #setNeutralGroundConductorSize(String)
	 * @see garboard.model.GarboardPackage#getAcOutput_NeutralGroundConductorSize()
	 * @generated
	 */
	String getNeutralGroundConductorSize();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getNeutralGroundConductorSize <em>Neutral Ground Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Neutral Ground Conductor Size</em>' attribute.
	 * @see #getNeutralGroundConductorSize()
	 * @generated
	 */
	void setNeutralGroundConductorSize(String value);

	/**
	 * Returns the value of the '<em><b>Insulation Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Insulation Resistance</em>' attribute.
	 * @see #setInsulationResistance(Resistance)
	 * @see garboard.model.GarboardPackage#getAcOutput_InsulationResistance()
	 * @generated
	 */
	Resistance getInsulationResistance();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getInsulationResistance <em>Insulation Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Insulation Resistance</em>' attribute.
	 * @see #getInsulationResistance()
	 * @generated
	 */
	void setInsulationResistance(Resistance value);

	/**
	 * Returns the value of the '<em><b>Insulation Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Insulation Temperature</em>' attribute.
	 * @see #setInsulationTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getAcOutput_InsulationTemperature()
	 * @generated
	 */
	Temperature getInsulationTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getInsulationTemperature <em>Insulation Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Insulation Temperature</em>' attribute.
	 * @see #getInsulationTemperature()
	 * @generated
	 */
	void setInsulationTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Polarity Indicator</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Polarity Indicator</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPolarityIndicator(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_PolarityIndicator()
	 * @generated
	 */
	Answer getPolarityIndicator();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getPolarityIndicator <em>Polarity Indicator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Polarity Indicator</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPolarityIndicator()
	 * @generated
	 */
	void setPolarityIndicator(Answer value);

	/**
	 * Returns the value of the '<em><b>Polarity Tested</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TestResult}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Polarity Tested</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #setPolarityTested(TestResult)
	 * @see garboard.model.GarboardPackage#getAcOutput_PolarityTested()
	 * @generated
	 */
	TestResult getPolarityTested();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getPolarityTested <em>Polarity Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Polarity Tested</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #getPolarityTested()
	 * @generated
	 */
	void setPolarityTested(TestResult value);

	/**
	 * Returns the value of the '<em><b>Voltmeter</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Voltmeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVoltmeter(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_Voltmeter()
	 * @generated
	 */
	Answer getVoltmeter();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getVoltmeter <em>Voltmeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Voltmeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVoltmeter()
	 * @generated
	 */
	void setVoltmeter(Answer value);

	/**
	 * Returns the value of the '<em><b>Ammeter</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ammeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAmmeter(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_Ammeter()
	 * @generated
	 */
	Answer getAmmeter();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getAmmeter <em>Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ammeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAmmeter()
	 * @generated
	 */
	void setAmmeter(Answer value);

	/**
	 * Returns the value of the '<em><b>Frequency Meter</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frequency Meter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFrequencyMeter(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_FrequencyMeter()
	 * @generated
	 */
	Answer getFrequencyMeter();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getFrequencyMeter <em>Frequency Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frequency Meter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFrequencyMeter()
	 * @generated
	 */
	void setFrequencyMeter(Answer value);

	/**
	 * Returns the value of the '<em><b>Name Plate Readable</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name Plate Readable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setNamePlateReadable(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_NamePlateReadable()
	 * @generated
	 */
	Answer getNamePlateReadable();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getNamePlateReadable <em>Name Plate Readable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name Plate Readable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getNamePlateReadable()
	 * @generated
	 */
	void setNamePlateReadable(Answer value);

	/**
	 * Returns the value of the '<em><b>Earthed Parts Bonded</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Earthed Parts Bonded</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setEarthedPartsBonded(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_EarthedPartsBonded()
	 * @generated
	 */
	Answer getEarthedPartsBonded();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getEarthedPartsBonded <em>Earthed Parts Bonded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Earthed Parts Bonded</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getEarthedPartsBonded()
	 * @generated
	 */
	void setEarthedPartsBonded(Answer value);

	/**
	 * Returns the value of the '<em><b>Ground Detection</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ground Detection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setGroundDetection(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_GroundDetection()
	 * @generated
	 */
	Answer getGroundDetection();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getGroundDetection <em>Ground Detection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ground Detection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getGroundDetection()
	 * @generated
	 */
	void setGroundDetection(Answer value);

	/**
	 * Returns the value of the '<em><b>Loads</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.ElectricalLoad}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Loads</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getAcOutput_Loads()
	 * @generated
	 */
	EList<ElectricalLoad> getLoads();

	/**
	 * Returns the value of the '<em><b>No Load Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>No Load Voltage</em>' attribute.
	 * @see #setNoLoadVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getAcOutput_NoLoadVoltage()
	 * @generated
	 */
	Voltage getNoLoadVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getNoLoadVoltage <em>No Load Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>No Load Voltage</em>' attribute.
	 * @see #getNoLoadVoltage()
	 * @generated
	 */
	void setNoLoadVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>No Load Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>No Load Frequency</em>' attribute.
	 * @see #setNoLoadFrequency(Frequency)
	 * @see garboard.model.GarboardPackage#getAcOutput_NoLoadFrequency()
	 * @generated
	 */
	Frequency getNoLoadFrequency();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getNoLoadFrequency <em>No Load Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>No Load Frequency</em>' attribute.
	 * @see #getNoLoadFrequency()
	 * @generated
	 */
	void setNoLoadFrequency(Frequency value);

	/**
	 * Returns the value of the '<em><b>Leg ACurrent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leg ACurrent</em>' attribute.
	 * @see #setLegACurrent(Current)
	 * @see garboard.model.GarboardPackage#getAcOutput_LegACurrent()
	 * @generated
	 */
	Current getLegACurrent();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getLegACurrent <em>Leg ACurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg ACurrent</em>' attribute.
	 * @see #getLegACurrent()
	 * @generated
	 */
	void setLegACurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Leg BCurrent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leg BCurrent</em>' attribute.
	 * @see #setLegBCurrent(Current)
	 * @see garboard.model.GarboardPackage#getAcOutput_LegBCurrent()
	 * @generated
	 */
	Current getLegBCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getLegBCurrent <em>Leg BCurrent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg BCurrent</em>' attribute.
	 * @see #getLegBCurrent()
	 * @generated
	 */
	void setLegBCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Shore Inlet Residual Device</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shore Inlet Residual Device</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setShoreInletResidualDevice(Answer)
	 * @see garboard.model.GarboardPackage#getAcOutput_ShoreInletResidualDevice()
	 * @generated
	 */
	Answer getShoreInletResidualDevice();

	/**
	 * Sets the value of the '{@link garboard.model.AcOutput#getShoreInletResidualDevice <em>Shore Inlet Residual Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shore Inlet Residual Device</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getShoreInletResidualDevice()
	 * @generated
	 */
	void setShoreInletResidualDevice(Answer value);

} // AcOutput
