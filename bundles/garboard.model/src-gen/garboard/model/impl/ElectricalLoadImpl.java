/**
 */
package garboard.model.impl;

import garboard.model.ElectricalLoad;
import garboard.model.GarboardPackage;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;

import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Electrical Load</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getPower <em>Power</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getEfficiency <em>Efficiency</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getPowerFactor <em>Power Factor</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getDemandFactor <em>Demand Factor</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getExclusiveWith <em>Exclusive With</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getPhase <em>Phase</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getMotorHorsepower <em>Motor Horsepower</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getCodeLetter <em>Code Letter</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getLockedRotorCurrent <em>Locked Rotor Current</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getStarting <em>Starting</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getVoltage <em>Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.ElectricalLoadImpl#getCondition <em>Condition</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ElectricalLoadImpl extends ItemImpl implements ElectricalLoad {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final LoadKind KIND_EDEFAULT = LoadKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected LoadKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPower() <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPower()
	 * @generated
	 * @ordered
	 */
	protected static final Power POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPower() <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPower()
	 * @generated
	 * @ordered
	 */
	protected Power power = POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getEfficiency() <em>Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEfficiency()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio EFFICIENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEfficiency() <em>Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEfficiency()
	 * @generated
	 * @ordered
	 */
	protected Ratio efficiency = EFFICIENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPowerFactor() <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio POWER_FACTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPowerFactor() <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected Ratio powerFactor = POWER_FACTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getDemandFactor() <em>Demand Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDemandFactor()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio DEMAND_FACTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDemandFactor() <em>Demand Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDemandFactor()
	 * @generated
	 * @ordered
	 */
	protected Ratio demandFactor = DEMAND_FACTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected static final String GROUP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected String group = GROUP_EDEFAULT;

	/**
	 * The default value of the '{@link #getExclusiveWith() <em>Exclusive With</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExclusiveWith()
	 * @generated
	 * @ordered
	 */
	protected static final String EXCLUSIVE_WITH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExclusiveWith() <em>Exclusive With</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExclusiveWith()
	 * @generated
	 * @ordered
	 */
	protected String exclusiveWith = EXCLUSIVE_WITH_EDEFAULT;

	/**
	 * The default value of the '{@link #getPhase() <em>Phase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhase()
	 * @generated
	 * @ordered
	 */
	protected static final String PHASE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPhase() <em>Phase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhase()
	 * @generated
	 * @ordered
	 */
	protected String phase = PHASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMotorHorsepower() <em>Motor Horsepower</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMotorHorsepower()
	 * @generated
	 * @ordered
	 */
	protected static final Power MOTOR_HORSEPOWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMotorHorsepower() <em>Motor Horsepower</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMotorHorsepower()
	 * @generated
	 * @ordered
	 */
	protected Power motorHorsepower = MOTOR_HORSEPOWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getCodeLetter() <em>Code Letter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCodeLetter()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_LETTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCodeLetter() <em>Code Letter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCodeLetter()
	 * @generated
	 * @ordered
	 */
	protected String codeLetter = CODE_LETTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLockedRotorCurrent() <em>Locked Rotor Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLockedRotorCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current LOCKED_ROTOR_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLockedRotorCurrent() <em>Locked Rotor Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLockedRotorCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current lockedRotorCurrent = LOCKED_ROTOR_CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getStarting() <em>Starting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarting()
	 * @generated
	 * @ordered
	 */
	protected static final MotorStarting STARTING_EDEFAULT = MotorStarting.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getStarting() <em>Starting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarting()
	 * @generated
	 * @ordered
	 */
	protected MotorStarting starting = STARTING_EDEFAULT;

	/**
	 * The default value of the '{@link #getVoltage() <em>Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVoltage() <em>Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage voltage = VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected static final String CONDITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected String condition = CONDITION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ElectricalLoadImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.ELECTRICAL_LOAD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LoadKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(LoadKind newKind) {
		LoadKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getPower() {
		return power;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPower(Power newPower) {
		Power oldPower = power;
		power = newPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__POWER, oldPower, power));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getEfficiency() {
		return efficiency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEfficiency(Ratio newEfficiency) {
		Ratio oldEfficiency = efficiency;
		efficiency = newEfficiency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY, oldEfficiency, efficiency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getPowerFactor() {
		return powerFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowerFactor(Ratio newPowerFactor) {
		Ratio oldPowerFactor = powerFactor;
		powerFactor = newPowerFactor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR, oldPowerFactor, powerFactor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getDemandFactor() {
		return demandFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDemandFactor(Ratio newDemandFactor) {
		Ratio oldDemandFactor = demandFactor;
		demandFactor = newDemandFactor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR, oldDemandFactor, demandFactor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGroup() {
		return group;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(String newGroup) {
		String oldGroup = group;
		group = newGroup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__GROUP, oldGroup, group));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getExclusiveWith() {
		return exclusiveWith;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExclusiveWith(String newExclusiveWith) {
		String oldExclusiveWith = exclusiveWith;
		exclusiveWith = newExclusiveWith;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH, oldExclusiveWith, exclusiveWith));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPhase() {
		return phase;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPhase(String newPhase) {
		String oldPhase = phase;
		phase = newPhase;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__PHASE, oldPhase, phase));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getMotorHorsepower() {
		return motorHorsepower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMotorHorsepower(Power newMotorHorsepower) {
		Power oldMotorHorsepower = motorHorsepower;
		motorHorsepower = newMotorHorsepower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER, oldMotorHorsepower, motorHorsepower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCodeLetter() {
		return codeLetter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCodeLetter(String newCodeLetter) {
		String oldCodeLetter = codeLetter;
		codeLetter = newCodeLetter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER, oldCodeLetter, codeLetter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getLockedRotorCurrent() {
		return lockedRotorCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLockedRotorCurrent(Current newLockedRotorCurrent) {
		Current oldLockedRotorCurrent = lockedRotorCurrent;
		lockedRotorCurrent = newLockedRotorCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT, oldLockedRotorCurrent, lockedRotorCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MotorStarting getStarting() {
		return starting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStarting(MotorStarting newStarting) {
		MotorStarting oldStarting = starting;
		starting = newStarting == null ? STARTING_EDEFAULT : newStarting;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__STARTING, oldStarting, starting));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getVoltage() {
		return voltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVoltage(Voltage newVoltage) {
		Voltage oldVoltage = voltage;
		voltage = newVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__VOLTAGE, oldVoltage, voltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCondition() {
		return condition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCondition(String newCondition) {
		String oldCondition = condition;
		condition = newCondition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ELECTRICAL_LOAD__CONDITION, oldCondition, condition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.ELECTRICAL_LOAD__NAME:
				return getName();
			case GarboardPackage.ELECTRICAL_LOAD__KIND:
				return getKind();
			case GarboardPackage.ELECTRICAL_LOAD__POWER:
				return getPower();
			case GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY:
				return getEfficiency();
			case GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR:
				return getPowerFactor();
			case GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR:
				return getDemandFactor();
			case GarboardPackage.ELECTRICAL_LOAD__GROUP:
				return getGroup();
			case GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH:
				return getExclusiveWith();
			case GarboardPackage.ELECTRICAL_LOAD__PHASE:
				return getPhase();
			case GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER:
				return getMotorHorsepower();
			case GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER:
				return getCodeLetter();
			case GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT:
				return getLockedRotorCurrent();
			case GarboardPackage.ELECTRICAL_LOAD__STARTING:
				return getStarting();
			case GarboardPackage.ELECTRICAL_LOAD__VOLTAGE:
				return getVoltage();
			case GarboardPackage.ELECTRICAL_LOAD__CONDITION:
				return getCondition();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.ELECTRICAL_LOAD__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__KIND:
				setKind((LoadKind)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__POWER:
				setPower((Power)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY:
				setEfficiency((Ratio)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR:
				setPowerFactor((Ratio)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR:
				setDemandFactor((Ratio)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__GROUP:
				setGroup((String)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH:
				setExclusiveWith((String)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__PHASE:
				setPhase((String)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER:
				setMotorHorsepower((Power)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER:
				setCodeLetter((String)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT:
				setLockedRotorCurrent((Current)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__STARTING:
				setStarting((MotorStarting)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__VOLTAGE:
				setVoltage((Voltage)newValue);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__CONDITION:
				setCondition((String)newValue);
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
			case GarboardPackage.ELECTRICAL_LOAD__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__POWER:
				setPower(POWER_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY:
				setEfficiency(EFFICIENCY_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR:
				setPowerFactor(POWER_FACTOR_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR:
				setDemandFactor(DEMAND_FACTOR_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__GROUP:
				setGroup(GROUP_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH:
				setExclusiveWith(EXCLUSIVE_WITH_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__PHASE:
				setPhase(PHASE_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER:
				setMotorHorsepower(MOTOR_HORSEPOWER_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER:
				setCodeLetter(CODE_LETTER_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT:
				setLockedRotorCurrent(LOCKED_ROTOR_CURRENT_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__STARTING:
				setStarting(STARTING_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__VOLTAGE:
				setVoltage(VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.ELECTRICAL_LOAD__CONDITION:
				setCondition(CONDITION_EDEFAULT);
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
			case GarboardPackage.ELECTRICAL_LOAD__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.ELECTRICAL_LOAD__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.ELECTRICAL_LOAD__POWER:
				return POWER_EDEFAULT == null ? power != null : !POWER_EDEFAULT.equals(power);
			case GarboardPackage.ELECTRICAL_LOAD__EFFICIENCY:
				return EFFICIENCY_EDEFAULT == null ? efficiency != null : !EFFICIENCY_EDEFAULT.equals(efficiency);
			case GarboardPackage.ELECTRICAL_LOAD__POWER_FACTOR:
				return POWER_FACTOR_EDEFAULT == null ? powerFactor != null : !POWER_FACTOR_EDEFAULT.equals(powerFactor);
			case GarboardPackage.ELECTRICAL_LOAD__DEMAND_FACTOR:
				return DEMAND_FACTOR_EDEFAULT == null ? demandFactor != null : !DEMAND_FACTOR_EDEFAULT.equals(demandFactor);
			case GarboardPackage.ELECTRICAL_LOAD__GROUP:
				return GROUP_EDEFAULT == null ? group != null : !GROUP_EDEFAULT.equals(group);
			case GarboardPackage.ELECTRICAL_LOAD__EXCLUSIVE_WITH:
				return EXCLUSIVE_WITH_EDEFAULT == null ? exclusiveWith != null : !EXCLUSIVE_WITH_EDEFAULT.equals(exclusiveWith);
			case GarboardPackage.ELECTRICAL_LOAD__PHASE:
				return PHASE_EDEFAULT == null ? phase != null : !PHASE_EDEFAULT.equals(phase);
			case GarboardPackage.ELECTRICAL_LOAD__MOTOR_HORSEPOWER:
				return MOTOR_HORSEPOWER_EDEFAULT == null ? motorHorsepower != null : !MOTOR_HORSEPOWER_EDEFAULT.equals(motorHorsepower);
			case GarboardPackage.ELECTRICAL_LOAD__CODE_LETTER:
				return CODE_LETTER_EDEFAULT == null ? codeLetter != null : !CODE_LETTER_EDEFAULT.equals(codeLetter);
			case GarboardPackage.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT:
				return LOCKED_ROTOR_CURRENT_EDEFAULT == null ? lockedRotorCurrent != null : !LOCKED_ROTOR_CURRENT_EDEFAULT.equals(lockedRotorCurrent);
			case GarboardPackage.ELECTRICAL_LOAD__STARTING:
				return starting != STARTING_EDEFAULT;
			case GarboardPackage.ELECTRICAL_LOAD__VOLTAGE:
				return VOLTAGE_EDEFAULT == null ? voltage != null : !VOLTAGE_EDEFAULT.equals(voltage);
			case GarboardPackage.ELECTRICAL_LOAD__CONDITION:
				return CONDITION_EDEFAULT == null ? condition != null : !CONDITION_EDEFAULT.equals(condition);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", kind: ");
		result.append(kind);
		result.append(", power: ");
		result.append(power);
		result.append(", efficiency: ");
		result.append(efficiency);
		result.append(", powerFactor: ");
		result.append(powerFactor);
		result.append(", demandFactor: ");
		result.append(demandFactor);
		result.append(", group: ");
		result.append(group);
		result.append(", exclusiveWith: ");
		result.append(exclusiveWith);
		result.append(", phase: ");
		result.append(phase);
		result.append(", motorHorsepower: ");
		result.append(motorHorsepower);
		result.append(", codeLetter: ");
		result.append(codeLetter);
		result.append(", lockedRotorCurrent: ");
		result.append(lockedRotorCurrent);
		result.append(", starting: ");
		result.append(starting);
		result.append(", voltage: ");
		result.append(voltage);
		result.append(", condition: ");
		result.append(condition);
		result.append(')');
		return result.toString();
	}

} //ElectricalLoadImpl
