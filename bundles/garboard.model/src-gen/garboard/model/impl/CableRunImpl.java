/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.GarboardPackage;
import garboard.model.InsulationRating;
import garboard.model.ProtectionKind;
import garboard.model.StrandClass;

import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cable Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.CableRunImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getConductorSize <em>Conductor Size</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getStrandClass <em>Strand Class</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getInsulation <em>Insulation</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getCurrent <em>Current</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getSystemVoltage <em>System Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getCritical <em>Critical</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getInEngineSpace <em>In Engine Space</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getConductorsInBundle <em>Conductors In Bundle</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getConductorTemperature <em>Conductor Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getProtection <em>Protection</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getProtectionRating <em>Protection Rating</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getProtectionVoltageRating <em>Protection Voltage Rating</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getProtectionDistanceFromSource <em>Protection Distance From Source</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getSheathedToProtection <em>Sheathed To Protection</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getConnectedToBatteryTerminal <em>Connected To Battery Terminal</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getSupportSpacing <em>Support Spacing</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getRingTerminals <em>Ring Terminals</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getLugsOnStud <em>Lugs On Stud</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getChafeProtected <em>Chafe Protected</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getMultiStrandCopper <em>Multi Strand Copper</em>}</li>
 *   <li>{@link garboard.model.impl.CableRunImpl#getMeasuredDrop <em>Measured Drop</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CableRunImpl extends ItemImpl implements CableRun {
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
	 * The default value of the '{@link #getFunction() <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFunction()
	 * @generated
	 * @ordered
	 */
	protected static final CableFunction FUNCTION_EDEFAULT = CableFunction.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getFunction() <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFunction()
	 * @generated
	 * @ordered
	 */
	protected CableFunction function = FUNCTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getConductorSize() <em>Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorSize()
	 * @generated
	 * @ordered
	 */
	protected static final String CONDUCTOR_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConductorSize() <em>Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorSize()
	 * @generated
	 * @ordered
	 */
	protected String conductorSize = CONDUCTOR_SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getStrandClass() <em>Strand Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandClass()
	 * @generated
	 * @ordered
	 */
	protected static final StrandClass STRAND_CLASS_EDEFAULT = StrandClass.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getStrandClass() <em>Strand Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandClass()
	 * @generated
	 * @ordered
	 */
	protected StrandClass strandClass = STRAND_CLASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsulation() <em>Insulation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulation()
	 * @generated
	 * @ordered
	 */
	protected static final InsulationRating INSULATION_EDEFAULT = InsulationRating.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getInsulation() <em>Insulation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsulation()
	 * @generated
	 * @ordered
	 */
	protected InsulationRating insulation = INSULATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Length length = LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrent() <em>Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrent() <em>Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current current = CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSystemVoltage() <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSystemVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage SYSTEM_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSystemVoltage() <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSystemVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage systemVoltage = SYSTEM_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCritical() <em>Critical</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCritical()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CRITICAL_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCritical() <em>Critical</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCritical()
	 * @generated
	 * @ordered
	 */
	protected Answer critical = CRITICAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getInEngineSpace() <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInEngineSpace()
	 * @generated
	 * @ordered
	 */
	protected static final Answer IN_ENGINE_SPACE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInEngineSpace() <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInEngineSpace()
	 * @generated
	 * @ordered
	 */
	protected Answer inEngineSpace = IN_ENGINE_SPACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getConductorsInBundle() <em>Conductors In Bundle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorsInBundle()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CONDUCTORS_IN_BUNDLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConductorsInBundle() <em>Conductors In Bundle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorsInBundle()
	 * @generated
	 * @ordered
	 */
	protected Integer conductorsInBundle = CONDUCTORS_IN_BUNDLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getConductorTemperature() <em>Conductor Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature CONDUCTOR_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConductorTemperature() <em>Conductor Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConductorTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature conductorTemperature = CONDUCTOR_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtection() <em>Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtection()
	 * @generated
	 * @ordered
	 */
	protected static final ProtectionKind PROTECTION_EDEFAULT = ProtectionKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getProtection() <em>Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtection()
	 * @generated
	 * @ordered
	 */
	protected ProtectionKind protection = PROTECTION_EDEFAULT;

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
	 * The default value of the '{@link #getProtectionVoltageRating() <em>Protection Voltage Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionVoltageRating()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage PROTECTION_VOLTAGE_RATING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectionVoltageRating() <em>Protection Voltage Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionVoltageRating()
	 * @generated
	 * @ordered
	 */
	protected Voltage protectionVoltageRating = PROTECTION_VOLTAGE_RATING_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtectionDistanceFromSource() <em>Protection Distance From Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDistanceFromSource()
	 * @generated
	 * @ordered
	 */
	protected static final Length PROTECTION_DISTANCE_FROM_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtectionDistanceFromSource() <em>Protection Distance From Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtectionDistanceFromSource()
	 * @generated
	 * @ordered
	 */
	protected Length protectionDistanceFromSource = PROTECTION_DISTANCE_FROM_SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheathedToProtection() <em>Sheathed To Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheathedToProtection()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SHEATHED_TO_PROTECTION_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSheathedToProtection() <em>Sheathed To Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheathedToProtection()
	 * @generated
	 * @ordered
	 */
	protected Answer sheathedToProtection = SHEATHED_TO_PROTECTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getConnectedToBatteryTerminal() <em>Connected To Battery Terminal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConnectedToBatteryTerminal()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CONNECTED_TO_BATTERY_TERMINAL_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getConnectedToBatteryTerminal() <em>Connected To Battery Terminal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConnectedToBatteryTerminal()
	 * @generated
	 * @ordered
	 */
	protected Answer connectedToBatteryTerminal = CONNECTED_TO_BATTERY_TERMINAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupportSpacing() <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupportSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final Length SUPPORT_SPACING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupportSpacing() <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupportSpacing()
	 * @generated
	 * @ordered
	 */
	protected Length supportSpacing = SUPPORT_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getRingTerminals() <em>Ring Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRingTerminals()
	 * @generated
	 * @ordered
	 */
	protected static final Answer RING_TERMINALS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getRingTerminals() <em>Ring Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRingTerminals()
	 * @generated
	 * @ordered
	 */
	protected Answer ringTerminals = RING_TERMINALS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLugsOnStud() <em>Lugs On Stud</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLugsOnStud()
	 * @generated
	 * @ordered
	 */
	protected static final Integer LUGS_ON_STUD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLugsOnStud() <em>Lugs On Stud</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLugsOnStud()
	 * @generated
	 * @ordered
	 */
	protected Integer lugsOnStud = LUGS_ON_STUD_EDEFAULT;

	/**
	 * The default value of the '{@link #getChafeProtected() <em>Chafe Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChafeProtected()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CHAFE_PROTECTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getChafeProtected() <em>Chafe Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChafeProtected()
	 * @generated
	 * @ordered
	 */
	protected Answer chafeProtected = CHAFE_PROTECTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getMultiStrandCopper() <em>Multi Strand Copper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMultiStrandCopper()
	 * @generated
	 * @ordered
	 */
	protected static final Answer MULTI_STRAND_COPPER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getMultiStrandCopper() <em>Multi Strand Copper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMultiStrandCopper()
	 * @generated
	 * @ordered
	 */
	protected Answer multiStrandCopper = MULTI_STRAND_COPPER_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredDrop() <em>Measured Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredDrop()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage MEASURED_DROP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredDrop() <em>Measured Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredDrop()
	 * @generated
	 * @ordered
	 */
	protected Voltage measuredDrop = MEASURED_DROP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CableRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.CABLE_RUN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CableFunction getFunction() {
		return function;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFunction(CableFunction newFunction) {
		CableFunction oldFunction = function;
		function = newFunction == null ? FUNCTION_EDEFAULT : newFunction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__FUNCTION, oldFunction, function));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConductorSize() {
		return conductorSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConductorSize(String newConductorSize) {
		String oldConductorSize = conductorSize;
		conductorSize = newConductorSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE, oldConductorSize, conductorSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StrandClass getStrandClass() {
		return strandClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrandClass(StrandClass newStrandClass) {
		StrandClass oldStrandClass = strandClass;
		strandClass = newStrandClass == null ? STRAND_CLASS_EDEFAULT : newStrandClass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__STRAND_CLASS, oldStrandClass, strandClass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public InsulationRating getInsulation() {
		return insulation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsulation(InsulationRating newInsulation) {
		InsulationRating oldInsulation = insulation;
		insulation = newInsulation == null ? INSULATION_EDEFAULT : newInsulation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__INSULATION, oldInsulation, insulation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Length newLength) {
		Length oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getCurrent() {
		return current;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrent(Current newCurrent) {
		Current oldCurrent = current;
		current = newCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CURRENT, oldCurrent, current));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getSystemVoltage() {
		return systemVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSystemVoltage(Voltage newSystemVoltage) {
		Voltage oldSystemVoltage = systemVoltage;
		systemVoltage = newSystemVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE, oldSystemVoltage, systemVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCritical() {
		return critical;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCritical(Answer newCritical) {
		Answer oldCritical = critical;
		critical = newCritical == null ? CRITICAL_EDEFAULT : newCritical;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CRITICAL, oldCritical, critical));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInEngineSpace() {
		return inEngineSpace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInEngineSpace(Answer newInEngineSpace) {
		Answer oldInEngineSpace = inEngineSpace;
		inEngineSpace = newInEngineSpace == null ? IN_ENGINE_SPACE_EDEFAULT : newInEngineSpace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE, oldInEngineSpace, inEngineSpace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getConductorsInBundle() {
		return conductorsInBundle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConductorsInBundle(Integer newConductorsInBundle) {
		Integer oldConductorsInBundle = conductorsInBundle;
		conductorsInBundle = newConductorsInBundle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE, oldConductorsInBundle, conductorsInBundle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getConductorTemperature() {
		return conductorTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConductorTemperature(Temperature newConductorTemperature) {
		Temperature oldConductorTemperature = conductorTemperature;
		conductorTemperature = newConductorTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE, oldConductorTemperature, conductorTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProtectionKind getProtection() {
		return protection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtection(ProtectionKind newProtection) {
		ProtectionKind oldProtection = protection;
		protection = newProtection == null ? PROTECTION_EDEFAULT : newProtection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__PROTECTION, oldProtection, protection));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__PROTECTION_RATING, oldProtectionRating, protectionRating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getProtectionVoltageRating() {
		return protectionVoltageRating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionVoltageRating(Voltage newProtectionVoltageRating) {
		Voltage oldProtectionVoltageRating = protectionVoltageRating;
		protectionVoltageRating = newProtectionVoltageRating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING, oldProtectionVoltageRating, protectionVoltageRating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getProtectionDistanceFromSource() {
		return protectionDistanceFromSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtectionDistanceFromSource(Length newProtectionDistanceFromSource) {
		Length oldProtectionDistanceFromSource = protectionDistanceFromSource;
		protectionDistanceFromSource = newProtectionDistanceFromSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE, oldProtectionDistanceFromSource, protectionDistanceFromSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSheathedToProtection() {
		return sheathedToProtection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheathedToProtection(Answer newSheathedToProtection) {
		Answer oldSheathedToProtection = sheathedToProtection;
		sheathedToProtection = newSheathedToProtection == null ? SHEATHED_TO_PROTECTION_EDEFAULT : newSheathedToProtection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION, oldSheathedToProtection, sheathedToProtection));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getConnectedToBatteryTerminal() {
		return connectedToBatteryTerminal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConnectedToBatteryTerminal(Answer newConnectedToBatteryTerminal) {
		Answer oldConnectedToBatteryTerminal = connectedToBatteryTerminal;
		connectedToBatteryTerminal = newConnectedToBatteryTerminal == null ? CONNECTED_TO_BATTERY_TERMINAL_EDEFAULT : newConnectedToBatteryTerminal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL, oldConnectedToBatteryTerminal, connectedToBatteryTerminal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSupportSpacing() {
		return supportSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupportSpacing(Length newSupportSpacing) {
		Length oldSupportSpacing = supportSpacing;
		supportSpacing = newSupportSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__SUPPORT_SPACING, oldSupportSpacing, supportSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getRingTerminals() {
		return ringTerminals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRingTerminals(Answer newRingTerminals) {
		Answer oldRingTerminals = ringTerminals;
		ringTerminals = newRingTerminals == null ? RING_TERMINALS_EDEFAULT : newRingTerminals;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__RING_TERMINALS, oldRingTerminals, ringTerminals));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getLugsOnStud() {
		return lugsOnStud;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLugsOnStud(Integer newLugsOnStud) {
		Integer oldLugsOnStud = lugsOnStud;
		lugsOnStud = newLugsOnStud;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__LUGS_ON_STUD, oldLugsOnStud, lugsOnStud));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getChafeProtected() {
		return chafeProtected;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChafeProtected(Answer newChafeProtected) {
		Answer oldChafeProtected = chafeProtected;
		chafeProtected = newChafeProtected == null ? CHAFE_PROTECTED_EDEFAULT : newChafeProtected;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__CHAFE_PROTECTED, oldChafeProtected, chafeProtected));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getMultiStrandCopper() {
		return multiStrandCopper;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMultiStrandCopper(Answer newMultiStrandCopper) {
		Answer oldMultiStrandCopper = multiStrandCopper;
		multiStrandCopper = newMultiStrandCopper == null ? MULTI_STRAND_COPPER_EDEFAULT : newMultiStrandCopper;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER, oldMultiStrandCopper, multiStrandCopper));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getMeasuredDrop() {
		return measuredDrop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredDrop(Voltage newMeasuredDrop) {
		Voltage oldMeasuredDrop = measuredDrop;
		measuredDrop = newMeasuredDrop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CABLE_RUN__MEASURED_DROP, oldMeasuredDrop, measuredDrop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.CABLE_RUN__NAME:
				return getName();
			case GarboardPackage.CABLE_RUN__FUNCTION:
				return getFunction();
			case GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE:
				return getConductorSize();
			case GarboardPackage.CABLE_RUN__STRAND_CLASS:
				return getStrandClass();
			case GarboardPackage.CABLE_RUN__INSULATION:
				return getInsulation();
			case GarboardPackage.CABLE_RUN__LENGTH:
				return getLength();
			case GarboardPackage.CABLE_RUN__CURRENT:
				return getCurrent();
			case GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE:
				return getSystemVoltage();
			case GarboardPackage.CABLE_RUN__CRITICAL:
				return getCritical();
			case GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE:
				return getInEngineSpace();
			case GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE:
				return getConductorsInBundle();
			case GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE:
				return getConductorTemperature();
			case GarboardPackage.CABLE_RUN__PROTECTION:
				return getProtection();
			case GarboardPackage.CABLE_RUN__PROTECTION_RATING:
				return getProtectionRating();
			case GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING:
				return getProtectionVoltageRating();
			case GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE:
				return getProtectionDistanceFromSource();
			case GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION:
				return getSheathedToProtection();
			case GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL:
				return getConnectedToBatteryTerminal();
			case GarboardPackage.CABLE_RUN__SUPPORT_SPACING:
				return getSupportSpacing();
			case GarboardPackage.CABLE_RUN__RING_TERMINALS:
				return getRingTerminals();
			case GarboardPackage.CABLE_RUN__LUGS_ON_STUD:
				return getLugsOnStud();
			case GarboardPackage.CABLE_RUN__CHAFE_PROTECTED:
				return getChafeProtected();
			case GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER:
				return getMultiStrandCopper();
			case GarboardPackage.CABLE_RUN__MEASURED_DROP:
				return getMeasuredDrop();
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
			case GarboardPackage.CABLE_RUN__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.CABLE_RUN__FUNCTION:
				setFunction((CableFunction)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE:
				setConductorSize((String)newValue);
				return;
			case GarboardPackage.CABLE_RUN__STRAND_CLASS:
				setStrandClass((StrandClass)newValue);
				return;
			case GarboardPackage.CABLE_RUN__INSULATION:
				setInsulation((InsulationRating)newValue);
				return;
			case GarboardPackage.CABLE_RUN__LENGTH:
				setLength((Length)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CURRENT:
				setCurrent((Current)newValue);
				return;
			case GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE:
				setSystemVoltage((Voltage)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CRITICAL:
				setCritical((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE:
				setInEngineSpace((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE:
				setConductorsInBundle((Integer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE:
				setConductorTemperature((Temperature)newValue);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION:
				setProtection((ProtectionKind)newValue);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_RATING:
				setProtectionRating((Current)newValue);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING:
				setProtectionVoltageRating((Voltage)newValue);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE:
				setProtectionDistanceFromSource((Length)newValue);
				return;
			case GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION:
				setSheathedToProtection((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL:
				setConnectedToBatteryTerminal((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__SUPPORT_SPACING:
				setSupportSpacing((Length)newValue);
				return;
			case GarboardPackage.CABLE_RUN__RING_TERMINALS:
				setRingTerminals((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__LUGS_ON_STUD:
				setLugsOnStud((Integer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__CHAFE_PROTECTED:
				setChafeProtected((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER:
				setMultiStrandCopper((Answer)newValue);
				return;
			case GarboardPackage.CABLE_RUN__MEASURED_DROP:
				setMeasuredDrop((Voltage)newValue);
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
			case GarboardPackage.CABLE_RUN__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__FUNCTION:
				setFunction(FUNCTION_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE:
				setConductorSize(CONDUCTOR_SIZE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__STRAND_CLASS:
				setStrandClass(STRAND_CLASS_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__INSULATION:
				setInsulation(INSULATION_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CURRENT:
				setCurrent(CURRENT_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE:
				setSystemVoltage(SYSTEM_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CRITICAL:
				setCritical(CRITICAL_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE:
				setInEngineSpace(IN_ENGINE_SPACE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE:
				setConductorsInBundle(CONDUCTORS_IN_BUNDLE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE:
				setConductorTemperature(CONDUCTOR_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION:
				setProtection(PROTECTION_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_RATING:
				setProtectionRating(PROTECTION_RATING_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING:
				setProtectionVoltageRating(PROTECTION_VOLTAGE_RATING_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE:
				setProtectionDistanceFromSource(PROTECTION_DISTANCE_FROM_SOURCE_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION:
				setSheathedToProtection(SHEATHED_TO_PROTECTION_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL:
				setConnectedToBatteryTerminal(CONNECTED_TO_BATTERY_TERMINAL_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__SUPPORT_SPACING:
				setSupportSpacing(SUPPORT_SPACING_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__RING_TERMINALS:
				setRingTerminals(RING_TERMINALS_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__LUGS_ON_STUD:
				setLugsOnStud(LUGS_ON_STUD_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__CHAFE_PROTECTED:
				setChafeProtected(CHAFE_PROTECTED_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER:
				setMultiStrandCopper(MULTI_STRAND_COPPER_EDEFAULT);
				return;
			case GarboardPackage.CABLE_RUN__MEASURED_DROP:
				setMeasuredDrop(MEASURED_DROP_EDEFAULT);
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
			case GarboardPackage.CABLE_RUN__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.CABLE_RUN__FUNCTION:
				return function != FUNCTION_EDEFAULT;
			case GarboardPackage.CABLE_RUN__CONDUCTOR_SIZE:
				return CONDUCTOR_SIZE_EDEFAULT == null ? conductorSize != null : !CONDUCTOR_SIZE_EDEFAULT.equals(conductorSize);
			case GarboardPackage.CABLE_RUN__STRAND_CLASS:
				return strandClass != STRAND_CLASS_EDEFAULT;
			case GarboardPackage.CABLE_RUN__INSULATION:
				return insulation != INSULATION_EDEFAULT;
			case GarboardPackage.CABLE_RUN__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case GarboardPackage.CABLE_RUN__CURRENT:
				return CURRENT_EDEFAULT == null ? current != null : !CURRENT_EDEFAULT.equals(current);
			case GarboardPackage.CABLE_RUN__SYSTEM_VOLTAGE:
				return SYSTEM_VOLTAGE_EDEFAULT == null ? systemVoltage != null : !SYSTEM_VOLTAGE_EDEFAULT.equals(systemVoltage);
			case GarboardPackage.CABLE_RUN__CRITICAL:
				return critical != CRITICAL_EDEFAULT;
			case GarboardPackage.CABLE_RUN__IN_ENGINE_SPACE:
				return inEngineSpace != IN_ENGINE_SPACE_EDEFAULT;
			case GarboardPackage.CABLE_RUN__CONDUCTORS_IN_BUNDLE:
				return CONDUCTORS_IN_BUNDLE_EDEFAULT == null ? conductorsInBundle != null : !CONDUCTORS_IN_BUNDLE_EDEFAULT.equals(conductorsInBundle);
			case GarboardPackage.CABLE_RUN__CONDUCTOR_TEMPERATURE:
				return CONDUCTOR_TEMPERATURE_EDEFAULT == null ? conductorTemperature != null : !CONDUCTOR_TEMPERATURE_EDEFAULT.equals(conductorTemperature);
			case GarboardPackage.CABLE_RUN__PROTECTION:
				return protection != PROTECTION_EDEFAULT;
			case GarboardPackage.CABLE_RUN__PROTECTION_RATING:
				return PROTECTION_RATING_EDEFAULT == null ? protectionRating != null : !PROTECTION_RATING_EDEFAULT.equals(protectionRating);
			case GarboardPackage.CABLE_RUN__PROTECTION_VOLTAGE_RATING:
				return PROTECTION_VOLTAGE_RATING_EDEFAULT == null ? protectionVoltageRating != null : !PROTECTION_VOLTAGE_RATING_EDEFAULT.equals(protectionVoltageRating);
			case GarboardPackage.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE:
				return PROTECTION_DISTANCE_FROM_SOURCE_EDEFAULT == null ? protectionDistanceFromSource != null : !PROTECTION_DISTANCE_FROM_SOURCE_EDEFAULT.equals(protectionDistanceFromSource);
			case GarboardPackage.CABLE_RUN__SHEATHED_TO_PROTECTION:
				return sheathedToProtection != SHEATHED_TO_PROTECTION_EDEFAULT;
			case GarboardPackage.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL:
				return connectedToBatteryTerminal != CONNECTED_TO_BATTERY_TERMINAL_EDEFAULT;
			case GarboardPackage.CABLE_RUN__SUPPORT_SPACING:
				return SUPPORT_SPACING_EDEFAULT == null ? supportSpacing != null : !SUPPORT_SPACING_EDEFAULT.equals(supportSpacing);
			case GarboardPackage.CABLE_RUN__RING_TERMINALS:
				return ringTerminals != RING_TERMINALS_EDEFAULT;
			case GarboardPackage.CABLE_RUN__LUGS_ON_STUD:
				return LUGS_ON_STUD_EDEFAULT == null ? lugsOnStud != null : !LUGS_ON_STUD_EDEFAULT.equals(lugsOnStud);
			case GarboardPackage.CABLE_RUN__CHAFE_PROTECTED:
				return chafeProtected != CHAFE_PROTECTED_EDEFAULT;
			case GarboardPackage.CABLE_RUN__MULTI_STRAND_COPPER:
				return multiStrandCopper != MULTI_STRAND_COPPER_EDEFAULT;
			case GarboardPackage.CABLE_RUN__MEASURED_DROP:
				return MEASURED_DROP_EDEFAULT == null ? measuredDrop != null : !MEASURED_DROP_EDEFAULT.equals(measuredDrop);
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
		result.append(", function: ");
		result.append(function);
		result.append(", conductorSize: ");
		result.append(conductorSize);
		result.append(", strandClass: ");
		result.append(strandClass);
		result.append(", insulation: ");
		result.append(insulation);
		result.append(", length: ");
		result.append(length);
		result.append(", current: ");
		result.append(current);
		result.append(", systemVoltage: ");
		result.append(systemVoltage);
		result.append(", critical: ");
		result.append(critical);
		result.append(", inEngineSpace: ");
		result.append(inEngineSpace);
		result.append(", conductorsInBundle: ");
		result.append(conductorsInBundle);
		result.append(", conductorTemperature: ");
		result.append(conductorTemperature);
		result.append(", protection: ");
		result.append(protection);
		result.append(", protectionRating: ");
		result.append(protectionRating);
		result.append(", protectionVoltageRating: ");
		result.append(protectionVoltageRating);
		result.append(", protectionDistanceFromSource: ");
		result.append(protectionDistanceFromSource);
		result.append(", sheathedToProtection: ");
		result.append(sheathedToProtection);
		result.append(", connectedToBatteryTerminal: ");
		result.append(connectedToBatteryTerminal);
		result.append(", supportSpacing: ");
		result.append(supportSpacing);
		result.append(", ringTerminals: ");
		result.append(ringTerminals);
		result.append(", lugsOnStud: ");
		result.append(lugsOnStud);
		result.append(", chafeProtected: ");
		result.append(chafeProtected);
		result.append(", multiStrandCopper: ");
		result.append(multiStrandCopper);
		result.append(", measuredDrop: ");
		result.append(measuredDrop);
		result.append(')');
		return result.toString();
	}

} //CableRunImpl
