/**
 */
package garboard.model.impl;

import garboard.model.AlarmDevice;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.GarboardPackage;

import garboard.quantity.TimeSpan;

import java.time.LocalDate;

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
 * An implementation of the model object '<em><b>Alarms And Safety</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getAlarms <em>Alarms</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getCarbonMonoxideInEverySpace <em>Carbon Monoxide In Every Space</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getCarbonMonoxideMarked <em>Carbon Monoxide Marked</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getCarbonMonoxideExpiry <em>Carbon Monoxide Expiry</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getCarbonMonoxideAlwaysPowered <em>Carbon Monoxide Always Powered</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getHabitableSpaces <em>Habitable Spaces</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getCarbonMonoxideAlarms <em>Carbon Monoxide Alarms</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getVapourDetector <em>Vapour Detector</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getVapourSensorLow <em>Vapour Sensor Low</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getVapourBeforeStart <em>Vapour Before Start</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getFireExtinguisher <em>Fire Extinguisher</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getFixedFireSystem <em>Fixed Fire System</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getFireSystemStopsSet <em>Fire System Stops Set</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getFireDischargePort <em>Fire Discharge Port</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getRemoteStop <em>Remote Stop</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmsAndSafetyImpl#getWarningLabels <em>Warning Labels</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AlarmsAndSafetyImpl extends MinimalEObjectImpl.Container implements AlarmsAndSafety {
	/**
	 * The cached value of the '{@link #getAlarms() <em>Alarms</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlarms()
	 * @generated
	 * @ordered
	 */
	protected EList<AlarmDevice> alarms;

	/**
	 * The default value of the '{@link #getCarbonMonoxideInEverySpace() <em>Carbon Monoxide In Every Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideInEverySpace()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CARBON_MONOXIDE_IN_EVERY_SPACE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideInEverySpace() <em>Carbon Monoxide In Every Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideInEverySpace()
	 * @generated
	 * @ordered
	 */
	protected Answer carbonMonoxideInEverySpace = CARBON_MONOXIDE_IN_EVERY_SPACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxideMarked() <em>Carbon Monoxide Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideMarked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CARBON_MONOXIDE_MARKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideMarked() <em>Carbon Monoxide Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideMarked()
	 * @generated
	 * @ordered
	 */
	protected Answer carbonMonoxideMarked = CARBON_MONOXIDE_MARKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxideExpiry() <em>Carbon Monoxide Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideExpiry()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate CARBON_MONOXIDE_EXPIRY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideExpiry() <em>Carbon Monoxide Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideExpiry()
	 * @generated
	 * @ordered
	 */
	protected LocalDate carbonMonoxideExpiry = CARBON_MONOXIDE_EXPIRY_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxideAlwaysPowered() <em>Carbon Monoxide Always Powered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideAlwaysPowered()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CARBON_MONOXIDE_ALWAYS_POWERED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideAlwaysPowered() <em>Carbon Monoxide Always Powered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideAlwaysPowered()
	 * @generated
	 * @ordered
	 */
	protected Answer carbonMonoxideAlwaysPowered = CARBON_MONOXIDE_ALWAYS_POWERED_EDEFAULT;

	/**
	 * The default value of the '{@link #getHabitableSpaces() <em>Habitable Spaces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHabitableSpaces()
	 * @generated
	 * @ordered
	 */
	protected static final Integer HABITABLE_SPACES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHabitableSpaces() <em>Habitable Spaces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHabitableSpaces()
	 * @generated
	 * @ordered
	 */
	protected Integer habitableSpaces = HABITABLE_SPACES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxideAlarms() <em>Carbon Monoxide Alarms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideAlarms()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CARBON_MONOXIDE_ALARMS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideAlarms() <em>Carbon Monoxide Alarms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideAlarms()
	 * @generated
	 * @ordered
	 */
	protected Integer carbonMonoxideAlarms = CARBON_MONOXIDE_ALARMS_EDEFAULT;

	/**
	 * The default value of the '{@link #getVapourDetector() <em>Vapour Detector</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourDetector()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VAPOUR_DETECTOR_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVapourDetector() <em>Vapour Detector</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourDetector()
	 * @generated
	 * @ordered
	 */
	protected Answer vapourDetector = VAPOUR_DETECTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getVapourSensorLow() <em>Vapour Sensor Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourSensorLow()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VAPOUR_SENSOR_LOW_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVapourSensorLow() <em>Vapour Sensor Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourSensorLow()
	 * @generated
	 * @ordered
	 */
	protected Answer vapourSensorLow = VAPOUR_SENSOR_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getVapourBeforeStart() <em>Vapour Before Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourBeforeStart()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan VAPOUR_BEFORE_START_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVapourBeforeStart() <em>Vapour Before Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVapourBeforeStart()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan vapourBeforeStart = VAPOUR_BEFORE_START_EDEFAULT;

	/**
	 * The default value of the '{@link #getFireExtinguisher() <em>Fire Extinguisher</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireExtinguisher()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIRE_EXTINGUISHER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFireExtinguisher() <em>Fire Extinguisher</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireExtinguisher()
	 * @generated
	 * @ordered
	 */
	protected Answer fireExtinguisher = FIRE_EXTINGUISHER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFixedFireSystem() <em>Fixed Fire System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixedFireSystem()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIXED_FIRE_SYSTEM_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFixedFireSystem() <em>Fixed Fire System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixedFireSystem()
	 * @generated
	 * @ordered
	 */
	protected Answer fixedFireSystem = FIXED_FIRE_SYSTEM_EDEFAULT;

	/**
	 * The default value of the '{@link #getFireSystemStopsSet() <em>Fire System Stops Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireSystemStopsSet()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIRE_SYSTEM_STOPS_SET_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFireSystemStopsSet() <em>Fire System Stops Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireSystemStopsSet()
	 * @generated
	 * @ordered
	 */
	protected Answer fireSystemStopsSet = FIRE_SYSTEM_STOPS_SET_EDEFAULT;

	/**
	 * The default value of the '{@link #getFireDischargePort() <em>Fire Discharge Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireDischargePort()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIRE_DISCHARGE_PORT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFireDischargePort() <em>Fire Discharge Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireDischargePort()
	 * @generated
	 * @ordered
	 */
	protected Answer fireDischargePort = FIRE_DISCHARGE_PORT_EDEFAULT;

	/**
	 * The default value of the '{@link #getRemoteStop() <em>Remote Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemoteStop()
	 * @generated
	 * @ordered
	 */
	protected static final Answer REMOTE_STOP_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getRemoteStop() <em>Remote Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemoteStop()
	 * @generated
	 * @ordered
	 */
	protected Answer remoteStop = REMOTE_STOP_EDEFAULT;

	/**
	 * The default value of the '{@link #getWarningLabels() <em>Warning Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWarningLabels()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WARNING_LABELS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWarningLabels() <em>Warning Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWarningLabels()
	 * @generated
	 * @ordered
	 */
	protected Answer warningLabels = WARNING_LABELS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AlarmsAndSafetyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.ALARMS_AND_SAFETY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AlarmDevice> getAlarms() {
		if (alarms == null) {
			alarms = new EObjectContainmentEList<AlarmDevice>(AlarmDevice.class, this, GarboardPackage.ALARMS_AND_SAFETY__ALARMS);
		}
		return alarms;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCarbonMonoxideInEverySpace() {
		return carbonMonoxideInEverySpace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideInEverySpace(Answer newCarbonMonoxideInEverySpace) {
		Answer oldCarbonMonoxideInEverySpace = carbonMonoxideInEverySpace;
		carbonMonoxideInEverySpace = newCarbonMonoxideInEverySpace == null ? CARBON_MONOXIDE_IN_EVERY_SPACE_EDEFAULT : newCarbonMonoxideInEverySpace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE, oldCarbonMonoxideInEverySpace, carbonMonoxideInEverySpace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCarbonMonoxideMarked() {
		return carbonMonoxideMarked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideMarked(Answer newCarbonMonoxideMarked) {
		Answer oldCarbonMonoxideMarked = carbonMonoxideMarked;
		carbonMonoxideMarked = newCarbonMonoxideMarked == null ? CARBON_MONOXIDE_MARKED_EDEFAULT : newCarbonMonoxideMarked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED, oldCarbonMonoxideMarked, carbonMonoxideMarked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCarbonMonoxideExpiry() {
		return carbonMonoxideExpiry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideExpiry(LocalDate newCarbonMonoxideExpiry) {
		LocalDate oldCarbonMonoxideExpiry = carbonMonoxideExpiry;
		carbonMonoxideExpiry = newCarbonMonoxideExpiry;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY, oldCarbonMonoxideExpiry, carbonMonoxideExpiry));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCarbonMonoxideAlwaysPowered() {
		return carbonMonoxideAlwaysPowered;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideAlwaysPowered(Answer newCarbonMonoxideAlwaysPowered) {
		Answer oldCarbonMonoxideAlwaysPowered = carbonMonoxideAlwaysPowered;
		carbonMonoxideAlwaysPowered = newCarbonMonoxideAlwaysPowered == null ? CARBON_MONOXIDE_ALWAYS_POWERED_EDEFAULT : newCarbonMonoxideAlwaysPowered;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED, oldCarbonMonoxideAlwaysPowered, carbonMonoxideAlwaysPowered));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getHabitableSpaces() {
		return habitableSpaces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHabitableSpaces(Integer newHabitableSpaces) {
		Integer oldHabitableSpaces = habitableSpaces;
		habitableSpaces = newHabitableSpaces;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES, oldHabitableSpaces, habitableSpaces));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCarbonMonoxideAlarms() {
		return carbonMonoxideAlarms;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideAlarms(Integer newCarbonMonoxideAlarms) {
		Integer oldCarbonMonoxideAlarms = carbonMonoxideAlarms;
		carbonMonoxideAlarms = newCarbonMonoxideAlarms;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS, oldCarbonMonoxideAlarms, carbonMonoxideAlarms));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVapourDetector() {
		return vapourDetector;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVapourDetector(Answer newVapourDetector) {
		Answer oldVapourDetector = vapourDetector;
		vapourDetector = newVapourDetector == null ? VAPOUR_DETECTOR_EDEFAULT : newVapourDetector;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR, oldVapourDetector, vapourDetector));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVapourSensorLow() {
		return vapourSensorLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVapourSensorLow(Answer newVapourSensorLow) {
		Answer oldVapourSensorLow = vapourSensorLow;
		vapourSensorLow = newVapourSensorLow == null ? VAPOUR_SENSOR_LOW_EDEFAULT : newVapourSensorLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW, oldVapourSensorLow, vapourSensorLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getVapourBeforeStart() {
		return vapourBeforeStart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVapourBeforeStart(TimeSpan newVapourBeforeStart) {
		TimeSpan oldVapourBeforeStart = vapourBeforeStart;
		vapourBeforeStart = newVapourBeforeStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START, oldVapourBeforeStart, vapourBeforeStart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFireExtinguisher() {
		return fireExtinguisher;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFireExtinguisher(Answer newFireExtinguisher) {
		Answer oldFireExtinguisher = fireExtinguisher;
		fireExtinguisher = newFireExtinguisher == null ? FIRE_EXTINGUISHER_EDEFAULT : newFireExtinguisher;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER, oldFireExtinguisher, fireExtinguisher));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFixedFireSystem() {
		return fixedFireSystem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFixedFireSystem(Answer newFixedFireSystem) {
		Answer oldFixedFireSystem = fixedFireSystem;
		fixedFireSystem = newFixedFireSystem == null ? FIXED_FIRE_SYSTEM_EDEFAULT : newFixedFireSystem;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM, oldFixedFireSystem, fixedFireSystem));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFireSystemStopsSet() {
		return fireSystemStopsSet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFireSystemStopsSet(Answer newFireSystemStopsSet) {
		Answer oldFireSystemStopsSet = fireSystemStopsSet;
		fireSystemStopsSet = newFireSystemStopsSet == null ? FIRE_SYSTEM_STOPS_SET_EDEFAULT : newFireSystemStopsSet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET, oldFireSystemStopsSet, fireSystemStopsSet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFireDischargePort() {
		return fireDischargePort;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFireDischargePort(Answer newFireDischargePort) {
		Answer oldFireDischargePort = fireDischargePort;
		fireDischargePort = newFireDischargePort == null ? FIRE_DISCHARGE_PORT_EDEFAULT : newFireDischargePort;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT, oldFireDischargePort, fireDischargePort));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getRemoteStop() {
		return remoteStop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemoteStop(Answer newRemoteStop) {
		Answer oldRemoteStop = remoteStop;
		remoteStop = newRemoteStop == null ? REMOTE_STOP_EDEFAULT : newRemoteStop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP, oldRemoteStop, remoteStop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWarningLabels() {
		return warningLabels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWarningLabels(Answer newWarningLabels) {
		Answer oldWarningLabels = warningLabels;
		warningLabels = newWarningLabels == null ? WARNING_LABELS_EDEFAULT : newWarningLabels;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS, oldWarningLabels, warningLabels));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
				return ((InternalEList<?>)getAlarms()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
				return getAlarms();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE:
				return getCarbonMonoxideInEverySpace();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED:
				return getCarbonMonoxideMarked();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY:
				return getCarbonMonoxideExpiry();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED:
				return getCarbonMonoxideAlwaysPowered();
			case GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES:
				return getHabitableSpaces();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS:
				return getCarbonMonoxideAlarms();
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR:
				return getVapourDetector();
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW:
				return getVapourSensorLow();
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START:
				return getVapourBeforeStart();
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER:
				return getFireExtinguisher();
			case GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM:
				return getFixedFireSystem();
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET:
				return getFireSystemStopsSet();
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT:
				return getFireDischargePort();
			case GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP:
				return getRemoteStop();
			case GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS:
				return getWarningLabels();
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
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
				getAlarms().clear();
				getAlarms().addAll((Collection<? extends AlarmDevice>)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE:
				setCarbonMonoxideInEverySpace((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED:
				setCarbonMonoxideMarked((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY:
				setCarbonMonoxideExpiry((LocalDate)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED:
				setCarbonMonoxideAlwaysPowered((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES:
				setHabitableSpaces((Integer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS:
				setCarbonMonoxideAlarms((Integer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR:
				setVapourDetector((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW:
				setVapourSensorLow((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START:
				setVapourBeforeStart((TimeSpan)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER:
				setFireExtinguisher((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM:
				setFixedFireSystem((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET:
				setFireSystemStopsSet((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT:
				setFireDischargePort((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP:
				setRemoteStop((Answer)newValue);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS:
				setWarningLabels((Answer)newValue);
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
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
				getAlarms().clear();
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE:
				setCarbonMonoxideInEverySpace(CARBON_MONOXIDE_IN_EVERY_SPACE_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED:
				setCarbonMonoxideMarked(CARBON_MONOXIDE_MARKED_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY:
				setCarbonMonoxideExpiry(CARBON_MONOXIDE_EXPIRY_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED:
				setCarbonMonoxideAlwaysPowered(CARBON_MONOXIDE_ALWAYS_POWERED_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES:
				setHabitableSpaces(HABITABLE_SPACES_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS:
				setCarbonMonoxideAlarms(CARBON_MONOXIDE_ALARMS_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR:
				setVapourDetector(VAPOUR_DETECTOR_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW:
				setVapourSensorLow(VAPOUR_SENSOR_LOW_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START:
				setVapourBeforeStart(VAPOUR_BEFORE_START_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER:
				setFireExtinguisher(FIRE_EXTINGUISHER_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM:
				setFixedFireSystem(FIXED_FIRE_SYSTEM_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET:
				setFireSystemStopsSet(FIRE_SYSTEM_STOPS_SET_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT:
				setFireDischargePort(FIRE_DISCHARGE_PORT_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP:
				setRemoteStop(REMOTE_STOP_EDEFAULT);
				return;
			case GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS:
				setWarningLabels(WARNING_LABELS_EDEFAULT);
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
			case GarboardPackage.ALARMS_AND_SAFETY__ALARMS:
				return alarms != null && !alarms.isEmpty();
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE:
				return carbonMonoxideInEverySpace != CARBON_MONOXIDE_IN_EVERY_SPACE_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED:
				return carbonMonoxideMarked != CARBON_MONOXIDE_MARKED_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY:
				return CARBON_MONOXIDE_EXPIRY_EDEFAULT == null ? carbonMonoxideExpiry != null : !CARBON_MONOXIDE_EXPIRY_EDEFAULT.equals(carbonMonoxideExpiry);
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED:
				return carbonMonoxideAlwaysPowered != CARBON_MONOXIDE_ALWAYS_POWERED_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__HABITABLE_SPACES:
				return HABITABLE_SPACES_EDEFAULT == null ? habitableSpaces != null : !HABITABLE_SPACES_EDEFAULT.equals(habitableSpaces);
			case GarboardPackage.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS:
				return CARBON_MONOXIDE_ALARMS_EDEFAULT == null ? carbonMonoxideAlarms != null : !CARBON_MONOXIDE_ALARMS_EDEFAULT.equals(carbonMonoxideAlarms);
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_DETECTOR:
				return vapourDetector != VAPOUR_DETECTOR_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW:
				return vapourSensorLow != VAPOUR_SENSOR_LOW_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START:
				return VAPOUR_BEFORE_START_EDEFAULT == null ? vapourBeforeStart != null : !VAPOUR_BEFORE_START_EDEFAULT.equals(vapourBeforeStart);
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER:
				return fireExtinguisher != FIRE_EXTINGUISHER_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM:
				return fixedFireSystem != FIXED_FIRE_SYSTEM_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET:
				return fireSystemStopsSet != FIRE_SYSTEM_STOPS_SET_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT:
				return fireDischargePort != FIRE_DISCHARGE_PORT_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__REMOTE_STOP:
				return remoteStop != REMOTE_STOP_EDEFAULT;
			case GarboardPackage.ALARMS_AND_SAFETY__WARNING_LABELS:
				return warningLabels != WARNING_LABELS_EDEFAULT;
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
		result.append(" (carbonMonoxideInEverySpace: ");
		result.append(carbonMonoxideInEverySpace);
		result.append(", carbonMonoxideMarked: ");
		result.append(carbonMonoxideMarked);
		result.append(", carbonMonoxideExpiry: ");
		result.append(carbonMonoxideExpiry);
		result.append(", carbonMonoxideAlwaysPowered: ");
		result.append(carbonMonoxideAlwaysPowered);
		result.append(", habitableSpaces: ");
		result.append(habitableSpaces);
		result.append(", carbonMonoxideAlarms: ");
		result.append(carbonMonoxideAlarms);
		result.append(", vapourDetector: ");
		result.append(vapourDetector);
		result.append(", vapourSensorLow: ");
		result.append(vapourSensorLow);
		result.append(", vapourBeforeStart: ");
		result.append(vapourBeforeStart);
		result.append(", fireExtinguisher: ");
		result.append(fireExtinguisher);
		result.append(", fixedFireSystem: ");
		result.append(fixedFireSystem);
		result.append(", fireSystemStopsSet: ");
		result.append(fireSystemStopsSet);
		result.append(", fireDischargePort: ");
		result.append(fireDischargePort);
		result.append(", remoteStop: ");
		result.append(remoteStop);
		result.append(", warningLabels: ");
		result.append(warningLabels);
		result.append(')');
		return result.toString();
	}

} //AlarmsAndSafetyImpl
