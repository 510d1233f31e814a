/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.SeaRun;

import garboard.quantity.Angle;
import garboard.quantity.Speed;
import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sea Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getDate <em>Date</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getHeelPort <em>Heel Port</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getHeelStarboard <em>Heel Starboard</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getTrimUp <em>Trim Up</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getTrimDown <em>Trim Down</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getSpeed <em>Speed</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getWaterFlowing <em>Water Flowing</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getWaterOverCrest <em>Water Over Crest</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getWaterInMuffler <em>Water In Muffler</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getDifference <em>Difference</em>}</li>
 *   <li>{@link garboard.model.impl.SeaRunImpl#getDuration <em>Duration</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SeaRunImpl extends MinimalEObjectImpl.Container implements SeaRun {
	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected LocalDate date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeelPort() <em>Heel Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeelPort()
	 * @generated
	 * @ordered
	 */
	protected static final Angle HEEL_PORT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeelPort() <em>Heel Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeelPort()
	 * @generated
	 * @ordered
	 */
	protected Angle heelPort = HEEL_PORT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeelStarboard() <em>Heel Starboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeelStarboard()
	 * @generated
	 * @ordered
	 */
	protected static final Angle HEEL_STARBOARD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeelStarboard() <em>Heel Starboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeelStarboard()
	 * @generated
	 * @ordered
	 */
	protected Angle heelStarboard = HEEL_STARBOARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrimUp() <em>Trim Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrimUp()
	 * @generated
	 * @ordered
	 */
	protected static final Angle TRIM_UP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTrimUp() <em>Trim Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrimUp()
	 * @generated
	 * @ordered
	 */
	protected Angle trimUp = TRIM_UP_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrimDown() <em>Trim Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrimDown()
	 * @generated
	 * @ordered
	 */
	protected static final Angle TRIM_DOWN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTrimDown() <em>Trim Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrimDown()
	 * @generated
	 * @ordered
	 */
	protected Angle trimDown = TRIM_DOWN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Speed SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected Speed speed = SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterFlowing() <em>Water Flowing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFlowing()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_FLOWING_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterFlowing() <em>Water Flowing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFlowing()
	 * @generated
	 * @ordered
	 */
	protected Answer waterFlowing = WATER_FLOWING_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterOverCrest() <em>Water Over Crest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterOverCrest()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_OVER_CREST_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterOverCrest() <em>Water Over Crest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterOverCrest()
	 * @generated
	 * @ordered
	 */
	protected Answer waterOverCrest = WATER_OVER_CREST_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterInMuffler() <em>Water In Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterInMuffler()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_IN_MUFFLER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterInMuffler() <em>Water In Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterInMuffler()
	 * @generated
	 * @ordered
	 */
	protected Answer waterInMuffler = WATER_IN_MUFFLER_EDEFAULT;

	/**
	 * The default value of the '{@link #getDifference() <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDifference()
	 * @generated
	 * @ordered
	 */
	protected static final String DIFFERENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDifference() <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDifference()
	 * @generated
	 * @ordered
	 */
	protected String difference = DIFFERENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDuration() <em>Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDuration()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan DURATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDuration() <em>Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDuration()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan duration = DURATION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SeaRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.SEA_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate) {
		LocalDate oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getHeelPort() {
		return heelPort;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeelPort(Angle newHeelPort) {
		Angle oldHeelPort = heelPort;
		heelPort = newHeelPort;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__HEEL_PORT, oldHeelPort, heelPort));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getHeelStarboard() {
		return heelStarboard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeelStarboard(Angle newHeelStarboard) {
		Angle oldHeelStarboard = heelStarboard;
		heelStarboard = newHeelStarboard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__HEEL_STARBOARD, oldHeelStarboard, heelStarboard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getTrimUp() {
		return trimUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrimUp(Angle newTrimUp) {
		Angle oldTrimUp = trimUp;
		trimUp = newTrimUp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__TRIM_UP, oldTrimUp, trimUp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getTrimDown() {
		return trimDown;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrimDown(Angle newTrimDown) {
		Angle oldTrimDown = trimDown;
		trimDown = newTrimDown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__TRIM_DOWN, oldTrimDown, trimDown));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Speed getSpeed() {
		return speed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpeed(Speed newSpeed) {
		Speed oldSpeed = speed;
		speed = newSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__SPEED, oldSpeed, speed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterFlowing() {
		return waterFlowing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterFlowing(Answer newWaterFlowing) {
		Answer oldWaterFlowing = waterFlowing;
		waterFlowing = newWaterFlowing == null ? WATER_FLOWING_EDEFAULT : newWaterFlowing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__WATER_FLOWING, oldWaterFlowing, waterFlowing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterOverCrest() {
		return waterOverCrest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterOverCrest(Answer newWaterOverCrest) {
		Answer oldWaterOverCrest = waterOverCrest;
		waterOverCrest = newWaterOverCrest == null ? WATER_OVER_CREST_EDEFAULT : newWaterOverCrest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__WATER_OVER_CREST, oldWaterOverCrest, waterOverCrest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterInMuffler() {
		return waterInMuffler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterInMuffler(Answer newWaterInMuffler) {
		Answer oldWaterInMuffler = waterInMuffler;
		waterInMuffler = newWaterInMuffler == null ? WATER_IN_MUFFLER_EDEFAULT : newWaterInMuffler;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__WATER_IN_MUFFLER, oldWaterInMuffler, waterInMuffler));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDifference() {
		return difference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDifference(String newDifference) {
		String oldDifference = difference;
		difference = newDifference;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__DIFFERENCE, oldDifference, difference));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getDuration() {
		return duration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDuration(TimeSpan newDuration) {
		TimeSpan oldDuration = duration;
		duration = newDuration;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEA_RUN__DURATION, oldDuration, duration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.SEA_RUN__DATE:
				return getDate();
			case GarboardPackage.SEA_RUN__HEEL_PORT:
				return getHeelPort();
			case GarboardPackage.SEA_RUN__HEEL_STARBOARD:
				return getHeelStarboard();
			case GarboardPackage.SEA_RUN__TRIM_UP:
				return getTrimUp();
			case GarboardPackage.SEA_RUN__TRIM_DOWN:
				return getTrimDown();
			case GarboardPackage.SEA_RUN__SPEED:
				return getSpeed();
			case GarboardPackage.SEA_RUN__WATER_FLOWING:
				return getWaterFlowing();
			case GarboardPackage.SEA_RUN__WATER_OVER_CREST:
				return getWaterOverCrest();
			case GarboardPackage.SEA_RUN__WATER_IN_MUFFLER:
				return getWaterInMuffler();
			case GarboardPackage.SEA_RUN__DIFFERENCE:
				return getDifference();
			case GarboardPackage.SEA_RUN__DURATION:
				return getDuration();
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
			case GarboardPackage.SEA_RUN__DATE:
				setDate((LocalDate)newValue);
				return;
			case GarboardPackage.SEA_RUN__HEEL_PORT:
				setHeelPort((Angle)newValue);
				return;
			case GarboardPackage.SEA_RUN__HEEL_STARBOARD:
				setHeelStarboard((Angle)newValue);
				return;
			case GarboardPackage.SEA_RUN__TRIM_UP:
				setTrimUp((Angle)newValue);
				return;
			case GarboardPackage.SEA_RUN__TRIM_DOWN:
				setTrimDown((Angle)newValue);
				return;
			case GarboardPackage.SEA_RUN__SPEED:
				setSpeed((Speed)newValue);
				return;
			case GarboardPackage.SEA_RUN__WATER_FLOWING:
				setWaterFlowing((Answer)newValue);
				return;
			case GarboardPackage.SEA_RUN__WATER_OVER_CREST:
				setWaterOverCrest((Answer)newValue);
				return;
			case GarboardPackage.SEA_RUN__WATER_IN_MUFFLER:
				setWaterInMuffler((Answer)newValue);
				return;
			case GarboardPackage.SEA_RUN__DIFFERENCE:
				setDifference((String)newValue);
				return;
			case GarboardPackage.SEA_RUN__DURATION:
				setDuration((TimeSpan)newValue);
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
			case GarboardPackage.SEA_RUN__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__HEEL_PORT:
				setHeelPort(HEEL_PORT_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__HEEL_STARBOARD:
				setHeelStarboard(HEEL_STARBOARD_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__TRIM_UP:
				setTrimUp(TRIM_UP_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__TRIM_DOWN:
				setTrimDown(TRIM_DOWN_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__SPEED:
				setSpeed(SPEED_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__WATER_FLOWING:
				setWaterFlowing(WATER_FLOWING_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__WATER_OVER_CREST:
				setWaterOverCrest(WATER_OVER_CREST_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__WATER_IN_MUFFLER:
				setWaterInMuffler(WATER_IN_MUFFLER_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__DIFFERENCE:
				setDifference(DIFFERENCE_EDEFAULT);
				return;
			case GarboardPackage.SEA_RUN__DURATION:
				setDuration(DURATION_EDEFAULT);
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
			case GarboardPackage.SEA_RUN__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case GarboardPackage.SEA_RUN__HEEL_PORT:
				return HEEL_PORT_EDEFAULT == null ? heelPort != null : !HEEL_PORT_EDEFAULT.equals(heelPort);
			case GarboardPackage.SEA_RUN__HEEL_STARBOARD:
				return HEEL_STARBOARD_EDEFAULT == null ? heelStarboard != null : !HEEL_STARBOARD_EDEFAULT.equals(heelStarboard);
			case GarboardPackage.SEA_RUN__TRIM_UP:
				return TRIM_UP_EDEFAULT == null ? trimUp != null : !TRIM_UP_EDEFAULT.equals(trimUp);
			case GarboardPackage.SEA_RUN__TRIM_DOWN:
				return TRIM_DOWN_EDEFAULT == null ? trimDown != null : !TRIM_DOWN_EDEFAULT.equals(trimDown);
			case GarboardPackage.SEA_RUN__SPEED:
				return SPEED_EDEFAULT == null ? speed != null : !SPEED_EDEFAULT.equals(speed);
			case GarboardPackage.SEA_RUN__WATER_FLOWING:
				return waterFlowing != WATER_FLOWING_EDEFAULT;
			case GarboardPackage.SEA_RUN__WATER_OVER_CREST:
				return waterOverCrest != WATER_OVER_CREST_EDEFAULT;
			case GarboardPackage.SEA_RUN__WATER_IN_MUFFLER:
				return waterInMuffler != WATER_IN_MUFFLER_EDEFAULT;
			case GarboardPackage.SEA_RUN__DIFFERENCE:
				return DIFFERENCE_EDEFAULT == null ? difference != null : !DIFFERENCE_EDEFAULT.equals(difference);
			case GarboardPackage.SEA_RUN__DURATION:
				return DURATION_EDEFAULT == null ? duration != null : !DURATION_EDEFAULT.equals(duration);
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
		result.append(" (date: ");
		result.append(date);
		result.append(", heelPort: ");
		result.append(heelPort);
		result.append(", heelStarboard: ");
		result.append(heelStarboard);
		result.append(", trimUp: ");
		result.append(trimUp);
		result.append(", trimDown: ");
		result.append(trimDown);
		result.append(", speed: ");
		result.append(speed);
		result.append(", waterFlowing: ");
		result.append(waterFlowing);
		result.append(", waterOverCrest: ");
		result.append(waterOverCrest);
		result.append(", waterInMuffler: ");
		result.append(waterInMuffler);
		result.append(", difference: ");
		result.append(difference);
		result.append(", duration: ");
		result.append(duration);
		result.append(')');
		return result.toString();
	}

} //SeaRunImpl
