/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.FuelPriming;
import garboard.model.GarboardPackage;

import garboard.quantity.GaugePressure;
import garboard.quantity.TimeSpan;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fuel Priming</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getKeyCycles <em>Key Cycles</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getCycleTime <em>Cycle Time</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getFeedPressure <em>Feed Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getRailPressure <em>Rail Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getHeldFor <em>Held For</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getBubblesGone <em>Bubbles Gone</em>}</li>
 *   <li>{@link garboard.model.impl.FuelPrimingImpl#getLeaks <em>Leaks</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FuelPrimingImpl extends MinimalEObjectImpl.Container implements FuelPriming {
	/**
	 * The default value of the '{@link #getKeyCycles() <em>Key Cycles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKeyCycles()
	 * @generated
	 * @ordered
	 */
	protected static final Integer KEY_CYCLES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKeyCycles() <em>Key Cycles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKeyCycles()
	 * @generated
	 * @ordered
	 */
	protected Integer keyCycles = KEY_CYCLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCycleTime() <em>Cycle Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCycleTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan CYCLE_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCycleTime() <em>Cycle Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCycleTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan cycleTime = CYCLE_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getFeedPressure() <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure FEED_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeedPressure() <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure feedPressure = FEED_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailPressure() <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure RAIL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailPressure() <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure railPressure = RAIL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeldFor() <em>Held For</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeldFor()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan HELD_FOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeldFor() <em>Held For</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeldFor()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan heldFor = HELD_FOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getBubblesGone() <em>Bubbles Gone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBubblesGone()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BUBBLES_GONE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBubblesGone() <em>Bubbles Gone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBubblesGone()
	 * @generated
	 * @ordered
	 */
	protected Answer bubblesGone = BUBBLES_GONE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeaks() <em>Leaks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaks()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEAKS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLeaks() <em>Leaks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaks()
	 * @generated
	 * @ordered
	 */
	protected Answer leaks = LEAKS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FuelPrimingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.FUEL_PRIMING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getKeyCycles() {
		return keyCycles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKeyCycles(Integer newKeyCycles) {
		Integer oldKeyCycles = keyCycles;
		keyCycles = newKeyCycles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__KEY_CYCLES, oldKeyCycles, keyCycles));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getCycleTime() {
		return cycleTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCycleTime(TimeSpan newCycleTime) {
		TimeSpan oldCycleTime = cycleTime;
		cycleTime = newCycleTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__CYCLE_TIME, oldCycleTime, cycleTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getFeedPressure() {
		return feedPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeedPressure(GaugePressure newFeedPressure) {
		GaugePressure oldFeedPressure = feedPressure;
		feedPressure = newFeedPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__FEED_PRESSURE, oldFeedPressure, feedPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getRailPressure() {
		return railPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailPressure(GaugePressure newRailPressure) {
		GaugePressure oldRailPressure = railPressure;
		railPressure = newRailPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__RAIL_PRESSURE, oldRailPressure, railPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getHeldFor() {
		return heldFor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeldFor(TimeSpan newHeldFor) {
		TimeSpan oldHeldFor = heldFor;
		heldFor = newHeldFor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__HELD_FOR, oldHeldFor, heldFor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBubblesGone() {
		return bubblesGone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBubblesGone(Answer newBubblesGone) {
		Answer oldBubblesGone = bubblesGone;
		bubblesGone = newBubblesGone == null ? BUBBLES_GONE_EDEFAULT : newBubblesGone;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__BUBBLES_GONE, oldBubblesGone, bubblesGone));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLeaks() {
		return leaks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeaks(Answer newLeaks) {
		Answer oldLeaks = leaks;
		leaks = newLeaks == null ? LEAKS_EDEFAULT : newLeaks;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_PRIMING__LEAKS, oldLeaks, leaks));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.FUEL_PRIMING__KEY_CYCLES:
				return getKeyCycles();
			case GarboardPackage.FUEL_PRIMING__CYCLE_TIME:
				return getCycleTime();
			case GarboardPackage.FUEL_PRIMING__FEED_PRESSURE:
				return getFeedPressure();
			case GarboardPackage.FUEL_PRIMING__RAIL_PRESSURE:
				return getRailPressure();
			case GarboardPackage.FUEL_PRIMING__HELD_FOR:
				return getHeldFor();
			case GarboardPackage.FUEL_PRIMING__BUBBLES_GONE:
				return getBubblesGone();
			case GarboardPackage.FUEL_PRIMING__LEAKS:
				return getLeaks();
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
			case GarboardPackage.FUEL_PRIMING__KEY_CYCLES:
				setKeyCycles((Integer)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__CYCLE_TIME:
				setCycleTime((TimeSpan)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__FEED_PRESSURE:
				setFeedPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__RAIL_PRESSURE:
				setRailPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__HELD_FOR:
				setHeldFor((TimeSpan)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__BUBBLES_GONE:
				setBubblesGone((Answer)newValue);
				return;
			case GarboardPackage.FUEL_PRIMING__LEAKS:
				setLeaks((Answer)newValue);
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
			case GarboardPackage.FUEL_PRIMING__KEY_CYCLES:
				setKeyCycles(KEY_CYCLES_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__CYCLE_TIME:
				setCycleTime(CYCLE_TIME_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__FEED_PRESSURE:
				setFeedPressure(FEED_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__RAIL_PRESSURE:
				setRailPressure(RAIL_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__HELD_FOR:
				setHeldFor(HELD_FOR_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__BUBBLES_GONE:
				setBubblesGone(BUBBLES_GONE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_PRIMING__LEAKS:
				setLeaks(LEAKS_EDEFAULT);
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
			case GarboardPackage.FUEL_PRIMING__KEY_CYCLES:
				return KEY_CYCLES_EDEFAULT == null ? keyCycles != null : !KEY_CYCLES_EDEFAULT.equals(keyCycles);
			case GarboardPackage.FUEL_PRIMING__CYCLE_TIME:
				return CYCLE_TIME_EDEFAULT == null ? cycleTime != null : !CYCLE_TIME_EDEFAULT.equals(cycleTime);
			case GarboardPackage.FUEL_PRIMING__FEED_PRESSURE:
				return FEED_PRESSURE_EDEFAULT == null ? feedPressure != null : !FEED_PRESSURE_EDEFAULT.equals(feedPressure);
			case GarboardPackage.FUEL_PRIMING__RAIL_PRESSURE:
				return RAIL_PRESSURE_EDEFAULT == null ? railPressure != null : !RAIL_PRESSURE_EDEFAULT.equals(railPressure);
			case GarboardPackage.FUEL_PRIMING__HELD_FOR:
				return HELD_FOR_EDEFAULT == null ? heldFor != null : !HELD_FOR_EDEFAULT.equals(heldFor);
			case GarboardPackage.FUEL_PRIMING__BUBBLES_GONE:
				return bubblesGone != BUBBLES_GONE_EDEFAULT;
			case GarboardPackage.FUEL_PRIMING__LEAKS:
				return leaks != LEAKS_EDEFAULT;
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
		result.append(" (keyCycles: ");
		result.append(keyCycles);
		result.append(", cycleTime: ");
		result.append(cycleTime);
		result.append(", feedPressure: ");
		result.append(feedPressure);
		result.append(", railPressure: ");
		result.append(railPressure);
		result.append(", heldFor: ");
		result.append(heldFor);
		result.append(", bubblesGone: ");
		result.append(bubblesGone);
		result.append(", leaks: ");
		result.append(leaks);
		result.append(')');
		return result.toString();
	}

} //FuelPrimingImpl
