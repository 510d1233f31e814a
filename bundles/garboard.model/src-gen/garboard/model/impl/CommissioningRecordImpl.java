/**
 */
package garboard.model.impl;

import garboard.model.AcOutput;
import garboard.model.Acceptance;
import garboard.model.AlarmsAndSafety;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustRun;
import garboard.model.FuelSupply;
import garboard.model.GarboardPackage;
import garboard.model.GeneratorSet;
import garboard.model.InspectionAnswer;
import garboard.model.Instrument;
import garboard.model.Mounting;
import garboard.model.Party;
import garboard.model.Photograph;
import garboard.model.RawWaterCircuit;
import garboard.model.Revision;
import garboard.model.Signature;
import garboard.model.StartingBattery;
import garboard.model.Trial;
import garboard.model.UnreadEntry;
import garboard.model.Upkeep;
import garboard.model.Ventilation;
import garboard.model.Vessel;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Commissioning Record</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getRecordNumber <em>Record Number</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getCreatedOn <em>Created On</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getPractices <em>Practices</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getParties <em>Parties</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getVessel <em>Vessel</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getGeneratorSet <em>Generator Set</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getStartingBattery <em>Starting Battery</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getFuelSupply <em>Fuel Supply</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getRawWater <em>Raw Water</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getExhaust <em>Exhaust</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getVentilation <em>Ventilation</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getMounting <em>Mounting</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getAcOutput <em>Ac Output</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getAlarms <em>Alarms</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getInspections <em>Inspections</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getTrial <em>Trial</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getUpkeep <em>Upkeep</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getAcceptances <em>Acceptances</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getSignatures <em>Signatures</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getPhotographs <em>Photographs</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getRevisions <em>Revisions</em>}</li>
 *   <li>{@link garboard.model.impl.CommissioningRecordImpl#getUnreadEntries <em>Unread Entries</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CommissioningRecordImpl extends MinimalEObjectImpl.Container implements CommissioningRecord {
	/**
	 * The default value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String FORMAT_VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected String formatVersion = FORMAT_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getRecordNumber() <em>Record Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String RECORD_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRecordNumber() <em>Record Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordNumber()
	 * @generated
	 * @ordered
	 */
	protected String recordNumber = RECORD_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCreatedOn() <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate CREATED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCreatedOn() <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate createdOn = CREATED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPractices() <em>Practices</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPractices()
	 * @generated
	 * @ordered
	 */
	protected EList<String> practices;

	/**
	 * The default value of the '{@link #getRemarks() <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemarks()
	 * @generated
	 * @ordered
	 */
	protected static final String REMARKS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRemarks() <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemarks()
	 * @generated
	 * @ordered
	 */
	protected String remarks = REMARKS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInstruments() <em>Instruments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected EList<Instrument> instruments;

	/**
	 * The cached value of the '{@link #getParties() <em>Parties</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParties()
	 * @generated
	 * @ordered
	 */
	protected EList<Party> parties;

	/**
	 * The cached value of the '{@link #getVessel() <em>Vessel</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVessel()
	 * @generated
	 * @ordered
	 */
	protected Vessel vessel;

	/**
	 * The cached value of the '{@link #getGeneratorSet() <em>Generator Set</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGeneratorSet()
	 * @generated
	 * @ordered
	 */
	protected GeneratorSet generatorSet;

	/**
	 * The cached value of the '{@link #getStartingBattery() <em>Starting Battery</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartingBattery()
	 * @generated
	 * @ordered
	 */
	protected StartingBattery startingBattery;

	/**
	 * The cached value of the '{@link #getFuelSupply() <em>Fuel Supply</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelSupply()
	 * @generated
	 * @ordered
	 */
	protected FuelSupply fuelSupply;

	/**
	 * The cached value of the '{@link #getRawWater() <em>Raw Water</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWater()
	 * @generated
	 * @ordered
	 */
	protected RawWaterCircuit rawWater;

	/**
	 * The cached value of the '{@link #getExhaust() <em>Exhaust</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaust()
	 * @generated
	 * @ordered
	 */
	protected ExhaustRun exhaust;

	/**
	 * The cached value of the '{@link #getVentilation() <em>Ventilation</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentilation()
	 * @generated
	 * @ordered
	 */
	protected Ventilation ventilation;

	/**
	 * The cached value of the '{@link #getMounting() <em>Mounting</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMounting()
	 * @generated
	 * @ordered
	 */
	protected Mounting mounting;

	/**
	 * The cached value of the '{@link #getAcOutput() <em>Ac Output</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcOutput()
	 * @generated
	 * @ordered
	 */
	protected AcOutput acOutput;

	/**
	 * The cached value of the '{@link #getAlarms() <em>Alarms</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlarms()
	 * @generated
	 * @ordered
	 */
	protected AlarmsAndSafety alarms;

	/**
	 * The cached value of the '{@link #getInspections() <em>Inspections</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInspections()
	 * @generated
	 * @ordered
	 */
	protected EList<InspectionAnswer> inspections;

	/**
	 * The cached value of the '{@link #getTrial() <em>Trial</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrial()
	 * @generated
	 * @ordered
	 */
	protected Trial trial;

	/**
	 * The cached value of the '{@link #getUpkeep() <em>Upkeep</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUpkeep()
	 * @generated
	 * @ordered
	 */
	protected Upkeep upkeep;

	/**
	 * The cached value of the '{@link #getAcceptances() <em>Acceptances</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcceptances()
	 * @generated
	 * @ordered
	 */
	protected EList<Acceptance> acceptances;

	/**
	 * The cached value of the '{@link #getSignatures() <em>Signatures</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignatures()
	 * @generated
	 * @ordered
	 */
	protected EList<Signature> signatures;

	/**
	 * The cached value of the '{@link #getPhotographs() <em>Photographs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhotographs()
	 * @generated
	 * @ordered
	 */
	protected EList<Photograph> photographs;

	/**
	 * The cached value of the '{@link #getRevisions() <em>Revisions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevisions()
	 * @generated
	 * @ordered
	 */
	protected EList<Revision> revisions;

	/**
	 * The cached value of the '{@link #getUnreadEntries() <em>Unread Entries</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnreadEntries()
	 * @generated
	 * @ordered
	 */
	protected EList<UnreadEntry> unreadEntries;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CommissioningRecordImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.COMMISSIONING_RECORD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFormatVersion() {
		return formatVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormatVersion(String newFormatVersion) {
		String oldFormatVersion = formatVersion;
		formatVersion = newFormatVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRecordNumber() {
		return recordNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecordNumber(String newRecordNumber) {
		String oldRecordNumber = recordNumber;
		recordNumber = newRecordNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER, oldRecordNumber, recordNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCreatedOn() {
		return createdOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCreatedOn(LocalDate newCreatedOn) {
		LocalDate oldCreatedOn = createdOn;
		createdOn = newCreatedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__CREATED_ON, oldCreatedOn, createdOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getPractices() {
		if (practices == null) {
			practices = new EDataTypeUniqueEList<String>(String.class, this, GarboardPackage.COMMISSIONING_RECORD__PRACTICES);
		}
		return practices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRemarks() {
		return remarks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemarks(String newRemarks) {
		String oldRemarks = remarks;
		remarks = newRemarks;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__REMARKS, oldRemarks, remarks));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Instrument> getInstruments() {
		if (instruments == null) {
			instruments = new EObjectContainmentEList<Instrument>(Instrument.class, this, GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS);
		}
		return instruments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Party> getParties() {
		if (parties == null) {
			parties = new EObjectContainmentEList<Party>(Party.class, this, GarboardPackage.COMMISSIONING_RECORD__PARTIES);
		}
		return parties;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Vessel getVessel() {
		return vessel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetVessel(Vessel newVessel, NotificationChain msgs) {
		Vessel oldVessel = vessel;
		vessel = newVessel;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__VESSEL, oldVessel, newVessel);
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
	public void setVessel(Vessel newVessel) {
		if (newVessel != vessel) {
			NotificationChain msgs = null;
			if (vessel != null)
				msgs = ((InternalEObject)vessel).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__VESSEL, null, msgs);
			if (newVessel != null)
				msgs = ((InternalEObject)newVessel).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__VESSEL, null, msgs);
			msgs = basicSetVessel(newVessel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__VESSEL, newVessel, newVessel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GeneratorSet getGeneratorSet() {
		return generatorSet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetGeneratorSet(GeneratorSet newGeneratorSet, NotificationChain msgs) {
		GeneratorSet oldGeneratorSet = generatorSet;
		generatorSet = newGeneratorSet;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET, oldGeneratorSet, newGeneratorSet);
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
	public void setGeneratorSet(GeneratorSet newGeneratorSet) {
		if (newGeneratorSet != generatorSet) {
			NotificationChain msgs = null;
			if (generatorSet != null)
				msgs = ((InternalEObject)generatorSet).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET, null, msgs);
			if (newGeneratorSet != null)
				msgs = ((InternalEObject)newGeneratorSet).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET, null, msgs);
			msgs = basicSetGeneratorSet(newGeneratorSet, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET, newGeneratorSet, newGeneratorSet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StartingBattery getStartingBattery() {
		return startingBattery;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStartingBattery(StartingBattery newStartingBattery, NotificationChain msgs) {
		StartingBattery oldStartingBattery = startingBattery;
		startingBattery = newStartingBattery;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY, oldStartingBattery, newStartingBattery);
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
	public void setStartingBattery(StartingBattery newStartingBattery) {
		if (newStartingBattery != startingBattery) {
			NotificationChain msgs = null;
			if (startingBattery != null)
				msgs = ((InternalEObject)startingBattery).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY, null, msgs);
			if (newStartingBattery != null)
				msgs = ((InternalEObject)newStartingBattery).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY, null, msgs);
			msgs = basicSetStartingBattery(newStartingBattery, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY, newStartingBattery, newStartingBattery));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelSupply getFuelSupply() {
		return fuelSupply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetFuelSupply(FuelSupply newFuelSupply, NotificationChain msgs) {
		FuelSupply oldFuelSupply = fuelSupply;
		fuelSupply = newFuelSupply;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY, oldFuelSupply, newFuelSupply);
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
	public void setFuelSupply(FuelSupply newFuelSupply) {
		if (newFuelSupply != fuelSupply) {
			NotificationChain msgs = null;
			if (fuelSupply != null)
				msgs = ((InternalEObject)fuelSupply).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY, null, msgs);
			if (newFuelSupply != null)
				msgs = ((InternalEObject)newFuelSupply).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY, null, msgs);
			msgs = basicSetFuelSupply(newFuelSupply, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY, newFuelSupply, newFuelSupply));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RawWaterCircuit getRawWater() {
		return rawWater;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRawWater(RawWaterCircuit newRawWater, NotificationChain msgs) {
		RawWaterCircuit oldRawWater = rawWater;
		rawWater = newRawWater;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__RAW_WATER, oldRawWater, newRawWater);
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
	public void setRawWater(RawWaterCircuit newRawWater) {
		if (newRawWater != rawWater) {
			NotificationChain msgs = null;
			if (rawWater != null)
				msgs = ((InternalEObject)rawWater).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__RAW_WATER, null, msgs);
			if (newRawWater != null)
				msgs = ((InternalEObject)newRawWater).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__RAW_WATER, null, msgs);
			msgs = basicSetRawWater(newRawWater, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__RAW_WATER, newRawWater, newRawWater));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustRun getExhaust() {
		return exhaust;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetExhaust(ExhaustRun newExhaust, NotificationChain msgs) {
		ExhaustRun oldExhaust = exhaust;
		exhaust = newExhaust;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__EXHAUST, oldExhaust, newExhaust);
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
	public void setExhaust(ExhaustRun newExhaust) {
		if (newExhaust != exhaust) {
			NotificationChain msgs = null;
			if (exhaust != null)
				msgs = ((InternalEObject)exhaust).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__EXHAUST, null, msgs);
			if (newExhaust != null)
				msgs = ((InternalEObject)newExhaust).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__EXHAUST, null, msgs);
			msgs = basicSetExhaust(newExhaust, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__EXHAUST, newExhaust, newExhaust));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ventilation getVentilation() {
		return ventilation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetVentilation(Ventilation newVentilation, NotificationChain msgs) {
		Ventilation oldVentilation = ventilation;
		ventilation = newVentilation;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__VENTILATION, oldVentilation, newVentilation);
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
	public void setVentilation(Ventilation newVentilation) {
		if (newVentilation != ventilation) {
			NotificationChain msgs = null;
			if (ventilation != null)
				msgs = ((InternalEObject)ventilation).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__VENTILATION, null, msgs);
			if (newVentilation != null)
				msgs = ((InternalEObject)newVentilation).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__VENTILATION, null, msgs);
			msgs = basicSetVentilation(newVentilation, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__VENTILATION, newVentilation, newVentilation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mounting getMounting() {
		return mounting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMounting(Mounting newMounting, NotificationChain msgs) {
		Mounting oldMounting = mounting;
		mounting = newMounting;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__MOUNTING, oldMounting, newMounting);
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
	public void setMounting(Mounting newMounting) {
		if (newMounting != mounting) {
			NotificationChain msgs = null;
			if (mounting != null)
				msgs = ((InternalEObject)mounting).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__MOUNTING, null, msgs);
			if (newMounting != null)
				msgs = ((InternalEObject)newMounting).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__MOUNTING, null, msgs);
			msgs = basicSetMounting(newMounting, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__MOUNTING, newMounting, newMounting));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AcOutput getAcOutput() {
		return acOutput;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAcOutput(AcOutput newAcOutput, NotificationChain msgs) {
		AcOutput oldAcOutput = acOutput;
		acOutput = newAcOutput;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT, oldAcOutput, newAcOutput);
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
	public void setAcOutput(AcOutput newAcOutput) {
		if (newAcOutput != acOutput) {
			NotificationChain msgs = null;
			if (acOutput != null)
				msgs = ((InternalEObject)acOutput).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT, null, msgs);
			if (newAcOutput != null)
				msgs = ((InternalEObject)newAcOutput).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT, null, msgs);
			msgs = basicSetAcOutput(newAcOutput, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT, newAcOutput, newAcOutput));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AlarmsAndSafety getAlarms() {
		return alarms;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAlarms(AlarmsAndSafety newAlarms, NotificationChain msgs) {
		AlarmsAndSafety oldAlarms = alarms;
		alarms = newAlarms;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__ALARMS, oldAlarms, newAlarms);
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
	public void setAlarms(AlarmsAndSafety newAlarms) {
		if (newAlarms != alarms) {
			NotificationChain msgs = null;
			if (alarms != null)
				msgs = ((InternalEObject)alarms).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__ALARMS, null, msgs);
			if (newAlarms != null)
				msgs = ((InternalEObject)newAlarms).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__ALARMS, null, msgs);
			msgs = basicSetAlarms(newAlarms, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__ALARMS, newAlarms, newAlarms));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<InspectionAnswer> getInspections() {
		if (inspections == null) {
			inspections = new EObjectContainmentEList<InspectionAnswer>(InspectionAnswer.class, this, GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS);
		}
		return inspections;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getTrial() {
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetTrial(Trial newTrial, NotificationChain msgs) {
		Trial oldTrial = trial;
		trial = newTrial;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__TRIAL, oldTrial, newTrial);
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
	public void setTrial(Trial newTrial) {
		if (newTrial != trial) {
			NotificationChain msgs = null;
			if (trial != null)
				msgs = ((InternalEObject)trial).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__TRIAL, null, msgs);
			if (newTrial != null)
				msgs = ((InternalEObject)newTrial).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__TRIAL, null, msgs);
			msgs = basicSetTrial(newTrial, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__TRIAL, newTrial, newTrial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Upkeep getUpkeep() {
		return upkeep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetUpkeep(Upkeep newUpkeep, NotificationChain msgs) {
		Upkeep oldUpkeep = upkeep;
		upkeep = newUpkeep;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__UPKEEP, oldUpkeep, newUpkeep);
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
	public void setUpkeep(Upkeep newUpkeep) {
		if (newUpkeep != upkeep) {
			NotificationChain msgs = null;
			if (upkeep != null)
				msgs = ((InternalEObject)upkeep).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__UPKEEP, null, msgs);
			if (newUpkeep != null)
				msgs = ((InternalEObject)newUpkeep).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.COMMISSIONING_RECORD__UPKEEP, null, msgs);
			msgs = basicSetUpkeep(newUpkeep, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.COMMISSIONING_RECORD__UPKEEP, newUpkeep, newUpkeep));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Acceptance> getAcceptances() {
		if (acceptances == null) {
			acceptances = new EObjectContainmentEList<Acceptance>(Acceptance.class, this, GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES);
		}
		return acceptances;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Signature> getSignatures() {
		if (signatures == null) {
			signatures = new EObjectContainmentEList<Signature>(Signature.class, this, GarboardPackage.COMMISSIONING_RECORD__SIGNATURES);
		}
		return signatures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Photograph> getPhotographs() {
		if (photographs == null) {
			photographs = new EObjectContainmentEList<Photograph>(Photograph.class, this, GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS);
		}
		return photographs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Revision> getRevisions() {
		if (revisions == null) {
			revisions = new EObjectContainmentEList<Revision>(Revision.class, this, GarboardPackage.COMMISSIONING_RECORD__REVISIONS);
		}
		return revisions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<UnreadEntry> getUnreadEntries() {
		if (unreadEntries == null) {
			unreadEntries = new EObjectContainmentEList<UnreadEntry>(UnreadEntry.class, this, GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES);
		}
		return unreadEntries;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
				return ((InternalEList<?>)getInstruments()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
				return ((InternalEList<?>)getParties()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
				return basicSetVessel(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
				return basicSetGeneratorSet(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
				return basicSetStartingBattery(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
				return basicSetFuelSupply(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
				return basicSetRawWater(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
				return basicSetExhaust(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
				return basicSetVentilation(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
				return basicSetMounting(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
				return basicSetAcOutput(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
				return basicSetAlarms(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
				return ((InternalEList<?>)getInspections()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
				return basicSetTrial(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
				return basicSetUpkeep(null, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
				return ((InternalEList<?>)getAcceptances()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
				return ((InternalEList<?>)getSignatures()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
				return ((InternalEList<?>)getPhotographs()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
				return ((InternalEList<?>)getRevisions()).basicRemove(otherEnd, msgs);
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
				return ((InternalEList<?>)getUnreadEntries()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION:
				return getFormatVersion();
			case GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER:
				return getRecordNumber();
			case GarboardPackage.COMMISSIONING_RECORD__TITLE:
				return getTitle();
			case GarboardPackage.COMMISSIONING_RECORD__CREATED_ON:
				return getCreatedOn();
			case GarboardPackage.COMMISSIONING_RECORD__PRACTICES:
				return getPractices();
			case GarboardPackage.COMMISSIONING_RECORD__REMARKS:
				return getRemarks();
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
				return getInstruments();
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
				return getParties();
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
				return getVessel();
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
				return getGeneratorSet();
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
				return getStartingBattery();
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
				return getFuelSupply();
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
				return getRawWater();
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
				return getExhaust();
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
				return getVentilation();
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
				return getMounting();
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
				return getAcOutput();
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
				return getAlarms();
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
				return getInspections();
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
				return getTrial();
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
				return getUpkeep();
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
				return getAcceptances();
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
				return getSignatures();
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
				return getPhotographs();
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
				return getRevisions();
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
				return getUnreadEntries();
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
			case GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION:
				setFormatVersion((String)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER:
				setRecordNumber((String)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__TITLE:
				setTitle((String)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__CREATED_ON:
				setCreatedOn((LocalDate)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PRACTICES:
				getPractices().clear();
				getPractices().addAll((Collection<? extends String>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__REMARKS:
				setRemarks((String)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
				getInstruments().clear();
				getInstruments().addAll((Collection<? extends Instrument>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
				getParties().clear();
				getParties().addAll((Collection<? extends Party>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
				setVessel((Vessel)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
				setGeneratorSet((GeneratorSet)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
				setStartingBattery((StartingBattery)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
				setFuelSupply((FuelSupply)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
				setRawWater((RawWaterCircuit)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
				setExhaust((ExhaustRun)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
				setVentilation((Ventilation)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
				setMounting((Mounting)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
				setAcOutput((AcOutput)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
				setAlarms((AlarmsAndSafety)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
				getInspections().clear();
				getInspections().addAll((Collection<? extends InspectionAnswer>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
				setTrial((Trial)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
				setUpkeep((Upkeep)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
				getAcceptances().clear();
				getAcceptances().addAll((Collection<? extends Acceptance>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
				getSignatures().clear();
				getSignatures().addAll((Collection<? extends Signature>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
				getPhotographs().clear();
				getPhotographs().addAll((Collection<? extends Photograph>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
				getRevisions().clear();
				getRevisions().addAll((Collection<? extends Revision>)newValue);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
				getUnreadEntries().clear();
				getUnreadEntries().addAll((Collection<? extends UnreadEntry>)newValue);
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
			case GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER:
				setRecordNumber(RECORD_NUMBER_EDEFAULT);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__CREATED_ON:
				setCreatedOn(CREATED_ON_EDEFAULT);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PRACTICES:
				getPractices().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__REMARKS:
				setRemarks(REMARKS_EDEFAULT);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
				getInstruments().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
				getParties().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
				setVessel((Vessel)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
				setGeneratorSet((GeneratorSet)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
				setStartingBattery((StartingBattery)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
				setFuelSupply((FuelSupply)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
				setRawWater((RawWaterCircuit)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
				setExhaust((ExhaustRun)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
				setVentilation((Ventilation)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
				setMounting((Mounting)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
				setAcOutput((AcOutput)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
				setAlarms((AlarmsAndSafety)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
				getInspections().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
				setTrial((Trial)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
				setUpkeep((Upkeep)null);
				return;
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
				getAcceptances().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
				getSignatures().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
				getPhotographs().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
				getRevisions().clear();
				return;
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
				getUnreadEntries().clear();
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
			case GarboardPackage.COMMISSIONING_RECORD__FORMAT_VERSION:
				return FORMAT_VERSION_EDEFAULT == null ? formatVersion != null : !FORMAT_VERSION_EDEFAULT.equals(formatVersion);
			case GarboardPackage.COMMISSIONING_RECORD__RECORD_NUMBER:
				return RECORD_NUMBER_EDEFAULT == null ? recordNumber != null : !RECORD_NUMBER_EDEFAULT.equals(recordNumber);
			case GarboardPackage.COMMISSIONING_RECORD__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case GarboardPackage.COMMISSIONING_RECORD__CREATED_ON:
				return CREATED_ON_EDEFAULT == null ? createdOn != null : !CREATED_ON_EDEFAULT.equals(createdOn);
			case GarboardPackage.COMMISSIONING_RECORD__PRACTICES:
				return practices != null && !practices.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__REMARKS:
				return REMARKS_EDEFAULT == null ? remarks != null : !REMARKS_EDEFAULT.equals(remarks);
			case GarboardPackage.COMMISSIONING_RECORD__INSTRUMENTS:
				return instruments != null && !instruments.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__PARTIES:
				return parties != null && !parties.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__VESSEL:
				return vessel != null;
			case GarboardPackage.COMMISSIONING_RECORD__GENERATOR_SET:
				return generatorSet != null;
			case GarboardPackage.COMMISSIONING_RECORD__STARTING_BATTERY:
				return startingBattery != null;
			case GarboardPackage.COMMISSIONING_RECORD__FUEL_SUPPLY:
				return fuelSupply != null;
			case GarboardPackage.COMMISSIONING_RECORD__RAW_WATER:
				return rawWater != null;
			case GarboardPackage.COMMISSIONING_RECORD__EXHAUST:
				return exhaust != null;
			case GarboardPackage.COMMISSIONING_RECORD__VENTILATION:
				return ventilation != null;
			case GarboardPackage.COMMISSIONING_RECORD__MOUNTING:
				return mounting != null;
			case GarboardPackage.COMMISSIONING_RECORD__AC_OUTPUT:
				return acOutput != null;
			case GarboardPackage.COMMISSIONING_RECORD__ALARMS:
				return alarms != null;
			case GarboardPackage.COMMISSIONING_RECORD__INSPECTIONS:
				return inspections != null && !inspections.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__TRIAL:
				return trial != null;
			case GarboardPackage.COMMISSIONING_RECORD__UPKEEP:
				return upkeep != null;
			case GarboardPackage.COMMISSIONING_RECORD__ACCEPTANCES:
				return acceptances != null && !acceptances.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__SIGNATURES:
				return signatures != null && !signatures.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__PHOTOGRAPHS:
				return photographs != null && !photographs.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__REVISIONS:
				return revisions != null && !revisions.isEmpty();
			case GarboardPackage.COMMISSIONING_RECORD__UNREAD_ENTRIES:
				return unreadEntries != null && !unreadEntries.isEmpty();
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
		result.append(" (formatVersion: ");
		result.append(formatVersion);
		result.append(", recordNumber: ");
		result.append(recordNumber);
		result.append(", title: ");
		result.append(title);
		result.append(", createdOn: ");
		result.append(createdOn);
		result.append(", practices: ");
		result.append(practices);
		result.append(", remarks: ");
		result.append(remarks);
		result.append(')');
		return result.toString();
	}

} //CommissioningRecordImpl
