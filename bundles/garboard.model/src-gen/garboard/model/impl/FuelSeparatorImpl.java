/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.BowlKind;
import garboard.model.FuelSeparator;
import garboard.model.GarboardPackage;
import garboard.model.Point;

import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fuel Separator</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getMaker <em>Maker</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getRatedFlow <em>Rated Flow</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getFineness <em>Fineness</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getOnEngineFineness <em>On Engine Fineness</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getBowl <em>Bowl</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getClearanceBelow <em>Clearance Below</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getFixedToStructure <em>Fixed To Structure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getHighestPointOfLine <em>Highest Point Of Line</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getFireTested <em>Fire Tested</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getWaterAlarm <em>Water Alarm</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getElementChangedOn <em>Element Changed On</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getBypassOrSpare <em>Bypass Or Spare</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSeparatorImpl#getWaterFound <em>Water Found</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FuelSeparatorImpl extends MinimalEObjectImpl.Container implements FuelSeparator {
	/**
	 * The default value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected static final String MAKER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected String maker = MAKER_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedFlow() <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow RATED_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedFlow() <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow ratedFlow = RATED_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFineness() <em>Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFineness()
	 * @generated
	 * @ordered
	 */
	protected static final Length FINENESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFineness() <em>Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFineness()
	 * @generated
	 * @ordered
	 */
	protected Length fineness = FINENESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getOnEngineFineness() <em>On Engine Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnEngineFineness()
	 * @generated
	 * @ordered
	 */
	protected static final Length ON_ENGINE_FINENESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOnEngineFineness() <em>On Engine Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnEngineFineness()
	 * @generated
	 * @ordered
	 */
	protected Length onEngineFineness = ON_ENGINE_FINENESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBowl() <em>Bowl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBowl()
	 * @generated
	 * @ordered
	 */
	protected static final BowlKind BOWL_EDEFAULT = BowlKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getBowl() <em>Bowl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBowl()
	 * @generated
	 * @ordered
	 */
	protected BowlKind bowl = BOWL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Point position;

	/**
	 * The default value of the '{@link #getClearanceBelow() <em>Clearance Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceBelow()
	 * @generated
	 * @ordered
	 */
	protected static final Length CLEARANCE_BELOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClearanceBelow() <em>Clearance Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceBelow()
	 * @generated
	 * @ordered
	 */
	protected Length clearanceBelow = CLEARANCE_BELOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFixedToStructure() <em>Fixed To Structure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixedToStructure()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIXED_TO_STRUCTURE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFixedToStructure() <em>Fixed To Structure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixedToStructure()
	 * @generated
	 * @ordered
	 */
	protected Answer fixedToStructure = FIXED_TO_STRUCTURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHighestPointOfLine() <em>Highest Point Of Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestPointOfLine()
	 * @generated
	 * @ordered
	 */
	protected static final Answer HIGHEST_POINT_OF_LINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getHighestPointOfLine() <em>Highest Point Of Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestPointOfLine()
	 * @generated
	 * @ordered
	 */
	protected Answer highestPointOfLine = HIGHEST_POINT_OF_LINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFireTested() <em>Fire Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireTested()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIRE_TESTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFireTested() <em>Fire Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFireTested()
	 * @generated
	 * @ordered
	 */
	protected Answer fireTested = FIRE_TESTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterAlarm() <em>Water Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterAlarm()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_ALARM_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterAlarm() <em>Water Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterAlarm()
	 * @generated
	 * @ordered
	 */
	protected Answer waterAlarm = WATER_ALARM_EDEFAULT;

	/**
	 * The default value of the '{@link #getElementChangedOn() <em>Element Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElementChangedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ELEMENT_CHANGED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElementChangedOn() <em>Element Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElementChangedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate elementChangedOn = ELEMENT_CHANGED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getBypassOrSpare() <em>Bypass Or Spare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBypassOrSpare()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BYPASS_OR_SPARE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBypassOrSpare() <em>Bypass Or Spare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBypassOrSpare()
	 * @generated
	 * @ordered
	 */
	protected Answer bypassOrSpare = BYPASS_OR_SPARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterFound() <em>Water Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFound()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_FOUND_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterFound() <em>Water Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFound()
	 * @generated
	 * @ordered
	 */
	protected Answer waterFound = WATER_FOUND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FuelSeparatorImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.FUEL_SEPARATOR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaker() {
		return maker;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaker(String newMaker) {
		String oldMaker = maker;
		maker = newMaker;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__MAKER, oldMaker, maker));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getRatedFlow() {
		return ratedFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedFlow(VolumeFlow newRatedFlow) {
		VolumeFlow oldRatedFlow = ratedFlow;
		ratedFlow = newRatedFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__RATED_FLOW, oldRatedFlow, ratedFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFineness() {
		return fineness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFineness(Length newFineness) {
		Length oldFineness = fineness;
		fineness = newFineness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__FINENESS, oldFineness, fineness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOnEngineFineness() {
		return onEngineFineness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnEngineFineness(Length newOnEngineFineness) {
		Length oldOnEngineFineness = onEngineFineness;
		onEngineFineness = newOnEngineFineness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS, oldOnEngineFineness, onEngineFineness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BowlKind getBowl() {
		return bowl;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBowl(BowlKind newBowl) {
		BowlKind oldBowl = bowl;
		bowl = newBowl == null ? BOWL_EDEFAULT : newBowl;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__BOWL, oldBowl, bowl));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPosition(Point newPosition, NotificationChain msgs) {
		Point oldPosition = position;
		position = newPosition;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__POSITION, oldPosition, newPosition);
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
	public void setPosition(Point newPosition) {
		if (newPosition != position) {
			NotificationChain msgs = null;
			if (position != null)
				msgs = ((InternalEObject)position).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SEPARATOR__POSITION, null, msgs);
			if (newPosition != null)
				msgs = ((InternalEObject)newPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SEPARATOR__POSITION, null, msgs);
			msgs = basicSetPosition(newPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__POSITION, newPosition, newPosition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getClearanceBelow() {
		return clearanceBelow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearanceBelow(Length newClearanceBelow) {
		Length oldClearanceBelow = clearanceBelow;
		clearanceBelow = newClearanceBelow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW, oldClearanceBelow, clearanceBelow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFixedToStructure() {
		return fixedToStructure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFixedToStructure(Answer newFixedToStructure) {
		Answer oldFixedToStructure = fixedToStructure;
		fixedToStructure = newFixedToStructure == null ? FIXED_TO_STRUCTURE_EDEFAULT : newFixedToStructure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE, oldFixedToStructure, fixedToStructure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getHighestPointOfLine() {
		return highestPointOfLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighestPointOfLine(Answer newHighestPointOfLine) {
		Answer oldHighestPointOfLine = highestPointOfLine;
		highestPointOfLine = newHighestPointOfLine == null ? HIGHEST_POINT_OF_LINE_EDEFAULT : newHighestPointOfLine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE, oldHighestPointOfLine, highestPointOfLine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFireTested() {
		return fireTested;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFireTested(Answer newFireTested) {
		Answer oldFireTested = fireTested;
		fireTested = newFireTested == null ? FIRE_TESTED_EDEFAULT : newFireTested;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED, oldFireTested, fireTested));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterAlarm() {
		return waterAlarm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterAlarm(Answer newWaterAlarm) {
		Answer oldWaterAlarm = waterAlarm;
		waterAlarm = newWaterAlarm == null ? WATER_ALARM_EDEFAULT : newWaterAlarm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__WATER_ALARM, oldWaterAlarm, waterAlarm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getElementChangedOn() {
		return elementChangedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElementChangedOn(LocalDate newElementChangedOn) {
		LocalDate oldElementChangedOn = elementChangedOn;
		elementChangedOn = newElementChangedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON, oldElementChangedOn, elementChangedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBypassOrSpare() {
		return bypassOrSpare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBypassOrSpare(Answer newBypassOrSpare) {
		Answer oldBypassOrSpare = bypassOrSpare;
		bypassOrSpare = newBypassOrSpare == null ? BYPASS_OR_SPARE_EDEFAULT : newBypassOrSpare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE, oldBypassOrSpare, bypassOrSpare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterFound() {
		return waterFound;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterFound(Answer newWaterFound) {
		Answer oldWaterFound = waterFound;
		waterFound = newWaterFound == null ? WATER_FOUND_EDEFAULT : newWaterFound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SEPARATOR__WATER_FOUND, oldWaterFound, waterFound));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
				return basicSetPosition(null, msgs);
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
			case GarboardPackage.FUEL_SEPARATOR__MAKER:
				return getMaker();
			case GarboardPackage.FUEL_SEPARATOR__RATED_FLOW:
				return getRatedFlow();
			case GarboardPackage.FUEL_SEPARATOR__FINENESS:
				return getFineness();
			case GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS:
				return getOnEngineFineness();
			case GarboardPackage.FUEL_SEPARATOR__BOWL:
				return getBowl();
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
				return getPosition();
			case GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW:
				return getClearanceBelow();
			case GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE:
				return getFixedToStructure();
			case GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE:
				return getHighestPointOfLine();
			case GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED:
				return getFireTested();
			case GarboardPackage.FUEL_SEPARATOR__WATER_ALARM:
				return getWaterAlarm();
			case GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON:
				return getElementChangedOn();
			case GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE:
				return getBypassOrSpare();
			case GarboardPackage.FUEL_SEPARATOR__WATER_FOUND:
				return getWaterFound();
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
			case GarboardPackage.FUEL_SEPARATOR__MAKER:
				setMaker((String)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__RATED_FLOW:
				setRatedFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FINENESS:
				setFineness((Length)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS:
				setOnEngineFineness((Length)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__BOWL:
				setBowl((BowlKind)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
				setPosition((Point)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW:
				setClearanceBelow((Length)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE:
				setFixedToStructure((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE:
				setHighestPointOfLine((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED:
				setFireTested((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__WATER_ALARM:
				setWaterAlarm((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON:
				setElementChangedOn((LocalDate)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE:
				setBypassOrSpare((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SEPARATOR__WATER_FOUND:
				setWaterFound((Answer)newValue);
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
			case GarboardPackage.FUEL_SEPARATOR__MAKER:
				setMaker(MAKER_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__RATED_FLOW:
				setRatedFlow(RATED_FLOW_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FINENESS:
				setFineness(FINENESS_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS:
				setOnEngineFineness(ON_ENGINE_FINENESS_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__BOWL:
				setBowl(BOWL_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
				setPosition((Point)null);
				return;
			case GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW:
				setClearanceBelow(CLEARANCE_BELOW_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE:
				setFixedToStructure(FIXED_TO_STRUCTURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE:
				setHighestPointOfLine(HIGHEST_POINT_OF_LINE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED:
				setFireTested(FIRE_TESTED_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__WATER_ALARM:
				setWaterAlarm(WATER_ALARM_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON:
				setElementChangedOn(ELEMENT_CHANGED_ON_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE:
				setBypassOrSpare(BYPASS_OR_SPARE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SEPARATOR__WATER_FOUND:
				setWaterFound(WATER_FOUND_EDEFAULT);
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
			case GarboardPackage.FUEL_SEPARATOR__MAKER:
				return MAKER_EDEFAULT == null ? maker != null : !MAKER_EDEFAULT.equals(maker);
			case GarboardPackage.FUEL_SEPARATOR__RATED_FLOW:
				return RATED_FLOW_EDEFAULT == null ? ratedFlow != null : !RATED_FLOW_EDEFAULT.equals(ratedFlow);
			case GarboardPackage.FUEL_SEPARATOR__FINENESS:
				return FINENESS_EDEFAULT == null ? fineness != null : !FINENESS_EDEFAULT.equals(fineness);
			case GarboardPackage.FUEL_SEPARATOR__ON_ENGINE_FINENESS:
				return ON_ENGINE_FINENESS_EDEFAULT == null ? onEngineFineness != null : !ON_ENGINE_FINENESS_EDEFAULT.equals(onEngineFineness);
			case GarboardPackage.FUEL_SEPARATOR__BOWL:
				return bowl != BOWL_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__POSITION:
				return position != null;
			case GarboardPackage.FUEL_SEPARATOR__CLEARANCE_BELOW:
				return CLEARANCE_BELOW_EDEFAULT == null ? clearanceBelow != null : !CLEARANCE_BELOW_EDEFAULT.equals(clearanceBelow);
			case GarboardPackage.FUEL_SEPARATOR__FIXED_TO_STRUCTURE:
				return fixedToStructure != FIXED_TO_STRUCTURE_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE:
				return highestPointOfLine != HIGHEST_POINT_OF_LINE_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__FIRE_TESTED:
				return fireTested != FIRE_TESTED_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__WATER_ALARM:
				return waterAlarm != WATER_ALARM_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__ELEMENT_CHANGED_ON:
				return ELEMENT_CHANGED_ON_EDEFAULT == null ? elementChangedOn != null : !ELEMENT_CHANGED_ON_EDEFAULT.equals(elementChangedOn);
			case GarboardPackage.FUEL_SEPARATOR__BYPASS_OR_SPARE:
				return bypassOrSpare != BYPASS_OR_SPARE_EDEFAULT;
			case GarboardPackage.FUEL_SEPARATOR__WATER_FOUND:
				return waterFound != WATER_FOUND_EDEFAULT;
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
		result.append(" (maker: ");
		result.append(maker);
		result.append(", ratedFlow: ");
		result.append(ratedFlow);
		result.append(", fineness: ");
		result.append(fineness);
		result.append(", onEngineFineness: ");
		result.append(onEngineFineness);
		result.append(", bowl: ");
		result.append(bowl);
		result.append(", clearanceBelow: ");
		result.append(clearanceBelow);
		result.append(", fixedToStructure: ");
		result.append(fixedToStructure);
		result.append(", highestPointOfLine: ");
		result.append(highestPointOfLine);
		result.append(", fireTested: ");
		result.append(fireTested);
		result.append(", waterAlarm: ");
		result.append(waterAlarm);
		result.append(", elementChangedOn: ");
		result.append(elementChangedOn);
		result.append(", bypassOrSpare: ");
		result.append(bypassOrSpare);
		result.append(", waterFound: ");
		result.append(waterFound);
		result.append(')');
		return result.toString();
	}

} //FuelSeparatorImpl
