/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.HullPickUp;
import garboard.model.Point;
import garboard.model.RawWaterCircuit;
import garboard.model.Seacock;
import garboard.model.SiphonBreak;
import garboard.model.WaterHoseRun;
import garboard.model.WaterPump;
import garboard.model.WaterStrainer;

import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Temperature;
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
 * An implementation of the model object '<em><b>Raw Water Circuit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getPickUp <em>Pick Up</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getSeacock <em>Seacock</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getStrainer <em>Strainer</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getHoses <em>Hoses</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getPump <em>Pump</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getSiphonBreak <em>Siphon Break</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getInjection <em>Injection</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getSiphonBreakHoseBore <em>Siphon Break Hose Bore</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getOwnIntake <em>Own Intake</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getDischargeAheadOfIntake <em>Discharge Ahead Of Intake</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getMeasuredFlow <em>Measured Flow</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getMeasuredVacuumAtPump <em>Measured Vacuum At Pump</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getMeasuredInletTemperature <em>Measured Inlet Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getMeasuredOverboardTemperature <em>Measured Overboard Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getDesignSeaTemperature <em>Design Sea Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getSeacockTagAtStartPanel <em>Seacock Tag At Start Panel</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getShutWhenNotInUse <em>Shut When Not In Use</em>}</li>
 *   <li>{@link garboard.model.impl.RawWaterCircuitImpl#getWinteriseConnection <em>Winterise Connection</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RawWaterCircuitImpl extends MinimalEObjectImpl.Container implements RawWaterCircuit {
	/**
	 * The cached value of the '{@link #getPickUp() <em>Pick Up</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUp()
	 * @generated
	 * @ordered
	 */
	protected HullPickUp pickUp;

	/**
	 * The cached value of the '{@link #getSeacock() <em>Seacock</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeacock()
	 * @generated
	 * @ordered
	 */
	protected Seacock seacock;

	/**
	 * The cached value of the '{@link #getStrainer() <em>Strainer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrainer()
	 * @generated
	 * @ordered
	 */
	protected WaterStrainer strainer;

	/**
	 * The cached value of the '{@link #getHoses() <em>Hoses</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoses()
	 * @generated
	 * @ordered
	 */
	protected EList<WaterHoseRun> hoses;

	/**
	 * The cached value of the '{@link #getPump() <em>Pump</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPump()
	 * @generated
	 * @ordered
	 */
	protected WaterPump pump;

	/**
	 * The cached value of the '{@link #getSiphonBreak() <em>Siphon Break</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiphonBreak()
	 * @generated
	 * @ordered
	 */
	protected SiphonBreak siphonBreak;

	/**
	 * The cached value of the '{@link #getInjection() <em>Injection</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjection()
	 * @generated
	 * @ordered
	 */
	protected Point injection;

	/**
	 * The default value of the '{@link #getSiphonBreakHoseBore() <em>Siphon Break Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiphonBreakHoseBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length SIPHON_BREAK_HOSE_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiphonBreakHoseBore() <em>Siphon Break Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiphonBreakHoseBore()
	 * @generated
	 * @ordered
	 */
	protected Length siphonBreakHoseBore = SIPHON_BREAK_HOSE_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnIntake() <em>Own Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnIntake()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OWN_INTAKE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOwnIntake() <em>Own Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnIntake()
	 * @generated
	 * @ordered
	 */
	protected Answer ownIntake = OWN_INTAKE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDischargeAheadOfIntake() <em>Discharge Ahead Of Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDischargeAheadOfIntake()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DISCHARGE_AHEAD_OF_INTAKE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDischargeAheadOfIntake() <em>Discharge Ahead Of Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDischargeAheadOfIntake()
	 * @generated
	 * @ordered
	 */
	protected Answer dischargeAheadOfIntake = DISCHARGE_AHEAD_OF_INTAKE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredFlow() <em>Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow MEASURED_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredFlow() <em>Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow measuredFlow = MEASURED_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredVacuumAtPump() <em>Measured Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredVacuumAtPump()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference MEASURED_VACUUM_AT_PUMP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredVacuumAtPump() <em>Measured Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredVacuumAtPump()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference measuredVacuumAtPump = MEASURED_VACUUM_AT_PUMP_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredInletTemperature() <em>Measured Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredInletTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature MEASURED_INLET_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredInletTemperature() <em>Measured Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredInletTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature measuredInletTemperature = MEASURED_INLET_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredOverboardTemperature() <em>Measured Overboard Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredOverboardTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature MEASURED_OVERBOARD_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredOverboardTemperature() <em>Measured Overboard Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredOverboardTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature measuredOverboardTemperature = MEASURED_OVERBOARD_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignSeaTemperature() <em>Design Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignSeaTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature DESIGN_SEA_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignSeaTemperature() <em>Design Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignSeaTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature designSeaTemperature = DESIGN_SEA_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeacockTagAtStartPanel() <em>Seacock Tag At Start Panel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeacockTagAtStartPanel()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SEACOCK_TAG_AT_START_PANEL_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSeacockTagAtStartPanel() <em>Seacock Tag At Start Panel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeacockTagAtStartPanel()
	 * @generated
	 * @ordered
	 */
	protected Answer seacockTagAtStartPanel = SEACOCK_TAG_AT_START_PANEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getShutWhenNotInUse() <em>Shut When Not In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShutWhenNotInUse()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SHUT_WHEN_NOT_IN_USE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getShutWhenNotInUse() <em>Shut When Not In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShutWhenNotInUse()
	 * @generated
	 * @ordered
	 */
	protected Answer shutWhenNotInUse = SHUT_WHEN_NOT_IN_USE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWinteriseConnection() <em>Winterise Connection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWinteriseConnection()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WINTERISE_CONNECTION_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWinteriseConnection() <em>Winterise Connection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWinteriseConnection()
	 * @generated
	 * @ordered
	 */
	protected Answer winteriseConnection = WINTERISE_CONNECTION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RawWaterCircuitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.RAW_WATER_CIRCUIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HullPickUp getPickUp() {
		return pickUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPickUp(HullPickUp newPickUp, NotificationChain msgs) {
		HullPickUp oldPickUp = pickUp;
		pickUp = newPickUp;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP, oldPickUp, newPickUp);
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
	public void setPickUp(HullPickUp newPickUp) {
		if (newPickUp != pickUp) {
			NotificationChain msgs = null;
			if (pickUp != null)
				msgs = ((InternalEObject)pickUp).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP, null, msgs);
			if (newPickUp != null)
				msgs = ((InternalEObject)newPickUp).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP, null, msgs);
			msgs = basicSetPickUp(newPickUp, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP, newPickUp, newPickUp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Seacock getSeacock() {
		return seacock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSeacock(Seacock newSeacock, NotificationChain msgs) {
		Seacock oldSeacock = seacock;
		seacock = newSeacock;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK, oldSeacock, newSeacock);
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
	public void setSeacock(Seacock newSeacock) {
		if (newSeacock != seacock) {
			NotificationChain msgs = null;
			if (seacock != null)
				msgs = ((InternalEObject)seacock).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK, null, msgs);
			if (newSeacock != null)
				msgs = ((InternalEObject)newSeacock).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK, null, msgs);
			msgs = basicSetSeacock(newSeacock, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK, newSeacock, newSeacock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterStrainer getStrainer() {
		return strainer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStrainer(WaterStrainer newStrainer, NotificationChain msgs) {
		WaterStrainer oldStrainer = strainer;
		strainer = newStrainer;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__STRAINER, oldStrainer, newStrainer);
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
	public void setStrainer(WaterStrainer newStrainer) {
		if (newStrainer != strainer) {
			NotificationChain msgs = null;
			if (strainer != null)
				msgs = ((InternalEObject)strainer).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__STRAINER, null, msgs);
			if (newStrainer != null)
				msgs = ((InternalEObject)newStrainer).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__STRAINER, null, msgs);
			msgs = basicSetStrainer(newStrainer, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__STRAINER, newStrainer, newStrainer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<WaterHoseRun> getHoses() {
		if (hoses == null) {
			hoses = new EObjectContainmentEList<WaterHoseRun>(WaterHoseRun.class, this, GarboardPackage.RAW_WATER_CIRCUIT__HOSES);
		}
		return hoses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterPump getPump() {
		return pump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPump(WaterPump newPump, NotificationChain msgs) {
		WaterPump oldPump = pump;
		pump = newPump;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__PUMP, oldPump, newPump);
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
	public void setPump(WaterPump newPump) {
		if (newPump != pump) {
			NotificationChain msgs = null;
			if (pump != null)
				msgs = ((InternalEObject)pump).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__PUMP, null, msgs);
			if (newPump != null)
				msgs = ((InternalEObject)newPump).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__PUMP, null, msgs);
			msgs = basicSetPump(newPump, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__PUMP, newPump, newPump));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SiphonBreak getSiphonBreak() {
		return siphonBreak;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSiphonBreak(SiphonBreak newSiphonBreak, NotificationChain msgs) {
		SiphonBreak oldSiphonBreak = siphonBreak;
		siphonBreak = newSiphonBreak;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK, oldSiphonBreak, newSiphonBreak);
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
	public void setSiphonBreak(SiphonBreak newSiphonBreak) {
		if (newSiphonBreak != siphonBreak) {
			NotificationChain msgs = null;
			if (siphonBreak != null)
				msgs = ((InternalEObject)siphonBreak).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK, null, msgs);
			if (newSiphonBreak != null)
				msgs = ((InternalEObject)newSiphonBreak).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK, null, msgs);
			msgs = basicSetSiphonBreak(newSiphonBreak, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK, newSiphonBreak, newSiphonBreak));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getInjection() {
		return injection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetInjection(Point newInjection, NotificationChain msgs) {
		Point oldInjection = injection;
		injection = newInjection;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__INJECTION, oldInjection, newInjection);
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
	public void setInjection(Point newInjection) {
		if (newInjection != injection) {
			NotificationChain msgs = null;
			if (injection != null)
				msgs = ((InternalEObject)injection).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__INJECTION, null, msgs);
			if (newInjection != null)
				msgs = ((InternalEObject)newInjection).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RAW_WATER_CIRCUIT__INJECTION, null, msgs);
			msgs = basicSetInjection(newInjection, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__INJECTION, newInjection, newInjection));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSiphonBreakHoseBore() {
		return siphonBreakHoseBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiphonBreakHoseBore(Length newSiphonBreakHoseBore) {
		Length oldSiphonBreakHoseBore = siphonBreakHoseBore;
		siphonBreakHoseBore = newSiphonBreakHoseBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE, oldSiphonBreakHoseBore, siphonBreakHoseBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOwnIntake() {
		return ownIntake;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnIntake(Answer newOwnIntake) {
		Answer oldOwnIntake = ownIntake;
		ownIntake = newOwnIntake == null ? OWN_INTAKE_EDEFAULT : newOwnIntake;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE, oldOwnIntake, ownIntake));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDischargeAheadOfIntake() {
		return dischargeAheadOfIntake;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDischargeAheadOfIntake(Answer newDischargeAheadOfIntake) {
		Answer oldDischargeAheadOfIntake = dischargeAheadOfIntake;
		dischargeAheadOfIntake = newDischargeAheadOfIntake == null ? DISCHARGE_AHEAD_OF_INTAKE_EDEFAULT : newDischargeAheadOfIntake;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE, oldDischargeAheadOfIntake, dischargeAheadOfIntake));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getMeasuredFlow() {
		return measuredFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredFlow(VolumeFlow newMeasuredFlow) {
		VolumeFlow oldMeasuredFlow = measuredFlow;
		measuredFlow = newMeasuredFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW, oldMeasuredFlow, measuredFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getMeasuredVacuumAtPump() {
		return measuredVacuumAtPump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredVacuumAtPump(PressureDifference newMeasuredVacuumAtPump) {
		PressureDifference oldMeasuredVacuumAtPump = measuredVacuumAtPump;
		measuredVacuumAtPump = newMeasuredVacuumAtPump;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP, oldMeasuredVacuumAtPump, measuredVacuumAtPump));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getMeasuredInletTemperature() {
		return measuredInletTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredInletTemperature(Temperature newMeasuredInletTemperature) {
		Temperature oldMeasuredInletTemperature = measuredInletTemperature;
		measuredInletTemperature = newMeasuredInletTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE, oldMeasuredInletTemperature, measuredInletTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getMeasuredOverboardTemperature() {
		return measuredOverboardTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredOverboardTemperature(Temperature newMeasuredOverboardTemperature) {
		Temperature oldMeasuredOverboardTemperature = measuredOverboardTemperature;
		measuredOverboardTemperature = newMeasuredOverboardTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE, oldMeasuredOverboardTemperature, measuredOverboardTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getDesignSeaTemperature() {
		return designSeaTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignSeaTemperature(Temperature newDesignSeaTemperature) {
		Temperature oldDesignSeaTemperature = designSeaTemperature;
		designSeaTemperature = newDesignSeaTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE, oldDesignSeaTemperature, designSeaTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSeacockTagAtStartPanel() {
		return seacockTagAtStartPanel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeacockTagAtStartPanel(Answer newSeacockTagAtStartPanel) {
		Answer oldSeacockTagAtStartPanel = seacockTagAtStartPanel;
		seacockTagAtStartPanel = newSeacockTagAtStartPanel == null ? SEACOCK_TAG_AT_START_PANEL_EDEFAULT : newSeacockTagAtStartPanel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL, oldSeacockTagAtStartPanel, seacockTagAtStartPanel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getShutWhenNotInUse() {
		return shutWhenNotInUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShutWhenNotInUse(Answer newShutWhenNotInUse) {
		Answer oldShutWhenNotInUse = shutWhenNotInUse;
		shutWhenNotInUse = newShutWhenNotInUse == null ? SHUT_WHEN_NOT_IN_USE_EDEFAULT : newShutWhenNotInUse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE, oldShutWhenNotInUse, shutWhenNotInUse));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWinteriseConnection() {
		return winteriseConnection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWinteriseConnection(Answer newWinteriseConnection) {
		Answer oldWinteriseConnection = winteriseConnection;
		winteriseConnection = newWinteriseConnection == null ? WINTERISE_CONNECTION_EDEFAULT : newWinteriseConnection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION, oldWinteriseConnection, winteriseConnection));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
				return basicSetPickUp(null, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
				return basicSetSeacock(null, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
				return basicSetStrainer(null, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
				return ((InternalEList<?>)getHoses()).basicRemove(otherEnd, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
				return basicSetPump(null, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
				return basicSetSiphonBreak(null, msgs);
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
				return basicSetInjection(null, msgs);
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
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
				return getPickUp();
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
				return getSeacock();
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
				return getStrainer();
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
				return getHoses();
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
				return getPump();
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
				return getSiphonBreak();
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
				return getInjection();
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE:
				return getSiphonBreakHoseBore();
			case GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE:
				return getOwnIntake();
			case GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE:
				return getDischargeAheadOfIntake();
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW:
				return getMeasuredFlow();
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP:
				return getMeasuredVacuumAtPump();
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE:
				return getMeasuredInletTemperature();
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE:
				return getMeasuredOverboardTemperature();
			case GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE:
				return getDesignSeaTemperature();
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL:
				return getSeacockTagAtStartPanel();
			case GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE:
				return getShutWhenNotInUse();
			case GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION:
				return getWinteriseConnection();
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
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
				setPickUp((HullPickUp)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
				setSeacock((Seacock)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
				setStrainer((WaterStrainer)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
				getHoses().clear();
				getHoses().addAll((Collection<? extends WaterHoseRun>)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
				setPump((WaterPump)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
				setSiphonBreak((SiphonBreak)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
				setInjection((Point)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE:
				setSiphonBreakHoseBore((Length)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE:
				setOwnIntake((Answer)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE:
				setDischargeAheadOfIntake((Answer)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW:
				setMeasuredFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP:
				setMeasuredVacuumAtPump((PressureDifference)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE:
				setMeasuredInletTemperature((Temperature)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE:
				setMeasuredOverboardTemperature((Temperature)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE:
				setDesignSeaTemperature((Temperature)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL:
				setSeacockTagAtStartPanel((Answer)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE:
				setShutWhenNotInUse((Answer)newValue);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION:
				setWinteriseConnection((Answer)newValue);
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
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
				setPickUp((HullPickUp)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
				setSeacock((Seacock)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
				setStrainer((WaterStrainer)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
				getHoses().clear();
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
				setPump((WaterPump)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
				setSiphonBreak((SiphonBreak)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
				setInjection((Point)null);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE:
				setSiphonBreakHoseBore(SIPHON_BREAK_HOSE_BORE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE:
				setOwnIntake(OWN_INTAKE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE:
				setDischargeAheadOfIntake(DISCHARGE_AHEAD_OF_INTAKE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW:
				setMeasuredFlow(MEASURED_FLOW_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP:
				setMeasuredVacuumAtPump(MEASURED_VACUUM_AT_PUMP_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE:
				setMeasuredInletTemperature(MEASURED_INLET_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE:
				setMeasuredOverboardTemperature(MEASURED_OVERBOARD_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE:
				setDesignSeaTemperature(DESIGN_SEA_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL:
				setSeacockTagAtStartPanel(SEACOCK_TAG_AT_START_PANEL_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE:
				setShutWhenNotInUse(SHUT_WHEN_NOT_IN_USE_EDEFAULT);
				return;
			case GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION:
				setWinteriseConnection(WINTERISE_CONNECTION_EDEFAULT);
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
			case GarboardPackage.RAW_WATER_CIRCUIT__PICK_UP:
				return pickUp != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK:
				return seacock != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__STRAINER:
				return strainer != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__HOSES:
				return hoses != null && !hoses.isEmpty();
			case GarboardPackage.RAW_WATER_CIRCUIT__PUMP:
				return pump != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK:
				return siphonBreak != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__INJECTION:
				return injection != null;
			case GarboardPackage.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE:
				return SIPHON_BREAK_HOSE_BORE_EDEFAULT == null ? siphonBreakHoseBore != null : !SIPHON_BREAK_HOSE_BORE_EDEFAULT.equals(siphonBreakHoseBore);
			case GarboardPackage.RAW_WATER_CIRCUIT__OWN_INTAKE:
				return ownIntake != OWN_INTAKE_EDEFAULT;
			case GarboardPackage.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE:
				return dischargeAheadOfIntake != DISCHARGE_AHEAD_OF_INTAKE_EDEFAULT;
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_FLOW:
				return MEASURED_FLOW_EDEFAULT == null ? measuredFlow != null : !MEASURED_FLOW_EDEFAULT.equals(measuredFlow);
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP:
				return MEASURED_VACUUM_AT_PUMP_EDEFAULT == null ? measuredVacuumAtPump != null : !MEASURED_VACUUM_AT_PUMP_EDEFAULT.equals(measuredVacuumAtPump);
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE:
				return MEASURED_INLET_TEMPERATURE_EDEFAULT == null ? measuredInletTemperature != null : !MEASURED_INLET_TEMPERATURE_EDEFAULT.equals(measuredInletTemperature);
			case GarboardPackage.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE:
				return MEASURED_OVERBOARD_TEMPERATURE_EDEFAULT == null ? measuredOverboardTemperature != null : !MEASURED_OVERBOARD_TEMPERATURE_EDEFAULT.equals(measuredOverboardTemperature);
			case GarboardPackage.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE:
				return DESIGN_SEA_TEMPERATURE_EDEFAULT == null ? designSeaTemperature != null : !DESIGN_SEA_TEMPERATURE_EDEFAULT.equals(designSeaTemperature);
			case GarboardPackage.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL:
				return seacockTagAtStartPanel != SEACOCK_TAG_AT_START_PANEL_EDEFAULT;
			case GarboardPackage.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE:
				return shutWhenNotInUse != SHUT_WHEN_NOT_IN_USE_EDEFAULT;
			case GarboardPackage.RAW_WATER_CIRCUIT__WINTERISE_CONNECTION:
				return winteriseConnection != WINTERISE_CONNECTION_EDEFAULT;
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
		result.append(" (siphonBreakHoseBore: ");
		result.append(siphonBreakHoseBore);
		result.append(", ownIntake: ");
		result.append(ownIntake);
		result.append(", dischargeAheadOfIntake: ");
		result.append(dischargeAheadOfIntake);
		result.append(", measuredFlow: ");
		result.append(measuredFlow);
		result.append(", measuredVacuumAtPump: ");
		result.append(measuredVacuumAtPump);
		result.append(", measuredInletTemperature: ");
		result.append(measuredInletTemperature);
		result.append(", measuredOverboardTemperature: ");
		result.append(measuredOverboardTemperature);
		result.append(", designSeaTemperature: ");
		result.append(designSeaTemperature);
		result.append(", seacockTagAtStartPanel: ");
		result.append(seacockTagAtStartPanel);
		result.append(", shutWhenNotInUse: ");
		result.append(shutWhenNotInUse);
		result.append(", winteriseConnection: ");
		result.append(winteriseConnection);
		result.append(')');
		return result.toString();
	}

} //RawWaterCircuitImpl
