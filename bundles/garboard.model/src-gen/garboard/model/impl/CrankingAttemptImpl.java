/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardPackage;
import garboard.model.SeacockState;

import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

import java.time.OffsetDateTime;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cranking Attempt</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getAt <em>At</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getDuration <em>Duration</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getRest <em>Rest</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getSeacock <em>Seacock</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getFired <em>Fired</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getLowestVoltage <em>Lowest Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.CrankingAttemptImpl#getMufflerDrained <em>Muffler Drained</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CrankingAttemptImpl extends ItemImpl implements CrankingAttempt {
	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final OffsetDateTime AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected OffsetDateTime at = AT_EDEFAULT;

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
	 * The default value of the '{@link #getRest() <em>Rest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRest()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan REST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRest() <em>Rest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRest()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan rest = REST_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeacock() <em>Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeacock()
	 * @generated
	 * @ordered
	 */
	protected static final SeacockState SEACOCK_EDEFAULT = SeacockState.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getSeacock() <em>Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeacock()
	 * @generated
	 * @ordered
	 */
	protected SeacockState seacock = SEACOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getFired() <em>Fired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFired()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FIRED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFired() <em>Fired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFired()
	 * @generated
	 * @ordered
	 */
	protected Answer fired = FIRED_EDEFAULT;

	/**
	 * The default value of the '{@link #getLowestVoltage() <em>Lowest Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage LOWEST_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLowestVoltage() <em>Lowest Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage lowestVoltage = LOWEST_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMufflerDrained() <em>Muffler Drained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMufflerDrained()
	 * @generated
	 * @ordered
	 */
	protected static final Answer MUFFLER_DRAINED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getMufflerDrained() <em>Muffler Drained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMufflerDrained()
	 * @generated
	 * @ordered
	 */
	protected Answer mufflerDrained = MUFFLER_DRAINED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CrankingAttemptImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.CRANKING_ATTEMPT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OffsetDateTime getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(OffsetDateTime newAt) {
		OffsetDateTime oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__AT, oldAt, at));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__DURATION, oldDuration, duration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getRest() {
		return rest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRest(TimeSpan newRest) {
		TimeSpan oldRest = rest;
		rest = newRest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__REST, oldRest, rest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeacockState getSeacock() {
		return seacock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeacock(SeacockState newSeacock) {
		SeacockState oldSeacock = seacock;
		seacock = newSeacock == null ? SEACOCK_EDEFAULT : newSeacock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__SEACOCK, oldSeacock, seacock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFired() {
		return fired;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFired(Answer newFired) {
		Answer oldFired = fired;
		fired = newFired == null ? FIRED_EDEFAULT : newFired;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__FIRED, oldFired, fired));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getLowestVoltage() {
		return lowestVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowestVoltage(Voltage newLowestVoltage) {
		Voltage oldLowestVoltage = lowestVoltage;
		lowestVoltage = newLowestVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__LOWEST_VOLTAGE, oldLowestVoltage, lowestVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getMufflerDrained() {
		return mufflerDrained;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMufflerDrained(Answer newMufflerDrained) {
		Answer oldMufflerDrained = mufflerDrained;
		mufflerDrained = newMufflerDrained == null ? MUFFLER_DRAINED_EDEFAULT : newMufflerDrained;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.CRANKING_ATTEMPT__MUFFLER_DRAINED, oldMufflerDrained, mufflerDrained));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.CRANKING_ATTEMPT__AT:
				return getAt();
			case GarboardPackage.CRANKING_ATTEMPT__DURATION:
				return getDuration();
			case GarboardPackage.CRANKING_ATTEMPT__REST:
				return getRest();
			case GarboardPackage.CRANKING_ATTEMPT__SEACOCK:
				return getSeacock();
			case GarboardPackage.CRANKING_ATTEMPT__FIRED:
				return getFired();
			case GarboardPackage.CRANKING_ATTEMPT__LOWEST_VOLTAGE:
				return getLowestVoltage();
			case GarboardPackage.CRANKING_ATTEMPT__MUFFLER_DRAINED:
				return getMufflerDrained();
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
			case GarboardPackage.CRANKING_ATTEMPT__AT:
				setAt((OffsetDateTime)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__DURATION:
				setDuration((TimeSpan)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__REST:
				setRest((TimeSpan)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__SEACOCK:
				setSeacock((SeacockState)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__FIRED:
				setFired((Answer)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__LOWEST_VOLTAGE:
				setLowestVoltage((Voltage)newValue);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__MUFFLER_DRAINED:
				setMufflerDrained((Answer)newValue);
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
			case GarboardPackage.CRANKING_ATTEMPT__AT:
				setAt(AT_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__DURATION:
				setDuration(DURATION_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__REST:
				setRest(REST_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__SEACOCK:
				setSeacock(SEACOCK_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__FIRED:
				setFired(FIRED_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__LOWEST_VOLTAGE:
				setLowestVoltage(LOWEST_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.CRANKING_ATTEMPT__MUFFLER_DRAINED:
				setMufflerDrained(MUFFLER_DRAINED_EDEFAULT);
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
			case GarboardPackage.CRANKING_ATTEMPT__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case GarboardPackage.CRANKING_ATTEMPT__DURATION:
				return DURATION_EDEFAULT == null ? duration != null : !DURATION_EDEFAULT.equals(duration);
			case GarboardPackage.CRANKING_ATTEMPT__REST:
				return REST_EDEFAULT == null ? rest != null : !REST_EDEFAULT.equals(rest);
			case GarboardPackage.CRANKING_ATTEMPT__SEACOCK:
				return seacock != SEACOCK_EDEFAULT;
			case GarboardPackage.CRANKING_ATTEMPT__FIRED:
				return fired != FIRED_EDEFAULT;
			case GarboardPackage.CRANKING_ATTEMPT__LOWEST_VOLTAGE:
				return LOWEST_VOLTAGE_EDEFAULT == null ? lowestVoltage != null : !LOWEST_VOLTAGE_EDEFAULT.equals(lowestVoltage);
			case GarboardPackage.CRANKING_ATTEMPT__MUFFLER_DRAINED:
				return mufflerDrained != MUFFLER_DRAINED_EDEFAULT;
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
		result.append(" (at: ");
		result.append(at);
		result.append(", duration: ");
		result.append(duration);
		result.append(", rest: ");
		result.append(rest);
		result.append(", seacock: ");
		result.append(seacock);
		result.append(", fired: ");
		result.append(fired);
		result.append(", lowestVoltage: ");
		result.append(lowestVoltage);
		result.append(", mufflerDrained: ");
		result.append(mufflerDrained);
		result.append(')');
		return result.toString();
	}

} //CrankingAttemptImpl
