/**
 */
package garboard.model;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Commissioning Record</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.CommissioningRecord#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getRecordNumber <em>Record Number</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getTitle <em>Title</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getCreatedOn <em>Created On</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getPractices <em>Practices</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getParties <em>Parties</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getVessel <em>Vessel</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getGeneratorSet <em>Generator Set</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getStartingBattery <em>Starting Battery</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getFuelSupply <em>Fuel Supply</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getRawWater <em>Raw Water</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getExhaust <em>Exhaust</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getVentilation <em>Ventilation</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getMounting <em>Mounting</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getAcOutput <em>Ac Output</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getAlarms <em>Alarms</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getInspections <em>Inspections</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getTrial <em>Trial</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getUpkeep <em>Upkeep</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getAcceptances <em>Acceptances</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getSignatures <em>Signatures</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getPhotographs <em>Photographs</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getRevisions <em>Revisions</em>}</li>
 *   <li>{@link garboard.model.CommissioningRecord#getUnreadEntries <em>Unread Entries</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getCommissioningRecord()
 * @generated
 */
public interface CommissioningRecord extends EObject {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(String)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_FormatVersion()
	 * @generated
	 */
	String getFormatVersion();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(String value);

	/**
	 * Returns the value of the '<em><b>Record Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Record Number</em>' attribute.
	 * @see #setRecordNumber(String)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_RecordNumber()
	 * @generated
	 */
	String getRecordNumber();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getRecordNumber <em>Record Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Record Number</em>' attribute.
	 * @see #getRecordNumber()
	 * @generated
	 */
	void setRecordNumber(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Title()
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Created On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Created On</em>' attribute.
	 * @see #setCreatedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_CreatedOn()
	 * @generated
	 */
	LocalDate getCreatedOn();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getCreatedOn <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created On</em>' attribute.
	 * @see #getCreatedOn()
	 * @generated
	 */
	void setCreatedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Practices</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Practices</em>' attribute list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Practices()
	 * @generated
	 */
	EList<String> getPractices();

	/**
	 * Returns the value of the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remarks</em>' attribute.
	 * @see #setRemarks(String)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Remarks()
	 * @generated
	 */
	String getRemarks();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getRemarks <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remarks</em>' attribute.
	 * @see #getRemarks()
	 * @generated
	 */
	void setRemarks(String value);

	/**
	 * Returns the value of the '<em><b>Instruments</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Instrument}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instruments</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Instruments()
	 * @generated
	 */
	EList<Instrument> getInstruments();

	/**
	 * Returns the value of the '<em><b>Parties</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Party}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Parties</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Parties()
	 * @generated
	 */
	EList<Party> getParties();

	/**
	 * Returns the value of the '<em><b>Vessel</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vessel</em>' containment reference.
	 * @see #setVessel(Vessel)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Vessel()
	 * @generated
	 */
	Vessel getVessel();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getVessel <em>Vessel</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vessel</em>' containment reference.
	 * @see #getVessel()
	 * @generated
	 */
	void setVessel(Vessel value);

	/**
	 * Returns the value of the '<em><b>Generator Set</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Generator Set</em>' containment reference.
	 * @see #setGeneratorSet(GeneratorSet)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_GeneratorSet()
	 * @generated
	 */
	GeneratorSet getGeneratorSet();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getGeneratorSet <em>Generator Set</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Generator Set</em>' containment reference.
	 * @see #getGeneratorSet()
	 * @generated
	 */
	void setGeneratorSet(GeneratorSet value);

	/**
	 * Returns the value of the '<em><b>Starting Battery</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Starting Battery</em>' containment reference.
	 * @see #setStartingBattery(StartingBattery)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_StartingBattery()
	 * @generated
	 */
	StartingBattery getStartingBattery();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getStartingBattery <em>Starting Battery</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Starting Battery</em>' containment reference.
	 * @see #getStartingBattery()
	 * @generated
	 */
	void setStartingBattery(StartingBattery value);

	/**
	 * Returns the value of the '<em><b>Fuel Supply</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel Supply</em>' containment reference.
	 * @see #setFuelSupply(FuelSupply)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_FuelSupply()
	 * @generated
	 */
	FuelSupply getFuelSupply();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getFuelSupply <em>Fuel Supply</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel Supply</em>' containment reference.
	 * @see #getFuelSupply()
	 * @generated
	 */
	void setFuelSupply(FuelSupply value);

	/**
	 * Returns the value of the '<em><b>Raw Water</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water</em>' containment reference.
	 * @see #setRawWater(RawWaterCircuit)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_RawWater()
	 * @generated
	 */
	RawWaterCircuit getRawWater();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getRawWater <em>Raw Water</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water</em>' containment reference.
	 * @see #getRawWater()
	 * @generated
	 */
	void setRawWater(RawWaterCircuit value);

	/**
	 * Returns the value of the '<em><b>Exhaust</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust</em>' containment reference.
	 * @see #setExhaust(ExhaustRun)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Exhaust()
	 * @generated
	 */
	ExhaustRun getExhaust();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getExhaust <em>Exhaust</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust</em>' containment reference.
	 * @see #getExhaust()
	 * @generated
	 */
	void setExhaust(ExhaustRun value);

	/**
	 * Returns the value of the '<em><b>Ventilation</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ventilation</em>' containment reference.
	 * @see #setVentilation(Ventilation)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Ventilation()
	 * @generated
	 */
	Ventilation getVentilation();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getVentilation <em>Ventilation</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ventilation</em>' containment reference.
	 * @see #getVentilation()
	 * @generated
	 */
	void setVentilation(Ventilation value);

	/**
	 * Returns the value of the '<em><b>Mounting</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mounting</em>' containment reference.
	 * @see #setMounting(Mounting)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Mounting()
	 * @generated
	 */
	Mounting getMounting();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getMounting <em>Mounting</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mounting</em>' containment reference.
	 * @see #getMounting()
	 * @generated
	 */
	void setMounting(Mounting value);

	/**
	 * Returns the value of the '<em><b>Ac Output</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ac Output</em>' containment reference.
	 * @see #setAcOutput(AcOutput)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_AcOutput()
	 * @generated
	 */
	AcOutput getAcOutput();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getAcOutput <em>Ac Output</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ac Output</em>' containment reference.
	 * @see #getAcOutput()
	 * @generated
	 */
	void setAcOutput(AcOutput value);

	/**
	 * Returns the value of the '<em><b>Alarms</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Alarms</em>' containment reference.
	 * @see #setAlarms(AlarmsAndSafety)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Alarms()
	 * @generated
	 */
	AlarmsAndSafety getAlarms();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getAlarms <em>Alarms</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alarms</em>' containment reference.
	 * @see #getAlarms()
	 * @generated
	 */
	void setAlarms(AlarmsAndSafety value);

	/**
	 * Returns the value of the '<em><b>Inspections</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.InspectionAnswer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inspections</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Inspections()
	 * @generated
	 */
	EList<InspectionAnswer> getInspections();

	/**
	 * Returns the value of the '<em><b>Trial</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trial</em>' containment reference.
	 * @see #setTrial(Trial)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Trial()
	 * @generated
	 */
	Trial getTrial();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getTrial <em>Trial</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trial</em>' containment reference.
	 * @see #getTrial()
	 * @generated
	 */
	void setTrial(Trial value);

	/**
	 * Returns the value of the '<em><b>Upkeep</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Upkeep</em>' containment reference.
	 * @see #setUpkeep(Upkeep)
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Upkeep()
	 * @generated
	 */
	Upkeep getUpkeep();

	/**
	 * Sets the value of the '{@link garboard.model.CommissioningRecord#getUpkeep <em>Upkeep</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Upkeep</em>' containment reference.
	 * @see #getUpkeep()
	 * @generated
	 */
	void setUpkeep(Upkeep value);

	/**
	 * Returns the value of the '<em><b>Acceptances</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Acceptance}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Acceptances</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Acceptances()
	 * @generated
	 */
	EList<Acceptance> getAcceptances();

	/**
	 * Returns the value of the '<em><b>Signatures</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Signature}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Signatures</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Signatures()
	 * @generated
	 */
	EList<Signature> getSignatures();

	/**
	 * Returns the value of the '<em><b>Photographs</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Photograph}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Photographs</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Photographs()
	 * @generated
	 */
	EList<Photograph> getPhotographs();

	/**
	 * Returns the value of the '<em><b>Revisions</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Revision}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Revisions</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_Revisions()
	 * @generated
	 */
	EList<Revision> getRevisions();

	/**
	 * Returns the value of the '<em><b>Unread Entries</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.UnreadEntry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unread Entries</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getCommissioningRecord_UnreadEntries()
	 * @generated
	 */
	EList<UnreadEntry> getUnreadEntries();

} // CommissioningRecord
